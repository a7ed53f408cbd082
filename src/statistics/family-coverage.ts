/** How often, of many made-up flocks whose true share is known, the intervals held it. */
export interface FamilyCoverage {
  /** what the flocks are made of: `alike` no family differs · `carriers` half, and `few-carriers` three in ten, of sires and hens carry a recessive · `lines` each sire's chicks have a share of their own */
  readonly flock: 'alike' | 'carriers' | 'few-carriers' | 'lines'
  /** sire families; each of 4 to 24 chicks of four hens */
  readonly families: number
  /** of a hundred flocks, where `familyShare`'s 95 % interval held the truth */
  readonly family: number
  /** and where Wilson's plain one did, as if the chicks were independent */
  readonly plain: number
}

/**
 * Can the interval by families be believed? What it covered in 2000 made-up flocks each, in percent; 95 is what it should be.
 *
 * The true share of birds right is 90 % for `alike`, 93.75 % for `carriers` (1 − ½·½·¼), 97.75 % for `few-carriers`, and 80 % for `lines`, where a sire's
 * own share is drawn evenly from 60 to 100 %. The standard error of a figure is 0.5. Measured by the test of this file, which holds the table to what it finds.
 */
export const FAMILY_COVERAGE: readonly FamilyCoverage[] = [
  {flock: 'alike', families: 5, family: 99.5, plain: 94.5},
  {flock: 'alike', families: 8, family: 99.1, plain: 95.9},
  {flock: 'alike', families: 12, family: 98.2, plain: 95.3},
  {flock: 'alike', families: 20, family: 97.6, plain: 95.5},
  {flock: 'carriers', families: 5, family: 97.9, plain: 78.5},
  {flock: 'carriers', families: 8, family: 96.6, plain: 80},
  {flock: 'carriers', families: 12, family: 93.1, plain: 75.6},
  {flock: 'carriers', families: 20, family: 93.4, plain: 77.7},
  {flock: 'few-carriers', families: 5, family: 97.7, plain: 88.2},
  {flock: 'few-carriers', families: 8, family: 97.7, plain: 88.4},
  {flock: 'few-carriers', families: 12, family: 96.7, plain: 81.4},
  {flock: 'few-carriers', families: 20, family: 95, plain: 81.3},
  {flock: 'lines', families: 5, family: 97.2, plain: 80.9},
  {flock: 'lines', families: 8, family: 95.6, plain: 80.8},
  {flock: 'lines', families: 12, family: 94.3, plain: 80.2},
  {flock: 'lines', families: 20, family: 94.7, plain: 81.1},
]
