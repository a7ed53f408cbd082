import {describe, expect, it} from 'vitest'
import {crosses} from '../../src/findings/crosses.ts'
import {meanAndDeviation} from '../../src/statistics/mean-and-deviation.ts'
import type {Step, Strain} from '../../src/logbook/book.ts'
import {F2, fell, holm, smallBook, strain, strainStep, weekOld} from '../pages/small-logbook.ts'
import {linesTogether} from './vigour-book.ts'

const seeds = Array.from({length: 30}, (_, place) => 7 + 41 * place)
const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length

describe('crosses(book)', () => {
  it('finds a tenth more than mid-parent where it was made so, and none where not', () => {
    // check value O6: parents 2000 and 2400, F1 2420
    const found = seeds.map(seed => crosses(linesTogether(seed, {holm: 2400, fell: 2000, cross: 2420, back: 2400}))[0])
    expect(Math.abs(mean(found.map(each => each?.found?.heterosis ?? NaN)) - 0.1)).toBeLessThan(0.01)
    expect(found.filter(each => (each?.found?.interval.low ?? -1) > 0).length).toBe(30)
    const none = seeds.map(seed => crosses(linesTogether(seed, {holm: 2400, fell: 2000, cross: 2200, back: 2300}))[0]?.found)
    expect(none.filter(each => each && (each.interval.low > 0 || each.interval.high < 0)).length).toBeLessThanOrEqual(4)
  })

  it('has each line and cross once, a backcross being none', () => {
    const found = crosses(linesTogether(1, {holm: 2400, fell: 2000, cross: 2420, back: 2400}))
    expect(found.map(({lines, birds, classes}) => [lines.map(({key}) => key), birds, classes])).toEqual([[['strain fell-buff', 'strain holm-white'], {cross: 30, one: 30, other: 30}, 6]])
  })

  it('is the plain figure in one hatch of one sex, as a slow twin has it', () => {
    const book = linesTogether(2, {holm: 2400, fell: 2000, cross: 2420, back: 2400}, 9, 1)
    const birds = book.birds.filter(({sex}) => sex === 'male'), of = (letter: string) => meanAndDeviation(birds.filter(({id}) => id.startsWith(`${letter}0-`)).map(({weighings: [one]}) => one?.value ?? NaN))
    const middle = (of('h').mean + of('f').mean) / 2, one = crosses({...book, birds: birds.concat(book.birds.filter(({hatch}) => hatch === null))})[0]
    expect(one?.found?.heterosis).toBeCloseTo(of('x').mean / middle - 1, 12)
    expect(one?.found?.midParent).toBeCloseTo(middle, 9)
  })

  it('knows two finished lines by their names or strains, and no step with a strain of its own', () => {
    const line = (label: string, strains: readonly Strain[]): Step => ({label, kind: 'named', to: null, strains, backcrosses: 0, interSe: 3, depth: 4}), grey = strain('grey', 'Grey')
    const made = (one: Step, other: Step) => {
      const book = linesTogether(4, {holm: 2400, fell: 2000, cross: 2420, back: 2400}), steps = new Map([['h', one], ['H', one], ['G', one], ['f', other], ['F', other], ['E', other], ['x', F2], ['X', F2], ['b', F2]])
      for (const each of book.birds) Object.assign(each, {step: steps.get(each.id.charAt(0)) ?? each.step})
      return crosses(book).map(({lines, found}) => [...lines.map(({step, strain: of}) => step ?? of?.id), found !== null])
    }
    expect(made(line('Even', [holm, fell]), line('Odd', [holm, fell]))).toEqual([['Even', 'Odd', true]])
    expect(made(line('Even', [holm, fell]), strainStep(grey))).toEqual([['Even', 'grey', true]])
    expect(made(line('Even', [holm, fell]), strainStep(fell))).toEqual([])
    expect(made({...F2, label: 'F3'}, F2)).toEqual([])
  })

  it('speaks of these chicks only where a line is of one pair', () => {
    expect(crosses(linesTogether(1, {holm: 2400, fell: 2000, cross: 2420, back: 2400}))[0]?.families).toMatchObject({families: 1, speaksOf: 'these chicks only'})
  })

  it('says nothing of lines not reared together', () => {
    expect(crosses(weekOld())).toEqual([])
    const [one] = crosses(smallBook())
    expect([one?.found, one?.classes, one?.birds]).toEqual([null, 0, {cross: 8, one: 0, other: 0}])
  })
})
