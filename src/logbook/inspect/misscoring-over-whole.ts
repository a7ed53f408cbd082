import {inside} from '../../records/problem.ts'
import type {Linked} from '../linked.ts'
import {takenForOthers} from '../taken-for-others.ts'
import {percentWords} from './chances-do-not-sum.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const trait = (pea: string) => `---\nname: Comb\nstates: [rose, pea, single]\nmisscoring: {rose: {pea: ${pea}, single: 60%}}\n---\n`

export const entry: ManualEntry = {
  code: 'misscoring-over-whole', severity: 'error', title: 'A look taken for others more often than it is seen',
  cause: 'The shares under misscoring with which one look is taken for each of the others make more than 100% together.',
  remedy: 'Mend them: of a hundred birds that look so, how many are scored as each of the others? What is left of the hundred is scored rightly.',
  wrong: {'traits/comb.md': trait('60%')},
  right: {'traits/comb.md': trait('1%').replace('60%', '2%')},
}

/** A sum this near to the whole is whole: thirds are written as 33.4%. */
const SLACK = 1e-9

export function check({bench, book}: Linked): void {
  for (const trait of book.traits) {
    for (const {state, share} of takenForOthers(trait)) {
      if (share <= 1 + SLACK) continue
      bench.noteAbout(trait)(slipOf(entry, inside(trait.at, 'misscoring', state), `${state} is taken for other looks in ${percentWords(share)} of birds, which is more than all of them`, `mend the shares: what they leave of 100% is scored rightly as ${state}`))
    }
  }
}
