/** Which cockerel into which pen? Every male there is to choose from against the hens of every pen of the latest season, by the F of the chicks they would have. */
import type {BreedingPair} from '../findings/breeding-pairs.ts'
import type {MaleForPen, PenToFill} from '../findings/males-for-pens.ts'
import {malesPlaced} from '../findings/males-placed.ts'
import type {Findings} from '../findings/study.ts'
import type {Bird} from '../logbook/book.ts'
import {birdPath, MALES, penPath, ROTATION} from './links.ts'
import {malesAnswer, type MalesAnswer} from './males-answer.ts'
import {counted, figured, listWords, percent, percentSign, saying, sentence} from './numbers.ts'
import type {Cell, Page, Table} from './page.ts'
import {oneMoreWords, ratePassedWords} from './one-more-male-words.ts'
import {pairReasonWords} from './pair-reason-words.ts'

interface PenChoice {
  readonly id: string
  readonly link: string
  readonly words: string
  readonly label: string
  readonly table: Table
  /** the rest of the males, and how many */
  readonly more: {readonly title: string; readonly label: string; readonly table: Table} | null
}

export interface MalesView {
  readonly lead: string
  readonly wanting: string
  /** null where there is nobody to choose, or nothing to choose for */
  readonly answer: MalesAnswer | null
  readonly passed: string
  readonly limit: string
  readonly pens: readonly PenChoice[]
  readonly oneMore: readonly string[]
  readonly best: Table | null
  readonly worst: Table | null
  readonly reasons: readonly string[]
  readonly kinship: Table | null
  readonly kinshipWords: string
  readonly rotation: string
}

/** Males of a pen shown at once, besides the one that stands there; pairs in a list; reasons told; birds that a table of kinship still holds. */
const HANDFUL = 5, PAIRS = 5, REASONS = 3, MOST_IN_TABLE = 40

const bandCell = (bird: Bird): Cell => ({text: bird.band, link: birdPath(bird)})

/** `15.2`, or the range `14.5–19.2` where parents are in doubt */
const rangeText = ({low, high}: {readonly low: number; readonly high: number}): string => (percent(low) === percent(high) ? percent(high) : `${percent(low)}–${percent(high)}`)

function maleTable(males: readonly MaleForPen[], hens: number, limit: number | null): Table {
  return {
    columns: [{head: 'Male'}, {head: 'Step'}, {head: 'Chicks’ F, %', number: true}, {head: 'Closest hen'}, {head: 'With her, %', number: true}, ...(limit === null ? [] : [{head: 'Hens over the limit', number: true}])],
    rows: males.map(({male, here, mean, worst, overLimit}): readonly Cell[] => [
      bandCell(male), `${male.step.label}${here ? ', here now' : ''}`, percent(mean), bandCell(worst.hen), rangeText(worst), ...(limit === null ? [] : [`${overLimit} of ${hens}`]),
    ]),
  }
}

function penChoice({pen, hens, males}: PenToFill, limit: number | null): PenChoice {
  const shown = males.filter(({here}, index) => index < HANDFUL || here), rest = males.filter(male => !shown.includes(male))
  const [best] = males, now = males.filter(({here}) => here)
  const standing = now.length === 0 ? 'None of the males to choose from stands here.'
    : `${listWords(now.map(({male, mean}) => `${male.band} (${percentSign(mean)})`))} ${now.length === 1 ? 'stands' : 'stand'} here now${best?.here ? ', the least kin of all' : ''}.`
  const within = limit === null || males.some(({overLimit}) => overLimit === 0) ? '' : ' With every one of them some hen passes the limit.'
  return {
    id: pen.id, link: penPath(pen), label: `Males for pen ${pen.id}`, words: `${sentence(counted(hens.length, 'living hen'))}. ${standing}${within}`, table: maleTable(shown, hens.length, limit),
    more: rest.length === 0 ? null : {title: `${sentence(counted(rest.length, 'more male'))}, closer kin`, label: `More males for pen ${pen.id}`, table: maleTable(rest, hens.length, limit)},
  }
}

