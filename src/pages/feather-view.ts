/** The flock as one feather: a row a step, its barbs and the same in words, with the table that says it all in numbers. */
import {feather, plannedBarbs} from '../charts/feather.ts'
import type {Barb, Barbs} from '../charts/feather.ts'
import {countedValue} from '../findings/counted-value.ts'
import type {LadderStep, ReachedStep} from '../findings/ladder.ts'
import type {Findings} from '../findings/study.ts'
import type {Bird, Trait} from '../logbook/book.ts'
import {cannotSay, cannotSayShort} from './estimate-words.ts'
import {stepPath} from './links.ts'
import {figured, listWords, NOTHING, ofWords, percent} from './numbers.ts'
import type {Cell, Table} from './page.ts'
import {mainMeasure} from './main-measure.ts'
import {stepMeaning} from './step-words.ts'
import {onFewerShort} from './true-bred-words.ts'

export interface FeatherRow {
  readonly label: string
  readonly link: string
  readonly when: string
  readonly barbs: Barbs
  readonly words: string
  readonly soft: string
}

export interface FeatherView {
  readonly title: string
  readonly note: string
  readonly words: string
  /** are there barbs that need a key? */
  readonly key: boolean
  readonly rows: readonly FeatherRow[]
  readonly table: Table
  /** steps that the project's ladder does not name */
  readonly beside: readonly {readonly text: string; readonly link: string}[]
}

/** The weight that makes a barb's length: it must be aimed at, or there is no standard to draw by. */
function lengthOf(trait: Trait | null): (bird: Bird) => number | null {
  return bird => {
    if (trait === null || bird.sex === 'unknown') return null
    const wanted = trait.wanted[bird.sex], value = countedValue(bird, trait)
    const mark = wanted?.kind === 'about' ? wanted.value : wanted?.kind === 'between' ? (wanted.low + wanted.high) / 2 : wanted?.kind === 'at-least' ? wanted.value : null
    return mark !== null && mark > 0 && typeof value === 'number' && value > 0 ? value / mark : null
  }
}

/** Is a length aimed at that the dotted lines can stand for? */
const isAimed = (trait: Trait | null): trait is Trait => trait !== null && (['male', 'female'] as const).some(sex => ['about', 'between', 'at-least'].includes(trait.wanted[sex]?.kind ?? ''))

function barbsOf(step: ReachedStep, findings: Findings, length: (bird: Bird) => number | null, standard: boolean): Barbs {
  const barbs = step.birds.flatMap((bird): readonly Barb[] => {
    const verdict = findings.trueBred.verdicts.get(bird)?.is
    if (verdict === undefined || verdict === 'lost') return []
    return [{sex: bird.sex, weight: length(bird), verdict: verdict === 'right' ? 'right' : verdict === 'off' ? 'off' : 'unknown'}]
  })
  const order = {off: 0, unknown: 1, right: 2}
  return feather([...barbs].sort((a, b) => order[a.verdict] - order[b.verdict]), {standard})
}

function row(step: LadderStep, findings: Findings, length: (bird: Bird) => number | null, standard: boolean): FeatherRow {
  if (step.kind === 'planned') return {label: step.label, link: stepPath(step.label), when: 'in the pin', barbs: plannedBarbs, words: 'Planned, not reached yet.', soft: ''}
  const bred = findings.trueBred.steps.find(each => each.step === step.label), rate = bred?.rate, fewer = bred ? onFewerShort(bred) : ''
  const words = rate?.kind === 'share' ? `${ofWords(rate.count, rate.total)} show every required trait they could${fewer === '' ? '' : `; ${fewer}`}.`
    : `${step.chicks.hatched} hatched; ${rate ? cannotSay(rate) : 'none scored'} for every required trait.`
  return {label: step.label, link: stepPath(step.label), when: listWords(step.seasons.map(String)), barbs: barbsOf(step, findings, length, standard), words, soft: stepMeaning(step.step)}
}

