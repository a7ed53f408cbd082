/** One step of the ladder: does it breed true, how even is it, what became of its eggs, who was kept. A step not reached says so. */
import {countedValue} from '../findings/counted-value.ts'
import type {LadderStep, ReachedStep} from '../findings/ladder.ts'
import {scorersInDoubt} from '../findings/scorers-in-doubt.ts'
import type {Findings} from '../findings/study.ts'
import type {Bird, CareEntry} from '../logbook/book.ts'
import {fact} from './bird-lead.ts'
import type {Fact} from './bird-lead.ts'
import {birdTable, symbolNote} from './bird-rows.ts'
import type {BirdTable} from './bird-rows.ts'
import {careCaution, careList} from './care-words.ts'
import type {CareWords} from './care-words.ts'
import {ofStepWords, uncertainShareWords} from './chicks-of-step.ts'
import {dateWords, daySpan} from './dates.ts'
import {shareInText} from './estimate-words.ts'
import {hatchTable} from './hatch-rows.ts'
import type {HatchTable} from './hatch-rows.ts'
import {birdsByStepPath, BIRDS, stepPath, strainPath, summaryPath} from './links.ts'
import {mainMeasure} from './main-measure.ts'
import {mixedReasons} from './mixed-words.ts'
import {counted, figured, listWords, percent, percentSign, sentence} from './numbers.ts'
import type {Cell, Figure, Page, Table} from './page.ts'
import {penCards} from './pen-cards.ts'
import type {PenCard} from './pen-cards.ts'
import {plates, type Plate} from './plates.ts'
import type {RecordsOfBird} from './records-by-bird.ts'
import {setAsideWords} from './set-aside-words.ts'
import {stepAlikeWords} from './step-alike.ts'
import {stepCloseness, type StepClosenessView} from './step-closeness.ts'
import {spreadFigure} from './step-figures.ts'
import {eggTable, leavingTable} from './step-eggs.ts'
import {changeInShort, stepChangeView, type StepChangeView} from './step-change-words.ts'
import {spreadLeftOut, spreadTable, standardTable} from './step-even.ts'
import {askedWords, carriersWords, partsTable} from './step-true-bred.ts'
import {stepMeaning} from './step-words.ts'
import {trueBredView} from './true-bred-view.ts'
import type {TrueBredView} from './true-bred-view.ts'
import {ALL_THEY_COULD} from './true-bred-words.ts'
import {weightsFigure} from './weights-figure.ts'

export interface StepLink {
  readonly label: string
  readonly link: string | null
  readonly current: boolean
  readonly note: string
}

/** The ladder as a row of links, planned steps after those reached. */
const stepLinks = (ladder: readonly LadderStep[], current: string | null): readonly StepLink[] =>
  ladder.map(step => ({label: step.kind === 'planned' ? `${step.label}, planned` : step.label, link: stepPath(step.label), current: step.label === current, note: ''}))

export interface StepView {
  readonly label: string
  readonly facts: readonly Fact[]
  readonly lead: string
  readonly plates: readonly Plate[]
  readonly steps: readonly StepLink[]
  /** path of its sheet to send on; empty while nothing has hatched in it */
  readonly summary: string
  /** said in place of everything else while nothing has hatched in it */
  readonly planned: string
  readonly body: string
  readonly trueBred: TrueBredView | null
  readonly trueBredWords: string
  readonly trueBredFigure: Figure | null
  /** truer and more even than the step before? in a sentence; empty where there is none before */
  readonly answer: string
  /** null: no step before it */
  readonly change: StepChangeView | null
  /** whether both were reared alike; empty where nothing on record tells them apart */
  readonly alike: string
  /** by sex, pen and last seasons */
  readonly parts: Table | null
  readonly asked: string
  readonly carriers: readonly string[]
  readonly evenWords: string
  readonly evenFigures: readonly Figure[]
  readonly spread: Table | null
  readonly spreadLeftOut: readonly string[]
  readonly standard: Table | null
  readonly eggs: Table | null
  readonly eggNote: readonly string[]
  readonly leaving: Table | null
  readonly closeness: StepClosenessView | null
  readonly strains: Table | null
  readonly strainWords: string
  readonly kept: BirdTable | null
  readonly keptWords: string
  readonly symbolNote: string
  readonly allBirds: {readonly link: string; readonly words: string}
  readonly pens: readonly PenCard[]
  readonly hatches: HatchTable | null
  /** which of their chicks are of this step, where not all are */
  readonly hatchNote: readonly string[]
  readonly care: readonly CareWords[]
  readonly caution: string | null
}

const NOTHING_YET = {
  trueBred: null, trueBredWords: '', trueBredFigure: null, answer: '', change: null, alike: '', parts: null, asked: '', carriers: [], evenWords: '', evenFigures: [], spread: null, spreadLeftOut: [], standard: null, eggs: null, eggNote: [], leaving: null,
  closeness: null, strains: null, strainWords: '', kept: null, keptWords: '', symbolNote: '', allBirds: {link: BIRDS, words: ''}, pens: [], hatches: null, hatchNote: [], care: [], caution: null,
} as const

