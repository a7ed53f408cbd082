import {text, year} from '../scalars.ts'
import {listOf, object, oneOf, optional, required, type ValueOf} from '../shape.ts'
import {kind} from './kind.ts'
import {alleles, linked, PLACES, rules} from './loci.ts'
import {privateNotes} from './parts.ts'

/** What a caution is about: chicks that never hatch, birds that suffer, or birds that breed badly. */
export const CAUTION_WORDS = ['lethal', 'welfare', 'breeding'] as const

/** How well a source is known: read for this entry, named by others, a page or table of hobbyists, or remembered only. */
export const SOURCE_WORDS = ['read', 'cited', 'hobbyists', 'memory'] as const

const locus = object('a locus', {
  name: required(text('a name such as Pea comb'), 'What the trade calls it. The symbol is the file’s name.'),
  on: required(oneOf(PLACES), 'Where it lies.'),
  alleles: required(alleles, 'Its alleles.'),
  rare: optional(listOf(text('an allele')), 'Alleles so rare that a project has them only where a record of its own names one: a rule, a strain or a test.'),
  chromosome: optional(text('a chromosome such as 1'), 'The chromosome, where it is known.'),
  gene: optional(text('a text'), 'The gene, or what is changed in it.'),
  dominance: optional(text('a sentence'), 'How its alleles stand to one another.'),
  linked: optional(linked, 'Loci near it.'),
  looks: optional(listOf(object('a way to score it', {
    shows: required(rules, 'Which genotypes look like what. A trait that names exactly these loci, has states of these names and no rules of its own takes them.'),
  })), 'Rules for the traits that name it.'),
  cautions: optional(listOf(object('a caution', {
    about: required(oneOf(CAUTION_WORDS), 'What it is about.'),
    says: required(text('a sentence'), 'What a breeder ought to know before setting eggs.'),
  })), 'What can go wrong.'),
  beliefs: optional(listOf(object('a belief', {
    heard: required(text('a sentence'), 'What is often heard.'),
    right: required(text('a sentence'), 'What holds instead.'),
  })), 'What is often heard of it and does not hold.'),
  doubts: optional(listOf(text('a sentence')), 'What is not settled, or is known from memory only.'),
  sources: optional(listOf(object('a source', {
    by: required(text('authors'), 'By whom.'),
    year: optional(year, 'The year.'),
    known: required(oneOf(SOURCE_WORDS), 'How well it is known: read, cited by others, from hobbyists, or from memory.'),
  })), 'Where it is told.'),
  catalogue: optional(text('a number such as OMIA 000782-9031'), 'Its number in the catalogue of inherited traits of animals.'),
  private: privateNotes,
})

export type LocusRecord = ValueOf<typeof locus>

export const locusKind = kind({
  id: 'locus', files: 'loci/<symbol>.md', title: 'A locus', shape: locus,
  purpose: 'A locus that is not in the reference, or that is to read otherwise than there. A record here takes the place of the reference’s; a trait names it by its symbol.',
  example: `---
name: Wisp behind the comb
on: autosome
alleles: [Wi, wi+]
dominance: One dose shows.
linked: {P: {recombination: 30%, doubt: From two matings of ours.}}
looks:
  - shows:
      - {Wi: Wi/_, is: wisp}
      - {Wi: wi+/wi+, is: none}
cautions:
  - {about: welfare, says: In sleet the wisp freezes to the comb.}
doubts: [Nobody but us has looked at it.]
---
Three or four stiff feathers that stand up behind the comb.
`,
})
