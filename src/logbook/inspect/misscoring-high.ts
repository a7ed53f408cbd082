import {inside} from '../../records/problem.ts'
import type {Linked} from '../linked.ts'
import {takenForOthers} from '../taken-for-others.ts'
import {percentWords} from './chances-do-not-sum.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const trait = (share: string) => `---\nname: Comb\nstates: [pea, single]\nmisscoring: ${share}\n---\n`

export const entry: ManualEntry = {
  code: 'misscoring-high', severity: 'warning', title: 'A look mistaken as often as not',
  cause: 'Under misscoring a look is said to be taken for others in half of the birds or more. It is then as likely to be written down as something else as by its own name, and a score tells little or speaks for the contrary.',
  remedy: 'See whether the share that is scored rightly was written instead of the one that is scored wrongly, or 80% instead of 8%. Where two looks truly cannot be told apart, make them one.',
  wrong: {'traits/comb.md': trait('80%')},
  right: {'traits/comb.md': trait('8%')},
}

/** From this share on another look is likelier to be written than the true one, or as likely. */
const HALF = 0.5

export function check({bench, book}: Linked): void {
  for (const trait of book.traits) {
    const note = bench.noteAbout(trait), high = takenForOthers(trait).filter(({share}) => share >= HALF && share <= 1 + 1e-9)
    const stated = bench.records.trait.find(({id}) => id === trait.id)?.data.misscoring, [first] = high
    if (!first) continue
    const remedy = (share: number): string => share < 1 ? `write the share that is scored wrongly; if ${percentWords(1 - share)} was meant, write that` : 'write the share that is scored wrongly'
    if (typeof stated === 'number') {
      note(slipOf(entry, inside(trait.at, 'misscoring'), `every look of ${trait.id} is scored as another in ${percentWords(stated)} of birds, and rightly in no more than ${percentWords(1 - stated)}`, remedy(stated)))
      continue
    }
    for (const {state, share} of high) {
      note(slipOf(entry, inside(trait.at, 'misscoring', state), `${state} is scored as another look in ${percentWords(share)} of birds, and rightly in no more than ${percentWords(1 - share)}`, remedy(share)))
    }
  }
}
