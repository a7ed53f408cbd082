import type {LeftOut} from './estimate.ts'

/** The order in which reasons are told. */
const REASONS: readonly LeftOut['why'][] = [
  'unscored', 'too-young', 'lost-before-scoring', 'not-listed', 'struck', 'outside-window', 'small-class', 'sex-unknown', 'not-candled', 'not-finished',
]

/** Counts what a figure leaves aside, by reason. */
export class LeftAside {
  readonly #counts = new Map<LeftOut['why'], number>()

  add(why: LeftOut['why'], count: number): void {
    if (count > 0) this.#counts.set(why, (this.#counts.get(why) ?? 0) + count)
  }

  addAll(others: LeftAside): void {
    for (const [why, count] of others.#counts) this.add(why, count)
  }

  /** The same counts in every run, whatever the order of the records. */
  list(): LeftOut[] {
    return REASONS.flatMap(why => {
      const count = this.#counts.get(why)
      return count === undefined ? [] : [{count, why}]
    })
  }
}
