import {rounded} from '../numbers.ts'
import {exampleFlock, founders} from './example-flock.ts'
import {exampleGenotypes, SKIN, WHITE_OR_YELLOW} from './example-heredity.ts'
import type {Method} from './method.ts'

const CHICKS = ['one', 'two', 'three', 'four', 'five'] as const

export const carriersInStep: Method = {
  id: 'carriers-in-step',
  title: 'Carriers behind a true-bred rate',
  question: 'How many of the chicks that look right carry what is not wanted?',
  definition: 'Of the chicks of a step that were scored and are right in a required trait, the sum of their chances to have an allele that is not wanted, given all that was seen in the flock. Where it takes two copies to show, a rate near 100% may leave many carriers, and these throw back when two of them meet.',
  formula: null, letters: [],
  edges: `- Chicks that nobody scored for the trait, or that are off in it, are not asked.
- Chicks of tallies are asked where something was seen of them; the others are counted beside.
- Throw-backs to expect are worked from the pens as they stand, not from this count: see the mating forecast.`,
  source: 'A sum of the chances of what a bird may hide; Bayes’ rule.',
  example: {
    given: 'Two white carriers of yellow skin have five white chicks. Carriers among them:',
    gives: () => {
      const flock = exampleFlock([...founders('sire', 'dam'), ...CHICKS.map(name => ({name, sire: 'sire', dam: 'dam'}))])
      const found = exampleGenotypes(flock, {locus: SKIN, shows: WHITE_OR_YELLOW, tested: {sire: 'W+/w', dam: 'W+/w'}, scored: Object.fromEntries(CHICKS.map(name => [name, [0]]))})
      return `${rounded(CHICKS.reduce((sum, name) => sum + found.chance(name, 'W+/w'), 0), 1)} of 5.`
    },
  },
}
