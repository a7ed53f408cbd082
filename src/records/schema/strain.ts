import {chance, text} from '../scalars.ts'
import {mapOf, object, oneOf, optional, required} from '../shape.ts'
import {kind} from './kind.ts'
import {photos, privateNotes} from './parts.ts'

const strain = object('a strain', {
  name: required(text('a name such as Fell Buff'), 'The strain’s name.'),
  role: required(oneOf(['recurrent', 'donor', 'other']), 'The recurrent strain is the one crossed back to; a donor gives a trait.'),
  'true-for': optional(mapOf('traits with the state it breeds true for', text('a state')), 'Traits it breeds true for: the alleles are fixed.'),
  alleles: optional(mapOf('loci with stated shares of their alleles', mapOf('alleles with their shares', chance)), 'Stated shares of alleles, where it does not breed true, or where several genotypes look as it does. A locus of which nothing is said is taken to have every allele alike.'),
  inbreeding: optional(chance, 'The inbreeding of its founders; 0 when not given.'),
  kinship: optional(chance, 'The kinship of two of its founders; 0 when not given.'),
  photos,
  private: privateNotes,
})

export const strainKind = kind({
  id: 'strain', files: 'strains/<id>.md', title: 'A founding strain', shape: strain,
  purpose: 'A founding population: an existing breed or a line of it.',
  example: `---
name: Fell Buff
role: donor
true-for: {comb: pea, skin: yellow}
alleles: {S: {S: 10%, s+: 90%}}
inbreeding: 5%
kinship: 4%
---
`,
})
