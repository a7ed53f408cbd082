import {inside} from '../../records/problem.ts'
import type {Linked} from '../linked.ts'
import {reachOf} from '../rule-reach.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const trait = (last: string) => `---\nname: Skin\nstates: [white, yellow]\nloci:\n  W: {on: autosome, alleles: [W+, w]}\nshows:\n  - {W: W+/_, is: white}\n  - {W: w/w, is: ${last}}\n---\n`

export const entry: ManualEntry = {
  code: 'state-without-genotype', severity: 'warning', title: 'A look that no genotype gives',
  cause: 'A trait has rules of inheritance, and one of its states comes from none of them. A bird scored so contradicts the rules, whoever its parents are.',
  remedy: 'Add a rule that gives the state, mend the rule that was meant to, or take the state out.',
  wrong: {'traits/skin.md': trait('white')},
  right: {'traits/skin.md': trait('yellow')},
}

export function check({bench, book}: Linked): void {
  for (const trait of book.traits) {
    const reach = reachOf(trait)
    trait.states.forEach((state, index) => {
      if (!reach || reach.states.has(state)) return
      bench.noteAbout(trait)(slipOf(entry, inside(trait.at, trait.kind === 'ordered' ? 'order' : 'states', index),
        `no genotype of ${trait.loci.map(({symbol}) => symbol).join(' and ')} gives ${trait.id} ${state}`, `add a rule with is: ${state}, or take the state out`))
    })
  }
}
