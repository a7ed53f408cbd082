/** Made-up flocks with effects of known strength, and books drawn by chance with parents, strains and steps of every kind. */
import fc from 'fast-check'
import type {Bird, Hatch, Logbook, Sex, Step, Strain} from '../../src/logbook/book.ts'
import {bird, comb, date, F1, F2, fell, hatch, holm, logbook, looks, pen, score, stay, strainStep, tally, trait, weight} from '../pages/small-logbook.ts'
import {BC1, byPairs, chick} from './kin-book.ts'

export const type = trait('type', 'Type', {kind: 'graded', scale: {from: 1, to: 10}})
export const F3: Step = {...F2, label: 'F3', interSe: 2, depth: 3}
const half = new Map([[holm, 0.5], [fell, 0.5]])

/** A multiplicative generator modulo 2³¹ − 1 (Park & Miller 1988), and what is drawn with it. */
export function chance(seed: number) {
  let state = seed
  const uniform = (): number => {
    state = (state * 48271) % 2147483647
    return state / 2147483647
  }
  for (let turn = 0; turn < 5; turn++) uniform()
  // Box & Muller 1958
  const normal = (): number => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform())
  return {uniform, normal, below: (n: number): number => Math.floor(uniform() * n)}
}

const grams = (one: Bird, value: number): Bird['weighings'] => {
  const day = (one.hatched?.first ?? 0) + 140
  return [{measure: 'weight', value, on: {text: '', first: day, last: day}, at: one.at}]
}

/**
 * Pairs of no kin, half sibs and full sibs (F 0, ⅛ and ¼) in every season, each setting of one pair. `loss`: change of the logit of hatch and of life for F from 0 to 1;
 * `grams`: of the weight. Seasons differ; hatches of a season reared together, so that families of it are contemporaries.
 */
export function inbredFlock(seed: number, effect: {readonly loss: number; readonly grams: number}, size = {seasons: 4, pairs: 9, eggs: 24}): Logbook {
  const {uniform, normal} = chance(seed), birds: Bird[] = [], hatches: Hatch[] = [], families: Bird[][] = []
  const happens = (logit: number) => uniform() < 1 / (1 + Math.exp(-logit))
  const cocks = Array.from({length: 6}, (_, place) => bird(`S${place}`, 'male'))
  birds.push(...cocks)
  for (let family = 0; family < 12; family++) {
    const dam = bird(`D${family}`, 'female'), young = (['male', 'female'] as const).map(sex => chick(`P${family}${sex[0]}`, sex, [[cocks[Math.floor(family / 2)] ?? null, dam]]))
    birds.push(dam, ...young)
    families.push(young)
  }
  const of = (family: number, sex: 0 | 1): Bird | null => families[family % 12]?.[sex] ?? null
  for (let season = 0; season < size.seasons; season++) {
    const good = normal() * 0.4, heavy = normal() * 100
    for (let pair = 0; pair < size.pairs; pair++) {
      const kin = pair % 3, first = 2 * (pair + season), sire = of(first, 0), dam = of(kin === 2 ? first : kin === 1 ? first + 1 : first + 3, 1), f = [0, 0.125, 0.25][kin] ?? 0
      const parentage = byPairs([{sire, dam, chance: 1}]), on = date(`${2020 + season}-04-1${pair}`)
      const made = hatch(`${2020 + season}-${pair}`, {on, step: F3, eggs: size.eggs, clear: 0, rearing: `spring ${season}`, parentage, shares: half})
      const hatched = Array.from({length: size.eggs}, () => happens(1.6 + good + effect.loss * f)).filter(Boolean).length
      const chicks = Array.from({length: hatched}, (_, place) => {
        const one = chick(`${made.id}-${place}`, place % 2 ? 'female' : 'male', [[sire, dam]], {step: F3, hatched: on, hatch: made, parentage})
        const lives = happens(2 + effect.loss * f)
        return {...one, left: lives ? null : {on: {text: '', first: on.first + 20, last: on.first + 20}, how: 'died' as const, why: null}, weighings: lives ? grams(one, 2200 + heavy + (place % 2 ? -400 : 0) + effect.grams * f + normal() * 120) : []}
      })
      birds.push(...chicks)
      hatches.push(Object.assign(made, {chicks, hatched}))
    }
  }
  return logbook('2026-06-01', {traits: [comb, weight], birds, hatches})
}

/**
 * Two steps of one line and their parents, in hatches that hold chicks of both, so that they are contemporaries. The weight is a breeding value and the rest: its variance 200², `h2` of it handed
 * on. Of each hatch and sex `keep` are bred from: the heaviest where `choose` is so, else the first. Each hen has four chicks.
 */
