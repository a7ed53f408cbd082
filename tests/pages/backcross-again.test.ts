import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import type {Logbook} from '../../src/logbook/book.ts'
import {backcrossAgain} from '../../src/pages/backcross-again.ts'
import {halfSibs} from '../findings/kin-book.ts'
import {smallBook, weekOld} from './small-logbook.ts'

const view = (book: Logbook) => backcrossAgain(study(book).nextBackcross, 'metric')

describe('backcrossAgain(prospects)', () => {
  it('sets a backcross beside a mating inside the line', () => {
    const {words, table} = view(halfSibs())
    expect(words).toMatch(/^A further backcross would take the expected share of Holm White from 50\.0% to 75\.0% and give chicks of F 0\.0%; one more generation inside the line leaves the share as it is and gives chicks of F \d+\.\d%\./)
    expect(table?.columns.map(({head}) => head)).toEqual(['Expected', 'Now', 'Inside the line', 'Backcross'])
    expect(table?.rows.find(([head]) => head === 'Left around a donor gene, cM')).toEqual(['Left around a donor gene, cM', '100', '100', '79'])
  })
  it('says of looks only what was counted', () => {
    expect(view(smallBook()).looks?.rows).toEqual([[{text: 'Comb: pea', link: 'traits/comb.html'}, '66.7% of 6', 'cannot be told']])
  })
  it('says when it cannot be told', () => expect(view(weekOld())).toEqual({words: 'No step has been reached yet, so this cannot be told.', table: null, looks: null, notes: []}))
})
