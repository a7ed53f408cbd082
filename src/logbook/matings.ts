/**
 * The matings that a chick's eggs may have come from: which hens of which pens laid then, and which males each of them may have been with.
 * A male and a hen of different pens never met, so chances belong to pairs.
 */
import type {Span} from './band-book.ts'
import type {Bird, Pair, Pen, Stay} from './book.ts'
import {femalesAt, malesAt, stayDays} from './laying.ts'
import type {Pens} from './pens.ts'
import type {Candidate, StatedParent} from './stated-parents.ts'

/** One pen's part in a setting: its share, and what its hens and males have in it. Weights are relative within the pen. */
interface Part {
  readonly pen: Pen
  readonly share: number
  readonly dams: readonly Candidate[]
  siresFor(dam: Bird | null): readonly Candidate[]
}

export interface Matings {
  /** pairs with weights, for what is stated of one chick */
  pairs(sire: StatedParent, dam: StatedParent): readonly Pair[]
}

export interface Setting {
  readonly pens: readonly {readonly pen: Pen; readonly eggs: number | null}[]
  readonly laying: Span | null
  /** eggs in all, where known */
  readonly eggs: number | null
  readonly eggsByDam: readonly {readonly dam: Bird; readonly eggs: number}[]
}

const NOBODY: readonly Candidate[] = [{bird: null, chance: 1}]

export function matingsOf(setting: Setting, staysOf: Pens['staysOf'], spermStoreDays: number): Matings {
  const parts = partsOf(setting, staysOf, spermStoreDays)
  const damsIn = (part: Part) => (part.dams.length > 0 ? part.dams : NOBODY)
  const isDamOf = (part: Part, bird: Bird) => part.pen.females.some(stay => stay.bird === bird)
  const isSireOf = (part: Part, bird: Bird) => part.siresFor(null).some(sire => sire.bird === bird) || part.pen.males.some(stay => stay.bird === bird)
  /** the pens that a stated bird was in; all of them where it was in none */
  const partsWith = (bird: Bird | null, isOf: (part: Part, bird: Bird) => boolean): readonly Part[] => {
    const own = bird ? parts.filter(part => isOf(part, bird)) : []
    return own.length > 0 ? own : parts
  }

  function siresOf(dam: Bird | null): readonly Candidate[] {
    return evened(partsWith(dam, isDamOf).flatMap(part => scaled(evened(part.siresFor(dam)), part.share)))
  }
  function damsOf(sire: Bird | null): readonly Candidate[] {
    return evened(partsWith(sire, isSireOf).flatMap(part => scaled(evened(damsIn(part)), part.share)))
  }
  /** have the two been in one pen, or was one of them in none of these pens? */
  const mayHaveMet = (sire: Bird | null, dam: Bird | null): boolean => {
    const his = sire ? parts.filter(part => isSireOf(part, sire)) : []
    const hers = dam ? parts.filter(part => isDamOf(part, dam)) : []
    return his.length === 0 || hers.length === 0 || his.some(part => hers.includes(part))
  }

  return {
    pairs({candidates: sires}, {candidates: dams}) {
      if (sires && dams) {
        const all = sires.flatMap(sire => dams.map((dam): Pair => ({sire: sire.bird, dam: dam.bird, chance: sire.chance * dam.chance})))
        const met = all.filter(pair => mayHaveMet(pair.sire, pair.dam))
        return met.length > 0 ? met : all
      }
      if (dams) return dams.flatMap(dam => siresOf(dam.bird).map((sire): Pair => ({sire: sire.bird, dam: dam.bird, chance: dam.chance * sire.chance})))
      if (sires) return sires.flatMap(sire => damsOf(sire.bird).map((dam): Pair => ({sire: sire.bird, dam: dam.bird, chance: sire.chance * dam.chance})))
      return parts.flatMap(part => evened(damsIn(part)).flatMap(dam =>
        evened(part.siresFor(dam.bird)).map((sire): Pair => ({sire: sire.bird, dam: dam.bird, chance: part.share * dam.chance * sire.chance}))))
    },
  }
}

/** Chances scaled to sum to 1; nobody known when there is none. */
function evened(candidates: readonly Candidate[]): readonly Candidate[] {
  const sum = candidates.reduce((total, {chance}) => total + chance, 0)
  if (sum <= 0) return NOBODY
  return sum === 1 ? candidates : candidates.map(({bird, chance}) => ({bird, chance: chance / sum}))
}

