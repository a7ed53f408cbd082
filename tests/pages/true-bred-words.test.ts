import {describe, expect, it} from 'vitest'
import {ladderOf} from '../../src/findings/ladder.ts'
import {trueBred, type TrueBredRate} from '../../src/findings/true-bred.ts'
import type {Bird} from '../../src/logbook/book.ts'
import {onFewerShort, onFewerWords} from '../../src/pages/true-bred-words.ts'
import {bird, comb, date, F2, logbook, looks, score, trait} from './small-logbook.ts'

const skin = trait('skin', 'Skin', {required: true, scoredFrom: 0, states: ['white', 'yellow'], wanted: {male: {kind: 'states', states: ['white']}, female: {kind: 'states', states: ['white']}}})
const chick = (band: string, more: Partial<Bird>): Bird => bird(band, 'female', {hatched: date('2025-03-01'), step: F2, strain: null, ...more})
const whole = chick('1', {looks: looks(score(comb, 'pea'), score(skin, 'white'))})
/** scored right on its hatch day, and gone before a comb can be told */
const early = chick('2', {looks: looks(score(skin, 'white')), left: {on: date('2025-03-10'), how: 'sold', why: null}})

function rateOf(birds: readonly Bird[]): TrueBredRate {
  const book = logbook('2025-10-30', {traits: [comb, skin], birds})
  const [rate] = trueBred(book, ladderOf(book)).steps
  if (!rate) throw new Error('no step')
  return rate
}

describe('passes on fewer traits than are required', () => {
  it('are counted, trait by trait', () => {
    const {passes, passesOnFewer, traits} = rateOf([whole, early])
    expect([passes, passesOnFewer]).toEqual([2, 1])
    expect(traits.map(({trait: {id}, passesWithout}) => [id, passesWithout])).toEqual([['comb', 1], ['skin', 0]])
  })

  it('are said with the trait that was wanting', () => {
    expect(onFewerWords(rateOf([whole, early]))).toBe('1 of these 2 was too young, or not of the sex, to show comb, and was judged without it.')
    expect(onFewerShort(rateOf([whole, early]))).toBe('1 of the 2 judged on fewer than 2')
    expect(onFewerWords(rateOf([early]))).toBe('The 1 that did was too young, or not of the sex, to show comb, and was judged without it.')
  })

  it('are not spoken of where there are none', () => expect([onFewerWords(rateOf([whole])), onFewerShort(rateOf([whole]))]).toEqual(['', '']))
})
