import {describe, expect, it} from 'vitest'
import {otherParents} from '../../src/findings/other-parents.ts'
import type {Keeper} from '../../src/logbook/book.ts'
import {at, bird, date, hatch, parents, pen, stay} from '../pages/small-logbook.ts'

const keeper: Keeper = {at, body: '', id: 'kelpgarth', name: 'Kelpgarth', consents: true, since: null, region: null}
const grown = (id: string, sex: 'male' | 'female', hatched = '2022-03-20') => bird(id, sex, {hatched: date(hatched)})
const [a, b, c, young, h, i, j] = [grown('A', 'male'), grown('B', 'male'), grown('C', 'male'), grown('Y', 'male', '2024-02-20'), grown('H', 'female'), grown('I', 'female'), grown('J', 'female')]
const own = pen('2024-A', 2024, {keeper, males: [stay(a), stay(b), stay(young)], females: [stay(h), stay(i)]})
const near = pen('2024-B', 2024, {keeper, males: [stay(c)], females: [stay(j)]})
const pens = [own, near, pen('2023-A', 2023, {keeper, males: [stay(grown('X', 'male'))]}), pen('2024-Z', 2024, {males: [stay(grown('Z', 'male'))]})]
const ids = (list: readonly {readonly id: string}[]) => list.map(({id}) => id)

describe('otherParents(book)', () => {
  it('are the others of the pen, and of the same keeper’s pens of that season, that were old enough', () => {
    const of = hatch('1', {pens: [{pen: own, eggs: null}], on: date('2024-04-20')})
    const {sires, dams} = otherParents({pens})(bird('24-1', 'male', {hatch: of, hatched: of.on, parentage: parents([[a, 1]], h)}))
    expect([ids(sires), ids(dams)]).toEqual([['B', 'C'], ['I', 'J']])
  })
  it('of a chick that no hatch lists are those of the pens its parents stood in', () => {
    const {sires, dams} = otherParents({pens})(bird('24-1', 'male', {hatched: date('2024-04-20'), parentage: parents([[c, 1]], j)}))
    expect([ids(sires), ids(dams)]).toEqual([['A', 'B'], ['H', 'I']])
  })
  it('of a founder are none', () => expect(otherParents({pens})(bird('F', 'male', {hatched: date('2024-04-20')}))).toEqual({sires: [], dams: []}))
})
