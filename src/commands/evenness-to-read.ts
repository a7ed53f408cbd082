/** Trends, changes and grades as a reader on a terminal wants them: the counts and limits in a table, what may be said of them in words beneath. The other formats have all of it. */
import type {FiguresTable} from '../findings/figures.ts'
import type {GradedScores} from '../findings/graded-scores.ts'
import type {JudgedBy} from '../findings/judged-chicks.ts'
import type {ChangeOfSpread} from '../findings/spread-change.ts'
import type {ChangeOfShare, StepChange} from '../findings/step-change.ts'
import type {ShareOverSteps, SpreadOverSteps, Trends} from '../findings/trends.ts'
import type {TrueBredPart} from '../findings/true-bred-parts.ts'
import type {Interval} from '../statistics/interval.ts'
import {figured, limitsShort, listWords, NOTHING, ofWords, percent, percentSign, rounded, signed} from '../pages/numbers.ts'
import type {ToRead} from './forecast-to-read.ts'

const text = (names: readonly string[], rows: readonly (readonly (string | null)[])[]): FiguresTable => ({columns: names.map(name => ({name, as: 'text'})), rows})
const subject = (by: JudgedBy): string => (by === 'true-bred' ? 'true-bred' : by.id)
const plainly = (verdict: string): string => verdict.replaceAll('-', ' ')
const shareLimits = (interval: Interval | null | undefined): string | null => (interval ? limitsShort(interval) : null)
const points = (share: number): string => `${signed(percent(share))} points`
const range = (low: string, high: string): string => `(${low.replace('-', '−')} to ${high.replace('-', '−')})`
const pWords = (p: number): string => (p < 0.001 ? 'P under 0.001' : `P ${rounded(p, 3)}`)
const FAMILIES = 'The families’ interval is the one for a committee: it speaks of birds bred like these.\nUnder five sire families there is none, and the plain one speaks of these chicks only.\n'

export function trendToRead({shares, spreads}: Trends, parts: readonly TrueBredPart[]): ToRead {
  return {
    above: '',
    table: text(['of', 'sex', 'step', 'right', 'share, CV', '95%', 'families', 'their 95%'], [
      ...shares.flatMap(({by, steps}) => [
        ...steps.map(({step, ...at}) => [subject(by), 'all', step, ...shareWords(at)]),
        ...(by === 'true-bred' ? parts.filter(({of, share}) => of !== 'pen' && share.kind === 'share').map(({name, sex, ...part}) => [subject(by), sex, name, ...shareWords(part)]) : []),
      ]),
      ...spreads.flatMap(({trait, sex, steps}) => steps.map(({step, spread, families}) => [
        trait.id, sex, step, spread.kind === 'spread' ? `${spread.n} birds` : 'no class of five', spread.kind === 'spread' ? percentSign(spread.cv) : null,
        spread.kind === 'spread' ? shareLimits(spread.cvInterval) : null, families > 0 ? String(families) : null, null,
      ])),
    ]),
    beneath: shares.length + spreads.length === 0 ? '' : `\n${[...shares.map(shareTrendWords), ...spreads.map(spreadTrendWords)].join('\n')}\n\n${FAMILIES}Pens, and the limits of Clopper and Pearson, with --format csv or json.\n`,
  }
}

const shareWords = ({share, family}: Pick<TrueBredPart, 'share' | 'family'>): (string | null)[] => (share.kind === 'cannot-say' ? ['none judged', null, null, null, null] : [
  ofWords(share.count, share.total), percentSign(share.value), limitsShort(share.interval), family ? String(family.families) : null, family?.kind === 'families' ? limitsShort(family) : null,
])

/** What a trend is of, and the steps it runs over; where there is none, that there is none. */
function headWords(of: string, steps: readonly {readonly step: string; readonly inTrend: boolean}[], verdict: string): string {
  const running = steps.filter(({inTrend}) => inTrend).map(({step}) => step)
  return running.length === 0 ? `${of}: no step mated inside the line has a figure yet` : `${of}, over ${running.length > 3 ? `${running.length} steps, ${running[0] ?? ''} to ${running.at(-1) ?? ''}` : listWords(running)}: ${plainly(verdict)}`
}

function shareTrendWords({by, steps, plain, families, speaksOf, verdict}: ShareOverSteps): string {
  const head = headWords(subject(by), steps, verdict)
  if (plain.slope === null || plain.how === 'none') return `${head}.`
  const read = families.kind === 'families' ? families : null
  return `${head}; ${points(read?.slope ?? plain.slope)} a step${read ? ` ${range(percent(read.interval.low), percent(read.interval.high))}` : ''}, ${pWords(read?.p ?? plain.p)}${read ? '' : plain.how === 'exact' ? ', exact' : ''}, ${speaksOf === 'families' ? 'of birds bred like these' : 'of these chicks only'}.`
}

function spreadTrendWords({trait, sex, steps, order, slope, apart, verdict}: SpreadOverSteps): string {
  const often = order.kind === 'tested' && verdict === 'too-few-steps' ? ` (so few cannot give a P under ${rounded(order.smallestP, 2)})` : ''
  return `${headWords(`${trait.id}, ${sex}, CV`, steps, verdict)}${often}${slope ? `; ${points(slope.slope)} a step${slope.interval ? ` ${range(percent(slope.interval.low), percent(slope.interval.high))}` : ''}` : ''}${apart.kind === 'compared' ? `; whether the steps are equally even: ${pWords(apart.p)}` : ''}.`
}

