import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import type {Bird, Step} from '../../src/logbook/book.ts'
import {bird, comb, date, F1, F2, hatch, holm, logbook, looks, parents, project, score} from '../pages/small-logbook.ts'
import {F3} from './evenness-book.ts'

const backcross = (count: number, interSe = 0): Step =>
  ({...F1, label: `BC${count}${interSe === 0 ? '' : `F${interSe + 1}`}`, kind: 'backcross', to: holm, backcrosses: count, interSe, depth: 1 + count + interSe})
const [BC1, BC2, BC1F2, BC2F2, BC2F3] = [backcross(1), backcross(2), backcross(1, 1), backcross(2, 1), backcross(2, 2)] as const

/** A chick of each step, of two parents of the step it is said to come of; the recurrent strain's hen where it comes of one. */
function book(chain: readonly (readonly [step: Step, from: Step | null, back?: boolean])[], ladder: readonly string[] = []) {
  const hen = bird('holm-hen', 'female'), birds: Bird[] = [hen]
  const last = new Map<string, readonly [Bird, Bird]>()
  const hatches = chain.map(([step, from, back], number) => {
    const both = from === null ? undefined : last.get(from.label), on = date(`20${14 + number}-03-23`)
    const parentage = both ? parents([[both[0], 1]], back === true ? hen : both[1]) : parents([], null)
    const from2 = hatch(`h-${number}`, {on, step, parentage})
    const chicks = (['male', 'female'] as const).map(sex => bird(`${step.label}-${sex}`, sex, {hatched: on, hatch: from2, step, strain: null, parentage, looks: looks(score(comb, 'pea'))}))
    birds.push(...chicks)
    const [male, female] = chicks
    if (male && female) last.set(step.label, [male, female])
    return Object.assign(from2, {chicks, hatched: 2})
  })
  return study(logbook('2035-10-30', {traits: [comb], birds, hatches, project: {...project, ladder: [...ladder]}}))
}
const before = (findings: ReturnType<typeof book>) => Object.fromEntries(findings.changes.map(({from, to}) => [to, from]))

describe('stepBefore(step, ladder, passages)', () => {
  it('is the step that crosses and backcrosses came of, and none for the first', () => {
    expect(before(book([[F1, null], [BC1, F1, true], [BC2, BC1, true]]))).toEqual({BC1: 'F1', BC2: 'BC1'})
  })

  it('is the generation before inside the line; of the first the cross it came of', () => {
    expect(before(book([[F1, null], [BC2, F1, true], [BC2F2, BC2], [BC2F3, BC2F2]]))).toEqual({BC2: 'F1', BC2F2: 'BC2', BC2F3: 'BC2F2'})
  })

  it('is the last step inside the line before it, where it came of a cross and another was mated inside the line before', () => {
    expect(before(book([[F1, null], [BC1, F1, true], [BC1F2, BC1], [BC2, BC1, true], [BC2F2, BC2]]))).toMatchObject({BC2: 'BC1', BC2F2: 'BC1F2'})
  })

  it('is the one before on the ladder where the parents tell nothing', () => expect(before(book([[F1, null], [F2, null], [F3, null]]))).toEqual({F2: 'F1', F3: 'F2'}))

  it('is of a step beside the ladder only what it came of', () => {
    expect(before(book([[F1, null], [BC1, F1, true], [F2, F1]], ['F1', 'BC1']))).toEqual({BC1: 'F1', F2: 'F1'})
    expect(before(book([[F1, null], [BC1, F1, true], [F2, null]], ['F1', 'BC1']))).toEqual({BC1: 'F1'})
  })
})
