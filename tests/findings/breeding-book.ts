/** A hand-worked book of a flock that is bred from: pens, males to choose from, a donor's gene on its way. */
import type {Bird, Logbook} from '../../src/logbook/book.ts'
import {bird, comb, date, F1, F2, hatch, holm, fell, logbook, looks, pen, project, score, stay, strain} from '../pages/small-logbook.ts'
import {buff, chick} from './kin-book.ts'

export const holmTrue = strain('holm-white', 'Holm White', {role: 'recurrent', trueFor: new Map([[comb, 'single']])})

const named = (birds: readonly Bird[]) => (id: string): Bird => {
  const found = birds.find(each => each.id === id)
  if (!found) throw new Error(`no ${id}`)
  return found
}

/**
 * Two unrelated pairs of founders, H-1 × B-1 and H-2 × B-2. Pen A: cock A1 (H-1 × B-1) with A2, A3, his full sisters; pen B: cock B1 (H-2 × B-2) with B2, his
 * full sister. C1 is one more full brother of the A, C2 comes of H-3 × B-3, kin to nobody; both are cockerels of the last year and not bred from.
 */
export function twoPens(limit: number | null = 0.125): Logbook & {readonly named: (id: string) => Bird} {
  const founders = [bird('H-1', 'male'), bird('H-2', 'male'), bird('H-3', 'male'), buff('B-1', 'female'), buff('B-2', 'female'), buff('B-3', 'female')]
  const [h1, h2, h3, b1, b2, b3] = founders as [Bird, Bird, Bird, Bird, Bird, Bird]
  const young = (id: string, sex: Bird['sex'], sire: Bird, dam: Bird) => chick(id, sex, [[sire, dam]], {step: F1, hatched: date('2025-03-20')})
  const birds = [
    ...founders, young('A1', 'male', h1, b1), young('A2', 'female', h1, b1), young('A3', 'female', h1, b1), young('B1', 'male', h2, b2), young('B2', 'female', h2, b2),
    young('C1', 'male', h1, b1), young('C2', 'male', h3, b3),
  ]
  const of = named(birds)
  const pens = [
    pen('2026-A', 2026, {males: [stay(of('A1'))], females: [stay(of('A2')), stay(of('A3'))], from: date('2026-02-01')}),
    pen('2026-B', 2026, {males: [stay(of('B1'))], females: [stay(of('B2'))], from: date('2026-02-01')}),
  ]
  return {...logbook('2026-03-01', {birds, pens, project: {...project, limits: {matingInbreeding: limit, inbreedingPerGeneration: 0.01}}}), named: of}
}

/**
 * The gene for pea comb from two Buff hens. Of hen B-1 come 23-1 (pea) and 23-2 (pea), of B-2 23-3 (single: it has none) and 23-4 (pea), of B-1 or B-2 23-5.
 * Bred from are 24-1 (of 23-1, pea), 24-2 (of 23-4, single: no way), 24-3 (of 23-2, not scored) and 24-5 (of 23-5).
 */
export function donorBook(): Logbook & {readonly named: (id: string) => Bird; readonly group: readonly Bird[]} {
  const pea = looks(score(comb, 'pea')), single = looks(score(comb, 'single'))
  const cock = bird('H-1', 'male'), one = buff('B-1', 'female'), two = buff('B-2', 'female')
  const F = (id: string, dams: readonly Bird[], more: Partial<Bird> = {}) => chick(id, 'female', dams.map(dam => [cock, dam, 1 / dams.length] as const), {step: F1, looks: pea, ...more})
  const first = [F('23-1', [one]), F('23-2', [one]), F('23-3', [two], {looks: single}), F('23-4', [two]), F('23-5', [one, two])]
  const [a, b, , d, e] = first as [Bird, Bird, Bird, Bird, Bird]
  const second = [
    chick('24-1', 'male', [[cock, a]], {looks: pea}), chick('24-2', 'male', [[cock, d]], {looks: single}), chick('24-3', 'female', [[cock, b]]), chick('24-5', 'female', [[cock, e]], {looks: pea}),
  ]
  const birds = [cock, one, two, ...first, ...second]
  const buffTrue = {...fell, trueFor: new Map([[comb, 'pea']])}
  for (const each of [one, two]) Object.assign(each, {strain: buffTrue, step: {...each.step, strains: [buffTrue]}})
  return {
    ...logbook('2025-10-30', {birds, strains: [holm, buffTrue], project: {...project, donors: [buffTrue]}, hatches: [hatch('x', {step: F2})].slice(1)}),
    named: named(birds), group: second,
  }
}
