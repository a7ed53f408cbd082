/** In words, wherever a male or a pair is named for its little kinship: that it can lose chicks by a lethal rule, or carries what kills or harms. */
import type {BurdenOfBird, LossOfPair, PairHarm} from '../findings/pair-harm.ts'
import type {Bird} from '../logbook/book.ts'
import {AS_GOOD_AS, chance} from './chance-words.ts'
import {listWords} from './numbers.ts'

/** `can lose 25.0% of its chicks, Cp` */
export const lossWords = ({share, loci, ifScored}: LossOfPair): string =>
  `can lose ${chance(share)} of its chicks, ${listWords(loci.map(({symbol}) => symbol))}${ifScored ? ', if what was scored is right' : ''}`

/** `carries Cp and Cr`, `may carry Cp (36.8%)`, `was scored as having Cp`; empty where there is none */
export function burdenWords(burdens: readonly BurdenOfBird[]): string {
  const named = (those: readonly BurdenOfBird[], says: (burden: BurdenOfBird, name: string) => string): string => listWords(those.map(each => says(each, each.locus.alleles[each.allele] ?? '')))
  const told = (verb: string, names: string): readonly string[] => (names === '' ? [] : [`${verb} ${names}`])
  const scored = burdens.filter(({ifScored}) => ifScored), rest = burdens.filter(each => !scored.includes(each)), isSure = ({carries}: BurdenOfBird): boolean => carries > AS_GOOD_AS
  return listWords([
    ...told('was scored as having', named(scored, (_, name) => name)), ...told('carries', named(rest.filter(isSure), (_, name) => name)),
    ...told('may carry', named(rest.filter(each => !isSure(each)), ({carries}, name) => `${name} (${chance(carries)})`)),
  ])
}

/** Of one pair: what it can lose, else what one of them carries; empty where there is neither. */
export function pairWarning(male: Bird, hen: Bird, harm: PairHarm): string {
  const loss = harm.lossOf(male, hen)
  if (loss) return lossWords(loss)
  const his = burdenWords(harm.burdensOf(male)), hers = burdenWords(harm.burdensOf(hen))
  return [...(his === '' ? [] : [`he ${his}`]), ...(hers === '' ? [] : [`she ${hers}`])].join('; ')
}

/** Of a male with the hens of a pen: the hen with whom he can lose most, else what he carries; empty where there is neither. */
export function maleWarning(male: Bird, hens: readonly Bird[], harm: PairHarm): string {
  const losses = hens.flatMap(hen => {
    const loss = harm.lossOf(male, hen)
    return loss ? [{hen, loss}] : []
  }).sort((a, b) => b.loss.share - a.loss.share), [most, ...more] = losses
  return most ? `with ${most.hen.band} ${lossWords(most.loss)}${more.length === 0 ? '' : `; with ${more.length} more hens some too`.replace(' 1 more hens', ' 1 more hen')}` : burdenWords(harm.burdensOf(male))
}