function featherTable({ladder, trueBred, spread}: Findings, trait: Trait | null): Table {
  const rows = ladder.map((step): readonly Cell[] => {
    if (step.kind === 'planned') return [{text: step.label, link: stepPath(step.label)}, 'planned', NOTHING, NOTHING, NOTHING, NOTHING]
    const rate = trueBred.steps.find(each => each.step === step.label)?.rate
    const cv = spread.rows.find(each => each.step === step.label && each.trait === trait && each.sex === 'female')?.spread
    return [{text: step.label, link: stepPath(step.label)}, String(step.chicks.male), String(step.chicks.female), String(step.chicks.unknownSex), rate?.kind === 'share' ? ofWords(rate.count, rate.total) : rate ? cannotSayShort(rate) : NOTHING,
      cv?.kind === 'spread' ? percent(cv.cv) : cv ? cannotSayShort(cv) : NOTHING]
  })
  return {columns: [{head: 'Step'}, {head: 'Males', number: true}, {head: 'Females', number: true}, {head: 'Not sexed', number: true}, {head: 'All they could', number: true}, {head: 'Females’ CV, %', number: true}], rows}
}

/** Null while nothing has hatched on the ladder and nothing is planned. */
export function featherView(findings: Findings): FeatherView | null {
  const {ladder, book} = findings
  if (ladder.length === 0) return null
  const trait = mainMeasure(book.traits), climbed = ladder.filter(step => !step.beside), reached = climbed.filter(step => step.kind === 'reached')
  const aimed = isAimed(trait) ? trait : null
  const rows = climbed.map(step => row(step, findings, lengthOf(trait), aimed !== null))
  const birds = rows.reduce((sum, {barbs: {drawn}}) => sum + drawn, 0)
  return {
    title: birds === 0 ? 'A feather still in the pin' : birds === 1 ? 'One bird, one feather' : `${birds} birds, one feather`,
    note: birds === 0 || aimed === null ? '' : `The dotted lines mark the ${aimed.name.toLowerCase()} that is wanted: a ragged edge is an uneven flock, a clean one an even flock.`,
    words: birds === 0 ? 'Nothing has hatched and been banded yet. The steps planned are drawn folded in their sheath.' : drawnWords(reached, birds, aimed, findings),
    key: birds > 0, rows, table: featherTable(findings, trait),
    beside: ladder.filter(step => step.beside).map(step => ({text: step.label, link: stepPath(step.label)})),
  }
}

/** What a barb is, and which chicks have none: every one that hatched on the ladder is drawn or counted here. */
function drawnWords(reached: readonly ReachedStep[], drawn: number, trait: Trait | null, {trueBred}: Findings): string {
  const birds = reached.flatMap(step => step.birds)
  const lost = birds.filter(bird => trueBred.verdicts.get(bird)?.is === 'lost').length
  const unsexed = birds.some(bird => bird.sex === 'unknown' && trueBred.verdicts.get(bird)?.is !== 'lost')
  const crowd = birds.length - lost - drawn
  const unbanded = reached.reduce((sum, {chicks}) => sum + chicks.unbanded + chicks.unlisted, 0)
  const left = [
    ...(lost > 0 ? [`${figured(lost, 'banded bird')} gone before scoring age`] : []), ...(unbanded > 0 ? [`${figured(unbanded, 'chick')} that never wore a band`] : []),
    ...(crowd > 0 ? [`${figured(crowd, 'bird')} for want of room`] : []),
  ]
  const length = trait === null ? '.' : `; its length is ${trait.name.toLowerCase()}, and a bird not weighed, or with nothing to be held against, is drawn short.`
  return `Every barb is one banded bird, males to the left of the shaft and females to the right${unsexed ? ', those not sexed among them' : ''}${length}${left.length === 0 ? '' : ` Not drawn: ${listWords(left)}.`}`
}
