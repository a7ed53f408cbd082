/** Drafts of the standard: each cut into sections and clauses, with what a clause asks of a bird where its entry says it. */
import {inside, type Note, type Spot} from '../records/problem.ts'
import {inUnit, isUnit, UNITS} from '../records/quantities.ts'
import type {RecordOf} from '../records/records.ts'
import {alsoOfTheFemale} from './as-the-male.ts'
import type {Bench} from './bench.ts'
import type {Clause, Draft, Section, Trait, Variety, Wanted} from './book.ts'
import {clauseIdsOf} from './clause-ids.ts'
import {cutDraft} from './cut-draft.ts'
import {slug, type PieceOfDraft} from './draft-sections.ts'
import {draftsInDoubt} from './drafts-in-doubt.ts'
import {headMeant, unknownClause} from './inspect/clause-unknown.ts'
import type {Photographs} from './photographs.ts'
import {sexOfHeading} from './section-kinds.ts'
import type {Traits} from './traits.ts'
import {speltAs} from './variety-names.ts'
import {wantedOf} from './wanted.ts'

type DraftRecord = RecordOf<'draft'>
type Stated = NonNullable<DraftRecord['data']['clauses']>[number]

export function linkDrafts(bench: Bench, traits: Traits, photographs: Photographs): readonly Draft[] {
  const records = [...bench.records.draft].sort((a, b) => a.data.draft - b.data.draft || a.data.on.first - b.data.on.first)
  const drafts: Draft[] = [], inDoubt = draftsInDoubt(bench)
  for (const record of records) {
    const draft = draftOf(record, traits, photographs, bench.note)
    // of a draft before that could not be read nobody knows what it had
    if (!inDoubt) noteReasons(record, draft, drafts.at(-1), bench.note)
    drafts.push(draft)
  }
  return drafts
}

function draftOf(record: DraftRecord, traits: Traits, photographs: Photographs, note: Note): Draft {
  const {data, body, at} = record
  const stated = new Map((data.clauses ?? []).map(entry => [entry.key, entry]))
  const pieces = cutDraft(record), spelt = speltAs([...pieces.flatMap(({varieties}) => varieties.map(({title}) => title)), ...(data.varieties ?? []).map(({key}) => key)])
  const named = (clause: Clause): Clause => (clause.variety === null ? clause : {...clause, variety: spelt(clause.variety)})
  const ofBoth = alsoOfTheFemale(pieces.map(section => ({...section, clauses: section.clauses.map(({id, title}) => ({id, title, trait: stated.get(id)?.value.trait?.text ?? null}))})))
  const sections = pieces.map(({id, title, kind, lead, clauses}): Section => ({
    id, title, kind, lead, clauses: clauses.map(piece => named(clauseOf(piece, ofBoth.has(piece.id) ? null : sexOfPiece(piece, kind, title), stated.get(piece.id), at, traits, note))),
  }))
  const weights = (data.weights ?? []).map(({key, value}) => {
    const grams = inUnit(value.low, 'g') ?? 0, high = inUnit(value.high, 'g') ?? 0
    return {class: key, grams, high: high > grams ? high : null}
  })
  const egg = data.egg ?? null, rows = rowsOf(weights, egg?.words ?? null, stated, at, traits, note).map(named)
  const ids = clauseIdsOf({sections, weights, egg: egg?.words ?? null})
  for (const {key, keyAt} of stated.values()) if (!ids.includes(key)) note(unknownClause(key, keyAt, ids, headMeant(key, body)))
  const sectionIds = sections.map(({id}) => id)
  for (const {key, keyAt} of data.sections ?? []) if (!sectionIds.includes(key) && !sections.some(({title}) => slug(title) === key)) note(unknownClause(key, keyAt, sectionIds))
  return {
    at, body, number: data.draft, on: data.on, title: data.title ?? '', manner: data.manner ?? null, classification: data.classification ?? null, origin: data.origin ?? null,
    egg: egg?.words ?? null, eggAtLeast: egg?.least ? inUnit(egg.least, 'g') : null, rings: {male: data.rings?.male ?? null, female: data.rings?.female ?? null}, sections, weights, rows,
    points: (data.scale ?? []).map(({key, value}) => ({name: key, points: value})), varieties: varietiesOf(sections, (data.varieties ?? []).map(each => ({...each, key: spelt(each.key)})), traits, note),
    reasons: new Map((data.reasons ?? []).map(({key, value}) => [key, value])),
    photos: photographs.of(data.photos, inside(at, 'photos')),
  }
}

/** By its section; in one on neither sex by its own name. */
function sexOfPiece({title}: PieceOfDraft, kind: Section['kind'], section: string): Clause['sex'] {
  if (kind === 'male' || kind === 'female') return kind
  return sexOfHeading(section) ?? sexOfHeading(title)
}

const NOTHING_WANTED: Trait['wanted'] = {male: null, female: null}

