/**
 * A rule that holds between files: its page in the manual, whose examples are its tests, and its check. An example shows only what matters;
 * the strains, traits, keepers and first birds of a small project stand around it.
 */
import type {ManualEntry} from '../../records/manual.ts'
import type {Slip, Spot} from '../../records/problem.ts'
import type {Linked} from '../linked.ts'

export type {ManualEntry}

export interface Rule {
  readonly entry: ManualEntry
  /** absent where linking itself finds the fault on its way */
  readonly check?: (linked: Linked) => void
}

/** A slip under a manual entry. */
export function slipOf(entry: ManualEntry, at: Spot, reason: string, remedy: string, ...related: readonly {readonly at: Spot; readonly note: string}[]): Slip {
  return {code: entry.code, severity: entry.severity, at, reason, remedy, ...(related.length > 0 ? {related} : {})}
}
