/** How the breed came to be: the seasons in words, and every step in a table. */
import type {ReachedStep} from '../findings/ladder.ts'
import type {Findings} from '../findings/study.ts'
import type {Bird, Hatch, Pen} from '../logbook/book.ts'
import {bandRuns} from './band-runs.ts'
import {dateWords, onDate} from './dates.ts'
import {besidesOf, type Behind, type NumberedTable, type References} from './dossier-behind.ts'
import {cannotSay} from './estimate-words.ts'
import {penPath, stepPath, strainPath} from './links.ts'
import type {Naming} from './naming.ts'
import {counted, listWords, NOTHING, ofWords, percent, sentence} from './numbers.ts'
import type {Cell} from './page.ts'
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
  readonly founders: NumberedTable | null
  readonly table: NumberedTable | null
  readonly crosses: NumberedTable | null
  readonly note: string
}

export const hasBackcross = ({ladder}: Findings): boolean => ladder.some(step => step.kind === 'reached' && step.step.kind === 'backcross')

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

/** Was any other blood used, as far as descent is on record, and in which steps is it? */
function bloodWords({strainShares, book}: Findings): string {
  const {recurrent, donors} = book.project
  const others = book.strains.filter(strain => strain !== recurrent && !donors.includes(strain) && strainShares.steps.some(step => (step.shares.get(strain) ?? 0) > 0))
  const unknown = strainShares.steps.filter(step => step.unknown > 0).map(({step}) => step)
  if (others.length > 0) return others.map(strain => {
    const within = strainShares.steps.filter(step => (step.shares.get(strain) ?? 0) > 0).map(({step}) => step)
    return `Blood of ${strain.name} is in ${listWords(within)}${within.length < strainShares.steps.length ? ', and in no other step' : ''}.`
  }).join(' ')
  return unknown.length > 0 ? `Some parents of ${listWords(unknown)} stand outside the records, so other blood cannot be ruled out.` : 'By the records no other blood was used.'
}

/** What is behind a step's row: its banded birds, its unbanded chicks, and the hatches and pens. */
const behindStep = ({label, birds, chicks, hatches, pens}: ReachedStep, table: string): Behind =>
  ({of: `${table}, ${label}`, birds, ...besidesOf(chicks.unbanded + chicks.unlisted), records: [...hatches, ...pens].map(({at}) => at), page: stepPath(label)})

function stepsTable(findings: Findings, steps: readonly ReachedStep[], refs: References): NumberedTable | null {
  if (steps.length === 0) return null
  const {recurrent} = findings.book.project, {name, ...head} = refs.table('every step')
  const rows = steps.map((step): readonly Cell[] => {
    const bred = findings.trueBred.steps.find(each => each.step === step.label)?.rate
    return [
      step.label, step.seasons.length === 0 ? NOTHING : yearsWords(step.seasons), String(step.sires.length), String(step.dams.length),
      String(step.chicks.hatched), String(step.chicks.scored), String(step.chicks.kept), bred === undefined ? NOTHING : bred.kind === 'cannot-say' ? cannotSay(bred) : ofWords(bred.count, bred.total),
      step.recurrentShare ? percent(step.recurrentShare.mean) : NOTHING, refs.to(behindStep(step, name)),
    ]
  })
  return {
    ...head, columns: [
      {head: 'Step'}, {head: 'Seasons'}, {head: 'Males', number: true}, {head: 'Females', number: true}, {head: 'Hatched', number: true}, {head: 'Scored', number: true}, {head: 'Kept', number: true},
      {head: 'All they could', number: true}, {head: recurrent ? `${recurrent.name}, %` : 'Recurrent strain, %', number: true}, {head: 'Behind it'},
    ],
    rows,
  }
}

/** Who was mated to whom, a row a pen that had chicks, season by season. */
function crossesTable({book}: Findings, naming: Naming, refs: References): NumberedTable | null {
  const pens = book.pens.filter(({hatches}) => hatches.length > 0).toSorted((a, b) => a.season - b.season || (a.id < b.id ? -1 : 1))
  if (pens.length === 0) return null
  const {name, ...head} = refs.table('every cross')
  return {
    ...head, columns: [{head: 'Pen'}, {head: 'Males'}, {head: 'Females'}, {head: 'Keeper'}, {head: 'Gave'}, {head: 'Behind it'}],
    rows: pens.map((pen): readonly Cell[] => {
      const males = stayed(pen.males), females = stayed(pen.females)
      return [
        pen.id, bandRuns(males.map(({band}) => band)) || NOTHING, bandRuns(females.map(({band}) => band)) || NOTHING, pen.keeper ? naming.keeper(pen.keeper) : NOTHING,
        listWords([...new Set(pen.hatches.map(gaveWords))]),
        refs.to({of: `${name}, pen ${pen.id}`, birds: [...males, ...females], records: [pen.at, ...pen.hatches.map(({at}) => at)], page: penPath(pen)}),
      ]
    }),
  }
}

