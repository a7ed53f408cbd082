import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {currentStep, ladderOf, type ReachedStep} from '../../src/findings/ladder.ts'
import {inLadderOrder, readLabel} from '../../src/findings/step-order.ts'
import type {Logbook, Step} from '../../src/logbook/book.ts'
import {expectClose} from '../expect-close.ts'
import {bird, date, F1, fell, holm, logbook, project, smallBook, weekOld} from '../pages/small-logbook.ts'
import {drawnBook, turned} from './drawn-book.ts'

const reached = (book: Logbook): readonly ReachedStep[] => ladderOf(book).filter(step => step.kind === 'reached')
const step = (label: string, backcrosses: number, interSe: number, kind: Step['kind'] = 'backcross'): Step => ({...F1, label, kind, backcrosses, interSe})

describe('ladderOf(book)', () => {
  it('says of each step who bred it, what came of it, and what is planned', () => {
    const [one, two, three] = ladderOf(smallBook())
    expect(three).toEqual({kind: 'planned', label: 'F3', beside: false})
    if (one?.kind !== 'reached' || two?.kind !== 'reached') throw new Error('F1 and F2 were reached')
    expect(one.label).toBe('F1')
    expect(one.chicks).toMatchObject({hatched: 14, unlisted: 2, listed: 12, banded: 9, unbanded: 3, male: 2, female: 6, unknownSex: 4, scored: 11, kept: 3})
    expect([...one.chicks.left]).toEqual([['culled', 1], ['lost', 1], ['sold', 3]])
    expect(one.sires.map(each => each.id)).toEqual(['H-1', 'H-3'])
    expect(one.dams.map(each => each.id)).toEqual(['B-1'])
    expect(one.seasons).toEqual([2024])
    expect([one.pens.map(each => each.id), one.hatches.map(each => each.id)]).toEqual([['2024-A'], ['2024-01']])
    expect(one.recurrentShare).toEqual({mean: 0.5, least: 0.5, greatest: 0.5, chicks: 14})
    expect(two.firstHatch?.text).toBe('2025-03-22')
  })

  it('has only plans after a week', () => expect(ladderOf(weekOld()).map(each => each.kind)).toEqual(['planned', 'planned', 'planned']))

  it('puts steps that the project does not plan after its ladder, and does not stand there', () => {
    const book = {...smallBook(), project: {...project, ladder: ['F1']}}
    expect(ladderOf(book).map(each => [each.label, each.beside])).toEqual([['F1', false], ['F2', true]])
    expect(currentStep(ladderOf(book))?.label).toBe('F1')
    expect(currentStep(ladderOf(smallBook()))?.label).toBe('F2')
    expect(currentStep(ladderOf(weekOld()))).toBeNull()
  })

  it('takes the mean of the recurrent share over chicks, not over hatches', () => {
    const shares = (share: number) => ({step: F1, strain: null, shares: new Map([[holm, share], [fell, 1 - share]])})
    const [one] = reached(logbook('2025-01-01', {birds: [bird('1', 'male', shares(0.5)), bird('2', 'male', shares(0.75)), bird('3', 'male', shares(0.75))]}))
    expectClose(one?.recurrentShare?.mean ?? NaN, 2 / 3, 1e-15)
    expect(one?.recurrentShare).toMatchObject({least: 0.5, greatest: 0.75, chicks: 3})
  })

  it('adds up: every chick of the ladder stands at one step', () => {
    fc.assert(fc.property(drawnBook, book => {
      const steps = reached(book)
      const banded = book.birds.filter(each => each.step.kind !== 'strain').length
      expect(steps.reduce((sum, {chicks}) => sum + chicks.banded, 0)).toBe(banded)
      for (const {chicks, birds} of steps) {
        expect(chicks.listed).toBe(chicks.banded + chicks.unbanded)
        expect(chicks.hatched).toBe(chicks.listed + chicks.unlisted)
        expect(chicks.male + chicks.female + chicks.unknownSex).toBe(chicks.listed)
        expect(birds.length).toBe(chicks.banded)
        expect([...chicks.left.values()].reduce((sum, count) => sum + count, 0)).toBeLessThanOrEqual(chicks.listed)
      }
    }), {numRuns: 60})
  })

  it('counts the same in any order of the records', () => {
    fc.assert(fc.property(drawnBook, book => {
      expect(reached(turned(book)).map(each => [each.label, each.chicks])).toEqual(reached(book).map(each => [each.label, each.chicks]))
    }), {numRuns: 40})
  })
})

describe('inLadderOrder', () => {
  it('stands as the breed grows, named steps above the lines they join, mixed birds last', () => {
    const rungs = [
      step('mixed', 0, 0, 'mixed'), step('SY1', 2, 0, 'named'), step('BC2F2', 2, 1), step('F2', 0, 1, 'filial'), step('BC2', 2, 0), step('BC1', 1, 0), step('F1', 0, 0, 'filial'),
      step('BC1F2', 1, 1), step('SY1F2', 2, 1, 'named'),
    ].map(each => ({label: each.label, step: each, first: null}))
    expect(rungs.sort(inLadderOrder).map(each => each.label)).toEqual(['F1', 'F2', 'BC1', 'BC1F2', 'BC2', 'BC2F2', 'SY1', 'SY1F2', 'mixed'])
  })

  it('puts a planned step where its label says', () => {
    const book = {...smallBook(), project: {...project, ladder: ['F1', 'BC1', 'F2', 'SY9']}}
    expect(ladderOf(book).map(each => each.label)).toEqual(['F1', 'F2', 'BC1', 'SY9'])
  })

  it('tells steps of one height by their first hatch', () => {
    const two = ['BC1-a', 'BC1-b'].map((label, index) => ({label, step: step(label, 1, 0), first: date(index === 0 ? '2024-05' : '2024-03').first}))
    expect(two.sort(inLadderOrder).map(each => each.label)).toEqual(['BC1-b', 'BC1-a'])
  })

  it.each([['F1', 0, 0], ['F3', 0, 2], ['BC2', 2, 0], ['BC3F2', 3, 1], ['BC2-fell-buff', 2, 0], ['BC1 to fell-buff', 1, 0]])('reads %s', (label, backcrosses, interSe) => {
    expect(readLabel(label)).toEqual({backcrosses, interSe})
  })
  it.each(['SY1', 'mixed', 'BC', 'F', 'BC2F', 'F2x'])('reads nothing in %s', label => expect(readLabel(label)).toBeNull())
})
