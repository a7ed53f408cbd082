/** What a bird may hide: at each locus that is open, or where one allele covers another, every genotype with its chance, and the reason in one sentence. */
import {writeGenotype} from '../heredity/genotype-notation.ts'
import type {Alleles} from '../heredity/locus.ts'
import {disputedAllele, type DisputedAllele} from '../findings/disputed-alleles.ts'
import type {HiddenAtLocus} from '../findings/hidden-alleles.ts'
import type {Findings} from '../findings/study.ts'
import type {Bird} from '../logbook/book.ts'
import {AS_GOOD_AS, genotypeChances} from './chance-words.ts'
import {hidesReason, HIS} from './hides-reason.ts'
import {listWords, percentSign} from './numbers.ts'
import {pronoun} from './sex-words.ts'

export interface BirdHides {
  readonly lines: readonly {
    /** the trait that rests on the locus: `Skin`; with its symbol where the trait rests on several */
    readonly head: string
    /** `W+/W+ 85.0%, W+/w 15.0%` */
    readonly chances: string
    readonly why: string
  }[]
  /** `P/P and S/-`, where its look or its kin leave nothing open; empty when every locus is open */
  readonly certain: string
  /** `Worked exactly`; `Worked by approximation at W, settled to 0.1%` */
  readonly how: string
}

/** Null where no rule of the project speaks of any locus. */
export function birdHides(bird: Bird, findings: Findings): BirdHides | null {
  const told = findings.hidden(bird).filter(({locus}) => findings.book.traits.some(trait => trait.shows.length > 0 && trait.loci.includes(locus)))
  if (told.length === 0) return null
  const disputed = new Map(told.map(at => [at, disputedAllele(bird, at.locus, findings.heredity)] as const)), certain = told.filter(each => !disputed.get(each) && !isOpen(each, bird, findings)), open = told.filter(each => !certain.includes(each)), loose = open.filter(({exact}) => !exact)
  return {
    lines: open.map(at => {
      const doubted = disputed.get(at)
      return {head: headOf(at, findings), chances: genotypeChances(findings.heredity.of(bird, at.locus).genotypes), why: doubted ? disputedWords(bird, at, doubted) : hidesReason(bird, at, findings)}
    }),
    certain: listWords(certain.map(({locus}) => findings.heredity.of(bird, locus).genotypes[0]?.written ?? '')),
    how: loose.length === 0 ? 'Worked exactly' : `Worked by approximation${loose.length < open.length ? ` at ${listWords(loose.map(({locus}) => locus.symbol))}` : ''}, settled to ${settledTo(loose, findings)}`,
  }
}

/** A score is never passed over: `if his parents are as written; he was scored short: were that right, Cp/cp+.` */
function disputedWords({sex, parentage, tested}: Bird, {locus}: HiddenAtLocus, {allele, state, taken, fits}: DisputedAllele): string {
  const he = pronoun(sex), his = HIS[sex], [only] = taken
  return `${tested.has(locus) ? `if ${his} test is right` : `if ${his} ${parentage.kind === 'founder' ? 'strain is' : 'parents are'} as written`}; ${he} was scored ${state}: were that right, ${
    !only ? withoutTaken() : only.probability > AS_GOOD_AS ? only.written : genotypeChances(taken)}.`

  /** Where its parents leave it no such genotype: the one there is of the look, or that it has the allele. */
  function withoutTaken(): string {
    const single = locus.on === 'Z' && sex === 'female', others = locus.alleles.flatMap((_, other): Alleles[] => (fits([allele, other]) ? [[allele, other]] : [])), [one] = others
    return single ? writeGenotype([allele, null], locus) : one && others.length === 1 ? writeGenotype(one, locus) : `${he} would have ${locus.alleles[allele] ?? ''}`
  }
}

/** The last change of any chance in the working, one in a thousand where it ended by itself. */
const settledTo = (loose: readonly HiddenAtLocus[], {heredity}: Findings): string => percentSign(Math.max(0.001, ...loose.map(({locus}) => heredity.worked(heredity.groupOf(locus)).found.change)))

/** A look that leaves nothing open and is this likely to be right hides nothing: what is left is the doubt of every score. */
const SCORED_RIGHT = 0.95

/** Not certain, or certain to have what its look does not show. */
function isOpen({locus, open, looks}: HiddenAtLocus, bird: Bird, {heredity}: Findings): boolean {
  const [first] = heredity.of(bird, locus).genotypes
  if (first && looks.length > 0 && open.length === 0 && first.probability >= SCORED_RIGHT) return false
  if (!first || first.probability <= AS_GOOD_AS) return true
  return open.some(({probability}) => probability > AS_GOOD_AS) && new Set(first.is.filter(allele => allele !== null)).size > 1
}

function headOf({locus}: HiddenAtLocus, {book}: Findings): string {
  const first = book.traits.find(trait => trait.shows.length > 0 && trait.loci.includes(locus))
  return first ? `${first.name}${first.loci.length > 1 ? `, ${locus.symbol}` : ''}` : locus.symbol
}
