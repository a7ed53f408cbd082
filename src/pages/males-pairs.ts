/** Pairs that could be put together: the least and the closest kin, like ones folded into one line, and those never to be made, by the name of what the two are to each other. */
import type {Pairings} from '../findings/males-for-pens.ts'
import {NO_HARM, type PairHarm} from '../findings/pair-harm.ts'
import {NEAR_RELATIONS, nearRelation, type NearRelation} from '../findings/near-relation.ts'
import type {ChicksOfPair} from '../findings/pair-kinship.ts'
import type {Bird} from '../logbook/book.ts'
import {lossWords, pairWarning} from './harm-words.ts'
import {birdPath} from './links.ts'
import {listWords, percent, percentSign} from './numbers.ts'
import type {Cell, Table} from './page.ts'

export interface PutTogether extends ChicksOfPair {
  readonly male: Bird
  readonly hen: Bird
  /** a parent of one of them is not in the book */
  readonly atLeast: boolean
  /** what it can lose by a lethal rule, or what one of them carries that kills or harms; or empty */
  readonly beware: string
}

/** Every male there is to choose from with every hen there is to choose for, the least kin first. */
export function everyPair({males, pens, chicksOf}: Pairings, atLeast: (a: Bird, b: Bird) => boolean, harm: PairHarm = NO_HARM): readonly PutTogether[] {
  const hens = [...new Set(pens.flatMap(pen => pen.hens))]
  return males.flatMap(male => hens.map((hen): PutTogether => ({male, hen, atLeast: atLeast(male, hen), beware: pairWarning(male, hen, harm), ...chicksOf(male, hen)})))
    .sort((a, b) => a.mean - b.mean || a.high - b.high || byId(a.male, b.male) || byId(a.hen, b.hen))
}

/** The closest kin first. */
export const worstFirst = (pairs: readonly PutTogether[]): readonly PutTogether[] =>
  [...pairs].sort((a, b) => b.mean - a.mean || b.high - a.high || byId(a.male, b.male) || byId(a.hen, b.hen))

const byId = (a: Bird, b: Bird): number => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0)

/** `15.2`, or the range `14.5–19.2` where parents are in doubt */
export const rangeText = ({low, high}: {readonly low: number; readonly high: number}): string => (percent(low) === percent(high) ? percent(high) : `${percent(low)}–${percent(high)}`)

/** F as a table has it: `12.5`, and where a parent is not in the book `≥ 12.5` */
export const leastText = (f: string, atLeast: boolean): string => (atLeast ? `≥ ${f}` : f)

export interface FoldedPairs {
  readonly males: readonly Bird[]
  readonly hens: readonly Bird[]
  readonly like: PutTogether
}

/** One line for the hens that one male would have like chicks with, then one for the males that have the same line. */
export function folded(pairs: readonly PutTogether[]): readonly FoldedPairs[] {
  const lines: FoldedPairs[] = []
  for (const pair of pairs) {
    const place = lines.findIndex(({males: [male], like}) => male === pair.male && printed(like) === printed(pair)), before = lines[place]
    if (before) lines[place] = {...before, hens: [...before.hens, pair.hen]}
    else lines.push({males: [pair.male], hens: [pair.hen], like: pair})
  }
  const whole: FoldedPairs[] = []
  for (const line of lines) {
    const place = whole.findIndex(({hens, like}) => printed(like) === printed(line.like) && hens.length === line.hens.length && hens.every(hen => line.hens.includes(hen))), before = whole[place]
    if (before) whole[place] = {...before, males: [...before.males, ...line.males]}
    else whole.push(line)
  }
  return whole
}

const printed = ({mean, low, high, atLeast, beware}: PutTogether): string => `${percent(mean)} ${rangeText({low, high})}${atLeast ? ' at least' : ''} ${beware}`

