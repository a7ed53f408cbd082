import type {Supposed} from './cluster-messages.ts'

/** What a product of tables says of each of its variables. */
export interface Propagation {
  /** natural logarithm of the sum of the product over all values of the variables in tables; −Infinity where nothing is possible. Of a component that was not exact, as the settled messages have it */
  readonly logSum: number
  /** every variable's marginal is exact */
  readonly exact: boolean
  /** variables of the smallest component that was not exact; Infinity where all were */
  readonly tooWideFrom: number
  /** the largest change of any message in the last sweep; 0 where exact */
  readonly change: number
  readonly sweeps: number
  /** shares of a variable's values, summing to 1 */
  marginal(variable: number): Float64Array
  /** shares over the variables of one factor, in its order of entries */
  joint(factor: number): Float64Array
  /** the same for each value of a variable of the factor's component, all together summing to 1 */
  jointWith(factor: number, variable: number): readonly Float64Array[]
  /**
   * What would be said were some factors others: only what changes is worked anew, and afterwards all is as it was.
   *
   * @param tables by the number of a factor, another table over its variables
   * @param whole send on until all has settled, and not only what lies near
   */
  supposing<T>(tables: ReadonlyMap<number, Float64Array>, read: (supposed: Supposed) => T, whole?: boolean): T
  /** whether the variable's own component was exact */
  isExact(variable: number): boolean
}
