/** Steps made up with a known effect, and with none: is the one found as often as its size deserves, and the other left alone? Seeded, so that the counts are the same each time. */
import {describe, expect, it} from 'vitest'
import type {ReachedStep} from '../../src/findings/ladder.ts'
import {study} from '../../src/findings/study.ts'
import {chanceOf, type Chance} from '../../src/statistics/chance.ts'
import {F2} from '../pages/small-logbook.ts'
import {bookOfFamilies, F3, type Family} from './evenness-book.ts'

const FLOCKS = 200

function changes(seed: number, step: (chance: Chance, later: boolean) => readonly Omit<Family, 'step'>[]) {
  const chance = chanceOf(seed)
  return Array.from({length: FLOCKS}, () => {
    const findings = study(bookOfFamilies([...step(chance, false).map(family => ({...family, step: F2})), ...step(chance, true).map(family => ({...family, step: F3}))]))
    const [from, to] = findings.ladder.filter((each): each is ReachedStep => each.kind === 'reached')
    return from && to ? findings.change(from, to) : expect.fail('two steps')
  })
}
const often = <Each>(all: readonly Each[], is: (each: Each) => boolean): number => (100 * all.filter(is).length) / all.length

/** Evenly from 0 to 1. */
const part = (chance: Chance): number => chance.next() / 2 ** 32

/** Six cocks, each with a share of his own about the step's, eight chicks each. */
const cocks = (chance: Chance, share: number): Omit<Family, 'step'>[] => Array.from({length: 6}, () => {
  const own = share + (1 - share) * (2 * part(chance) - 1), pea = Array.from({length: 8}, () => part(chance) < own).filter(right => right).length
  return {pea, single: 8 - pea}
})

/** Four hatches of eight, of means that differ by a tenth. */
const hatches = (chance: Chance, cv: number): Omit<Family, 'step'>[] => Array.from({length: 4}, () => {
  const middle = 1800 + 400 * part(chance)
  return {grams: Array.from({length: 8}, () => middle * (1 + cv * normal(chance)))}
})

/** Box and Muller 1958. */
const normal = (chance: Chance): number => Math.sqrt(-2 * Math.log(1 - part(chance))) * Math.cos(2 * Math.PI * part(chance))

describe('what changed between two steps', () => {
  it('calls a change of shares by families in about five flocks of a hundred where there is none; by chicks in more', () => {
    const all = changes(11, chance => cocks(chance, 0.8)).map(({shares}) => shares.find(({by}) => by !== 'true-bred'))
    expect(often(all, each => each?.verdict !== 'cannot-tell')).toBeLessThan(8)
    expect(often(all, each => each?.plain ? each.plain.low > 0 || each.plain.high < 0 : false)).toBeGreaterThan(8)
  })

  it('finds 70 to 97 of a hundred in most flocks', () => {
    expect(often(changes(12, (chance, later) => cocks(chance, later ? 0.97 : 0.6)), ({shares}) => shares.every(({verdict}) => verdict === 'truer'))).toBeGreaterThan(75)
  })

  it('calls a change of evenness in about five flocks of a hundred where there is none', () => {
    const wrong = often(changes(13, chance => hatches(chance, 0.1)), ({spreads}) => spreads.some(({sex, verdict}) => sex === 'male' && verdict !== 'cannot-tell'))
    expect(wrong).toBeGreaterThan(1)
    expect(wrong).toBeLessThan(9)
  })

  it('finds a CV halved from 12 to 6 among 32 birds a step in more than eight flocks of ten, and never the other way round', () => {
    const all = changes(14, (chance, later) => hatches(chance, later ? 0.06 : 0.12)).map(({spreads}) => spreads.find(({sex}) => sex === 'male'))
    expect(often(all, each => each?.verdict === 'more-even')).toBeGreaterThan(80)
    expect(often(all, each => each?.verdict === 'less-even')).toBe(0)
    // and the interval of the ratio holds the truth, a half, about 95 times in a hundred
    const held = often(all, each => each?.variations ? each.variations.interval.low <= 0.5 && each.variations.interval.high >= 0.5 : false)
    expect(held).toBeGreaterThan(91)
    expect(held).toBeLessThan(99)
  })
})
