/** The ladder: every step reached and planned, how true and how even each was, and what blood descent leads one to expect. */
import {hasRows} from '../charts/chart-spec.ts'
import {strainShareByStep} from '../charts/strain-share-by-step.ts'
import {currentStep, reachedSteps} from '../findings/ladder.ts'
import type {Findings} from '../findings/study.ts'
import {backcrossAgain, type BackcrossAgainView} from './backcross-again.ts'
import {closenessFigure} from './closeness-figure.ts'
import {closenessRates, type ClosenessRates} from './closeness-rates.ts'
import {featherView} from './feather-view.ts'
import type {FeatherView} from './feather-view.ts'
import {birdPath, LADDER} from './links.ts'
import {figured, listWords, percent, percentSign, saying, sentence} from './numbers.ts'
import type {Cell, Figure, Page} from './page.ts'
import {mainMeasure} from './main-measure.ts'
import {spreadFigure} from './step-figures.ts'
import {stepWords} from './step-words.ts'
import {trendView, type TrendView} from './trend-words.ts'

export interface LadderView {
  readonly lead: string
  readonly feather: FeatherView | null
  readonly empty: string
  readonly figures: readonly Figure[]
  /** null before there was a step inside the line, or while nothing is required */
  readonly trend: TrendView | null
  /** what a generation inside the line cost; null before there was one */
  readonly rates: ClosenessRates | null
  /** null while no step is reached */
  readonly backcross: BackcrossAgainView | null
  /** birds whose step is written otherwise than descent makes it; null where no step is written */
  readonly written: {readonly words: string; readonly birds: readonly {readonly band: string; readonly link: string; readonly text: string}[]} | null
}

function lead({ladder}: Findings): string {
  const {on, beside} = reachedSteps(ladder), planned = ladder.filter(step => step.kind === 'planned').length
  const last = currentStep(ladder), say = saying(on.length, beside.length, planned)
  const others = beside.length === 0 ? '' : `${say(beside.length, 'step')} beside the ladder`
  if (last === null) return planned === 0 ? 'No step is planned or reached yet.' : `${sentence(say(planned, 'step'))} planned, none reached yet.`
  if (on.length === 0) return `No step of the ladder reached yet, ${say(planned, 'step')} planned; ${others}, the breed now at ${last.label}.`
  return `${sentence(say(on.length, 'step'))} reached, the breed now at ${last.label}${planned === 0 ? '' : `; ${say(planned, 'more', 'more')} planned`}${others === '' ? '' : `; ${others}`}.`
}

/** Expected blood of every step; null while nothing has hatched or only one strain is there. */
function strainFigure({strainShares, book}: Findings, head: string): Figure | null {
  const {recurrent} = book.project
  const strains = [...(recurrent ? [recurrent] : []), ...book.strains.filter(strain => strain !== recurrent)]
    .filter(strain => strainShares.steps.some(step => (step.shares.get(strain) ?? 0) > 0))
  const names = strains.map(strain => strain.name)
  const rows = strainShares.steps.map(step => ({
    label: step.step, shares: Object.fromEntries(strains.map(strain => [strain.name, step.shares.get(strain) ?? 0])), words: percentSign(strains[0] ? step.shares.get(strains[0]) ?? 0 : 0),
  }))
  const [first] = strains
  if (!hasRows(rows) || !hasRows(names) || !first) return null
  return {
    kind: 'figure', id: 'blood', name: 'strain-shares-by-step', head, title: 'Expected blood by step',
    caption: `Share of each strain that descent leads one to expect, on average over a step’s chicks; at the right that of ${first.name}. Single birds differ.`,
    description: `Expected share of ${first.name}: ${listWords(rows.map(row => `${row.words} in ${row.label}`))}.`, spec: strainShareByStep(rows, names),
    table: {
      columns: [{head: 'Step'}, {head: 'Chicks', number: true}, ...strains.map(strain => ({head: `${strain.name}, %`, number: true}))],
      rows: strainShares.steps.map((step): readonly Cell[] => [step.step, String(step.chicks), ...strains.map(strain => percent(step.shares.get(strain) ?? 0))]),
    },
  }
}

/** More than this many are counted: each says it on its own page. */
const NAMED_AT_MOST = 12

function written({book: {birds}}: Findings): LadderView['written'] {
  const told = birds.filter(({stepWritten}) => stepWritten !== null), other = told.filter(({stepWritten, step}) => stepWritten !== step.label)
  if (told.length === 0) return null
  const first = other.slice(0, NAMED_AT_MOST), more = other.length - first.length
  return {
    words: other.length === 0 ? `A step is written of ${figured(told.length, 'bird')}; descent gives the same for each.`
      : `Steps are worked out from descent. Of ${figured(told.length, 'bird')} with a step written, descent makes ${other.length} another${more > 0 ? `; the first ${first.length}` : ''}:`,
    birds: first.map(bird => ({band: bird.band, link: birdPath(bird), text: `written ${bird.stepWritten ?? ''}, by descent ${stepWords(bird)}`})),
  }
}

/** @param trueBredFigure  the chart that step pages share, `Figure 1.` */
export function ladderPage(findings: Findings, trueBredFigure: Figure | null): Page {
  const trait = mainMeasure(findings.book.traits)
  const first = trueBredFigure ? 2 : 1
  const even = trait === null ? null : spreadFigure(trait, findings.spread.rows, 'female', null, `Figure ${first}.`)
  const blood = strainFigure(findings, `Figure ${even ? first + 1 : first}.`)
  const close = closenessFigure(findings, `Figure ${first + (even ? 1 : 0) + (blood ? 1 : 0)}.`)
  const view: LadderView = {
    lead: lead(findings), feather: featherView(findings), figures: [trueBredFigure, even, blood, close].filter(figure => figure !== null),
    empty: findings.ladder.length === 0 ? 'Once the first cross has hatched, or steps are planned in the project’s record, they stand here one below the other.' : '',
    trend: trendView(findings), rates: closenessRates(findings), backcross: currentStep(findings.ladder) === null ? null : backcrossAgain(findings.nextBackcross, findings.book.project.units), written: written(findings),
  }
  return {path: LADDER, template: 'ladder', title: 'Ladder', section: 'ladder', view, search: {kind: 'index', words: `ladder steps ${figured(findings.ladder.length, 'step')}`}}
}
