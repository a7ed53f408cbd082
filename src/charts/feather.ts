/**
 * The flock drawn as a feather that grows downwards: one barb, one scored bird, males left of the shaft and females right, as long as the bird was heavy.
 * Plain path data for the `barbs` partial; the drawing is 225 units wide with the shaft at 0 (100 left, 125 right) and 100 high, and stretched.
 */
import type {Sex} from '../logbook/book.ts'

export interface Barb {
  readonly sex: Sex
  /** weight as a share of the standard weight of its sex: 1 on the mark; null: not weighed */
  readonly weight: number | null
  readonly verdict: 'right' | 'off' | 'unknown'
}

/** Paths of one step; an empty one is not drawn. */
export interface Barbs {
  readonly right: string
  readonly off: string
  /** not fully scored */
  readonly unknown: string
  /** dotted lines at the standard weight */
  readonly standard: string
  readonly planned: string
  readonly shaft: string
  /** barbs drawn */
  readonly drawn: number
}

/** Length of a barb at the standard weight. */
const MALE = 64, FEMALE = 80
/** Length of a barb whose bird was not weighed. */
const SHORT = 20
/** Weights drawn at most: what lies beyond runs out of the drawing. */
const LONGEST = 1.5
/** Barbs to a side at most; a larger flock shows every second, third … bird, and the words beside it carry the counts. */
const MOST = 120

const round = (units: number): number => Math.round(units * 10) / 10

/** `M0 y Q L/2 y+1.6v  L y+3.2v+11v²`: all barbs share one curve, so that none cross. */
function barb(y: number, {sex, weight}: Barb): string {
  const side = sex === 'male' ? -1 : 1
  const share = weight === null ? SHORT / (sex === 'male' ? MALE : FEMALE) : Math.min(weight, LONGEST)
  const length = side * share * (sex === 'male' ? MALE : FEMALE)
  return `M0 ${round(y)}Q${round(length / 2)} ${round(y + 1.6 * share)} ${round(length)} ${round(y + 3.2 * share + 11 * share ** 2)}`
}

/** Heights of n barbs along a step, from −4 to 94 so that their tips stay by their step. */
function heights(n: number): readonly number[] {
  return n === 1 ? [45] : Array.from({length: n}, (_, index) => -4 + (98 * (index + (n < 12 ? 0.5 : 0))) / (n < 12 ? n : n - 1))
}

const thinned = <Item>(list: readonly Item[]): readonly Item[] => {
  const every = Math.ceil(list.length / MOST)
  return list.filter((_, index) => index % every === 0)
}

/**
 * The barbs of one step in the order given. Unsexed birds stand on the females' side.
 *
 * @param birds  may be empty: the shaft alone is drawn
 */
export function feather(birds: readonly Barb[], {standard = true}: {readonly standard?: boolean} = {}): Barbs {
  const paths = {right: '', off: '', unknown: ''}
  let count = 0
  for (const side of [birds.filter(bird => bird.sex === 'male'), birds.filter(bird => bird.sex !== 'male')]) {
    const drawn = thinned(side)
    const at = heights(drawn.length)
    count += drawn.length
    drawn.forEach((bird, index) => {
      if (bird.weight !== null && !(bird.weight > 0)) throw new RangeError(`a weight is more than nothing, not ${bird.weight} of the standard`)
      paths[bird.verdict] += barb(at[index] ?? 0, bird)
    })
  }
  return {...paths, standard: standard ? `M${-MALE} 0V100M${FEMALE} 0V100` : '', planned: '', shaft: 'M0 0V100', drawn: count}
}

/** A step that is planned: a feather still folded in its sheath. */
export const plannedBarbs: Barbs = {
  right: '', off: '', unknown: '', standard: '', shaft: 'M0 0V96', drawn: 0,
  planned: 'M-63 8C-54 40-24 72 0 96C28 72 66 40 79 8M0 0Q-27.5 4-50 26M0 16Q-20.9 20-38 46M0 34Q-13.8 38-25 62M0 54Q-6.6 58-12 78'
    + 'M0 0Q34.4 4 62.5 26M0 16Q26.1 20 47.5 46M0 34Q17.2 38 31.3 62M0 54Q8.3 58 15 78',
}
