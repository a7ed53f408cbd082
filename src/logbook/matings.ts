/**
 * The matings that a chick's eggs may have come from: which hens of which pens laid then, and which males each of them may have been with.
 * A male and a hen who never met have no chicks, so chances belong to pairs.
 */
import type {Span} from './band-book.ts'
import type {Bird, Pair, Pen, Stay} from './book.ts'
import {eggsByHen, type EggsOfPen} from './eggs-by-hen.ts'
import {SLACK} from './inspect/chances-do-not-sum.ts'
import {femalesAt, malesAt, malesMetBy} from './laying.ts'
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
  /** can this bird be a parent here: does it stand in one of the pens, or may one of their hens have kept his sperm? */
  holds(bird: Bird, as: 'male' | 'female'): boolean
  /** may the two have met before the eggs were laid? Nothing is held against a bird from outside these pens */
  mayHaveMet(sire: Bird | null, dam: Bird | null): boolean
  /** those of a chick whose pen is known */
  ofPen(pen: Pen): Matings
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
  return matingsOfParts(partsOf(setting, staysOf, spermStoreDays), pen =>
    partsOf({laying: setting.laying, pens: [{pen, eggs: null}], eggs: null, eggsByDam: []}, staysOf, spermStoreDays))
}

/** @param other the parts of a pen that is none of these */
function matingsOfParts(parts: readonly Part[], other: (pen: Pen) => readonly Part[]): Matings {
  const all = parts.flatMap(part => part.dams.flatMap(dam => pairsWith(part, dam.bird, part.share * dam.chance))).filter(pair => pair.chance > 0)

  const partsWith = (bird: Bird, as: 'males' | 'females'): readonly Part[] => parts.filter(({pen}) => pen[as].some(stay => stay.bird === bird))
  /** the parts of the pens that a bird stood in; of all where it stood in none */
  const partsFor = (bird: Bird | null, as: 'males' | 'females'): readonly Part[] => {
    const own = bird ? partsWith(bird, as) : []
    return own.length > 0 ? own : parts
  }
  const holds = (bird: Bird, as: 'male' | 'female'): boolean =>
    partsWith(bird, as === 'male' ? 'males' : 'females').length > 0 || (as === 'male' && all.some(pair => pair.sire === bird))

  function ofDam(dam: Bird | null): readonly Pair[] {
    const hers = all.filter(pair => pair.dam === dam)
    return hers.length > 0 ? hers : partsFor(dam, 'females').flatMap(part => pairsWith(part, dam, part.share))
  }
  function ofSire(sire: Bird | null): readonly Pair[] {
    const his = all.filter(pair => pair.sire === sire)
    return his.length > 0 ? his : partsFor(sire, 'males').flatMap(part => part.dams.map(dam => ({sire, dam: dam.bird, chance: part.share * dam.chance})))
  }
  function mayHaveMet(sire: Bird | null, dam: Bird | null): boolean {
    if (sire === null || dam === null || !holds(sire, 'male') || !holds(dam, 'female')) return true
    return partsWith(dam, 'females').some(part => part.siresFor(dam).some(each => each.bird === sire))
  }

  return {
    holds,
    mayHaveMet,
    pairs({candidates: sires}, {candidates: dams}) {
      if (sires && dams) {
        const stated = sires.flatMap(sire => dams.map((dam): Pair => ({sire: sire.bird, dam: dam.bird, chance: sire.chance * dam.chance})))
        const met = stated.filter(pair => mayHaveMet(pair.sire, pair.dam))
        return met.length > 0 ? met : stated
      }
      if (dams) return dams.flatMap(({bird, chance}) => scaled(ofDam(bird), chance, {sire: null, dam: bird}))
      if (sires) return sires.flatMap(({bird, chance}) => scaled(ofSire(bird), chance, {sire: bird, dam: null}))
      return all
    },
    ofPen(pen) {
      const own = parts.find(part => part.pen === pen)
      return matingsOfParts(own ? [{...own, share: 1}] : other(pen), other)
    },
  }
}

function pairsWith({siresFor}: Part, dam: Bird | null, chance: number): readonly Pair[] {
  return evened(siresFor(dam)).map((sire): Pair => ({sire: sire.bird, dam, chance: chance * sire.chance}))
}

/** Pairs with weights that sum to this chance; where there is none, one whose other side nobody knows. */
function scaled(pairs: readonly Pair[], chance: number, lone: Omit<Pair, 'chance'>): readonly Pair[] {
  const sum = pairs.reduce((total, pair) => total + pair.chance, 0)
  return sum > 0 ? pairs.map(pair => ({...pair, chance: (pair.chance / sum) * chance})) : [{...lone, chance}]
}

