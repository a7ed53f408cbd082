/** Which weighings a requirement of evenness is about. */
import type {Bird, Hatch, Requirement, Trait, Wanted} from '../logbook/book.ts'
import {isAbout, wordOf} from './asked-about.ts'
import {looksAsked} from './clauses-asked.ts'
import {behind, type Behind, type Finding} from './evidence-found.ts'
import type {Sources} from './evidence-shown.ts'
import {siftByDay} from './evidence-window.ts'
import {grouped} from './grouped.ts'
import {showAge} from './show-age.ts'
import {spreadIn, type Measured, type RowOf, type SpreadRow} from './spread.ts'

export type SexAsked = 'male' | 'female'

/** A measured trait asked about, with what is wanted of it, and of which sexes: of both where the requirement names it, else of those of which anything is wanted, of both where nothing is. */
export interface Measure {
  readonly trait: Trait
  readonly wanted: Trait['wanted']
  readonly sexes: readonly SexAsked[]
}

/** The trait named, those of the clauses named, or every measured one; clauses of which nothing measured can be held against birds are untold. */
export function measuresAsked(requirement: Requirement, sexes: readonly SexAsked[], {book}: Pick<Sources, 'book'>): {readonly measures: readonly Measure[]; readonly untoldClauses: readonly string[]} {
  if (requirement.clauses.length > 0) {
    const {looks, untold} = looksAsked(requirement, book), traits = [...new Set(looks.map(({scored}) => scored))].filter(({kind}) => kind === 'measured')
    // of two clauses for one sex the first holds
    const first = (trait: Trait, sex: SexAsked): Wanted | null => looks.find(look => look.scored === trait && look.trait.wanted[sex] !== null)?.trait.wanted[sex] ?? null
    const others = looks.flatMap(({clause, scored}) => (clause && scored.kind !== 'measured' ? [clause.id] : []))
    return {measures: traits.map(trait => ({trait, wanted: {male: first(trait, 'male'), female: first(trait, 'female')}, sexes})), untoldClauses: [...untold, ...others]}
  }
  if (requirement.trait) return {measures: [{trait: requirement.trait, wanted: requirement.trait.wanted, sexes}], untoldClauses: []}
  return {measures: book.traits.filter(({kind}) => kind === 'measured').map(trait => ({trait, wanted: trait.wanted, sexes: wantedOf(trait, sexes)})), untoldClauses: []}
}

const wantedOf = ({wanted}: Trait, sexes: readonly SexAsked[]): readonly SexAsked[] => (wanted.male === null && wanted.female === null ? sexes : sexes.filter(sex => wanted[sex] !== null))

/** What is wanted of the birds of a row. */
export const wantedIn = (measures: readonly Measure[], {trait, sex}: SpreadRow): Wanted | null => (sex === 'all' ? null : measures.find(each => each.trait === trait)?.wanted[sex] ?? null)

/** The rows of the spread; where classes, ages, varieties or days are named, worked anew from the birds that these leave. */
export function rowsAsked(requirement: Requirement, measures: readonly Measure[], {book, ladder, spread}: Sources): {readonly rows: readonly SpreadRow[]; readonly aged: Finding['aged']; readonly untold: number} {
  const {classes, ages, varieties} = requirement, all = spread.rows.filter(({trait}) => measures.some(each => each.trait === trait))
  const due = ({bird, hatch}: Pick<Measured, 'bird' | 'hatch'>, {atAge}: Trait) => {
    const born = bird ? bird.hatched : hatch?.on ?? null
    return born && {text: born.text, first: born.first + (atAge ?? 0), last: born.last + (atAge ?? 0)}
  }
  const weighed = all.filter(({sex}) => sex !== 'all').flatMap(({trait, values}) => values.map(value => ({trait, value})))
  const {counted, aged} = siftByDay(weighed, ({trait, value}) => due(value, trait), ({value: {bird, hatch}}) => bird?.at ?? hatch?.at ?? book.project.at, requirement, book.asOf)
  if (counted.length === weighed.length && classes.length === 0 && ages.length === 0 && varieties.length === 0) return {rows: all, aged, untold: 0}
  const labels = ladder.flatMap(step => (step.kind === 'reached' ? [step.label] : [])), wordAges = new Set(classes.map(name => (/^(?:cockerel|pullet)$/.test(wordOf(name) ?? '') ? 'young' : 'grown')))
  const rows = measures.flatMap(({trait}) => {
    const birds = new Set(counted.filter(each => each.trait === trait).map(({value}) => value.bird ?? value.hatch))
    const rowOf: RowOf = of => {
      const isBird = 'kind' in of, on = due(isBird ? {bird: of.kind === 'bird' ? of : null, hatch: null} : {bird: null, hatch: of}, trait)
      if (isBird ? of.kind !== 'bird' || !birds.has(of) : !birds.has(of)) return undefined
      if (on === null) return undefined
      if (isBird) return of.kind === 'bird' && isAbout(requirement, of, on.first, book) === true ? of.step.label : undefined
      // weighed without a band: only its hatch is known
      const age = showAge({hatched: of.on}, on.first), asked = ages.length > 0 ? new Set(ages) : wordAges
      return varieties.length > 0 || age === null || asked.size > 1 || (asked.size === 1 && !asked.has(age)) ? undefined : of.step.label
    }
    return spreadIn({...book, traits: [trait]}, labels, rowOf).rows
  })
  const doubtful = new Set(counted.flatMap(({trait, value: {bird}}) => (bird && isAbout(requirement, bird, due({bird, hatch: null}, trait)?.first ?? book.asOf, book) === null ? [bird] : [])))
  return {rows, aged, untold: doubtful.size}
}

/** The birds, and the files and days of the weighings that count. */
export function weighingsBehind(rows: readonly SpreadRow[], {book}: Pick<Sources, 'book'>): Behind {
  const birds: Bird[] = [], files = new Set<string>(), days: number[] = [], loose = grouped(book.looseWeighings, ({hatch}) => hatch)
  for (const {trait, sex, values} of rows) {
    const hatches = new Set<Hatch>()
    for (const {bird, hatch} of values) {
      if (bird) birds.push(bird)
      else if (hatch) hatches.add(hatch)
    }
    const banded = values.flatMap(({bird}) => bird?.looks.get(trait)?.counted ?? []), others = [...hatches].flatMap(hatch => (loose.get(hatch) ?? []).filter(each => each.sex === sex && each.countsFor.includes(trait)))
    for (const {at, on} of [...banded, ...others]) {
      files.add(at.file)
      if (on) days.push(on.last)
    }
  }
  return behind(birds, [...files].map(file => ({at: {file, path: []}})), days)
}
