import {coancestry} from '../../pedigree/coancestry.ts'
import {contributions} from '../../pedigree/contributions.ts'
import {effectiveAncestors} from '../../pedigree/effective-ancestors.ts'
import {founderGenomes} from '../../pedigree/founder-genomes.ts'
import {geneFlow} from '../../pedigree/gene-flow.ts'
import {percentSign, rounded} from '../numbers.ts'
import {exampleFlock, founders} from './example-flock.ts'
import type {Method} from './method.ts'

const back = exampleFlock([...founders('A', 'B'), {name: 'C', sire: 'A', dam: 'B'}, {name: 'D', sire: 'A', dam: 'C'}])

const shares: Method = {
  id: 'founder-shares',
  title: 'What is left of each founder',
  question: 'On how many birds does the breed really stand?',
  definition: 'Each founder’s **share** is the part of the living breeders’ genes expected to have come from it. **Effective founders**, fe, is the number of founders that would do as well if all had equal shares: a few that were used much leave it low, however many there were.',
  formula: 'fe = 1 / Σ p²',
  letters: [['p', 'a founder’s share; all of them sum to 1'], ['fe', '1 to the number of founders']],
  edges: '- A parent outside the book counts as a founder of its own, one for each chick: as many as there can have been.\n- Founders of one strain or flock are not independent either, so fe is given by strain as well.\n- Shares are of the autosomes and expected ones: what is lost by chance is not in them.\n- A line is said to be ending where a bird that bred the step the breed stands at has no living chick of its own sex; a chick in doubt counts for each that it may be of.',
  source: 'Lacy 1989, Zoo Biology 8:111 (from memory).',
  example: {
    given: 'Cock A had C by hen B, and D by his daughter C. Founders’ shares in D:',
    gives: () => {
      const found = contributions(geneFlow(back.pedigree, 'autosome'), [back.of('D')])
      return `A ${percentSign(found.founders[0]?.share ?? NaN)}, B ${percentSign(found.founders[1]?.share ?? NaN)}; fe ${rounded(found.effective, 1)}.`
    },
  },
}

const narrow = exampleFlock([
  ...founders('A', 'B', 'E', 'G'), {name: 'C', sire: 'A', dam: 'B'}, {name: 'D', sire: 'E', dam: 'G'}, {name: 'one', sire: 'C', dam: 'D'}, {name: 'two', sire: 'C', dam: 'D'},
])

const ancestors: Method = {
  id: 'effective-ancestors',
  title: 'Effective ancestors: fa',
  question: 'Did the breed once pass through a few birds?',
  definition: 'Founders may be many and still all have come through one cock. The ancestors, founders or not, are named in turn by how much of the breeders’ genes came through each and through none named before; fa is the number of equal ones that these shares amount to. Where it lies well below fe, the breed passed a bottleneck.',
  formula: 'fa = 1 / Σ p²',
  letters: [['p', 'the further share of each ancestor named']],
  edges: '- Where the search is cut short, fa is given between two bounds.\n- As a rule fa is at most fe; where parents and their own chicks are bred from together it may come out a little above.',
  source: 'Boichard, Maignel and Verrier 1997, Genetics Selection Evolution 29:5 (from memory).',
  example: {
    given: 'Four founders in two pairs, a single chick of each pair bred on, and all breeders from these two.',
    gives: () => {
      const flow = geneFlow(narrow.pedigree, 'autosome'), group = [narrow.of('one'), narrow.of('two')]
      return `fe is ${rounded(contributions(flow, group).effective, 1)}, fa ${rounded(effectiveAncestors(flow, group).low, 1)}.`
    },
  },
}

const sibs = exampleFlock([...founders('A', 'B'), {name: 'C', sire: 'A', dam: 'B'}, {name: 'D', sire: 'A', dam: 'B'}, {name: 'E', sire: 'C', dam: 'D'}])

const genomes: Method = {
  id: 'founder-genomes',
  title: 'Founder genome equivalents: fg',
  question: 'How much variety is left, after chance has taken its part?',
  definition: 'As many unrelated birds, each with two different copies of every gene, as would hold as much variety as the breeders do: from their **mean kinship**, each with itself included. Fewer than effective founders and effective ancestors, for it also counts what chance has taken.',
  formula: 'fg = 1 / (2 × mean kinship)',
  letters: [['fg', 'above 0; below 1 for a single inbred bird']],
  edges: '- There is another definition by the same name, 1 / Σ (p² / r) with r the part of each founder’s genes that is still there (Lacy 1989): it asks what has been lost outright, and is not used here.\n- Kinship that strains state of their founders lowers it.',
  source: 'By mean kinship: Caballero and Toro 2000, Genetical Research 75:331; by what is retained: Lacy 1989, Zoo Biology 8:111 (both from memory).',
  example: {
    given: 'One bird that is not inbred; one chick of full sibs:',
    gives: () => {
      const kin = coancestry(sibs.pedigree)
      return `${['C', 'E'].map(name => rounded(founderGenomes(kin, [sibs.of(name)]) ?? NaN, 1)).join('; ')}.`
    },
  },
}

export const foundersLeftMethods: readonly Method[] = [shares, ancestors, genomes]
