/** What inbreeding costs and what crosses gain, in short sentences. */
import type {CrossOfLines, Line} from '../findings/crosses.ts'
import type {Depression} from '../findings/depression.ts'
import type {JudgedEffect} from '../findings/depression-verdicts.ts'
import type {Interval} from '../findings/estimate.ts'
import type {Findings} from '../findings/study.ts'
import type {Project} from '../logbook/book.ts'
import {difference, differenceLimits, pointLimits, points, size} from './difference-words.ts'
import {figured, listWords, ofWords, percentSign, rounded, signed} from './numbers.ts'

type Units = Project['units']

/** What may be lost, as a row's head has it. */
const OUTCOME_NAMES = {'hatch of fertile': 'Hatch of fertile eggs', 'hatch of set': 'Hatch of eggs set', livability: 'Life to eight weeks', weight: 'Weight', eggs: 'Eggs in 100 days'} as const
export const outcomeName = ({outcome, trait}: Pick<Depression, 'outcome' | 'trait'>): string => trait?.name ?? OUTCOME_NAMES[outcome]

/** As a table's cell has it. */
export const VERDICT_WORDS: Readonly<Record<JudgedEffect['verdict'], string>> = {harm: 'harm', 'may-be-chance': 'may be chance', 'cannot-tell': 'cannot tell', little: 'less than others found', 'no-harm': 'no harm'}

/** `−2.6 points`, `+30 g`, `−9.3 eggs` */
export function changeWords(of: Pick<Depression, 'unit' | 'trait'>, value: number, units: Units): string {
  if (of.unit === 'points') return `${points(value)} ${points(value) === '+1.0' || points(value) === '−1.0' ? 'point' : 'points'}`
  return of.trait ? difference(value, of.trait, units) : `${signed(rounded(value, 1))} eggs`
}
/** `−61.1 to +7.6` */
export function changeLimits(of: Pick<Depression, 'unit' | 'trait'>, interval: Interval, units: Units): string {
  if (of.unit === 'points') return pointLimits(interval)
  return of.trait ? differenceLimits(interval, of.trait, units) : `${signed(rounded(interval.low, 1))} to ${signed(rounded(interval.high, 1))}`
}
/** A loss without its sign: `61.1 points` */
export const lossSize = (of: Pick<Depression, 'unit' | 'trait'>, loss: number, units: Units): string => (of.unit === 'points' || !of.trait ? changeWords(of, loss, units).replace(/^[+−]/, '') : size(loss, of.trait, units))

/** `429 of 544 in 30 hatches of 28 pairs`, `148 birds of 46 pairs` */
function behindWords({outcome, count, n, groups, pairs}: Depression): string {
  if (count !== null) return `${ofWords(count, n)} in ${figured(groups, 'hatch', 'hatches')} of ${figured(pairs, 'pair')}`
  return `${figured(n, outcome === 'eggs' ? 'hen' : 'bird')} of ${figured(pairs, 'pair')}`
}

/** Why there is no effect of something. */
export const WANTING_WORDS = {alike: 'hardly differs', tied: 'goes with season, hatch or what stands above it', 'too-few': 'too few to say', unsettled: 'no fit was found'} as const

