import {describe, expect, it} from 'vitest'
import {malesPlaced} from '../../src/findings/males-placed.ts'
import {study} from '../../src/findings/study.ts'
import {malesAnswer} from '../../src/pages/males-answer.ts'
import {twoPens} from '../findings/breeding-book.ts'

const {pairings, pairReason} = study(twoPens())

/** The two pens with these males only. */
const withMales = (...bands: readonly string[]) => {
  const kept = (bird: {readonly band: string}) => bands.includes(bird.band)
  return malesAnswer(malesPlaced({...pairings, males: pairings.males.filter(kept), pens: pairings.pens.map(pen => ({...pen, males: pen.males.filter(({male}) => kept(male))}))}), pairReason, pairings.chicksOf)
}

describe('malesAnswer(placed)', () => {
  it('gives the price and the kin through whom it comes, and what to do when he must be used', () => {
    const [a] = withMales('A1', 'C1').pens
    expect(a?.words).toMatch(/^(A1|C1) with two hens: chicks’ F 25\.0% on average, 25\.0% with A2 \(both are chicks of H-1 and B-1\)\./)
    expect(a?.avoid).toBe('every male, as far as you can.')
  })

  it('names the hens that are to be left out with him', () => {
    const [a] = malesPlaced(pairings).pens, a2 = a?.pen.hens.slice(0, 1), a1 = a?.pen.males.find(({male}) => male.band === 'A1')
    if (!a || !a1 || !a2) throw new Error('no pen A')
    const [pen] = malesAnswer({mean: null, pens: [{...a, placed: a1, apart: a2}]}, pairReason, pairings.chicksOf).pens
    expect(pen?.avoid).toBe('A1 and C1. If A1 is used all the same, leave A2 out.')
  })

  it('says that nobody is left for a pen', () => {
    const {pens, table} = withMales('C2')
    expect(pens.filter(({words}) => words.startsWith('No male is left for it')).length).toBe(1)
    expect(table.rows.filter(([, male]) => male === 'nobody left').length).toBe(1)
  })
})
