import {describe, expect, it} from 'vitest'
import type {Bird, Parentage, Step} from '../../src/logbook/book.ts'
import {mixedReasons, mixedWhy} from '../../src/pages/mixed-words.ts'
import {bird, F2, fell, strainStep} from './small-logbook.ts'

const MIXED: Step = {label: 'mixed', kind: 'mixed', to: null, strains: [], backcrosses: 0, interSe: 0, depth: 1}
const white = bird('H-1', 'male'), buff = bird('B-1', 'male', {strain: fell, step: strainStep(fell)}), hen = bird('H-2', 'female'), crossed = bird('F-2', 'male', {step: F2, strain: null})
const half = (sires: readonly Bird[], dam: Bird | null = hen): Parentage => ({
  kind: 'uncertain', pairs: sires.length === 0 ? [{sire: null, dam, chance: 1}] : sires.map(sire => ({sire, dam, chance: 1 / sires.length})),
  sires: sires.map(one => ({bird: one, chance: 1 / sires.length})), dams: dam ? [{bird: dam, chance: 1}] : [],
})
const why = (parentage: Parentage, step = MIXED): string | null => mixedWhy({step, parentage})

describe('mixedWhy(chick)', () => {
  it('tells a keeper of two cocks of different strains why', () =>
    expect(why(half([white, buff]))).toBe('its sire may be of either strain, Holm White or Fell Buff, so its step cannot be told'))
  it('names the steps of cocks that are no pure ones', () => expect(why(half([white, crossed]))).toBe('its sire may be Holm White or F2, so its step cannot be told'))
  it('says which parent is wanting', () => {
    expect(why(half([]))).toBe('its sire is not recorded, so its step cannot be told')
    expect(why(half([white], null))).toBe('its dam is not recorded, so its step cannot be told')
  })
  it('names a mating that is no step', () => expect(why(half([crossed]))).toBe('the mating of F2 with Holm White is no step of the ladder'))
  it('goes back to a parent that is mixed itself', () =>
    expect(why(half([bird('M', 'male', {step: MIXED, strain: null})]))).toBe('the step of its sire cannot be told, so neither can its own'))
  it('has nothing to say of a chick with a step', () => expect(why(half([white, buff]), F2)).toBeNull())
})

describe('mixedReasons(chicks)', () => {
  it('counts them, the commonest first', () => {
    const chick = (parentage: Parentage, count: number) => ({step: MIXED, parentage, count})
    expect(mixedReasons([chick(half([]), 1), chick(half([white, buff]), 3), chick(half([]), 1)]).map(({count}) => count)).toEqual([3, 2])
  })
})
