/**
 * What the committee may be told and the public may not: the names of those who agreed to be named to the committee alone. It stands beside the
 * logbook and never in it, so that no finding and no page of the site can hold it; only the dossier made for the committee takes it.
 */
import type {Records} from '../records/records.ts'
import type {Keeper} from './book.ts'

export interface NamedToCommittee {
  readonly name: string
  /** as the keeper is willing to have it known */
  readonly region: string | null
}

export interface Confidential {
  /** who is keeper A in public */
  readonly keepers: ReadonlyMap<Keeper, NamedToCommittee>
  /** by what a judge is called in public: `judge 1` → the name */
  readonly judges: ReadonlyMap<string, string>
}

/** @returns null unless the requirements ask for a dossier for the committee: then nothing is kept that the public may not know. */
export function confidentialOf({requirements: [requirements]}: Records, names: Confidential): Confidential | null {
  return requirements?.data.audience === 'committee' ? names : null
}