/** What ten points of F of the chick cost in one thing, or why nobody can say. */
function outcomeWords(of: Depression, {depressionVerdicts: {judged, tests}}: Findings, units: Units): string {
  const own = judged.find(each => each.of === of && each.effect.term === 'chickF'), behind = behindWords(of)
  if (!own) {
    const none = of.effects.find(({term}) => term === 'chickF')
    if (none?.kind === 'cannot-say' && none.why === 'too-few') return `${outcomeName(of)}: too few to say (${behind}).`
    return `${outcomeName(of)}: nothing can be said${none?.kind === 'cannot-say' ? `, F of the chick: ${WANTING_WORDS[none.why]}` : ''} (${behind}).`
  }
  const {effect, verdict, mostLost, beside} = own, found = `${changeWords(of, effect.change, units)}${effect.interval ? ` (${changeLimits(of, effect.interval, units)})` : ''}`
  const others = beside === 'less' && verdict !== 'little' ? ' Less than others found.' : beside === 'more' ? ' More than others found.' : ''
  const said = {
    harm: `harm, ${found} for ten points more of F`, 'may-be-chance': `${found} for ten points more of F, though among ${figured(tests, 'test')} that may be chance`,
    'cannot-tell': `the records cannot tell${mostLost === null ? '' : `, and a loss of up to ${lossSize(of, mostLost, units)} is not excluded`}`,
    little: `no loss as great as others found${mostLost === null ? '' : `, at most ${lossSize(of, mostLost, units)}`} for ten points more of F`, 'no-harm': `no harm, ${found} for ten points more of F`,
  }[verdict]
  return `${outcomeName(of)}: ${said}; ${behind}.${others}`
}

/** Outcomes of which anything is on record. */
export const onRecord = ({depression}: Findings): readonly Depression[] => depression.filter(({n, leftOut}) => n + leftOut > 0)

/** Is inbreeding costing us? In one sentence. */
export function inbreedingVerdict(findings: Findings): string {
  const judged = findings.depressionVerdicts.judged.filter(({effect}) => effect.term === 'chickF' || effect.term === 'damF')
  const named = (verdict: JudgedEffect['verdict']) => listWords([...new Set(judged.filter(each => each.verdict === verdict).map(({of}) => outcomeName(of).toLowerCase()))])
  const harm = named('harm'), perhaps = named('may-be-chance')
  if (judged.length === 0) return 'Whether inbreeding costs anything cannot be said yet: too few hatches of parents that differ in kinship.'
  if (harm !== '') return `Inbreeding costs: ${harm}.`
  if (perhaps !== '') return `Inbreeding may cost in ${perhaps}, yet among so many tests that may be chance: the records cannot tell.`
  const little = named('little'), chicks = judged.filter(({effect}) => effect.term === 'chickF'), open = listWords([...new Set(chicks.filter(({verdict}) => verdict === 'cannot-tell').map(({of}) => outcomeName(of).toLowerCase()))])
  if (little !== '') return `In ${little} no loss as great as others found shows${open === '' ? '' : `; of ${open} the records cannot tell`}.`
  return judged.every(({verdict}) => verdict === 'no-harm') ? 'No harm from inbreeding is found.' : 'The records cannot tell whether inbreeding costs anything.'
}

/** One sentence an outcome: what ten points more of F of the chick go with. */
export const inbreedingWords = (findings: Findings): readonly string[] => onRecord(findings).map(of => outcomeWords(of, findings, findings.book.project.units))

export const lineName = ({strain, step}: Line): string => strain?.name ?? step ?? ''

/** One cross in one trait: how far it stands above the mean of its two lines, or what is wanting. */
export function crossWords({lines: [one, other], trait, found, birds, classes, families}: CrossOfLines): string {
  const cross = `${lineName(one)} × ${lineName(other)}, ${trait.name.toLowerCase()}`, behind = `${birds.cross} of the cross, ${birds.one} ${lineName(one)}, ${birds.other} ${lineName(other)}`
  if (found === null) return `${cross}: cannot be said, ${classes === 0 ? 'for no chicks of the cross and of both lines were reared together and measured' : 'for one of them has too few birds, or all are alike'} (${behind}).`
  const {heterosis, interval} = found, verdict = interval.low > 0 ? 'better than the mean of its lines' : interval.high < 0 ? 'worse than the mean of its lines' : 'the records cannot tell'
  return `${cross}: ${signed(percentSign(heterosis))} (${pointLimits(interval)}), ${verdict}; ${behind}${families ? `, ${families.speaksOf}` : ''}.`
}

/** Crosses whose chicks are of this step: for its summary. */
export const crossesOf = ({crosses}: Findings, step: string): readonly CrossOfLines[] => crosses.filter(({steps}) => steps.includes(step))
