import {FOLLOWED} from '../../findings/life-watched.ts'
import {inbreedingOfShares} from '../../findings/inbreeding-model.ts'
import {birdsToTellSpread} from '../../statistics/spread-to-tell.ts'
import {countsToTell, differenceTold, timesToTell} from '../../statistics/numbers-to-tell.ts'
import {chosenByChance} from '../../statistics/chosen-by-chance.ts'
import {heterosis} from '../../statistics/heterosis.ts'
import {parentOffspring} from '../../statistics/parent-offspring.ts'
import {realisedHeritability} from '../../statistics/realised-heritability.ts'
import {recoveryOfType} from '../../statistics/recovery-of-type.ts'
import {expectedResponse} from '../../statistics/selection-differential.ts'
import {selectionIntensity} from '../../statistics/selection-intensity.ts'
import {limits, percent, percentSign, rounded, signed} from '../numbers.ts'
import type {Method} from './method.ts'

function lossWords(): string {
  const hatch = (k: number, chickF: number, place: number) => ({k, n: 10, season: null, cluster: String(place), pair: String(place), blood: {chickF, damF: 0, chickH: 0, damH: 0}})
  const [found] = inbreedingOfShares([hatch(9, 0, 1), hatch(8, 0, 2), hatch(9, 0, 3), hatch(6, 0.25, 4), hatch(7, 0.25, 5), hatch(6, 0.25, 6)]).effects
  return found?.kind === 'effect' ? `${signed(percent(found.change))} points for ten points of F; ${found.verdict === 'cannot-tell' ? 'the records cannot tell' : found.verdict}.` : ''
}

const depression: Method = {
  id: 'depression',
  title: 'Is inbreeding costing us?',
  question: 'Do fewer eggs hatch, fewer chicks live, are birds lighter or hens worse layers, the closer they are bred?',
  definition: 'Hatch and life are regressed on F of chick and dam and on the strain heterozygosity of both, which falls while F rises; hatches, or pairs, that do well or badly as a whole widen the limits. Weights and eggs by least squares within step, sex and rearing, each family one row there. Printed per ten points of F more or heterozygosity less, the others held.',
  formula: 'logit of the share = season + b₁F + b₂F of dam + b₃H + b₄H of dam\nchange = share at mean + 0.1 b₁ less share at mean',
  letters: [['F, H', 'inbreeding and strain heterozygosity, 0 to 1'], ['b', 'change of the logit for one of F or H']],
  edges: `- Where the interval holds both nothing and harm, the records cannot tell; its lower limit is the largest loss not excluded. Where it holds nothing and no loss as great as the least that others found, that is said.
- F is the pair’s: however many hatches or birds a pair has, it tells of F once. Limits are the wider of those by hatches (or rows) and by pairs; with fewer than 3 of either beyond what is fitted nothing is said.
- Of many tests one looks like harm by chance: harm is called so where P corrected for their number (Holm) is 0.05 or less.
- An egg that did not hatch has the mean blood of its hatch’s possible parents. Eggs bought in are left out.
- Life is followed for ${FOLLOWED} days; chicks sold, moved or lost before are left out and counted.
- Where hatches are few the seasons are not held apart, and it says so; what goes with season or hatch, or differs by less than 2.5 points, is not fitted.
- Where inbred hatches all fail, Firth’s penalty keeps the limits finite.`,
  source: 'McCullagh and Nelder 1989, 4.5; Firth 1993, Biometrika 80:27–38; both from memory. Extra spread by hatches and pairs is ours, held by simulation.',
  example: {given: 'Of six pairs 9, 8 and 9 of 10 eggs hatched at F 0, 6, 7 and 6 of 10 at F 25%.', gives: lossWords},
}

