import {describe, expect, it} from 'vitest'
import {judgeAgreement} from '../../src/findings/judge-agreement.ts'
import {sheetsCompared} from '../../src/findings/sheets-compared.ts'
import {sheetsOfPoints} from '../../src/findings/sheets-of-points.ts'
import type {Bird, KeepersSheet, Logbook, Show, ShowScore} from '../../src/logbook/book.ts'
import {placingsView, pointsViews} from '../../src/pages/judges-against-keepers.ts'
import {plainDraft} from '../paper-parts.ts'
import {entry, keeper, show} from './shown-logbook.ts'
import {at, bird, date, logbook, looks, score, trait} from './small-logbook.ts'

const wanted = {kind: 'at-least', value: 7} as const
const type = trait('type', 'Type', {kind: 'graded', scale: {from: 1, to: 10}, wanted: {male: wanted, female: wanted}})
const marked = (id: string, value: number): Bird => bird(id, 'female', {looks: looks(score(type, value, {on: date('2025-08-01')}))})
const pullets = (id: string, ...values: readonly number[]): Show =>
  show(id, id, '2025-09-01', {entries: values.map((value, place) => entry(marked(`${id}${place}`, value), {class: 'pullet', judge: 'judge 1', place: place + 1}))})
const placings = (...shows: Show[]) => {
  const book = logbook('2026-01-01', {shows, traits: [type]})
  return placingsView(judgeAgreement(book, sheetsOfPoints(book)))
}

describe('placingsView(agreements)', () => {
  it('says that few are too few, and gives no tau by judge', () => {
    const found = placings(pullets('a', 9, 8, 6))
    expect(found?.words).toEqual(['Type: of 3 pairs of our birds, 3 stood the same way round with the judge as with us and 0 the other way. Too few to say: even full agreement would come of chance 33 in 100 times.'])
    expect(found?.table.rows).toEqual([['Type', 'All', '3', '3', '0', 'too few', '–'], ['Type', 'judge 1', '3', '3', '0', 'too few', '–']])
  })
  it('says what chance leaves of full agreement, and of none', () => {
    expect(placings(pullets('a', 9, 8, 7, 6, 5))?.words[0]).toContain('Tau-b is +1.00; chance alone goes as far 2 in 100 times: the judges see it as we do, on the whole.')
    expect(placings(pullets('a', 5, 6, 7, 8, 9))?.words[0]).toContain('the judges see it the other way round.')
    expect(placings(pullets('a', 7, 8, 9, 6, 7))?.words[0]).toContain('so no agreement is shown, nor that there is none.')
    expect(placings(pullets('a', 9, 8, 7, 6, 5))?.table.rows[0]).toEqual(['Type', 'All', '10', '10', '0', '+1.00', '0.017'])
  })
  it('takes in how many tests the table has', () => {
    const by = (id: string, judge: string, ...values: readonly number[]) => { const one = pullets(id, ...values); return {...one, entries: one.entries.map(each => ({...each, judge}))} }
    // of 5 orders alike 2 in 120 deals are as far; of both judges 4 of 14400: the three tests make 0.0003 · 3, then 0.0167 · 2
    const found = placings(by('a', 'judge 1', 9, 8, 7, 6, 5), by('b', 'judge 2', 9, 8, 7, 6, 5))
    expect(found?.table.rows.map(row => row.at(-1))).toEqual(['under 0.001', '0.033', '0.033'])
    expect(found?.words[0]).toContain('chance alone goes as far less than once in 100 times, and P is under 0.001 with all 3 tests of the table taken in: the judges see it as we do')
    // a judge alone is no second test
    expect(placings(pullets('a', 9, 8, 7, 6, 5))?.table.rows.map(row => row.at(-1))).toEqual(['0.017', '0.017'])
    // 0.0083 each way of four judges by themselves: 8 in 100 once all are taken in
    const four = placings(...[1, 2, 3, 4].map(place => by(`s${place}`, `judge ${place}`, ...(place < 3 ? [9, 8, 7, 6, 5] : [5, 6, 7, 8, 9]))))
    expect(four?.table.rows.map(row => row.at(-1))).toEqual(['1.00', '0.083', '0.083', '0.083', '0.083'])
    expect(four?.words[0]).toContain('so no agreement is shown')
  })
  it('lists the ten judges with the most pairs', () => {
    const shows = Array.from({length: 12}, (_, place) => {
      const one = pullets(`s${place}`, ...(place === 3 ? [9, 8] : [9, 8, 7]))
      return {...one, entries: one.entries.map(each => ({...each, judge: `judge ${place + 1}`}))}
    })
    const found = placings(...shows)
    expect(found?.table.rows.map(row => row[1])).toEqual(['All', ...[1, 2, 3, 5, 6, 7, 8, 9, 10, 11].map(number => `judge ${number}`)])
    expect(found?.words.at(-1)).toBe('Of each mark the 10 judges with the most pairs stand here.')
  })
  it('names apart what was marked all level, and says nothing where there is no pair', () => {
    expect(placings(pullets('a', 7, 7))).toMatchObject({words: ['Type: of the few pairs both marked, one of the two put all level, so there is no order to hold.'], table: {rows: []}})
    expect(placings(pullets('a', 7))).toBeNull()
  })
})

