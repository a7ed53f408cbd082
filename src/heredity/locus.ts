/** A place on a chromosome and what can stand there. Numbers for alleles are places in `alleles`. */
export interface Locus {
  /** as the trade writes it: `P`, `Pti-1` */
  readonly symbol: string
  readonly on: 'autosome' | 'Z'
  /** two or more, in an order that says nothing of dominance; `+` marks the wild type */
  readonly alleles: readonly string[]
}

/** Two loci near each other on one chromosome. */
export interface Linkage {
  /** places in the list of loci */
  readonly loci: readonly [number, number]
  /** share of gametes that cross over between them, 0 to ½; on the Z in cocks only, for a hen hands on her Z as it is */
  readonly recombination: number
}

/** What stands at one locus of one bird: numbers of alleles, the lower first; `null` in second place for the single Z of a hen. */
export type Alleles = readonly [number, number | null]
