import {coancestry} from '../../pedigree/coancestry.ts'
import {completeness} from '../../pedigree/completeness.ts'
import {counted, percentSign, rounded} from '../numbers.ts'
import {exampleFlock, founders} from './example-flock.ts'
import type {Method} from './method.ts'

const two = exampleFlock([...founders('H', 'B', 'N'), {name: 'daughter', sire: 'H', dam: 'B'}, {name: 'chick', sire: {H: 0.5, N: 0.5}, dam: 'daughter'}])

const averaged: Method = {
  id: 'doubtful-parents',
  title: 'F and kinship when parents are in doubt',
  question: 'Two cocks stood in the pen. What is the F of the chick?',
  definition: 'The mean over the pairs that may have had it, each with its chance; a cock and a hen who never shared a pen are no pair. Kinship with other birds is likewise the mean over its possible parents. So one doubtful chick has a figure, and everything that descends from it too.',
  formula: 'F = Σ p(s, d) × K(s, d)\nK(chick, b) = ½ Σ p(s) K(s, b) + ½ Σ p(d) K(d, b)',
  letters: [['p', 'chance of a pair, a sire or a dam; over all they sum to 1']],
  edges: `- What stated chances want to the whole is a bird outside the book, kin to none.
- Chicks of one family share one unknown dam; she is the same hen for all of them. A family is one hatch’s: the same name in another hatch is another hen. A cock bred back to that one hen meets his own dam, whichever of the pen’s hens she is, and F is worked so.
- A bird found without its band stands for all those it may be, in the mean.
- Each other bird’s doubt is taken as its own: two chicks of one pen with two cocks are neither full nor half sibs, but between.`,
  source: 'Henderson 1988, Journal of Animal Science 66:1614 (from memory).',
  example: {
    given: 'A hen with two cocks alike in chance, one of them her father.',
    gives: () => `F is ${percentSign(coancestry(two.pedigree).inbreeding[two.of('chick')]?.mean ?? NaN)}.`,
  },
}

const three = exampleFlock([
  ...founders('H', 'B', 'C', 'N'), {name: 'daughter', sire: 'H', dam: 'B'}, {name: 'half brother', sire: 'H', dam: 'C'},
  {name: 'chick', sire: {H: 0.5, 'half brother': 0.3, N: 0.2}, dam: 'daughter'},
])

const range: Method = {
  id: 'range',
  title: 'The range of F',
  question: 'How bad may it be, if the worst of the possible matings is the true one?',
  definition: 'Beside the mean stand the least and the most F that any one of the possible pairs gives, and the F of the likeliest pair, where one is likelier than the others. An average hides the risk: limits are tried at the upper end. For two birds to be mated the range runs over the possible parents of both.',
  formula: 'low = least K(s, d)        high = greatest K(s, d)        over the pairs that may be the parents',
  letters: [],
  edges: '- Doubt about grandparents and further up is averaged, so the whole truth may lie a little beyond the range.\n- A bird with certain parents has one figure and no range.',
  source: 'Worked out for these pages.',
  example: {
    given: 'A hen with three cocks: her father with a chance of 50%, her half brother 30%, a stranger 20%.',
    gives: () => {
      const {mean, low, high, likeliest} = coancestry(three.pedigree).inbreeding[three.of('chick')] ?? {mean: NaN, low: NaN, high: NaN, likeliest: NaN}
      return `F is ${percentSign(mean)} in the mean, from ${percentSign(low)} to ${percentSign(high)}, likeliest ${percentSign(likeliest)}.`
    },
  },
}

const half = exampleFlock([...founders('A', 'B', 'D'), {name: 'S', sire: 'A', dam: 'B'}, {name: 'chick', sire: 'S', dam: 'D'}])

const known: Method = {
  id: 'completeness',
  title: 'How much an F rests on',
  question: 'Is an F of nothing good news, or do we only not know?',
  definition: 'Two counts travel with every F. **Generations fully known**: how far back every ancestor is in the records, whichever possible parent is the true one. **Equivalent complete generations**: the same with half-known generations counted by their share. Where fewer than two generations are fully known, F is marked “at least”: an ancestor that nobody knows can only add to it.',
  formula: 'equivalent generations = Σ (½)^g        over the known ancestors, g generations back',
  letters: [['g', 'generations back: 1 for a parent']],
  edges: '- A founder has none, and no F but what its strain states.\n- A parent in doubt counts by the chance that it is known.',
  source: 'Maignel, Boichard and Verrier 1996, Interbull Bulletin 14:49 (from memory).',
  example: {
    given: 'Both parents known, the sire’s parents known, the dam’s not.',
    gives: () => {
      const {equivalent, full} = completeness(half.pedigree)[half.of('chick')] ?? {equivalent: NaN, full: NaN}
      return `${counted(full, 'generation')} fully known, ${rounded(equivalent, 1)} equivalent: F is at least what is printed.`.replace(/^./, letter => letter.toUpperCase())
    },
  },
}

export const doubtfulDescentMethods: readonly Method[] = [averaged, range, known]