/** Chances scaled to sum to 1; nobody known when there is none. */
function evened(candidates: readonly Candidate[]): readonly Candidate[] {
  const sum = candidates.reduce((total, {chance}) => total + chance, 0)
  if (sum <= 0) return NOBODY
  return sum === 1 ? candidates : candidates.map(({bird, chance}) => ({bird, chance: chance / sum}))
}

function partsOf({pens, laying, eggs, eggsByDam}: Setting, staysOf: Pens['staysOf'], spermStoreDays: number): readonly Part[] {
  const hens = pens.map(({pen}) => distinct(femalesAt(pen, laying)))
  const eggsOfPens = eggsByHen({pens: pens.map((each, index) => ({...each, hens: hens[index] ?? []})), eggs, eggsByDam})
  const counts = eggsOfPens.map(({byHen, others}) => [...byHen.values()].reduce((sum, count) => sum + count, others))
  const inAll = counts.reduce((sum, count) => sum + count, 0)
  const counted = inAll > 0 && (eggsByDam.length > 0 || pens.every(each => each.eggs !== null))
  return pens.map(({pen}, index): Part => {
    const laid = hens[index] ?? []
    const males = maleCandidates(pen, laying, spermStoreDays)
    return {
      pen, share: counted ? (counts[index] ?? 0) / inAll : 1 / pens.length,
      dams: evened(damCandidates(laid.length > 0 ? laid : distinct(pen.females), eggsOfPens[index])),
      siresFor: dam => siresFor(dam, pen, males),
    }
  })

  /** Of a pen's males those whom a hen of it had met, and with them those of her other pens; all of the pen's where the days say that she met none. */
  function siresFor(dam: Bird | null, pen: Pen, males: readonly Candidate[]): readonly Candidate[] {
    if (dam === null || laying === null || !pen.females.some(stay => stay.bird === dam)) return males
    const met = malesMetBy(dam, pen, staysOf.get(dam) ?? [], laying, spermStoreDays)
    const here = males.filter(({bird}) => bird === null || met.has(bird))
    // stated shares of the chicks leave nothing over for males of another pen
    const shared = pen.males.some(stay => stay.chance !== null)
    const elsewhere = shared ? [] : [...met].filter(bird => !males.some(male => male.bird === bird)).map(bird => ({bird, chance: 1}))
    return [...here, ...elsewhere].some(({bird}) => bird !== null) ? [...here, ...elsewhere] : males
  }
}

/** Hens by the eggs known to be theirs; eggs of unknown hens are spread evenly over the pen's. */
function damCandidates(hens: readonly Bird[], laid: EggsOfPen | undefined): readonly Candidate[] {
  const eggs = new Map<Bird, number>(hens.map(hen => [hen, (laid?.others ?? 0) / hens.length]))
  for (const [hen, count] of laid?.byHen ?? []) eggs.set(hen, (eggs.get(hen) ?? 0) + count)
  const known = [...eggs].filter(([, count]) => count > 0)
  return known.length > 0 ? known.map(([bird, chance]) => ({bird, chance})) : hens.map(bird => ({bird, chance: 1}))
}

/**
 * Males with equal chances, or their stated shares. What is left of the whole goes evenly to those without one; where all have one, and stood there
 * throughout, to a bird outside the book.
 */
function maleCandidates(pen: Pen, laying: Span | null, spermStoreDays: number): readonly Candidate[] {
  const possible = malesAt(pen, laying, spermStoreDays)
  const stays = possible.length > 0 ? possible : pen.males
  const stated = new Map<Bird, number>()
  for (const {bird, chance} of pen.males) if (chance !== null) stated.set(bird, (stated.get(bird) ?? 0) + chance)
  const birds = distinct(stays)
  if (stated.size === 0) return birds.map(bird => ({bird, chance: 1}))
  const unstated = distinct(pen.males).filter(bird => !stated.has(bird)).length
  const rest = Math.max(0, 1 - [...stated.values()].reduce((sum, chance) => sum + chance, 0))
  const found = birds.map((bird): Candidate => ({bird, chance: stated.get(bird) ?? rest / unstated}))
  const throughout = pen.males.every(({from, to}) => from === null && to === null)
  return unstated === 0 && throughout && rest > SLACK ? [...found, {bird: null, chance: rest}] : found
}

const distinct = (stays: readonly Stay[]): readonly Bird[] => [...new Set(stays.map(stay => stay.bird))]
