/** In words: to which mate a bird is put to be tested, which of the chicks are looked at, and what to do where no bird is to be mated for it. */
import {writeGenotype} from '../heredity/genotype-notation.ts'
import type {TestAdvice, TestMate} from '../findings/test-mates.ts'
import type {Locus, Logbook, Sex} from '../logbook/book.ts'
import {listWords} from './numbers.ts'
import {birdWord} from './sex-words.ts'

/** What a mate is called: `a hen that shows single (p+/p+)`, `a cock that is po+/po+, which its look alone does not tell`, `any hen` */
export function mateWords({any, looks, lookIsEnough, atLocus, others}: TestMate, locus: Locus, of: Sex, {project, asOf}: Pick<Logbook, 'project' | 'asOf'>): string {
  const name = birdWord({sex: of === 'male' ? 'female' : of === 'female' ? 'male' : 'unknown', hatched: null}, project.species, asOf).replace(', unsexed', '')
  const also = others.map(({locus: at, alleles}) => listWords(alleles.map(each => writeGenotype(each, at)), 'or')).join(' and ')
  if (any) return `any ${name}${also === '' ? '' : ` that is ${also}`}`
  const is = listWords(atLocus.map(alleles => writeGenotype(alleles, locus)), 'or')
  return lookIsEnough ? `a ${name} that shows ${listWords(looks, 'or')} (${is}${also === '' ? '' : `, ${also}`})` : `a ${name} that is ${is}${also === '' ? '' : ` and ${also}`}${looks.length === 0 ? '' : `, which ${listWords(looks, 'or')} alone does not prove`}`
}

/** `chicks`, `sons`, `daughters` */
export const amongWords = ({among}: Pick<TestMate, 'among'>): string => (among === 'all' ? 'chicks' : among)

/** `chick`, `son`, `daughter` */
export const oneOf = (mate: Pick<TestMate, 'among'>): string => amongWords(mate).slice(0, -1)

/** Why no bird is mated to find out, and what is done instead. */
export const ordinaryWords = (because: Extract<TestAdvice, {readonly kind: 'ordinary'}>['because']): string =>
  `mate no bird to find this out, for ${because === 'lethal' ? 'two doses of such an allele kill the chick' : 'only a mate that has it twice would tell, and it is a burden to a bird'}: look at the ordinary chicks it has anyway, or have its DNA tested.`
