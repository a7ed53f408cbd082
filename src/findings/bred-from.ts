import type {Bird, Logbook, Strain} from '../logbook/book.ts'
import {countedValue} from './counted-value.ts'
import {ladderChicks, type Chick} from './ladder-chicks.ts'
import type {LadderStep} from './ladder.ts'

/** From one step to the next: who was bred from, and with how many chicks that were scored. */
export interface Passage {
  /** label of the step chosen in */
  readonly from: string
  /** label of the step of the chicks */
  readonly to: string
  /** the pure strain that the other parent is of, in a backcross; null: both parents are of the step */
  readonly back: Strain | null
  /** chicks scored or measured, by parent of the step; of doubtful parents in parts */
  readonly chicks: ReadonlyMap<Bird, number>
}

/** Where nine chicks in ten come of one kind of mating, the step is told of as coming of it; our own choice. */
const MOSTLY = 0.9

/** Kept on record, put into a breeding pen, or a possible parent. */
export function birdsKept(book: Logbook): ReadonlySet<Bird> {
  const kept = new Set(book.birds.filter(bird => bird.kept !== null))
  for (const pen of book.pens) for (const {bird} of [...pen.males, ...pen.females]) kept.add(bird)
  for (const {parentage} of book.birds) for (const {bird} of [...parentage.sires, ...parentage.dams]) kept.add(bird)
  return kept
}

const scored = (chick: Chick, book: Logbook): boolean => book.traits.some(trait => countedValue(chick, trait) !== null)

/**
 * Which step did each step come of, and through which birds?
 *
 * Only chicks with something scored or measured count, by the chances of their pairs. A step whose chicks come of several kinds of mating, or of none of these two, has no passage.
 */
export function passages(book: Logbook, ladder: readonly LadderStep[]): readonly Passage[] {
  const steps = new Map<string, {all: number; ways: Map<string, {from: string; back: Strain | null; weight: number; chicks: Map<Bird, number>}>}>()
  for (const chick of ladderChicks(book)) {
    if (!scored(chick, book)) continue
    const into = steps.get(chick.step.label) ?? {all: 0, ways: new Map()}
    steps.set(chick.step.label, into)
    for (const {sire, dam, chance} of chick.parentage.pairs) {
      const weight = chance * chick.count
      into.all += weight
      if (!sire || !dam || !(weight > 0)) continue
      const own = [sire, dam].filter(({step}) => step.kind !== 'strain'), [first, second] = own
      if (!first || (second && second.step.label !== first.step.label) || first.step.label === chick.step.label || first.step.kind === 'mixed') continue
      const back = second ? null : [sire, dam].find(({step}) => step.kind === 'strain')?.step.strains[0] ?? null
      if (!second && !back) continue
      const key = `${first.step.label} × ${back?.id ?? ''}`, way = into.ways.get(key) ?? {from: first.step.label, back, weight: 0, chicks: new Map<Bird, number>()}
      into.ways.set(key, way)
      way.weight += weight
      for (const bird of own) way.chicks.set(bird, (way.chicks.get(bird) ?? 0) + weight)
    }
  }
  return ladder.flatMap(({label}) => {
    const into = steps.get(label), way = into && [...into.ways.values()].find(({weight}) => weight >= MOSTLY * into.all)
    return way ? [{from: way.from, to: label, back: way.back, chicks: way.chicks}] : []
  })
}
