import type {Interval} from '../statistics/interval.ts'
import type {FigureColumn, FiguresTable} from './figures.ts'
import type {GradedScores} from './graded-scores.ts'
import type {JudgedBy} from './judged-chicks.ts'
import type {ChangeOfSpread} from './spread-change.ts'
import type {StepChange} from './step-change.ts'
import type {Findings} from './study.ts'
import type {TrueBredPart} from './true-bred-parts.ts'
import type {ShareOverSteps, SpeaksOf, SpreadOverSteps} from './trends.ts'

/** The questions of `pinfeather figures` on whether the steps grow truer and more even. */
export const EVENNESS_QUESTIONS = ['trend', 'change', 'scores'] as const
export type EvennessQuestion = (typeof EVENNESS_QUESTIONS)[number]

type Cell = string | number | null
type Cells = Readonly<Record<string, Cell>>
const columns = (as: FigureColumn['as'], ...names: string[]): FigureColumn[] => names.map(name => ({name, as}))
const yes = (is: boolean): string => (is ? 'yes' : 'no')

/** Rows that say only what they have to say: every other cell is null. */
const tableOf = (of: readonly FigureColumn[], rows: readonly Cells[]): FiguresTable => ({columns: of, rows: rows.map(row => of.map(({name}) => row[name] ?? null))})
/** Columns whose cells are shares in some rows and measures in others, by what stands in the first column. */
const either = (isShare: (what: Cell) => boolean, ...names: string[]): FigureColumn[] => names.map(name => ({name, as: 'measure', asIn: row => (isShare(row[0] ?? null) ? 'share' : 'measure')}))

const HOW_TREND = {none: null, exact: 'Cochran–Armitage, exact', asymptotic: 'Cochran–Armitage, normal curve'} as const
const HOW_RANKS = {exact: 'van Elteren’s rank test, exact', asymptotic: 'van Elteren’s rank test, normal curve'} as const
const SPEAKS: Readonly<Record<SpeaksOf, string>> = {families: 'birds bred like these', 'these-chicks': 'these chicks only'}
/** The codes of verdicts are plain words joined by hyphens. */
const plainly = (verdict: string): string => verdict.replaceAll('-', ' ')
const named = (by: JudgedBy): Cells => (by === 'true-bred' ? {what: 'true-bred', trait: null} : {what: 'look', trait: by.id})
const ends = (interval: Interval | null | undefined, low: string, high: string): Cells => (interval ? {[low]: interval.low, [high]: interval.high} : {})

const TREND = [
  ...columns('text', 'row', 'what', 'trait', 'sex', 'step', 'inter_se', 'in_trend'), ...columns('count', 'count', 'total'), ...columns('share', 'value', 'low', 'high', 'exact_low', 'exact_high'),
  ...columns('count', 'families'), ...columns('share', 'family_low', 'family_high'), ...columns('count', 'left_out'), ...columns('share', 'slope', 'slope_low', 'slope_high'), ...columns('measure', 'statistic'),
  ...columns('share', 'p', 'family_p', 'smallest_p'), ...columns('text', 'method', 'speaks_of', 'verdict'),
]

/** Of each share and each measure one row a step, then one of its trend; of a measure one more, of whether the steps differ at all. Last the true-bred rate by sex, pen and last seasons. */
export const trendTable = ({trends, trueBredParts}: Findings): FiguresTable => tableOf(TREND, [...trends.shares.flatMap(shareRows), ...trends.spreads.flatMap(spreadRows), ...trueBredParts.map(partRow)])

function shareRows({by, steps, plain, families, speaksOf, verdict}: ShareOverSteps): Cells[] {
  const running = steps.filter(({inTrend}) => inTrend), counts = running.flatMap(({share}) => (share.kind === 'share' ? [share] : []))
  const sum = (of: 'count' | 'total'): number => counts.reduce((all, share) => all + share[of], 0)
  return [
    ...steps.map(({step, interSe, inTrend, share, exact, family, leftOut}) => ({
      row: 'step', ...named(by), sex: 'all', step, inter_se: yes(interSe), in_trend: yes(inTrend), ...shareCells({share, exact, family, leftOut}),
    })),
    {
      row: 'trend', ...named(by), sex: 'all', step: between(running.map(({step}) => step)), in_trend: 'yes', count: sum('count'), total: sum('total'), families: families.families,
      slope: plain.slope, ...(families.kind === 'families' ? {...ends(families.interval, 'slope_low', 'slope_high'), family_p: families.p} : {}),
      statistic: plain.z, p: plain.how === 'none' ? null : plain.p, method: HOW_TREND[plain.how], speaks_of: running.length === 0 ? null : SPEAKS[speaksOf], verdict: plainly(verdict),
    },
  ]
}

