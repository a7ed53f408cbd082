import {describe, expect, it} from 'vitest'
import {otherParents} from '../../src/findings/other-parents.ts'
import type {Keeper} from '../../src/logbook/book.ts'
import {at, bird, date, hatch, parents, pen, smallBook, stay} from '../pages/small-logbook.ts'

const keeper: Keeper = {at, body: '', id: 'kelpgarth', name: 'Kelpgarth', consents: true, since: null, region: null}
const grown = (id: string, sex: 'male' | 'female', hatched = '2022-03-20') => bird(id, sex, {hatched: date(hatched)})
const [a, b, c, young, h, i, j] = [grown('A', 'male'), grown('B', 'male'), grown('C', 'male'), grown('Y', 'male', '2024-02-20'), grown('H', 'female'), grown('I', 'female'), grown('J', 'female')]
const own = pen('2024-A', 2024, {keeper, males: [stay(a), stay(b), stay(young)], females: [stay(h), stay(i)]})
const near = pen('2024-B', 2024, {keeper, males: [stay(c)], females: [stay(j)]})
const pens = [own, near, pen('2023-A', 2023, {keeper, males: [stay(grown('X', 'male'))]}), pen('2024-Z', 2024, {males: [stay(grown('Z', 'male'))]})]
const {project} = smallBook()
const ids = (list: readonly {readonly id: string}[]) => list.map(({id}) => id)

describe('otherParents(book)', () => {
  it('are the others of the pen, and of the same keeper’s pens of that season, that were old enough', () => {
    const of = hatch('1', {pens: [{pen: own, eggs: null}], on: date('2024-04-20')})
    const {sires, dams, pens: eggs} = otherParents({pens, project})(bird('24-1', 'male', {hatch: of, hatched: of.on, parentage: parents([[a, 1]], h)}))
    expect([ids(sires), ids(dams)]).toEqual([['B', 'C'], ['I']])
    // a hen of the other pen never met A: she comes in with the male of hers
    expect(eggs.map(({pen: {id}, ...both}) => [id, ids(both.sires), ids(both.dams)])).toEqual([['2024-B', ['C'], ['J']]])
  })
  it('takes hens that shared a setting, but no pen, with the sire for those of another egg', () => {
    const of = hatch('1', {pens: [{pen: own, eggs: 10}, {pen: near, eggs: 10}], on: date('2024-04-20')})
    const {dams, pens: eggs} = otherParents({pens, project})(bird('24-1', 'male', {hatch: of, hatched: of.on, parentage: parents([[a, 1]], h)}))
    expect([ids(dams), eggs.map(({pen: {id}}) => id)]).toEqual([['I'], ['2024-B']])
  })
  it('of a chick that no hatch lists are those of the pens its parents stood in', () => {
    const {sires, dams} = otherParents({pens, project})(bird('24-1', 'male', {hatched: date('2024-04-20'), parentage: parents([[c, 1]], j)}))
    expect([ids(sires), ids(dams)]).toEqual([['A', 'B'], []])
  })
  it('of a founder are none', () => expect(otherParents({pens, project})(bird('F', 'male', {hatched: date('2024-04-20')}))).toEqual({sires: [], dams: [], pens: []}))
})
