import type {Bird, Logbook} from '../logbook/book.ts'
import {strainHeterozygosity} from '../pedigree/strain-heterozygosity.ts'
import {againstStandard, type AgainstStandard} from './against-standard.ts'
import {alleleFrequencies, type Frequencies} from './allele-frequencies.ts'
import {assumedKinship, type AssumedKinship} from './assumed-kinship.ts'
import {besideNextSeason, type BesideNextSeason} from './beside-next-season.ts'
import {breedingPairs, type BreedingPairs} from './breeding-pairs.ts'
import {bloodOfChicks} from './blood-of-chicks.ts'
import {birdsKept, passages, type Passage} from './bred-from.ts'
import {carriersInSteps, type CarriersInStep} from './carriers-in-steps.ts'
import {census, type Census} from './census.ts'
import {clausesOfFlock, type ClausesOfFlock} from './clauses.ts'
import {closeness, type ClosenessOfStep} from './closeness.ts'
import {closenessLimits, type ClosenessLimits} from './closeness-limits.ts'
import {crosses, type CrossOfLines} from './crosses.ts'
import {depression, type Depression} from './depression.ts'
import {depressionVerdicts, type DepressionVerdicts} from './depression-verdicts.ts'
import {donorGenes, type DonorGene} from './donor-gene.ts'
import {evidence, type EvidenceOfAll} from './evidence.ts'
import {expectedLooks, type ExpectedOfAll} from './expected-looks.ts'
import {fixationOf, type Fixation} from './fixation.ts'
import {flockSummaries, type FlockSummaries} from './flock-summary.ts'
import {founders, type Founders} from './founders.ts'
import {gapsOfRecords, type Gap} from './gaps-of-records.ts'
import {gradedScores, type GradedScores} from './graded-scores.ts'
import {growthCurves, type GrowthOfMeasure} from './growth-curves.ts'
import {hatchResults, type HatchResults} from './hatch-results.ts'
import {heredityOf, type Heredity, type PairAsked} from './heredity.ts'
import {identityOfLiving, type IdentityOfLiving} from './identity-of-living.ts'
import {ifScoredRight, type IfScoredRight} from './if-scored-right.ts'
import {impossibleFamilies, type DoubtedChick} from './impossible-families.ts'
import {hiddenAlleles, type HiddenAtLocus} from './hidden-alleles.ts'
import {kinshipOfBook, type Kinship} from './inbreeding.ts'
import {knownApart, type KnownApart} from './known-apart.ts'
import {judgeAgreement, type JudgeAgreement} from './judge-agreement.ts'
import {kinReasons, pairReasons} from './kin-reason.ts'
import {keptAgainstAll, type KeptMeasure, type KeptState} from './kept-against-all.ts'
import {ladderOf, type LadderStep, type ReachedStep} from './ladder.ts'
import {lineageOfBook, type Lineage} from './lineage.ts'
import {likeliestSires, type LikeliestSires} from './likeliest-sire.ts'
import {leastUniform, type LeastUniform} from './least-uniform.ts'
import {lifeOfFlock, type LifeOfFlock} from './life-of-flock.ts'
import {likeness, type Likeness} from './likeness.ts'
import {livingCarriers, type LivingCarriers} from './living-carriers.ts'
import {malesForPens, type Pairings} from './males-for-pens.ts'
import {matingForecasts, type MatingForecast} from './mating-forecast.ts'
import {pairHarm, type PairHarm} from './pair-harm.ts'
import {misscoring, type Misscoring} from './misscoring.ts'
import {oneMoreMale, ratePassed, type OneMoreMale, type RatePassed} from './one-more-male.ts'
import {nextBackcross, type NextBackcross, type NoProspects} from './next-backcross.ts'
import {pedigreeOfBook, type PedigreeOfBook} from './pedigree-of-book.ts'
import {recovery, type RecoveryOfTrait} from './recovery.ts'
import {remarksByClause, type RemarksByClause} from './remarks-by-clause.ts'
import {rotation, type Rotation} from './rotation.ts'
import {traitShares, type TraitShares} from './shares.ts'
import {segregation, type Segregation} from './segregation.ts'
import {selection, type Selection} from './selection.ts'
import {sheetsCompared, type SheetsCompared} from './sheets-compared.ts'
import {sheetsOfPoints, type SheetsOfPoints} from './sheets-of-points.ts'
import {showResults, type ShowResults} from './show-results.ts'
import {showYears, type ShowYears} from './show-years.ts'
import {spreadOfMeasures, type SpreadOfMeasures} from './spread.ts'
import {standardChanges, type StandardChanges} from './standard-changes.ts'
import {changesOfSteps} from './step-before.ts'
import {stepChange, type StepChange} from './step-change.ts'
import {strainShares, type StrainShares} from './strain-shares.ts'
import {struckScores, type StruckScore} from './struck-scores.ts'
import {pairsInPens, throwBacks, type ThrowBacks} from './throw-backs.ts'
import {trendsOf, type Trends} from './trends.ts'
import {trueBred, type TrueBred} from './true-bred.ts'
import {trueBredParts, type TrueBredPart} from './true-bred-parts.ts'
import {testMates, type TestMates} from './test-mates.ts'
import {allelesOfBook, unwantedInBook, type AllelesOfBook} from './unwanted-alleles.ts'
import {upcoming, type Upcoming} from './upcoming.ts'
import {requiredTraits} from './verdict.ts'
import {workedOnce} from './worked-once.ts'

