import type {Trait} from '../logbook/book.ts'
import type {Count} from '../statistics/share-difference.ts'
import {grouped} from './grouped.ts'
import type {Chick} from './ladder-chicks.ts'
import {countByFamily} from './sire-families.ts'
import type {TrueBred} from './true-bred.ts'
import type {Verdict} from './verdict.ts'

/** What chicks are judged by: everything required together, or one required trait. */
export type JudgedBy = 'true-bred' | Trait

/** Does a chick show it? Null where that cannot be judged. */
export function judgedRight({is, right, off}: Verdict, by: JudgedBy): boolean | null {
  if (by === 'true-bred') return is === 'right' ? true : is === 'off' ? false : null
  return right.includes(by) ? true : off.includes(by) ? false : null
}

/** By what, and the families of each step, or of whatever else chicks stand together by. */
export interface JudgedFamilies {
  readonly by: JudgedBy
  readonly steps: ReadonlyMap<string, readonly Count[]>
}

/**
 * The families of each step, by its label, so many right of so many judged: everything required together first, then each trait on its own.
 *
 * @param rowOf what chicks stand together by in place of the step; undefined: nowhere
 */
export function judgedByFamily({required, verdicts}: TrueBred, rowOf: (chick: Chick) => string | undefined = chick => chick.step.label): readonly JudgedFamilies[] {
  const steps = grouped(verdicts.keys(), rowOf)
  const all: readonly JudgedBy[] = required.length === 0 ? [] : ['true-bred', ...required]
  return all.map(by => ({
    by,
    steps: new Map([...steps].map(([step, chicks]) => [step, countByFamily(chicks, (chick: Chick) => {
      const verdict = verdicts.get(chick)
      return verdict ? judgedRight(verdict, by) : null
    })] as const)),
  }))
}

/** Of all families together. */
export const sumOf = (families: readonly Count[]): Count => families.reduce((sum, {k, n}) => ({k: sum.k + k, n: sum.n + n}), {k: 0, n: 0})