export interface StepSources {
  readonly findings: Findings
  readonly records: (bird: Bird) => RecordsOfBird
  /** the chart that the pages of all steps mated inside the line share */
  readonly trueBredFigure: Figure | null
  /** birds by step have pages of their own */
  readonly large: boolean
}

function facts(step: ReachedStep, {strainShares, book}: Findings): readonly Fact[] {
  const {firstHatch, lastHatch} = step
  const hatches = step.hatches.length === 0 ? 'none on record' : `${counted(step.hatches.length, 'hatch', 'hatches')}${firstHatch && lastHatch ? `, ${firstHatch.first === lastHatch.last ? dateWords(firstHatch) : daySpan(firstHatch.first, lastHatch.last)}` : ''}`
  const share = strainShares.steps.find(each => each.step === step.label), recurrent = book.project.recurrent
  return [
    fact(step.seasons.length > 1 ? 'Seasons' : 'Season', step.seasons.length === 0 ? 'not known' : listWords(step.seasons.map(String))),
    fact('Matings', counted(step.pens.length, 'pen')), fact('Hatches', hatches), fact('Chicks', `${step.chicks.hatched}, ${step.chicks.scored} scored`),
    ...(share && recurrent ? [fact(recurrent.name, `${percentSign(share.shares.get(recurrent) ?? 0)} expected on average`, strainPath(recurrent))] : []),
  ]
}

function careOf(step: ReachedStep, book: Findings['book']): readonly CareEntry[] {
  const pens = new Set(step.pens), hatches = new Set(step.hatches), birds = new Set(step.birds)
  return book.care.filter(entry => entry.pens.some(pen => pens.has(pen)) || entry.hatches.some(hatch => hatches.has(hatch)) || entry.birds.some(bird => birds.has(bird)))
}

function strainTable(step: ReachedStep, {strainShares}: Findings): Table | null {
  const found = strainShares.steps.find(each => each.step === step.label)
  if (!found) return null
  const rows = [...found.shares].filter(([, share]) => share > 0).map(([strain, share]): readonly Cell[] => [{text: strain.name, link: strainPath(strain)}, percent(share)])
  return {columns: [{head: 'Strain'}, {head: 'Expected, %', number: true}], rows: found.unknown > 0.0005 ? [...rows, ['not known', percent(found.unknown)]] : rows}
}

function strainWords(step: ReachedStep, {book}: Findings): string {
  const {recurrentShare} = step, {recurrent} = book.project
  const mean = 'This is an average over all chicks so bred, by descent alone; a single bird may carry a good deal more or less.'
  if (recurrentShare === null || recurrent === null) return mean
  const [least, greatest] = [percentSign(recurrentShare.least), percentSign(recurrentShare.greatest)]
  const range = least === greatest ? '' : ` By descent the chicks of this step run from ${least} to ${greatest} ${recurrent.name}.`
  const unlisted = step.hatches.filter(hatch => hatch.unlisted > 0 && hatch.step.label === step.label).map(({parentage, unlisted: count}) => ({parentage, count}))
  const open = uncertainShareWords([...step.birds, ...step.tallies, ...unlisted], recurrent)
  return `${mean}${range}${open === null ? '' : ` ${open}`}`
}

function evenPart(step: ReachedStep, {findings}: StepSources, first: number): Pick<StepView, 'evenFigures' | 'evenWords' | 'spread' | 'spreadLeftOut' | 'standard'> {
  const {book, spread, trueBred} = findings, rows = spread.rows.filter(row => row.step === step.label)
  const trait = mainMeasure(book.traits), main = rows.filter(row => row.trait === trait)
  const weights = trait === null ? null : weightsFigure(step.label, trait, main, trueBred.verdicts, book.project, `Figure ${first}.`)
  const sex = spread.rows.some(row => row.trait === trait && row.sex === 'female' && row.spread.kind === 'spread') ? 'female' : 'male'
  const course = trait === null ? null : spreadFigure(trait, spread.rows, sex, null, `Figure ${weights ? first + 1 : first}.`)
  const measured = step.birds.filter(bird => book.traits.some(each => each.kind === 'measured' && countedValue(bird, each) !== null)).length
  return {
    evenFigures: [weights, course].filter(figure => figure !== null), spread: spreadTable(rows, book.project.units), spreadLeftOut: spreadLeftOut(rows),
    evenWords: rows.length === 0 ? 'Nobody of this step has been weighed or measured at its age yet.' : `${measured} of ${figured(step.chicks.banded, 'banded bird')} weighed or measured at an age that counts.`,
    standard: standardTable(findings.againstStandard.filter(row => row.step === step.label), book.project.units),
  }
}

