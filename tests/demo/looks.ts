/** What a keeper sees of a bird's genes, mistakes included. */
import type {Chance} from '../bench/chance.ts'
import {crossedness, worth, type Genes, type Sex} from './genes.ts'

/** Chances of being written down wrongly; the traits' records state the same. */
export const MISTAKES = {comb: 0.01, skin: 0.01, brassyTakenForSilver: 0.3} as const

export const trueComb = (genes: Genes) => (genes.P.includes('P') ? 'pea' : 'single')
export const trueSkin = (genes: Genes) => (genes.W.includes('W+') ? 'white' : 'yellow')

export function trueGround(genes: Genes): 'silver' | 'brassy' | 'gold' {
  if (!genes.S.includes('S')) return 'gold'
  return genes.S.includes('s+') ? 'brassy' : 'silver'
}

export function seenComb(genes: Genes, chance: Chance): string {
  const is = trueComb(genes)
  return chance.happens(MISTAKES.comb) ? (is === 'pea' ? 'single' : 'pea') : is
}

export function seenSkin(genes: Genes, chance: Chance): string {
  const is = trueSkin(genes)
  return chance.happens(MISTAKES.skin) ? (is === 'white' ? 'yellow' : 'white') : is
}

export function seenGround(genes: Genes, chance: Chance): string {
  const is = trueGround(genes)
  return is === 'brassy' && chance.happens(MISTAKES.brassyTakenForSilver) ? 'silver' : is
}

/** Down at a day old: silver chicks come cream, gold ones buff. Hard to tell when wet. */
export function seenDown(genes: Genes, chance: Chance): string {
  const is = genes.S.includes('S') ? 'cream' : 'buff'
  return chance.happens(0.03) ? (is === 'cream' ? 'buff' : 'cream') : is
}

/** Two doses make a neat comb mostly, one dose a coarse one mostly. */
export function seenNeatness(genes: Genes, chance: Chance): string {
  const doses = genes.P.filter(allele => allele === 'P').length
  const luck = chance.whole(1, 100)
  if (doses === 2) return luck <= 82 ? 'neat' : luck <= 96 ? 'fair' : 'coarse'
  return luck <= 12 ? 'neat' : luck <= 45 ? 'fair' : 'coarse'
}

const GRAMS_AT_20_WEEKS = {male: 2440, female: 1920} as const
const GROWN = {male: 1.33, female: 1.31} as const

/** Grams at twenty weeks: genes, the vigour of the cross, the luck of the hatch and of the bird. */
export function weightAt20(genes: Genes, sex: Sex, hatchLuck: number, chance: Chance): number {
  return GRAMS_AT_20_WEEKS[sex] * (1 + worth(genes, 'weight') + 0.05 * crossedness(genes)) * (1 + hatchLuck) * (1 + 0.055 * chance.normal())
}

export function weightGrown(at20: number, sex: Sex, chance: Chance): number {
  return at20 * GROWN[sex] * (1 + 0.035 * chance.normal())
}

export function tailAngle(genes: Genes, sex: Sex, chance: Chance): number {
  return Math.round((sex === 'male' ? 44 : 39) + worth(genes, 'tail') + 2.4 * chance.normal())
}

export function typeMark(genes: Genes, chance: Chance): number {
  return Math.min(10, Math.max(1, Math.round(7.4 + worth(genes, 'type') + 0.8 * chance.normal())))
}

const SHELLS = ['white', 'cream', 'tinted', 'light brown'] as const

export function shellColour(genes: Genes, chance: Chance): string {
  const reading = Math.round(2.1 + worth(genes, 'shell') + 0.35 * chance.normal())
  return SHELLS[Math.min(3, Math.max(0, reading))] ?? 'tinted'
}