const toTell: Method = {
  id: 'to-tell',
  title: 'What it would take to tell',
  question: 'How many more eggs, chicks or pairs until a loss as great as others found is told four times in five?',
  definition: 'As the records stand: so many times of them as bring the error down far enough, if those to come are as these. Side by side: as many eggs of full sibs (F 25%) and of birds that are no kin as tell their two shares apart. For chicks of two steps: the difference that 20 of each tell. For the spread of two seasons: the birds of each that tell a CV a fifth smaller.',
  formula: 'times = ((1.96 + 0.84) · error / loss)²\nn of each = (1.96 √(2 p̄ q̄) + 0.84 √(p₁q₁ + p₂q₂))² / (p₁ − p₂)²\ndifference = 2.80 SD √(1/n₁ + 1/n₂)\nbirds of each less its hatches = (2.80 / ln ratio of the CVs)²',
  letters: [['p, q', 'share and the rest of it; p̄ the mean of two'], ['error', 'a quarter of the interval’s length']],
  edges: '- Side by side every egg is taken to stand alone. Eggs of one hen do not, so it takes more, of several hens.\n- Where nothing is published the loss is 5 points, our own choice.\n- Of spreads, the test on which our verdicts rest tells about three times in four with so many (in simulation).',
  source: 'Fleiss 1981, ch. 3; Snedecor and Cochran; both from memory. 1.96 and 0.84 are for 95% and for four times in five.',
  example: {given: 'An error of 2 points and a loss of 4.4; shares of 80% and 69%; 20 birds of each; a CV of 8% after 10%.', gives: () => `${rounded(timesToTell(0.02, 0.044), 1)} times; ${countsToTell(0.8, 0.69)} of each; ${rounded(differenceTold(20, 20), 2)} SD; ${birdsToTellSpread(0.8)} birds of each.`},
}

const unmeant: Method = {
  id: 'kept-against-all',
  title: 'What did we choose for without meaning to?',
  question: 'In what do the birds kept differ from all of their hatch?',
  definition: 'For every look, of how many kept birds show it, beside a blind choice of as many from each hatch, step and sex; for every mark and measure, kept less the rest within these. Where it differs, it is told whether a target asks for it.',
  formula: 'P(x of k kept show it) = C(m, x) C(n − m, k − x) / C(n, k) in a class, summed over classes',
  letters: [['n, m', 'birds of a hatch, step and sex, those showing it'], ['k', 'kept, put into a pen, or a possible parent']],
  edges: '- Hatches of which all or none were kept tell nothing. Two steps in one hatch are apart, so that their blood does not pass for choosing.\n- Of many tests one looks remarkable by chance: P is corrected (Holm), and the number of tests is printed.\n- Marks and measures are drawn in standard deviations inside hatch and sex, so that all stand on one scale.',
  source: 'Exact form of Mantel and Haenszel 1959, from memory; Holm 1979, Scand. J. Stat. 6:65–70.',
  example: {given: 'Of 8 birds 4 show it; of 4 kept 3 do, or all 4.', gives: () => `P ${[3, 4].map(keptShowing => rounded(chosenByChance([{all: 8, kept: 4, showing: 4, keptShowing}]).p, 3)).join(' and ')}.`},
}

const response: Method = {
  id: 'selection',
  title: 'Selection and its response',
  question: 'How much of what we chose did we get?',
  definition: 'S: how far those bred from stood above their hatch mates of one sex, each counting by its scored chicks; half of each sex. R: the next step’s mean less this one’s, of birds reared together. Realised heritability is R on S, both added up over the steps.',
  formula: 'S = ½ (S♂ + S♀)\nin a backcross S is half of the step’s own, R = next step − ½ (this step + the strain)',
  letters: [],
  edges: '- Without birds of both steps reared together season and selection cannot be told apart: there is no R, only the move of the means.\n- A backcross moves the mean by blood; that move is printed apart. What vigour is lost with heterozygosity is not taken off.\n- One step gives a heritability without limits. Choosing uses up some of what there is to choose from: of a flock of h² 0.4 eight steps brought 0.35 in made-up lines.',
  source: 'Falconer and Mackay 1996, ch. 11, from memory.',
  example: {
    given: 'Cocks 300 g above their mates and hens 100 g, h² 0.4; the best 2 of 10; S 200 and 150 g with R 80 and 55 g.',
    gives: () => {
      const {differential, response: gained} = expectedResponse(300, 100, {value: 0.4, low: 0.4, high: 0.4}), found = realisedHeritability([{differential: 200, response: 80}, {differential: 150, response: 55}])
      return `S ${rounded(differential, 0)} g, R ${rounded(gained, 0)} g; ${rounded(selectionIntensity(2, 10), 2)} SD; h² ${found.kind === 'estimated' ? rounded(found.value, 2) : ''}.`
    },
  },
}

