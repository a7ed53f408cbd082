/** What choosing did: what the birds kept were chosen for, step by step what came of it, how much of it is handed on, and how far type has come back. */
import {axisAround, besideRows} from '../charts/beside-rows.ts'
import {hasRows} from '../charts/chart-spec.ts'
import {percentOf} from '../charts/egg-rows.ts'
import type {KeptMeasure, KeptState} from '../findings/kept-against-all.ts'
import type {Findings} from '../findings/study.ts'
import {apartWords, chosenFor, nextSeasonWords} from './choosing-words.ts'
import {testChance} from './chance-words.ts'
import {choosingStepViews, type ChoosingStep} from './choosing-steps.ts'
import {difference, differenceLimits} from './difference-words.ts'
import {CHOOSING, VIGOUR} from './links.ts'
import {figured, limitsShort, listWords, NOTHING, ofWords, percent, rounded, sentence, signed} from './numbers.ts'
import type {Cell, Figure, Page, Table} from './page.ts'
import {heritabilityTable, recoveryView, type RecoveryView} from './choosing-figures.ts'

export interface ChoosingView {
  readonly lead: string
  /** why nothing can be said yet; else empty */
  readonly wanting: string
  readonly words: readonly string[]
  readonly figures: readonly Figure[]
  readonly tests: string
  readonly apart: {readonly head: string; readonly text: string} | null
  readonly steps: readonly ChoosingStep[]
  readonly heritability: {readonly table: Table; readonly words: readonly string[]} | null
  readonly recovery: RecoveryView | null
  readonly vigour: string
}

type Kept = KeptState | KeptMeasure

/** Of a trait with two states the one kept more often, or the first; of others every one: as many rows as there are tests. */
function testedRows(rows: readonly Kept[]): readonly Kept[] {
  return rows.filter((row, place) => {
    if (row.kind === 'measure') return true
    const others = rows.filter(other => other.trait === row.trait && other.step === row.step && other !== row && other.kind === 'state'), [other] = others
    if (others.length !== 1 || other?.kind !== 'state') return true
    const more = (of: KeptState): number => (of.share.kind === 'share' && of.expected !== null ? of.share.value - of.expected : 0)
    return more(row) > more(other) || (more(row) === more(other) && place < rows.indexOf(other))
  })
}

/** Every look: what share of the birds kept shows it, beside what a blind choice would give. */
function stateFigure(rows: readonly Kept[], head: string): Figure | null {
  const told = rows.flatMap(row => (row.kind === 'state' && row.share.kind === 'share' && row.expected !== null && row.p !== null ? [{row, share: row.share, expected: row.expected, label: `${row.state}, ${row.trait.name.toLowerCase()}`}] : [])), alone = (state: string): boolean => told.filter(({row}) => row.state === state).length === 1
  const lines = told.map(({row, share, expected, label}) => ({label: alone(row.state) ? row.state : label, value: percentOf(share.value), interval: {low: percentOf(share.interval.low), high: percentOf(share.interval.high)}, expected: percentOf(expected)}))
  if (!hasRows(lines)) return null
  return {
    kind: 'figure', id: 'kept-looks', name: 'kept-against-all-looks', head, title: 'Looks of the birds kept against all',
    caption: 'Egg and line: share of the birds kept that show it, %. Tick: what a blind choice of as many from each hatch and sex gives.',
    description: `${sentence(listWords(told.map(({label, share, expected}) => `${label} ${percent(share.value)}, blind ${percent(expected)}`)))} per cent.`, spec: besideRows(lines, axisAround([0, 100], 100, null)),
    table: {
      columns: [{head: 'Look'}, {head: 'Kept', number: true}, {head: 'Blind, %', number: true}, {head: 'P', number: true}, {head: 'Interval', number: true}],
      rows: told.map(({row, share, expected, label}): readonly Cell[] => [label, ofWords(share.count, share.total), percent(expected), row.corrected === null ? NOTHING : testChance(row.corrected), limitsShort(share.interval)]),
    },
  }
}

