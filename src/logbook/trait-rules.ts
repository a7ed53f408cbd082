/** The rules of a trait's inheritance: its own, read for its loci, else those that the records of its loci have for its states. */
import type {GenotypePattern} from '../heredity/genotype-notation.ts'
import {near, nearSymbols} from '../records/near.ts'
import {inside, type Note, type Spot} from '../records/problem.ts'
import {LETHAL} from '../records/schema/loci.ts'
import type {LocusRecord} from '../records/schema/locus.ts'
import type {TraitRecord} from '../records/schema/trait.ts'
import type {Locus, Rule, Trait} from './book.ts'
import {rulesWanting} from './inspect/rules-wanting.ts'
import {unknownLocus} from './inspect/unknown-locus.ts'
import {unknownState} from './inspect/unknown-state.ts'
import type {Loci} from './loci.ts'
import {readPattern} from './read-pattern.ts'

type RuleRead = NonNullable<TraitRecord['shows']>[number]

/** Rules of which one cannot be read are none: what the others say without it would be wrong; and so it is where a locus that the trait names is missing. */
export function traitRules(data: TraitRecord, trait: Trait, loci: Loci, note: Note): readonly Rule[] {
  if (data.shows !== undefined) {
    const read = data.shows.map((rule, index) => ruleOf(rule, inside(trait.at, 'shows', index), trait, loci, note))
    const whole = read.filter(rule => rule !== null)
    return whole.length === read.length ? whole : []
  }
  if (trait.loci.length === 0 || trait.states.length === 0 || trait.loci.length < (data.loci ?? []).length) return []
  const offered = rulesOffered(trait.loci, loci)
  const fitting = offered.filter(({states}) => states.every(state => trait.states.includes(state)))
  const [most] = fitting.toSorted((a, b) => b.states.length - a.states.length)
  if (!most) note(rulesWanting(trait, offered.map(({states}) => states), inside(trait.at, 'loci')))
  return most?.rules ?? []
}

function ruleOf({is, sex, penetrance, others}: RuleRead, at: Spot, trait: Trait, loci: Loci, note: Note): Rule | null {
  let whole = true
  if (is !== LETHAL && !trait.states.includes(is)) {
    note(unknownState(trait, is, inside(at, 'is'), [LETHAL]))
    whole = false
  }
  const patterns: [Locus, GenotypePattern][] = []
  for (const {key, value, at: spot, keyAt} of others) {
    const locus = loci.get(key)
    const pattern = locus ? readPattern(value, locus, spot, note) : null
    if (!locus && !loci.isMissed(key)) note(unknownLocus(key, keyAt, nearestOf(key, trait, loci)))
    if (locus && pattern) patterns.push([locus, pattern])
    else whole = false
  }
  return whole ? {patterns: new Map(patterns), is, sex: sex ?? null, penetrance: penetrance ?? 1, from: 'project'} : null
}

/** Of a short list, the trait's own loci, one that is a letter away is likely meant. */
function nearestOf(symbol: string, {loci: own}: Trait, {symbols}: Loci): readonly string[] {
  const likely = nearSymbols(symbol, symbols)
  return likely.length > 0 ? likely : near(symbol, own.map(locus => locus.symbol))
}

interface Offered {
  readonly states: readonly string[]
  readonly rules: readonly Rule[]
}

/** What the records of these loci offer as rules for exactly these loci. */
function rulesOffered(wanted: readonly Locus[], loci: Loci): readonly Offered[] {
  return wanted.flatMap(({symbol}) => {
    const told = loci.record(symbol)
    return (told?.record.data.looks ?? []).flatMap(look => offeredBy(look, told?.from ?? 'reference', wanted) ?? [])
  })
}

function offeredBy({shows}: NonNullable<LocusRecord['looks']>[number], from: Rule['from'], wanted: readonly Locus[]): Offered | null {
  const named = new Set(shows.flatMap(rule => rule.others.map(({key}) => key)))
  if (named.size !== wanted.length || !wanted.every(locus => named.has(locus.symbol))) return null
  const rules = shows.map(({is, sex, penetrance, others}): Rule | null => {
    // a trait that writes its alleles otherwise has no use for these rules
    const patterns = others.flatMap(({key, value, at}) => {
      const locus = wanted.find(one => one.symbol === key)
      const pattern = locus && readPattern(value, locus, at, () => undefined)
      return locus && pattern ? [[locus, pattern] as const] : []
    })
    return patterns.length === others.length ? {patterns: new Map(patterns), is, sex: sex ?? null, penetrance: penetrance ?? 1, from} : null
  }).filter(rule => rule !== null)
  return rules.length === shows.length ? {states: [...new Set(shows.map(rule => rule.is).filter(is => is !== LETHAL))], rules} : null
}