/** A step, or the strain that was bred pure. */
const gaveWords = ({step, shares}: Hatch): string => (step.kind === 'strain' ? listWords([...shares.keys()].map(({name}) => name)) || 'pure stock' : step.label)

const stayed = (stays: Pen['males']): readonly Bird[] => [...new Set(stays.map(({bird}) => bird))]

/** The founding birds of each strain, by band: those that came in from outside and hatched of bought eggs, and how many of them were bred from for the breed. */
function foundersTable(findings: Findings, refs: References): NumberedTable | null {
  const {book, ladder} = findings
  const groups = book.strains.map(strain => ({strain, birds: book.birds.filter(bird => bird.parentage.kind === 'founder' && bird.strain === strain)})).filter(({birds}) => birds.length > 0)
  if (groups.length === 0) return null
  const penned = new Set(book.pens.filter(({hatches}) => hatches.length > 0).flatMap(({males, females}) => [...males, ...females].map(({bird}) => bird)))
  const parents = new Set(ladder.filter(step => step.kind === 'reached').flatMap(({sires, dams}) => [...sires, ...dams]))
  const isBred = (bird: Bird): boolean => penned.has(bird) || parents.has(bird), hasUnsexed = groups.some(({birds}) => birds.some(({sex}) => sex === 'unknown')), {name, ...head} = refs.table('founding birds')
  return {
    ...head, columns: [{head: 'Strain'}, {head: 'Its part'}, {head: 'Males', number: true}, {head: 'Females', number: true}, ...(hasUnsexed ? [{head: 'Not sexed', number: true}] : []), {head: 'Bred from here', number: true}, {head: 'Behind it'}],
    rows: groups.map(({strain, birds}): readonly Cell[] => {
      const of = (sex: Bird['sex']): string => String(birds.filter(bird => bird.sex === sex).length)
      const gives = strain === book.project.recurrent ? hasBackcross(findings) ? 'crossed back to' : 'one parent of the cross' : book.project.donors.includes(strain) ? 'gives a trait' : 'other blood'
      return [
        strain.name, gives, of('male'), of('female'), ...(hasUnsexed ? [of('unknown')] : []), String(birds.filter(isBred).length),
        refs.to({of: `${name}, ${strain.name}`, birds, records: [strain.at, ...birds.map(({at}) => at)], page: strainPath(strain)}),
      ]
    }),
  }
}

export function historyView(findings: Findings, naming: Naming, refs: References): HistoryView {
  const steps = reachedSteps(findings), {project} = findings.book
  const latest = steps.flatMap(({lastHatch}) => (lastHatch ? [lastHatch] : [])).sort((a, b) => b.last - a.last)[0]
  return {
    opening: [begunWords(findings), foundersWords(findings)],
    steps: steps.map(step => ({label: step.label, words: stepWords(step)})),
    closing: [
      steps.length > 0 ? bloodWords(findings) : 'Nothing has been hatched from a cross yet.', ...(latest ? [`The last chicks on record hatched ${onDate(latest)}.`] : []),
    ],
    body: project.body, founders: foundersTable(findings, refs), table: stepsTable(findings, steps, refs), crosses: crossesTable(findings, naming, refs),
    note: `Males and females are the birds that bred the step, or may have; a bird used in two steps stands in both. “Scored”: chicks with at least one trait scored or measured that counts; “kept”: kept on record or put into a breeding pen. “All they could” counts chicks that showed ${ALL_THEY_COULD}, of those so scored.`,
  }
}

/** `Records to 30 October 2025` and what goes with it, for the head of the dossier. */
export const draftWords = (draft: {readonly number: number; readonly on: Parameters<typeof dateWords>[0]} | undefined): string =>
  (draft ? sentence(`standard, draft ${draft.number} of ${dateWords(draft.on)}`) : 'No draft of the standard yet')
