import {describe, expect, it} from 'vitest'
import {isOfVarieties, varietyOf, varietyTold} from '../../src/findings/variety-of.ts'
import type {Score, Wanted} from '../../src/logbook/book.ts'
import {bird, comb, looks, score} from '../pages/small-logbook.ts'
import {skin} from './drawn-book.ts'

describe('varietyOf(bird, draft)', () => {
  const wants = (state: string): Wanted => ({kind: 'states', states: [state]})
  const two = {varieties: [{name: 'Light', looks: new Map([[comb, wants('pea')]])}, {name: 'Dark', looks: new Map([[comb, wants('single')]])}]}
  const showing = (state: string) => bird('1', 'male', {looks: looks(score(comb, state))})
  it('is the first of which a bird shows every look', () => {
    expect(varietyOf(showing('pea'), two)?.name).toBe('Light')
    expect(varietyOf(showing('single'), two)?.name).toBe('Dark')
  })
  it('cannot be told of a bird that was not scored, unless there is one alone without looks', () => {
    expect(varietyOf(bird('1', 'male'), two)).toBeNull()
    expect(varietyOf(bird('1', 'male'), {varieties: [{name: 'Light', looks: new Map()}]})?.name).toBe('Light')
    expect(varietyOf(showing('pea'), {varieties: []})).toBeNull()
  })
})

describe('varietyTold(bird, draft)', () => {
  const wants = (state: string): Wanted => ({kind: 'states', states: [state]})
  const light = {name: 'Light', looks: new Map([[comb, wants('pea')]])}, plain = {name: 'Plain', looks: new Map()}
  const buff = bird('1', 'male', {looks: looks(score(comb, 'single'))}), unseen = bird('2', 'male'), of = (name: string, ...varieties: readonly {name: string; looks: Map<never, never> | typeof light.looks}[]) =>
    [buff, unseen].map(each => isOfVarieties(each, {varieties}, [name]))
  it('tells a bird that shows none of them from one that was not scored', () => {
    expect([varietyTold(buff, {varieties: [light]}), varietyTold(unseen, {varieties: [light]})]).toEqual(['none', 'untold'])
    expect([of('light', light), of(' LIGHT ', light), of('Dark', light)]).toEqual([[false, null], [false, null], [false, false]])
  })
  it('takes of two that a bird shows the one told by more looks, and neither while it was not scored for these', () => {
    const barred = {name: 'Barred', looks: new Map([[comb, wants('pea')], [skin, wants('white')]])}, draft = {varieties: [light, barred]}
    const told = (...scores: readonly Score[]) => {
      const is = varietyTold(bird('3', 'male', {looks: looks(...scores)}), draft)
      return typeof is === 'object' ? is.name : is
    }
    expect([told(score(comb, 'pea'), score(skin, 'white')), told(score(comb, 'pea'), score(skin, 'yellow')), told(score(comb, 'pea')), told(score(comb, 'single'))]).toEqual(['Barred', 'Light', 'untold', 'none'])
  })
  it('rules out no variety that no looks tell, and tells nothing without varieties', () => {
    expect([varietyTold(buff, {varieties: [light, plain]}), varietyTold(buff, {varieties: []})]).toEqual(['untold', 'untold'])
    expect([of('Light', light, plain), of('Plain', light, plain), of('Light')]).toEqual([[false, null], [null, null], [null, null]])
    expect(isOfVarieties(buff, null, ['Light'])).toBeNull()
  })
})
