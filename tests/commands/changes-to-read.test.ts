import {describe, expect, it} from 'vitest'
import {changesFigures, changesToRead, draftsAsked} from '../../src/commands/changes-to-read.ts'
import {Refusal} from '../../src/commands/refusal.ts'
import {study} from '../../src/findings/study.ts'
import {shownBook} from '../pages/shown-logbook.ts'
import {plainDraft} from '../paper-parts.ts'

const findings = study(shownBook()), {book} = findings
const more = {...book, drafts: [...book.drafts, plainDraft(4, '2025-12-01')]}
const refused = (asked: Parameters<typeof draftsAsked>[1], drafts = more.drafts): string => {
  try {
    draftsAsked({...more, drafts}, asked)
    return ''
  } catch (fault) {
    if (!(fault instanceof Refusal)) throw fault
    return fault.message
  }
}

describe('which drafts', () => {
  it('are the last two where none is named, and the one before where only the later is', () => {
    const numbers = (asked: Parameters<typeof draftsAsked>[1]) => draftsAsked(more, asked).map(({number}) => number)
    expect(numbers({})).toEqual([2, 4])
    expect(numbers({from: '1'})).toEqual([1, 4])
    expect(numbers({to: '2'})).toEqual([1, 2])
    expect(numbers({from: 'draft 1', to: '4'})).toEqual([1, 4])
  })
  it.each([
    [{from: '3'}, 'There is no draft 3 for --from; drafts are 1, 2, 4.'], [{from: '4', to: '1'}, 'Draft 4 is later than draft 1; ask --from 1 --to 4.'], [{from: '2', to: '2'}, 'Say two drafts; draft 2 cannot have changed from itself.'],
    [{to: '1'}, 'Draft 1 is the first; nothing changed before it.'],
  ])('%j is refused', (asked, words) => expect(refused(asked)).toBe(words))
  it('are wanting while there are fewer than two', () => {
    expect(refused({}, [])).toBe('The standard has not been drafted.')
    expect(refused({from: '1', to: '2'}, more.drafts.slice(0, 1))).toBe('There is only draft 1 of the standard: nothing has changed yet.')
  })
})

describe('what changed, to read', () => {
  const {above, table, beneath} = changesToRead(findings, {})
  it('names the drafts and counts the pieces', () => expect(above).toBe('Draft 1 of 2 November 2024 and draft 2 of 14 October 2025: 5 pieces differ.\n\n'))
  it('has a line a piece', () => {
    expect(table.rows).toEqual([
      ['general-characteristics-male/tail', 'Tail, male', 'reworded'], ['general-characteristics-male/comb', 'Comb', 'reworded'], ['faults/serious', 'Serious faults', 'added'],
      ['general-characteristics-male/crest', 'Crest', 'dropped'], ['weights/pullet', 'Pullet, weight', 'changed'],
    ])
  })
  it('sets the words that went and came in brackets, with the reason', () => {
    expect(beneath).toContain('Tail, male\n  was  Carried [well up].\n  is   Carried [at 45 degrees].\n')
    expect(beneath).toContain('Comb\n  was  Small and low.\n  is   Three low ridges.\n  Why: From the judge’s remarks.\n')
    expect(beneath).toContain('Pullet, weight\n  was  2.2 kg\n  is   2.1 kg\n  Why: The mean of two seasons.\n')
  })
  it('has as many pieces in the whole table', () => expect(new Set(changesFigures(findings, {}).rows.map(([piece]) => piece)).size).toBe(5))
})
