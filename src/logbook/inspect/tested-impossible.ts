import {genotypesAt, matches, writePattern} from '../../heredity/genotype-notation.ts'
import type {Linked} from '../linked.ts'
import {testSpot} from '../test-spot.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const TRAIT = '---\nname: Ground\nstates: [silver, gold]\nloci:\n  S: {on: Z, alleles: [S, s+]}\nshows:\n  - {S: S/_, is: silver}\n  - {S: s+/_, is: gold}\n---\n'
const hen = (genotype: string) => `---\nband: H-9\nsex: female\nstrain: holm-white\ntested: {S: ${genotype}}\n---\n`

export const entry: ManualEntry = {
  code: 'tested-impossible', severity: 'error', title: 'A tested genotype that the bird’s sex cannot have',
  cause: 'A hen has one Z, so a test of hers finds one allele there; a cock has two.',
  remedy: 'Write S/- for a hen’s single Z and two alleles for a cock’s; or mend the sex.',
  wrong: {'traits/ground.md': TRAIT, 'birds/H-9.md': hen('S/s+')},
  right: {'traits/ground.md': TRAIT, 'birds/H-9.md': hen('S/-')},
}

export function check({bench, book, tellings}: Linked): void {
  for (const bird of book.birds) {
    const {sex} = bird
    if (sex === 'unknown') continue
    for (const [locus, pattern] of bird.tested) {
      if (genotypesAt(locus, sex).some(genotype => matches(pattern, genotype))) continue
      const text = writePattern(pattern, locus), [first = '_'] = text.split('/')
      bench.note(slipOf(entry, testSpot(bird, locus, tellings.get(bird)), `${bird.band} is ${sex === 'female' ? 'a hen and has one Z' : 'a cock and has two Zs'}, which cannot be ${locus.symbol} ${text}`,
        sex === 'female' ? `write ${first}/-, or mend the sex` : `write ${first}/${first} or ${first}/_, or mend the sex`))
    }
  }
}
