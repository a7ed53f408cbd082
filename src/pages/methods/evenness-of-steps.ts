import {FAMILY_SEED} from '../../findings/sire-families.ts'
import {FEWEST_FAMILIES} from '../../statistics/family-bootstrap.ts'
import {mannKendall} from '../../statistics/mann-kendall.ts'
import {groupsOfBoth, rankSumWithin, type Graded} from '../../statistics/rank-sum-within.ts'
import {spreadOfSteps} from '../../statistics/relative-deviations.ts'
import {senSlope} from '../../statistics/sen-slope.ts'
import {shareDifference} from '../../statistics/share-difference.ts'
import {shareTrend} from '../../statistics/share-trend.ts'
import {shiftWithin} from '../../statistics/shift.ts'
import {variationRatio} from '../../statistics/variation-ratio.ts'
import {weightedKappa} from '../../statistics/weighted-kappa.ts'
import {countWord, limits, percent, rounded} from '../numbers.ts'
import {heldBy} from './coverage.ts'
import type {Method} from './method.ts'

const trend: Method = {
  id: 'trend',
  title: 'Trend over the steps',
  question: 'Does each step breed truer, and more evenly, than the last?',
  definition: 'Over the steps of the ladder that were mated inside the line: of the chicks judged, by how much the share that is right changes a step, and how often chance alone would do as much (Cochran and Armitage). Chicks of one cock are alike, so the interval for a committee is drawn by sire families. Of a measured trait, whether the CV goes one way (Mann and Kendall) and by how much a step (Sen).',
  formula: 'z = sum of w (k − n p) / √( p (1 − p) sum of n (w − mean w)² )\nn* = n / max(1, v / (p (1 − p) / n))',
  letters: [['k, n', 'chicks right and judged in a step'], ['w', 'place of the step: 0, 1, 2 …'], ['p', 'share right, of all steps in z, of one in n*'], ['v', 'variance of the share over families drawn anew; Wilson’s formula with n* and Student’s t gives the limits']],
  edges: `- Crosses, backcrosses, steps beside the ladder and mixed birds are in no trend.
- Exact where there are 60 chicks or fewer, or under 5 expected right or wrong.
- Under ${countWord(FEWEST_FAMILIES)} sire families: these chicks only. Sires that may have had the same chick are one family. 2000 draws, seed ${FAMILY_SEED}.
- In made-up flocks of 5 to 20 families the families’ interval held the truth ${heldBy('family-share')} times in a hundred, the plain one of sibs ${heldBy('wilson-families')} ([all figures](#coverage)).
- Four steps or fewer cannot show that a CV goes one way, whatever they hold.`,
  source: 'Cochran 1954, Biometrics 10:417–451; Armitage 1955, Biometrics 11:375–386; Mann 1945, Econometrica 13:245–259; Sen 1968, J. Am. Stat. Assoc. 63:1379–1389. Families drawn whole: Davison and Hinkley 1997, 3.8, from memory; the joining with Wilson’s formula is ours, held by simulation.',
  example: {
    given: 'Right 19 of 516, 29 of 589 and 24 of 293; a figure of 10, 10, 10, 5, 10, 20, 18, 17, 15, 24 and 15.',
    gives: () => {
      const {z, p} = shareTrend([{k: 19, n: 516}, {k: 29, n: 589}, {k: 24, n: 293}]), order = mannKendall(FIGURE), slope = senSlope(FIGURE)
      return `z ${rounded(z ?? NaN, 2)}, P ${rounded(p, 3)}. ${order.kind === 'tested' ? `S ${order.s}, P ${rounded(order.p, 3)}` : ''}, ${rounded(slope?.slope ?? NaN, 1)} a step.`
    },
  },
}

const FIGURE = [10, 10, 10, 5, 10, 20, 18, 17, 15, 24, 15] as const

const graded = (cocks: readonly number[], hens: readonly number[]): Graded[] => [...cocks.map(grade => ({group: 'male', grade})), ...hens.map(grade => ({group: 'female', grade}))]

