import {shareOf} from '../../findings/share-of.ts'
import {shareInText} from '../estimate-words.ts'
import type {Method} from './method.ts'

export const hatchRates: Method = {
  id: 'hatch',
  title: 'Fertility and hatch',
  question: 'Of the eggs set, how many were fertile, and how many hatched?',
  definition: 'Fertile eggs are those set less those that were clear when candled. **Fertility** is fertile of set, **hatch of fertile** is hatched of fertile, **hatch of set** is hatched of set.',
  formula: 'fertile = eggs − clear\nfertility = fertile / eggs        hatch of fertile = hatched / fertile        hatch of set = hatched / eggs',
  letters: [],
  edges: `- Eggs not candled: fertility and hatch of fertile cannot be told; hatch of set still can.
- A clear egg may have held a germ that died too early to be seen, so fertility is rather a little higher than printed.
- A hatch set aside by its keeper has rates of its own and enters no other.
- Eggs that were cracked or went bad are taken off neither count.
- A hatch not finished yet has no rate. Eggs of one hen are alike, so the plain interval is narrower than the truth; [groups](#hatch-compared) have one that allows for it.
- Dead in germ and dead in shell are of the fertile eggs.`,
  source: 'Common practice, no source; the interval is Wilson’s.',
  example: {
    given: '48 eggs set, 5 clear, 37 hatched.',
    gives: () => `Fertility ${shareInText(shareOf(43, 48))}; hatch of fertile ${shareInText(shareOf(37, 43))}; hatch of set ${shareInText(shareOf(37, 48))}.`,
  },
}
