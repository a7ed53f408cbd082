/** Is inbreeding costing us? What ten points more of F go with in hatch, life, weight and eggs, beside what others found; what it would take to tell; and what crosses gain. */
import {axisAround, besideRows} from '../charts/beside-rows.ts'
import {hasRows} from '../charts/chart-spec.ts'
import {percentOf} from '../charts/egg-rows.ts'
import type {Depression} from '../findings/depression.ts'
import type {JudgedEffect, RecordsToTell} from '../findings/depression-verdicts.ts'
import type {Interval} from '../findings/estimate.ts'
import type {Term, TermEffect} from '../findings/inbreeding-model.ts'
import type {Findings} from '../findings/study.ts'
import {LADDER, MALES, VIGOUR} from './links.ts'
import {figured, listWords, NOTHING, percentSign, rounded, sentence, signed} from './numbers.ts'
import type {Cell, Figure, Page, Table} from './page.ts'
import {pointLimits, points} from './difference-words.ts'
import {setAsideWords} from './set-aside-words.ts'
import {changeLimits, changeWords, crossWords, inbreedingVerdict, inbreedingWords, lineName, lossSize, onRecord, outcomeName, VERDICT_WORDS, WANTING_WORDS} from './vigour-words.ts'

export interface VigourView {
  readonly lead: string
  /** why nothing more can be said yet; else empty */
  readonly wanting: string
  readonly caution: {readonly head: string; readonly text: string} | null
  readonly figures: readonly Figure[]
  readonly words: readonly string[]
  readonly notes: readonly string[]
  readonly rest: Table | null
  readonly toTell: readonly string[]
  readonly crosses: {readonly figure: Figure | null; readonly words: readonly string[]; readonly need: string}
  readonly males: string
  readonly ladder: string
}

/** as far as the charts go to either side, in per cent */
const MOST = 40
const REST = ['damF', 'chickH', 'damH'] as const satisfies readonly Term[]
const SHORT: Readonly<Record<(typeof REST)[number], string>> = {damF: 'F of the dam, ten points more', chickH: 'H of the chick, ten less', damH: 'H of the dam, ten less'}
const inPercent = (interval: Interval | null): Interval | null => interval && {low: percentOf(interval.low), high: percentOf(interval.high)}

/** @param shares  of hatch and life, in points; else of what is measured, in per cent of its mean */
function lossFigure(findings: Findings, shares: boolean, head: string): Figure | null {
  const own = findings.depressionVerdicts.judged.flatMap(each => {
    const {of, effect, relative} = each
    return (of.count !== null) === shares && effect.term === 'chickF' && relative ? [{of, each, relative, label: outcomeName(of)}] : []
  })
  const near = own.filter(({relative}) => Math.abs(percentOf(relative.change)) <= MOST), drawn = near.length > 0 ? near : own, left = own.filter(each => !drawn.includes(each))
  const rows = drawn.map(({label, relative}) => ({label, value: percentOf(relative.change), interval: inPercent(relative.interval), band: inPercent(relative.published)}))
  if (!hasRows(rows)) return null
  const numbers = rows.flatMap(({value, interval, band}) => [value, interval?.low ?? 0, interval?.high ?? 0, band?.low ?? 0]), axis = axisAround(numbers, near.length > 0 ? MOST : Infinity)
  const ends = ({label, interval}: (typeof rows)[number]) => (interval === null ? [] : [...(interval.low < axis.from ? [interval.low] : []), ...(interval.high > axis.to ? [interval.high] : [])].map(end => `${label.toLowerCase()} to ${signed(rounded(end, 0))}`))
  const beyond = rows.flatMap(ends), units = findings.book.project.units
  return {
    kind: 'figure', id: shares ? 'hatch-and-life' : 'weight-and-eggs', name: shares ? 'inbreeding-hatch-and-life' : 'inbreeding-weight-and-eggs', head, title: shares ? 'What ten points of F cost in hatch and life' : 'What ten points of F cost in weight and eggs',
    caption: `${shares ? 'Change of the share, in points,' : 'Change, in per cent of the mean,'} with ten points more F of the chick. Egg and line: these records; left of nothing is loss. Outlined: what others found.${beyond.length === 0 ? '' : ` Lines that meet the edge go on: ${listWords(beyond)}.`}${left.length === 0 ? '' : ` Beyond the scale: ${listWords(left.map(({label}) => label.toLowerCase()))}.`}`,
    description: `${sentence(listWords(own.map(({label, relative}) => `${label.toLowerCase()} ${points(relative.change)}${relative.interval ? ` (${pointLimits(relative.interval)})` : ''}`)))}.`, spec: besideRows(rows, axis),
    table: {
      columns: [{head: 'Of'}, {head: 'Change and interval'}, {head: 'Others'}],
      rows: own.map(({of, each: {effect}, label}): readonly Cell[] => [
        label, `${changeWords(of, effect.change, units)}${effect.interval ? ` (${changeLimits(of, effect.interval, units)})` : ''}`,
        of.published ? (of.published.low === of.published.high ? changeWords(of, of.published.low, units) : `${changeLimits(of, of.published, units)}`) : 'none at hand',
      ]),
    },
  }
}

