/** What the table of measured coverage says in words: what each interval is called, where it holds the truth too seldom or oftener than it says, and what to read then. */
import {grouped} from '../../findings/grouped.ts'
import {COVERAGE_SEED, MEASURED_COVERAGE, type MeasuredCoverage} from '../../statistics/measured-coverage.ts'
import {rounded} from '../numbers.ts'

interface Words {
  readonly name: string
  /** why it falls short somewhere, and what to read instead */
  readonly short?: string
  /** why it is wider than need be somewhere */
  readonly wide?: string
}

/** An interval holds well from 93.5 to 96.5 of a hundred. */
export const HOLDS = {low: 93.5, high: 96.5} as const

const EXACT = 'An exact test of few birds moves in steps, and so errs less often than it may.'
const FEW = 'Of few families little is known of how families differ, and nothing where none differs: the limits are then rather too wide than too narrow.'
const THESE = 'Under five cocks of a line chicks count one by one, and sibs are alike: the limits speak of these chicks only, as the page says. Breed from five cocks or more.'

const WORDS: Readonly<Record<string, Words>> = {
  'wilson': {name: 'A share (Wilson), chicks no kin'},
  'clopper-pearson': {name: 'A share (Clopper and Pearson), chicks no kin', wide: 'It is made never to hold less than 95, and holds more for it.'},
  'newcombe': {name: 'Difference of two shares (Newcombe), chicks no kin'},
  'trend': {name: 'Trend of shares (Cochran and Armitage), no trend', wide: EXACT},
  'wilson-families': {name: 'A share (Wilson), chicks of few cocks or eggs of few hens', short: 'Sibs, and the eggs of one hen, are alike, so that there is less to go by than their number says. Read the interval by families, for eggs also that by settings; where there is none, do not lean on the plain one.'},
  'family-share': {name: 'A share, by families', wide: FEW},
  'family-difference': {name: 'Difference of two shares, by families', wide: FEW},
  'family-trend': {name: 'Trend of shares, by families, no trend', wide: FEW},
  'livability': {name: 'Livability (Kaplan and Meier, Rothman), chicks no kin'},
  'livability-families': {name: 'Livability, by families', wide: FEW},
  'livability-difference': {name: 'Difference in livability, by families', wide: FEW},
  'eggs-families': {name: 'Hatch of eggs, by families', wide: FEW},
  'eggs-settings': {name: 'Hatch of eggs, by settings of the same birds', wide: FEW},
  'egg-rate': {name: 'Rate of lay over hens'},
  'egg-rate-difference': {name: 'Difference in lay', wide: 'Each group brings limits of its own, which joined are a little too wide where hens are few.'},
  'cv': {name: 'CV (McKay and Vangel), classes pooled'},
  'cv-ratio': {name: 'Ratio of two CVs', short: 'Only at a CV of 30% in classes of five, which no flock of one breed has.'},
  'variance-ratio': {name: 'Ratio of two variances', short: 'Where weights lean to the heavy side. Read Brown and Forsythe’s test, which does not mind.'},
  'brown-forsythe': {name: 'Evenness of two steps (Brown and Forsythe), no change', short: 'Where brothers and sisters are much alike, birds taken one by one are surer than they are. From five cocks a step on pages go by families; under five read it as of these chicks only.'},
  'brown-forsythe-families': {name: 'Evenness of two steps, by families, no change', wide: FEW},
  'grades-families': {name: 'Grades of two steps, sex by sex and by families, no change'},
  'rank-test': {name: 'Grades of two steps (Wilcoxon), no change', wide: EXACT},
  'shift': {name: 'Shift of grades (Hodges and Lehmann)'},
  'kappa': {name: 'Agreement of scorers (kappa, misses counted by grades)'},
  'sen': {name: 'Slope of a CV (Sen)', wide: EXACT},
  'mann-kendall': {name: 'Whether a CV goes one way (Mann and Kendall), no trend', wide: EXACT},
  'response': {name: 'Response to choosing, 2 to 8 chicks a cock', short: THESE},
  'heterosis': {name: 'Vigour of a cross, 2 to 8 chicks a cock', short: THESE},
  'recovery': {name: 'Recovery of type, 2 to 8 chicks a cock', short: THESE},
  'realised': {name: 'Realised heritability', short: 'After many steps they differ in how much was chosen and how much was left to choose from, and the steps no longer err alike. The shortfall is small.'},
  'parent-offspring': {name: 'Heritability from parents and chicks'},
  'depression': {name: 'Cost of inbreeding in hatch and life', wide: 'Extra spread between hatches is never taken as less than none, and counts against every column alike.', short: 'A pair with many hatches weighs more than one with a single hatch, and pairs where fewer hatch differ more. The shortfall is small.'},
  'weights': {name: 'Cost of inbreeding in weight, 80 g for ten points of F'},
  'kept': {name: 'Kept less the rest, birds kept blindly'},
  'allele': {name: 'How common an allele is, genotypes known', short: 'Chicks count as if no kin, and sibs are. Read it as a count of these chicks; the looks have an interval by families.'},
}

