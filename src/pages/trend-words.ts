/** Is the line getting truer and more even, step by step? What the steps mated inside the line show, in a sentence each and a table. */
import type {Findings} from '../findings/study.ts'
import type {ShareOverSteps, SpreadOverSteps, TrendVerdict} from '../findings/trends.ts'
import {pWords} from './chance-words.ts'
import {traitPath} from './links.ts'
import {counted, listWords, NOTHING, percent, sentence, signed, sizeRange} from './numbers.ts'
import type {Cell, Table} from './page.ts'
import {SEX_ROWS} from './sex-words.ts'

export interface TrendView {
  readonly words: readonly string[]
  readonly table: Table | null
}

const running = <At extends {readonly inTrend: boolean}>(steps: readonly At[]): readonly At[] => steps.filter(({inTrend}) => inTrend)
const VERDICT: Readonly<Record<TrendVerdict, string>> = {rises: 'rises', falls: 'falls', 'cannot-tell': 'cannot be told', 'all-alike': 'all alike', 'too-few-steps': 'too few steps'}

/** `+27.1 points a step (10.2 to 40.0), P 0.012`; the families' where they speak */
function slopeWords({plain, families}: ShareOverSteps): string {
  const read = families.kind === 'families' ? families : null, slope = read?.slope ?? plain.slope
  if (slope === null || plain.how === 'none') return NOTHING
  return `${signed(percent(slope))} points a step${read ? ` (${sizeRange(percent(read.interval.low), percent(read.interval.high))}), by families` : ''}, ${pWords(read?.p ?? plain.p)}`
}

function shareSentence(row: ShareOverSteps): string {
  const steps = running(row.steps).map(({step}) => step), [first] = steps, over = steps.length > 3 ? `${counted(steps.length, 'step')}, ${first ?? ''} to ${steps.at(-1) ?? ''}` : listWords(steps)
  if (steps.length < 2) return first === undefined ? 'No step mated inside the line has been scored for all that is required yet.' : `Only ${first} was mated inside the line and scored so far; whether the line gets truer takes two such steps.`
  const these = row.speaksOf === 'families' ? 'said of birds bred like these' : 'said of these chicks only, for want of sire families'
  switch (row.verdict) {
    case 'rises': case 'falls': return `Over ${over} the line gets ${row.verdict === 'rises' ? 'truer' : 'less true'}: ${slopeWords(row)}, ${these}.`
    case 'all-alike': return `Over ${over} all chicks are alike.`
    case 'too-few-steps': case 'cannot-tell': return `Whether the line gets truer over ${over} cannot be told: ${slopeWords(row)}, ${these}.`
  }
}

/** Empty of a measure that one sex alone has. */
const ofSex = ({sex, trait}: SpreadOverSteps): string => (sex === 'all' ? ' of both sexes' : trait.seenIn === null ? ` of ${SEX_ROWS[sex]}` : '')
const nameOf = (row: SpreadOverSteps): string => `${row.trait.name.toLowerCase()}${row.sex === 'all' ? '' : ofSex(row)}`

/** Of each measure the row that compares like with like, as from one step to the next: both sexes where every step of the trend has both, else each sex by itself. */
function spreadsOverToTell(spreads: readonly SpreadOverSteps[]): readonly SpreadOverSteps[] {
  const labels = (row: SpreadOverSteps | undefined): string => running(row?.steps ?? []).map(({step}) => step).join(' ')
  return [...new Set(spreads.map(({trait}) => trait))].flatMap(trait => {
    const [male, female, both] = (['male', 'female', 'all'] as const).map(sex => spreads.find(row => row.trait === trait && row.sex === sex))
    const told = both && labels(male) === labels(both) && labels(female) === labels(both) ? [both] : [male, female].filter(row => row !== undefined)
    return told.filter(({steps}) => running(steps).length >= 2)
  })
}

function evenSentence(rows: readonly SpreadOverSteps[]): string {
  if (rows.length === 0) return ''
  const of = (verdict: TrendVerdict): string => listWords(rows.filter(row => row.verdict === verdict).map(nameOf))
  const [falls, rises, few, open] = [of('falls'), of('rises'), of('too-few-steps'), of('cannot-tell')]
  return sentence([
    ...(falls === '' ? [] : [`it gets more even in ${falls}`]), ...(rises === '' ? [] : [`it gets less even in ${rises}`]), ...(open === '' ? [] : [`whether more even in ${open} cannot be told`]),
    ...(few === '' ? [] : [`whether it gets more even in ${few} cannot be told by so few steps: under five, chance alone could put them in any order`]),
  ].join('; '))
}

/** Null while no step was mated inside the line. */
export function trendView({trends: {shares, spreads}, ladder}: Findings): TrendView | null {
  const inside = ladder.filter(step => step.kind === 'reached' && !step.beside && step.label !== 'mixed' && step.step.interSe >= 1), crosses = ladder.filter(step => step.kind === 'reached' && !step.beside && step.step.interSe < 1 && step.label !== 'mixed').map(({label}) => label)
  const [bred] = shares, even = spreadsOverToTell(spreads)
  if (inside.length === 0 || !bred) return null
  const told = shares.filter(({steps}) => running(steps).length >= 2), said = evenSentence(even)
  const rows: readonly (readonly Cell[])[] = [
    ...told.map((row): readonly Cell[] => [row.by === 'true-bred' ? 'Everything required' : {text: row.by.name, link: traitPath(row.by)}, running(row.steps).map(({share}) => (share.kind === 'share' ? percent(share.value) : NOTHING)).join(', '), slopeWords(row), VERDICT[row.verdict]]),
    ...even.map((row): readonly Cell[] => [{text: `${row.trait.name}${ofSex(row)}, CV`, link: traitPath(row.trait)}, running(row.steps).map(({spread}) => (spread.kind === 'spread' ? percent(spread.cv) : NOTHING)).join(', '),
      row.slope ? `${signed(percent(row.slope.slope))} points a step${row.slope.interval ? ` (${sizeRange(percent(row.slope.interval.low), percent(row.slope.interval.high))})` : ''}` : NOTHING, VERDICT[row.verdict]]),
  ]
  return {
    words: [shareSentence(bred), ...(said === '' ? [] : [`${said}.`]), ...(crosses.length === 0 ? [] : [`${sentence(listWords(crosses))} ${crosses.length === 1 ? 'was a cross' : 'were crosses'}: what share is right in them follows the plan, and is no trend.`])],
    table: rows.length === 0 ? null : {columns: [{head: 'Of the steps inside the line'}, {head: '%, step by step'}, {head: 'Change'}, {head: 'Told'}], rows},
  }
}
