/** One pen: its males and females with their days, what was intended and what came, its hatches, and how true they bred. */
import {penKinship} from '../findings/pen-kinship.ts'
import type {Findings} from '../findings/study.ts'
import type {Pen, Stay} from '../logbook/book.ts'
import {isWhole} from '../records/dates.ts'
import {fact} from './bird-lead.ts'
import type {Fact} from './bird-lead.ts'
import {markOf, markedTrait} from './bird.ts'
import {symbolNote} from './bird-rows.ts'
import {careCaution, careList} from './care-words.ts'
import type {CareWords} from './care-words.ts'
import {dateWords, dayWords, stayWords} from './dates.ts'
import {shareInText} from './estimate-words.ts'
import {hatchTable} from './hatch-rows.ts'
import type {HatchTable} from './hatch-rows.ts'
import {growthWords} from './growth-words.ts'
import {feedWords, layWords} from './lay-rows.ts'
import {livedWords} from './livability-rows.ts'
import {birdPath, LAY, MALES, penPath} from './links.ts'
import {mixedWhy} from './mixed-words.ts'
import {counted, listWords, percent, percentSign, sentence} from './numbers.ts'
import type {Page} from './page.ts'
import {matingWords} from './pen-cards.ts'
import {penForecast} from './pen-forecast.ts'
import type {PenForecast} from './pen-forecast.ts'
import {plates, type Plate} from './plates.ts'
import {birdWord, sexSymbol} from './sex-words.ts'
import {stepWords} from './step-words.ts'
import {trueBredView} from './true-bred-view.ts'
import type {TrueBredView} from './true-bred-view.ts'
import {ALL_THEY_COULD} from './true-bred-words.ts'

interface StayRow {
  readonly band: string
  readonly link: string
  readonly symbol: string
  readonly word: string
  readonly step: string
  readonly stay: string
  readonly chance: string
}

export interface PenView {
  readonly id: string
  readonly facts: readonly Fact[]
  readonly lead: string
  readonly plates: readonly Plate[]
  readonly symbolNote: string
  readonly birds: readonly StayRow[]
  readonly chances: boolean
  /** what a change of males means for the chicks */
  readonly males: readonly string[]
  /** how closely bred its chicks are to be expected, by male; empty without a pair */
  readonly close: readonly string[]
  /** where males are chosen, for a pen of the latest season */
  readonly choose: string | null
  readonly intended: string
  readonly hatches: HatchTable | null
  readonly results: readonly string[]
  readonly forecast: PenForecast | null
  readonly trueBred: TrueBredView | null
  readonly trueBredWords: string
  /** how its chicks lived and grew, what its hens laid and its birds ate; empty where nothing is recorded */
  readonly lived: readonly string[]
  readonly laid: readonly string[]
  /** where all of that stands side by side */
  readonly lay: string
  readonly care: readonly CareWords[]
  readonly caution: string | null
  readonly body: string
}

function stayRows(pen: Pen, {book}: Findings): readonly StayRow[] {
  const mark = markOf(markedTrait(book.traits))
  const row = ({bird, from, to, chance}: Stay): StayRow => ({
    band: bird.band, link: birdPath(bird), symbol: sexSymbol(bird.sex, mark(bird).fill), word: birdWord(bird, book.project.species, (pen.from ?? pen.to)?.first ?? book.asOf),
    step: stepWords(bird), stay: stayWords(from, to) ?? 'the whole time', chance: chance === null ? '' : percentSign(chance),
  })
  return [...pen.males, ...pen.females].map(row)
}

/** Several males, or one put in another's place: what that does to the chicks' descent. */
function maleWords(pen: Pen, spermStoreDays: number): readonly string[] {
  if (pen.males.length < 2) return []
  const gone = pen.males.filter(({to}) => to !== null && pen.males.some(other => other.from !== null && to.first <= other.from.last + 1))
  const stated = pen.males.some(({chance}) => chance !== null)
  const chances = stated ? 'The keeper states what share of the chicks each may have sired.' : 'Unless a chick’s own line says otherwise, each male present has an equal chance of each chick.'
  if (gone.length === 0) return [`${sentence(counted(pen.males.length, 'male'))} ran with the hens. ${chances}`]
  return [chances, ...gone.map(({bird, to}) => {
    const until = to && isWhole(to) ? `eggs laid up to ${dayWords(to.first + spermStoreDays)}` : `eggs laid up to ${spermStoreDays} days later`
    return `${bird.band} was taken out${to ? ` ${isWhole(to) ? 'on' : 'in'} ${dateWords(to)}` : ''}. Hens may keep a male’s sperm, here reckoned at ${counted(spermStoreDays, 'day')}, so ${until} may still be his.`
  })]
}

/** Why the chicks of a pen are mixed, where they are: ` Mixed: …` */
function mixedOf(pen: Pen): string {
  const why = [...new Set(pen.hatches.flatMap(hatch => mixedWhy(hatch) ?? []))]
  return why.length === 0 ? '' : ` Mixed, for each chick: ${why.join('; ')}.`
}

function intendedWords(pen: Pen): string {
  const came = [...new Set(pen.hatches.map(hatch => hatch.step.label))]
  if (pen.intends === null) return came.length === 0 ? '' : `Came: ${listWords(came)}. What was intended is not written.${mixedOf(pen)}`
  if (came.length === 0) return `Intended: ${pen.intends}. Nothing has hatched from it yet.`
  return came.length === 1 && came[0] === pen.intends ? `Intended: ${pen.intends}, and so it came.` : `Intended: ${pen.intends}. By descent its hatches are ${listWords(came)}.${mixedOf(pen)}`
}

