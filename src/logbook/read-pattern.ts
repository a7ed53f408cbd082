/** A genotype as a record writes it, read for its locus; what cannot be read is a slip. */
import {readGenotype, type GenotypePattern} from '../heredity/genotype-notation.ts'
import type {Note, Spot} from '../records/problem.ts'
import type {Locus} from './book.ts'
import {henOnAutosome} from './inspect/hen-on-autosome.ts'
import {unknownAllele} from './inspect/unknown-allele.ts'
import {unreadableGenotype} from './inspect/unreadable-genotype.ts'

export function readPattern(text: string, locus: Locus, at: Spot, note: Note): GenotypePattern | null {
  const read = readGenotype(text, locus)
  switch (read.kind) {
    case 'read': return read.pattern
    case 'form': note(unreadableGenotype(text, locus, at)); break
    case 'no-such-allele': note(unknownAllele(read.allele, locus, at)); break
    case 'missing-on-autosome': note(henOnAutosome(text, locus, at)); break
  }
  return null
}
