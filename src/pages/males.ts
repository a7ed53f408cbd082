/** Which cockerel into which pen? Every male there is to choose from against the hens of every pen of the latest season, by the F of the chicks they would have. */
import type {MaleForPen, PenToFill} from '../findings/males-for-pens.ts'
import {malesPlaced} from '../findings/males-placed.ts'
import type {PairHarm} from '../findings/pair-harm.ts'
import type {Findings} from '../findings/study.ts'
import type {Bird} from '../logbook/book.ts'
import {maleWarning} from './harm-words.ts'
import {BACKCROSS, birdPath, MALES, penPath, ROTATION} from './links.ts'
import {malesAnswer, placeName, type MalesAnswer} from './males-answer.ts'
import {everyPair, leastText, neverByLoss, neverMake, pairTable, rangeText, worstFirst, type Never, type PutTogether} from './males-pairs.ts'
import {counted, figured, listWords, percent, percentSign, saying, sentence} from './numbers.ts'
import type {Cell, Page, Table} from './page.ts'
import {oneMoreWords, ratePassedWords, strongerWords} from './one-more-male-words.ts'
import {pairReasonWords} from './pair-reason-words.ts'

interface PenChoice {
  readonly title: string
  readonly link: string | null
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
  /** what would do more than one male more, and where the ladder tells of it */
  readonly stronger: string
  readonly ladder: string
  readonly limit: string
  readonly least: string
  readonly pens: readonly PenChoice[]
  readonly oneMore: readonly string[]
  readonly never: readonly Never[]
  readonly best: Table | null
  readonly worst: Table | null
  readonly reasons: readonly string[]
  readonly kinship: Table | null
  readonly kinshipWords: string
  readonly rotation: string
}

/** Males of a pen shown at once, besides the one that stands there; lines in a list of pairs; reasons told; birds that a table of kinship still holds. */
const HANDFUL = 5, PAIRS = 6, REASONS = 3, MOST_IN_TABLE = 40

const bandCell = (bird: Bird): Cell => ({text: bird.band, link: birdPath(bird)})

/** @param limited  does the column of hens over the limit tell one male from another? */
function maleTable(males: readonly MaleForPen[], hens: readonly Bird[], limited: boolean, harm: PairHarm): Table {
  const warnings = new Map(males.map(({male}) => [male, maleWarning(male, hens, harm)] as const)), warned = [...warnings.values()].some(words => words !== '')
  return {
    columns: [{head: 'Male'}, {head: 'Chicks’ F, %', number: true}, {head: 'Closest hen'}, {head: 'With her, %', number: true}, ...(limited ? [{head: 'Hens over the limit', number: true}] : []), {head: 'Step'}, ...(warned ? [{head: 'Beware'}] : [])],
    rows: males.map(({male, here, mean, worst, overLimit, atLeast}): readonly Cell[] => [
      bandCell(male), leastText(percent(mean), atLeast), bandCell(worst.hen), rangeText(worst), ...(limited ? [`${overLimit} of ${hens.length}`] : []), `${male.step.label}${here ? ', here now' : ''}`, ...(warned ? [warnings.get(male) ?? ''] : []),
    ]),
  }
}

function penChoice({pen, hens, males}: PenToFill, limit: number | null, harm: PairHarm): PenChoice {
  const shown = males.filter(({here}, index) => index < HANDFUL || here), rest = males.filter(male => !shown.includes(male))
  const [best] = males, now = males.filter(({here}) => here), title = placeName(pen)
  const standing = pen === null ? `${listWords(hens.map(({band}) => band))}: counted here as one pen.`
    : now.length === 0 ? 'None of the males to choose from stands here.'
    : `${listWords(now.map(({male, mean}) => `${male.band} (${percentSign(mean)})`))} ${now.length === 1 ? 'stands' : 'stand'} here now${best?.here ? ', the least kin of all' : ''}.`
  const all = limit !== null && males.every(({overLimit}) => overLimit === hens.length)
  const within = limit === null || males.some(({overLimit}) => overLimit === 0) ? '' : all ? ` Every male is over the limit of ${percentSign(limit)} with ${hens.length === 1 ? 'her' : 'every one of them'}; the least stands first.` : ' With every one of them some hen passes the limit.'
  return {
    title, link: pen && penPath(pen), label: `Males for ${pen ? `pen ${pen.id}` : 'hens kept and in no pen yet'}`, words: `${sentence(counted(hens.length, 'living hen'))}. ${standing}${within}`, table: maleTable(shown, hens, limit !== null && !all, harm),
    more: rest.length === 0 ? null : {title: `${sentence(counted(rest.length, 'more male'))}, closer kin`, label: `More males for ${title}`, table: maleTable(rest, hens, limit !== null && !all, harm)},
  }
}

function kinshipTable({breedingPairs: {males, hens, chicksOf}, pairHarm}: Findings): Table | null {
  if (males.length === 0 || hens.length === 0 || males.length + hens.length > MOST_IN_TABLE) return null
  return {
    columns: [{head: 'Hen'}, ...males.map(({band}) => ({head: band, number: true}))],
    rows: hens.map((hen): readonly Cell[] => [bandCell(hen), ...males.map(male => `${percent(chicksOf(male, hen).mean)}${pairHarm.lossOf(male, hen) ? ' !' : ''}`)]),
  }
}

