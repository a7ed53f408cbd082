/** Where the chicks of one setting come from: their parentage, given what is stated of each. Chicks of one mating share one parentage. */
import type {TallyRecord} from '../records/schema/hatch.ts'
import {inside, type Spot} from '../records/problem.ts'
import {spanOf, type Span} from './band-book.ts'
import type {Bench} from './bench.ts'
import type {Birds} from './birds.ts'
import type {Bird, Hatch, Keeper, Parentage, Pen, Strain} from './book.ts'
import type {Directory} from './directory.ts'
import {noneAtKeeper} from './inspect/none-at-keeper.ts'
import type {Keepers} from './keepers.ts'
import {keptThen} from './kept-then.ts'
import {layingOf} from './laying.ts'
import {matingsOf, type Matings, type Setting} from './matings.ts'
import {parentageOf, UNKNOWN_PARENTS} from './parentage.ts'
import type {Pens} from './pens.ts'
import {NOT_STATED, statedParent, type Naming, type StatedParent} from './stated-parents.ts'

export interface Rooms {
  readonly birds: Birds
  readonly pens: Pens
  readonly strains: Directory<Strain>
  readonly keepers: Keepers
  readonly bench: Bench
  readonly incubationDays: number
  readonly spermStoreDays: number
}

/** What is said of one chick's, or one tally's, own parents. */
export interface Stated {
  readonly sire: StatedParent
  readonly dam: StatedParent
  readonly pen: Pen | null
}

export interface Origin {
  readonly laying: Span | null
  readonly keeper: Keeper | null
  readonly matings: Matings
  of(stated: Stated): Parentage
}

/** What a line says of its own parents, in whatever record it stands. */
export type ParentLine = Pick<TallyRecord, 'sire' | 'dam' | 'pen'>

/** @param at where each of the three is written: they may stand in different records */
export function statedOf(line: ParentLine, at: {readonly sire: Spot; readonly dam: Spot}, origin: Origin, rooms: Rooms): Stated {
  const side = (key: 'sire' | 'dam') => {
    const spot = inside(at[key], key)
    return statedParent(line[key], spot, namingAt(spot, key === 'sire' ? 'male' : 'female', origin, rooms), rooms.bench)
  }
  return {sire: side('sire'), dam: side('dam'), pen: line.pen ? rooms.pens.find(line.pen) : null}
}

function namingAt(spot: Spot, as: 'male' | 'female', {laying, keeper}: Origin, {birds, strains, keepers, pens, bench}: Rooms): Naming {
  return {
    find: band => birds.find(band, laying, keeper, as),
    strain: ref => strains.find(ref),
    keptBy(ref) {
      const whose = keepers.find(ref)
      const found = laying ? keptThen(birds.birds, pens.staysOf, whose, as, laying) : []
      if (found.length === 0) bench.note(noneAtKeeper(spot, ref, as, laying !== null))
      return found
    },
  }
}

export const NOTHING_STATED: Stated = {sire: NOT_STATED, dam: NOT_STATED, pen: null}

/** The origin of a hatch's chicks. */
export function hatchOrigin(hatch: Hatch, rooms: Rooms): Origin {
  const laying = layingOf(hatch, rooms.incubationDays)
  return originOf({pens: hatch.pens, laying, eggs: hatch.eggs, eggsByDam: hatch.eggsByDam}, hatch.keeper, rooms)
}

/** The origin of a bird that no hatch lists. */
export function loneOrigin(bird: Bird, rooms: Rooms): Origin {
  const laying = layingOf({on: bird.hatched}, rooms.incubationDays) ?? spanOf(bird.hatched)
  return originOf({pens: [], laying, eggs: null, eggsByDam: []}, bird.keptAt[0]?.keeper ?? null, rooms)
}

function originOf(setting: Setting, keeper: Keeper | null, rooms: Rooms): Origin {
  const known = new Map<string, Parentage>()
  const matings = matingsOf(setting, rooms.pens.staysOf, rooms.spermStoreDays)
  return {
    laying: setting.laying,
    keeper,
    matings,
    of({sire, dam, pen}) {
      const key = `${pen?.id ?? ''}\n${keyOf(sire)}\n${keyOf(dam)}`
      const parentage = known.get(key) ?? parentageOf(pairsOf(pen ? matings.ofPen(pen) : matings, sire, dam), {sire: sire.strain, dam: dam.strain})
      known.set(key, parentage)
      return parentage
    },
  }
}

function pairsOf(matings: Matings, sire: StatedParent, dam: StatedParent) {
  const pairs = matings.pairs(sire, dam)
  return pairs.length > 0 ? pairs : UNKNOWN_PARENTS.pairs
}

const keyOf = ({candidates, strain}: StatedParent): string =>
  `${strain?.id ?? ''}:${(candidates ?? []).map(({bird, chance}) => `${bird?.id ?? ''}=${chance}`).join(',')}`