function clauseOf({id, title, text, variety}: Omit<PieceOfDraft, 'offset'>, sexHere: Clause['sex'], entry: Stated | undefined, draftAt: Spot, traits: Traits, note: Note): Clause {
  const said = entry?.value, trait = said?.trait ? traits.find(said.trait) : null
  const sex = said?.sex === undefined ? sexHere : said.sex === 'both' ? null : said.sex
  const ofSex = (wanted: Trait['wanted']): Trait['wanted'] => ({male: sex === 'female' ? null : wanted.male, female: sex === 'male' ? null : wanted.female})
  const read = (wish: NonNullable<typeof said>['allows']): Trait['wanted'] => (trait && wish !== undefined ? ofSex(wantedOf(wish, undefined, trait, note)) : NOTHING_WANTED)
  const accepted = said?.accepted
  return {
    id, title, text, sex, trait, variety: said?.variety ?? variety, allows: said?.allows === undefined ? (trait ? ofSex(trait.wanted) : NOTHING_WANTED) : read(said.allows),
    ownRange: said?.allows !== undefined, mandatory: said?.mandatory ?? false, ifMissed: said?.['if-missed'] ?? null,
    accepted: accepted ? {what: accepted.what, looks: read(accepted.looks), until: accepted.until, then: accepted.then ?? null} : null, at: entry?.keyAt ?? draftAt,
  }
}

/** Weights by class, and the egg, that an entry holds against a trait. A class allows its own weight, within the tolerance of the trait's target where one weight is given. */
function rowsOf(weights: Draft['weights'], egg: string | null, stated: ReadonlyMap<string, Stated>, at: Spot, traits: Traits, note: Note): readonly Clause[] {
  const rows: Clause[] = weights.flatMap(({class: name, grams, high}) => {
    const id = `weights/${slug(name)}`, entry = stated.get(id)
    if (!entry) return []
    const sex = sexOfHeading(name), clause = clauseOf({id, title: `Weight, ${name}`, text: '', variety: null}, sex, entry, at, traits, note)
    if (clause.ownRange || !clause.trait?.unit || gramsIn(clause.trait.unit) === null) return [clause]
    const one = weightAllowed(clause.trait, sex, grams, high)
    return [{...clause, allows: {male: sex === 'female' ? null : one, female: sex === 'male' ? null : one}, ownRange: true}]
  })
  const entry = stated.get('egg')
  return egg !== null && entry ? [...rows, clauseOf({id: 'egg', title: 'Egg', text: egg, variety: null}, 'female', entry, at, traits, note)] : rows
}

/** Grams in one of a unit of mass; null of any other. */
const gramsIn = (unit: string): number | null => (isUnit(unit) && UNITS[unit].of === 'mass' ? UNITS[unit].size : null)

function weightAllowed(trait: Trait, sex: Clause['sex'], grams: number, high: number | null): Wanted {
  const inTrait = (amount: number): number => amount / (gramsIn(trait.unit ?? 'g') ?? 1)
  if (high !== null) return {kind: 'between', low: inTrait(grams), high: inTrait(high)}
  const wanted = trait.wanted[sex ?? 'female']
  return {kind: 'about', value: inTrait(grams), tolerance: wanted?.kind === 'about' ? wanted.tolerance : null}
}

/** Those that have a heading, in order, then those that only the front matter names. */
function varietiesOf(sections: readonly Section[], stated: NonNullable<DraftRecord['data']['varieties']>, traits: Traits, note: Note): readonly Variety[] {
  const named = sections.flatMap(({clauses}) => clauses.flatMap(({variety}) => variety ?? []))
  const names = [...new Set([...named, ...stated.map(({key}) => key)])]
  return names.map(name => ({
    name, looks: new Map((stated.find(({key}) => key === name)?.value ?? []).flatMap(({key, value, keyAt}) => {
      const trait = traits.find({text: key, at: keyAt}), wanted = trait && wantedOf(value, undefined, trait, note).female
      return trait && wanted ? [[trait, wanted] as const] : []
    })),
  }))
}

/** A reason is given for a piece of this draft, or for one of the draft before that was taken out. */
function noteReasons({data}: RecordOf<'draft'>, draft: Draft, before: Draft | undefined, note: Note): void {
  const known = new Set([...piecesOf(draft), ...(before ? piecesOf(before) : [])])
  for (const {key, keyAt} of data.reasons ?? []) if (!known.has(key)) note(unknownClause(key, keyAt, [...known]))
}

function piecesOf({sections, weights, points, varieties}: Draft): readonly string[] {
  return [
    'title', 'manner', 'origin', 'classification', 'egg', 'egg/at-least', 'rings', 'rings/male', 'rings/female', 'weights', ...weights.map(weight => `weights/${slug(weight.class)}`),
    'scale', ...points.map(heading => `scale/${slug(heading.name)}`), ...sections.flatMap(section => [section.id, ...section.clauses.map(clause => clause.id)]),
    ...varieties.map(({name}) => `colour/${slug(name)}`),
  ]
}
