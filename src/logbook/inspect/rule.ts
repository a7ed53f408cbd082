/**
 * A rule that holds between files: its page in the manual, whose examples are its tests, and its check. An example shows only what matters;
 * the strains, traits, keepers and first birds of a small project stand around it.
 *
 * A rule that linking finds on its way gives its words as a function instead, and leans on no room that uses it.
 */
import type {ManualEntry} from '../../records/manual.ts'
import type {Linked} from '../linked.ts'

export interface Rule {
  readonly entry: ManualEntry
  /** absent where linking itself finds the fault, or heredity, which is worked from the whole book */
  readonly check?: (linked: Linked) => void
}
