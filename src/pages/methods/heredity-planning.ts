import {eggsToSet} from '../../heredity/eggs-to-set.ts'
import {chicksForWanted} from '../../heredity/hatch-size.ts'
import {chicksToClear, chicksToFindCarrier, familiesOf} from '../../heredity/test-mating-size.ts'
import {CARRIER_MATE, carrierChance, missChance, OWN_DAUGHTER, RECESSIVE_MATE} from '../../heredity/test-mating.ts'
import {percentSign, rounded} from '../numbers.ts'
import type {Method} from './method.ts'

const number = (found: number | null): string => (found === null ? 'no number' : String(found))

const testMating: Method = {
  id: 'test-mating',
  title: 'Test mating',
  question: 'How many clean chicks clear this bird?',
  definition: 'The mate that tells most is the one by which a carrier’s chicks show the allele most often: two doses of it where it is recessive, none where it is dominant; on the Z any hen, and the daughters are looked at. Then half of a carrier’s chicks have it to show; with a known carrier for a mate a quarter. Misscoring, penetrance and the sex that shows the trait are included: a chick is clean when it is scored so. The number is the smallest that leaves, by all that is known of the bird already, no more than the stated chance that it carries the allele; it is never rounded down, and a bird hardly suspected needs fewer.',
  formula: 'q      = s × m + (1 − s) × (1 − f)      s = ½ with the mate that tells most, ¼ with a carrier\nmissed = qⁿ; over own daughters with k chicks each Π (½ (1 − f)^k + ½ q^k), s = ¼\nleft   = c × missed / (c × missed + (1 − c) × (1 − f)ⁿ)',
  letters: [['n', 'chicks, all scored clean'], ['s', 'share of a carrier’s chicks that have it to show'], ['m', 'chance that such a chick does not show it, or is scored clean'], ['f', 'chance that a clean chick is scored as showing it'], ['c', 'chance before the test that the bird is a carrier'], ['k', 'chicks of one daughter']],
  edges: `- Against a known carrier 17 chicks keep the chance within one in a hundred. Many handbooks print 16, which just misses.
- Own daughters count as (⅞)ⁿ at one chick a daughter only: several chicks of one daughter share her one genotype.
- One chick that shows it settles the matter, if it was scored rightly. Score it twice.
- A cock is tested on the Z by his daughters, whatever their mother is, unless another locus of hers hides the look.
- A hen’s own look tells her one Z, unless another locus hides it, such as white; then her sons tell, by a cock that hides nothing, and her daughters nothing.
- A look that comes as often without the allele speaks against no bird, so the sex that gives it anyway is not looked at. Clean chicks never raise the chance: where they would only say that the pair hides the look, the course ends.
- Where two doses kill, or only a mate that has two doses of what burdens a bird would tell, no mating is advised: the ordinary chicks tell, or a DNA test.
- No test is worth rearing chicks that nobody has a place for.`,
  source: 'Johansson and Rendel 1968, Genetics and Animal Breeding (from memory, no page); Bayes’ rule.',
  example: {
    given: 'To find a carrier with 99 in 100: chicks of a recessive mate, of a carrier; what 16 and 17 of the latter leave; what five daughters with four chicks each leave. For a hen two to one a carrier, chicks by a recessive cock until 5 in 100 are left. What one clean chick leaves of 62.8%, rightly scored and with one look in a hundred misread; chicks that clear a four-toed bird of Po, carrier two to five, where three carriers in five show it:',
    gives: () => {
      const missed = (chicks: number): string => `${rounded(missChance([{...CARRIER_MATE, clean: chicks}]) * 100, 3)}%`
      return `${number(chicksToFindCarrier(0.01, {mate: RECESSIVE_MATE}))}, ${number(chicksToFindCarrier(0.01, {mate: CARRIER_MATE}))}; ${missed(16)} and ${missed(17)}; `
        + `${percentSign(missChance(familiesOf(20, {mate: OWN_DAUGHTER, chicksPerMate: 4})))}; ${number(chicksToClear(2 / 3, 0.05, {mate: RECESSIVE_MATE}))}. ${[0, 0.01].map(wrong => percentSign(carrierChance(0.628, [{...RECESSIVE_MATE, clean: 1}], {missed: wrong, mistaken: wrong}) ?? 0)).join(' and ')}; ${number(chicksToClear(2 / 7, 0.01, {mate: RECESSIVE_MATE, misreading: {missed: 0.4, mistaken: 0}}))}.`
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
  edges: '- Where only one sex is wanted its half is taken in; a look that this sex cannot show is refused.\n- A stage of which nothing is counted leaves the eggs untold.\n- Hatches that differ by more than chance need more eggs still.',
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
