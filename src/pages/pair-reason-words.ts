/** Why two birds are kin, in a sentence: the ancestors they share, where each stands above them, and how much each gives. */
import type {PairReason} from '../findings/kin-reason.ts'
import type {Sex} from '../logbook/book.ts'
import {founderKinWords, groupsOf, namesOf, standing, WORTH_A_WORD} from './kin-reason-words.ts'
import {counted, listWords, percent, percentSign} from './numbers.ts'

const SELF: Readonly<Record<Sex, string>> = {male: 'himself', female: 'herself', unknown: 'itself'}

/** `24-202 and 25-202 are kin through 24-001, sire of both (12.5 of 18.3%), and …` */
export function pairReasonWords({sire, dam, f, parts, others, fromStrains, founders}: PairReason): string {
  const groups = groupsOf(parts), pair = `${sire.band} and ${dam.band}`
  const more = [
    ...(others.share >= WORTH_A_WORD ? [`${counted(others.count, 'more ancestor')} (${percent(others.share)})`] : []),
    ...(fromStrains >= WORTH_A_WORD ? [`the kinship stated of the founders (${founders ? `${founderKinWords(founders)}; ` : ''}${percent(fromStrains)})`] : []),
  ]
  if (groups.length === 0) return more.length === 0 ? `${pair} share no ancestor in the book.` : `${pair} share no ancestor in the book; the ${percentSign(f)} is the kinship stated of the founders${founders ? `: ${founderKinWords(founders)}` : ''}.`
  const ways = groups.map(group => {
    const share = `(${percent(group.share)})`
    if (group.up?.fromSire === 0) return `${sire.band} ${SELF[sire.sex]}, ${standing(group, sire.band, dam.band, 'both').replace(/^also /, '')} ${share}`
    if (group.up?.fromDam === 0) return `${dam.band} ${SELF[dam.sex]}, ${standing(group, sire.band, dam.band, 'both').replace(/^also /, '')} ${share}`
    return `${namesOf(group.birds)}, ${standing(group, sire.band, dam.band, 'both')} ${share}`
  })
  const doubt = [sire, dam].some(({parentage}) => parentage.pairs.length > 1) ? ' Parents in doubt count by their chance.' : ''
  return `${pair} are kin through ${listWords([...ways, ...more])}: together ${percentSign(f)}.${doubt}`
}

/** The greatest of the ancestors that two birds share, in a few words: `mostly through 23-117, grandsire of both`; empty where they share none. */
export function nearestKinWords({sire, dam, f, parts}: PairReason): string {
  const groups = groupsOf(parts), [first] = groups
  if (!first || f < WORTH_A_WORD) return ''
  if (first.up?.fromSire === 0) return `${sire.band} is ${standing(first, sire.band, dam.band, 'both').replace(/^also /, 'the ').replace(/ of \S+$/, '')} of ${dam.band}`
  if (first.up?.fromDam === 0) return `${dam.band} is ${standing(first, sire.band, dam.band, 'both').replace(/^also /, 'the ').replace(/ of \S+$/, '')} of ${sire.band}`
  if (first.up?.fromSire === 1 && first.up.fromDam === 1) return `both are chicks of ${namesOf(first.birds)}`
  return `${first.share > 0.5 * f ? 'mostly through' : 'through'} ${namesOf(first.birds)}${first.share > 0.5 * f || groups.length > 1 ? '' : ' and others'}, ${standing(first, sire.band, dam.band, 'both')}`
}
