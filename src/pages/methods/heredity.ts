import {percentSign} from '../numbers.ts'
import {exampleFlock, founders} from './example-flock.ts'
import {exampleGenotypes, SKIN, WHITE_OR_YELLOW} from './example-heredity.ts'
import type {Method} from './method.ts'

const numbered = (count: number, name: string): readonly string[] => Array.from({length: count}, (_, index) => `${name} ${index + 1}`)

/** A white hen of two carriers, with so many white chicks of one mate: the chance that she is a carrier. */
function stillCarrier(chicks: number, mate: 'w/w' | 'W+/w'): string {
  const names = numbered(chicks, 'chick')
  const flock = exampleFlock([...founders('sire', 'dam', 'mate'), {name: 'hen', sire: 'sire', dam: 'dam'}, ...names.map(name => ({name, sire: 'mate', dam: 'hen'}))])
  const scored = Object.fromEntries(['hen', ...names].map(name => [name, [0]] as const))
  return percentSign(exampleGenotypes(flock, {locus: SKIN, shows: WHITE_OR_YELLOW, tested: {sire: 'W+/w', dam: 'W+/w', mate}, scored}).chance('hen', 'W+/w'))
}

const genotypes: Method = {
  id: 'genotypes',
  title: 'What a bird may hide',
  question: 'Is this hen hiding yellow skin?',
  definition: `For every bird and locus the chance of each genotype, given all that was scored of it and of all its relatives: ancestors, sibs, mates and chicks, those in tallies too.
Founders have the alleles of their strain: what it breeds true for, or what its record states; where neither is known, every allele alike, which is an assumption. Every mating hands on one copy
of each parent with an even chance; on the Z chromosome a hen hands her one copy to sons only. Genotypes are written as breeders write them: P/p+ for one of each, S/- for a hen’s single Z.\nThe reason beside a chance is what a breeder would point at. Where a test, a parent, or a chick that showed it makes the chance by itself, that alone; else the parents with the chances shown on their own pages, and what that makes; and where the whole flock says otherwise by four points in a hundred or more, the one thing that pulls hardest: its chicks, what came of them, a look whose locus lies near, or its kin taken together. Sibs speak through the parents, whose chances have them in already.`,
  formula: 'P(genotypes | seen) ∝ Π founders P(genotype) × Π chicks P(genotype | parents) × Π birds P(seen | genotype)',
  letters: [['seen', 'every score that counts, struck ones left out']],
  edges: `- A bird never scored, without scored relatives, is as its strain is.
- An unscored look is not a “no”: it says nothing.
- Chances of less than 0.05% are not printed, and a genotype of more than 99.9% counts as certain.
- Loci that one look rests on, and linked loci, are worked together.
- “Shown or sure” is what the bird has, by its look or by its kin: a brassy cock is S/s+, and carries gold.
- Where the flock is too wide to be worked exactly, chances are worked by approximation until none changes by more than is said beside them.`,
  source: 'Elston and Stewart 1971, Human Heredity 21:523; Cannings, Thompson and Skolnick 1978, Advances in Applied Probability 10:26 (both from memory). The example by Bayes’ rule: 2 in 2 + 2ⁿ.',
  example: {
    given: 'A white hen of two carriers of yellow; then with 1, 3, 5 and 7 chicks by a yellow cock, all white; then with as many by a carrier, all white. Chance that she carries yellow:',
    gives: () => `${stillCarrier(0, 'w/w')}; ${[1, 3, 5, 7].map(chicks => stillCarrier(chicks, 'w/w')).join(', ')}; ${[1, 3, 5, 7].map(chicks => stillCarrier(chicks, 'W+/w')).join(', ')}.`,
  },
}

const twoCocks: Method = {
  id: 'uncertain-sires',
  title: 'When it is not known which cock',
  question: 'Two cocks ran with her. What do her chicks tell of either?',
  definition: 'Who the sire was is one more thing not known, and is worked together with the genotypes: each possible sire counts by its chance in the records, and by how well the chick’s look suits it. So a chick tells something of every cock that may be its sire, and its look tells something of who that was.',
  formula: null, letters: [],
  edges: '- A parent outside the book is a bird of its strain, or one of whom nothing is known.\n- Uncertain dams are worked the same way.',
  source: 'Worked from the chances, by hand: 0.14 of 0.2; no source.',
  example: {
    given: 'Two white cocks of a strain in which a quarter of the copies are w, so that 40 in 100 of its white birds carry it; a yellow hen has one yellow chick by one of them. Either cock carries yellow with:',
    gives: () => {
      const flock = exampleFlock([...founders('one', 'other', 'hen'), {name: 'chick', sire: {one: 0.5, other: 0.5}, dam: 'hen'}])
      const found = exampleGenotypes(flock, {locus: SKIN, shows: WHITE_OR_YELLOW, shares: [0.75, 0.25], scored: {one: [0], other: [0], hen: [1], chick: [1]}})
      return `${percentSign(found.chance('one', 'W+/w'))}.`
    },
  },
}