function reachedView(step: ReachedStep, sources: StepSources): Omit<StepView, 'label' | 'facts' | 'lead' | 'plates' | 'steps' | 'summary' | 'planned' | 'body'> {
  // of a cross it is not asked whether it breeds true; the ladder's page has all steps beside one another
  const trueBredFigure = step.step.interSe >= 1 ? sources.trueBredFigure : null
  const {findings, records} = sources, {book, trueBred, hatchResults, census} = findings
  const rate = trueBred.steps.find(each => each.step === step.label) ?? null
  const rates = hatchResults.steps.find(each => each.step === step.label) ?? null
  const breeders = new Set(census.breeders)
  const kept = step.birds.filter(bird => bird.kept !== null || records(bird).stays.length > 0)
  const hatches = new Set(step.hatches), care = careOf(step, book)
  const change = findings.changes.find(({to}) => to === step.label)
  const family = findings.trends.shares.find(({by}) => by === 'true-bred')?.steps.find(each => each.step === step.label)?.family ?? null
  const own = ofStepWords(step.hatches, step.label), shared = own === null ? [] : [`${sentence(own)}; the others are of other steps, and eggs are counted by the whole setting.`]
  return {
    trueBred: rate ? trueBredView(rate, family, book.project.units) : null,
    trueBredWords: trueBred.required.length === 0 ? 'No trait is marked as required yet, so there is nothing to be true to.'
      : rate === null || rate.rate.kind === 'cannot-say' ? `No chick of ${step.label} has been scored for all it could show of what the standard requires.`
        : `${shareInText(rate.rate)} showed ${ALL_THEY_COULD}.${rate.interSe ? '' : ` A ${step.label === 'mixed' ? 'mixed mating' : 'cross or backcross'} cannot breed true; this is what there was to choose from.`}`,
    answer: change ? changeInShort(change) : '', change: change ? stepChangeView(change, scorersInDoubt(findings.gradedScores.agreements, findings.misscoring)) : null, alike: change ? stepAlikeWords(change, findings) : '', parts: partsTable(step, findings), asked: askedWords(step, findings), carriers: carriersWords(step, findings),
    trueBredFigure, ...evenPart(step, sources, trueBredFigure ? 2 : 1),
    eggs: eggTable(step, rates), leaving: leavingTable([...step.birds, ...step.tallies]),
    eggNote: [...(rates ? [`Hatch of fertile eggs: ${shareInText(rates.hatchOfFertile)}.`, `Hatch of set: ${shareInText(rates.hatchOfSet)}.`, ...setAsideWords(rates.setAside)] : ['No setting of this step is on record.']), ...shared],
    closeness: stepCloseness(step.label, findings), strains: strainTable(step, findings), strainWords: strainWords(step, findings),
    kept: kept.length === 0 ? null : birdTable(kept, book, breeders, `Birds kept from ${step.label}`),
    keptWords: kept.length === 0 ? 'No bird of this step has been kept for breeding so far.' : '', symbolNote: symbolNote(book.traits),
    allBirds: {link: sources.large && step.chicks.banded > 0 ? birdsByStepPath(step.label) : BIRDS, words: step.chicks.banded === 0 ? 'All birds on record' : `All ${figured(step.chicks.banded, 'banded bird')} of ${step.label}`},
    pens: penCards(step.pens, findings, step.label), hatches: hatchTable(hatchResults.hatches.filter(({hatch}) => hatches.has(hatch)), `Hatches of ${step.label}`, 'step'),
    hatchNote: shared, care: careList(care, book.asOf), caution: careCaution(care),
  }
}

/** Of the mixed, which reasons leave them without a step, and how many. */
function leadOf(step: ReachedStep): string {
  const reasons = mixedReasons([...step.birds, ...step.tallies]), [only] = reasons
  if (!only) return stepMeaning(step.step)
  const said = reasons.length === 1 ? sentence(only.why) : sentence(reasons.map(({why, count}) => `of ${count}, ${why}`).join('; '))
  return `${stepMeaning(step.step)} ${said}.`
}

export function stepPage(step: LadderStep, sources: StepSources): Page {
  const {findings} = sources, {book, ladder} = findings
  const shared = {label: step.label, steps: stepLinks(ladder, step.label), summary: step.kind === 'planned' ? '' : summaryPath({of: 'step', name: step.label}), body: book.stepNotes.get(step.label)?.body ?? '', plates: plates(book.stepNotes.get(step.label)?.photos ?? [], step.label, false)}
  const view: StepView = step.kind === 'planned'
    ? {...shared, ...NOTHING_YET, facts: [], lead: 'Planned, not reached yet.', planned: `Nothing has hatched in ${step.label} so far. Its figures will stand here once chicks are written down.`}
    : {...shared, facts: facts(step, findings), lead: leadOf(step), planned: '', ...reachedView(step, sources)}
  return {path: stepPath(step.label), template: 'step', title: step.label, section: 'ladder', view, search: {kind: 'step', words: `${step.label} step ladder`}}
}