/** Rows that have all but their number in common, which is said once before them; a row by itself. */
interface CoveragePart {
  readonly of: string
  readonly shared: boolean
  readonly rows: readonly {readonly flock: string; readonly held: string; readonly short: boolean}[]
}

export interface CoverageView {
  readonly seed: number
  readonly groups: readonly {readonly name: string; readonly drawn: string; readonly parts: readonly CoveragePart[]}[]
  /** what is said, and of which intervals with what they held */
  readonly notes: readonly {readonly says: string; readonly of: string}[]
}

const range = (rows: readonly MeasuredCoverage[]): string => {
  const all = rows.map(({held}) => held), low = rounded(Math.min(...all), 1), high = rounded(Math.max(...all), 1)
  return low === high ? low : `${low} to ${high}`
}

/** What this interval held, as `93.4 to 98.1`. */
export const heldBy = (interval: string): string => range(MEASURED_COVERAGE.filter(row => row.interval === interval))

export function coverageView(): CoverageView {
  const groups = [...new Set(MEASURED_COVERAGE.map(({interval}) => interval))].map(interval => ({words: WORDS[interval] ?? {name: interval}, rows: MEASURED_COVERAGE.filter(row => row.interval === interval)}))
  return {
    seed: COVERAGE_SEED,
    groups: groups.map(({words: {name}, rows}) => ({name, drawn: drawnWords(rows), parts: partsOf(rows)})),
    notes: [...grouped(groups.flatMap(({words: {name, short, wide}, rows}) => {
      const below = rows.filter(({held}) => held < HOLDS.low), above = rows.filter(({held}) => held > HOLDS.high)
      return [...(short && below.length > 0 ? [{says: short, of: `${name}: ${range(below)}`}] : []), ...(wide && above.length > 0 ? [{says: wide, of: `${name}: ${range(above)}`}] : [])]
    }), ({says}) => says)].map(([says, all]) => ({says, of: `${all.map(({of}) => of).join('; ')}.`})),
  }
}

/** `no cock differs` with `5 cocks: 99.6, 8 cocks: 98.9`; what no other row has in common stands before its figure whole */
function partsOf(rows: readonly MeasuredCoverage[]): readonly CoveragePart[] {
  const rest = ({flock}: MeasuredCoverage): string => flock.split(', ').slice(1).join(', ')
  const shared = (row: MeasuredCoverage): boolean => rest(row) !== '' && rows.filter(other => rest(other) === rest(row)).length > 1
  return [...grouped(rows, row => (shared(row) ? rest(row) : row.flock))].map(([of, own]) => ({of, shared: own.length > 1, rows: own.map(row => ({
    flock: shared(row) ? row.flock.split(', ')[0] ?? '' : '', held: row.least === null ? rounded(row.held, 1) : `${rounded(row.held, 1)} (${rounded(row.least, 1)})`, short: row.held < HOLDS.low,
  }))}))
}

function drawnWords(rows: readonly MeasuredCoverage[]): string {
  const drawn = rows.flatMap(({runs}) => runs ?? [])
  if (drawn.length === 0) return '(all outcomes added up: mean of all true shares, and at the worst of them)'
  const few = Math.min(...drawn), many = Math.max(...drawn)
  return few === many ? `(${few} flocks each)` : `(${few} to ${many} flocks each)`
}
