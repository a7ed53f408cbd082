import {describe, expect, it} from 'vitest'
import {scorersInDoubt} from '../../src/findings/scorers-in-doubt.ts'
import type {Agreement} from '../../src/findings/scorer-agreement.ts'
import {shareOf} from '../../src/findings/share-of.ts'
import {comb} from '../pages/small-logbook.ts'
import {neat, type} from './evenness-book.ts'

const agreed = (kappa: number, low: number, trait = neat): Agreement => ({trait, between: 'scorers', names: ['ann', 'ben'], birds: 30, same: 12, higher: 9, lower: 9, kappa: {kappa, interval: {low, high: 0.9}} as Agreement['kappa'], leftOut: 0})
const twice = (differ: number, of: number, trait = neat) => ({trait, disagreements: shareOf(differ, of), perScoring: null, birds: []})

describe('scorersInDoubt(agreements, misscored)', () => {
  it('doubts where kappa’s interval holds 0, and names the least', () => {
    expect(scorersInDoubt([agreed(0.19, -0.02), agreed(0.1, -0.1), agreed(0.8, 0.6, type)], [])).toEqual(new Map([[neat, {kappa: 0.1, differing: null}]]))
  })

  it('doubts where repeated scorings surely differ in more than one of five', () => {
    // Wilson of 46 of 76: 49.3 to 70.8 %; of 5 of 20: 11.2 to 46.9 %
    expect(scorersInDoubt([agreed(0.5, 0.2)], [twice(46, 76), twice(5, 20, type)])).toEqual(new Map([[neat, {kappa: null, differing: shareOf(46, 76)}]]))
  })

  it('asks it of grades only', () => expect(scorersInDoubt([], [twice(46, 76, comb)]).size).toBe(0))
})
