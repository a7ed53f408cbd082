import {binomialRegression, shareAt, type BinomialRow} from '../statistics/binomial-regression.ts'
import {withinClasses} from '../statistics/within-classes.ts'
import type {Blood} from './blood-of-chicks.ts'
import type {Interval} from './estimate.ts'
import {grouped} from './grouped.ts'

/** What may cost something, in the order in which it gives way where the records are too few for all. */
const TERMS = ['chickF', 'damF', 'chickH', 'damH'] as const satisfies readonly (keyof Blood)[]
export type Term = (typeof TERMS)[number]

/** What ten points more of F, or ten points less of strain heterozygosity, go with; the others held. */
export type TermEffect =
  | {
      readonly term: Term
      readonly kind: 'effect'
      /** of a share in points of it (0.01 is one), else in the unit of the values */
      readonly change: number
      /** null: no limit was found */
      readonly interval: Interval | null
      readonly p: number | null
      /** less is harm. `cannot-tell`: the interval holds both nothing and harm · `no-harm`: it holds no harm */
      readonly verdict: 'harm' | 'cannot-tell' | 'no-harm'
    }
  /** `alike`: it is the same throughout, within two and a half points · `tied`: it goes with season, hatch or the terms before it (inside them it differs by less than two and a half points), and cannot be told from them · `too-few`: too few hatches, or pairs, beyond what is fitted · `unsettled`: no fit was found */
  | {readonly term: Term; readonly kind: 'cannot-say'; readonly why: 'alike' | 'tied' | 'too-few' | 'unsettled'}

/** An answer of one regression. */
export interface InbreedingModel {
  readonly effects: readonly TermEffect[]
  /** `held`: every season has a level of its own · `not-held`: too few hatches for that, so that a good year may pass for good blood · `one`: there is one */
  readonly seasons: 'held' | 'not-held' | 'one'
  readonly how: 'plain' | 'penalised' | 'least-squares' | null
  /** φ of a binomial regression; null where there is none */
  readonly extra: number | null
}

/** So many of so many: the eggs of a hatch, the chicks of one pair in a hatch. */
export interface CountedGroup {
  readonly k: number
  readonly n: number
  readonly blood: Blood
  readonly season: number | null
  /** what was set together: its hatch */
  readonly cluster: string
  /** whose chicks they are: F is the pair's, and of however many hatches a pair tells of it once */
  readonly pair: string
}

/** One mean of birds of one pair in one class. */
export interface MeasuredFamily {
  readonly value: number
  readonly blood: Blood
  readonly pair: string
  /** its contemporaries */
  readonly group: string
}

/** ten points of F more, ten points of heterozygosity less */
const STEP: Readonly<Record<Term, number>> = {chickF: 0.1, damF: 0.1, chickH: -0.1, damH: -0.1}
/** Fewer hatches or pairs beyond what is fitted say too little for a number: with two the limits lie over four errors to either side; seasons give up levels of their own for it. Our own choice. */
const TO_SPARE = 3
const spare = (freedom: number): boolean => freedom >= TO_SPARE - 1e-9

/** Ten points are not to be told from birds that differ by less than a quarter of that; our own choice. */
const LEAST_RANGE = 0.025

/** The widest range of a term inside any of the groups. */
function range<Row extends {readonly blood: Blood}>(rows: readonly Row[], term: Term, groupOf: (row: Row) => unknown): number {
  return Math.max(0, ...[...grouped(rows, groupOf).values()].map(own => Math.max(...own.map(({blood}) => blood[term])) - Math.min(...own.map(({blood}) => blood[term]))))
}
const differs = (found: number): boolean => found >= LEAST_RANGE - 1e-9
const wanting = (terms: readonly Term[], why: 'alike' | 'tied' | 'too-few' | 'unsettled'): readonly TermEffect[] => terms.map(term => ({term, kind: 'cannot-say', why}))
const inOrder = (effects: readonly TermEffect[]): readonly TermEffect[] => TERMS.flatMap(term => effects.find(effect => effect.term === term) ?? [])

function effectOf(term: Term, change: number, interval: Interval | null, p: number | null): TermEffect {
  const verdict = interval === null || (interval.low < 0 && interval.high >= 0) ? 'cannot-tell' : interval.high < 0 ? 'harm' : 'no-harm'
  return {term, kind: 'effect', change, interval, p, verdict}
}

const spanned = (a: number, b: number): Interval => ({low: Math.min(a, b), high: Math.max(a, b)})

/**
 * Do fewer eggs hatch, or fewer chicks live, the closer they are bred?
 *
 *     logit π = season + b₁F + b₂F_dam + b₃H + b₄H_dam        change = π(η + 0.1·b) − π(η), η at the mean of the others; of H with −0.1·b
 *
 * F rises along the ladder while H falls, so both stand in it. Extra spread between hatches and between pairs, the wider of the two, widens the limits, and degrees of freedom are those of the fewer.
 * Terms that go wholly with those before them, or with season, are told of as tied and not fitted; where hatches or pairs are few the seasons give way first. Where fewer than `TO_SPARE` are left
 * over nothing is said.
 *
 * @see `binomialRegression`
 */
export function inbreedingOfShares(groups: readonly CountedGroup[]): InbreedingModel {
  return sharesWith(groups, true) ?? sharesWith(groups, false) ?? {effects: wanting(TERMS, 'too-few'), seasons: 'not-held', how: null, extra: null}
}

