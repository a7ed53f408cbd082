import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import type {Look, Trait} from '../../src/logbook/book.ts'
import {bird, comb, F1, F2, logbook, looks, score, smallBook, weekOld} from '../pages/small-logbook.ts'
import {skin} from './drawn-book.ts'

const of = (...values: Map<Trait, Look>[]) => study(logbook('2025-10-30', {
  traits: [comb, skin], birds: values.map((own, index) => bird(String(index), 'male', {step: F2, strain: null, looks: own})),
})).leastUniform

describe('leastUniform', () => {
  it('is the required trait that the fewest of the latest step show', () => {
    const [pea, single, white, yellow] = [score(comb, 'pea'), score(comb, 'single'), score(skin, 'white'), score(skin, 'yellow')]
    expect(of(looks(pea, white), looks(pea, yellow), looks(single, yellow))).toMatchObject({step: 'F2', interSe: true, trait: {id: 'skin'}, share: {count: 1, total: 3}, others: [{trait: {id: 'comb'}}]})
    // of equals the first
    expect(of(looks(pea, white))?.trait.id).toBe('comb')
    expect(of(looks(pea))?.others).toEqual([])
  })
  it('goes back to the last step with anything scored', () => {
    const birds = [bird('1', 'male', {step: F1, strain: null, looks: looks(score(comb, 'pea'))}), bird('2', 'male', {step: F2, strain: null})]
    expect(study(logbook('2025-10-30', {birds})).leastUniform?.step).toBe('F1')
  })
  it('is nothing while nothing is scored', () => expect(study(weekOld()).leastUniform).toBeNull())
  it('counts what the records of a small yard hold', () => expect(study(smallBook()).leastUniform).toMatchObject({step: 'F2', share: {count: 4, total: 6}}))
})
