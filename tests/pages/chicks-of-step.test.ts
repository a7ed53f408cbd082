import {describe, expect, it} from 'vitest'
import type {Bird, Step} from '../../src/logbook/book.ts'
import {ofStepWords, uncertainShareWords} from '../../src/pages/chicks-of-step.ts'
import {bird, F1, F2, fell, hatch, holm, parents, tally} from './small-logbook.ts'

const chick = (id: string, step: Step): Bird => bird(id, 'male', {step, strain: null})

describe('which chicks of some hatches are of a step', () => {
  const one = hatch('1', {step: F1, unlisted: 2})
  Object.assign(one, {chicks: [chick('a', F1), chick('b', F2)], tallies: [tally(one, 3)]})
  it('names them where others hatched beside them', () => expect(ofStepWords([one], 'F2')).toBe('1 of its 7 chicks is of F2: b'))
  it('counts those without a band', () => expect(ofStepWords([one, hatch('2')], 'F1')).toBe('6 of their 7 chicks are of F1'))
  it('says nothing where all are', () => expect([ofStepWords([hatch('3', {unlisted: 4})], 'F1'), ofStepWords([], 'F1')]).toEqual([null, null]))
})

describe('a chick of either cock', () => {
  const pure = bird('h', 'male'), cross = bird('x', 'male', {step: F1, strain: null, shares: new Map([[holm, 0.5], [fell, 0.5]])}), dam = bird('d', 'female', {shares: new Map([[holm, 0.5], [fell, 0.5]])})
  it('has the shares that are possible told', () => {
    expect(uncertainShareWords([{count: 1, parentage: parents([[pure, 0.5], [cross, 0.5]], dam)}], holm))
      .toBe('1 chick may be of one parent or another, and so 75.0% or 50.0% Holm White: the mean is over what is possible.')
  })
  it('has nothing told where they are the same', () => expect(uncertainShareWords([{count: 2, parentage: parents([[pure, 0.5], [bird('i', 'male'), 0.5]], dam)}], holm)).toBeNull())
})
