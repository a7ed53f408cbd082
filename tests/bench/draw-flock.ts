/**
 * A drawn project: founders of two invented strains, pens, settings and chicks over many seasons, with true genotypes handed down gene by
 * gene. Nothing here knows how a record is written.
 *
 * Ladder: F1, BC1, BC2, BC3, then inter se BC3F2, BC3F3 … one step a season.
 */
import {dayOf} from '../../src/records/dates.ts'
import type {Chance} from './chance.ts'

export interface DrawnBird {
  readonly band: string
  readonly sex: 'male' | 'female'
  /** the two combs' alleles, `P` or `p+`; likewise for the skin; of a hen's ground colour only the first counts */
  readonly genes: {readonly P: Pair; readonly W: Pair; readonly S: Pair}
  readonly strain: 'holm-white' | 'fell-buff' | null
  readonly hatched: number
  readonly sire: DrawnBird | null
  readonly dam: DrawnBird | null
  /** the step it was bred as */
  readonly step: string
  /** the keeper could not tell */
  readonly unsexed: boolean
  left: {readonly on: number; readonly how: 'died' | 'culled' | 'sold'} | null
  kept: number | null
  /** hens of which the keeper wrote down the first egg */
  firstEgg: number | null
}
type Pair = readonly [string, string]

export interface DrawnPen {
  readonly id: string
  readonly season: number
  /** days from and to which a male stood in the pen, where he was changed */
  readonly males: readonly {readonly bird: DrawnBird; readonly from: number | null; readonly to: number | null}[]
  /** shares of the chicks by male, in percent, where the keeper states them */
  readonly shares: readonly number[] | null
  readonly females: readonly DrawnBird[]
  readonly from: number
  readonly to: number
  readonly keeper: string
  readonly gives: string
}

export interface DrawnHatch {
  readonly id: string
  /** several when eggs of two pens shared a setting */
  readonly pens: readonly {readonly pen: DrawnPen; readonly eggs: number}[]
  /** bought eggs have no pen */
  readonly bought: boolean
  readonly laid: readonly [number, number]
  readonly set: number
  readonly on: number
  readonly eggs: number
  readonly clear: number | null
  readonly deadInGerm: number
  readonly deadInShell: number
  readonly bad: number
  readonly machine: string
  /** banded chicks first, then those never banded */
  readonly banded: readonly DrawnBird[]
  readonly unbanded: readonly DrawnBird[]
  /** hatched, and nobody wrote down what became of them */
  readonly unlisted: number
  readonly penOf: ReadonlyMap<DrawnBird, DrawnPen>
  /** the keeper knows which hen laid which egg */
  readonly damsKnown: boolean
}

export interface DrawnFlock {
  readonly begun: number
  readonly seasons: number
  readonly founders: readonly DrawnBird[]
  readonly pens: readonly DrawnPen[]
  readonly hatches: readonly DrawnHatch[]
}

export interface FlockSize {
  /** banded birds, founders among them; roughly */
  readonly birds: number
  readonly seasons: number
  readonly chicksPerHatch: number
  readonly hensPerPen: number
}

export const stepOfSeason = (season: number): string =>
  season === 0 ? 'F1' : season <= 3 ? `BC${season}` : `BC3F${season - 2}`

const FIRST_YEAR = 2013
const day = (year: number, month: number, date: number) => dayOf(year, month, date) ?? 0
const FIXED = {
  'holm-white': {P: ['p+', 'p+'], W: ['W+', 'W+'], S: ['S', 'S']},
  'fell-buff': {P: ['P', 'P'], W: ['w', 'w'], S: ['s+', 's+']},
} as const

