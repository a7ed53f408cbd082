import type {Alleles} from '../heredity/locus.ts'
import {judgedRight} from './judged-chicks.ts'
import type {Heredity} from './heredity.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'
import type {TrueBred} from './true-bred.ts'
import type {UnwantedAlleles} from './unwanted-alleles.ts'

/** How many chicks of a step look right and hide what is not wanted. */
export interface CarriersInStep extends UnwantedAlleles {
  readonly step: string
  /** chicks that show what is wanted of the trait, and whose genes are worked */
  readonly right: number
  /** carriers to be expected among them */
  readonly carriers: number
  /** chicks of tallies that show it too, whose genes are not worked */
  readonly leftOut: number
  readonly exact: boolean
}

/**
 * How many carriers does the rate of right looks leave? Of the chicks of each step that were scored and are right in a required trait, the sum of their chances to have an allele that
 * is not wanted, given all that was seen in the flock. A look that needs the allele twice lets carriers pass as right: where a quarter were off, two in three of the right ones carry.
 *
 * @param asked the unwanted alleles of the required traits, one entry a locus
 */
export function carriersInSteps(asked: readonly UnwantedAlleles[], {verdicts, steps}: TrueBred, heredity: Heredity, {numberOf}: Pick<PedigreeOfBook, 'numberOf'>): readonly CarriersInStep[] {
  return asked.flatMap(({trait, locus, unwanted}) => {
    const group = heredity.groupOf(locus), place = group.loci.indexOf(locus), {found, tallies} = heredity.worked(group)
    const isCarrier = (alleles: Alleles): boolean => alleles.some(allele => allele !== null && unwanted.includes(allele))
    const sums = new Map<string, {right: number; carriers: number; leftOut: number; exact: boolean}>()
    for (const [chick, verdict] of verdicts) {
      if (judgedRight(verdict, trait) !== true) continue
      const sum = sums.get(chick.step.label) ?? {right: 0, carriers: 0, leftOut: 0, exact: true}, numbers = (chick.kind === 'bird' ? [numberOf(chick)] : tallies.get(chick) ?? []).slice(0, chick.count)
      sums.set(chick.step.label, sum)
      sum.leftOut += chick.count - numbers.length
      for (const number of numbers) {
        sum.right += 1
        sum.carriers += found.at(number, place).reduce((chance, {is, probability}) => chance + (isCarrier(is) ? probability : 0), 0)
        sum.exact &&= found.isExact(number, place)
      }
    }
    return steps.flatMap(({step}) => {
      const sum = sums.get(step)
      return sum && sum.right > 0 ? [{trait, locus, unwanted, step, ...sum}] : []
    })
  })
}
