/** Books of several inter se steps for trends, changes and grades: drawn by chance, and put together by counts. */
import fc from 'fast-check'
import type {Bird, Keeper, Logbook, Score, Sex, Step, Trait} from '../../src/logbook/book.ts'
import {at, bird, comb, date, F2, hatch, logbook, looks, parents, project, score, trait, weight} from '../pages/small-logbook.ts'
import {drawnBook, skin} from './drawn-book.ts'

const seven = {kind: 'at-least', value: 7} as const
export const type: Trait = trait('type', 'Type', {kind: 'graded', scale: {from: 1, to: 10}, wanted: {male: seven, female: seven}})
export const neat: Trait = trait('neat', 'Neatness', {kind: 'ordered', states: ['coarse', 'fair', 'neat'], wanted: {male: {kind: 'states', states: ['neat']}, female: null}})

export const F3: Step = {...F2, label: 'F3', interSe: 2, depth: 3}
export const F4: Step = {...F2, label: 'F4', interSe: 3, depth: 4}
export const LADDER = {...project, ladder: ['F1', 'F2', 'F3', 'F4']}

export const keeper = (id: string): Keeper => ({id, name: id, consents: true, since: null, region: null, at, body: ''})
const KEEPERS = [keeper('inga'), keeper('rasmus')]

/** The drawn books with F1 as F3 and BC1 as F4, chicks by one or two of eight cocks, or by none that is known, and grades by up to two keepers. */
export const evenBook: fc.Arbitrary<Logbook> = fc.tuple(drawnBook, fc.array(fc.nat(10_000), {minLength: 7, maxLength: 60})).map(([book, draws]) => {
  const cocks = Array.from({length: 8}, (_, index) => bird(`C-${index}`, 'male'))
  const steps = new Map([['F1', F3], ['BC1', F4]])
  let next = 0
  const drawn = (below: number): number => ((draws[next % draws.length] ?? 0) + 31 * next++) % below
  const parentage = () => {
    const one = drawn(9), other = drawn(24)
    return parents([...new Set([one, other])].flatMap(place => {
      const cock = cocks[place]
      return cock ? [[cock, 1] as const] : []
    }), null)
  }
  const graded = (): Score[] => KEEPERS.flatMap(by => [
    ...(drawn(3) === 0 ? [] : [score(type, drawn(2) === 0 ? 7 : 1 + drawn(10), {by, struck: drawn(9) === 0 ? 'slip' : null})]),
    ...(drawn(3) === 0 ? [] : [score(neat, neat.states[drawn(3)] ?? 'fair', {by})]),
  ])
  for (const each of [...book.birds, ...book.hatches.flatMap(from => from.tallies)]) {
    if (each.step.kind === 'strain') continue
    Object.assign(each, {step: steps.get(each.step.label) ?? each.step, parentage: parentage(), looks: new Map([...each.looks, ...looks(...graded())])})
  }
  for (const from of book.hatches) Object.assign(from, {step: steps.get(from.step.label) ?? from.step})
  return {...book, birds: [...cocks, ...book.birds], traits: [comb, skin, weight, type, neat], project: LADDER}
})

/** A family of a step: so many pea, so many single, by a cock of its own; and what its chicks weigh and were graded. */
export interface Family {
  readonly step: Step
  readonly pea?: number
  readonly single?: number
  readonly grams?: readonly number[]
  readonly type?: readonly number[]
  readonly sex?: Sex
}

/** Each family is a hatch of its own. */
export function bookOfFamilies(families: readonly Family[], more: Partial<Logbook> = {}): Logbook {
  const birds: Bird[] = [], on = date('2024-03-23'), due = on.first + 140
  const hatches = families.map(({step, pea = 0, single = 0, grams = [], type: marks = [], sex = 'male'}, number) => {
    const cock = bird(`C-${number}`, 'male'), from = hatch(`h-${number}`, {on, step, rearing: `h-${number}`})
    const chicks = Array.from({length: Math.max(pea + single, grams.length, marks.length)}, (_, index) => {
      const mark = marks[index], value = grams[index]
      return bird(`${number}-${index}`, sex, {
        hatched: on, hatch: from, step, strain: null, parentage: parents([[cock, 1]], null),
        looks: looks(...(index < pea ? [score(comb, 'pea')] : index < pea + single ? [score(comb, 'single')] : []), ...(mark === undefined ? [] : [score(type, mark)])),
        weighings: value === undefined ? [] : [{measure: 'weight', value, on: {text: '', first: due, last: due}, at}],
      })
    })
    birds.push(cock, ...chicks)
    return Object.assign(from, {chicks, hatched: chicks.length})
  })
  return logbook('2025-10-30', {traits: [comb, weight, type], birds, hatches, project: LADDER, ...more})
}
