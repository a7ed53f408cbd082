/** Evidence of what the breeders carry, in words: the figure, what it rests on, and the birds in the way. */
import type {Fixation} from '../findings/fixation.ts'
import type {FixedAtLocus, ShownFixed} from '../findings/shown-of-breeding.ts'
import {AS_GOOD_AS, chance} from './chance-words.ts'
import {bandsOf, untoldWords} from './evidence-of-work-words.ts'
import {figured, listWords, percent} from './numbers.ts'
import {fixationWords, unwantedWords} from './trait-hidden.ts'

/** Birds named in one sentence. */
const MOST_NAMED = 5

export const NO_BREEDER = 'No living breeder of the breed is on record.'

/** `24-003, 24-010 and 4 more` */
export function named(birds: readonly string[], all = birds.length): string {
  const some = birds.slice(0, MOST_NAMED), more = all - some.length
  return listWords([...some, ...(more > 0 ? [`${more} more`] : [])])
}

/** Of a requirement that names no trait, a line for each allele that is not wanted, the least sure first; empty where there is one locus, which `fixedWords` tells of. */
export function fixedLines({trait, birds, loci}: ShownFixed): readonly string[] {
  if (trait !== null || birds === 0 || loci.length < 2) return []
  return loci.toSorted((a, b) => a.fixation.clean - b.fixation.clean).map(({fixation, variety, scored, unscored}) => [
    `${fixation.trait.name}${variety === null ? '' : `, ${variety}`}: none carries ${unwantedWords(fixation)} with ${chance(fixation.clean)}`, ...inTheWayWords(fixation, 'in the way '),
    `scored or tested ${scored} of ${fixation.birds}${unscored.length === 0 ? '' : `, neither ${bandsOf(unscored)}`}`, ...(fixation.exact ? [] : ['approximate']), ...(fixation.slack > 0 ? ['the records contradict themselves here'] : []),
  ].join('; '))
}

/** `In the way, with the chance to carry it: 24-003 for certain`; none where it is as good as fixed */
function inTheWayWords({inTheWay, others, clean}: Fixation, head: string): readonly string[] {
  const way = inTheWay.map(({bird, carries}) => `${bird.band} ${carries > AS_GOOD_AS ? 'for certain' : chance(carries)}`)
  return way.length === 0 || clean > AS_GOOD_AS ? [] : [`${head}${named(way, way.length + others)}`]
}

/** Locus by locus, the least sure first; of several traits only how to read `fixedLines`. */
export function fixedWords(shown: ShownFixed): string {
  const {trait, asked, birds, loci} = shown, mark = `It counts as fixed from ${percent(asked).replace(/\.0$/, '')}% on.`
  if (birds === 0) return NO_BREEDER
  if (loci.length === 0 && shown.untoldClauses.length > 0) return withoutWords(shown)
  if (loci.length === 0) return trait === null ? 'No required trait has rules that say which genes it comes of.' : `Nothing on record says which genes ${trait.name.toLowerCase()} comes of, or which of them are not wanted.`
  if (fixedLines(shown).length > 0) return `Each allele that is not wanted, with the chance that none of the ${figured(birds, 'living breeder')} carries it, and of those in the way the chance of each to do so. ${[mark, withoutWords(shown)].filter(words => words !== '').join(' ')}${untoldWords(shown.untold.length)}`
  const said = loci.toSorted((a, b) => a.fixation.clean - b.fixation.clean).map(each => `${[...(trait === null ? [each.fixation.trait.name] : []), ...(each.variety === null ? [] : [each.variety])].join(', ')}${trait === null || each.variety !== null ? ': ' : ''}${atLocus(each)}`)
  return [...said, mark, withoutWords(shown)].filter(words => words !== '').join(' ') + untoldWords(shown.untold.length)
}

const withoutWords = ({without, untoldClauses}: ShownFixed): string => [
  ...(without.length === 0 ? [] : [`No rule says which genes ${listWords(without.map(({name}) => name.toLowerCase()))} ${without.length === 1 ? 'comes' : 'come'} of, or which of them are not wanted.`]),
  ...(untoldClauses.length === 0 ? [] : [`Nothing can be held against birds for ${listWords(untoldClauses)}.`]),
].join(' ')

function atLocus({fixation, scored, unscored}: FixedAtLocus): string {
  return [
    fixationWords(fixation), ...inTheWayWords(fixation, 'In the way, with the chance to carry it: ').map(words => `${words}.`),
    `Scored or tested: ${scored} of ${fixation.birds}.`, ...(unscored.length === 0 ? [] : [`Neither: ${bandsOf(unscored)}.`]), ...(fixation.exact ? [] : ['These chances are approximate.']),
  ].join(' ')
}
