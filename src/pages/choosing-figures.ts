/** How much of what was chosen is handed on, and how far each measure has come back from the donor. */
import {axisAround, besideRows} from '../charts/beside-rows.ts'
import {hasRows} from '../charts/chart-spec.ts'
import {percentOf} from '../charts/egg-rows.ts'
import {currentStep} from '../findings/ladder.ts'
import type {Likeness} from '../findings/likeness.ts'
import type {RecoveryOfTrait} from '../findings/recovery.ts'
import type {Findings} from '../findings/study.ts'
import {fileName} from '../records/file-name.ts'
import type {Interval} from '../findings/estimate.ts'
import {shareLimits, sharePoints} from './difference-words.ts'
import {figured, listWords, NOTHING, ofWords, percent, percentSign, rounded} from './numbers.ts'
import type {Cell, Figure, Table} from './page.ts'

export interface RecoveryView {
  readonly figures: readonly Figure[]
  readonly words: readonly string[]
}

const FROM: Readonly<Record<Likeness['parents'], string>> = {both: 'both parents', sire: 'sires', dam: 'dams'}
/** `0.27 (0.00–0.99)`; `0.27 (−0.10 to 0.99)` */
const heritability = (value: number, interval: Interval | null): string => `${rounded(value, 2)}${interval ? ` (${rounded(interval.low, 2)}${interval.low < 0 ? ' to ' : '–'}${rounded(interval.high, 2)})` : ''}`.replaceAll('-', '−')

/** `9 sires, 40 chicks`, `27 pairs of 9 cocks and 21 hens, 52 chicks` */
export function comparedWords({parents, families, males, females, chicks}: Likeness): string {
  if (families === 0) return `no two ${parents === 'both' ? 'pairs' : `${parents}s`} measured with chicks in one lot`
  return `${figured(families, parents === 'both' ? 'pair' : parents)}${parents === 'both' ? ` of ${figured(males, 'cock')} and ${figured(females, 'hen')}` : ''}, ${figured(chicks, 'chick')}`
}

function likenessRow(of: Likeness): readonly Cell[] {
  const {trait: {name}, parents, found} = of
  if (found.kind !== 'estimated') return [`${name}, ${FROM[parents]}`, found.kind === 'few' ? 'too few to say' : 'parents alike', comparedWords(of)]
  return [`${name}, ${FROM[parents]}`, heritability(found.heritability.value, found.heritability.interval), comparedWords(of)]
}

/** A row a trait and way of telling; null where nothing measured has parents. */
export function heritabilityTable({likeness, selection: {realised}}: Findings): Table | null {
  const rows: readonly (readonly Cell[])[] = [
    ...realised.map(({trait, found}): readonly Cell[] => [`${trait.name}, realised by choosing`, found.kind === 'estimated' ? heritability(found.value, found.interval) : 'nothing was chosen', figured(found.steps, 'step')]),
    ...likeness.map(likenessRow),
  ]
  return rows.length === 0 ? null : {columns: [{head: 'Measure, told by'}, {head: 'Heritability', number: true}, {head: 'Of'}], rows}
}

function recoveryFigure(rows: readonly RecoveryOfTrait[], recurrent: string, head: string): Figure | null {
  const told = rows.flatMap(row => (row.found === null ? [] : [{row, found: row.found}])), [first] = told
  const lines = told.map(({row, found}) => ({label: row.step, value: percentOf(found.recovery), interval: found.interval && {low: percentOf(found.interval.low), high: percentOf(found.interval.high)}, expected: row.expected === null ? null : percentOf(row.expected)}))
  if (!hasRows(lines) || !first) return null
  const {trait, donor} = first.row
  return {
    kind: 'figure', id: `recovery-${fileName(trait.id)}`, name: `recovery-${fileName(trait.id)}`, head, title: `${trait.name}: how far type has come back`,
    caption: `${trait.name}: of the way from ${donor.name}, 0, to ${recurrent}, 100%. Egg and line: of birds of all three reared together; tick: the share of genes expected.`,
    description: `${listWords(told.map(({row, found}) => `${row.step} ${sharePoints(found.recovery)}${found.interval ? ` (${shareLimits(found.interval)})` : ''}${row.expected === null ? '' : `, by blood ${percent(row.expected)}`}`))} per cent.`,
    spec: besideRows(lines, axisAround([100, ...lines.flatMap(({value, interval}) => [value, ...(interval ? [interval.low, interval.high] : [])])], 200, 100)),
    table: {
      columns: [{head: 'Step'}, {head: 'Come back, %', number: true}, {head: 'Interval', number: true}, {head: 'By blood, %', number: true}, {head: 'Birds', number: true}],
      rows: told.map(({row: {step, expected, birds}, found}): readonly Cell[] => [step, sharePoints(found.recovery), found.interval ? shareLimits(found.interval) : 'strains alike', expected === null ? NOTHING : percent(expected), `${birds.step}, ${birds.donor}, ${birds.recurrent}`]),
    },
  }
}

const birdsOf = ({birds}: RecoveryOfTrait): number => birds.step + birds.donor + birds.recurrent

/** @param drawn  figures that stand before these. @returns null where there is no strain crossed back to, or nothing was measured */
export function recoveryView({recovery, ladder, book: {project: {recurrent}, traits}}: Findings, drawn: number): RecoveryView | null {
  if (recurrent === null || recovery.length === 0) return null
  let count = drawn
  const figures = traits.flatMap(trait => {
    const figure = recoveryFigure(recovery.filter(each => each.trait === trait), recurrent.name, `Figure ${count + 1}.`)
    if (figure) count += 1
    return figure ? [figure] : []
  })
  const told = recovery.filter(({found}) => found !== null).length, now = currentStep(ladder)?.label, wanting = recovery.filter(({found}) => found === null).sort((a, b) => birdsOf(a) - birdsOf(b)), last = wanting.findLast(({step}) => step === now) ?? wanting.at(-1), chicks = recovery.some(({found, together}) => found !== null && together?.speaksOf === 'these chicks only')
  return {
    figures, words: [
      ...(chicks ? ['Where a strain or step has under five sire families, the interval speaks of these chicks only.'] : []),
      ...(last && told < recovery.length ? [`Told in ${ofWords(told, recovery.length)} cases of step and measure. The step, ${last.donor.name} and ${recurrent.name} must be reared in one lot and measured: of ${last.step}, ${last.trait.name.toLowerCase()}, there are ${last.birds.step}, ${last.birds.donor} and ${last.birds.recurrent} birds${last.together ? '' : ', and no lot holds all three'}. Hatch a few of both strains beside the next chicks to find out.`] : []),
      ...(last?.expected === null || last === undefined ? [] : [`By blood alone ${last.step} should have come ${percentSign(last.expected)} of the way; what is chosen for or against may be ahead of that or behind.`]),
    ],
  }
}
