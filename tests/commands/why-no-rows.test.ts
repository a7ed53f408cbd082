import {describe, expect, it} from 'vitest'
import {whyNoRows} from '../../src/commands/why-no-rows.ts'
import {study} from '../../src/findings/study.ts'
import {at, bird, date, F1, hatch, logbook, weekOld} from '../pages/small-logbook.ts'

/** Two cockerels of one hatch, weighed on a day. */
function twoWeighed(on: string) {
  const from = hatch('1', {on: date('2024-03-23')})
  const birds = ['a', 'b'].map(id => bird(id, 'male', {step: F1, strain: null, hatch: from, hatched: from.on, weighings: [{measure: 'weight', value: 2300, on: date(on), at}]}))
  return study(logbook('2025-10-30', {birds, hatches: [Object.assign(from, {chicks: birds})]}))
}

describe('why a spread has no rows', () => {
  it('is that no class is large enough', () => {
    expect(whyNoRows('spread', twoWeighed('2024-08-10'), false)).toBe('no class of one sex, reared alike, has five weighed birds')
    expect(whyNoRows('spread', twoWeighed('2024-08-10'), true)).toBe('no class of one sex, reared alike, has five weighed birds by that day')
  })
  it('or that no weighing counts', () => expect(whyNoRows('spread', twoWeighed('2024-05-10'), false)).toBe('birds are weighed, but no chick of a step on a day that counts for a measured trait'))
  it('or that nobody was weighed', () => expect(whyNoRows('spread', study(weekOld()), true)).toBe('nothing of this kind is on record by that day'))
})
