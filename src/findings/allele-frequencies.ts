import type {Probable} from '../heredity/genotype-probabilities.ts'
import type {Alleles, Locus} from '../heredity/locus.ts'
import type {Bird, Logbook, Sex} from '../logbook/book.ts'
import {scoreInterval} from '../statistics/score-interval.ts'
import type {Interval} from './estimate.ts'
import type {Heredity} from './heredity.ts'
import {ladderChicks} from './ladder-chicks.ts'
import type {LadderStep} from './ladder.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'
import {SEX_ROWS, traitShares, type SexRow, type TraitShares} from './shares.ts'

/** How common each allele of a locus is among some birds of a step. */
export interface AlleleFrequencies {
  readonly step: string
  readonly locus: Locus
  /** every chick that hatched, or those that had, or may have had, chicks */
  readonly of: 'hatched' | 'bred-from'
  /** `all` is the three others together */
  readonly sex: SexRow
  readonly birds: number
  /** chicks of tallies on which nothing was seen and whose genes are not worked: not among `birds` */
  readonly leftOut: number
  /** genes there are of the locus: two a bird, one a hen on the Z */
  readonly genes: number
  /** in the locus's order; shares make 1 */
  readonly alleles: readonly AlleleShare[]
  /** every genotype is known, and the genes are counted; else they are expectations */
  readonly method: 'counted' | 'expected'
  readonly exact: boolean
}

export interface AlleleShare {
  /** by its number */
  readonly allele: number
  readonly share: number
  /** 95 %, Wilson, on `worth` genes */
  readonly interval: Interval
  /** counted genes that would tell the share as well as these expectations do */
  readonly worth: number
}

export interface Frequencies {
  readonly alleles: readonly AlleleFrequencies[]
  /** looks of the birds bred from alone, as `shares` has them of all that hatched */
  readonly looksOfBredFrom: readonly TraitShares[]
}

/** What is summed over the birds of one row. */
interface Sums {
  birds: number
  leftOut: number
  genes: number
  exact: boolean
  readonly copies: number[]
  readonly open: number[]
}

/**
 * How common is each allele in each step, among the chicks that hatched and among those bred from?
 *
 *     p = Σ E(copies) / Σ genes,        on the Z  p = (2 n♂ p♂ + n♀ p♀) / (2 n♂ + n♀)
 *
 * E over the genotypes that each bird may have, given all that was seen in the flock. Where every genotype is known this is plain counting. The interval is
 * Wilson's, on so many genes as a count would have to hold to be as sure:
 *
 *     worth = N · p(1 − p) / ( p(1 − p) + Σ Var(copies)/N )        N = Σ genes
 *
 * the chance of the draw and what is not known of the genotypes added. Relatives count as independent, so that the interval is narrower than the truth.
 * Birds of pure strains are left out.
 *
 * @see Wilson 1927, J. Am. Stat. Assoc. 22:209–212; the pooling on the Z is a plain count of genes; the worth is our own
 */
export function alleleFrequencies(book: Logbook, ladder: readonly LadderStep[], heredity: Heredity, {numberOf}: PedigreeOfBook): Frequencies {
  const parents = bredFrom(book), chicks = ladderChicks(book), found: AlleleFrequencies[] = []
  for (const {locus} of book.loci.values()) {
    const group = heredity.groupOf(locus), place = group.loci.indexOf(locus), worked = heredity.worked(group)
    const rows = new Map<string, Sums>()
    const sumsOf = (step: string, of: AlleleFrequencies['of'], sex: Sex | 'all'): Sums => {
      const key = `${step}\n${of}\n${sex}`, known = rows.get(key) ?? {birds: 0, leftOut: 0, genes: 0, exact: true, copies: locus.alleles.map(() => 0), open: locus.alleles.map(() => 0)}
      rows.set(key, known)
      return known
    }
    for (const chick of chicks) {
      const numbers = chick.kind === 'bird' ? [numberOf(chick)] : worked.tallies.get(chick) ?? []
      const kinds = chick.kind === 'bird' && parents.has(chick) ? (['hatched', 'bred-from'] as const) : (['hatched'] as const)
      for (const of of kinds) for (const sex of [chick.sex, 'all'] as const) {
        const sums = sumsOf(chick.step.label, of, sex)
        sums.leftOut += chick.count - Math.min(chick.count, numbers.length)
        for (const number of numbers) add(sums, worked.found.at(number, place), worked.found.isExact(number, place))
      }
    }
    for (const step of ladder) for (const of of ['hatched', 'bred-from'] as const) for (const sex of SEX_ROWS) {
      const sums = rows.get(`${step.label}\n${of}\n${sex}`)
      if (sums && sums.birds > 0) found.push({step: step.label, locus, of, sex, ...sharesIn(sums)})
    }
  }
  return {alleles: found, looksOfBredFrom: traitShares({...book, birds: book.birds.filter(bird => parents.has(bird)), hatches: []}, ladder)}
}

/** Birds that had, or may have had, a chick on record. */
function bredFrom({birds, hatches}: Logbook): ReadonlySet<Bird> {
  const all = [...birds, ...hatches.flatMap(({tallies}) => tallies)]
  return new Set(all.flatMap(({parentage: {sires, dams}}) => [...sires, ...dams].map(({bird}) => bird)))
}

function add(sums: Sums, genotypes: readonly Probable<Alleles>[], exact: boolean): void {
  sums.birds += 1
  sums.exact &&= exact
  sums.genes += genotypes.reduce((total, {is: [, other], probability}) => total + probability * (other === null ? 1 : 2), 0)
  sums.copies.forEach((_, allele) => {
    let mean = 0, square = 0
    for (const {is: [one, other], probability} of genotypes) {
      const copies = (one === allele ? 1 : 0) + (other === allele ? 1 : 0)
      mean += probability * copies
      square += probability * copies ** 2
    }
    sums.copies[allele] = (sums.copies[allele] ?? 0) + mean
    sums.open[allele] = (sums.open[allele] ?? 0) + Math.max(0, square - mean ** 2)
  })
}

/** Less than this of a bird's copies is rounding. */
const KNOWN = 1e-9

function sharesIn({birds, leftOut, genes, exact, copies, open}: Sums): Omit<AlleleFrequencies, 'step' | 'locus' | 'of' | 'sex'> {
  return {
    birds, leftOut, genes, exact, method: open.every(each => each <= KNOWN * birds) ? 'counted' : 'expected',
    alleles: copies.map((count, allele) => {
      const share = Math.min(1, count / genes), drawn = share * (1 - share), unknown = (open[allele] ?? 0) / genes
      const worth = drawn <= KNOWN ? genes : (genes * drawn) / (drawn + unknown)
      return {allele, share, worth, interval: scoreInterval(share, worth)}
    }),
  }
}
