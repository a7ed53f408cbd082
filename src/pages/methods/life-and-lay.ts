import {eatenOf} from '../../findings/feed-use.ts'
import {LIVABILITY_AGES} from '../../findings/livability-of-groups.ts'
import {rearedAlike, type Kept} from '../../findings/reared-alike.ts'
import {parseDate} from '../../records/dates.ts'
import {FEWEST_FAMILIES, familyShare} from '../../statistics/family-bootstrap.ts'
import {livability} from '../../statistics/livability.ts'
import {ratioOfSums} from '../../statistics/ratio-of-sums.ts'
import {shareDifference} from '../../statistics/share-difference.ts'
import {wilsonInterval} from '../../statistics/wilson-interval.ts'
import {alikeShort} from '../alike-words.ts'
import {ageWords} from '../dates.ts'
import {mass} from '../mass-words.ts'
import {countWord, limits, listWords, percent, percentSign, sentence} from '../numbers.ts'
import {heldBy} from './coverage.ts'
import type {Method} from './method.ts'

const compared: Method = {
  id: 'hatch-compared',
  title: 'Hatches set side by side',
  question: 'Does one step, season, pen or way of hatching really hatch better than another?',
  definition: 'The difference of the two shares with Newcombe’s interval, of these eggs. Eggs of one hen or male are alike, so where there are enough, sire families, else settings, are drawn whole and the interval made of that: it is the one to read. Each step and season stands beside the one before, hens beside the machines of the same seasons, and each pen of the last season beside the others.',
  formula: 'd = p₁ − p₂\nlow  = d − √( (p₁ − l₁)² + (u₂ − p₂)² )\nhigh = d + √( (u₁ − p₁)² + (p₂ − l₂)² )',
  letters: [['l, u', 'limits of either share, of families, settings or eggs']],
  edges: `- ${sentence(countWord(FEWEST_FAMILIES))} sire families in both: eggs of parents bred like these. Else ${countWord(FEWEST_FAMILIES)} settings in both: further settings of these birds. Else: these eggs only.
- All pens set in machines on one day share its luck. Where both groups were set on ${countWord(FEWEST_FAMILIES)} days or more, days are drawn whole as well and the wider interval stands; with fewer, the luck of the day is not in it.
- A setting with \`set-aside\` is left out, eggs and chicks, and named where it is.
- Where both groups have sires in common the limits are too wide rather than too narrow.
- In made-up flocks the families’ interval held the truth ${heldBy('family-share')} times in a hundred, the plain one of few families ${heldBy('wilson-families')} ([all figures](#coverage)).
- Pure strains are left aside. One comparison in twenty shows a difference by chance; of these eggs only, far more.
- A difference of groups that were not [kept alike](#kept-alike) need not be one of the birds.`,
  source: 'Newcombe 1998, Stat. Med. 17:873–890, method 10. Families drawn whole: Davison and Hinkley 1997, 3.8, from memory.',
  example: {
    given: 'Hatched 56 of 70 and 48 of 80; of five families 9 of 10, 12 of 12, 5 of 8, 11 of 11 and 9 of 9.',
    gives: () => {
      const {difference, low, high} = shareDifference({k: 56, n: 70}, {k: 48, n: 80}), drawn = familyShare([{k: 9, n: 10}, {k: 12, n: 12}, {k: 5, n: 8}, {k: 11, n: 11}, {k: 9, n: 9}], {seed: 1})
      return `${percent(difference)} points (${limits({low, high})}). ${drawn ? `${percentSign(drawn.share)}, of these eggs ${limits(wilsonInterval(46, 50))}, of eggs bred like these ${limits(drawn)}.` : ''}`
    },
  },
}

const KEPT: Kept = {season: 2024, way: 'incubator', machine: 'I1', keeper: null, care: []}

const alike: Method = {
  id: 'kept-alike',
  title: 'Were they kept alike?',
  question: 'Is it the birds that differ, or how they were kept?',
  definition: 'Two groups were not kept alike where the records name for one and not for the other: a season, a broody hen or a machine, which machine, the keeper, feed, housing, a vaccination, treatment, illness or loss; of hens also the time of year, and pullets or older hens. Of eggs, what touched their breeders from two weeks before they were laid counts, and the setting; of chicks, what touched them up to the age they are followed to.',
  formula: null, letters: [],
  edges: '- Where nothing is on record, nothing is known to differ: that is the most that records can say.\n- A care record that names no pen, hatch or bird touched all there were.\n- Groups with the same machines or keepers may still have had them in other parts.\n- Where it is not written how some were hatched, it cannot be told.',
  source: 'Common practice, no source.',
  example: {given: 'Hatches of 2024 from machine I1, beside those of 2025 from I1 and I2.', gives: () => `${alikeShort(rearedAlike([KEPT], [{...KEPT, season: 2025}, {...KEPT, season: 2025, machine: 'I2'}]))}.`},
}

const HERS = [[8, true], [10, false], [27, false], [31, true], [54, true], [70, false], [92, true], [121, false]] as const

