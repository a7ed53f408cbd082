/** Evidence of what the breeders carry and how closely they are bred, in words: the figure, what it rests on, and the birds in the way. */
import type {FixedAtLocus, Shown} from '../findings/evidence-shown.ts'
import type {Bird} from '../logbook/book.ts'
import {AS_GOOD_AS, chance} from './chance-words.ts'
import {figured, limits, listWords, percent, percentSign} from './numbers.ts'
import {fixationWords} from './trait-hidden.ts'

/** Birds named in one sentence. */
const MOST_NAMED = 5

const NO_BREEDER = 'No living breeder of the breed is on record.'

/** `24-003, 24-010 and 4 more` */
function named(birds: readonly string[], all = birds.length): string {
  const some = birds.slice(0, MOST_NAMED), more = all - some.length
  return listWords([...some, ...(more > 0 ? [`${more} more`] : [])])
}

const bands = (birds: readonly Bird[]): string => named(birds.map(({band}) => band))

/** Locus by locus, the least sure first. */
export function fixedWords({trait, asked, birds, loci}: Extract<Shown, {kind: 'fixed'}>): string {
  if (birds === 0) return NO_BREEDER
  if (loci.length === 0) return trait === null ? 'No required trait has rules that say which genes it comes of.' : `Nothing on record says which genes ${trait.name.toLowerCase()} comes of, or which of them are not wanted.`
  const said = loci.toSorted((a, b) => a.fixation.clean - b.fixation.clean).map(each => `${trait === null ? `${each.fixation.trait.name}: ` : ''}${atLocus(each, birds)}`)
  return `${said.join(' ')} It counts as fixed from ${percent(asked).replace(/\.0$/, '')}% on.`
}

function atLocus({fixation, scored, unscored}: FixedAtLocus, birds: number): string {
  const {inTheWay, others, exact} = fixation, way = inTheWay.map(({bird, carries}) => `${bird.band} ${carries > AS_GOOD_AS ? 'for certain' : chance(carries)}`)
  return [
    fixationWords(fixation), ...(way.length === 0 || fixation.clean > AS_GOOD_AS ? [] : [`In the way, with the chance to carry it: ${named(way, way.length + others)}.`]),
    `Scored or tested: ${scored} of ${birds}.`, ...(unscored.length === 0 ? [] : [`Neither: ${bands(unscored)}.`]), ...(exact ? [] : ['These chances are approximate.']),
  ].join(' ')
}

/** `Mean F of 26 living breeders 12.3% (9.1 to 15.0 by who the parents are); the highest 24-030 with 28.1%; …` */
export function inbreedingWords({asked, of}: Extract<Shown, {kind: 'inbreeding'}>): string {
  if (of === null) return NO_BREEDER
  const {birds, mean, low, high, byF, atLeast, kinship} = of, [most] = byF
  const range = percent(low) === percent(high) ? '' : ` (${limits({low, high})} by who the parents are)`
  const over = asked !== null && mean > asked ? byF.filter(({f}) => f > asked) : []
  return [
    `Mean F of ${figured(birds, 'living breeder')} ${percentSign(mean)}${range}${most ? `; the highest ${percentSign(most.f)}, ${most.bird.band}` : ''}; mean kinship among them ${percentSign(kinship)}.`,
    ...(over.length === 0 ? [] : [`Above ${percentSign(asked ?? 0)}: ${named(over.map(({bird, f}) => `${bird.band} ${percentSign(f)}`))}.`]),
    ...(atLeast.length === 0 ? [] : [`F is at least so much for ${bands(atLeast)}, of whom a grandparent or nearer is not in the book.`]),
  ].join(' ')
}
