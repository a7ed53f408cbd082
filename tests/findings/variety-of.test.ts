import {describe, expect, it} from 'vitest'
import {varietyOf} from '../../src/findings/variety-of.ts'
import type {Wanted} from '../../src/logbook/book.ts'
import {bird, comb, looks, score} from '../pages/small-logbook.ts'

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