export function chosenFlock(seed: number, {h2, choose, hatchSize = 20, hatches: count = 8, keep = 3}: {readonly h2: number; readonly choose: boolean; readonly hatchSize?: number; readonly hatches?: number; readonly keep?: number}): Logbook {
  const {normal, below} = chance(seed), sd = 200, genes = new Map<Bird, number>(), birds: Bird[] = [], hatches: Hatch[] = [], seen = new Map<Bird, number>()
  const grown = (id: string, sex: Sex, parents: readonly [Bird, Bird], into: Hatch, step: Step, lift: number): Bird => {
    const [sire, dam] = parents, mean = ((genes.get(sire) ?? 0) + (genes.get(dam) ?? 0)) / 2, value = mean + normal() * sd * Math.sqrt(h2 / 2)
    const looked = looks(score(type, 1 + below(9)), score(comb, below(3) === 0 ? 'single' : 'pea'))
    const one = chick(id, sex, [[sire, dam]], {step, hatch: into, hatched: into.on, looks: looked}), weighed = 2000 + lift + (sex === 'male' ? 400 : 0) + value + normal() * sd * Math.sqrt(1 - h2)
    const made = {...one, weighings: grams(one, weighed)}
    genes.set(made, value)
    seen.set(made, weighed)
    birds.push(made)
    return made
  }
  const base = Array.from({length: 24}, (_, place) => bird(`X${place}`, place % 2 ? 'female' : 'male'))
  for (const one of base) genes.set(one, normal() * sd * Math.sqrt(h2))
  birds.push(...base)
  const old: Bird[] = []
  const setting = (id: string, year: number, place: number) => hatch(id, {on: date(`${year}-0${1 + place % 9}-01`), step: F2, rearing: id, shares: half, parentage: byPairs([{sire: base[0] ?? null, dam: base[1] ?? null, chance: 1}])})
  for (let number = 0; number < count; number++) {
    const made = setting(`a${number}`, 2022, number), lift = normal() * 150
    const chicks = Array.from({length: hatchSize}, (_, place) => grown(`a${number}-${place}`, place % 2 ? 'female' : 'male', [base[2 * below(12)]!, base[2 * below(12) + 1]!], made, F2, lift))
    hatches.push(Object.assign(made, {chicks, hatched: chicks.length}))
    for (const sex of ['male', 'female'] as const) {
      const mates = chicks.filter(each => each.sex === sex)
      old.push(...(choose ? [...mates].sort((a, b) => (seen.get(b) ?? 0) - (seen.get(a) ?? 0)) : mates).slice(0, keep))
    }
  }
  const males = old.filter(({sex}) => sex === 'male'), females = old.filter(({sex}) => sex === 'female')
  for (let number = 0; number < count; number++) {
    const made = setting(`b${number}`, 2023, number), lift = normal() * 150
    const young = females.filter((_, place) => place % count === number).flatMap((dam, place) => Array.from({length: 4}, (_unused, each) =>
      grown(`b${number}-${place}-${each}`, each % 2 ? 'female' : 'male', [males[(place * count + number) % males.length]!, dam], made, F3, lift)))
    const again = Array.from({length: 12}, (_, place) => grown(`c${number}-${place}`, place % 2 ? 'female' : 'male', [base[2 * below(12)]!, base[2 * below(12) + 1]!], made, F2, lift))
    hatches.push(Object.assign(made, {chicks: [...young, ...again], hatched: young.length + again.length}))
  }
  return logbook('2026-06-01', {traits: [comb, type, weight], birds, hatches, pens: [pen('2023-A', 2023, {males: males.map(each => stay(each)), females: females.map(each => stay(each)), hatches: hatches.slice(count)})]})
}

/** Chicks of both strains, of their cross and of a backcross to the Holm, hatched together. Means in grams, SD 100, the sexes 300 apart. */
export function linesTogether(seed: number, means: {readonly holm: number; readonly fell: number; readonly cross: number; readonly back: number}, each = 10, hatchings = 3): Logbook {
  const {normal} = chance(seed), birds: Bird[] = [], hatches: Hatch[] = [], pure = (of: Strain) => ({strain: of, step: strainStep(of), shares: new Map([[of, 1]])})
  const old = {h: bird('H', 'male'), g: bird('G', 'female'), f: bird('F', 'female', pure(fell)), e: bird('E', 'male', pure(fell))}, cross = chick('X', 'female', [[old.h, old.f]], {step: F1})
  birds.push(...Object.values(old), cross)
  for (let number = 0; number < hatchings; number++) {
    const made = hatch(`h${number}`, {on: date(`2023-0${1 + number}-01`), step: F1, rearing: `h${number}`, shares: half}), lift = normal() * 200, chicks: Bird[] = []
    const add = (line: string, sire: Bird, dam: Bird, mean: number, more: Partial<Bird>) => {
      for (let place = 0; place < each; place++) {
        const one = chick(`${line}${number}-${place}`, place % 2 ? 'female' : 'male', [[sire, dam]], {hatch: made, hatched: made.on, ...more})
        chicks.push({...one, weighings: grams(one, mean + lift + (place % 2 ? -300 : 0) + normal() * 100)})
      }
    }
    add('h', old.h, old.g, means.holm, pure(holm))
    add('f', old.e, old.f, means.fell, pure(fell))
    add('x', old.h, old.f, means.cross, {step: F1})
    add('b', old.h, cross, means.back, {step: BC1, shares: new Map([[holm, 0.75], [fell, 0.25]])})
    birds.push(...chicks)
    hatches.push(Object.assign(made, {chicks, hatched: chicks.length}))
  }
  return logbook('2026-06-01', {traits: [comb, weight], birds, hatches})
}

