/**
 * The flock while it is being drawn: birds with their true genes, pens, hatches. The plan of the seasons (`seasons.ts`) says who is put with whom
 * and when eggs are set; chance says what comes of it. Every hatch and every bird draws from its own chance, named after it, so that a
 * change to one season leaves the others as they were.
 */
import {chanceOf, type Chance} from '../bench/chance.ts'
import {daysBetween, plusDays} from './calendar.ts'
import {chickOf, founder, type Genes, type Sex, type StrainGenes} from './genes.ts'
import {seenComb, seenDown, seenGround, seenSkin, weightAt20} from './looks.ts'

export interface DrawnBird {
  /** band, or a made-up name for a chick that never wore one */
  readonly id: string
  readonly sex: Sex
  readonly hatched: string
  readonly genes: Genes
  readonly strain: string | null
  readonly hatch: DrawnHatch | null
  readonly pen: string | null
  readonly sire: string | null
  readonly dam: string | null
  readonly grams20: number
  mark: string | null
  /** what was written down of it */
  looks: {comb?: string; skin?: string; ground?: string; down?: string}
  left: {on: string; words: string} | null
}

export interface Stay {
  readonly band: string
  readonly from?: string
  readonly to?: string
  readonly chance?: string
}

export interface DrawnPen {
  readonly id: string
  readonly season: number
  readonly keeper: string
  readonly males: readonly Stay[]
  readonly females: readonly Stay[]
  readonly from: string
  readonly to: string
  readonly intends?: string
}

export interface Setting {
  readonly id: string
  /** pen → eggs, or eggs by hen */
  readonly from: Readonly<Record<string, number | Readonly<Record<string, number>>>>
  readonly set: string
  readonly laid: string
  readonly machine?: string
  readonly broody?: string
  readonly keeper: string
  /** chance that an egg is fertile, and that a fertile one dies early or late */
  readonly fertile: number
  readonly deadInGerm: number
  readonly deadInShell: number
  readonly bad?: number
  /** chicks banded; the rest go into tallies */
  readonly unbanded: number
  /** dams are known from the trap nest or the basket */
  readonly damsKnown: boolean
  /** a day out either way */
  readonly late?: number
  /** eggs of a bought strain, in place of a pen */
  readonly strain?: string
  readonly flock?: {readonly name: string; readonly kinship: string}
}

export interface DrawnHatch {
  readonly plan: Setting
  readonly on: string
  readonly eggs: number
  clear: number
  deadInGerm: number
  deadInShell: number
  readonly luck: number
  readonly banded: DrawnBird[]
  readonly tallied: DrawnBird[]
}

/** How long after a change the former male's chicks still come in this demo. */
const STORE_DAYS = 16

export class Flock {
  readonly birds = new Map<string, DrawnBird>()
  readonly pens = new Map<string, DrawnPen>()
  readonly hatches = new Map<string, DrawnHatch>()
  readonly #nextBand = new Map<string, number>()
  readonly #seed: number

  constructor(seed: number) {
    this.#seed = seed
  }

  /** Chance of its own for a thing with this name. */
  chance(name: string): Chance {
    let hash = this.#seed | 0
    for (const letter of name) hash = (Math.imul(hash, 31) + letter.charCodeAt(0)) | 0
    // the first draws of neighbouring seeds are alike; let them run apart
    const chance = chanceOf(hash)
    for (let i = 0; i < 8; i++) chance.whole(0, 1)
    return chance
  }

  bird(id: string): DrawnBird {
    const bird = this.birds.get(id)
    if (!bird) throw new Error(`no bird ${id} has been drawn`)
    return bird
  }

  found(id: string, sex: Sex, strain: string, genes: StrainGenes, hatched: string): DrawnBird {
    const chance = this.chance(`founder ${id}`)
    const drawn = founder(genes, sex, chance)
    const bird: DrawnBird = {
      id, sex, hatched, strain, genes: drawn, hatch: null, pen: null, sire: null, dam: null, mark: null,
      grams20: weightAt20(drawn, sex, 0, chance), looks: {}, left: null,
    }
    this.birds.set(id, bird)
    return bird
  }

  pen(pen: DrawnPen): DrawnPen {
    for (const stay of [...pen.males, ...pen.females]) this.bird(stay.band)
    this.pens.set(pen.id, pen)
    return pen
  }

