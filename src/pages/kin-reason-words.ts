/** Why a bird's F is what it is, in one sentence that a breeder reads: the ancestors its sire and dam share, how far up, and how much each gives. */
import type {FounderKin} from '../findings/founder-kin.ts'
import type {KinPart, KinReason, NoKinReason} from '../findings/kin-reason.ts'
import type {Bird, Sex} from '../logbook/book.ts'
import {counted, listWords, percent, percentSign, sentence} from './numbers.ts'

export const HIS: Readonly<Record<Sex, string>> = {male: 'his', female: 'her', unknown: 'its'}

/** What prints as 0.0 % is not worth a word. */
export const WORTH_A_WORD = 0.0005

/** `sire`, `granddam`, `great-grandparents`, `ancestor in generation 5` */
function ancestorWord(generations: number, sex: Sex, many: boolean): string {
  if (generations > 4) return `${many ? 'ancestors' : 'ancestor'} in generation ${generations}`
  const word = many ? 'parents' : {male: 'sire', female: 'dam', unknown: 'parent'}[sex]
  return `${'great-'.repeat(Math.max(0, generations - 2))}${generations > 1 ? 'grand' : ''}${word}`
}

/** Ancestors that stand alike above sire and dam, as both parents of full sibs do, are told together. */
interface Group {
  readonly birds: readonly (Bird | null)[]
  readonly share: number
  readonly up: KinPart['up']
}

export function groupsOf(parts: readonly KinPart[]): readonly Group[] {
  const groups: Group[] = []
  for (const {bird, share, up} of parts) {
    const place = groups.findIndex(group => up !== null && group.up !== null && group.up.fromSire === up.fromSire && group.up.fromDam === up.fromDam)
    const same = groups[place]
    if (same) groups[place] = {...same, birds: [...same.birds, bird], share: same.share + share}
    else groups.push({birds: [bird], share, up})
  }
  return groups
}

export const namesOf = (birds: Group['birds']): string => listWords(birds.map(bird => bird?.band ?? 'a hen not recorded'))

/** `grandsire of both`, `sire of the sire and granddam of the dam`; of one that is a parent itself `also sire of the dam` */
export function standing({birds: [first, ...others], up}: Group, sire: string, dam: string, both: string): string {
  if (up === null) return 'related to both by many small ways'
  const word = (generations: number): string => ancestorWord(generations, first?.sex ?? 'female', others.length > 0)
  if (up.fromSire === 0) return `also ${word(up.fromDam)} of ${dam}`
  if (up.fromDam === 0) return `also ${word(up.fromSire)} of ${sire}`
  return up.fromSire === up.fromDam ? `${word(up.fromSire)} of ${both}` : `${word(up.fromSire)} of ${sire} and ${word(up.fromDam)} of ${dam}`
}

/** The ancestors that give most, as the head of the sentence. */
function firstClause(group: Group, reason: KinReason, his: string): string {
  const {sire, dam, pairs} = reason, {birds, up} = group, sure = pairs === 1
  const condition = sure ? '' : `if ${his} sire is ${sire.band} and ${his} dam ${dam.band}, ${likely(reason)}, `
  if (up?.fromSire === 1 && up.fromDam === 1) {
    return `${condition}${sure ? `${his} sire ${sire.band} and ${his} dam ${dam.band} are both` : 'both are'} chicks of ${namesOf(birds)}`
  }
  const [theSire, theDam] = sure ? [`${his} sire ${sire.band}`, `${his} dam ${dam.band}`] : ['the sire', 'the dam']
  const subject = up?.fromSire === 0 ? theSire : up?.fromDam === 0 ? theDam : namesOf(birds)
  return `${condition}${subject} ${birds.length > 1 ? 'are' : 'is'} ${standing(group, theSire, theDam, sure ? `both ${theSire} and ${theDam}` : 'both')}`
}

/** What gives the rest, the largest first. */
function rest([, ...groups]: readonly Group[], {others, fromStrains, founders}: KinReason): readonly string[] {
  return [
    ...groups.map(group => `${namesOf(group.birds)}, ${standing(group, 'the sire', 'the dam', 'both')} (${percent(group.share)})`),
    ...(others.share >= WORTH_A_WORD ? [`${counted(others.count, 'more ancestor')} (${percent(others.share)})`] : []),
    ...(fromStrains >= WORTH_A_WORD && founders === null ? [`the kinship stated of the founders (${percent(fromStrains)})`] : []),
  ]
}

/** `the likeliest of 6 pairs (40.0%)`, or where no one pair is `one of 6 pairs alike (16.7% each)` */
function likely({pairs, alike, chance}: KinReason): string {
  if (alike === 1) return `the likeliest of ${pairs} pairs (${percentSign(chance)})`
  return `one of ${alike === pairs ? `${pairs} pairs alike` : `the ${alike} likeliest of ${pairs} pairs`} (${percentSign(chance)} each)`
}

/** `most of it H22-05 and H22-08, of one bought flock, kinship 25.0%` */
export function founderKinWords({birds, kinship, flock, part}: FounderKin): string {
  return `${part > 0.995 ? '' : part > 0.5 ? 'most of it ' : 'first '}${listWords(birds.map(({band}) => band))}${flock === null ? '' : `, both of the flock ${flock}`}, kinship ${percentSign(kinship)}`
}

const NO_PAIR: Readonly<Record<NoKinReason['kind'], string>> = {
  founder: '', 'one-of': 'It may be any of several birds; F is the mean of theirs.',
  outside: 'A parent is not in the book, so no ancestor that sire and dam share can be named.',
}

/**
 * `His sire 24-003 and his dam 24-017 are both chicks of 22-005: that alone gives 12.5 of the 14.0%; the rest comes by …`
 *
 * Empty for a founder, of whom nothing is to be told.
 */
export function kinReasonWords({sex}: Pick<Bird, 'sex'>, reason: KinReason | NoKinReason): string {
  if (reason.kind !== 'pair') return NO_PAIR[reason.kind]
  const {sire, dam, f, pairs, fromStrains, founders} = reason, groups = groupsOf(reason.parts), [first] = groups, his = HIS[sex]
  if (!first) {
    const parents = pairs === 1 ? `${sentence(his)} sire ${sire.band} and ${his} dam ${dam.band} share` : `${sentence(`${sire.band} and ${dam.band}, ${likely(reason)},`)} share`
    return `${parents} no ancestor in the book${fromStrains >= WORTH_A_WORD ? `; the ${percentSign(f)} is the kinship stated of the founders${founders ? `: ${founderKinWords(founders)}` : ''}` : ''}.`
  }
  const more = rest(groups, reason)
  if (founders) {
    const head = firstClause(first, reason, his)
    return `${percent(fromStrains)} of the ${percentSign(f)} is the kinship stated of the founders: ${founderKinWords(founders)}. ${sentence(head)} (${percent(first.share)})${more.length === 0 ? '' : `; the rest comes by ${listWords(more)}`}.`
  }
  const gives = more.length === 0 ? `that gives all of the ${percentSign(f)}` : `that alone gives ${percent(first.share)} of the ${percentSign(f)}; the rest comes by ${listWords(more)}`
  return `${sentence(firstClause(first, reason, his))}: ${gives}.`
}
