/** Weigh days: what each bird, or each hatch and sex, weighed and measured, in the unit of the traits that take their values from it. */
import {inUnit, isUnit} from '../records/quantities.ts'
import {misplacedTable} from '../records/misplaced.ts'
import {near} from '../records/near.ts'
import {spanOf} from './band-book.ts'
import type {Bench} from './bench.ts'
import type {Birds} from './birds.ts'
import type {Bird, Hatch, LooseWeighing, Score, Sex, Trait, Weighing} from './book.ts'
import type {Hatches} from './hatch-shells.ts'
import {unknownMeasure} from './inspect/unknown-trait.ts'
import type {Open} from './open.ts'
import {compareDates, countingOf, daysOff, isOutside, otherUnit} from './scores.ts'
import type {Traits} from './traits.ts'

/** Fills in the birds' weighings, oldest first, and gives those that belong to no one bird. */
export function linkWeighings(bench: Bench, birds: Birds, hatches: Hatches, traits: Traits): readonly LooseWeighing[] {
  const ofBirds = new Map<Open<Bird>, Weighing[]>()
  const loose: Loose[] = []
  const strange = new Set<string>()
  for (const row of bench.records.weighings) {
    const bird = 'band' in row.of ? birds.find(row.of.band, spanOf(row.on)) : null
    const hatch = 'hatch' in row.of ? hatches.find(row.of.hatch) : null
    for (const {measure, quantity, at, keyAt} of row.values) {
      const [trait] = traits.byMeasure.get(measure) ?? []
      if (!trait?.unit || !isUnit(trait.unit)) {
        if (isScored(traits.get(measure))) {
          if (!strange.has(at.file)) bench.note(misplacedTable(at.file, 'scores'))
          strange.add(at.file)
          continue
        }
        const named = `${at.file}\n${measure}`
        if (!strange.has(named) && !bench.hasFaultyIn('traits/')) bench.note(unknownMeasure(measure, keyAt, near(measure, traits.byMeasure.keys())))
        strange.add(named)
        continue
      }
      const value = inUnit(quantity, trait.unit)
      if (value === null) {
        bench.note(otherUnit(trait, quantity.text, at))
        continue
      }
      const weighing: Weighing = {measure, value, on: row.on, at}
      if (bird) {
        const own = ofBirds.get(bird)
        if (own) own.push(weighing)
        else ofBirds.set(bird, [weighing])
      }
      if (hatch && 'hatch' in row.of) loose.push({...weighing, hatch, sex: row.of.sex})
    }
  }
  for (const [bird, own] of ofBirds) bird.weighings = own.length > 1 ? own.sort((a, b) => compareDates(a.on, b.on)) : own
  return looseWeighings(loose, traits.all)
}

const isScored = (trait: Trait | undefined): boolean => trait !== undefined && trait.kind !== 'measured'

type Loose = Omit<LooseWeighing, 'countsFor'>

/**
 * Birds weighed without bands, with the traits that each weighing stands for: of each hatch and sex only those of the one day that
 * counts, so that no bird counts twice.
 */
export function looseWeighings(loose: readonly Loose[], traits: readonly Trait[]): readonly LooseWeighing[] {
  const counting = new Map(loose.map(weighing => [weighing, [] as Trait[]] as const))
  for (const [hatch, sexes] of groupsOf(loose)) {
    for (const [sex, all] of sexes) {
      for (const trait of traits) {
        if (trait.kind !== 'measured') continue
        const own = all.filter(({measure, on}) => measure === trait.measure && !isOutside(trait, on, {hatched: hatch.on, sex})).sort((a, b) => compareDates(a.on, b.on))
        const chosen = countingOf(trait, own, hatch.on)
        for (const weighing of own) if (chosen && compareDates(weighing.on, chosen.on) === 0) counting.get(weighing)?.push(trait)
      }
    }
  }
  return loose.map(weighing => ({...weighing, countsFor: counting.get(weighing) ?? []}))
}

function groupsOf(loose: readonly Loose[]): ReadonlyMap<Hatch, ReadonlyMap<Sex, readonly Loose[]>> {
  const groups = new Map<Hatch, Map<Sex, Loose[]>>()
  for (const weighing of loose) {
    const sexes = groups.get(weighing.hatch) ?? new Map<Sex, Loose[]>()
    groups.set(weighing.hatch, sexes)
    const own = sexes.get(weighing.sex)
    if (own) own.push(weighing)
    else sexes.set(weighing.sex, [weighing])
  }
  return groups
}

/**
 * The weighings of a bird that speak of a trait: those within its days; where there is none, the nearest one (shown, never counted),
 * unless it was taken for another trait of the same measure.
 */
export function weighingScores(trait: Trait, bird: Bird, traits: readonly Trait[]): readonly Score[] {
  const own = trait.kind === 'measured' ? bird.weighings.filter(weighing => weighing.measure === trait.measure) : []
  if (own.length === 0) return []
  const scores = own.map(({value, on, at}): Score => ({trait, value, on, by: null, struck: null, outside: isOutside(trait, on, bird), at}))
  const inside = scores.filter(score => !score.outside)
  if (inside.length > 0 || trait.atAge === null) return inside
  const off = (of: Trait, score: Score) => (score.on && of.atAge !== null ? daysOff(of.atAge, score.on, bird.hatched) : null) ?? Infinity
  const nearest = scores.reduce((best, score) => (off(trait, score) < off(trait, best) ? score : best))
  return traits.some(other => other !== trait && other.measure === trait.measure && off(other, nearest) < off(trait, nearest)) ? [] : [nearest]
}