function kinshipWords({breedingPairs: {males, hens}, pairHarm}: Findings): string {
  const command = 'pinfeather figures kinship'
  if (males.length === 0 || hens.length === 0) return ''
  return males.length + hens.length > MOST_IN_TABLE ? `${figured(males.length + hens.length, 'bird')} are bred from, too many for a table here; “${command}” prints every pair of living birds.`
    : `F of the chicks of each pair of breeders, %; it is the kinship of the two.${males.some(male => hens.some(hen => pairHarm.lossOf(male, hen))) ? ' “!” marks a pair that can lose chicks by a lethal rule.' : ''} “${command}” prints every pair of living birds, two males and two hens too.`
}

/** The closest pair of each male, the closest first; so that the reasons differ, brothers told once. */
function worstPairs(pairs: readonly PutTogether[]): readonly PutTogether[] {
  const alike = (a: PutTogether, b: PutTogether): boolean => a.male === b.male || (a.male.parentage.pairs === b.male.parentage.pairs && a.mean === b.mean)
  const told: PutTogether[] = []
  for (const pair of worstFirst(pairs)) if (told.length < REASONS && !told.some(other => alike(other, pair))) told.push(pair)
  return told
}

function limitWords({pairings: {limit, pens}}: Findings): string {
  if (limit === null) return 'The project states no limit for one mating.'
  const each = pens.flatMap(({males, hens}) => males.map(({overLimit}) => ({overLimit, hens: hens.length})))
  const none = each.length === 0 || each.some(({overLimit}) => overLimit === 0) ? ''
    : each.every(({overLimit, hens}) => overLimit === hens) ? ' Every pair that can be made here is over it, so being over tells none from another: they stand in order, the least first.'
    : ' No male here keeps within it with every hen of a pen: take the least, and read what other blood would do.'
  return `The project’s limit for one mating is ${percentSign(limit)}, tried at the upper end of what may be.${none}`
}

function wanting({book, census, pairings}: Findings): string {
  if (pairings.males.length > 0 && pairings.pens.length > 0) return ''
  if (census.pens.length === 0) return 'No pen has been put together yet. Once one has, every male there is to choose from is tried here against its hens.'
  if (pairings.pens.length === 0) return `No hen of season ${census.season ?? book.pens.at(-1)?.season ?? ''} is living by the records, so there is nobody to choose a male for.`
  return 'No male of the new breed is living that is bred from or young enough to be, so there is none to choose from.'
}

export function malesPage(findings: Findings): Page {
  const {pairings, census, oneMoreMale, ratePassed, pairReason, kinship, pairHarm} = findings, {males, pens, limit} = pairings
  const none = wanting(findings), penned = pens.filter(({pen}) => pen !== null), say = saying(males.length, penned.length)
  const pairs = none === '' ? everyPair(pairings, kinship.atLeast, pairHarm) : [], worst = worstPairs(pairs), byLoss = none === '' ? neverByLoss(pairings, pairHarm) : null
  const view: MalesView = {
    lead: none === '' ? `${sentence(say(males.length, 'male'))} to choose from for ${forWhom(say, penned.length, pens.length > penned.length, census.season)}, by how closely bred their chicks would be.` : 'Every male against the hens of every pen, by how closely bred their chicks would be.',
    wanting: none, answer: none === '' ? malesAnswer(malesPlaced(pairings), pairReason, pairings.chicksOf, pairHarm) : null, limit: none === '' ? limitWords(findings) : '',
    least: pairs.some(({atLeast}) => atLeast) ? '“≥” stands where a parent of one of them is not in the book: F is at least that, and nobody knows how much more.' : '',
    passed: ratePassed ? ratePassedWords(ratePassed) : '', stronger: strongerWords(findings), ladder: BACKCROSS,
    pens: none === '' ? pens.map(pen => penChoice(pen, limit, pairHarm)) : [], oneMore: oneMoreMale ? oneMoreWords(oneMoreMale, pairHarm) : [], never: [...(byLoss ? [byLoss] : []), ...neverMake(pairs)],
    best: pairTable(pairs, 'The least kin', PAIRS), worst: pairs.length > PAIRS ? pairTable(worstFirst(pairs), 'The closest kin', PAIRS) : null,
    reasons: pairs.length > PAIRS ? worst.map(({male, hen}) => pairReasonWords(pairReason(male, hen))) : [],
    kinship: kinshipTable(findings), kinshipWords: kinshipWords(findings), rotation: ROTATION,
  }
  return {path: MALES, template: 'males', title: 'Which cockerel into which pen?', section: 'pens', view, search: {kind: 'index', words: 'which cockerel male cock into which pen kinship pairs mating inbreeding one more male'}}
}

function forWhom(say: ReturnType<typeof saying>, pens: number, waiting: boolean, season: number | null): string {
  const kept = 'the hens kept and in no pen yet'
  return pens === 0 ? kept : `the hens of ${say(pens, 'pen')} of ${season ?? 'the season'}${waiting ? ` and ${kept}` : ''}`
}
