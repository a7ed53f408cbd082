import {cheapestPlaces} from '../../findings/cheapest-places.ts'
import {coancestry} from '../../pedigree/coancestry.ts'
import {oneMoreKinship} from '../../pedigree/one-more-male.ts'
import {paths} from '../../pedigree/paths.ts'
import {listWords, percentSign} from '../numbers.ts'
import {exampleFlock, founders} from './example-flock.ts'
import type {Method} from './method.ts'

/** F of the chicks of two males with the hens of two pens of one hen each, as their kinship has it. */
const TWO_PENS = [[0.02, 0.06], [0.03, 0.15]] as const

const malesForPens: Method = {
  id: 'males-for-pens',
  title: 'Which cockerel into which pen',
  question: 'Whom do I put where, and what does it cost?',
  definition: 'Every male that may be chosen is tried against the living hens of every pen of the latest season: the F of their chicks is the kinship of the two, and a pen’s figure the mean over its hens. The males are then put so that none serves two pens and the mean F over all hens is the least there can be; so the best male of one pen may be wanted in another. **At most** is the hen with whom it would be highest, at the upper end of her range. A male is to be **avoided** in a pen when with some hen of it the chicks would, or may, pass the project’s limit for one mating; where no male keeps within that, or none is set, when they would reach 25%, as chicks of a brother and a sister do.',
  formula: 'F(pen, male) = Σ K(male, hen) / hens        put so that Σ over pens of hens × F(pen, its male) is least',
  letters: [['K', 'kinship of the two']],
  edges: `- To choose from: living males of the new breed that are bred from, kept for breeding on record, or hatched within a year and a half.
- Hens kept for breeding that stand in no pen yet count as one more place; beside that each is told the pen whose male she is least kin to.
- Fewer males than pens: the pens that cost least to leave out have none.
- A pair that can lose chicks by a lethal rule, and a male that carries what kills or harms, are marked and never named as good: Σ P(sire’s genotype) × P(dam’s) × share lost, as if the two shared neither kin nor chicks. A bird scored as having it counts so, even where its kin say otherwise.
- Else kinship alone is asked. Which bird is the better one, healthy and true to type, it does not know.`,
  source: 'The mean is kinship’s own; putting each in one place at the least cost: Kuhn 1955, Naval Research Logistics Quarterly 2:83 (from memory). 25% as the mark: common practice, no source.',
  example: {
    given: 'Two pens of one hen each. In the first, cock A would give F 2% and cock B 6%; in the second A 3% and B 15%.',
    gives: () => {
      const put = cheapestPlaces(TWO_PENS)
      const mean = put.reduce<number>((sum, column, row) => sum + (TWO_PENS[row]?.[column ?? NaN] ?? NaN), 0) / put.length
      return `${listWords(put.map((column, row) => `${['A', 'B'][column ?? NaN] ?? 'nobody'} to the ${['first', 'second'][row] ?? ''}`))}: F ${percentSign(mean)} on average. The other way round it would be ${percentSign((TWO_PENS[0][0] + TWO_PENS[1][1]) / 2)}.`
    },
  },
}

const kin = exampleFlock([
  ...founders('A', 'B', 'C', 'E'), {name: 'S', sire: 'A', dam: 'B'}, {name: 'H', sire: 'A', dam: 'C'}, {name: 'T', sire: 'A', dam: 'E'}, {name: 'cock', sire: 'S', dam: 'H'}, {name: 'hen', sire: 'T', dam: 'B'},
])

const reason: Method = {
  id: 'kin-reason',
  title: 'Why two birds are kin',
  question: 'Through whom are they kin, and how much comes from each?',
  definition: 'Kinship is a sum over the ways from the one bird up to an ancestor and down to the other, with no bird on the way twice. The ways that turn in one ancestor are put together, and that is its part. The parts of all ancestors, and what is stated of the founders’ kinship, sum to the whole. Ancestors that stand alike, as sire and dam of full sibs do, are told together.',
  formula: 'part of A = Σ (½)^(n₁ + n₂ + 1) × (1 + F of A)        over the ways that turn in A',
  letters: [['n₁, n₂', 'generations from the one bird and the other up to A']],
  edges: `- Parents in doubt: each way counts by the chance that it is one.
- Of a bird in doubt the likeliest pair of parents is told, and said to be.
- The three largest parts are named, from half a per cent on; the rest stands in one sum.`,
  source: 'Wright 1922, American Naturalist 56:330 (from memory); the parts without a list of ways worked out for these pages.',
  example: {
    given: 'The sire is of half sibs by cock A, the dam of a son of A and of hen B, the sire’s grandam.',
    gives: () => {
      const found = paths(coancestry(kin.pedigree), kin.of('cock'), kin.of('hen'))
      const name = (animal: number): string => ['A', 'B'].find(each => kin.of(each) === animal) ?? 'another'
      return `${listWords(found.ancestors.map(({animal, kinship}) => `${name(animal)} gives ${percentSign(kinship)}`))}: together ${percentSign(found.kinship)}.`
    },
  },
}

const flock = exampleFlock([...founders('A', 'B', 'G', 'N'), {name: 'cock', sire: 'A', dam: 'B'}, {name: 'hen', sire: 'A', dam: 'G'}, {name: 'brother', sire: 'A', dam: 'B'}])

const oneMore: Method = {
  id: 'one-more-male',
  title: 'One male more',
  question: 'We lose too much in a generation. What is the cheapest thing that helps?',
  definition: 'The mean kinship that the next generation would have, first from the breeders as they are, each male used alike and each hen; then with each of the other males in turn added to them. He who lowers it most is named. One male more helps twice: the males’ part is spread over more birds, and he may bring what the others lack.',
  formula: 'expected mean kinship = ¼ (K(M, M) + 2 K(M, F) + K(F, F))',
  letters: [['K(M, M)', 'mean kinship of the males, each with itself included'], ['K(F, F)', 'of the females likewise'], ['K(M, F)', 'of every male with every female']],
  edges: `- To choose from are the living males that may be put into a pen and are not bred from yet.
- A male too near to those in use may raise it: then none is named.
- A male that carries what kills or harms is left out, and it is said why.
- Of a large hatch: no chick counts with itself. Males used unequally do less.`,
  source: 'Caballero and Toro 2000, Genetical Research 75:331, for mean kinship (from memory); the formula follows from kinship’s own.',
  example: {
    given: 'A cock and his half sister are bred from. Beside them stand his full brother and a stranger.',
    gives: () => {
      const {now, withOne: [brother = NaN, stranger = NaN]} = oneMoreKinship(coancestry(flock.pedigree).among(['cock', 'hen', 'brother', 'N'].map(flock.of)), 1, 1)
      return `Mean kinship ${percentSign(now)} as it is, ${percentSign(brother)} with the brother, ${percentSign(stranger)} with the stranger.`
    },
  },
}

export const choosingMalesMethods: readonly Method[] = [malesForPens, reason, oneMore]