const likeness: Method = {
  id: 'likeness',
  title: 'Heritability from parents and chicks',
  question: 'Do heavy parents have heavy chicks?',
  definition: 'Chicks and parents as they stand above their own line, sex and rearing; chicks of one line and rearing compared by least squares. Each parent or pair is one row over all its rearings: more chicks of it tell more of them, and nothing more of parents.',
  formula: 'h² = b on the mean of both parents, 2b on one        error² times 1 + ρ(Σ (Σ x)²/Σ x² − 1) for pairs that share a bird',
  letters: [['b', 'change of the family for one unit of the parent'], ['x', 'mean of the parents, summed over the pairs of one bird'], ['ρ', 'how alike pairs of one bird are in what b leaves over, at least ¼']],
  edges: '- Only certain parents that were measured beside mates count.\n- Too few to say: under five cocks, or hens, whose chicks were compared.\n- The value may pass 0 or 1, which is a sign of too few families; the limits do not.\n- Of dams there is egg and brooding in it.',
  source: 'Falconer and Mackay 1996, ch. 10; Moulton 1986, J. Econometrics 32:385–397; both from memory.',
  example: {given: 'Five pairs 1, 2, 3, 4 and 5 above their mates, their chicks 2, 2, 3, 3 and 4.', gives: () => {
    const found = parentOffspring([2, 2, 3, 3, 4].map((offspring, place) => ({parent: place + 1, offspring})), 'both')
    return found.kind === 'estimated' ? `h² ${rounded(found.heritability.value, 2)} (${rounded(found.heritability.interval.low, 2)} to ${rounded(found.heritability.interval.high, 2)}).` : ''
  }},
}

const recovery: Method = {
  id: 'recovery',
  title: 'Recovery of type',
  question: 'How far has each measure come back from the donor?',
  definition: 'Where the step stands on the way from donor to the strain crossed back to, beside the share of genes expected. Means of those classes of sex and rearing that hold all three, each weighing alike in all.',
  formula: 'ρ = (step − donor) / (strain − donor)',
  letters: [['ρ', '0 as the donor, 1 as the strain']],
  edges: '- None where the three were never reared together.\n- No limits where the two strains do not differ clearly.',
  source: 'Fieller 1954, J. R. Stat. Soc. B 16:175–185, from memory.',
  example: {given: '20 birds of the step of 2300 g, 10 donors of 1200 g, 20 of the strain of 2500 g, SD 200, 120 and 200 g.', gives: () => {
    const found = recoveryOfType({n: 20, mean: 2300, sd: 200}, {n: 10, mean: 1200, sd: 120}, {n: 20, mean: 2500, sd: 200})
    return found?.interval ? `${percentSign(found.recovery)} (${limits(found.interval)}).` : ''
  }},
}

const vigour: Method = {
  id: 'crosses',
  title: 'Vigour of crosses',
  question: 'Are chicks of two lines better than the mean of both?',
  definition: 'First crosses of two strains, or of two lines, against the mean of chicks of either line, all three reared together; sexes and hatches weigh alike in all three.',
  formula: 'H = (cross − ½ (one + other)) / ½ (one + other)',
  letters: [],
  edges: '- A backcross, or two generations of one line, is no cross of lines.\n- Sibs are alike: from five sire families of each on, the limits draw families whole; under five they speak of these chicks only. So do those of response and recovery ([how often they hold](#coverage)).\n- Half of H is to be expected in the next generation.',
  source: 'Falconer and Mackay 1996, ch. 14; Satterthwaite 1946, Biometrics Bull. 2:110–114; both from memory.',
  example: {given: '20 of each: lines of 2000 and 2400 g, SD 180 and 220 g, their cross 2420 g, SD 200 g.', gives: () => {
    const found = heterosis({n: 20, mean: 2420, sd: 200}, {n: 20, mean: 2000, sd: 180}, {n: 20, mean: 2400, sd: 220})
    return found ? `${signed(percentSign(found.heterosis))} (${limits(found.interval)}).` : ''
  }},
}

export const vigourMethods: readonly Method[] = [depression, toTell, unmeant, response, likeness, recovery, vigour]