const drawnChick = fc.record({
  sex: fc.constantFrom<Sex>('male', 'female', 'unknown'), sire: fc.option(fc.nat(60), {freq: 6}), dam: fc.option(fc.nat(60), {freq: 6}), other: fc.option(fc.nat(60)), step: fc.nat(5), grams: fc.option(fc.constantFrom(2000, 2000, 2000, 1900, 2350)),
  comb: fc.constantFrom('pea', 'single', null), type: fc.option(fc.integer({min: 1, max: 10})), kept: fc.boolean(), left: fc.option(fc.integer({min: 0, max: 200})), how: fc.constantFrom<'died' | 'sold' | 'lost'>('died', 'sold', 'lost'), eggs: fc.option(fc.nat(5)),
})
const drawnSetting = fc.record({chicks: fc.array(drawnChick, {maxLength: 9}), rearing: fc.nat(2), year: fc.integer({min: 2021, max: 2023}), clear: fc.option(fc.nat(4)), dead: fc.nat(6), eggs: fc.boolean(), tally: fc.nat(3)})

/** Any small book: birds of any earlier birds, unknown parents, doubts, equal weights, one sex, no eggs. */
export const drawnFlock: fc.Arbitrary<Logbook> = fc.array(drawnSetting, {maxLength: 6}).map(settings => {
  const pure = (of: Strain) => ({strain: of, step: strainStep(of), shares: new Map([[of, 1]])})
  const birds: Bird[] = [bird('H-1', 'male'), bird('H-2', 'female'), bird('B-1', 'female', pure(fell)), bird('B-2', 'male', pure(fell))], steps = [F1, F2, F3, BC1, strainStep(holm), strainStep(fell)], hatches: Hatch[] = [], eggCounts: Logbook['eggCounts'][number][] = []
  settings.forEach((drawn, number) => {
    const on = date(`${drawn.year}-04-1${number}`), made = hatch(`h${number}`, {on, step: F2, rearing: `r${drawn.year}-${drawn.rearing}`, shares: half}), before = [...birds]
    const pick = (place: number | null, sex: Sex): Bird | null => (place === null ? null : before.filter(one => one.sex === sex)[place % before.filter(one => one.sex === sex).length] ?? null)
    const chicks = drawn.chicks.map((each, place): Bird => {
      const sire = pick(each.sire, 'male'), dam = pick(each.dam, 'female'), other = pick(each.other, 'female')
      const step = steps[each.step] ?? F1, strain = step.kind === 'strain' ? step.strains[0] ?? null : null
      const one = chick(`c${number}-${place}`, each.sex, other && other !== dam ? [[sire, dam, 0.6], [sire, other, 0.4]] : [[sire, dam]], {
        step, strain, hatch: made, hatched: on, looks: looks(...(each.comb ? [score(comb, each.comb)] : []), ...(each.type === null ? [] : [score(type, each.type)])),
        kept: each.kept ? {on: null, why: 'even'} : null, left: each.left === null ? null : {on: {text: '', first: on.first + each.left, last: on.first + each.left}, how: each.how, why: null},
      })
      const whole = {...one, weighings: each.grams === null ? [] : grams(one, each.grams)}
      if (each.eggs !== null) eggCounts.push({pen: null, bird: whole, on: {text: '', first: on.first + 200, last: on.first + 200 + each.eggs}, eggs: each.eggs, hens: null, at: one.at})
      return whole
    })
    birds.push(...chicks)
    const tallies = drawn.tally > 0 ? [tally(made, drawn.tally, {sex: 'male', looks: looks(score(comb, 'pea'))})] : [], hatched = chicks.length + drawn.tally
    hatches.push(Object.assign(made, {chicks, tallies, hatched, parentage: chicks[0]?.parentage ?? made.parentage, eggs: drawn.eggs ? hatched + drawn.dead + (drawn.clear ?? 0) : null, clear: drawn.clear}))
  })
  return logbook('2024-06-01', {traits: [comb, type, weight], birds, hatches, eggCounts})
})
