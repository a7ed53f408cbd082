/** The closed list of rules that hold between files, in the order of the manual. */
import type {Rule} from './rule.ts'
import * as bandInDoubt from './band-in-doubt.ts'

export const RULES: readonly Rule[] = [bandInDoubt]