function pairTable(pairs: readonly BreedingPair[], caption: string): Table | null {
  return pairs.length === 0 ? null : {
    caption, columns: [{head: 'Male'}, {head: 'Hen'}, {head: 'Chicks’ F, %', number: true}, {head: 'Range', number: true}],
    rows: pairs.map(({male, hen, mean, low, high}): readonly Cell[] => [bandCell(male), bandCell(hen), percent(mean), rangeText({low, high})]),
  }
}

function kinshipTable({breedingPairs: {males, hens, chicksOf}}: Findings): Table | null {
  if (males.length === 0 || hens.length === 0 || males.length + hens.length > MOST_IN_TABLE) return null
  return {
    columns: [{head: 'Hen'}, ...males.map(({band}) => ({head: band, number: true}))],
    rows: hens.map((hen): readonly Cell[] => [bandCell(hen), ...males.map(male => percent(chicksOf(male, hen).mean))]),
  }
}

function kinshipWords({breedingPairs: {males, hens}}: Findings): string {
  const command = 'pinfeather figures kinship'
  if (males.length === 0 || hens.length === 0) return ''
  return males.length + hens.length > MOST_IN_TABLE ? `${figured(males.length + hens.length, 'bird')} are bred from, too many for a table here; “${command}” prints every pair of living birds.`
    : `F of the chicks of each pair of breeders, %; it is the kinship of the two. “${command}” prints every pair of living birds, two males and two hens too.`
}

/** The closest pair of each male, the closest first; so that the reasons differ. */
function worstPairs(pairs: readonly BreedingPair[]): readonly BreedingPair[] {
  return [...pairs].reverse().filter(({male}, index, all) => all.findIndex(other => other.male === male) === index)
}

function limitWords({pairings: {limit, pens}}: Findings): string {
  if (limit === null) return 'The project states no limit for one mating.'
  const males = new Set(pens.flatMap(pen => pen.males.filter(({overLimit}) => overLimit === 0).map(({male}) => male)))
  return `The project’s limit for one mating is ${percentSign(limit)}, tried at the upper end of what may be.${pens.length > 0 && males.size === 0 ? ' No male here keeps within it with every hen of a pen: take the least, and read what other blood would do.' : ''}`
}

function wanting({book, census, pairings}: Findings): string {
  if (pairings.males.length > 0 && pairings.pens.length > 0) return ''
  if (census.pens.length === 0) return 'No pen has been put together yet. Once one has, every male there is to choose from is tried here against its hens.'
  if (pairings.pens.length === 0) return `No hen of season ${census.season ?? book.pens.at(-1)?.season ?? ''} is living by the records, so there is nobody to choose a male for.`
  return 'No male of the new breed is living that is bred from or young enough to be, so there is none to choose from.'
}

export function malesPage(findings: Findings): Page {
  const {pairings: {males, pens, limit}, breedingPairs: {pairs}, census, oneMoreMale, ratePassed, pairReason} = findings
  const none = wanting(findings), say = saying(males.length, pens.length)
  const worst = worstPairs(pairs)
  const view: MalesView = {
    lead: none === '' ? `${sentence(say(males.length, 'male'))} to choose from for the hens of ${say(pens.length, 'pen')} of ${census.season ?? 'the season'}, by how closely bred their chicks would be.` : 'Every male against the hens of every pen, by how closely bred their chicks would be.',
    wanting: none, answer: none === '' ? malesAnswer(malesPlaced(findings.pairings), pairReason) : null, passed: ratePassed ? ratePassedWords(ratePassed) : '', limit: none === '' ? limitWords(findings) : '',
    pens: none === '' ? pens.map(pen => penChoice(pen, limit)) : [], oneMore: oneMoreMale ? oneMoreWords(oneMoreMale) : [],
    best: pairTable(pairs.slice(0, PAIRS), 'The least kin'), worst: pairs.length > PAIRS ? pairTable([...pairs].reverse().slice(0, PAIRS), 'The closest kin') : null,
    reasons: pairs.length > PAIRS ? worst.slice(0, REASONS).map(({male, hen}) => pairReasonWords(pairReason(male, hen))) : [],
    kinship: kinshipTable(findings), kinshipWords: kinshipWords(findings), rotation: ROTATION,
  }
  return {path: MALES, template: 'males', title: 'Which cockerel into which pen?', section: 'pens', view, search: {kind: 'index', words: 'which cockerel male cock into which pen kinship pairs mating inbreeding one more male'}}
}
