import {describe, expect, it} from 'vitest'
import type {Evidence} from '../../src/findings/evidence.ts'
import {study} from '../../src/findings/study.ts'
import type {Bird, Draft, Photo, Requirement} from '../../src/logbook/book.ts'
import {at, bird, comb, date, F2, logbook, looks, score} from '../pages/small-logbook.ts'
import {plainDraft, plainRequirement} from '../paper-parts.ts'

const photo = (on: string | null): Photo => ({file: `${on ?? 'none'}.png`, on: on === null ? null : date(on), view: null, alt: null, caption: null})
const seen = (id: string, sex: 'male' | 'female' | 'unknown', hatched: string | null, photos: readonly (string | null)[], more: Partial<Bird> = {}): Bird =>
  bird(id, sex, {step: F2, strain: null, hatched: hatched === null ? null : date(hatched), photos: photos.map(photo), ...more})

function shown(birds: readonly Bird[], more: Partial<Requirement> = {}, drafts: readonly Draft[] = []): Evidence {
  const book = logbook('2025-11-15', {birds, drafts, requirements: {at, body: '', association: null, items: [plainRequirement('photographs', more)], papers: [], distinctness: null}}), [only] = study(book).evidence.items
  return only ?? expect.fail('no evidence')
}
const missing = ({shown: of}: Evidence) => (of.kind === 'photographs' ? of.missing.map(({sex, age, variety}) => [age, sex, ...(variety === null ? [] : [variety])].join(' ')) : [])

const FOUR = [seen('1', 'male', '2024-04', ['2024-09', '2025']), seen('2', 'female', '2024-04', ['2024-10-01', '2025-01-01'])]

describe('photographs(requirement, sources)', () => {
  it('wants each sex young and grown, by the year of hatching on the day of the picture', () => {
    expect([shown(FOUR).state, missing(shown(FOUR))]).toEqual(['met', []])
    expect(missing(shown(FOUR.slice(0, 1)))).toEqual(['young female', 'grown female'])
    expect(missing(shown(FOUR.slice(0, 1), {ages: ['grown']}))).toEqual(['grown female'])
    expect(missing(shown([]))).toEqual(['young male', 'grown male', 'young female', 'grown female'])
  })

  it('counts no picture without its day, nor of a bird of unknown sex or hatch', () => {
    const found = shown([...FOUR.slice(0, 1), seen('2', 'female', '2024-04', [null, '2025-02-01'])])
    expect([found.state, missing(found), found.ways]).toMatchObject(['cannot-tell', ['young female'], [{kind: 'date-photographs', birds: [{id: '2'}]}]])
    expect(missing(shown([...FOUR.slice(0, 1), seen('2', 'female', null, ['2025-02-01']), seen('3', 'unknown', '2024', ['2024-05'])]))).toEqual(['young female', 'grown female'])
  })

  it('says of which no bird is living, and asks for more birds or pictures besides', () => {
    const found = shown(FOUR.slice(0, 1), {males: 2, atLeast: 5})
    expect(found).toMatchObject({state: 'not-yet', ways: [{kind: 'photographs', males: 1, females: 0, all: 3, wanted: [{sex: 'female', age: 'young', living: 0}, {sex: 'female', age: 'grown', living: 0}], earliest: {kind: 'season'}}]})
    expect(shown(FOUR, {atLeast: 4}).state).toBe('met')
    expect(shown(FOUR, {atLeast: 5}).state).toBe('not-yet')
  })

  it('leaves out pictures of other days', () => {
    expect(missing(shown(FOUR, {from: date('2025')}))).toEqual(['young male', 'young female'])
    expect(shown(FOUR, {from: date('2025')}).aged.earlier).toBe(2)
  })

  const state = (is: string) => ({kind: 'states', states: [is]}) as const
  const told = plainDraft(1, '2025-01-01', {varieties: [{name: 'Light', looks: new Map([[comb, state('pea')]])}, {name: 'Dark', looks: new Map([[comb, state('single')]])}]})
  const asIs = (birds: readonly Bird[], is: string): readonly Bird[] => birds.map((each, index) => ({...each, id: `${is}${index}`, looks: looks(score(comb, is))}))

  it('wants each variety of the latest draft, by the looks that tell it', () => {
    const light = asIs(FOUR, 'pea'), both = [...light, ...asIs(FOUR, 'single')]
    expect(shown(both, {}, [told]).state).toBe('met')
    expect(missing(shown(light, {}, [told]))).toEqual(['young male Dark', 'grown male Dark', 'young female Dark', 'grown female Dark'])
    expect(shown(light, {varieties: ['light']}, [told]).state).toBe('met')
  })

  it('cannot tell of birds not scored for them, or of varieties without looks', () => {
    expect(shown(FOUR, {varieties: ['Light']}, [told])).toMatchObject({state: 'cannot-tell', ways: [{kind: 'tell-varieties', varieties: [], birds: [{id: '1'}, {id: '2'}]}]})
    const bare = plainDraft(1, '2025-01-01', {varieties: [{name: 'Light', looks: new Map()}, {name: 'Dark', looks: new Map()}]})
    expect(shown(FOUR, {}, [bare])).toMatchObject({state: 'cannot-tell', ways: [{kind: 'tell-varieties', varieties: ['Light', 'Dark']}]})
    expect(shown(FOUR.slice(0, 1), {}, [bare]).state).toBe('not-yet')
  })
})
