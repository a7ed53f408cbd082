/**
 * What keepers and judges are called in the dossier. In public by the name they agreed to, else a letter or a number; in the dossier made for
 * the committee also by the name they agreed to there. Whatever page names people for the committee asks here, so that one place decides.
 */
import type {Confidential} from '../logbook/confidential.ts'
import type {Keeper, Logbook} from '../logbook/book.ts'

export interface Naming {
  /** made for the committee, and so not to be published */
  readonly isConfidential: boolean
  readonly keeper: (keeper: Keeper) => string
  readonly region: (keeper: Keeper) => string | null
  /** by name, not by a letter */
  readonly isNamed: (keeper: Keeper) => boolean
  /** @param called  what the judge is called in public */
  readonly judge: (called: string) => string
}

export const IN_PUBLIC: Naming = {
  isConfidential: false, keeper: ({name}) => name, region: ({region}) => region, isNamed: ({consents}) => consents, judge: called => called,
}

export const toCommittee = ({keepers, judges}: Confidential): Naming => ({
  isConfidential: true,
  keeper: keeper => keepers.get(keeper)?.name ?? keeper.name,
  region: keeper => keepers.get(keeper)?.region ?? keeper.region,
  isNamed: keeper => keeper.consents || keepers.has(keeper),
  judge: called => judges.get(called) ?? called,
})

/** Whom the committee is told of and the public is not, by what the public calls them: keepers, and judges of shows that are in the book. */
export function namedToCommittee({keepers, shows}: Logbook, confidential: Confidential): {readonly keepers: readonly string[]; readonly judges: readonly string[]} {
  const judges = new Set(shows.flatMap(({entries, scores = []}) => [...entries.map(({judge}) => judge), ...scores.map(({by}) => by)]).filter(judge => typeof judge === 'string'))
  return {keepers: keepers.filter(keeper => confidential.keepers.has(keeper)).map(({name}) => name), judges: [...judges].filter(judge => confidential.judges.has(judge))}
}
