/** Laws of evidence, over many made-up flocks: more of what is counted never undoes what was met, and an earlier day never knows of what came later. */
import {describe, expect, it} from 'vitest'
import * as fc from 'fast-check'
import type {Evidence} from '../../src/findings/evidence.ts'
import {study} from '../../src/findings/study.ts'
import type {Bird, Hatch, Logbook, Requirement, RequirementKind, Show, ShowEntry} from '../../src/logbook/book.ts'
import {dayOf} from '../../src/records/dates.ts'
import {at, bird, date, F2, hatch, logbook, strainStep, holm} from '../pages/small-logbook.ts'
import {plainPaper, plainRequirement} from '../paper-parts.ts'
import '../seeded.ts'
import {gapsBook} from './gaps-book.ts'

const KEEPERS = ['a', 'b', 'c'].map(id => ({at, body: '', id, name: id, consents: true, since: null, region: null}))
const BIRDS = Array.from({length: 8}, (_, index): Bird => bird(`b${index}`, index % 2 ? 'female' : 'male', {
  hatched: date(`${2018 + (index % 4)}-04-01`), step: index === 7 ? strainStep(holm) : F2, keptAt: index % 3 === 2 ? [] : [{keeper: KEEPERS[index % 3]!, from: null, to: null}],
  photos: index < 5 ? [{file: `${index}.png`, on: index === 4 ? null : date(`${2019 + index}-10-01`), view: null, alt: null, caption: null}] : [],
}))

interface Drawn {
  readonly hatches: readonly (readonly [year: number, keeper: number])[]
  readonly shows: readonly {readonly year: number; readonly entries: readonly (readonly [bird: number, judge: number, named: boolean])[]}[]
  readonly papers: readonly number[]
}

const YEAR = fc.integer({min: 2019, max: 2025})
const drawn: fc.Arbitrary<Drawn> = fc.record({
  hatches: fc.array(fc.tuple(YEAR, fc.integer({min: 0, max: 2})), {maxLength: 6}),
  shows: fc.array(fc.record({year: YEAR, entries: fc.array(fc.tuple(fc.integer({min: 0, max: 7}), fc.integer({min: 0, max: 2}), fc.boolean()), {minLength: 1, maxLength: 5})}), {maxLength: 4}),
  papers: fc.array(fc.integer({min: 0, max: 3}), {maxLength: 3}),
})

const entry = ([index, judge, isNamed]: Drawn['shows'][number]['entries'][number]): ShowEntry => ({
  bird: BIRDS[index]!, class: isNamed ? (index % 2 ? 'hen' : 'cock') : null, judge: judge === 0 ? null : `judge ${judge}`, place: null, shared: false, of: null, award: null, points: null, grade: null, remark: null, about: [],
  disqualified: false, draft: null, at,
})
const show = ({year, entries}: Drawn['shows'][number], index: number): Show => ({at, body: '', id: `s${index}`, name: `s${index}`, on: date(`${year}-10-0${1 + (index % 9)}`), place: null, cancelled: null, entries: entries.map(entry)})
const settings = ([year, keeper]: Drawn['hatches'][number], index: number): Hatch => hatch(`h${index}`, {on: date(`${year}-04-01`), step: F2, hatched: 3, keeper: KEEPERS[keeper] ?? null})

const bookOf = ({hatches, shows, papers}: Drawn, items: readonly Requirement[]): Logbook => logbook('2025-11-15', {
  birds: BIRDS, keepers: KEEPERS, hatches: hatches.map(settings), shows: shows.map(show),
  requirements: {at, body: '', association: null, items, distinctness: null, papers: papers.map(whose => plainPaper('statements', '2025-03-01', null, {keeper: KEEPERS[whose] ?? null}))},
})
const together = (one: Drawn, more: Drawn): Drawn => ({hatches: [...one.hatches, ...more.hatches], shows: [...one.shows, ...more.shows], papers: [...one.papers, ...more.papers]})

/** What counts things: the more there are, the nearer. Of the last seasons and of results this does not hold. */
const COUNTED: readonly (readonly [RequirementKind, Partial<Requirement>])[] = [
  ['years-bred', {atLeast: 3}], ['years-bred', {atLeast: 2, inARow: true}], ['shown-per-class', {perClass: 2, classes: ['cock', 'hen']}], ['shown-per-class', {perClass: 1, classes: ['cock', 'hen'], shows: 1}],
  ['shows-and-judges', {atLeast: 2, judges: 2}], ['consecutive-shows', {atLeast: 2}], ['birds-per-show', {atLeast: 3, exhibitors: 2}], ['statements', {atLeast: 2}], ['shows-and-judges', {atLeast: 2, ages: ['grown'], within: 900}],
]

/** Of the classes of grown birds, by shows. */
const UNTOLD: readonly (readonly [RequirementKind, Partial<Requirement>])[] = [
  ['shown-per-class', {perClass: 1, classes: ['cock', 'hen']}], ['shown-per-class', {perClass: 2, classes: ['hen']}], ['shown-per-class', {perClass: 1, classes: ['cock', 'hen'], shows: 2}],
  ['shows-and-judges', {atLeast: 2, classes: ['hen']}], ['consecutive-shows', {atLeast: 2, classes: ['hen']}], ['birds-per-show', {atLeast: 2, classes: ['hen']}], ['birds-per-show', {atLeast: 2, shows: 2, classes: ['hen']}],
]

