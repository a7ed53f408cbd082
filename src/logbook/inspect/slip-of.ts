/** A slip under an entry of the manual. Leans on records alone, so that the rooms of linking can use a rule's words. */
import type {ManualEntry} from '../../records/manual.ts'
import type {Slip, Spot} from '../../records/problem.ts'

export type {ManualEntry}

export function slipOf(entry: ManualEntry, at: Spot, reason: string, remedy: string, ...related: readonly {readonly at: Spot; readonly note: string}[]): Slip {
  return {code: entry.code, severity: entry.severity, at, reason, remedy, ...(related.length > 0 ? {related} : {})}
}
