/** Hand-worked small books for descent: who is by whom, and nothing else. */
import type {Bird, Logbook, Parentage, Pair, Step} from '../../src/logbook/book.ts'
import {bird, date, F1, F2, fell, founder, holm, logbook, strainStep} from '../pages/small-logbook.ts'

const half = new Map([[holm, 0.5], [fell, 0.5]])

/** Of pairs with a chance each; null is a bird outside the book. */
export function byPairs(pairs: readonly Pair[]): Parentage {
  const side = (which: 'sire' | 'dam') => {
    const found = new Map<Bird, number>()
    for (const pair of pairs) if (pair[which]) found.set(pair[which], (found.get(pair[which]) ?? 0) + pair.chance)
    return [...found].map(([each, chance]) => ({bird: each, chance})).sort((a, b) => b.chance - a.chance)
  }
  const [only] = pairs
  return {kind: pairs.length === 1 && only?.sire && only.dam ? 'known' : 'uncertain', pairs, sires: side('sire'), dams: side('dam')}
}

export const chick = (id: string, sex: Bird['sex'], pairs: readonly (readonly [Bird | null, Bird | null, number?])[], more: Partial<Bird> = {}): Bird => bird(id, sex, {
  parentage: byPairs(pairs.map(([sire, dam, chance = 1]) => ({sire, dam, chance}))), step: F2, strain: null, shares: half, hatched: date('2024-03-23'), ...more,
})

export const buff = (id: string, sex: Bird['sex']): Bird => bird(id, sex, {strain: fell, step: strainStep(fell), shares: new Map([[fell, 1]]), parentage: founder})

export const BC1: Step = {label: 'BC1', kind: 'backcross', to: holm, strains: [holm, fell], backcrosses: 1, interSe: 0, depth: 2}

/**
 * 22-005 put to two Buff hens; a son of the one and a daughter of the other mated: their chick 24-001 is of half sibs, F ⅛. 24-002 may be of them or of
 * full sibs. 24-003 goes back to 22-005: his daughter's chick, F ¼.
 */
export function halfSibs(): Logbook & {readonly named: (id: string) => Bird} {
  const cock = bird('22-005', 'male'), one = buff('B-1', 'female'), two = buff('B-2', 'female')
  const F = {step: F1, hatched: date('2023-03-20')}
  const son = chick('23-003', 'male', [[cock, one]], F), daughter = chick('23-017', 'female', [[cock, two]], F), sister = chick('23-018', 'female', [[cock, one]], F)
  const birds = [
    cock, one, two, son, daughter, sister, chick('24-001', 'male', [[son, daughter]]), chick('24-002', 'female', [[son, daughter, 0.6], [son, sister, 0.4]]),
    chick('24-003', 'unknown', [[cock, daughter]]), chick('24-004', 'female', [[son, null]]),
  ]
  const book = logbook('2025-10-30', {birds})
  return {...book, named: id => birds.find(each => each.id === id) ?? cock}
}