describe('laws of evidence', () => {
  it('more of what is counted never undoes what was met, nor makes what cannot be told of it so again', () => {
    const items = COUNTED.map(([kind, more]) => plainRequirement(kind, more)), states = (of: Drawn): readonly Evidence['state'][] => study(bookOf(of, items)).evidence.items.map(({state}) => state)
    fc.assert(fc.property(drawn, drawn, (one, more) => {
      const [before, after] = [states(one), states(together(one, more))]
      before.forEach((state, index) => {
        if (state === 'met') expect([COUNTED[index]?.[0], after[index]]).toEqual([COUNTED[index]?.[0], 'met'])
      })
    }), {numRuns: 60})
  })

  it('gives a way wherever it is not met, and none where it is; never counts a record twice', () => {
    const items = COUNTED.map(([kind, more]) => plainRequirement(kind, more))
    fc.assert(fc.property(drawn, of => {
      for (const {found, ways, behind, requirement} of study(bookOf(of, items)).evidence.items) {
        expect([requirement.kind, ways.length > 0]).toEqual([requirement.kind, found === 'not-yet' || (found === 'cannot-tell' && ways.length > 0)])
        expect(new Set(behind.birds).size).toBe(behind.birds.length)
      }
    }), {numRuns: 40})
  })

  it('cannot tell of entries of no known class just where it would be met by one way to know them, and not by another', () => {
    const lost = ['x', 'y', 'z'].map((id, index) => bird(id, 'unknown', {hatched: null, step: F2, keptAt: index === 2 ? [] : [{keeper: KEEPERS[index]!, from: null, to: null}]}))
    const items = UNTOLD.map(([kind, more]) => plainRequirement(kind, more))
    const at2 = (entries: readonly ShowEntry[], year: number): Show => ({at, body: '', id: `s${year}`, name: `s${year}`, on: date(`${year}-10-01`), place: null, cancelled: null, entries})
    const states = (shows: readonly Show[]) => study(logbook('2025-11-15', {birds: [...BIRDS, ...lost], keepers: KEEPERS, shows, requirements: {at, body: '', association: null, items, distinctness: null, papers: []}})).evidence.items.map(({state}) => state)
    const told = fc.tuple(fc.integer({min: 0, max: 6}), fc.integer({min: 1, max: 2}), fc.constant(true)), untold = fc.uniqueArray(fc.integer({min: 0, max: 2}), {maxLength: 2})
    const ways = (entries: readonly ShowEntry[]): readonly (readonly ShowEntry[])[] => entries.reduce<readonly (readonly ShowEntry[])[]>((all, each) => all.flatMap(before => ['cock', 'hen', 'pullet'].map(name => [...before, {...each, class: name}])), [[]])
    fc.assert(fc.property(fc.array(told, {maxLength: 2}), fc.array(told, {maxLength: 2}), untold, untold, (one, two, open, more) => {
      const unknown = (which: readonly number[]): ShowEntry[] => which.map(index => ({...entry([0, index, false]), bird: lost[index]!}))
      const [first, second] = [one.map(entry), two.map(entry)], rest = [unknown(open), unknown(more).slice(0, 3 - open.length)] as const
      const found = states([at2([...first, ...rest[0]], 2024), at2([...second, ...rest[1]], 2025)])
      const might = ways([...rest[0], ...rest[1]]).map(all => states([at2([...first, ...all.slice(0, rest[0].length)], 2024), at2([...second, ...all.slice(rest[0].length)], 2025)]))
      found.forEach((state, index) => {
        const could = new Set(might.map(each => each[index]))
        expect([items[index]?.kind, items[index]?.shows, state]).toEqual([items[index]?.kind, items[index]?.shows, could.size > 1 ? 'cannot-tell' : [...could][0]])
      })
    }), {numRuns: 40})
  })

  it('never shows on an earlier day what came later', () => {
    const lines = ['kind: years-bred, at-least: 4', 'kind: inter-se-generations, at-least: 2', 'kind: shown-per-class, per-class: 1', 'kind: show-result', 'kind: consecutive-shows, at-least: 2', 'kind: written-standard', 'kind: photographs', 'kind: statements', 'kind: veterinary', 'kind: history', 'kind: identity, at-least: 90%']
    const kept = new Map<string, number>()
    for (const year of [2021, 2022, 2023, 2024, 2025]) {
      for (const month of [1, 5, 11]) {
        const day = dayOf(year, month, 6) ?? 0, {items} = study(gapsBook(lines, {}, {asOf: day})).evidence
        for (const {behind, requirement, shown} of items) {
          expect([requirement.kind, behind.on === null || behind.on <= day]).toEqual([requirement.kind, true])
          for (const {file} of behind.records) expect([file, Number(/\d{4}/.exec(file)?.[0] ?? 0) <= year]).toEqual([file, true])
          if (shown.kind === 'years-bred') {
            expect(shown.have).toBeGreaterThanOrEqual(kept.get(shown.kind) ?? 0)
            kept.set(shown.kind, shown.have)
          }
        }
      }
    }
    expect(kept.get('years-bred')).toBe(4)
  })
})