const wrongScores: Method = {
  id: 'genotypes-misscoring',
  title: 'Scores that may be wrong',
  question: 'What if somebody has looked wrongly?',
  definition: 'Where the record of a trait states how often a look is taken for another, every score is weighed by it, and two scores of one bird are two readings of one look. Then no single chick proves anything for certain: a yellow chick of two white birds may be a mistake, and the more its relatives speak against it the likelier it is one.',
  formula: null, letters: [],
  edges: `- A trait for which no misscoring is stated counts as scored without fault.
- Where the records then contradict themselves, one score in a thousand is taken to be wrong at those loci, and the trait’s page says so.`,
  source: 'Worked apart by laying out every possibility; no source.',
  example: {
    given: 'One score in a hundred wrong, a quarter of founders’ copies w. Two birds scored white have chicks scored white, white and yellow. Either parent is W+/W+, W+/w; the last chick is white after all, or w/w:',
    gives: () => {
      const names = numbered(3, 'chick')
      const flock = exampleFlock([...founders('sire', 'dam'), ...names.map(name => ({name, sire: 'sire', dam: 'dam'}))])
      const found = exampleGenotypes(flock, {
        locus: SKIN, shows: WHITE_OR_YELLOW, shares: [0.75, 0.25], wrong: 0.01, scored: {sire: [0], dam: [0], 'chick 1': [0], 'chick 2': [0], 'chick 3': [1]},
      })
      const last = found.chance('chick 3', 'w/w')
      return `${percentSign(found.chance('sire', 'W+/W+'))}, ${percentSign(found.chance('sire', 'W+/w'))}; ${percentSign(1 - last)} or ${percentSign(last)}.`
    },
  },
}

const exactOrNot: Method = {
  id: 'genotypes-exact',
  title: 'Exact or approximate',
  question: 'Can these chances be relied on to the last figure?',
  definition: 'Where the flock is not too wide and not too much mated among kin at a locus, every possibility is summed, one bird after the other, and the chances are **exact**. Where that would take too long they are **approximate**: birds send one another what they know, to and fro, until no message changes by more than a millionth. Loops of kinship then count some evidence twice, and chances near even lean to one side; certainties stay certainties.',
  formula: null, letters: [],
  edges: '- Each page says which it was, in a word.\n- An approximation that has not settled after 200 rounds is given as it stands.',
  source: 'Kerr and Kinghorn 1996, Journal of Animal Breeding and Genetics 113:457 (from memory). The example by hand, with the F of ¼ that the loop makes.',
  example: {
    given: 'Brother and sister of unknown parents, a fifth of all copies w, have a yellow chick. The brother is a carrier, or yellow, with:',
    gives: () => {
      const flock = exampleFlock([...founders('sire', 'dam'), {name: 'brother', sire: 'sire', dam: 'dam'}, {name: 'sister', sire: 'sire', dam: 'dam'}, {name: 'chick', sire: 'brother', dam: 'sister'}])
      const found = exampleGenotypes(flock, {locus: SKIN, shows: WHITE_OR_YELLOW, shares: [0.8, 0.2], scored: {chick: [1]}})
      return `${percentSign(found.chance('brother', 'W+/w'))} or ${percentSign(found.chance('brother', 'w/w'))}, ${found.isExact('brother') ? 'exact' : 'approximate'}.`
    },
  },
}

const lethal: Method = {
  id: 'lethal',
  title: 'Chicks that never hatch',
  question: 'Why do two short-legged birds give two short-legged chicks to one long-legged, and not three?',
  definition: 'Genotypes that die in the egg are never among the chicks that are scored, so what two parents give is taken among those that hatch. A forecast says first how many will die in the shell. Nobody needs to make such a mating: a carrier mated to a bird without the gene gives carriers too, and no dead chicks.',
  formula: 'P(genotype | parents, hatched) = P(genotype | parents) / (1 − P(lethal | parents))', letters: [],
  edges: '- Shares of the chicks that hatch sum to 100%; the loss stands beside them.\n- Eggs that did not hatch are not counted against a lethal gene by themselves: many die for other reasons.',
  source: 'The share of 2 to 1: Cuénot 1905, of mice (from memory); in fowl the creeper of Landauer and Dunn 1930, Journal of Genetics 23 (from memory).',
  example: {
    given: 'Two short-legged birds, Cp/cp+ each; Cp/Cp dies in the egg. Of the chicks that hatch are short-legged, and long-legged:',
    gives: () => {
      const flock = exampleFlock([...founders('sire', 'dam'), {name: 'chick', sire: 'sire', dam: 'dam'}])
      const found = exampleGenotypes(flock, {
        locus: {symbol: 'Cp', on: 'autosome', alleles: ['Cp', 'cp+']}, shows: [['Cp/Cp', 'lethal'], ['Cp/_', 0], ['cp+/cp+', 1]], tested: {sire: 'Cp/cp+', dam: 'Cp/cp+'},
      })
      return `${percentSign(found.chance('chick', 'Cp/cp+'))} and ${percentSign(found.chance('chick', 'cp+/cp+'))}.`
    },
  },
}

export const heredityMethods: readonly Method[] = [genotypes, twoCocks, wrongScores, exactOrNot, lethal]
