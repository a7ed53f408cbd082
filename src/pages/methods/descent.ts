import {countBySex} from '../../findings/census.ts'
import {readLabel} from '../../findings/step-order.ts'
import {counted, percentSign} from '../numbers.ts'
import type {Method} from './method.ts'

/** What n backcrosses are expected to leave of the donor: the worked example's own formula. */
const expected = (backcrosses: number): string => percentSign(1 - 0.5 ** (backcrosses + 1))

function labelWords(label: string): string {
  const read = readLabel(label)
  if (!read) return `${label} is a name of the keeper’s own`
  return `${label} is ${read.backcrosses === 0 ? 'a cross' : counted(read.backcrosses, 'backcross', 'backcrosses')}, ${counted(read.interSe, 'generation')} inter se`
}

const steps: Method = {
  id: 'steps',
  title: 'The step of a bird',
  question: 'Where does this bird stand on the ladder?',
  definition: 'The step follows from descent alone. A first cross of two strains is F1; two birds of one cross mated together give F2, F3 and so on, one more than the nearer parent. A cross mated back to a strain gives BC1, the next BC2; backcross birds mated together give BC2F2, BC2F3. A step of a name of its own joins two ladders or takes a strain in late. Anything else is mixed. What the keeper wrote is compared with it, and a difference is reported, never overruled.',
  formula: null, letters: [],
  edges: `- Uncertain parents: the bird has a step only when every possible pair of parents gives the same one, else it is mixed.
- With several donors a backcross carries the donor in its label; back to a donor it says to which strain.`,
  source: 'The letters are the common ones of plant and animal breeding; common practice, no source.',
  example: {given: 'Three labels read:', gives: () => `${['F2', 'BC1', 'BC3F2'].map(labelWords).join('; ')}.`},
}

const strainShare: Method = {
  id: 'strain-share',
  title: 'Expected share of a strain',
  question: 'How much of each founding strain is in this bird?',
  definition: 'A founder is wholly its own strain. Every other bird has the mean of its parents’ shares; where the parents are uncertain, the mean over the possible pairs, each with its chance.',
  formula: 'share = (sire’s share + dam’s share) / 2        after n backcrosses: 1 − (1/2)^(n + 1)',
  letters: [['n', 'backcrosses to the recurrent strain']],
  edges: `- It is an expectation over all genes. A single bird has more or less, the more so the fewer the backcrosses.
- A parent from outside the book: its part stands as unknown.
- Birds chosen for the donor’s gene keep a little more of the donor around it than this says.`,
  source: 'Allard 1960, Principles of Plant Breeding (from memory, no page).',
  example: {given: 'The first cross, then one, two and three backcrosses:', gives: () => `${[0, 1, 2, 3].map(expected).join(', ')}.`},
}

const parents: Method = {
  id: 'parents',
  title: 'Uncertain parents',
  question: 'Which bird is the sire, when there were two males in the pen?',
  definition: 'A sire or dam written with the chick goes before everything. Otherwise the parents are the birds that were in its pen when the egg was laid. One male is the sire; several have an equal chance each, unless the records state their chances. A male stays possible for a number of days after a hen was last with him, in this pen or another, because she keeps his sperm: 21, unless the project sets another. What is uncertain stays uncertain in every figure.',
  formula: null, letters: [],
  edges: `- Eggs of two pens in one setting: a sire and a dam of different pens never met, so pairs are reckoned pen by pen.
- Chicks of one family share one unknown dam.
- A parent that is any of a keeper’s birds is each grown one of its sex that stood there when the egg was laid, with equal chances.
- An unknown parent from outside the book is taken as a stranger, and so is what stated chances want to the whole.`,
  source: 'Three weeks of stored sperm: common practice, no source.',
  example: {given: 'Two males in a pen with one hen, nothing more known.', gives: () => `Each is the sire with a chance of ${percentSign(1 / 2)}.`},
}

const alive: Method = {
  id: 'breeders',
  title: 'Alive and breeding on a day',
  question: 'How many birds are there to go on with?',
  definition: 'Alive on a day: hatched by then and not left by then. A breeder is alive and stands in a pen of the latest season that has begun, or is kept for breeding on record. Birds of a pure strain are counted apart from the breed’s own.',
  formula: null, letters: [],
  edges: `- A bird that left on a day nobody wrote down counts as gone.
- Of a date known only to the month or year the first possible day counts.
- A bird lent out is not there.`,
  source: 'Common practice, no source.',
  example: {
    given: 'Two cocks and three hens.',
    gives: () => {
      const {male, female, all} = countBySex([{sex: 'male'}, {sex: 'male'}, {sex: 'female'}, {sex: 'female'}, {sex: 'female'}])
      return `${counted(male, 'male')} and ${counted(female, 'female')}, ${counted(all, 'bird')} in all.`.replace(/^./, letter => letter.toUpperCase())
    },
  },
}

export const descentMethods: readonly Method[] = [steps, strainShare, parents, alive]
