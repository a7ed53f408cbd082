/**
 * How much of the donor's chromosome is still around the gene that was chosen at every backcross?
 *
 *     expected length on one side = (1 − e^(−n·x)) / n     morgans
 *
 * Choosing the gene keeps its neighbours; each backcross cuts them at the nearest crossover. With no backcross the whole arm is left.
 *
 * @param backcrosses meioses in birds that carried one copy, from the F1's on; whole, 0 or more
 * @param arm morgans from the gene to the chromosome's end on this side; 0 or more, Infinity for a very long arm
 * @throws RangeError when either is not so
 * @see Hanson 1959, Genetics 44:833; Stam & Zeven 1981, Euphytica 30:227 (crossovers independent)
 * @example 2 * donorSegment(6, 0.5)  // 0.3167: of a chromosome of 100 cM with the gene in the middle 32 cM are left in BC6
 */
export function donorSegment(backcrosses: number, arm: number): number {
  if (!Number.isInteger(backcrosses) || backcrosses < 0) throw new RangeError(`backcrosses are counted 0, 1, 2 …, not ${backcrosses}`)
  if (!(arm >= 0)) throw new RangeError(`an arm is 0 morgans or longer, not ${arm}`)
  return backcrosses === 0 ? arm : (1 - Math.exp(-backcrosses * arm)) / backcrosses
}
