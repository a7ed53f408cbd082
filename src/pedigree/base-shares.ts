import {geneFlow} from './gene-flow.ts'
import type {Pedigree, Transmission} from './pedigree.ts'

/**
 * Which part of a bird's genes is expected from each base population?
 *
 *     share(chick) = Σ w · share(source)     w as in `geneFlow`; 1 for a base population itself
 *
 * On the autosomes every backcross halves the donor's share; on the Z a daughter has what her sire has; the mother's line goes whole from hen to chick.
 *
 * @param base the number of a base population that is not within another
 * @returns its share in every animal, 0 to 1
 * @see University lessons on backcrossing: after n backcrosses the recurrent share is 1 − (1/2)^(n+1)
 */
export function baseShares(pedigree: Pedigree, transmission: Transmission, base: number): Float64Array {
  const {bases, nodes, order, first, source, weight} = geneFlow({...pedigree, kin: []}, transmission)
  const share = new Float64Array(nodes)
  for (const node of order) {
    let sum = node === base ? 1 : 0
    for (let k = first[node] ?? 0, end = first[node + 1] ?? 0; k < end; k++) sum += (weight[k] ?? 0) * (share[source[k] ?? 0] ?? 0)
    share[node] = sum
  }
  return share.slice(bases)
}