/** What else stood in the model, a row an outcome. */
function restTable(findings: Findings): Table | null {
  const units = findings.book.project.units, judged = new Map<TermEffect, JudgedEffect>(findings.depressionVerdicts.judged.map(each => [each.effect, each]))
  const cell = (of: Depression, effect: TermEffect): string => {
    if (effect.kind === 'cannot-say') return WANTING_WORDS[effect.why]
    const verdict = judged.get(effect)?.verdict
    return `${changeWords(of, effect.change, units)}${effect.interval ? ` (${changeLimits(of, effect.interval, units)})` : ''}${verdict && verdict !== 'cannot-tell' ? `, ${VERDICT_WORDS[verdict]}` : ''}`
  }
  const rows = onRecord(findings).map((of): readonly Cell[] => [outcomeName(of), ...REST.map(term => {
    const effect = of.effects.find(each => each.term === term)
    return effect ? cell(of, effect) : NOTHING
  })])
  // where nothing is told of any of them a table of reasons tells less than a sentence
  return onRecord(findings).every(of => of.effects.every(({term, kind}) => term === 'chickF' || kind === 'cannot-say')) ? null : {columns: [{head: 'Of'}, ...REST.map(term => ({head: SHORT[term]}))], rows}
}

function notes(findings: Findings): readonly string[] {
  const found = onRecord(findings), {tests} = findings.depressionVerdicts, held = found.filter(({seasons, count}) => count !== null && seasons === 'not-held'), spread = found.filter(({extra}) => extra !== null && extra >= 1.05)
  const sources = [...new Set(found.flatMap(({published}) => (published ? [published.source] : [])))]
  return [
    `${restTable(findings) === null ? 'F of the dam and H, which belong in the same model, do not differ enough here, or go with season and hatch' : 'F of the dam and H stand in the same model, each told with the others held'}: H is the chance that the two copies of a gene come from different strains; it falls along a ladder while F rises, and either may cost. ${tests > 1 ? `These are ${figured(tests, 'test')}: harm is called so only with that taken in (Holm).` : ''}`.trim(),
    ...(held.length === 0 ? [] : [`Too few hatches to take the seasons apart in ${listWords(held.map(of => outcomeName(of).toLowerCase()))}, so a good year may pass for good blood.`]),
    ...(spread.length === 0 ? [] : [`Hatches, or pairs, do well or badly as a whole, spread as chance would have them times ${listWords(spread.map(of => `${rounded(of.extra ?? 1, 1)} in ${outcomeName(of).toLowerCase()}`))}; the intervals are widened by it.`]),
    ...setAsideWords(findings.book.hatches),
    `Left out, not counted or without parents in the book or without contemporaries: ${listWords(found.map(of => `${of.leftOut} of ${outcomeName(of).toLowerCase()}`))}.`,
    ...(sources.length === 0 ? [] : [`What others found with ten points more of F: ${sources.join('; ')}. For life nothing was at hand. Lines differ, and none of these is a law.`]),
  ]
}

/** Beyond so many times the records nobody will come to tell. */
const FAR = 20
const twoFigures = (count: number): string => String(Number(count.toPrecision(2)))

