import {describe, expect, it} from 'vitest'
import {chickCounts} from '../../src/findings/chick-counts.ts'
import type {ReachedStep} from '../../src/findings/ladder.ts'
import {closingOf, stepBefore} from '../../src/findings/line-steps.ts'
import type {Step} from '../../src/logbook/book.ts'
import {F1, F2, fell, holm} from '../pages/small-logbook.ts'

const BC3: Step = {label: 'BC3', kind: 'backcross', to: holm, strains: [holm, fell], backcrosses: 3, interSe: 0, depth: 4}
const named = (label: string, interSe: number): Step => ({label, kind: 'named', to: null, strains: [holm, fell], backcrosses: 0, interSe, depth: 5})
const reached = (step: Step): ReachedStep => ({
  kind: 'reached', label: step.label, beside: false, step, seasons: [], firstHatch: null, lastHatch: null, pens: [], hatches: [], sires: [], dams: [], recurrentShare: null, birds: [], tallies: [], chicks: chickCounts([], [], 0, [], new Set()),
})
const STEPS = [F1, F2, BC3, {...BC3, label: 'BC3F2', interSe: 1}, {...BC3, label: 'BC3F3', interSe: 2}, named('SY1', 1), named('SY2', 1), named('SY1F2', 2), named('SY2F2', 2)].map(reached)
const at = (label: string): ReachedStep => STEPS.find(step => step.label === label) ?? expect.fail(label)
const labels = (label: string, steps = STEPS) => [stepBefore(at(label), steps)?.label ?? null, closingOf(at(label), steps)?.label ?? null]

describe('stepBefore and closingOf', () => {
  it('keep to the line that was closed', () => {
    expect(labels('F2')).toEqual(['F1', 'F1'])
    expect(labels('BC3F3')).toEqual(['BC3F2', 'BC3'])
    expect(labels('BC3')).toEqual([null, null])
    expect(labels('SY2F2')).toEqual(['SY2', 'SY2'])
  })

  it('take the first of which birds are in the book, and none where none is', () => {
    expect(labels('BC3F3', STEPS.filter(({label}) => label !== 'BC3'))).toEqual(['BC3F2', 'BC3F2'])
    expect(labels('BC3F3', [at('F1'), at('BC3F3')])).toEqual([null, null])
  })
})
