/** Evidence of how closely the breeders are bred, in words: the mean, its rise, the size that it comes to, and the lines of males. */
import type {ClosenessPart, ShownInbreeding} from '../findings/shown-of-breeding.ts'
import {FEWEST_FAMILIES} from '../statistics/family-bootstrap.ts'
import {named, NO_BREEDER} from './evidence-of-genes-words.ts'
import {bandsOf, untoldWords} from './evidence-of-work-words.ts'
import {counted, countWord, figured, limits, percent, percentSign, rounded, sentence} from './numbers.ts'

/** `Mean F of 26 living breeders 12.3% (9.1 to 15.0 by who the parents are); the highest 24-030 with 28.1%; …` */
export function inbreedingWords(shown: ShownInbreeding): string {
  const {asked, of, parts, untold} = shown
  if (of === null) return NO_BREEDER
  const {birds, mean, low, high, byF, atLeast, kinship, generations} = of, [most] = byF
  const range = percent(low) === percent(high) ? '' : ` (${limits({low, high})} by who the parents are)`
  const over = asked !== null && mean > asked ? byF.filter(({f}) => f > asked) : []
  return [
    `Mean F of ${figured(birds, 'living breeder')} ${percentSign(mean)}${range}${most ? `; the highest ${percentSign(most.f)}, ${most.bird.band}` : ''}; mean kinship among them ${percentSign(kinship)}.`,
    ...(over.length === 0 ? [] : [`Above ${percentSign(asked ?? 0)}: ${named(over.map(({bird, f}) => `${bird.band} ${percentSign(f)}`))}.`]),
    ...(atLeast.length === 0 ? [] : [`F is at least so much for ${bandsOf(atLeast)}, of whom a grandparent or nearer is not in the book.`]),
    ...parts.flatMap(part => (part.of === 'mean' ? [] : [partWords(part, shown)])), `Descent is known for ${rounded(generations, 1)} generations on average.`,
  ].join(' ') + untoldWords(untold.length)
}

function partWords({of, have, low, high, mark, by}: ClosenessPart, shown: ShownInbreeding): string {
  const {rise, lines, census} = shown
  switch (of) {
    case 'rate': {
      if (have === null || !rise) return 'How fast F rises in a generation cannot be told: no step mated inside the breed has one before it to be held against.'
      const {since, closing, step, inbreeding, kinship} = rise, span = `from ${since ?? closing} to ${step}`, range = low === null || high === null ? '' : ` (${limits({low, high}).replaceAll('-', '−')})`
      const f = `F ${inbreeding.latest.value < 0 ? 'fell' : 'rises'} by ${percentSign(Math.abs(inbreeding.latest.value))} in a generation, ${span}${by === 'inbreeding' ? range : ''}`
      const kin = kinship === null ? '' : `, and mean kinship of two birds ${kinship.latest.value < 0 ? 'fell' : 'rises'} by ${percentSign(Math.abs(kinship.latest.value))}, from ${percent(kinship.before)} to ${percentSign(kinship.now)}${by === 'kinship' ? range : ''}`
      return `${f}${kin}; the ${by === 'kinship' ? 'rise of kinship' : 'rise of F'} decides, and ${percentSign(mark)} will do.${endWords(shown, high)}${openWords(shown)}`
    }
    case 'size': {
      const count = census === null ? '' : ` By the count of cocks and hens bred from, were they no kin, it is ${rounded(census, 1)}.`
      if (have === null || !rise) return `An effective size cannot be told: neither F nor kinship has risen inside the breed, or too little descent is known.${count}`
      const range = low === null ? '' : ` (${rounded(low, 1)} ${high === null ? 'or more' : `to ${rounded(high, 1)}`})`, span = rise.generations === 1 ? 'in the one generation' : `over the ${countWord(rise.generations)} generations`
      return `By the rise of ${by === 'kinship' ? 'mean kinship' : 'F'} ${span} since ${rise.closing} the birds of ${rise.step} come to an effective size of ${rounded(have, 1)}${range}, where ${mark} is asked.${count}${endWords(shown, low)}${openWords(shown)}`
    }
    case 'male-lines': {
      const sure = lines.flatMap(({founder, males}) => (founder ? [`${founder.band} (${figured(males.length, 'male')})`] : [])), unsure = lines.flatMap(({founder, males}) => (founder ? [] : males))
      if (lines.length === 0) return 'No male is bred from.'
      const more = unsure.length === 0 ? '' : ` Of ${bandsOf(unsure)} the line is not sure.`
      return `${sentence(counted(have ?? 0, 'line'))} of males${high !== null && high !== have ? `, or as many as ${countWord(high)}` : ''}${sure.length === 0 ? '' : `, back to ${named(sure)}`}, where ${countWord(mark)} ${mark === 1 ? 'is' : 'are'} asked.${more}`
    }
    case 'mean': return ''
  }
}

/** By what the end of an interval is read, or why there is none. */
function endWords({rise, decidedBy}: ShownInbreeding, end: number | null): string {
  if (decidedBy === 'estimate' || !rise) return ''
  if (end !== null) return ` The end that speaks against the breed decides, by ${figured(rise.families, 'sire family', 'sire families')}.`
  return rise.families < FEWEST_FAMILIES ? ` The end of its interval cannot be told: the birds come of ${rise.families === 1 ? 'one sire family' : `${countWord(rise.families)} sire families`}, and ${countWord(FEWEST_FAMILIES)} are needed.` : ' The end of its interval cannot be told, since no sire family differs from another.'
}

const openWords = ({rise}: ShownInbreeding): string => (rise && rise.atLeast > 0 ? ` Of ${figured(rise.atLeast, 'bird')} of that step a grandparent or nearer is not in the book.` : '')
