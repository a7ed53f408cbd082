/** How the breed came to be: the seasons in words, and every step in a table. */
import type {ReachedStep} from '../findings/ladder.ts'
import type {Findings} from '../findings/study.ts'
import {dateWords, onDate} from './dates.ts'
import {cannotSay} from './estimate-words.ts'
import {stepPath} from './links.ts'
import {counted, listWords, NOTHING, ofWords, percent, sentence} from './numbers.ts'
import type {Cell, Table} from './page.ts'
import {stepMeaning} from './step-words.ts'
import {yearsWords} from './count-words.ts'
import {ALL_THEY_COULD} from './true-bred-words.ts'

export interface HistoryView {
  readonly opening: readonly string[]
  /** step by step, as the ladder climbs */
  readonly steps: readonly {readonly label: string; readonly words: string}[]
  readonly closing: readonly string[]
  /** Markdown: the keeper's own account, the project's body */
  readonly body: string
  readonly table: Table | null
  readonly note: string
}

const reachedSteps = ({ladder}: Findings): readonly ReachedStep[] => ladder.filter(step => step.kind === 'reached')

function foundersWords({book}: Findings): string {
  const counts = book.strains.map(strain => ({strain, birds: book.birds.filter(bird => bird.parentage.kind === 'founder' && bird.strain === strain).length}))
  const there = counts.filter(({birds}) => birds > 0).map(({strain, birds}) => `${birds} of ${strain.name}`)
  return there.length === 0 ? 'No founding bird is on record.' : `Founding birds on record: ${listWords(there)}.`
}

function begunWords({book: {project}}: Findings): string {
  const strains = [...(project.recurrent ? [project.recurrent.name] : []), ...project.donors.map(({name}) => name)]
  if (project.begun) return `The work began ${onDate(project.begun)}${strains.length === 0 ? '' : `, from ${listWords(strains)}`}.`
  return `${strains.length === 0 ? '' : `The breed is made from ${listWords(strains)}. `}When the work began is not on record.`
}

function stepWords({step, seasons, firstHatch, chicks}: ReachedStep): string {
  const when = firstHatch ? `first hatched ${onDate(firstHatch)}` : seasons.length > 0 ? `hatched in ${yearsWords(seasons)}` : 'hatched on days not recorded'
  return `${stepMeaning(step)} ${sentence(when)}; ${counted(chicks.hatched, 'chick')} so far.`
}

/** Was any other blood used, as far as descent is on record? */
function bloodWords({strainShares, book}: Findings): string {
  const {recurrent, donors} = book.project
  const others = book.strains.filter(strain => strain !== recurrent && !donors.includes(strain) && strainShares.steps.some(step => (step.shares.get(strain) ?? 0) > 0))
  const unknown = strainShares.steps.filter(step => step.unknown > 0).map(({step}) => step)
  if (others.length > 0) return `Blood of ${listWords(others.map(({name}) => name))} has come in as well.`
  return unknown.length > 0 ? `Some parents of ${listWords(unknown)} stand outside the records, so other blood cannot be ruled out.` : 'By the records no other blood was used.'
}

function stepsTable(findings: Findings, steps: readonly ReachedStep[]): Table | null {
  if (steps.length === 0) return null
  const {recurrent} = findings.book.project
  const rows = steps.map((step): readonly Cell[] => {
    const bred = findings.trueBred.steps.find(each => each.step === step.label)?.rate
    return [
      {text: step.label, link: stepPath(step.label)}, step.seasons.length === 0 ? NOTHING : yearsWords(step.seasons), String(step.sires.length), String(step.dams.length),
      String(step.chicks.hatched), bred === undefined ? NOTHING : bred.kind === 'cannot-say' ? cannotSay(bred) : ofWords(bred.count, bred.total),
      step.recurrentShare ? percent(step.recurrentShare.mean) : NOTHING,
    ]
  })
  return {
    columns: [
      {head: 'Step'}, {head: 'Seasons'}, {head: 'Males', number: true}, {head: 'Females', number: true}, {head: 'Hatched', number: true}, {head: 'All they could', number: true},
      {head: recurrent ? `${recurrent.name}, %` : 'Recurrent strain, %', number: true},
    ],
    rows,
  }
}

export function historyView(findings: Findings): HistoryView {
  const steps = reachedSteps(findings), {project} = findings.book
  const latest = steps.flatMap(({lastHatch}) => (lastHatch ? [lastHatch] : [])).sort((a, b) => b.last - a.last)[0]
  return {
    opening: [begunWords(findings), foundersWords(findings)],
    steps: steps.map(step => ({label: step.label, words: stepWords(step)})),
    closing: [
      steps.length > 0 ? bloodWords(findings) : 'Nothing has been hatched from a cross yet.', ...(latest ? [`The last chicks on record hatched ${onDate(latest)}.`] : []),
    ],
    body: project.body, table: stepsTable(findings, steps),
    note: `Males and females are the birds that bred the step, or may have; a bird used in two steps stands in both. “All they could” counts chicks that showed ${ALL_THEY_COULD}, of those so scored.`,
  }
}

/** `Records to 30 October 2025` and what goes with it, for the head of the dossier. */
export const draftWords = (draft: {readonly number: number; readonly on: Parameters<typeof dateWords>[0]} | undefined): string =>
  (draft ? sentence(`standard, draft ${draft.number} of ${dateWords(draft.on)}`) : 'No draft of the standard yet')