/** Every mark and measure: how far the birds kept stand off the rest, in standard deviations, so that all stand on one scale. */
function measureFigure(rows: readonly Kept[], {book: {project: {units}}}: Findings, head: string): Figure | null {
  const told = rows.flatMap(row => (row.kind === 'measure' && row.difference !== null && row.inSd !== null ? [{row, difference: row.difference, inSd: row.inSd}] : []))
  const lines = told.map(({row, inSd}) => ({label: row.trait.name, value: inSd.difference, interval: inSd.interval}))
  if (!hasRows(lines)) return null
  const axis = axisAround(lines.flatMap(({value, interval}) => [value, ...(interval ? [interval.low, interval.high] : [])]), 3)
  return {
    kind: 'figure', id: 'kept-measures', name: 'kept-against-all-measures', head, title: 'Marks and measures of the birds kept against the rest',
    caption: 'Kept less the rest of their hatch and sex, in standard deviations inside these; right of nothing the kept have more.',
    description: `${sentence(listWords(told.map(({row, inSd}) => `${row.trait.name.toLowerCase()} ${signed(rounded(inSd.difference, 2))}`)))} standard deviations.`, spec: besideRows(lines, axis),
    table: {
      columns: [{head: 'Of'}, {head: 'Kept less rest', number: true}, {head: 'P', number: true}, {head: 'Interval', number: true}, {head: 'Kept', number: true}],
      rows: told.map(({row, difference: found}): readonly Cell[] => [
        row.trait.name, difference(found, row.trait, units), row.corrected === null ? NOTHING : testChance(row.corrected), row.interval ? differenceLimits(row.interval, row.trait, units) : NOTHING, ofWords(row.kept, row.all),
      ]),
    },
  }
}

function lead(whole: readonly Kept[]): string {
  const named = (meant: (row: Kept) => boolean) => listWords([...new Set(whole.filter(row => row.differ && meant(row)).map(({trait}) => trait.name.toLowerCase()))])
  const asked = named(({meant}) => meant === true), other = named(({meant}) => meant === null), against = named(({meant}) => meant === false)
  if (whole.length === 0) return 'What the birds bred from were chosen for, and what came of it.'
  if (asked === '' && other === '' && against === '') return 'Nothing is told yet in which the birds kept differ from the rest.'
  const parts = [...(asked === '' ? [] : [`for ${asked}, as the targets ask`]), ...(other === '' ? [] : [`for ${other}, for which no target asks`]), ...(against === '' ? [] : [`against the targets in ${against}`])]
  return `The birds kept were chosen ${parts.join('; ')}${parts.length === 1 && asked !== '' ? '; for nothing else that shows' : ''}.`
}

function testsWords(whole: readonly Kept[], steps: readonly Kept[]): string {
  const [first] = whole, [of] = steps
  if (!first || first.tests === 0) return ''
  const least = [...whole].sort((a, b) => a.kept - b.kept).find(({p}) => p !== null)
  return `Of ${figured(first.tests, 'test')} one in twenty would look remarkable by chance, so P is corrected for their number (Holm)${of && of.tests > 0 ? `; of single steps there are ${of.tests}` : ''}. Kept: put into a pen, written as kept, or a possible parent. ${least ? `Where few were kept, ${least.kept} of ${least.all} in ${least.trait.name.toLowerCase()}, only a strong choice is told.` : ''}`.trim()
}

export function choosingPage(findings: Findings): Page {
  const {keptAgainstAll, selection: {passages}, besideNextSeason, book: {project: {units}}} = findings
  const whole = keptAgainstAll.filter(({step}) => step === null), single = keptAgainstAll.filter(({step}) => step !== null), apart = apartWords(findings, null)
  const tested = testedRows(whole), one = stateFigure(tested, 'Figure 1.'), two = measureFigure(tested, findings, `Figure ${one ? 2 : 1}.`), figures = [one, two].filter(figure => figure !== null)
  const untold = tested.filter(({trait}) => tested.every(other => other.trait !== trait || other.p === null)), steps = choosingStepViews(findings), table = heritabilityTable(findings)
  const view: ChoosingView = {
    lead: lead(whole), wanting: whole.length === 0 && passages.length === 0 ? 'No chick of a step has been scored or measured yet. Once some of a hatch are kept and the others were scored too, what was chosen for stands here.' : '',
    words: [...chosenFor(whole, units), ...(untold.length === 0 || figures.length === 0 ? [] : [`Nothing to tell of ${listWords([...new Set(untold.map(({trait}) => trait.name.toLowerCase()))])}: all alike, or all or none of each hatch kept.`])],
    figures, tests: testsWords(whole, single),
    apart: apart === '' ? null : {head: 'Season or choosing?', text: `${apart} ${nextSeasonWords(findings)}`.trim()}, steps,
    heritability: table === null ? null : {table, words: ['The part of what was chosen that chicks have. Of parents and chicks it is told among chicks of one step reared together, each parent counted once however often it bred, of five cocks or hens or more; a value outside 0 to 1 is a sign of few, the interval stays inside.', ...(findings.selection.realised.length === 0 ? ['What was realised is told only where birds of two steps were reared together.'] : [])]},
    recovery: recoveryView(findings, figures.length), vigour: VIGOUR,
  }
  const words = besideNextSeason === null ? '' : ' season'
  return {path: CHOOSING, template: 'choosing', title: 'What choosing did', section: 'ladder', view, search: {kind: 'index', words: `selection choosing differential response heritability kept against all recovery of type${words}`}}
}