/** Null: with the seasons held too few pairs or hatches are left. */
function sharesWith(groups: readonly CountedGroup[], apart: boolean): InbreedingModel | null {
  const used = groups.filter(({n}) => n > 0)
  if (used.length < 2) return {effects: wanting(TERMS, 'too-few'), seasons: 'one', how: null, extra: null}
  const terms = TERMS.filter(term => differs(range(used, term, () => 'all')))
  const alike = wanting(TERMS.filter(term => !terms.includes(term)), 'alike')
  const seasons = [...new Set(used.map(({season}) => season))], clusters = new Set(used.map(({cluster}) => cluster)).size
  const held = apart && seasons.length > 1 && clusters - seasons.length - terms.length >= TO_SPARE
  const answer = (effects: readonly TermEffect[], how: InbreedingModel['how'], extra: number | null): InbreedingModel =>
    ({effects: inOrder([...effects, ...alike]), seasons: seasons.length < 2 ? 'one' : held ? 'held' : 'not-held', how, extra})
  const levels = held ? seasons.slice(1) : []
  let fitted: readonly Term[] = terms.filter(term => !held || differs(range(used, term, ({season}) => season))), aside = wanting(terms.filter(term => !fitted.includes(term)), 'tied')
  while (fitted.length > 0) {
    const rows = used.map(({k, n, cluster, pair, blood, season}): BinomialRow => ({k, n, cluster, family: pair, x: [...levels.map(level => Number(season === level)), ...fitted.map(term => blood[term])]}))
    const fit = binomialRegression(rows, 0.95, levels.length)
    if (fit.kind === 'dependent') {
      const tied = fitted.filter((_, place) => fit.columns.includes(place + levels.length))
      // a season whose chicks all lived may be tied itself; then there is nothing to hold it against
      if (tied.length === 0) return answer([...aside, ...wanting(fitted, 'tied')], null, null)
      aside = [...aside, ...wanting(tied, 'tied')]
      fitted = fitted.filter(term => !tied.includes(term))
    } else if (held && (fit.kind === 'few' || (fit.kind === 'fitted' && !spare(fit.freedom)))) return null
    else if (fit.kind === 'fitted') {
      if (!spare(fit.freedom)) return answer([...aside, ...wanting(fitted, 'too-few')], null, null)
      const {share} = shareAt(fit, fit.scale.middles), at = Math.log(share / (1 - share))
      const change = (slope: number, step: number) => 1 / (1 + Math.exp(-(at + step * slope))) - share
      const effects = fitted.flatMap((term, place): readonly TermEffect[] => {
        const slope = fit.slopes[place + levels.length], step = STEP[term]
        if (!slope) return []
        if (!Number.isFinite(at)) return wanting([term], 'unsettled')
        return [effectOf(term, change(slope.value, step), slope.interval && spanned(change(slope.interval.low, step), change(slope.interval.high, step)), slope.p)]
      })
      return answer([...aside, ...effects], fit.how, fit.extra)
    } else if (fit.kind === 'few') {
      aside = [...aside, ...wanting(fitted.slice(-1), 'too-few')]
      fitted = fitted.slice(0, -1)
    } else return answer([...aside, ...wanting(fitted, 'unsettled')], null, null)
  }
  return answer(aside, null, null)
}

/**
 * Are birds lighter, or hens worse layers, the closer they are bred?
 *
 *     ȳ_family − ȳ_class = Σ b·(x_family − x̄_class) + rest
 *
 * by least squares inside classes of contemporaries, a family one row, since birds of one pair share F and more than F; the errors by pairs, however many classes a pair stands in.
 * Where fewer than `TO_SPARE` pairs are left over nothing is said.
 *
 * @see `withinClasses`
 */
export function inbreedingOfMeasures(families: readonly MeasuredFamily[]): InbreedingModel {
  if (families.length < 2) return {effects: wanting(TERMS, 'too-few'), seasons: 'held', how: null, extra: null}
  const answer = (effects: readonly TermEffect[], how: InbreedingModel['how']): InbreedingModel => ({effects: inOrder(effects), seasons: 'held', how, extra: null})
  const terms = TERMS.filter(term => differs(range(families, term, () => 'all')))
  let fitted: readonly Term[] = terms.filter(term => differs(range(families, term, ({group}) => group)))
  let aside = TERMS.flatMap(term => (fitted.includes(term) ? [] : wanting([term], terms.includes(term) ? 'tied' : 'alike')))
  while (fitted.length > 0) {
    const fit = withinClasses(families.map(({value, blood, group, pair}) => ({group, family: pair, y: value, x: fitted.map(term => blood[term])})))
    if (fit.kind === 'dependent') {
      const tied = fitted.filter((_, place) => fit.columns.includes(place))
      aside = [...aside, ...wanting(tied, 'tied')]
      fitted = fitted.filter(term => !tied.includes(term))
    } else if (fit.kind === 'few') {
      aside = [...aside, ...wanting(fitted.slice(-1), 'too-few')]
      fitted = fitted.slice(0, -1)
    } else if (!spare(fit.freedom)) return answer([...aside, ...wanting(fitted, 'too-few')], null)
    else {
      const effects = fitted.flatMap((term, place) => {
        const found = fit.coefficients[place], step = STEP[term]
        return found ? [effectOf(term, step * found.value, found.p === null ? null : spanned(step * found.interval.low, step * found.interval.high), found.p)] : []
      })
      return answer([...aside, ...effects], 'least-squares')
    }
  }
  return answer(aside, null)
}
