import type {Bird, Hatch, Logbook, Trait, Wanted} from '../logbook/book.ts'
import {chosenByChance} from '../statistics/chosen-by-chance.ts'
import {holm} from '../statistics/holm.ts'
import {withinClasses} from '../statistics/within-classes.ts'
import {countedValue} from './counted-value.ts'
import type {CannotSay, Interval, Share} from './estimate.ts'
import {grouped} from './grouped.ts'
import {ladderChicks, type Chick} from './ladder-chicks.ts'
import type {LadderStep} from './ladder.ts'
import {REMARKABLE} from './remarkable.ts'
import {shareOf} from './share-of.ts'

interface Kept {
  /** null: all steps together */
  readonly step: string | null
  readonly trait: Trait
  /** birds kept and all birds, in classes of which some were kept and some not */
  readonly kept: number
  readonly all: number
  readonly classes: number
  /** looked at, in classes that tell nothing: none kept, all kept, or alone */
  readonly leftOut: number
  /** null: nothing to test, since all are alike or no class tells */
  readonly p: number | null
  /** P with the number of tests taken in: of all steps together among those of all steps, of one step among those of single steps */
  readonly corrected: number | null
  readonly tests: number
  /** corrected P at or below 0.05 */
  readonly differ: boolean
  /** is it what the trait's target asks for? null: it names none, the sexes differ in it, or the mean lies in it */
  readonly meant: boolean | null
}

/** How often the birds kept show a state, beside what a blind choice of as many in each class would. */
export interface KeptState extends Kept {
  readonly kind: 'state'
  readonly state: string
  readonly share: Share | CannotSay
  /** null where no class tells */
  readonly expected: number | null
}

/** How far the birds kept stand above the rest of their hatch, step and sex. */
export interface KeptMeasure extends Kept {
  readonly kind: 'measure'
  /** kept less not kept, in the unit of the trait; null where no class tells */
  readonly difference: number | null
  readonly interval: Interval | null
  /** the same in standard deviations inside classes, kept and not kept apart; null where none is known */
  readonly inSd: {readonly difference: number; readonly interval: Interval | null} | null
}

interface Seen {
  readonly group: string
  /** label of its step */
  readonly step: string
  readonly sex: 'male' | 'female'
  readonly kept: boolean
  readonly value: string | number
}

type Untested = Omit<KeptState, 'corrected' | 'tests' | 'differ'> | Omit<KeptMeasure, 'corrected' | 'tests' | 'differ'>


/** Chicks of two steps in one hatch are no mates: their means differ by blood, and one of the steps may be kept whole. */
const groupOf = (sex: string, hatch: Hatch, step: string): string => `${sex} ${hatch.id} ${step}`

/** Each chick once, a tally as often as it has chicks; what was weighed without a band was not kept. Chicks of unknown sex or hatch have no mates to be held against. */
function seenOf(book: Logbook, chicks: readonly Chick[], trait: Trait, kept: ReadonlySet<Bird>): readonly Seen[] {
  const loose = book.looseWeighings.flatMap(({hatch, sex, value, countsFor}): Seen[] =>
    (sex === 'unknown' || hatch.step.kind === 'strain' || !countsFor.includes(trait) ? [] : [{group: groupOf(sex, hatch, hatch.step.label), step: hatch.step.label, sex, kept: false, value}]))
  const listed = chicks.flatMap((chick): Seen[] => {
    const {sex, hatch} = chick, value = sex === 'unknown' || hatch === null ? null : countedValue(chick, trait)
    if (value === null || sex === 'unknown' || hatch === null) return []
    return Array.from({length: chick.count}, () => ({group: groupOf(sex, hatch, chick.step.label), step: chick.step.label, sex, kept: chick.kind === 'bird' && kept.has(chick), value}))
  })
  return [...listed, ...loose]
}

/** +1 where more is wanted, −1 where less is; 0 where nothing is: nobody falls short of a least or a most, or the mean of all is where the target wants it. */
function wantedWay(wanted: Wanted | null, values: readonly number[]): number | null {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length
  switch (wanted?.kind) {
    case undefined: case 'states': return null
    case 'at-least': return values.some(value => value < wanted.value) ? 1 : 0
    case 'at-most': return values.some(value => value > wanted.value) ? -1 : 0
    case 'about': return Math.abs(mean - wanted.value) <= (wanted.tolerance ?? 0) * Math.abs(wanted.value) ? 0 : Math.sign(wanted.value - mean)
    case 'between': return mean < wanted.low ? 1 : mean > wanted.high ? -1 : 0
  }
}

function measureMeant(trait: Trait, seen: readonly Seen[], difference: number): boolean | null {
  const ways = (['male', 'female'] as const).flatMap(sex => {
    const own = seen.filter(each => each.sex === sex)
    return own.length === 0 ? [] : [wantedWay(trait.wanted[sex], own.map(({value}) => Number(value)))]
  })
  const [first = null] = ways
  return first === null || first === 0 || difference === 0 || ways.some(way => way !== first) ? null : Math.sign(difference) === first
}

