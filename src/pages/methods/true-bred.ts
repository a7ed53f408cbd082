import {shareOf} from '../../findings/share-of.ts'
import {shareInText} from '../estimate-words.ts'
import type {Method} from './method.ts'

export const trueBredRate: Method = {
  id: 'true-bred',
  title: 'The true-bred rate',
  question: 'Does it breed true?',
  definition: 'Of the chicks scored, the share that showed every required trait that it was old enough, and of the sex, to show. A chick **fails** when any required trait it shows is off. It **passes** when at least one required trait was scored, and every one that its sex and age can show was scored and is right. A chick that left before a trait could be seen can so pass on fewer traits than the standard requires: how many did, and which traits were wanting, is said beside the rate. All others are not fully scored, and the rate is given again with all of these failing and with all of them passing. Chicks culled count like chicks kept. Only steps mated inside the breed can breed true; for crosses and backcrosses the same count says what there was to choose from.',
  formula: 'rate = passes / (passes + fails)',
  letters: [],
  edges: `- Chicks lost before they could be scored, too young yet, or never listed are counted apart and stand in no rate.
- Nobody scored: no rate is given.
- Chicks of one sire are alike, so that Wilson’s interval is narrower than the truth. From five sire families on a second one is drawn by families ([how](#trend)), and a committee should read that; under five the first speaks of these chicks only.`,
  source: 'The intervals: Wilson 1927, J. Am. Stat. Assoc. 22:209–212; by families drawn whole, as for the trend over the steps. What passes and fails: common practice, no source.',
  example: {
    given: '59 chicks pass, 3 fail and 4 are not fully scored.',
    gives: () => `${shareInText(shareOf(59, 62))}. With the 4 all failing: ${shareInText(shareOf(59, 66))}. With the 4 all passing: ${shareInText(shareOf(63, 66))}.`,
  },
}