const change: Method = {
  id: 'change',
  title: 'Change from one step to another',
  question: 'Is a later step truer or more even, or does it only look so?',
  definition: 'Shares: the difference with Newcombe’s interval, of these chicks and by families. Measures: how far each bird strays from the middle of its own class, sex and rearing, as a part of it, compared by Brown and Forsythe’s test, from five sire families in both on with families as its pieces; the ratio of the CVs says by how much. Grades: how often a chick of the later step is the higher, cocks held against cocks and hens against hens (van Elteren), by families (Obuchowski); with Hodges and Lehmann’s shift inside the sexes.',
  formula: 'low  = d − √( (p₁ − l₁)² + (u₂ − p₂)² )\nhigh = d + √( (u₁ − p₁)² + (p₂ − l₂)² )',
  letters: [['d', 'p₁ − p₂, later less earlier'], ['l, u', 'limits of either share, Wilson’s or the families’']],
  edges: `- Truer, less true, more or less even, higher or lower only where the interval, or P at 5%, leaves no change out; else it cannot be told.
- Where a step is a cross or a backcross, shares change by plan, and the verdict says only that.
- Measures need a class of five in both steps. Of under five sire families birds are taken one by one: in made-up flocks in which nothing changed they then told a change in 4 to 6 cases of a hundred, and in 10 to 11 where brothers and sisters were much alike (a likeness of a quarter), by families in 4 to 5. So no page leads with evenness of few sires.
- P is of how far birds stray, and one odd bird hardly sways it; the times are of the CVs, and it may sway them. Where the two part, go by P.
- Grades of under five sire families have neither verdict nor P: the rank test, which takes chicks one by one, then told a change in 18 to 46 cases of a hundred. A sex graded in one step only stands aside.
- P of measures, and P of grades, is corrected by Holm for how many were compared in the step. Shares are not: everything required together is the question, the single traits say where it comes from, and where nothing has changed one verdict in twenty errs.
- Where kappa of two who grade the same birds may be 0, or repeated scorings surely differ in over a fifth, the change is told with that doubt.`,
  source: 'Newcombe 1998, Stat. Med. 17:873–890, method 10; Brown and Forsythe 1974, J. Am. Stat. Assoc. 69:364–367, on deviations within classes by our own scaling, held by simulation; Forkman 2009, Commun. Stat. Theory Methods 38:233–251, from memory; Obuchowski 1997, Biometrics 53:567–578, from memory; van Elteren 1960, Bull. Int. Stat. Inst. 37:351–361; Holm 1979, Scand. J. Stat. 6:65–70; Hodges and Lehmann 1963, Ann. Math. Stat. 34:598–611.',
  example: {
    given: '48 of 80 right, then 56 of 70; classes of 90, 101, 110 and 130 g and of 180, 200 and 220 g, then of 98, 100 and 102 g and of 196, 201 and 204 g; a CV of 12% in a class of 26, then 8% in one of 21; cocks graded 7, hens 3 and 5, then cocks 8 and 9, a hen 4.',
    gives: () => {
      const share = shareDifference({k: 56, n: 70}, {k: 48, n: 80}), even = spreadOfSteps([[[90, 101, 110, 130], [180, 200, 220]], [[98, 100, 102], [196, 201, 204]]])
      const ratio = variationRatio([{cv: 0.08, freedom: 20}], [{cv: 0.12, freedom: 25}]), later = graded([8, 9], [4]), earlier = graded([7], [3, 5]), ranks = rankSumWithin(later, earlier)
      return `${percent(share.difference)} points (${limits(share)}). ${even.kind === 'compared' ? `P ${rounded(even.p, 3)}` : ''}. ${rounded(Math.sqrt(ratio?.ratio ?? NaN), 2)} times. ${ranks.kind === 'compared' ? `Higher in ${percent(ranks.superiority)}%, P ${rounded(ranks.p, 3)}` : ''}, shift ${rounded(shiftWithin(groupsOfBoth(later, earlier))?.shift ?? NaN, 1)}.`
    },
  },
}

const grades: Method = {
  id: 'grades',
  title: 'Grades, and whether scorers agree',
  question: 'How were they graded, and would another have graded them so?',
  definition: 'Marks on a scale and states in order have a middle one and a share at the mark, and no mean. Two scorers of the same birds are compared by kappa: 1 where they agree in all, 0 where no more than by chance. A miss by one grade counts little, one by the whole scale counts whole.',
  formula: 'κ = (seen − chance) / (1 − chance)',
  letters: [['seen, chance', 'mean of 1 − |i − j| / (g − 1) over birds given grades i and j of g; of birds as graded, and were the grades dealt out anew']],
  edges: `- Each scorer’s last grade of a bird counts; struck and untimely ones do not.
- No interval where the two agree in all, and no kappa where both gave one grade throughout.
- A judge’s points under a heading with the trait’s name in it are brought to the trait’s scale, to the nearest grade: our convention. Sheets of keepers are no judge’s.`,
  source: 'Cohen 1968, Psychol. Bull. 70:213–220; Fleiss, Cohen and Everitt 1969, Psychol. Bull. 72:323–327. The bent scale of the interval is ours, held by simulation.',
  example: {
    given: 'Two scorers of ten birds and three grades: alike 4, 2 and 2; one bird a grade higher with the second, one two grades lower.',
    gives: () => {
      const kappa = weightedKappa([[4, 1, 0], [0, 2, 0], [1, 0, 2]])
      return `κ ${rounded(kappa?.kappa ?? NaN, 2)}.`
    },
  },
}

export const evennessOfStepsMethods: readonly Method[] = [trend, change, grades]