/** Every answer the records give, each worked once. One file a question, beside this one. */
export interface Findings {
  readonly book: Logbook
  readonly ladder: readonly LadderStep[]
  readonly shares: readonly TraitShares[]
  readonly trueBred: TrueBred
  readonly spread: SpreadOfMeasures
  /** by sex, pen and the last seasons */
  readonly trueBredParts: readonly TrueBredPart[]
  readonly trends: Trends
  /** what is different in a later step; worked when it is asked for */
  readonly change: (from: ReachedStep, to: ReachedStep) => StepChange
  /** to each step from the one before it, where there is one */
  readonly changes: readonly StepChange[]
  readonly summaries: FlockSummaries
  readonly gradedScores: GradedScores
  /** means by age, step and sex of what is measured on weigh days */
  readonly growthCurves: readonly GrowthOfMeasure[]
  readonly againstStandard: readonly AgainstStandard[]
  /** null: nothing required has been scored yet */
  readonly leastUniform: LeastUniform | null
  readonly hatchResults: HatchResults
  /** hatch, life and lay: comparisons, livability, growth, eggs and feed */
  readonly life: LifeOfFlock
  readonly strainShares: StrainShares
  readonly census: Census
  readonly pedigree: PedigreeOfBook
  readonly kinship: Kinship
  /** chance that the two copies of a gene come from different strains, by the pedigree's numbers */
  readonly heterozygosity: Float64Array
  readonly closeness: readonly ClosenessOfStep[]
  /** one entry a step of `closeness` */
  readonly closenessLimits: readonly ClosenessLimits[]
  /** why a bird's F is what it is; worked when it is asked for */
  readonly kinReason: ReturnType<typeof kinReasons>
  /** the same of any two birds, for chicks that they might have */
  readonly pairReason: ReturnType<typeof pairReasons>
  readonly lineage: Lineage
  readonly heredity: Heredity
  /** how common each allele is in each step */
  readonly frequencies: Frequencies
  /** what a bird may hide at every locus, and why; worked when it is asked for */
  readonly hidden: (bird: Bird) => readonly HiddenAtLocus[]
  /** what was to be expected of each step and pen, beside what was seen */
  /** what is known of the parents of each brood without its own chicks */
  readonly knownApart: KnownApart
  readonly expectedLooks: ExpectedOfAll
  /** what each mating gave beside what it should have */
  readonly segregation: Segregation
  /** chicks that look as their parents cannot make them, or hardly */
  readonly impossibleFamilies: readonly DoubtedChick[]
  /** who had the chicks whose parents are in doubt */
  readonly likeliestSires: LikeliestSires
  /** what matings would give, all of these worked in one go */
  readonly forecasts: (pairs: readonly PairAsked[]) => readonly MatingForecast[]
  /** of the pairs that stand in the pens of the latest season, in the order of `pairsInPens` */
  readonly forecastsInPens: readonly MatingForecast[]
  /** what a pair gives if a doubted score is right and what it shows kills or hurts; worked when it is asked for */
  readonly ifScoredRight: (pair: PairAsked) => readonly IfScoredRight[]
  /** of the required traits whose loci are known, among the living breeders of the new breed */
  readonly fixation: readonly Fixation[]
  readonly throwBacks: readonly ThrowBacks[]
  /** of the required traits whose loci are known, among the chicks of each step that look right */
  readonly carriersInSteps: readonly CarriersInStep[]
  /** of every trait whose loci are known and for which something is wanted */
  readonly livingCarriers: readonly LivingCarriers[]
  /** alleles of a locus that some strain or bird may have */
  readonly allelesOfBook: AllelesOfBook
  /** the mate that tells most of a bird that may hide something, and the clean chicks that clear it; worked when it is asked for */
  readonly testMates: TestMates
  readonly nextBackcross: NextBackcross | NoProspects
  /** null: no bird of the new breed lives */
  readonly founders: Founders | null
  readonly donorGenes: readonly DonorGene[]
  readonly assumedKinship: AssumedKinship | null
  readonly pairings: Pairings
  /** which pairs may lose eggs by a lethal rule, and which birds carry what would do it; worked when it is asked for */
  readonly pairHarm: PairHarm
  readonly breedingPairs: BreedingPairs
  /** null: no male or no female of the new breed is bred from */
  readonly oneMoreMale: OneMoreMale | null
  /** null: within the project's limit, or nothing to say */
  readonly ratePassed: RatePassed | null
  /** null: no pen of the latest season holds a pair of the new breed */
  readonly rotation: Rotation | null
  readonly misscoring: readonly Misscoring[]
  /** what inbreeding costs in hatch, life, weight and eggs */
  readonly depression: readonly Depression[]
  readonly depressionVerdicts: DepressionVerdicts
  /** which step came of which, and through which birds */
  readonly passages: readonly Passage[]
  /** the birds kept against all of their hatch and sex, in every trait */
  readonly keptAgainstAll: readonly (KeptState | KeptMeasure)[]
  readonly selection: Selection
  /** null: told already, or nothing to tell */
  readonly besideNextSeason: BesideNextSeason | null
  /** of chicks to their parents, in what is measured */
  readonly likeness: readonly Likeness[]
  readonly recovery: readonly RecoveryOfTrait[]
  readonly crosses: readonly CrossOfLines[]
  readonly shows: ShowResults
  readonly showYears: ShowYears
  /** sheets of points of judges and of keepers */
  readonly sheets: SheetsOfPoints
  /** placings against the keepers' own marks */
  readonly judgeAgreement: readonly JudgeAgreement[]
  /** points of judges against ours, and of two keepers */
  readonly sheetsCompared: readonly SheetsCompared[]
  readonly remarksByClause: RemarksByClause
  readonly standardChanges: readonly StandardChanges[]
  /** of the latest draft, each beside the flock */
  readonly clauses: ClausesOfFlock
  readonly evidence: EvidenceOfAll
  readonly upcoming: readonly Upcoming[]
  readonly identity: IdentityOfLiving
  /** scores struck out, and what the records do not hold */
  readonly struckScores: readonly StruckScore[]
  readonly gaps: readonly Gap[]
}

