import {describe, expect, it} from 'vitest'
import type {Clause, Draft} from '../../src/logbook/book.ts'
import {expiredTolerances, missedWords, rowNote, sectionView, type PrintedAs} from '../../src/pages/clause-view.ts'
import {draftHistoryPage, type DraftHistory} from '../../src/pages/draft-history.ts'
import {standardPage, type StandardPage} from '../../src/pages/standard.ts'
import {plainClause, plainDraft, plainSection} from '../paper-parts.ts'
import {comb, date, smallBook} from './small-logbook.ts'

const printed: PrintedAs = {changed: new Set(), units: 'metric', season: 2025}
const accepted = (until: number): Clause['accepted'] => ({what: 'Horn in the toenails', looks: {male: null, female: null}, until, then: 'serious'})
const tail = {...comb, kind: 'measured' as const, states: [], unit: 'degrees'}
const ranged: Partial<Clause> = {trait: tail, ownRange: true, sex: 'male', allows: {male: {kind: 'between', low: 40, high: 50}, female: null}}
const seen = (more: Partial<Clause>, as: PrintedAs = printed) => sectionView(plainSection('body', [plainClause('body/tail', 'Tail', 'Low.', more)]), 'Body', as).clauses[0]!

describe('a clause as it is printed', () => {
  it.each([
    [{}, ''], [{mandatory: true}, 'Required.'], [{ifMissed: 'minor'}, 'A minor fault if missed.'], [{mandatory: true, ifMissed: 'disqualifying'}, 'Required; a disqualification if missed.'],
    [ranged, '40 to 50°.'], [{...ranged, ifMissed: 'serious'}, '40 to 50°; a serious fault if missed.'], [{...ranged, ownRange: false}, ''],
    [{trait: comb, ownRange: true, allows: {male: {kind: 'states', states: ['pea']}, female: null}}, ''],
    [{...ranged, sex: null, allows: {male: {kind: 'between', low: 40, high: 50}, female: {kind: 'at-most', value: 40}}}, 'Males 40 to 50°, females at most 40°.'],
  ] as const)('says beside its words what is asked: %j', (more, words) => expect(seen(more as Partial<Clause>).asked).toBe(words))

  it.each([
    ['Horn in the toenails', 'horn in the toenails'], ['Holm White down', 'Holm White down'], ['AOCC marks', 'AOCC marks'], ['Lighter.', 'lighter'], ['Ivory, as in the Holm White', 'ivory, as in the Holm White'],
  ])('begins what is accepted small, unless with a name of several words: %s', (what, said) => expect(seen({accepted: {what, looks: {male: null, female: null}, until: 2025, then: null}}).accepted).toBe(`Accepted until the season of 2025: ${said}.`))

  it('says what is accepted up to its last season and not after it, but in a draft kept as it stood always', () => {
    expect(seen({accepted: accepted(2025)}).accepted).toBe('Accepted until the season of 2025: horn in the toenails; afterwards a serious fault.')
    expect(seen({accepted: accepted(2024)}).accepted).toBeNull()
    expect(seen({accepted: accepted(2024)}, {...printed, season: null}).accepted).not.toBeNull()
  })
})

describe('colour varieties', () => {
  const of = (id: string, title: string, variety: string | null) => plainClause(id, title, 'White.', {variety})
  const heads = (...clauses: Clause[]) => sectionView(plainSection('colour', clauses), 'Colour', printed).clauses.map(({variety, title}) => [variety?.title ?? null, variety?.id ?? null, title])
  it('begin with a heading each', () => {
    expect(heads(of('colour/both', 'In both', null), of('colour/light/male', 'Male', 'Light'), of('colour/light/female', 'Female', 'Light'), of('colour/red/male', 'Male', 'Red'))).toEqual(
      [[null, null, 'In both'], ['Light', 'colour-light', 'Male'], [null, null, 'Female'], ['Red', 'colour-red', 'Male']])
  })
  it('have one under a name that is not free too', () => expect(heads(of('colour/light-2/male', 'Male', 'Light'))).toEqual([['Light', 'colour-light-2', 'Male']]))
  it('told in one piece have a run-in head instead', () => expect(heads(of('colour/light', 'Light', 'Light'))).toEqual([[null, null, 'Light']]))
  it('told in a piece and by sex have a heading, and the piece no head of its own', () => {
    expect(heads(of('colour/light', 'Light', 'Light'), of('colour/light/male', 'Male', 'Light'))).toEqual([['Light', 'colour-light-variety', ''], [null, null, 'Male']])
  })
  it('named by an entry alone have none', () => expect(heads(of('colour/male', 'Male', 'Light'))).toEqual([[null, null, 'Male']]))
})