const scaled = (candidates: readonly Candidate[], by: number): readonly Candidate[] => candidates.map(({bird, chance}) => ({bird, chance: chance * by}))

function partsOf({pens, laying, eggs, eggsByDam}: Setting, staysOf: Pens['staysOf'], spermStoreDays: number): readonly Part[] {
  const whole = pens.map(each => each.eggs ?? (pens.length === 1 ? eggs : null))
  const own = pens.map(({pen}) => eggsByDam.filter(({dam}) => pens.length === 1 || pen.females.some(stay => stay.bird === dam)))
  const named = own.map(each => each.reduce((sum, {eggs: count}) => sum + count, 0))
  const spare = eggs === null ? 0 : Math.max(0, eggs - named.reduce((sum, each) => sum + each, 0)) / pens.length
  /** eggs of each pen's hens that are not known by hen */
  const others = whole.map((count, index) => (count === null ? spare : Math.max(0, count - (named[index] ?? 0))))
  const eggsOf = others.map((count, index) => count + (named[index] ?? 0))
  const inAll = eggsOf.reduce((sum, count) => sum + count, 0)
  const counted = inAll > 0 && (whole.every(count => count !== null) || eggsByDam.length > 0)
  return pens.map(({pen}, index): Part => {
    const laid = femalesAt(pen, laying)
    const hens = distinct(laid.length > 0 ? laid : pen.females)
    const males = maleCandidates(pen, laying, spermStoreDays)
    return {
      pen, share: counted ? (eggsOf[index] ?? 0) / inAll : 1 / pens.length, dams: damCandidates(hens, own[index] ?? [], others[index] ?? 0),
      siresFor: dam => [...males, ...earlierMales(pen, dam, males)],
    }
  })

  /** males of a pen that the hen has left so lately that she may still keep their sperm; only where both pens give their days */
  function earlierMales(pen: Pen, dam: Bird | null, now: readonly Candidate[]): readonly Candidate[] {
    if (dam === null || laying === null || pen.males.some(stay => stay.chance !== null)) return []
    const here = pen.females.find(stay => stay.bird === dam)
    const came = here ? here.from?.first ?? pen.from?.first ?? null : null
    if (came === null) return []
    const before = (staysOf.get(dam) ?? []).filter(({pen: other, stay}) => {
      const {to} = stayDays(other, stay)
      return other !== pen && to <= came && to + spermStoreDays >= laying.from
    })
    const males = before.flatMap(({pen: other, stay}) => {
      const {to} = stayDays(other, stay)
      return malesAt(other, {from: to, to}, 0).map(male => male.bird)
    })
    const chance = now.length === 0 ? 1 : now.reduce((sum, each) => sum + each.chance, 0) / now.length
    return [...new Set(males)].filter(male => male !== dam && !now.some(each => each.bird === male)).map(bird => ({bird, chance}))
  }
}

/** Hens by the eggs known to be theirs; eggs of unknown hens are spread evenly over the pen's. */
function damCandidates(hens: readonly Bird[], own: readonly {readonly dam: Bird; readonly eggs: number}[], others: number): readonly Candidate[] {
  if (own.length === 0) return hens.map(bird => ({bird, chance: 1}))
  const eggs = new Map<Bird, number>(hens.map(hen => [hen, others / hens.length]))
  for (const each of own) eggs.set(each.dam, (eggs.get(each.dam) ?? 0) + each.eggs)
  return [...eggs].map(([bird, chance]) => ({bird, chance}))
}

/** Males with equal chances, or their stated shares; what is left of the whole goes evenly to those without one. */
function maleCandidates(pen: Pen, laying: Span | null, spermStoreDays: number): readonly Candidate[] {
  const possible = malesAt(pen, laying, spermStoreDays)
  const stays = possible.length > 0 ? possible : pen.males
  const stated = new Map<Bird, number>()
  for (const {bird, chance} of pen.males) if (chance !== null) stated.set(bird, (stated.get(bird) ?? 0) + chance)
  const birds = distinct(stays)
  if (stated.size === 0) return birds.map(bird => ({bird, chance: 1}))
  const unstated = distinct(pen.males).filter(bird => !stated.has(bird)).length
  const rest = Math.max(0, 1 - [...stated.values()].reduce((sum, chance) => sum + chance, 0))
  return birds.map(bird => ({bird, chance: stated.get(bird) ?? rest / unstated}))
}

const distinct = (stays: readonly Stay[]): readonly Bird[] => [...new Set(stays.map(stay => stay.bird))]
