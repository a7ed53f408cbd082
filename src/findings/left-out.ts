import {LEFT_OUT, type LeftOut} from './estimate.ts'

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
    return LEFT_OUT.flatMap(why => {
      const count = this.#counts.get(why)
      return count === undefined ? [] : [{count, why}]
    })
  }
}
