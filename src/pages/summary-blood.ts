/** What is hidden and how closely bred, step by step of a summary: unwanted alleles, F, kinship and their rise against the project's limits. */
import type {FlockSummary} from '../findings/flock-summary.ts'
import type {Findings} from '../findings/study.ts'
import {unwantedInBook} from '../findings/unwanted-alleles.ts'
import {requiredTraits} from '../findings/verdict.ts'
import {figured, NOTHING, limitsShort, percent, percentSign} from './numbers.ts'
import type {Cell, Table} from './page.ts'
import {stepCloseness} from './step-closeness.ts'
import {carriersWords} from './step-true-bred.ts'
import {unwantedWords} from './trait-hidden.ts'

/** Of a season the steps of the ladder alone, where there are some. */
const onLadder = ({steps}: FlockSummary): FlockSummary['steps'] => (steps.some(({beside}) => !beside) ? steps.filter(({beside}) => !beside) : steps)

/** Carriers among those that look right. */
export const carriersIn = (summary: FlockSummary, findings: Findings): readonly string[] =>
  onLadder(summary).flatMap(step => carriersWords(step, findings).slice(0, 1).map(words => (summary.steps.length > 1 ? `${step.label}. ${words}` : words)))

/** Unwanted alleles of what is required, of all that hatched and of those bred from; null where no locus is on record. */
export function hiddenTable(summary: FlockSummary, {book, frequencies, allelesOfBook}: Findings): Table | null {
  const steps = onLadder(summary)
  const asked = requiredTraits(book).flatMap(trait => unwantedInBook(trait, allelesOfBook))
  const rows = steps.flatMap(({label}) => asked.flatMap((each): readonly (readonly Cell[])[] => {
    const own = frequencies.alleles.filter(row => row.step === label && row.locus === each.locus && row.sex === 'all'), hatched = own.find(({of}) => of === 'hatched'), bred = own.find(({of}) => of === 'bred-from')
    const share = (row: typeof hatched): string | null => {
      const found = row?.alleles.filter(({allele}) => each.unwanted.includes(allele)) ?? [], [only] = found
      if (!row || !only) return null
      return `${percent(found.reduce((sum, one) => sum + one.share, 0))}${found.length === 1 ? ` (${limitsShort(only.interval)})` : ''} of ${row.birds}`
    }
    const told = share(hatched)
    return told === null ? [] : [[`${steps.length > 1 ? `${label}, ` : ''}${each.trait.name.toLowerCase()}: ${unwantedWords(each)}`, told, share(bred) ?? NOTHING]]
  }))
  const bred = rows.some(row => row[2] !== NOTHING)
  return rows.length === 0 ? null : {columns: [{head: 'Not wanted'}, {head: 'Of genes hatched, %, and birds'}, ...(bred ? [{head: 'Of those bred from'}] : [])], rows: bred ? rows : rows.map(row => row.slice(0, 2))}
}

export interface SummaryCloseness {
  readonly table: Table
  readonly words: string
  readonly caution: {readonly head: string; readonly text: string} | null
}

/** Null while no bird is banded. */
export function summaryCloseness({steps, latest}: FlockSummary, findings: Findings): SummaryCloseness | null {
  const own = findings.closeness.flatMap((found, place) => (steps.some(({label}) => label === found.step) ? [{found, against: findings.closenessLimits[place]}] : []))
  if (own.length === 0) return null
  const limits = findings.book.project.limits, rated = own.some(({found}) => found.rate !== null), cautions = own.flatMap(({found}) => stepCloseness(found.step, findings)?.caution ?? [])
  const allowed = [...(limits.inbreedingPerGeneration === null ? [] : [`${percentSign(limits.inbreedingPerGeneration)} a generation`]), ...(limits.matingInbreeding === null ? [] : [`${percentSign(limits.matingInbreeding)} for one mating`])]
  return {
    table: {
      columns: [{head: 'Step'}, {head: 'Mean F, %', number: true}, {head: 'Kinship, %', number: true}, ...(rated ? [{head: 'Rise a generation, %', number: true}] : [])],
      rows: own.map(({found}): readonly Cell[] => [
        `${found.step}, ${figured(found.birds, 'bird')}`, `${found.atLeast > 0 ? 'at least ' : ''}${percent(found.mean)}${percent(found.meanLow) === percent(found.meanHigh) ? '' : ` (${percent(found.meanLow)}–${percent(found.meanHigh)})`}`, percent(found.kinship),
        ...(rated ? [found.rate === null ? NOTHING : percent(found.rate.value)] : []),
      ]),
    },
    words: allowed.length === 0 ? 'The project states no limit.' : `The project allows ${allowed.join(' and ')}.`, caution: latest ? cautions[0] ?? null : null,
  }
}
