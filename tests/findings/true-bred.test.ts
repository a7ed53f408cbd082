import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {ladderOf} from '../../src/findings/ladder.ts'
import {trueBred, trueBredOf, type TrueBred, type TrueBredRate} from '../../src/findings/true-bred.ts'
import {requiredTraits, verdictOn} from '../../src/findings/verdict.ts'
import type {Bird, Logbook, Sex, Trait} from '../../src/logbook/book.ts'
import {bird, comb, date, F2, logbook, looks, score, trait, weight, withLooks} from '../pages/small-logbook.ts'
import {drawnBook, skin, turned} from './drawn-book.ts'

const rates = (book: Logbook): TrueBred => trueBred(book, ladderOf(book))
const all = ({passes, fails, partScored, lost, tooYoung, unlisted}: TrueBredRate): number => passes + fails + partScored + lost + tooYoung + unlisted
const value = (share: TrueBredRate['rate']): number | null => (share.kind === 'share' ? share.value : null)

describe('verdictOn(chick)', () => {
  const spurs = trait('spurs', 'Spurs', {states: ['straight', 'bent'], wanted: {male: {kind: 'states', states: ['straight']}, female: null}, required: true, seenIn: 'male', scoredFrom: 300})
  const heavy = {...weight, required: true}
  const egg = trait('egg', 'Egg', {
    states: ['tinted', 'white'], wanted: {male: null, female: {kind: 'states', states: ['tinted']}}, required: true, seenIn: 'female', fromFirstEgg: true,
  })
  const book = logbook('2025-10-30', {traits: [comb, skin, spurs, heavy, egg]})
  const required = requiredTraits(book)
  const hatched = date('2025-03-01')
  const is = (sex: Sex, more: Partial<Bird>): string => verdictOn(withLooks(bird('x', sex, {hatched, step: F2, strain: null, ...more}), book.traits), required, book).is
  const good = [score(comb, 'pea'), score(skin, 'white')]
  const weighed = {measure: 'weight', on: date('2025-07-19'), at: bird('x', 'male').at}
  const heavyEnough = {weighings: [{...weighed, value: 2200}]}

  it('fails a chick with one thing off, whatever else is unknown', () => {
    expect(is('female', {looks: looks(score(comb, 'single'))})).toBe('off')
    expect(is('male', {looks: looks(...good), weighings: [{...weighed, value: 2100}]})).toBe('off')
  })
  it('passes a chick that shows all its sex and age can show', () => {
    // spurs are asked of males from 300 days; this one is 243 days old
    expect(is('male', {looks: looks(...good), ...heavyEnough})).toBe('right')
    expect(is('female', {looks: looks(...good), weighings: [{...weighed, value: 1900}]})).toBe('right')
  })
  it('lets a mark exactly on a limit pass', () => {
    expect(is('male', {looks: looks(...good), weighings: [{...weighed, value: 2160}]})).toBe('right')
    expect(is('male', {looks: looks(...good), weighings: [{...weighed, value: 2640}]})).toBe('right')
    expect(is('male', {looks: looks(...good), weighings: [{...weighed, value: 2641}]})).toBe('off')
  })
  it('leaves open a chick with something unscored that it could show', () => {
    expect(is('male', {looks: looks(...good)})).toBe('part-scored')
    expect(is('male', {looks: looks(score(skin, 'white')), ...heavyEnough})).toBe('part-scored')
    expect(is('male', {})).toBe('part-scored')
  })
  it('asks for the egg only of a hen that lays', () => {
    const hen = {looks: looks(...good), weighings: [{...weighed, value: 1900}]}
    expect(is('female', {...hen, firstEgg: date('2025-09')})).toBe('part-scored')
    expect(is('female', {...hen, firstEgg: date('2025-09'), looks: looks(...good, score(egg, 'white'))})).toBe('off')
  })
  it('does not judge an unsexed chick by a mark that differs between the sexes', () => {
    expect(is('unknown', {looks: looks(...good), weighings: [{...weighed, value: 1900}]})).toBe('part-scored')
    expect(is('unknown', {looks: looks(score(comb, 'single'))})).toBe('off')
    expect(is('unknown', {looks: looks(...good), weighings: [{...weighed, value: 3000}]})).toBe('off')
  })
  it('tells chicks lost early, and those still too young, from the unscored', () => {
    expect(is('male', {left: {on: date('2025-03-10'), how: 'died', why: null}})).toBe('lost')
    // nobody wrote down when: it may have been old enough
    expect(is('male', {left: {on: null, how: 'died', why: null}})).toBe('part-scored')
    expect(is('male', {looks: looks(score(skin, 'white')), left: {on: date('2025-03-10'), how: 'died', why: null}})).toBe('right')
    expect(is('female', {hatched: date('2025-10-20')})).toBe('too-young')
    expect(is('female', {hatched: null})).toBe('part-scored')
  })
  it('counts no struck score', () => expect(is('male', {looks: looks(score(comb, 'single', {struck: 'too early'}))})).toBe('part-scored'))
})