export function drawFlock(chance: Chance, size: FlockSize): DrawnFlock {
  const perSeason = Math.max(size.chicksPerHatch, Math.round((size.birds * 0.985) / size.seasons))
  const hatchesPerSeason = Math.max(2, Math.round(perSeason / size.chicksPerHatch))
  const pensPerSeason = Math.max(2, Math.ceil(hatchesPerSeason / 3))
  const chicksPerHatch = Math.max(4, Math.round(perSeason / hatchesPerSeason))

  const bandsOfYear = new Map<number, number>()
  const nextBand = (year: number) => {
    const number = (bandsOfYear.get(year) ?? 0) + 1
    bandsOfYear.set(year, number)
    return `${String(year % 100).padStart(2, '0')}-${String(number).padStart(4, '0')}`
  }
  const founder = (strain: 'holm-white' | 'fell-buff', sex: 'male' | 'female'): DrawnBird => ({
    band: nextBand(FIRST_YEAR - 1), sex, genes: FIXED[strain], strain, hatched: day(FIRST_YEAR - 1, 3, chance.whole(1, 28)), sire: null, dam: null,
    step: 'strain', unsexed: false, left: null, kept: null, firstEgg: null,
  })
  const hens = Array.from({length: pensPerSeason * size.hensPerPen}, () => founder('holm-white', 'female'))
  const cocks = Array.from({length: pensPerSeason * 2}, () => founder('fell-buff', 'male'))

  const pens: DrawnPen[] = []
  const hatches: DrawnHatch[] = []
  let young: DrawnBird[] = []
  for (let season = 0; season < size.seasons; season++) {
    const year = FIRST_YEAR + season
    const males = season === 0 ? cocks : chosen(young.filter(bird => bird.sex === 'male'), 'P')
    const females = season <= 3 ? hens : chosen(young.filter(bird => bird.sex === 'female'), 'P')
    const now = drawPens(chance, {season, year, males, females, count: pensPerSeason, hensPerPen: size.hensPerPen})
    pens.push(...now)
    young = []
    for (let n = 0; n < hatchesPerSeason; n++) {
      const hatch = drawHatch(chance, {n, season, year, pens: now, chicks: chicksPerHatch, band: () => nextBand(year)})
      hatches.push(hatch)
      young.push(...hatch.banded)
    }
    if (season === 2) hatches.push(drawBoughtEggs(chance, year, () => nextBand(year)))
    for (const bird of young) drawLeaving(chance, bird)
    young = young.filter(bird => bird.left === null && !bird.unsexed)
  }
  return {begun: FIRST_YEAR, seasons: size.seasons, founders: [...hens, ...cocks], pens, hatches}
}

/** Those that carry the wanted allele first. */
function chosen(birds: readonly DrawnBird[], allele: string): DrawnBird[] {
  const carries = (bird: DrawnBird) => bird.genes.P.includes(allele)
  return [...birds.filter(carries), ...birds.filter(bird => !carries(bird))]
}

interface PenWish {
  readonly season: number
  readonly year: number
  readonly males: readonly DrawnBird[]
  readonly females: readonly DrawnBird[]
  readonly count: number
  readonly hensPerPen: number
}

function drawPens(chance: Chance, wish: PenWish): DrawnPen[] {
  const {season, year, count} = wish
  const from = day(year, 2, 10)
  const to = day(year, 5, 20)
  const males = [...wish.males.slice(0, count * 2)]
  const females = [...wish.females.slice(0, count * wish.hensPerPen)]
  const share = Math.max(1, Math.floor(females.length / count))
  return Array.from({length: count}, (_, n) => {
    const first = males.length > 0 ? males.shift() : wish.males[0]
    const second = males.length > count - n ? males.shift() : undefined
    const manner = second === undefined ? 'one' : chance.oneOf(['two', 'two', 'shares', 'changed'])
    const change = day(year, 3, 20)
    for (const bird of [first, second]) if (bird !== undefined && bird.strain === null) bird.kept ??= bird.hatched + 200
    const mine = females.slice(n * share, (n + 1) * share)
    for (const bird of mine) if (bird.strain === null) bird.kept ??= bird.hatched + 200
    if (first === undefined || mine.length === 0) throw new RangeError(`season ${season} has too few birds to fill ${count} pens`)
    return {
      id: `${year}-${String.fromCharCode(65 + (n % 26))}${n < 26 ? '' : Math.floor(n / 26)}`, season: year, from, to, gives: stepOfSeason(season),
      males: second === undefined || manner === 'one'
        ? [{bird: first, from: null, to: null}]
        : [{bird: first, from: null, to: manner === 'changed' ? change - 1 : null}, {bird: second, from: manner === 'changed' ? change : null, to: null}],
      shares: manner === 'shares' ? [70, 30] : null,
      females: mine,
      keeper: chance.oneOf(['kelpgarth', 'ternhouse', 'wadderness']),
    }
  })
}

interface HatchWish {
  readonly n: number
  readonly season: number
  readonly year: number
  readonly pens: readonly DrawnPen[]
  readonly chicks: number
  band(): string
}

const atLaying = (pen: DrawnPen, laid: readonly [number, number]) =>
  pen.males.filter(stay => (stay.from === null || stay.from <= laid[0]) && (stay.to === null || stay.to >= laid[1]))

