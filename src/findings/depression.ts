import type {Bird, Hatch, Logbook, Parentage, Trait} from '../logbook/book.ts'
import {yearOf} from '../records/dates.ts'
import {familyKeys, type Blood} from './blood-of-chicks.ts'
import {countedValue} from './counted-value.ts'
import {grouped} from './grouped.ts'
import {fertileOf} from './hatch-results.ts'
import {inbreedingOfMeasures, inbreedingOfShares, type CountedGroup, type InbreedingModel} from './inbreeding-model.ts'
import {seasonOfHatch} from './ladder-chicks.ts'
import {laySheets} from './lay-sheets.ts'
import {FOLLOWED, watchedOf} from './life-watched.ts'
import {isJudged} from './set-aside.ts'
import {PUBLISHED_DEPRESSION, type PublishedRange} from './published-vigour.ts'

/** What inbreeding may cost in one thing. */
export interface Depression extends InbreedingModel {
  readonly outcome: keyof typeof PUBLISHED_DEPRESSION
  /** for weights */
  readonly trait: Trait | null
  /** a share in points, else the unit of the values */
  readonly unit: string
  /** eggs, chicks, birds or hens that came into it */
  readonly n: number
  /** of them hatched or lived; null for what is measured */
  readonly count: number | null
  /** hatches, for what is measured pairs */
  readonly groups: number
  /** distinct pairs, or sets of possible pairs, whose eggs, chicks, birds or hens they are: as many witnesses of F as there are */
  readonly pairs: number
  /** of all that came into it: a share, or in the unit; null where nothing did */
  readonly mean: number | null
  /** eggs, chicks, birds or hens on record that did not: uncounted, parents not known, left before the day, no contemporary */
  readonly leftOut: number
  /** with ten points of F more, in the unit of the changes */
  readonly published: PublishedRange | null
}

/** Chicks of the same parents, or possible parents, whatever the chances: each set written once. */
function pairKeys(): (parentage: Pick<Parentage, 'pairs'>) => string {
  const written = new Map<Parentage['pairs'], string>()
  return ({pairs}) => {
    const known = written.get(pairs)
    if (known !== undefined) return known
    const key = pairs.map(({sire, dam}) => `${sire?.id ?? '?'} × ${dam?.id ?? '?'}`).sort().join('; ')
    written.set(pairs, key)
    return key
  }
}

/** Where the limits lie further apart than the whole of what is measured, a number would only mislead: too few to say. Our own choice. */
function withinReason(model: InbreedingModel, mean: number | null): InbreedingModel {
  return {...model, effects: model.effects.map(effect =>
    effect.kind === 'effect' && effect.interval !== null && mean !== null && effect.interval.high - effect.interval.low > Math.abs(mean) ? {term: effect.term, kind: 'cannot-say', why: 'too-few'} : effect)}
}

type BloodOf = (parentage: Parentage) => Blood | null

/**
 * Is inbreeding costing us chicks, growth or eggs?
 *
 * Hatch and life are regressed as shares, weights and eggs by least squares among contemporaries of one step (which differ
 * in blood and not in strain), on F of chick and dam and on the strain heterozygosity of both;
 * what each of these means stands at `inbreedingOfShares` and `inbreedingOfMeasures`. An egg that did not hatch has the mean blood of its hatch's possible parents.
 * Hatches of eggs bought in have no dams in the book and are left out.
 *
 * @param bloodOf of `bloodOfChicks`
 */
export function depression(book: Logbook, bloodOf: BloodOf): readonly Depression[] {
  const weights = book.traits.filter(({kind, unit}) => kind === 'measured' && (unit === 'g' || unit === 'kg' || unit === 'oz' || unit === 'lb'))
  return [
    hatching(book, bloodOf, 'hatch of fertile', fertileOf), hatching(book, bloodOf, 'hatch of set', ({eggs}) => eggs), living(book, bloodOf),
    ...weights.map(trait => weighing(book, bloodOf, trait)), laying(book, bloodOf),
  ]
}

function ofShares(outcome: Depression['outcome'], groups: readonly CountedGroup[], leftOut: number): Depression {
  const n = groups.reduce((sum, group) => sum + group.n, 0), count = groups.reduce((sum, group) => sum + group.k, 0)
  return {
    ...inbreedingOfShares(groups), outcome, trait: null, unit: 'points', n, count, groups: new Set(groups.map(({cluster}) => cluster)).size, pairs: new Set(groups.map(({pair}) => pair)).size, mean: n === 0 ? null : count / n, leftOut,
    published: PUBLISHED_DEPRESSION[outcome],
  }
}

