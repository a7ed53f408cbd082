import {describe, expect, it} from 'vitest'
import {ladderOf} from '../../src/findings/ladder.ts'
import {upcoming} from '../../src/findings/upcoming.ts'
import type {CareEntry, Hatch, Logbook} from '../../src/logbook/book.ts'
import {isoDay} from '../../src/records/dates.ts'
import {at, bird, comb, date, F2, hatch, logbook, looks, project, score} from '../pages/small-logbook.ts'
import {plainPaper, plainRequirement} from '../paper-parts.ts'

const told = (book: Logbook): string[] => upcoming(book, ladderOf(book)).map(({kind, on}) => `${on === null ? '' : `${isoDay(on)} `}${kind}`)
const plain = (asOf: string, more: Partial<Logbook>): Logbook => logbook(asOf, {project: {...project, ladder: []}, ...more})
const setOn = (set: string, more: Partial<Hatch> = {}): Hatch => hatch('1', {set: date(set), step: F2, ...more})

describe('upcoming(book)', () => {
  // 21 days of incubation, turning ends on day 18: state extension pages and common practice. 29 February counts.
  it.each([['2024-03-02', '2024-03-20', '2024-03-23'], ['2024-02-20', '2024-03-09', '2024-03-12']])('eggs set %s are turned until %s and hatch %s', (set, stop, due) => {
    expect(told(plain(set, {hatches: [setOn(set)]}))).toEqual([`${stop} stop-turning`, `${due} hatch-due`])
  })
  it('asks for a result when the day has passed, and for nothing once it is written', () => {
    expect(told(plain('2024-03-24', {hatches: [setOn('2024-03-02')]}))).toEqual(['2024-03-23 hatch-result-wanting'])
    expect(told(plain('2024-03-24', {hatches: [setOn('2024-03-02', {hatched: 9})]}))).toEqual([])
    expect(told(plain('2024-03-24', {hatches: [setOn('2024-03')]}))).toEqual([])
  })
  it('tells ages coming due of the living that are not weighed or scored yet', () => {
    const young = {hatched: date('2024-03-23'), step: F2, strain: null}
    const birds = [
      bird('1', 'male', young), bird('2', 'female', {...young, looks: looks(score(comb, 'pea'))}), bird('3', 'male', {...young, left: {on: date('2024-04-01'), how: 'died', why: null}}),
      bird('4', 'male', {...young, hatched: date('2024-03')}),
    ]
    const found = upcoming(plain('2024-04-15', {birds}), [])
    expect(found.map(({kind, on}) => [kind, on === null ? null : isoDay(on)])).toEqual([['score', '2024-05-04'], ['weigh', '2024-08-10']])
    expect(found.map(each => ('birds' in each ? each.birds.map(({id}) => id) : []))).toEqual([['1'], ['1', '2']])
    expect(told(plain('2024-08-20', {birds}))).toEqual(['2024-08-10 weigh'])
    expect(told(plain('2024-08-21', {birds}))).toEqual([])
  })
  it('tells the end of withholding and of papers, then what is planned without a day', () => {
    const care: CareEntry = {
      at, body: '', id: 'drops', care: 'treatment', on: date('2024-05-02'), to: null, pens: [], birds: [], hatches: [], with: null, eggsWithheldUntil: date('2024-05-21'),
      meatWithheldUntil: date('2024-05-03'),
    }
    const requirements = {at, body: '', association: null, items: [], distinctness: null, papers: [plainPaper('veterinary', '2024', '2024-06', {title: ''})]}
    expect(told(logbook('2024-05-10', {care: [care], requirements}))).toEqual(['2024-05-21 eggs-withheld', '2024-06-30 paper-ends', 'planned-step', 'planned-step', 'planned-step'])
  })
  it('tells the day by which something is asked, the last of a waiver, and of a paper by the age that is allowed', () => {
    const waived = {because: 'Forbidden.', by: null, on: null, until: date('2024-08')}
    const items = [plainRequirement('years-bred', {by: date('2024-07'), waived}), plainRequirement('veterinary', {within: 100}), plainRequirement('history', {by: date('2024-04')})]
    // by hand: 100 days after 1 April are 10 July, before its own end in December
    const requirements = {at, body: '', association: null, items, distinctness: null, papers: [plainPaper('veterinary', '2024-04-01', '2024-12')]}
    expect(told(logbook('2024-05-10', {requirements}))).toEqual(['2024-07-10 paper-ends', '2024-07-31 asked-by', '2024-08-31 waiver-ends', 'planned-step', 'planned-step', 'planned-step'])
  })
  it('ends a paper by the strictest of its rules', () => {
    const items = [plainRequirement('veterinary', {within: 730}), plainRequirement('veterinary', {within: 365})]
    const book = plain('2024-06-01', {requirements: {at, body: '', association: null, items, distinctness: null, papers: [plainPaper('veterinary', '2024-01-01')]}})
    // by hand: 2024 has 366 days
    expect(told(book)).toEqual(['2024-12-31 paper-ends'])
  })
})