function toTell(findings: Findings): readonly string[] {
  const units = findings.book.project.units, found = onRecord(findings).flatMap(of => {
    const need = findings.depressionVerdicts.toTell(of)
    return need ? [{of, need}] : []
  })
  // a loss as great as the most that others found
  const things = ({outcome}: Depression) => (outcome === 'livability' ? 'chicks' : 'eggs')
  const goal = (of: Depression, {loss, published}: RecordsToTell): string => `a loss of ${lossSize(of, loss, units)} ${of.outcome === 'eggs' ? 'in 100 days' : `in ${outcomeName(of).toLowerCase()}`}${published ? '' : ' (our own choice)'}`
  const within = found.filter(({need: {times}}) => times !== null && times <= 1), far = found.filter(({need: {times}}) => times !== null && times > FAR), open = found.filter(({need: {times}}) => times === null)
  const now = found.flatMap(({of, need}) => {
    const {times, n, groups, pairs} = need
    return times === null || times <= 1 || times > FAR || n === null || groups === null || pairs === null ? []
      : [`${sentence(goal(of, need))}: some ${of.count !== null ? `${twoFigures(n)} ${things(of)} in ${twoFigures(groups)} hatches of ${twoFigures(pairs)} pairs` : `${twoFigures(pairs)} pairs`} in all, ${rounded(times, 1)} times these records, if those to come are as these.`]
  })
  const side = found.flatMap(({of, need: {sideBySide, loss, ofSibs}}) =>
    (sideBySide === null ? [] : [`In ${outcomeName(of).toLowerCase()} a loss of ${lossSize(of, loss, units)} for ten points of F is one of ${lossSize(of, ofSibs, units)} between the two: ${sideBySide} ${things(of)} of each.`]))
  return [
    ...(within.length === 0 ? [] : [`These records would tell ${listWords(within.map(({of, need}) => goal(of, need)))} for ten points of F.`]), ...now,
    ...(far.length === 0 ? [] : [`${sentence(listWords(far.map(({of, need}) => goal(of, need))))}: over ${FAR} times these records, if those to come are as these. No small flock gets there that way.`]),
    ...(open.length === 0 ? [] : [`${sentence(listWords(open.map(({of, need}) => goal(of, need))))}: too few records yet to say how many it takes.`]),
    ...(side.length === 0 ? [] : [`Fewer do where eggs of full sibs (F 25%) are set beside as many of birds that are no kin, in the same machine on the same days. ${side.join(' ')} That is the least, as if every egg stood alone; eggs of one hen do not, so use several pairs of each.`]),
  ]
}

function crossesView({crosses}: Findings, head: string): VigourView['crosses'] {
  const told = crosses.flatMap(cross => (cross.found ? [{cross, found: cross.found, label: `${lineName(cross.lines[0])} × ${lineName(cross.lines[1])}, ${cross.trait.name.toLowerCase()}`}] : []))
  const rows = told.map(({found, label}) => ({label, value: percentOf(found.heterosis), interval: inPercent(found.interval)})), words = crosses.map(crossWords)
  const need = crosses.some(({found}) => found === null) || crosses.length === 0
    ? 'What it takes: in one season hatch some chicks of the cross and some of each line it is made of, from several males each, rear all in one lot, and weigh them at the same age. A first cross of two strains or of two finished lines counts; a backcross does not.' : ''
  if (!hasRows(rows)) return {figure: null, words, need}
  const axis = axisAround(rows.flatMap(({value, interval}) => [value, ...(interval ? [interval.low, interval.high] : [])]), MOST * 2)
  return {
    words, need,
    figure: {
      kind: 'figure', id: 'crosses', name: 'vigour-of-crosses', head, title: 'What crosses gain', caption: 'Cross less the mean of its two lines, in per cent of that mean; birds reared together only, sexes apart. Right of nothing is gain.',
      description: `${listWords(told.map(({found, label}) => `${label} ${signed(percentSign(found.heterosis))} (${pointLimits(found.interval)})`))}.`, spec: besideRows(rows, axis),
      table: {
        columns: [{head: 'Cross'}, {head: 'Gain, %', number: true}, {head: 'Interval', number: true}, {head: 'Birds', number: true}],
        rows: told.map(({cross: {birds}, found, label}): readonly Cell[] => [label, points(found.heterosis), pointLimits(found.interval), `${birds.cross}, ${birds.one}, ${birds.other}`]),
      },
    },
  }
}

const CAUTION = {
  head: 'Chicks that die have many causes.',
  text: 'Machine, feed, germs and the dam’s age kill too. Where many are lost ask a veterinarian, and your local law goes before any plan of breeding; no figure here says which birds to put down.',
}

const worthTelling = (judged: readonly JudgedEffect[]): boolean => judged.length > 0

export function vigourPage(findings: Findings): Page {
  const found = onRecord(findings), judged = findings.depressionVerdicts.judged
  const one = lossFigure(findings, true, 'Figure 1.'), two = lossFigure(findings, false, `Figure ${one ? 2 : 1}.`), figures = [one, two].filter(each => each !== null)
  const view: VigourView = {
    lead: inbreedingVerdict(findings),
    wanting: found.length === 0 ? 'No hatch, weight or egg is on record yet.' : worthTelling(judged) ? '' : 'It takes hatches of closer and of looser matings in one season: set eggs of both, write down how many were clear, how many hatched, and which chicks died.',
    caution: found.some(({count, n}) => count !== null && n > 0) ? CAUTION : null, figures, words: found.length === 0 ? [] : inbreedingWords(findings),
    notes: found.length === 0 ? [] : notes(findings), rest: restTable(findings), toTell: toTell(findings), crosses: crossesView(findings, `Figure ${figures.length + 1}.`), males: MALES, ladder: LADDER,
  }
  return {path: VIGOUR, template: 'vigour', title: 'Is inbreeding costing us?', section: 'ladder', view, search: {kind: 'index', words: 'inbreeding depression harm hatch livability weight eggs vigour heterosis crosses cost'}}
}