describe('what clauses say of missing them', () => {
  const clauses = [plainClause('body/comb', 'Comb', 'Pea.', {ifMissed: 'disqualifying'}), plainClause('body/tail', 'Tail', 'Low.', {ifMissed: 'minor'}), plainClause('body/back', 'Back', 'Broad.', {ifMissed: 'minor'})]
  const draft = plainDraft(1, '2024-01-01', {sections: [plainSection('body', clauses), plainSection('faults', [plainClause('faults/serious', 'Serious', 'A wry tail.')], {kind: 'faults', title: 'Faults'})]})
  const words = 'By the clauses themselves. A disqualification if missed: Comb. A minor fault if missed: Tail; back.'
  it('is gathered by severity, and stands under the faults', () => {
    expect(missedWords(draft)).toBe(words)
    const shown = (of: Draft) => (standardPage({...smallBook(), drafts: [of]}).view as StandardPage).standard!
    expect(shown(draft).parts.at(-1)?.section?.note).toBe(words)
    expect(shown(draft).missed).toBeNull()
    expect(shown({...draft, sections: draft.sections.slice(0, 1)}).missed).toBe(words)
  })
  it('is nothing where none does', () => expect(missedWords(plainDraft(1, '2024-01-01'))).toBeNull())
})

describe('a row of a table', () => {
  const draft = plainDraft(1, '2024-01-01', {rows: [plainClause('weights/cock', 'Weight, cock', '', {...ranged, mandatory: true, accepted: accepted(2026)})]})
  it('says what is asked beside its weight', () => {
    expect(rowNote(draft, 'weights/cock', printed)).toBe('Required. Accepted until the season of 2026: horn in the toenails; afterwards a serious fault.')
    expect(rowNote(draft, 'weights/hen', printed)).toBe('')
  })
})

describe('a tolerance that is over', () => {
  const draft = (number: number) => plainDraft(number, `202${number}-01-01`, {sections: [plainSection('body', [plainClause('body/toes', 'Toes', 'White.', {accepted: accepted(2024)})])]})
  it('is told with what changed, by the day of the book', () => {
    expect(expiredTolerances(draft(2), date('2025-01-01').first)).toEqual([{what: 'Toes', anchor: 'body-toes', words: 'No longer accepted since the season of 2024 ended: horn in the toenails; it is now a serious fault.'}])
    expect(expiredTolerances(draft(2), date('2024-12-31').first)).toEqual([])
    const view = draftHistoryPage({...smallBook(), asOf: date('2025-01-01').first, drafts: [draft(1), draft(2)]})!.view as DraftHistory
    expect(view.expired).toHaveLength(1)
  })
})

describe('the whole way of the standard', () => {
  const worded = (number: number, text: string) => plainDraft(number, `202${number}-01-01`, {sections: [plainSection('body', [plainClause('body/toes', 'Toes', text)])]})
  const view = (...drafts: Draft[]) => draftHistoryPage({...smallBook(), drafts})!.view as DraftHistory
  it('is told from the first draft to the latest where others lie between', () => {
    expect(view(worded(1, 'Four.'), worded(2, 'Four, straight.')).overall).toBeNull()
    expect(view(worded(1, 'Four.'), worded(2, 'Four, straight.'), worded(3, 'Four, straight, white.')).overall).toMatchObject({title: 'From draft 1 to draft 3', changes: [{what: 'Toes'}]})
  })
})