  /** Eggs into the machine, chicks out. `prefix` and `first` give the bands: 24 and 31 → 24-031, 24-032 … */
  hatch(plan: Setting, prefix: string, first: number, strainGenes?: StrainGenes): DrawnHatch {
    const chance = this.chance(`hatch ${plan.id}`)
    const eggs: {pen: string; dam: string | null}[] = Object.entries(plan.from).flatMap(([pen, number]) => {
      if (typeof number !== 'number') return Object.entries(number).flatMap(([dam, count]) => Array.from({length: count}, () => ({pen, dam})))
      const hens = this.pens.get(pen)?.females.filter(stay => inPen(stay, plan.laid)) ?? []
      return Array.from({length: number}, () => ({pen, dam: hens.length > 0 ? chance.oneOf(hens).band : null}))
    })
    const hatch: DrawnHatch = {
      plan, eggs: eggs.length, on: plusDays(plan.set, 21 + (plan.late ?? 0)), clear: 0, deadInGerm: 0, deadInShell: 0,
      luck: 0.025 * chance.normal(), banded: [], tallied: [],
    }
    const hatched: DrawnBird[] = []
    eggs.forEach(({pen, dam}, index) => {
      if (index < (plan.bad ?? 0)) return
      if (!chance.happens(plan.fertile)) hatch.clear++
      else if (chance.happens(plan.deadInGerm)) hatch.deadInGerm++
      else if (chance.happens(plan.deadInShell)) hatch.deadInShell++
      else hatched.push(this.#chick(hatch, pen, dam, chance, strainGenes))
    })
    const unbanded = new Set(chance.some(hatched, plan.unbanded))
    let number = this.#nextBand.get(`${prefix} ${first}`) ?? first
    for (const chick of hatched) {
      if (unbanded.has(chick)) {
        hatch.tallied.push({...chick, id: `${plan.id} unbanded ${hatch.tallied.length + 1}`})
        continue
      }
      if (chance.happens(0.04)) number++ // a band spoilt in the pliers
      const band = `${prefix}-${String(number++).padStart(prefix.startsWith('H') ? 2 : 3, '0')}`
      const bird = {...chick, id: band}
      hatch.banded.push(bird)
      this.birds.set(band, bird)
    }
    this.#nextBand.set(`${prefix} ${first}`, number)
    this.hatches.set(plan.id, hatch)
    return hatch
  }

  #chick(hatch: DrawnHatch, pen: string, dam: string | null, chance: Chance, strainGenes: StrainGenes | undefined): DrawnBird {
    const sex: Sex = chance.happens(0.5) ? 'male' : 'female'
    const sire = this.#sireOf(pen, hatch.plan.laid, chance)
    const genes = strainGenes ? founder(strainGenes, sex, chance) : chickOf(this.bird(sire ?? '').genes, this.bird(dam ?? '').genes, sex, chance)
    return {
      id: '', sex, hatched: hatch.on, genes, strain: null, hatch, pen: strainGenes ? null : pen, sire, dam, mark: null,
      grams20: weightAt20(genes, sex, hatch.luck, chance), left: null,
      looks: {comb: seenComb(genes, chance), skin: seenSkin(genes, chance), ground: seenGround(genes, chance), down: seenDown(genes, chance)},
    }
  }

  /** The male of the pen on the day the egg was laid, or the one before him for as long as hens keep his seed. */
  #sireOf(pen: string, laid: string, chance: Chance): string | null {
    const males = this.pens.get(pen)?.males ?? []
    if (males.length < 2) return males[0]?.band ?? null
    const shares = males.flatMap(male => (male.chance === undefined ? [] : [Number(male.chance.replace('%', '')) / 100]))
    if (shares.length === males.length) return males[chance.happens(shares[0] ?? 1) ? 0 : 1]?.band ?? null
    const [from = '', to = from] = laid.split('..')
    const day = plusDays(from, chance.whole(0, daysBetween(from, to)))
    const present = males.find(male => (male.from ?? '0') <= day && day <= (male.to ?? '9'))
    const former = males.find(male => male.to !== undefined && male.to < day && daysBetween(male.to, day) <= STORE_DAYS)
    if (former && (!present || chance.happens(0.6 * (1 - daysBetween(former.to ?? day, day) / STORE_DAYS)))) return former.band
    return (present ?? males[0])?.band ?? null
  }
}

function inPen(stay: Stay, laid: string): boolean {
  const [from = '', to = from] = laid.split('..')
  return (stay.from ?? '0') <= to && (stay.to ?? '9') >= from
}
