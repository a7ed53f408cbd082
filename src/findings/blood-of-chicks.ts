import type {Parentage} from '../logbook/book.ts'
import {strainSameness} from '../pedigree/strain-heterozygosity.ts'
import type {Kinship} from './inbreeding.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'

/** What inbreeding and the vigour of a cross stand in, of chicks and of their dam. All 0 to 1. */
export interface Blood {
  readonly chickF: number
  readonly damF: number
  /** chance that the two copies of a gene come from different strains */
  readonly chickH: number
  readonly damH: number
}

/**
 * How closely bred are the chicks, hatched or not, of these parents, and how closely their dam?
 *
 *     F = Σ p·K(sire, dam)        F_dam = Σ p·F(dam)        H = Σ p·(1 − K_strain(sire, dam))        H_dam = Σ p·H(dam)
 *
 * over the pairs of two birds of the book, their chances brought to 1; worked once for each parentage.
 *
 * @returns null where less than half of the chances are of two birds of the book
 */
export function bloodOfChicks({pedigree, numberOf}: PedigreeOfBook, kinship: Kinship, heterozygosity: Float64Array): (parentage: Parentage) => Blood | null {
  const sameness = strainSameness(pedigree), kept = new Map<string, Blood | null>(), keyOf = familyKeys()
  const work = (pairs: Parentage['pairs']): Blood | null => {
    let known = 0, chickF = 0, damF = 0, chickH = 0, damH = 0
    for (const {sire, dam, chance} of pairs) {
      if (!sire || !dam) continue
      known += chance
      chickF += chance * kinship.between(sire, dam)
      damF += chance * kinship.of(dam).f.mean
      chickH += chance * (1 - sameness.between(numberOf(sire), numberOf(dam)))
      damH += chance * (heterozygosity[numberOf(dam)] ?? 0)
    }
    return known < 0.5 ? null : {chickF: chickF / known, damF: damF / known, chickH: chickH / known, damH: damH / known}
  }
  return parentage => {
    const key = keyOf(parentage), before = kept.get(key)
    if (before !== undefined) return before
    const found = work(parentage.pairs)
    kept.set(key, found)
    return found
  }
}

/** Chicks of the same parents, or of the same doubt, have the same key. */
const familyKey = ({pairs}: Pick<Parentage, 'pairs'>): string => pairs.map(({sire, dam, chance}) => `${sire?.id ?? '?'} × ${dam?.id ?? '?'} ${chance}`).join('; ')

/** The same, each parentage written once: hatch mates share theirs. */
export function familyKeys(): (parentage: Pick<Parentage, 'pairs'>) => string {
  const written = new Map<Parentage['pairs'], string>()
  return parentage => {
    const known = written.get(parentage.pairs)
    if (known !== undefined) return known
    const key = familyKey(parentage)
    written.set(parentage.pairs, key)
    return key
  }
}
