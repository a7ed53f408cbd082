import {inside} from '../../records/problem.ts'
import type {Linked} from '../linked.ts'
import {reachOf} from '../rule-reach.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const trait = (first: string, second: string) => `---\nname: Colour\nstates: [splash, blue, black]\nloci:\n  Bl: {on: autosome, alleles: [Bl, bl+]}\nshows:\n  - ${first}\n  - ${second}\n  - {Bl: bl+/bl+, is: black}\n---\n`
const BLUE = '{Bl: Bl/_, is: blue}', SPLASH = '{Bl: Bl/Bl, is: splash}'

export const entry: ManualEntry = {
  code: 'rule-never-reached', severity: 'warning', title: 'A rule that is never reached',
  cause: 'Of the rules that fit a genotype the first holds. Every genotype that this rule fits is taken by rules above it, so that it says nothing; its state may then come from no genotype at all.',
  remedy: 'Put the narrower rule above the wider one, or take it out.',
  wrong: {'traits/colour.md': trait(BLUE, SPLASH)},
  right: {'traits/colour.md': trait(SPLASH, BLUE)},
}

export function check({bench, book}: Linked): void {
  for (const trait of book.traits) {
    const reach = reachOf(trait)
    trait.shows.forEach(({is, from}, index) => {
      if (!reach || reach.rules.has(index) || from === 'reference') return
      bench.noteAbout(trait)(slipOf(entry, inside(trait.at, 'shows', index), `the rule for ${is} is never reached: every genotype it fits is taken by the rules above it`, 'put it above the wider rule, or take it out'))
    })
  }
}