/** logbook → findings: pure, and the same for the same book. Each is worked when it is first asked for. */
export function study(book: Logbook): Findings {
  const all: Findings = workedOnce<Findings>({
    book: () => book,
    ladder: () => ladderOf(book),
    shares: () => traitShares(book, all.ladder),
    trueBred: () => trueBred(book, all.ladder),
    spread: () => spreadOfMeasures(book, all.ladder),
    trueBredParts: () => trueBredParts(book, all.trueBred),
    trends: () => trendsOf(all.ladder, all.trueBred, all.spread),
    change: () => (from, to) => stepChange(from, to, all.trueBred, all.spread, book.traits),
    changes: () => changesOfSteps(all.ladder, all.passages, all.change),
    summaries: () => flockSummaries(all),
    gradedScores: () => gradedScores(book, all.ladder),
    growthCurves: () => growthCurves(book, all.ladder),
    againstStandard: () => againstStandard(all.spread),
    leastUniform: () => leastUniform(all.trueBred, all.ladder),
    hatchResults: () => hatchResults(book),
    life: () => lifeOfFlock(book),
    strainShares: () => strainShares(book, all.ladder),
    census: () => census(book),
    pedigree: () => pedigreeOfBook(book),
    kinship: () => kinshipOfBook(all.pedigree),
    heterozygosity: () => strainHeterozygosity(all.pedigree.pedigree),
    closeness: () => closeness(all.ladder, all.pedigree, all.kinship, all.heterozygosity),
    closenessLimits: () => closenessLimits(book, all.ladder, all.closeness, all.kinship),
    kinReason: () => kinReasons(all.pedigree, all.pairReason),
    pairReason: () => pairReasons(all.pedigree, all.kinship),
    heredity: () => heredityOf(book, all.pedigree, pairsInPens(all.census)),
    frequencies: () => alleleFrequencies(book, all.ladder, all.heredity, all.pedigree),
    hidden: () => hiddenAlleles(book, all.heredity, all.pedigree),
    knownApart: () => knownApart(book, all.heredity, all.pedigree),
    expectedLooks: () => expectedLooks(all.heredity, all.pedigree, all.knownApart),
    segregation: () => segregation(book, all.pedigree, all.heredity, all.knownApart),
    impossibleFamilies: () => impossibleFamilies(book, all.pedigree, all.heredity, () => all.segregation),
    likeliestSires: () => likeliestSires(book, all.pedigree, all.heredity),
    forecasts: () => pairs => matingForecasts(book, all.heredity, all.pedigree, pairs),
    forecastsInPens: () => all.forecasts(pairsInPens(all.census)),
    ifScoredRight: () => pair => ifScoredRight(book, all.heredity, all.pedigree, pair),
    fixation: () => requiredTraits(book).flatMap(trait => unwantedInBook(trait, all.allelesOfBook)).map(asked => fixationOf(asked, all.census.ownBreeders, all.heredity, all.pedigree)),
    throwBacks: () => throwBacks(requiredTraits(book), all.census, pairsInPens(all.census), all.forecastsInPens),
    carriersInSteps: () => carriersInSteps(all.trueBred.required.flatMap(trait => unwantedInBook(trait, all.allelesOfBook)), all.trueBred, all.heredity, all.pedigree),
    livingCarriers: () => livingCarriers(book.traits, all.census, all.heredity, all.allelesOfBook),
    allelesOfBook: () => allelesOfBook(book, all.heredity, all.pedigree),
    testMates: () => testMates(book, all.heredity, all.pedigree, all.allelesOfBook),
    lineage: () => lineageOfBook(book, all.pedigree, all.heterozygosity),
    nextBackcross: () => nextBackcross(book, all),
    founders: () => founders(book, all.ladder, all.census, all.pedigree, all.kinship),
    donorGenes: () => donorGenes(book, all.founders?.birds ?? []),
    assumedKinship: () => assumedKinship(book, all.founders?.birds ?? [], all.pedigree),
    pairings: () => malesForPens(book, all.census, all.pedigree, all.kinship),
    breedingPairs: () => breedingPairs(all.census, all.pedigree, all.kinship),
    pairHarm: () => pairHarm(book, all.heredity, all.pedigree, all.allelesOfBook),
    oneMoreMale: () => oneMoreMale(all.census, all.pairings.males, all.pedigree, all.kinship, all.pairHarm),
    ratePassed: () => ratePassed(book, all.closeness),
    rotation: () => rotation(book, all.census, all.pedigree, all.kinship),
    misscoring: () => misscoring(book),
    depression: () => depression(book, bloodOfChicks(all.pedigree, all.kinship, all.heterozygosity)),
    depressionVerdicts: () => depressionVerdicts(all.depression),
    passages: () => passages(book, all.ladder),
    keptAgainstAll: () => keptAgainstAll(book, all.ladder, birdsKept(book)),
    selection: () => selection(book, all.passages),
    besideNextSeason: () => besideNextSeason(all.ladder, all.selection, all.spread),
    likeness: () => likeness(book),
    recovery: () => recovery(book, all.ladder, all.strainShares),
    crosses: () => crosses(book),
    shows: () => showResults(book),
    showYears: () => showYears(all.shows),
    sheets: () => sheetsOfPoints(book),
    judgeAgreement: () => judgeAgreement(book, all.sheets),
    sheetsCompared: () => sheetsCompared(all.sheets),
    remarksByClause: () => remarksByClause(book, all.shows),
    standardChanges: () => standardChanges(book),
    clauses: () => clausesOfFlock(book, all.ladder, all.passages),
    evidence: () => evidence(book, all),
    upcoming: () => upcoming(book, all.ladder),
    identity: () => identityOfLiving(book, all.census),
    struckScores: () => struckScores(book),
    gaps: () => gapsOfRecords(book),
  })
  return all
}
