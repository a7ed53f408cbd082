/** Who is kept: the keepers' rule of choice, from what they saw (never from the true genes). */
import type {DrawnBird, Flock} from './flock.ts'
import {seenNeatness, shellColour, tailAngle, trueComb, trueGround, trueSkin, typeMark, weightGrown} from './looks.ts'

export const WEIGHT_WANTED = {male: 2400, female: 1900} as const

export interface Marks {
  readonly type: number
  readonly neatness: string
  readonly tail: number
  readonly shell: string
  readonly gramsGrown: number
}

/** What a bird is marked when it is grown. */
export function marksOf(flock: Flock, bird: DrawnBird): Marks {
  const chance = flock.chance(`marks ${bird.id}`)
  return {
    type: typeMark(bird.genes, chance), neatness: seenNeatness(bird.genes, chance), tail: tailAngle(bird.genes, bird.sex, chance),
    shell: shellColour(bird.genes, chance), gramsGrown: weightGrown(bird.grams20, bird.sex, chance),
  }
}

/** The higher the better: type first, then weight near the mark, then a neat comb and a tail that is not too high. */
export function merit(flock: Flock, bird: DrawnBird): number {
  const marks = marksOf(flock, bird)
  const off = Math.abs(bird.grams20 / WEIGHT_WANTED[bird.sex] - 1)
  return marks.type - 14 * off + (marks.neatness === 'neat' ? 1.2 : marks.neatness === 'fair' ? 0.4 : 0) - Math.max(0, marks.tail - 48) * 0.1
}

export interface Wish {
  /** pens or hatches whose chicks are looked at */
  readonly from: readonly string[]
  readonly sex: 'male' | 'female'
  readonly count: number
  readonly not?: readonly string[]
  /** a bird of a founding strain: any look will do */
  readonly anyLook?: boolean
  readonly where?: (bird: DrawnBird) => boolean
}

/** By autumn the comb, the shanks and the ground colour are plain to see; a first mistake has been put right. */
const looksRight = (bird: DrawnBird) => trueComb(bird.genes) === 'pea' && trueSkin(bird.genes) === 'white' && trueGround(bird.genes) === 'silver'

/** The best birds of the wished kind, best first. */
export function choose(flock: Flock, wish: Wish): string[] {
  const looked = [...flock.birds.values()].filter(bird =>
    bird.hatch !== null && bird.sex === wish.sex && bird.left === null && !(wish.not ?? []).includes(bird.id) &&
    (wish.from.includes(bird.hatch.plan.id) || (bird.pen !== null && wish.from.includes(bird.pen))) &&
    (wish.where ? wish.where(bird) : wish.anyLook === true || looksRight(bird)))
  const ranked = looked.map(bird => ({id: bird.id, merit: merit(flock, bird)})).sort((a, b) => b.merit - a.merit || (a.id < b.id ? -1 : 1))
  return ranked.slice(0, wish.count).map(({id}) => id)
}