function shareCells({share, exact, family, leftOut}: Pick<TrueBredPart, 'share' | 'exact' | 'family' | 'leftOut'>): Cells {
  return {
    left_out: leftOut, families: family?.families ?? 0,
    ...(share.kind === 'share' ? {count: share.count, total: share.total, value: share.value, ...ends(share.interval, 'low', 'high'), method: share.method} : {count: 0, total: 0}),
    ...ends(exact, 'exact_low', 'exact_high'), ...(family?.kind === 'families' ? ends(family, 'family_low', 'family_high') : {}), speaks_of: family && SPEAKS[family.kind],
  }
}

const partRow = ({of, name, sex, ...part}: TrueBredPart): Cells => ({row: of === 'sex' ? 'step' : of, what: 'true-bred', sex, step: name, in_trend: 'no', ...shareCells(part)})

const between = (steps: readonly string[]): string | null => {
  const first = steps[0] ?? null, last = steps.at(-1) ?? null
  return first === last ? first : `${first ?? ''} to ${last ?? ''}`
}

function spreadRows({trait, sex, steps, order, slope, apart, verdict}: SpreadOverSteps): Cells[] {
  const shape = {what: 'CV', trait: trait.id, sex}, running = steps.filter(({inTrend}) => inTrend)
  const all = {total: running.reduce((sum, {spread}) => sum + (spread.kind === 'spread' ? spread.n : 0), 0), in_trend: 'yes', step: between(running.map(({step}) => step))}
  return [
    ...steps.map(({step, interSe, inTrend, spread, families}) => ({
      row: 'step', ...shape, step, inter_se: yes(interSe), in_trend: yes(inTrend), families, left_out: spread.leftOut.reduce((sum, {count}) => sum + count, 0),
      ...(spread.kind === 'spread' ? {total: spread.n, value: spread.cv, ...ends(spread.cvInterval, 'low', 'high'), method: spread.method} : {total: 0, method: `a class of ${spread.need} wanted, the largest has ${spread.have}`}),
    })),
    {
      row: 'trend', ...shape, ...all, slope: slope?.slope ?? null, ...ends(slope?.interval, 'slope_low', 'slope_high'), verdict: plainly(verdict),
      ...(order.kind === 'tested' ? {statistic: order.s, p: order.p, smallest_p: order.smallestP, method: `Mann–Kendall, ${order.how === 'exact' ? 'exact' : 'normal curve'}; Sen’s slope`} : {}),
    },
    ...(running.length < 2 ? [] : [{row: 'steps apart', ...shape, ...all, ...(apart.kind === 'compared' ? {statistic: apart.f, p: apart.p} : {}), method: 'Brown–Forsythe'}]),
  ]
}

const isShareOfChange = (what: Cell): boolean => what === 'true-bred' || what === 'look' || what === 'evenness'
const CHANGE = [
  ...columns('text', 'what', 'trait', 'sex', 'from_step', 'to_step'), ...columns('count', 'from_count', 'from_total', 'to_count', 'to_total', 'from_families', 'to_families', 'sires_of_both'),
  ...either(what => isShareOfChange(what) || what === 'CV ratio', 'from', 'to'), ...either(isShareOfChange, 'change', 'low', 'high'), ...columns('share', 'family_low', 'family_high'),
  ...columns('measure', 'statistic'), ...columns('share', 'p', 'corrected_p'), ...columns('text', 'method', 'speaks_of', 'verdict'),
]

/** Shares first, then each measure with its test and the two ratios, then grades. */
export function changeTable({from, to, siresOfBoth, shares, spreads, marks}: StepChange): FiguresTable {
  const steps = {from_step: from, to_step: to, sires_of_both: siresOfBoth}
  return tableOf(CHANGE, [
    ...shares.map(({by, from: one, to: other, plain, byFamilies, speaksOf, verdict}) => ({
      ...named(by), sex: 'all', ...steps, from_count: one.count.k, from_total: one.count.n, to_count: other.count.k, to_total: other.count.n, from_families: one.families, to_families: other.families,
      from: one.count.n === 0 ? null : one.count.k / one.count.n, to: other.count.n === 0 ? null : other.count.k / other.count.n, change: plain?.difference ?? null, ...ends(plain, 'low', 'high'),
      ...(byFamilies?.kind === 'families' ? ends(byFamilies, 'family_low', 'family_high') : {}), method: plain && 'Newcombe’s hybrid score interval', speaks_of: plain && SPEAKS[speaksOf], verdict: plainly(verdict),
    })),
    ...spreads.flatMap(change => spreadChangeRows(change, steps)),
    ...marks.map(({trait, sex, from: one, to: other, test, shift, byFamilies, correctedP, speaksOf, verdict}) => ({
      what: 'grade', trait: trait.id, sex, ...steps, from_total: one.scored, to_total: other.scored, from_families: one.families, to_families: other.families,
      from: one.middle?.place ?? null, to: other.middle?.place ?? null, change: shift?.shift ?? null, ...ends(shift?.interval, 'low', 'high'), verdict: plainly(verdict),
      ...(test.kind === 'compared' ? {statistic: test.superiority, p: byFamilies?.p ?? test.p, corrected_p: correctedP, method: byFamilies ? 'placements, by sire families' : HOW_RANKS[test.how], speaks_of: SPEAKS[speaksOf]} : {}),
    })),
  ])
}

