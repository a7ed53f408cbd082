import {describe, expect, it} from 'vitest'
import {birdsKept, passages} from '../../src/findings/bred-from.ts'
import {ladderOf} from '../../src/findings/ladder.ts'
import {smallBook} from '../pages/small-logbook.ts'
import {linesTogether} from './vigour-book.ts'

describe('birdsKept(book)', () => {
  it('are those kept on record, those put into pens and those that may be parents', () => {
    // by hand: 24-004 stands in pen 2025-A, and is a possible dam
    expect([...birdsKept(smallBook())].map(({id}) => id).sort()).toEqual(['24-001', '24-003', '24-004', 'B-1', 'B-2', 'H-1', 'H-3'])
  })
})

describe('passages(book, ladder)', () => {
  it('weighs the parents by their scored chicks, doubtful ones in parts', () => {
    const book = smallBook(), [one, ...more] = passages(book, ladderOf(book))
    expect(more).toEqual([])
    // six chicks scored, of two dams alike
    expect([one?.from, one?.to, one?.back, [...one?.chicks ?? []].map(([{id}, chicks]) => [id, chicks])]).toEqual(['F1', 'F2', null, [['24-001', 6], ['24-003', 3], ['24-004', 3]]])
  })

  it('knows a backcross by its strain, and a first cross as none', () => {
    const book = linesTogether(1, {holm: 1, fell: 1, cross: 1, back: 1}, 4, 1)
    expect(passages(book, ladderOf(book)).map(({from, to, back, chicks}) => [from, to, back?.id, [...chicks].map(([{id}, count]) => [id, count])])).toEqual([['F1', 'BC1', 'holm-white', [['X', 4]]]])
  })
})