/** F of the chicks by male, and the pair that would be closest. */
function closeWords(pen: Pen, {pedigree, kinship, book}: Findings): readonly string[] {
  const found = penKinship(pen, pedigree, kinship)
  if (found === null) return []
  const {males, hens, worst} = found, limit = book.project.limits.matingInbreeding
  const [only] = males
  const byMale = males.length === 1 && only ? `Chicks of ${only.male.band} and ${counted(hens, 'hen')}: F ${percentSign(only.mean)} on average.`
    : `F of the chicks on average over ${counted(hens, 'hen')}, by male: ${listWords(males.map(({male, mean}) => `${male.band} ${percentSign(mean)}`))}.`
  const range = percent(worst.low) === percent(worst.high) ? percentSign(worst.high) : `${percent(worst.low)} to ${percentSign(worst.high)}`
  const over = limit !== null && worst.high > limit + 1e-12 ? `, over the project’s limit of ${percentSign(limit)} for one mating` : ''
  return [`${byMale}${hens > 1 || males.length > 1 ? ` Closest: ${worst.male.band} with ${worst.hen.band}, ${range}${over}.` : over === '' ? '' : ` That is${over.replace(/^,/, '')}.`}`]
}

function facts(pen: Pen): readonly Fact[] {
  return [
    fact('Season', String(pen.season)), fact('Penned', stayWords(pen.from, pen.to) ?? 'days not recorded'), ...(pen.keeper ? [fact('Kept by', pen.keeper.name)] : []),
    ...(pen.intends === null ? [] : [fact('Intended', pen.intends)]),
  ]
}

function livedOf(pen: Pen, {life, book}: Findings): readonly string[] {
  const lived = life.livability.groups.find(({group}) => group.by === 'pen' && group.name === pen.id), grown = life.growth.pens.find(({group}) => group.name === pen.id)
  return [...(lived ? livedWords(lived) : []), ...(grown ? growthWords(grown.growth, book.project.units) : [])]
}

function laidOf(pen: Pen, {life, book}: Findings): readonly string[] {
  const {units} = book.project, lay = life.lay.sheets.find(({sheets: [sheet]}) => sheet?.pen === pen), fed = life.feed.find(each => each.pen === pen)
  return [...(lay ? layWords(lay, units) : []), ...(fed ? feedWords(fed, units) : [])]
}

export function penPage(pen: Pen, findings: Findings): Page {
  const {book, hatchResults, trueBred} = findings
  const rates = hatchResults.pens.find(each => each.pen === pen), bred = trueBred.pens.find(each => each.pen === pen)
  const birds = new Set([...pen.males, ...pen.females].map(({bird}) => bird)), hatches = new Set(pen.hatches)
  const inTime = (on: {first: number; last: number}): boolean => (pen.from === null || on.last >= pen.from.first) && (pen.to === null || on.first <= pen.to.last)
  const care = book.care.filter(entry => entry.pens.includes(pen) || entry.hatches.some(hatch => hatches.has(hatch)) || (inTime(entry.on) && entry.birds.some(bird => birds.has(bird))))
  const shared = pen.hatches.filter(hatch => hatch.pens.length > 1).length
  const view: PenView = {
    id: pen.id, facts: facts(pen), lead: `${sentence(matingWords(pen))}.`, symbolNote: symbolNote(book.traits), birds: stayRows(pen, findings),
    chances: pen.males.some(({chance}) => chance !== null), males: maleWords(pen, book.project.spermStoreDays), intended: intendedWords(pen),
    close: closeWords(pen, findings), choose: findings.pairings.pens.some(each => each.pen === pen) ? MALES : null,
    hatches: hatchTable(hatchResults.hatches.filter(({hatch}) => hatches.has(hatch)), `Hatches of pen ${pen.id}`, 'pen'),
    results: [
      ...(rates ? [`Together: fertility ${shareInText(rates.fertility)}, hatch of fertile eggs ${shareInText(rates.hatchOfFertile)}, hatch of set ${shareInText(rates.hatchOfSet)}.`] : []),
      ...(shared > 0 ? [`${sentence(counted(shared, 'hatch', 'hatches'))} shared the setting with another pen and ${shared === 1 ? 'stands' : 'stand'} outside these sums.`] : []),
      ...(pen.hatches.length === 0 ? ['No eggs of this pen have been set yet.'] : []),
    ],
    forecast: penForecast(pen, findings),
    trueBred: bred && bred.rate.kind === 'share' ? trueBredView(bred, findings.trueBredParts.find(({of, name}) => of === 'pen' && name === pen.id)?.family ?? null, book.project.units) : null,
    trueBredWords: bred && bred.rate.kind === 'share' ? `${shareInText(bred.rate)} of its chicks showed ${ALL_THEY_COULD}.` : pen.hatches.length === 0 ? '' : 'None of its chicks has been scored for what the standard requires.',
    lived: livedOf(pen, findings), laid: laidOf(pen, findings), lay: LAY, care: careList(care, book.asOf), caution: careCaution(care), body: pen.body, plates: plates(pen.photos ?? [], `Pen ${pen.id}`, false),
  }
  return {path: penPath(pen), template: 'pen', title: `Pen ${pen.id}`, section: 'pens', view, search: {kind: 'pen', words: `pen ${pen.id} ${pen.season} ${pen.males.map(({bird}) => bird.band).join(' ')}`}}
}
