import {effectiveSize, rateAtRandom} from '../../pedigree/census-size.ts'
import {matingForecast} from '../../pedigree/mating-forecast.ts'
import {clans, closedPen, rollingPens, wholeFlock} from '../../pedigree/mating-systems.ts'
import {rateBetween, realisedSize} from '../../pedigree/rate-of-inbreeding.ts'
import {listWords, percentSign, rounded} from '../numbers.ts'
import type {Method} from './method.ts'

const rate: Method = {
  id: 'rate',
  title: 'Rate of inbreeding, and the size it speaks of',
  question: 'How fast does F rise, and as if bred by how many birds?',
  definition: 'The **rate**, ΔF, is the part of what was not yet inbred that became so in one generation. It is taken from one step of the closed phase to the next, since a backcross sets F back; and from each bird, by its own F and the generations that its line was mated within itself. Backcrosses to birds that are no kin come before the line was closed, and in them F could not rise: to count them would thin the rate. From the birds’ mean rate follows the **realised effective size**, Ne: the number of birds, half cocks and half hens bred without any plan, under which F would have risen as fast.',
  formula: 'ΔF = (F₂ − F₁) / (1 − F₁)        a bird’s own: ΔF = 1 − ((1 − F) / (1 − F₀))^(1 / g)\nNe = 1 / (2 × mean ΔF)        standard error = 2 × Ne² × s / √n',
  letters: [['F₀', 'mean F of the step at which the line was closed'], ['g', 'generations mated inside since; t − 1 of the bird’s equivalent complete generations t where that is less'], ['s', 'standard deviation of the birds’ ΔF'], ['n', 'birds counted']],
  edges: `- What the strains’ founders bring along is left out: it is no doing of ours.
- Birds of fewer than two known generations are left out and counted. With no rise there is no size.
- Birds of one family are not independent, so the standard error is the least it can be. Requirements read the rate by sire families.
- The tick in the ladder’s figure is the F that a step might have had at the project’s limit, L, from the step before: 1 − (1 − F₁)(1 − L).`,
  source: 'Falconer and Mackay 1996, ch. 4 (from memory); Gutiérrez et al. 2008, Genetics Selection Evolution 40:359 (abstract seen), and 2009, Journal of Animal Breeding and Genetics 126:327 (from memory).',
  example: {
    given: 'F from 25% to 37.5% in one step; then three birds two generations inside a line whose first birds were not inbred, with F 12.5%, 18.75% and 25%.',
    gives: () => {
      const {rate: mean, size, standardError} = realisedSize([0.125, 0.1875, 0.25].map(inbreeding => ({inbreeding, generations: 3})))
      return `ΔF is ${percentSign(rateBetween(0.25, 0.375) ?? NaN)}. The birds’ mean rate is ${percentSign(mean)}, Ne ${typeof size === 'number' ? rounded(size, 1) : '–'} with a standard error of ${rounded(standardError ?? NaN, 1)}.`
    },
  },
}

const alike = (count: number, males: number, females: number) => Array.from({length: count}, () => ({males, females}))

const meanKinship: Method = {
  id: 'mean-kinship',
  title: 'Why mean kinship stands beside F',
  question: 'F fell this year. Are we getting better?',
  definition: 'Not for that. F tells of the matings that were made; a year of well-chosen pairs lowers it while the flock as a whole grows closer. **Mean kinship** is where F goes if the birds are mated among themselves without choosing, and it does not fall but by new blood. So the two are drawn together: F a little behind and jumping, mean kinship ahead and steady.',
  formula: 'mean kinship = Σ K(a, b) / n²        over all n birds, each with itself included',
  letters: [],
  edges: '- Of one step or of the living: the page says which.\n- In a forecast, the mean of two different chicks of the season.',
  source: 'Caballero and Toro 2000, Genetical Research 75:331 (from memory); that F swings within a cycle when the shift of the males changes: Farid et al. 1987 (title seen).',
  example: {
    given: 'Four clans of one cock and four hens, the males moved one clan on, then two, then three; seasons four to eight:',
    gives: () => {
      const course = matingForecast(clans(alike(4, 1, 4), [1, 2, 3]), 8).slice(3)
      const of = (key: 'inbreeding' | 'kinship') => listWords(course.map(season => percentSign(season[key])))
      return `F ${of('inbreeding')}; kinship of two chicks ${of('kinship')}.`
    },
  },
}