function hatching(book: Logbook, bloodOf: BloodOf, outcome: 'hatch of fertile' | 'hatch of set', eggsOf: (hatch: Hatch) => number | null): Depression {
  const pairOf = pairKeys()
  let leftOut = 0
  const groups = book.hatches.flatMap((hatch): CountedGroup[] => {
    const n = eggsOf(hatch), k = hatch.hatched, blood = bloodOf(hatch.parentage)
    if (isJudged(hatch) && n !== null && k !== null && k <= n && blood !== null) return n === 0 ? [] : [{n, k, blood, season: seasonOfHatch(hatch), cluster: hatch.id, pair: pairOf(hatch.parentage)}]
    leftOut += n ?? hatch.eggs ?? 0
    return []
  })
  return ofShares(outcome, groups, leftOut)
}

/** true: died within the days · false: seen alive at the end of them · null: nobody knows, or it left before */
function diedWithin(chick: Parameters<typeof watchedOf>[0], asOf: number): boolean | null {
  const watched = watchedOf(chick, asOf)
  if (watched === null) return null
  return watched.died && watched.age <= FOLLOWED ? true : watched.age >= FOLLOWED ? false : null
}

function living(book: Logbook, bloodOf: BloodOf): Depression {
  const cells = new Map<string, CountedGroup>()
  const keyOf = familyKeys(), pairOf = pairKeys()
  let leftOut = 0
  for (const hatch of book.hatches) {
    leftOut += hatch.unlisted
    for (const chick of [...hatch.chicks, ...hatch.tallies]) {
      const died = diedWithin(chick, book.asOf), blood = bloodOf(chick.parentage)
      if (!isJudged(hatch) || died === null || blood === null) {
        leftOut += chick.count
        continue
      }
      const key = `${hatch.id}\n${keyOf(chick.parentage)}`, before = cells.get(key)
      cells.set(key, {blood, season: seasonOfHatch(hatch), cluster: hatch.id, pair: pairOf(chick.parentage), n: (before?.n ?? 0) + chick.count, k: (before?.k ?? 0) + (died ? 0 : chick.count)})
    }
  }
  return ofShares('livability', [...cells.values()].filter(({n}) => n > 0), leftOut)
}

interface Measured {
  readonly bird: Bird
  readonly value: number
  readonly group: string
  /** whose blood it is of */
  readonly blood: Blood
}

function ofMeasures(outcome: 'weight' | 'eggs', trait: Trait | null, unit: string, measured: readonly Measured[], all: number): Depression {
  const keyOf = familyKeys(), pairOf = pairKeys()
  // a class of one family tells nothing of blood, whatever its numbers
  const told = [...grouped(measured, ({group}) => group).values()].filter(own => new Set(own.map(({bird}) => keyOf(bird.parentage))).size > 1).flat()
  const families = [...grouped(told, ({bird, group}) => `${group}\n${keyOf(bird.parentage)}`).values()].flatMap(own => {
    const [first] = own
    return first ? [{group: first.group, blood: first.blood, pair: pairOf(first.bird.parentage), value: own.reduce((sum, {value}) => sum + value, 0) / own.length}] : []
  })
  const pairs = new Set(families.map(({pair}) => pair)).size
  const mean = told.length === 0 ? null : told.reduce((sum, {value}) => sum + value, 0) / told.length, found = PUBLISHED_DEPRESSION[outcome]
  const published = outcome === 'eggs' ? found : mean === null ? null : {...found, low: found.low * mean, high: found.high * mean}
  return {...withinReason(inbreedingOfMeasures(families), mean), outcome, trait, unit, n: told.length, count: null, groups: pairs, pairs, mean, leftOut: all - told.length, published}
}

function weighing(book: Logbook, bloodOf: BloodOf, trait: Trait): Depression {
  let all = 0
  const measured = book.birds.flatMap((bird): Measured[] => {
    const value = countedValue(bird, trait)
    if (typeof value !== 'number') return []
    all += 1
    const blood = bloodOf(bird.parentage)
    return blood && bird.hatch && bird.sex !== 'unknown' ? [{bird, value, blood, group: `${bird.sex} ${bird.step.label} ${bird.hatch.rearing}`}] : []
  })
  return ofMeasures('weight', trait, trait.unit ?? '', measured, all)
}

/** Eggs in a hundred counted days of each hen with an egg sheet of her own, among hens of one step, hatched in one year and counted in one. */
function laying(book: Logbook, bloodOf: BloodOf): Depression {
  const hens = new Set(book.eggCounts.flatMap(({bird, on}) => (bird ? [`${yearOf(on.first)} ${bird.id}`] : [])))
  const measured = laySheets(book).flatMap(({bird, season, eggs, henDays}): Measured[] => {
    const blood = bird && bloodOf(bird.parentage)
    return bird && blood ? [{bird, blood, value: (100 * eggs) / henDays, group: `${bird.step.label} ${season}, hatched ${bird.hatched ? yearOf(bird.hatched.first) : '?'}`}] : []
  })
  return ofMeasures('eggs', null, 'eggs in 100 days', measured, hens.size)
}
