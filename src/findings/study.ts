import type {Logbook} from '../logbook/book.ts'
import {strainHeterozygosity} from '../pedigree/strain-heterozygosity.ts'
import {againstStandard, type AgainstStandard} from './against-standard.ts'
import {census, type Census} from './census.ts'
import {closeness, type ClosenessOfStep} from './closeness.ts'
import {evidence, type EvidenceOfAll} from './evidence.ts'
import {founders, type Founders} from './founders.ts'
import {hatchResults, type HatchResults} from './hatch-results.ts'
import {kinshipOfBook, type Kinship} from './inbreeding.ts'
import {ladderOf, type LadderStep} from './ladder.ts'
import {leastUniform, type LeastUniform} from './least-uniform.ts'
import {malesForPens, type Pairings} from './males-for-pens.ts'
import {misscoring, type Misscoring} from './misscoring.ts'
import {pedigreeOfBook, type PedigreeOfBook} from './pedigree-of-book.ts'
import {recordsAudit, type RecordsAudit} from './records-audit.ts'
import {traitShares, type TraitShares} from './shares.ts'
import {showResults, type ShowResults} from './show-results.ts'
import {spreadOfMeasures, type SpreadOfMeasures} from './spread.ts'
import {standardChanges, type StandardChanges} from './standard-changes.ts'
import {strainShares, type StrainShares} from './strain-shares.ts'
import {trueBred, type TrueBred} from './true-bred.ts'
import {upcoming, type Upcoming} from './upcoming.ts'

/** Every answer the records give, each worked once. One file a question, beside this one. */
export interface Findings {
  readonly book: Logbook
  readonly ladder: readonly LadderStep[]
  readonly shares: readonly TraitShares[]
  readonly trueBred: TrueBred
  readonly spread: SpreadOfMeasures
  readonly againstStandard: readonly AgainstStandard[]
  /** null: nothing required has been scored yet */
  readonly leastUniform: LeastUniform | null
  readonly hatchResults: HatchResults
  readonly strainShares: StrainShares
  readonly census: Census
  readonly pedigree: PedigreeOfBook
  readonly kinship: Kinship
  readonly closeness: readonly ClosenessOfStep[]
  /** null: no bird of the new breed lives */
  readonly founders: Founders | null
  readonly pairings: Pairings
  readonly misscoring: readonly Misscoring[]
  readonly shows: ShowResults
  readonly standardChanges: readonly StandardChanges[]
  readonly evidence: EvidenceOfAll
  readonly upcoming: readonly Upcoming[]
  readonly audit: RecordsAudit
}

/** logbook → findings: pure, and the same for the same book. */
export function study(book: Logbook): Findings {
  const ladder = ladderOf(book)
  const bred = trueBred(book, ladder), spread = spreadOfMeasures(book, ladder), now = census(book), shows = showResults(book)
  const audit = recordsAudit(book, now)
  const pedigree = pedigreeOfBook(book), kinship = kinshipOfBook(pedigree), heterozygosity = strainHeterozygosity(pedigree.pedigree)
  return {
    book, ladder, shares: traitShares(book, ladder), trueBred: bred, spread, againstStandard: againstStandard(spread), leastUniform: leastUniform(bred, ladder),
    hatchResults: hatchResults(book), strainShares: strainShares(book, ladder), census: now, pedigree, kinship, closeness: closeness(ladder, pedigree, kinship, heterozygosity), founders: founders(book, ladder, now, pedigree, kinship),
    pairings: malesForPens(book, now, pedigree, kinship), misscoring: misscoring(book), shows,
    standardChanges: standardChanges(book), evidence: evidence(book, {ladder, census: now, shows, spread, trueBred: bred, audit}),
    upcoming: upcoming(book, ladder), audit,
  }
}
