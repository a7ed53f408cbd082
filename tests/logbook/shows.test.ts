/** What an entry of a show may say, linked: grade, shared place, clauses of its draft, and a cancellation with its paper. */
import {describe, expect, it} from 'vitest'
import {around, bookOf, codesAt, linkFiles} from './around.ts'

const DRAFT = (number: number, on: string, clause: string) => `---\ndraft: ${number}\non: ${on}\nweights: {cock: 3.2 kg}\negg: Tinted\n---\n## General characteristics, male\n\n**${clause}.** Of medium length.\n`
const DRAFTS = {'standard/1.md': DRAFT(1, '2024-01-10', 'Tail'), 'standard/2.md': DRAFT(2, '2025-01-10', 'Comb')}
const show = (entry: string, more = '') => ({'shows/2024-11-02-hall.md': `---\nname: Autumn show\non: 2024-11-02\n${more}entries:\n  - {bird: H-1, class: cock${entry}}\n---\n`})
const entryOf = (entry: string) => bookOf({...DRAFTS, ...show(entry)}).shows[0]?.entries[0]

describe('an entry of a show', () => {
  it('has a grade, a place that was shared, and clauses', () => {
    expect(entryOf(', result: 2= of 7, grade: very good, remark: Tail high, about: general-characteristics-male/tail')).toMatchObject({place: 2, shared: true, of: 7, grade: 'very good', about: ['general-characteristics-male/tail']})
    expect(entryOf(', result: 2 of 7')).toMatchObject({shared: false, grade: null, about: []})
  })
  it('may be about a weight or the egg', () => expect(entryOf(', about: [weights/cock, egg]')?.about).toEqual(['weights/cock', 'egg']))
  it('is about clauses of the draft it names, else of the one in force on the day', () => {
    const problems = (entry: string) => codesAt(linkFiles(around({...DRAFTS, ...show(entry)})).problems)
    expect(problems(', about: general-characteristics-male/tail')).toEqual([])
    expect(problems(', about: general-characteristics-male/comb')).toEqual(['shows/2024-11-02-hall.md:5 clause-unknown'])
    expect(problems(', draft: 1, about: [general-characteristics-male/tail, tail]')).toEqual(['shows/2024-11-02-hall.md:5 clause-unknown'])
    expect(linkFiles(around({...DRAFTS, ...show(', about: tail')})).problems[0]?.remedy).toBe('did you mean general-characteristics-male/tail?')
  })
})

describe('a cancelled show', () => {
  const cancelled = (words: string) => bookOf({'shows/2024-11-02-hall.md': `---\nname: Autumn show\non: 2024-11-02\ncancelled: ${words}\n---\n`}).shows[0]
  it('has its reason, and who ordered it where that is written', () => {
    expect(cancelled('All gatherings were forbidden.')).toMatchObject({cancelled: 'All gatherings were forbidden.'})
    expect(cancelled('All gatherings were forbidden.')).not.toHaveProperty('order')
    expect(cancelled('{because: All gatherings were forbidden., by: the veterinary office, on: 2024-10-30}')).toMatchObject({cancelled: 'All gatherings were forbidden.', order: {by: 'the veterinary office', on: {text: '2024-10-30'}}})
    expect(cancelled('{because: Rain.}')).not.toHaveProperty('order')
  })
})

describe('a score sheet', () => {
  it('gives no more points than the heading has', () => {
    expect(codesAt(linkFiles(around({'shows/2024-11-02-hall.md': '---\nname: Show\non: 2024-11-02\nscores:\n  - {bird: H-1, Type: 31 of 30}\n---\n'})).problems)).toEqual(['shows/2024-11-02-hall.md:5 unreadable-value'])
  })
})
