import {coancestry} from '../../pedigree/coancestry.ts'
import {percentSign} from '../numbers.ts'
import {exampleFlock, founders} from './example-flock.ts'
import type {Method} from './method.ts'

const flock = exampleFlock([
  ...founders('A', 'B', 'C', 'E', 'G'),
  {name: 'S', sire: 'A', dam: 'B'}, {name: 'D', sire: 'A', dam: 'B'}, {name: 'H', sire: 'A', dam: 'C'},
  {name: 'cousin', sire: 'S', dam: 'E'}, {name: 'other cousin', sire: 'G', dam: 'D'},
])
const between = (one: string, other: string): string => percentSign(coancestry(flock.pedigree).between(flock.of(one), flock.of(other)))

const inbreeding: Method = {
  id: 'inbreeding',
  title: 'Inbreeding: F',
  question: 'How likely are both copies of a gene in this bird the same copy, come down twice from one ancestor?',
  definition: '**F** is that chance, the same for every gene of the autosomes. It is nothing where sire and dam share no ancestor, and it is the kinship of the two in every case. Founders have the F that their strain states.',
  formula: 'F = Σ (½)^(n₁ + n₂ + 1) × (1 + F of the ancestor)        over every way from the sire up to a shared ancestor and down to the dam',
  letters: [['n₁, n₂', 'generations from sire and from dam up to the ancestor']],
  edges: `- F counts from the founders of these records. What they were already is not in it, unless their strain states it.
- A single bird’s genes may be more or less alike than F says: brothers with one F differ.
- An F with a grandparent that nobody knows is “at least”.`,
  source: 'Wright 1922, American Naturalist 56:330; worked without going through the ways, after Henderson 1976, Biometrics 32:69, and Colleau 2002, Genetics Selection Evolution 34:409 (all from memory).',
  example: {
    given: 'Chicks of full sibs, of half sibs, of a cock and his daughter, of first cousins:',
    gives: () => `${between('S', 'D')}, ${between('S', 'H')}, ${between('A', 'D')}, ${between('cousin', 'other cousin')}.`,
  },
}

const six = exampleFlock([...founders('1', '2'), {name: '3', sire: '1', dam: '2'}, {name: '4', sire: '1'}, {name: '5', sire: '4', dam: '3'}, {name: '6', sire: '5', dam: '2'}])

const kinship: Method = {
  id: 'kinship',
  title: 'Kinship of two birds',
  question: 'If these two were mated, how inbred would their chicks be?',
  definition: 'Take one copy of a gene from each of the two birds: kinship is the chance that the two are the same copy. It is the F of their chicks, and half of what is called relationship. **Mean kinship** of a flock counts every bird with every bird, itself included.',
  formula: 'K(a, b) = ½ K(sire of a, b) + ½ K(dam of a, b)        a the younger\nK(a, a) = ½ (1 + F of a)',
  letters: [['K', 'kinship, 0 to 1: 25% for full sibs of unrelated parents, 50% and more for a bird with itself']],
  edges: '- Two founders of one strain have the kinship that the strain states, of one bought flock that of the flock; founders of different strains have none.\n- Founders known to be kin may be given their kinship; kinships that cannot all be true are reported and not used.',
  source: 'Falconer and Mackay 1996, Introduction to Quantitative Genetics, ch. 5 (from memory). The example is table 2.1 of Mrode, Linear Models for the Prediction of Animal Breeding Values.',
  example: {
    given: 'Cock 1 has 3 by hen 2, and 4 by a hen nobody knows; 5 is of 4 and 3, and 6 of 5 and 2. Kinship of 5 and 6, and of 5 with itself:',
    gives: () => {
      const {between: of} = coancestry(six.pedigree)
      return `${percentSign(of(six.of('5'), six.of('6')))} and ${percentSign(of(six.of('5'), six.of('5')))}.`
    },
  },
}

const strain = exampleFlock([{name: 'cock', base: 0}, {name: 'hen', base: 0}, {name: 'other', base: 0}, {name: 'chick', sire: 'cock', dam: 'hen'}],
  [{inbreeding: 0.06, kinship: 0.05, within: null}])

const base: Method = {
  id: 'base',
  title: 'What the founders bring along',
  question: 'Our old strain was closed for years before these records began. Does that count?',
  definition: 'Where a strain states an F and a kinship of its own, its founders are so inbred and so much kin to each other from the start, and every figure further down holds it. Where it states nothing, they are taken as strangers and F is too low by what nobody knows. A rate of inbreeding is always worked without it: it asks what our own matings have added.',
  formula: 'K(two founders of a strain) = as stated        F(founder) = as stated        K ≤ ½ (1 + F)',
  letters: [],
  edges: '- A stated flock within a strain has its own kinship, where that is more.\n- The founders page shows how much the figures lean on what is believed of the recurrent strain.',
  source: 'The reasoning of Jacquard 1974, The Genetic Structure of Populations, on founders that are kin (from memory, no page).',
  example: {
    given: 'A strain with an F of 6% and a kinship of 5%: F of a chick of two of its founders, and its kinship with a third founder.',
    gives: () => {
      const {inbreeding: found, between: of} = coancestry(strain.pedigree)
      return `${percentSign(found[strain.of('chick')]?.mean ?? NaN)} and ${percentSign(of(strain.of('chick'), strain.of('other')))}.`
    },
  },
}

export const inbreedingMethods: readonly Method[] = [inbreeding, kinship, base]