function stateMeant({wanted: {male, female}}: Trait, state: string, more: boolean | null): boolean | null {
  const asked = [male, female].flatMap(wanted => (wanted?.kind === 'states' ? [wanted.states.includes(state)] : []))
  const [first] = asked
  return first === undefined || more === null || asked.some(each => each !== first) ? null : first === more
}

const inUnits = (difference: number, interval: Interval | null, unit: number): KeptMeasure['inSd'] => ({difference: difference / unit, interval: interval && {low: interval.low / unit, high: interval.high / unit}})

function keptOf(trait: Trait, step: string | null, seen: readonly Seen[]): readonly Untested[] {
  const classes = [...grouped(seen, ({group}) => group).values()].filter(own => own.some(each => each.kept) && own.some(each => !each.kept)), told = classes.flat()
  const counts = {step, trait, kept: told.filter(each => each.kept).length, all: told.length, classes: classes.length, leftOut: seen.length - told.length}
  if (trait.kind === 'measured' || trait.kind === 'graded') {
    const fit = withinClasses(told.map(({group, kept, value}) => ({group, x: [Number(kept)], y: Number(value)}))), [found] = fit.kind === 'fitted' ? fit.coefficients : []
    const difference = found?.value ?? (told.length === 2 ? Number(told.find(each => each.kept)?.value) - Number(told.find(each => !each.kept)?.value) : null)
    return [{
      ...counts, kind: 'measure', difference, interval: found && found.p !== null ? found.interval : null, p: found?.p ?? null, inSd: found && fit.kind === 'fitted' && fit.sd > 0 ? inUnits(found.value, found.p === null ? null : found.interval, fit.sd) : null, meant: difference === null ? null : measureMeant(trait, told, difference),
    }]
  }
  return trait.states.filter(state => seen.some(each => each.value === state)).map((state): Untested => {
    const count = (own: readonly Seen[]) => ({
      all: own.length, kept: own.filter(each => each.kept).length, showing: own.filter(({value}) => value === state).length, keptShowing: own.filter(({kept, value}) => kept && value === state).length,
    })
    const {seen: showing, expected, p} = chosenByChance(classes.map(count)), alike = classes.every(own => own.every(({value}) => (value === state) === (own[0]?.value === state)))
    return {
      ...counts, kind: 'state', state, share: shareOf(showing, counts.kept), expected: counts.kept === 0 ? null : expected / counts.kept, p: alike ? null : p,
      meant: stateMeant(trait, state, alike || showing === expected ? null : showing > expected),
    }
  })
}

/** P corrected by Holm. Where a trait shows two states only, they are one test and not two. */
function corrected(found: readonly Untested[]): readonly (KeptState | KeptMeasure)[] {
  const twice = (row: Untested): boolean => row.kind === 'state' && found.filter(other => other.trait === row.trait && other.step === row.step).length === 2
  const key = (row: Untested): string => `${row.step ?? ''}\n${row.trait.id}\n${row.kind === 'state' && !twice(row) ? row.state : ''}`
  const tests = new Map(found.flatMap(row => (row.p === null ? [] : [[key(row), row.p] as const])))
  const held = holm([...tests.values()]), by = new Map([...tests.keys()].map((name, place) => [name, held[place] ?? 1] as const))
  return found.map(row => {
    const p = row.p === null ? null : by.get(key(row)) ?? null
    return {...row, corrected: p, tests: tests.size, differ: p !== null && p <= REMARKABLE}
  })
}

/**
 * What did we choose for, without meaning to?
 *
 * For every trait the birds kept are held against all that were scored or measured of their hatch, step and sex, in classes of which some were kept and some not. A state:
 * how many of the kept show it, with P of a blind choice (`chosenByChance`). A mark or measure: kept less not kept inside classes (`withinClasses`). Of so many tests
 * one looks remarkable by chance, so P is corrected (`holm`) and the number of tests told. First all steps together, then each step.
 *
 * @param kept of `birdsKept`
 */
export function keptAgainstAll(book: Logbook, ladder: readonly LadderStep[], kept: ReadonlySet<Bird>): readonly (KeptState | KeptMeasure)[] {
  const chicks = ladderChicks(book)
  const seen = book.traits.map(trait => {
    const all = seenOf(book, chicks, trait, kept)
    return {trait, all, byStep: grouped(all, ({step}) => step)}
  })
  const rows = (step: string | null) => seen.flatMap(({trait, all, byStep}) => {
    const own = step === null ? all : byStep.get(step) ?? []
    return own.length === 0 ? [] : keptOf(trait, step, own)
  })
  return [...corrected(rows(null)), ...corrected(ladder.flatMap(({label}) => rows(label)))]
}
