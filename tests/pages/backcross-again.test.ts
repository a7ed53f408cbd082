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
  it('says what speaks for it and what against', () => {
    expect(view(halfSibs()).verdict[0]).toMatchObject({head: 'For'})
    expect(view(halfSibs()).verdict[0]?.words).toMatch(/^F of the chicks falls to 0\.0%, from \d+\.\d% inside the line; 25\.0% more of it is Holm White\.$/)
    const found = study(halfSibs()).nextBackcross
    if (found.kind === 'cannot-say') throw new Error('nothing found')
    const far = backcrossAgain({...found, now: {...found.now, share: 0.969}, backcross: {...found.backcross, share: 0.984, f: 0.9}}, 'metric')
    expect(far.verdict).toEqual([{head: 'Against', words: 'F of the chicks is no lower, 90.0%; 96.9% Holm White already, only 1.5% more to be had.'}])
  })
  it('explains its heads', () => expect(view(halfSibs()).notes.join(' ')).toMatch(/two birds in three.*centimorgan/))
  it('says of looks only what was counted', () => {
    expect(view(smallBook()).looks?.rows).toEqual([[{text: 'Comb: pea', link: 'traits/comb.html'}, '66.7% of 6', 'cannot be told']])
    const found = study(smallBook()).nextBackcross
    if (found.kind === 'cannot-say') throw new Error('nothing found')
    // the breed stands at its one backcross: a step is not held against itself
    const same = backcrossAgain({...found, looks: found.looks.map(look => ({...look, atBackcross: {step: found.step, share: look.now}, ofStrain: {state: 'single', wanted: false}}))}, 'metric')
    expect(same.looks?.columns.map(({head}) => head)).toEqual(['Wanted look', found.step])
    expect(same.looks?.rows).toEqual([[{text: 'Comb: pea', link: 'traits/comb.html'}, '66.7% of 6']])
    expect(same.verdict.at(-1)?.words).toContain('(shown by 66.7% now)')
    expect(same.notes.join(' ')).not.toContain('latest backcross')
  })
  it('says when it cannot be told', () => expect(view(weekOld())).toEqual({verdict: [], words: 'No step has been reached yet, so this cannot be told.', table: null, looks: null, notes: []}))
})
