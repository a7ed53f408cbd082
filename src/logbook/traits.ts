/** The traits: what each can look like or how it is measured, what is wanted, how it is inherited and how often it is mistaken. */
import {inside, type Note} from '../records/problem.ts'
import type {RecordOf} from '../records/records.ts'
import type {TraitRecord} from '../records/schema/trait.ts'
import type {Bench} from './bench.ts'
import type {Trait, TraitKind} from './book.ts'
import {directory, type Directory} from './directory.ts'
import {noTarget} from './inspect/no-target.ts'
import {unitMixed} from './inspect/unit-mixed.ts'
import {unknownState} from './inspect/unknown-state.ts'
import {unknownTrait} from './inspect/unknown-trait.ts'
import {linkLoci, type Loci} from './loci.ts'
import type {Open} from './open.ts'
import {traitRules} from './trait-rules.ts'
import {wantedOf} from './wanted.ts'

/** Days around the age of measuring that count when the trait names none. */
const WINDOW = 7

export interface Traits extends Directory<Trait> {
  readonly all: readonly Trait[]
  readonly loci: Loci
  /** the traits that take their values from a column of the weigh days, by its heading; all in one unit */
  readonly byMeasure: ReadonlyMap<string, readonly Trait[]>
}

export function linkTraits(bench: Bench): Traits {
  const loci = linkLoci(bench)
  const all = bench.records.trait.map(record => traitOf(record, loci, bench))
  const byMeasure = new Map<string, Trait[]>()
  for (const trait of all) {
    if (trait.kind !== 'measured') continue
    const heading = trait.measure ?? trait.id
    const [first] = byMeasure.get(heading) ?? []
    if (!first) byMeasure.set(heading, [trait])
    else if (first.unit === trait.unit) byMeasure.get(heading)?.push(trait)
    else bench.noteAbout(first)(unitMixed(trait, inside(trait.at, 'unit'), first))
  }
  const named = all.map(trait => ({name: trait.id, thing: trait, at: trait.at}))
  return {...directory(named, unknownTrait, name => bench.isFaulty(`traits/${name}.md`), bench.note), all, loci, byMeasure}
}

function traitOf({id, data, body, at}: RecordOf<'trait'>, loci: Loci, bench: Bench): Trait {
  const note = bench.noteAbout({at})
  const kind: TraitKind = data.unit !== undefined ? 'measured' : data.scale ? 'graded' : data.order ? 'ordered' : 'states'
  const trait: Open<Trait> = {
    at, body, id, name: data.name, kind, states: data.states ?? data.order ?? [], scale: data.scale ?? null, unit: data.unit ?? null,
    measure: data.measure ?? (kind === 'measured' ? id : null), atAge: data.at ?? null, window: data.at === undefined ? null : data.window ?? WINDOW, wanted: {male: null, female: null},
    required: data.required ?? false, seenIn: data['seen-in']?.sex ?? null, scoredFrom: data['scored-from'] ?? 0, fromFirstEgg: data['seen-in']?.fromFirstEgg ?? false,
    loci: (data.loci ?? []).flatMap(({symbol}) => loci.get(symbol) ?? []), shows: [],
    misscoring: new Map(),
  }
  trait.wanted = wantedOf(data.target, data.tolerance, trait, note)
  trait.shows = traitRules(data, trait, loci, note)
  trait.loci = [...new Set([...trait.loci, ...trait.shows.flatMap(rule => [...rule.patterns.keys()])])]
  trait.misscoring = misscoringOf(data.misscoring, trait, note)
  if (trait.required && data.target === undefined) {
    note(noTarget(id, inside(at, 'required')))
  }
  return trait
}

/** One rate is spread evenly over the other states. */
function misscoringOf(stated: TraitRecord['misscoring'], trait: Trait, note: Note): Trait['misscoring'] {
  if (stated === undefined) return new Map()
  const {states} = trait
  if (typeof stated === 'number') {
    const others = states.length - 1
    return others < 1 ? new Map() : new Map(states.map(state => [state, new Map(states.filter(other => other !== state).map(other => [other, stated / others]))]))
  }
  for (const {key, value, keyAt} of stated) {
    if (!states.includes(key)) note(unknownState(trait, key, keyAt))
    for (const scored of value) if (!states.includes(scored.key)) note(unknownState(trait, scored.key, scored.keyAt))
  }
  return new Map(stated.map(({key, value}) => [key, new Map(value.map(scored => [scored.key, scored.value]))]))
}
