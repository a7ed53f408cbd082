/** The answer before the tables: one male for every pen, what his chicks' F would be and why, and whom to keep out. */
import type {MaleForPen} from '../findings/males-for-pens.ts'
import type {MalesPlaced, PlacedMale} from '../findings/males-placed.ts'
import type {PairReason} from '../findings/kin-reason.ts'
import {NO_HARM, type PairHarm} from '../findings/pair-harm.ts'
import type {Bird, Pen} from '../logbook/book.ts'
import {maleWarning} from './harm-words.ts'
import {birdPath, penPath} from './links.ts'
import {leastText} from './males-pairs.ts'
import {counted, listWords, NOTHING, percent, percentSign} from './numbers.ts'
import type {Cell, Table} from './page.ts'
import {nearestKinWords} from './pair-reason-words.ts'

export interface PenAnswer {
  readonly title: string
  /** F of his chicks, with the hen he is nearest to and through whom; what else there is to know of the choice */
  readonly words: string
  /** males not to be put here, or empty */
  readonly avoid: string
}

export interface MalesAnswer {
  /** a row for every pen, short enough for the first screen of a phone */
  readonly table: Table
  readonly pens: readonly PenAnswer[]
  readonly words: readonly string[]
}

/** `23.3%`, or where parents are in doubt `up to 30.5%` */
const atMost = ({low, high}: {readonly low: number; readonly high: number}): string => `${percent(low) === percent(high) ? '' : 'up to '}${percentSign(high)}`

const bandsOf = (males: readonly MaleForPen[]): string => listWords(males.map(({male}) => male.band))

function priceWords({pen: {hens}}: PlacedMale, {male, mean, worst, atLeast}: MaleForPen, pairReason: (sire: Bird, dam: Bird) => PairReason): string {
  if (percent(worst.high) === '0.0') return `${male.band}: he and ${hens.length === 1 ? 'the hen share' : 'these hens share'} no ancestor in the book${atLeast ? ', but not all their parents are in it' : ''}.`
  const through = nearestKinWords(pairReason(male, worst.hen))
  const nearest = `${worst.hen.band}${through === '' ? '' : ` (${through})`}`
  return hens.length === 1 ? `${male.band} with ${nearest}: chicks’ F ${atLeast ? 'at least ' : ''}${percentSign(mean)}${percent(worst.low) === percent(worst.high) ? '' : `, ${atMost(worst)}`}.`
    : `${male.band} with ${counted(hens.length, 'hen')}: chicks’ F ${atLeast ? 'at least ' : ''}${percentSign(mean)} on average, ${atMost(worst)} with ${nearest}.`
}

/** Others that print alike are named at most. */
const ALIKE = 3

/** Who would do as well, who stands there now, and who would be less kin but is wanted in another pen. */
function besideHim({pen: {males, hens}, placed, elsewhere}: PlacedMale, used: ReadonlySet<Bird>, harm: PairHarm): string {
  const isHarmless = ({male}: MaleForPen): boolean => maleWarning(male, hens, harm) === ''
  const now = males.filter(({here}) => here), less = elsewhere.find(isHarmless), instead = placed && !isHarmless(placed) ? males.find(each => !used.has(each.male) && isHarmless(each)) : undefined
  const alike = placed === null ? [] : males.filter(each => each !== instead && !used.has(each.male) && percent(each.mean) === percent(placed.mean) && isHarmless(each)).slice(0, ALIKE)
  return [
    ...(placed && !isHarmless(placed) ? [` Beware: ${placed.male.band} ${maleWarning(placed.male, hens, harm)}${instead ? `; without that ${instead.male.band}, ${percentSign(instead.mean)}` : ''}.`] : []),
    ...(alike.length > 0 ? [` As good by kinship: ${bandsOf(alike)}.`] : []),
    ...(placed?.here ? [' He stands here now.'] : now.length > 0 ? [` Here now: ${listWords(now.map(({male, mean}) => `${male.band}, ${percentSign(mean)}`))}.`] : []),
    ...(less && placed && percent(less.mean) !== percent(placed.mean) ? [` ${less.male.band} would give ${percentSign(less.mean)}, but does more good in another pen.`] : []),
  ].join('')
}

