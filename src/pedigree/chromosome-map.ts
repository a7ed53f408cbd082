/**
 * Lengths of the fowl's autosomes in centimorgans, both sexes averaged: the twenty-eight for which there is a map.
 * The ten smallest have none worth the name and are left out; a share of about 2 % of the genes.
 *
 * @see Groenen et al. 2009, Genome Res. 19:510, and Elferink et al. 2010, BMC Genetics 11:11 (31 linkage groups, 3054 cM in all, seen);
 *   the length of each chromosome is from memory and rounded.
 */
export const FOWL_AUTOSOMES: readonly number[] = [
  430, 305, 248, 208, 156, 106, 108, 92, 90, 84, 66, 72, 62, 68, 54, 50, 55, 52, 52, 56, 52, 60, 54, 50, 58, 50, 50, 54,
]

/** Share of gametes in which two places so many morgans apart have parted. Haldane 1919: crossovers fall independently. */
export const recombination = (morgans: number): number => (1 - Math.exp(-2 * morgans)) / 2
