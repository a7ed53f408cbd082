/** Evidence of how closely the breeders are bred, in words: the mean, its rise, the size that it comes to, and the lines of males. */
import type {ClosenessPart, ShownInbreeding} from '../findings/shown-of-breeding.ts'
import {named, NO_BREEDER} from './evidence-of-descent-words.ts'
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

function partWords({of, have, low, high, mark}: ClosenessPart, {step, lines, census}: ShownInbreeding): string {
  const open = step && step.atLeast > 0 ? ` Of ${figured(step.atLeast, 'bird')} of that step a grandparent or nearer is not in the book.` : ''
  switch (of) {
    case 'rate': {
      if (have === null || !step) return 'How fast F rises in a generation cannot be told: no step mated inside the breed has birds of two known generations.'
      const own = low === null || high === null ? '' : `; by the birds of ${step.label} each by itself ${limits({low, high})}`
      return `F rises by ${percentSign(have)} in a generation, ${step.since === null ? `by the birds of ${step.label} each by itself` : `from ${step.since} to ${step.label}`}${step.since === null ? (low === null || high === null ? '' : ` (${limits({low, high})})`) : own}; ${percentSign(mark)} will do.${open}`
    }
    case 'size': {
      const count = census === null ? '' : ` By the count of cocks and hens bred from it is ${rounded(census, 1)}.`
      if (have === null || !step) return `An effective size cannot be told: F has not risen inside the breed, or too little descent is known.${count}`
      const range = low === null ? '' : ` (${rounded(low, 1)} ${high === null ? 'or more' : `to ${rounded(high, 1)}`})`
      return `The birds of ${step.label} come to an effective size of ${rounded(have, 1)}${range}, where ${mark} is asked.${count}${open}`
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