function avoidWords({pen: {males, hens}, placed, avoid, apart}: PlacedMale): string {
  if (avoid.length === 0) return ''
  const free = males.filter(male => !avoid.includes(male))
  const him = placed && apart.length > 0 && apart.length < hens.length ? ` If ${placed.male.band} is used all the same, leave ${listWords(apart.map(({band}) => band))} out.` : ''
  if (free.length === 0) return `every male, as far as you can.${him}`
  return `${free.length < avoid.length ? `all but ${bandsOf(free)}` : bandsOf(avoid)}.${him}`
}

/** What makes a male one to be avoided, said once for all pens. */
function markWords(pens: readonly PlacedMale[]): readonly string[] {
  const told = (of: PlacedMale['mark']['of']): PlacedMale['mark'] | undefined => pens.find(({mark, avoid}) => mark.of === of && avoid.length > 0)?.mark
  const limit = told('limit'), sibs = told('sibs')
  const limitText = limit && `pass the project’s limit of ${percentSign(limit.value)}`
  const sibsText = sibs && `reach ${percentSign(sibs.value)}${sibs.value === 0.25 ? ', as from brother and sister' : ''}`
  const why = limitText && sibsText ? `${limitText}; where none keeps within it, ${sibsText}` : limitText ?? sibsText
  return why ? [`Avoid: with some hen of the pen the chicks would, or may, ${why}.`] : []
}

function answerTable(pens: readonly PlacedMale[]): Table {
  return {
    columns: [{head: 'Pen'}, {head: 'Male'}, {head: 'Chicks’ F, %', number: true}, {head: 'At most', number: true}],
    rows: pens.map(({pen: {pen}, placed}): readonly Cell[] => [
      pen ? {text: pen.id, link: penPath(pen)} : 'kept, in no pen yet', ...(placed ? [{text: placed.male.band, link: birdPath(placed.male)}, leastText(percent(placed.mean), placed.atLeast), percent(placed.worst.high)] : ['nobody left', NOTHING, NOTHING]),
    ]),
  }
}

/** `Pen 2025-A`, or of the hens that stand in none yet */
export const placeName = (pen: Pen | null): string => (pen ? `Pen ${pen.id}` : 'Kept, in no pen yet')

/** Hens in no pen, each to the pen whose male she is least kin to. */
function splitWords({pen: {hens}}: PlacedMale, pens: readonly PlacedMale[], chicksOf: ChicksOf, harm: PairHarm): string {
  const males = pens.flatMap(({pen: {pen}, placed}) => (pen && placed ? [{pen, male: placed.male}] : []))
  const best = hens.flatMap(hen => {
    const [first, ...rest] = males.filter(({male}) => harm.lossOf(male, hen) === null).map(each => ({...each, ...chicksOf(each.male, hen)}))
    return first ? [{hen, ...rest.reduce((least, here) => (here.mean < least.mean - 1e-12 ? here : least), first)}] : []
  })
  const told = males.flatMap(({pen, male}) => {
    const his = best.filter(each => each.pen === pen), means = his.map(({mean}) => mean)
    const low = percent(Math.min(...means)), high = percent(Math.max(...means))
    return his.length === 0 ? [] : [`${listWords(his.map(({hen}) => hen.band))} to pen ${pen.id} (${male.band}, ${low === high ? '' : `${low} to `}${high}%)`]
  })
  return told.length === 0 ? '' : ` Or shared out among the pens, each to the male put there that she is least kin to: ${told.join('; ')}.`
}

type ChicksOf = (a: Bird, b: Bird) => {readonly mean: number}

export function malesAnswer({pens, mean}: MalesPlaced, pairReason: (sire: Bird, dam: Bird) => PairReason, chicksOf: ChicksOf, harm: PairHarm = NO_HARM): MalesAnswer {
  const used = new Set(pens.flatMap(({placed}) => (placed ? [placed.male] : [])))
  return {
    table: answerTable(pens),
    pens: pens.map((each): PenAnswer => {
      const {pen: {pen}, placed} = each
      return {
        title: placeName(pen), avoid: avoidWords(each),
        words: placed ? `${priceWords(each, placed, pairReason)}${besideHim(each, used, harm)}${pen ? '' : splitWords(each, pens, chicksOf, harm)}` : `No male is left for it: there are fewer than pens. Let one serve two pens in turn, the least kin below.${besideHim(each, used, harm)}`,
      }
    }),
    words: [
      ...(pens.length < 2 || mean === null ? [] : [`So put, no male stands in two places, and F over all hens is the least to be had of these males: ${percentSign(mean)} on average.`]),
      ...markWords(pens),
    ],
  }
}