const ROLLING = {cockerels: 1, cocks: 1, pullets: 4, hens: 4}

const systems: Method = {
  id: 'mating-systems',
  title: 'Where a way of mating leads',
  question: 'If we go on like this, with our numbers, how closely bred will the chicks be in ten years?',
  definition: 'Each rule of mating (clans with the males moved on, rolling pens, one closed pen, every male with every female) is followed season by season from the kinships that the birds have today. The mean F and mean kinship of the chicks come out exactly, without drawing lots. In **clans** a chick is of its dam’s clan and the cocks of each clan are sons of the clan before it. In **one closed pen** nothing comes in; in **one flock** every male is with every female. In **rolling pens** cockerels go to the hens and last year’s cockerels, now cocks, to the pullets, where his own daughters may await him; **fathers kept apart** means that pullets are kept from the pullets’ pen only. The limit is passed in the first year in which the mean F of the chicks lies above it.',
  formula: 'F(chicks of a pen) = K(its cocks, its hens)\nK(chick of one pen, chick of another) = ¼ (K of the sires + K of sire and dam, both ways + K of the dams)',
  letters: [['K', 'mean kinship of two groups; of a group with itself one of n times the kinship of a bird with itself']],
  edges: `- Every bird of a pen is taken as equally likely to be a parent, and breeders as drawn by chance. Real flocks do worse: families are unequal and the best are chosen.
- A season is a generation, but in rolling pens, where birds breed twice, a year.
- It is a mean: a single chick may lie well above.`,
  source: 'Wright 1931, Genetics 16:97, for one pen; between pens the same reasoning, worked out for these pages and checked against flocks drawn bird by bird. Clans and rolling pens: common practice.',
  example: {
    given: 'Unrelated founders; F of the fourth, sixth and eighth generation in three clans of one cock and four hens, with the same birds mated without a plan, in one closed pen of one and four, and by the year in rolling pens of a cockerel, a cock and four of either hens; these with pullets of both pens, then with fathers kept apart:',
    gives: () => [clans(alike(3, 1, 4)), wholeFlock(alike(3, 1, 4)), closedPen({males: 1, females: 4}), rollingPens(ROLLING), rollingPens(ROLLING, {fathers: true})].map(system => {
      const course = matingForecast(system, 8)
      return [4, 6, 8].map(season => percentSign(course[season - 1]?.inbreeding ?? NaN)).join(', ')
    }).join('; ') + '.',
  },
}

const census: Method = {
  id: 'census-size',
  title: 'Size by counting breeders',
  question: 'Roughly, how fast must a flock of so many cocks and hens lose variety?',
  definition: 'A rule of thumb from the bare count of breeders, mated without a plan. The scarcer sex decides: one cock with any number of hens never counts for four birds.',
  formula: 'Ne = 4 × M × N / (M + N)        ΔF = 1 / (2 × Ne)',
  letters: [['M, N', 'breeding cocks and breeding hens']],
  edges: '- Breeders that are kin, unequal families and choosing make the true size smaller.\n- Good for more than a handful of birds only; the forecast of the mating system goes before it.',
  source: 'Wright 1931, Genetics 16:97.',
  example: {
    given: 'One cock with ten hens; four cocks with sixteen hens:',
    gives: () => [[1, 10], [4, 16]].map(([males = 0, females = 0]) => `Ne ${rounded(effectiveSize(males, females), 1)}, ${percentSign(rateAtRandom(males, females))} a generation`).join('; ') + '.',
  },
}

export const rateMethods: readonly Method[] = [rate, meanKinship, systems, census]