const lived: Method = {
  id: 'livability',
  title: 'How many chicks live',
  question: `Of a hundred chicks, how many live to ${LIVABILITY_AGES.map(age => ageWords(age)).join(' and to ')}?`,
  definition: 'Day by day, of the chicks still watched, the share that did not die; these multiplied up to the age. A chick that was sold, culled, taken or lost counts for as long as it was there, and no longer.',
  formula: 'S = product of (1 − d/r) over the ages at which some died\nn* = S (1 − S) / Var S        limits: Wilson’s for S and n*',
  letters: [['d', 'died at that age'], ['r', 'watched up to it'], ['Var S', 'Greenwood’s; from five sire families on that of families, with Student’s t']],
  edges: `- Deaths are what is written as \`died\`, told to the last age and later. Culls and what a fox took are told beside.
- A chick of which nothing more is written is taken to live: what dies unwritten makes the figure too good.
- Not followed: hatched and never listed, or no day written. A month counts by its middle.
- Where nobody was watched to the age, nothing is said. A move between keepers of the project ends nothing.
- In made-up flocks the limits by families held the truth ${heldBy('livability-families')} times in a hundred.`,
  source: 'Kaplan and Meier 1958, J. Am. Stat. Assoc. 53:457–481; Greenwood 1926; Ying and Wei 1994, J. Multivar. Anal. 50:17–29, the last two from memory. The example, in days, is of the first.',
  example: {given: 'Of eight, deaths on day 8, 31, 54 and 92; sold on day 10, 27, 70 and 121. To 10, 40, 60 and 100 days:', gives: () => {
    const birds = HERS.map(([age, died]) => ({age, died}))
    return `${listWords([10, 40, 60, 100].map(age => percentSign(livability(birds, age)?.share ?? 0)))}.`
  }},
}

const lay: Method = {
  id: 'lay',
  title: 'Rate of lay',
  question: 'How many eggs does a hen give?',
  definition: '**Hen-day rate**: eggs for each day that a hen was alive on a counted day. **Hen-housed**: eggs for each hen that was there at the start, so that hens which died weigh it down. **Egg weight**: the mean of all that were on the scales. **Age at first egg**: days from hatch, of hens with both days written.',
  formula: 'hen-day = eggs / sum of hens alive each day        hen-housed = eggs / hens at the start\nlimits = R ± t √( m/(m − 1) × sum of (y − R x)² ) / sum of x',
  letters: [['y, x', 'eggs and hen-days of a hen, a pen or a week'], ['m', 'how many of them']],
  edges: `- A row speaks of the days written for it; else of as many as lie between most rows of its sheet. Days before it that no row speaks of were not counted, and are no days without eggs; but eggs too many for the usual days were gathered over the whole gap.
- Hens are those the sheet names, else those of the pen’s record alive and there that day. The day a hen came, or hatched, counts; the day she died or was sold does not. Where the day of arrival is left out, as some do, there are as many hen-days fewer as hens came.
- All sheets of one hen are one part, and so are those of pens with mostly the same hens. Of several parts the limits are those between hens, or between pens; where both stand together each kind has its own. Of one pen or hen only weeks can be set side by side, from four on: they speak of these hens.
- Hen-housed of several sheets is given as a rate, for they ran over unlike numbers of days.
- Hens of which no first egg is written are counted beside; late layers among them make the mean too low.
- In made-up flocks the limits held the truth ${heldBy('egg-rate')} times in a hundred.`,
  source: 'Both rates as in ILRI, Domestic Animal Genetic Resources Information System; the example after the formula of the Indian Council of Agricultural Research (thebigbookproject.org). Ratio: Cochran 1977, Sampling Techniques, ch. 6, from memory.',
  example: {given: '10000 hens housed, 9900 alive, 9108 eggs in a day.', gives: () => `Hen-day ${percentSign(ratioOfSums([{of: 9108, per: 9900}])?.ratio ?? 0)}, hen-housed ${percentSign(ratioOfSums([{of: 9108, per: 10000}])?.ratio ?? 0)}.`},
}

const fed = (on: string, feed: number, left?: number) => ({on: parseDate(on) ?? {text: on, first: 0, last: 0}, feed, ...(left === undefined ? {} : {left})})

const feed: Method = {
  id: 'feed',
  title: 'Feed, and growth of a hatch',
  question: 'What does a bird eat, and what becomes of it?',
  definition: 'Eaten is what was given less what was left at the next record, spread evenly over the days between; of the last record nothing is eaten yet. It is set against the days of all birds there, against the eggs of the days on which both are on record, and, of a hatch, against the live weight gained between its weigh days.',
  formula: 'feed conversion = eaten / weight of the eggs, or eaten / weight gained\ngain = sum over days of birds alive × change of the mean weight',
  letters: [],
  edges: '- Where it was not weighed what was left, the feed before is taken to be eaten up. What is spilt counts as eaten, and males eat too.\n- The mean weight runs straight from weigh day to weigh day; birds that left are credited with what they had gained by then.\n- Weighings of one hatch less than a week of age apart, or a tenth of the age, stand together, the sexes apart; a gain a day is of birds weighed at both ages, else of the means.\n- One pen is a single observation: it has no limits.',
  source: 'Common practice, no source.',
  example: {given: '6 kg given; after a week 1 kg left and 5 kg given; after another 0.4 kg left. Six birds.', gives: () => {
    const {stretches} = eatenOf([fed('2024-03-02', 6000), fed('2024-03-09', 5000, 1000), fed('2024-03-16', 0, 400)]), eaten = stretches.reduce((sum, {from, to, perDay}) => sum + perDay * (to - from + 1), 0)
    return `${mass(eaten, 'metric')} eaten, ${mass(eaten / 84, 'metric')} a bird a day.`
  }},
}

export const lifeAndLayMethods: readonly Method[] = [compared, alike, lived, lay, feed]