const inga = keeper('inga', 'Inga'), draft = plainDraft(1, '2025-01-01', {points: [{name: 'Type', points: 60}, {name: 'Colour', points: 40}]})
const points = (of: Bird, by: ShowScore['by'], type: number, colour: number): ShowScore => ({bird: of, by, draft: 1, at, headings: [{name: 'Type', points: type, of: 60}, {name: 'Colour', points: colour, of: 40}]})
const views = (pairs: readonly (readonly [judge: readonly [number, number], own: readonly [number, number]])[], more: Partial<Logbook> = {}) => {
  const birds = pairs.map((_, place) => bird(`b${place}`, 'female'))
  const sheets = birds.map((of, place): KeepersSheet => ({...points(of, inga, ...(pairs[place]?.[1] ?? [0, 0])), on: date('2025-08-20'), struck: null}))
  const scores = birds.map((of, place) => points(of, 'judge 1', ...(pairs[place]?.[0] ?? [0, 0])))
  return pointsViews(sheetsCompared(sheetsOfPoints(logbook('2026-01-01', {drafts: [draft], shows: [show('x', 'x', '2025-09-01', {scores})], sheets, ...more}))))
}

describe('pointsViews(compared)', () => {
  it('lets few sheets stand as they are', () => {
    const [found] = views([[[50, 30], [52, 30]], [[49, 33], [49, 31.5]]])
    expect(found).toMatchObject({head: 'The judges’ points against ours', words: '2 birds scored by both under one draft: too few for a mean, so here they stand, the judge’s points, then ours, the mean where several of us scored it.', largest: []})
    expect(found?.table?.columns.map(({head}) => head)).toEqual(['Heading', 'Of', 'b0, judge 1', 'b1, judge 1'])
    expect(found?.table?.rows).toEqual([['Type', '60', '50, 52', '49, 49'], ['Colour', '40', '30, 30', '33, 31.5']])
  })
  it('gives mean, interval, limits and the largest differences from five on', () => {
    const [found] = views([[[50, 30], [52, 30]], [[49, 33], [50, 33]], [[51, 33], [50, 33]], [[40, 33], [43, 33]], [[45, 33], [45, 33]]])
    expect(found?.table?.columns.map(({head}) => head)).toEqual(['Heading', 'Of', 'Birds', 'Judge less ours', '95%', 'Next bird, 95%'])
    // −2, −1, 1, −3, 0: mean −1, SD 1.581; ± 2.776 · 1.581/√5 and ± 2.776 · 1.581 · √(6/5)
    expect(found?.table?.rows).toEqual([['Type', '60', '5', '−1.0', '−3.0 to +1.0', '−5.8 to +3.8'], ['Colour', '40', '5', '0.0', 'all alike', '–']])
    expect(found?.words).toBe('5 birds scored by both under one draft. On the whole sheet judge 1 gave 1 less than Inga on average, −3.0 to +1.0.')
    expect(found?.largest.map(({bird: {band}, words}) => `${band} ${words}`)).toEqual(['b3 Type: 40 by judge 1, 43 by us', 'b0 Type: 50 by judge 1, 52 by us', 'b1 Type: 49 by judge 1, 50 by us', 'b2 Type: 51 by judge 1, 50 by us'])
  })
  it('says which sheets lack a heading, and keeps the sentence short where nothing stands below', () => {
    const [found] = views([[[50, 30], [52, 30]], [[49, 33], [49, 31]]], {drafts: [{...draft, points: [...draft.points, {name: 'Condition', points: 10}]}]})
    expect(found?.words).toMatch(/here they stand, .*scored it\. 2 sheets without a heading of the scale are held heading by heading, but not as a whole\.$/)
    expect(found?.inShort).toBe('2 birds scored by both under one draft, too few for a mean. 2 sheets without a heading of the scale are held heading by heading, but not as a whole.')
  })
  it('says what had nothing to stand against', () => {
    expect(views([[[50, 30], [52, 30]]], {sheets: []})[0]).toMatchObject({words: 'No bird was scored by both under one draft. Left out: 1 sheet of a bird that we did not score under that draft.', table: null})
  })
})