export function changeToRead({from, to, outside, siresOfBoth, shares, spreads, marks}: StepChange): ToRead {
  const rows = [
    ...shares.map(change => [subject(change.by), 'all', ofWords(change.from.count.k, change.from.count.n), ofWords(change.to.count.k, change.to.count.n), ...differenceWords(change)]),
    ...spreads.map(change => [change.trait.id, change.sex, evenWords(change.from), evenWords(change.to), ratioWords(change), change.correctedP === null ? null : `${pWords(change.correctedP)} ${change.speaksOf === 'families' ? 'by families' : 'of these chicks only'}`, plainly(change.verdict)]),
    ...marks.map(({trait, sex, from: one, to: other, test, shift, correctedP, verdict}) => [
      trait.id, sex, gradeWords(one), gradeWords(other), shift && `${signed(rounded(shift.shift, 1))}${shift.interval && correctedP !== null ? ` ${range(rounded(shift.interval.low, 1), rounded(shift.interval.high, 1))}` : ''}`,
      test.kind === 'compared' ? `${correctedP === null ? 'these chicks only' : `${pWords(correctedP)} by families`}, higher in ${percentSign(test.superiority)}` : null, plainly(verdict),
    ]),
  ]
  const kin = siresOfBoth > 0 ? `${figured(siresOfBoth, 'bird')} may have sired chicks of both steps: what is said by families is then surer than it should be.\n` : ''
  const plan = outside.length > 0 ? `${listWords(outside)} ${outside.length === 1 ? 'was' : 'were'} not mated inside the line: shares then change by plan, and evenness may.\n` : ''
  return {
    above: '', table: text(['of', 'sex', from, to, 'change', '', 'verdict'], rows),
    beneath: rows.length === 0 ? '' : `\nShares in points, with 95% limits; of measures the ratio of the CVs; of grades the shift, and how often a chick of the later\nstep is graded above one of its sex of the earlier, ties counting half. P of measures is of how far birds stray from their mates, which an\nodd bird hardly sways; it may sway the ratio. P of measures and of grades is corrected for how many of them were compared. Under five\nfamilies measures are compared bird by bird, and grades have no verdict.\n${FAMILIES}Where nothing has changed, one verdict in twenty errs.\n${plan}${kin}`,
  }
}

function differenceWords({plain, byFamilies, speaksOf, verdict}: ChangeOfShare): (string | null)[] {
  const read = speaksOf === 'families' ? byFamilies : plain
  return read ? [`${points(read.difference)} ${range(percent(read.low), percent(read.high))}`, speaksOf === 'families' ? 'birds bred like these' : 'these chicks only', plainly(verdict)] : [null, null, plainly(verdict)]
}

function evenWords({spread, measured}: ChangeOfSpread['from']): string {
  if (spread?.kind === 'spread') return `CV ${percentSign(spread.cv)}, ${figured(spread.n, 'bird')}`
  return measured === 0 ? 'none measured' : `${measured}, no class of five`
}

function ratioWords({variations}: ChangeOfSpread): string | null {
  return variations && `${rounded(variations.ratio, 2)} times (${rounded(variations.interval.low, 2)} to ${rounded(variations.interval.high, 2)})`
}

const gradeWords = ({scored, middle}: StepChange['marks'][number]['from']): string => (middle ? `median ${middle.is.join(' to ')}, ${figured(scored, 'chick')}` : 'none graded')

export function scoresToRead({steps, agreements}: GradedScores): ToRead {
  const agreed = agreements.map(({trait, between, names, birds, same, higher, lower, kappa, leftOut}) => {
    const whose = between === 'scorers' ? listWords(names) : `the book and judges (${names.join(', ')})`
    const aside = leftOut > 0 ? `; ${figured(leftOut, 'bird')} of the sheets left out` : ''
    if (birds === 0) return `${trait.id}, ${whose}: no bird graded by both${aside}.`
    const far = kappa ? `kappa ${rounded(kappa.kappa, 2).replace('-', '−')}${kappa.interval ? ` ${range(rounded(kappa.interval.low, 2), rounded(kappa.interval.high, 2))}` : ', no interval'}` : 'kappa cannot be told, one grade for all'
    return `${trait.id}, ${whose}: the same grade to ${ofWords(same, birds)}, the second higher in ${higher} and lower in ${lower}; ${far}${aside}.`
  })
  return {
    above: '',
    table: text(['trait', 'step', 'sex', 'graded', 'grades', 'median', 'at the mark', '95%'], steps.map(({trait, step, sex, scored, grades, middle, asWanted}) => [
      trait.id, step, sex, String(scored), grades.filter(({share}) => share.count > 0).map(({is, share}) => `${share.count} × ${is}`).join(', '), middle.is.join(' to '),
      asWanted.kind === 'share' ? `${ofWords(asWanted.count, asWanted.total)}, ${percentSign(asWanted.value)}` : NOTHING, asWanted.kind === 'share' ? limitsShort(asWanted.interval) : null,
    ])),
    beneath: agreed.length === 0 ? '' : `\n${agreed.join('\n')}\nKappa is 1 where two agree in all and 0 where they agree no more than by chance; a miss by one grade counts less than one by many.\n`,
  }
}