function drawHatch(chance: Chance, wish: HatchWish): DrawnHatch {
  const {n, season, year, chicks} = wish
  const pen = wish.pens[n % wish.pens.length]
  if (pen === undefined) throw new RangeError('no pen')
  const other = wish.pens.length > 1 && chance.happens(0.1) ? wish.pens[(n + 1) % wish.pens.length] : undefined
  // two hatches of a season share a machine and a day now and then; eggs are gathered for ten days
  const week = (Math.floor(n / 2) * 3) % 8
  const set = day(year, 3, 3) + week * 7 + (n < 16 ? 0 : 3)
  const laid: readonly [number, number] = [set - 11, set - 1]
  const unbandedCount = chance.happens(0.4) ? Math.round(chicks * 0.15) : 0
  const sources = [pen, ...(other ? [other] : [])]
  const penOf = new Map<DrawnBird, DrawnPen>()
  const all = Array.from({length: chicks + unbandedCount}, (_, k) => {
    const from = sources[k % sources.length] ?? pen
    const there = atLaying(from, laid)
    const sire = chance.oneOf(there.length > 0 ? there : from.males).bird
    const bird = drawChick(chance, {sire, dam: chance.oneOf(from.females), hatched: set + 21, band: k < chicks ? wish.band() : '', step: stepOfSeason(season)})
    penOf.set(bird, from)
    return bird
  })
  const [clear, deadInGerm, deadInShell] = [chance.whole(2, 8), chance.whole(0, 4), chance.whole(0, 4)]
  const bad = chance.happens(0.2) ? 1 : 0
  const unlisted = chance.happens(0.2) ? 2 : 0
  const eggs = all.length + unlisted + clear + deadInGerm + deadInShell + bad
  const half = Math.floor(eggs / 2)
  return {
    id: `${year}-${String(n + 1).padStart(2, '0')}`, bought: false, laid, set, on: set + 21, eggs, clear: chance.happens(0.92) ? clear : null, deadInGerm, deadInShell, bad,
    machine: n % 2 === 0 ? 'I1' : chance.oneOf(['I1', 'I2']), banded: all.slice(0, chicks), unbanded: all.slice(chicks), unlisted, penOf, damsKnown: chance.happens(0.5),
    pens: other ? [{pen, eggs: eggs - half}, {pen: other, eggs: half}] : [{pen, eggs}],
  }
}

/** A setting of eggs bought from another flock of the recurrent strain. */
function drawBoughtEggs(chance: Chance, year: number, band: () => string): DrawnHatch {
  const set = day(year, 4, 2)
  const banded = Array.from({length: 6}, (_, k): DrawnBird => ({
    band: band(), sex: k % 2 === 0 ? 'female' : 'male', genes: FIXED['holm-white'], strain: 'holm-white', hatched: set + 21, sire: null, dam: null, step: 'strain',
    unsexed: false, left: null, kept: null, firstEgg: null,
  }))
  const [clear, deadInGerm] = [chance.whole(1, 3), chance.whole(0, 2)]
  return {
    id: `${year}-bought`, pens: [], bought: true, laid: [set - 11, set - 1], set, on: set + 21, eggs: banded.length + clear + deadInGerm, clear, deadInGerm,
    deadInShell: 0, bad: 0, machine: 'I3', banded, unbanded: [], unlisted: 0, penOf: new Map(), damsKnown: false,
  }
}

interface ChickWish {
  readonly sire: DrawnBird
  readonly dam: DrawnBird
  readonly hatched: number
  readonly band: string
  readonly step: string
}

function drawChick(chance: Chance, {sire, dam, hatched, band, step}: ChickWish): DrawnBird {
  const sex = chance.oneOf(['male', 'female'] as const)
  const handed = (locus: 'P' | 'W'): Pair => [chance.oneOf(sire.genes[locus]), chance.oneOf(dam.genes[locus])]
  const fromSire = chance.oneOf(sire.genes.S)
  return {
    band, sex, strain: null, hatched, sire, dam, step, unsexed: chance.happens(0.03), left: null, kept: null, firstEgg: null,
    // a daughter has her sire's Z alone; a son has one of his sire's and his dam's only one
    genes: {P: handed('P'), W: handed('W'), S: sex === 'female' ? [fromSire, fromSire] : [fromSire, dam.genes.S[0]]},
  }
}

function drawLeaving(chance: Chance, bird: DrawnBird): void {
  const age = chance.whole(1, 9)
  if (chance.happens(0.06)) bird.left = {on: bird.hatched + age * 3, how: 'died'}
  else if (!bird.genes.P.includes('P') && chance.happens(0.5)) bird.left = {on: bird.hatched + 100 + age, how: 'culled'}
  else if (chance.happens(0.15)) bird.left = {on: bird.hatched + 160 + age, how: 'sold'}
  const laying = bird.hatched + 175 + age * 3
  if (bird.sex === 'female' && !bird.unsexed && (bird.left === null || bird.left.on > laying) && chance.happens(0.4)) bird.firstEgg = laying
}