/** Pairs looked through for each line: what is alike stands together. */
const ALIKE_AT_MOST = 60
/** Birds of one cell named at most. */
const NAMED = 6
const namesCell = (birds: readonly Bird[]): Cell => {
  const [only] = birds, more = birds.length - NAMED
  if (only && birds.length === 1) return {text: only.band, link: birdPath(only)}
  if (more > 1) return `${birds.slice(0, NAMED).map(({band}) => band).join(', ')} and ${more} more`
  return {text: listWords(birds.map(({band}) => band)), names: birds.map(bird => ({band: bird.band, link: birdPath(bird)}))}
}

/** @param rows lines shown at most */
export function pairTable(pairs: readonly PutTogether[], caption: string, rows: number): Table | null {
  const lines = folded(pairs.slice(0, rows * ALIKE_AT_MOST)).slice(0, rows), warned = lines.some(({like}) => like.beware !== '')
  return pairs.length === 0 ? null : {
    caption, columns: [{head: 'Male'}, {head: 'Hen'}, {head: 'Chicks’ F, %', number: true}, {head: 'Range', number: true}, ...(warned ? [{head: 'Beware'}] : [])],
    rows: lines.map(({males, hens, like}): readonly Cell[] => [namesCell(males), namesCell(hens), leastText(percent(like.mean), like.atLeast), rangeText(like), ...(warned ? [like.beware] : [])]),
  }
}

export interface Never {
  readonly title: string
  readonly words: string
}

const TITLE: Readonly<Record<NearRelation, string>> = {'parent and child': 'Father and daughter, mother and son', 'full sibs': 'Full brother and sister', 'half sibs': 'Half brother and sister'}

/** The pairs that can lose chicks by a lethal rule, by what they lose; null where there is none. */
export function neverByLoss({males, pens}: Pick<Pairings, 'males' | 'pens'>, harm: PairHarm): Never | null {
  const hens = [...new Set(pens.flatMap(pen => pen.hens))]
  const told = males.flatMap(male => {
    const byLoss = new Map<string, Bird[]>()
    for (const hen of hens) {
      const loss = harm.lossOf(male, hen)
      if (loss) byLoss.set(lossWords(loss), [...byLoss.get(lossWords(loss)) ?? [], hen])
    }
    return [...byLoss].map(([words, those]) => `${male.band} with ${listWords(those.map(({band}) => band))} ${words}`)
  })
  return told.length === 0 ? null : {title: 'What can die in the egg', words: `${told.join('; ')}. By what is known of each of the two; a bird without it for a mate loses none.`}
}

/** The pairs that are nearest kin by name, worst relation first, those in doubt after the certain ones. */
export function neverMake(pairs: readonly PutTogether[]): readonly Never[] {
  const named = pairs.flatMap(pair => {
    const relation = nearRelation(pair.male, pair.hen)
    return relation ? [{pair, relation}] : []
  })
  return NEAR_RELATIONS.flatMap(relation => [true, false].flatMap((sure): Never[] => {
    const those = named.filter(({relation: {is, sure: certain}}) => is === relation && certain === sure).map(({pair}) => pair)
    return those.length === 0 ? [] : [{title: `${TITLE[relation]}${sure ? '' : ', it may be'}`, words: `${byMale(worstFirst(those)).join('; ')}.`}]
  }))
}

/** `24-202 with 25-202 and 25-203 (41.1%)`, males with the same hens together */
function byMale(pairs: readonly PutTogether[]): readonly string[] {
  const groups: {readonly males: Bird[]; readonly hens: readonly Bird[]; readonly all: PutTogether[]}[] = []
  for (const male of new Set(pairs.map(pair => pair.male))) {
    const his = pairs.filter(pair => pair.male === male), hens = his.map(({hen}) => hen).sort(byId)
    const same = groups.find(group => group.hens.length === hens.length && group.hens.every(hen => hens.includes(hen)))
    if (same) {
      same.males.push(male)
      same.all.push(...his)
    } else groups.push({males: [male], hens, all: his})
  }
  return groups.map(({males, hens, all}) => {
    const means = all.map(({mean}) => mean), low = Math.min(...means), high = Math.max(...means)
    return `${listWords(males.map(({band}) => band))} with ${listWords(hens.map(({band}) => band))} (${percent(low) === percent(high) ? '' : `${percent(low)} to `}${percentSign(high)})`
  })
}
