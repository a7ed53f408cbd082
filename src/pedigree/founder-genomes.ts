import type {Coancestry} from './coancestry.ts'

/**
 * How many unrelated birds, each with two different copies of every gene, would hold as much variety as this group?
 *
 *     fg = 1 / (2 · mean kinship)       over all pairs of the group, each bird with itself included
 *
 * Values below 1 are right: one inbred bird holds less than one that is not. Of unrelated founders with certain descent fg ≤ fe.
 *
 * By the other definition, 1 / Σ p²/r with r the part of each founder's genes that is still in the group (retention), the answer is another:
 * it asks what has been lost outright, and is not used here.
 *
 * @returns fg, above 0; null for an empty group or one kin to nobody, not even to itself
 * @see Caballero & Toro 2000, Genet. Res. 75:331; by retention Lacy 1989, Zoo Biol. 8:111 (both from memory)
 * @example one bird, not inbred: 1; one bird of full sibs: 0.8
 */
export function founderGenomes(coancestry: Pick<Coancestry, 'meansAmong'>, group: readonly number[]): number | null {
  if (group.length === 0) return null
  const kinship = coancestry.meansAmong(group).group
  return kinship > 0 ? 1 / (2 * kinship) : null
}