function spreadChangeRows({trait, sex, from, to, test, p, correctedP, speaksOf, variances, variations, verdict}: ChangeOfSpread, steps: Cells): Cells[] {
  const counted = (of: ChangeOfSpread['from']): number => (of.spread?.kind === 'spread' ? of.spread.n : 0)
  const sd = ({spread}: ChangeOfSpread['from']): Cell => (spread?.kind === 'spread' ? spread.sd : null), cv = ({spread}: ChangeOfSpread['from']): Cell => (spread?.kind === 'spread' ? spread.cv : null)
  const shape = {trait: trait.id, sex, ...steps, from_total: counted(from), to_total: counted(to), from_families: from.families, to_families: to.families}
  return [
    {
      what: 'evenness', ...shape, from: from.straying, to: to.straying, change: from.straying === null || to.straying === null ? null : to.straying - from.straying,
      ...(test?.kind === 'compared' ? {statistic: test.f, p, corrected_p: correctedP, speaks_of: SPEAKS[speaksOf]} : {}), method: test ? (speaksOf === 'families' ? 'Brown–Forsythe, by sire families' : 'Brown–Forsythe') : 'a class of five wanted in both steps', verdict: plainly(verdict),
    },
    ...(variances ? [{what: 'variance ratio', ...shape, from: sd(from), to: sd(to), change: variances.ratio, ...ends(variances.interval, 'low', 'high'), p: variances.p, method: 'F'}] : []),
    ...(variations ? [{what: 'CV ratio', ...shape, from: cv(from), to: cv(to), change: variations.ratio, ...ends(variations.interval, 'low', 'high'), p: variations.p, method: 'F, McKay'}] : []),
  ]
}

const SCORES = [
  ...columns('text', 'what', 'trait', 'step', 'sex', 'is'), ...columns('count', 'count', 'total'), ...columns('share', 'share', 'low', 'high'), ...columns('measure', 'value', 'value_low', 'value_high'),
  ...columns('count', 'second_higher', 'second_lower', 'left_out'), ...columns('text', 'method'),
]

/** Of each trait, step and sex the grades, the middle one and the share at the mark; then, over the whole book, who agrees with whom. */
export function scoresTable({steps, agreements}: GradedScores): FiguresTable {
  return tableOf(SCORES, [
    ...steps.flatMap(({trait, step, sex, scored, grades, middle, asWanted, leftOut}): Cells[] => {
      const shape = {trait: trait.id, step, sex}
      return [
        ...grades.map(({is, share}) => ({what: 'grade', ...shape, is: String(is), count: share.count, total: share.total, share: share.value, ...ends(share.interval, 'low', 'high'), method: share.method})),
        {what: 'median', ...shape, is: middle.is.join(' to '), total: scored, value: middle.place, left_out: leftOut},
        ...(asWanted.kind === 'share' ? [{what: 'at the mark', ...shape, count: asWanted.count, total: asWanted.total, share: asWanted.value, ...ends(asWanted.interval, 'low', 'high'), left_out: scored - asWanted.total + leftOut, method: asWanted.method}] : []),
      ]
    }),
    ...agreements.map(({trait, between: who, names, birds, same, higher, lower, kappa, leftOut}) => ({
      what: who === 'scorers' ? 'two scorers' : 'book and judges', trait: trait.id, is: names.join(' and '), count: same, total: birds, share: birds === 0 ? null : same / birds, value: kappa?.kappa ?? null,
      ...ends(kappa?.interval, 'value_low', 'value_high'), second_higher: higher, second_lower: lower, left_out: leftOut, method: kappa && 'kappa, linear weights',
    })),
  ])
}
