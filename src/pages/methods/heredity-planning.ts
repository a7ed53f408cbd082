import {eggsToSet} from '../../heredity/eggs-to-set.ts'
import {chicksForWanted} from '../../heredity/hatch-size.ts'
import {chicksToClear, chicksToFindCarrier, familiesOf} from '../../heredity/test-mating-size.ts'
import {CARRIER_MATE, missChance, OWN_DAUGHTER, RECESSIVE_MATE} from '../../heredity/test-mating.ts'
import {percentSign, rounded} from '../numbers.ts'
import type {Method} from './method.ts'

const number = (found: number | null): string => (found === null ? 'no number' : String(found))

const testMating: Method = {
  id: 'test-mating',
  title: 'Test mating',
  question: 'How many clean chicks clear this bird?',
  definition: 'A carrier mated to a bird that shows the recessive gives it to half of the chicks, mated to a known carrier to a quarter. The number is the smallest that leaves a carrier no more than the stated chance to slip through; it is never rounded down. Where something is known of the bird already, the number asks what is left after the test: a bird hardly suspected needs fewer.',
  formula: 'missed = ½ⁿ with a recessive mate, (¾)ⁿ with a carrier, Π (½ + ½ (¾)^k) over own daughters with k chicks each\nleft   = c × missed / (c × missed + 1 − c)',
  letters: [['n', 'chicks, all clean'], ['c', 'chance before the test that the bird is a carrier'], ['k', 'chicks of one daughter']],
  edges: `- Against a known carrier 17 chicks keep the chance within one in a hundred. Many handbooks print 16, which just misses.
- Own daughters count as (⅞)ⁿ at one chick a daughter only: several chicks of one daughter share her one genotype.
- One chick that shows it settles the matter, if it was scored rightly. Score it twice.
- A cock is tested on the Z by his daughters, whatever their mother is.
- No test is worth rearing chicks that nobody has a place for.`,
  source: 'Johansson and Rendel 1968, Genetics and Animal Breeding (from memory, no page); Bayes’ rule.',
  example: {
    given: 'To find a carrier with 99 in 100: chicks of a recessive mate, of a carrier; what 16 and 17 of the latter leave; what five daughters with four chicks each leave. For a hen two to one a carrier, chicks by a recessive cock until 5 in 100 are left:',
    gives: () => {
      const missed = (chicks: number): string => `${rounded(missChance([{...CARRIER_MATE, clean: chicks}]) * 100, 3)}%`
      return `${number(chicksToFindCarrier(0.01, {mate: RECESSIVE_MATE}))}, ${number(chicksToFindCarrier(0.01, {mate: CARRIER_MATE}))}; ${missed(16)} and ${missed(17)}; `
        + `${percentSign(missChance(familiesOf(20, {mate: OWN_DAUGHTER, chicksPerMate: 4})))}; ${number(chicksToClear(2 / 3, 0.05, {mate: RECESSIVE_MATE}))}.`
    },
  },
}

const hatchSize: Method = {
  id: 'hatch-size',
  title: 'How many to hatch',
  question: 'How many eggs must I set to have three pullets of the right kind?',
  definition: 'The smallest number of chicks that gives at least so many of the wanted kind in 95 of 100 hatches; then the eggs for them, through the flock’s own fertility, hatch of fertile eggs and livability. These are known no better than the flock’s own counts tell them, so more eggs are asked for than their means alone would say.',
  formula: 'smallest n with P(X ≥ k) ≥ 0.95        X binomial of n chicks\nsmallest N likewise, each stage beta-binomial with its counts + ½',
  letters: [['k', 'chicks wanted'], ['n', 'chicks to hatch'], ['N', 'eggs to set']],
  edges: '- Where only one sex is wanted its half is taken in.\n- A stage of which nothing is counted leaves the eggs untold.\n- Hatches that differ by more than chance need more eggs still.',
  source: 'Sedcole 1977, Crop Science 17:667–668 (the chicks); Johnson, Kemp and Kotz 2005, Univariate Discrete Distributions, 6.9.2 (the eggs, from memory).',
  example: {
    given: 'Three of a kind that is one in two, in four, in eight of all chicks; eggs for three of one in four, where 37 of 48 eggs gave a chick, and what the mean alone would ask:',
    gives: () => {
      const eggs = eggsToSet(3, 1 / 4, 0.95, [{through: 37, of: 48}])
      return `${[2, 4, 8].map(kinds => number(chicksForWanted(3, 1 / kinds, 0.95))).join(', ')}; ${number(eggs?.eggs ?? null)} and ${number(eggs?.eggsAtMean ?? null)}.`
    },
  },
}

export const heredityPlanningMethods: readonly Method[] = [testMating, hatchSize]