describe('trueBred(book)', () => {
  it('counts every chick once: by step, by season, and the same in all', () => {
    fc.assert(fc.property(drawnBook, book => {
      const found = rates(book)
      const hatched = book.birds.filter(each => each.step.kind !== 'strain').length
        + book.hatches.reduce((sum, each) => sum + (each.step.kind === 'strain' ? 0 : each.unlisted + each.tallies.reduce((some, {count}) => some + count, 0)), 0)
      expect(found.steps.reduce((sum, rate) => sum + all(rate), 0)).toBe(hatched)
      expect(found.seasons.reduce((sum, rate) => sum + all(rate), 0)).toBe(hatched)
    }), {numRuns: 60})
  })

  it('has its bounds on both sides of the rate', () => {
    fc.assert(fc.property(drawnBook, book => {
      for (const {rate, ifAllFail, ifAllPass, fails, passes} of rates(book).steps) {
        if (passes + fails === 0) expect(rate.kind).toBe('cannot-say')
        else {
          expect(value(rate)).toBe(passes / (passes + fails))
          expect(value(ifAllFail)).toBeLessThanOrEqual(value(rate) ?? NaN)
          expect(value(ifAllPass)).toBeGreaterThanOrEqual(value(rate) ?? NaN)
        }
      }
    }), {numRuns: 60})
  })

  it('agrees with counting the verdicts one by one', () => {
    fc.assert(fc.property(drawnBook, book => {
      const found = rates(book)
      for (const rate of found.steps) {
        const verdicts = [...found.verdicts].filter(([chick]) => chick.step.label === rate.step)
        const count = (is: string): number => verdicts.reduce((sum, [chick, verdict]) => sum + (verdict.is === is ? chick.count : 0), 0)
        const passes = verdicts.filter(([, verdict]) => verdict.is === 'right')
        const lacking = (traits: readonly Trait[]): number => passes.reduce((sum, [chick, {right}]) => sum + (traits.some(each => !right.includes(each)) ? chick.count : 0), 0)
        expect(rate.passesOnFewer).toBe(lacking(found.required))
        expect(rate.traits.map(({passesWithout}) => passesWithout)).toEqual(found.required.map(each => lacking([each])))
        expect([rate.passes, rate.fails, rate.partScored, rate.lost, rate.tooYoung]).toEqual(['right', 'off', 'part-scored', 'lost', 'too-young'].map(count))
      }
    }), {numRuns: 60})
  })

  it('gives inter se chicks of given seasons alone, and all of them together', () => {
    fc.assert(fc.property(drawnBook, book => {
      const found = rates(book)
      if (found.interSe === null) return
      expect(trueBredOf(book, found, found.interSeSeasons.map(({season}) => season))).toEqual(found.interSe)
    }), {numRuns: 40})
  })

  it('does not mind the order of the records', () => {
    fc.assert(fc.property(drawnBook, book => {
      const [here, there] = [rates(book), rates(turned(book))]
      expect([there.steps, there.pens, there.seasons, there.interSe]).toEqual([here.steps, here.pens, here.seasons, here.interSe])
    }), {numRuns: 40})
  })

  it('gives no share where nothing is required', () => {
    const book = logbook('2025-10-30', {traits: [], birds: [bird('1', 'male', {step: F2, strain: null, hatched: date('2025-03-01')})]})
    expect(rates(book).steps[0]?.ifAllPass.kind).toBe('cannot-say')
  })
})
