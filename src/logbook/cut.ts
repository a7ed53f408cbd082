/** A day to look back from: what is dated after it is left aside, each thing counted once. */
import type {Day, PartialDate} from '../records/dates.ts'

/** Things that follow one another, each with its days as far as they are known. */
interface InTurn {
  readonly from: PartialDate | null
  readonly to: PartialDate | null
}

export class Cut {
  readonly day: Day
  readonly #aside = new Set<object>()

  constructor(day: Day) {
    this.day = day
  }

  /** how many things were left aside */
  get count(): number {
    return this.#aside.size
  }

  /** What has no date was always so. */
  past(date: PartialDate | null | undefined): boolean {
    return !date || date.first <= this.day
  }

  /** Does a thing stand that began on a day? If not it is left aside. `fact` is what is counted where a thing only tells of it. */
  stands(thing: object, from: Day | null | undefined): boolean {
    if (from === null || from === undefined || from <= this.day) return true
    this.#aside.add(thing)
    return false
  }

  keep<T extends object>(all: readonly T[], dateOf: (one: T) => PartialDate | null | undefined): readonly T[] {
    return all.filter(one => this.stands(one, dateOf(one)?.first))
  }

  orNull<T extends object>(thing: T | null | undefined, date: PartialDate | null | undefined): T | null {
    return thing && this.stands(thing, date?.first) ? thing : null
  }

  /** Of things in turn those that had begun: one without a first day begins when the one before it came to its end, and never before that one. */
  begun<T extends InTurn>(all: readonly T[]): readonly T[] {
    let before: {readonly to: PartialDate | null; readonly start: Day | null} = {to: null, start: null}
    return all.filter(one => {
      const start = (one.from ?? before.to)?.first ?? before.start
      before = {to: one.to, start}
      return this.stands(one, start)
    })
  }
}
