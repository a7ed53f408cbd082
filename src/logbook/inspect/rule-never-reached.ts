import {genotypesAt, matches, writePattern} from '../../heredity/genotype-notation.ts'
import {inside} from '../../records/problem.ts'
import type {Rule} from '../book.ts'
import type {Linked} from '../linked.ts'
import {reachOf} from '../rule-reach.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const trait = (first: string, second: string) => `---\nname: Colour\nstates: [splash, blue, black]\nloci:\n  Bl: {on: autosome, alleles: [Bl, bl+]}\nshows:\n  - ${first}\n  - ${second}\n  - {Bl: bl+/bl+, is: black}\n---\n`
const BLUE = '{Bl: Bl/_, is: blue}', SPLASH = '{Bl: Bl/Bl, is: splash}'

export const entry: ManualEntry = {
  code: 'rule-never-reached', severity: 'warning', title: 'A rule that is never reached',
  cause: 'Of the rules that fit a genotype the first holds. Every genotype that this rule fits is taken by rules above it, or none of the sex it is for can have one, so that it says nothing; its state may then come from no genotype at all.',
  remedy: 'Put the narrower rule above the wider one, or take it out; of loci on the Z see whether the sex is right.',
  wrong: {'traits/colour.md': trait(BLUE, SPLASH)},
  right: {'traits/colour.md': trait(SPLASH, BLUE)},
}

export function check({bench, book}: Linked): void {
  for (const trait of book.traits) {
    const reach = reachOf(trait)
    trait.shows.forEach((rule, index) => {
      const {is, from, sex} = rule
      if (!reach || reach.rules.has(index) || from === 'reference') return
      const none = noneOfItsSex(rule)
      if (none !== null && sex !== null) {
        bench.noteAbout(trait)(slipOf(entry, inside(trait.at, 'shows', index), `the rule for ${is} is never reached: no ${sex} has ${none}`, `write sex: ${sex === 'male' ? 'female' : 'male'}, or mend the genotype`))
        return
      }
      bench.noteAbout(trait)(slipOf(entry, inside(trait.at, 'shows', index), `the rule for ${is} is never reached: every genotype it fits is taken by the rules above it`, 'put it above the wider rule, or take it out'))
    })
  }
}

/** `S/-` in a rule for males; null where its sex can have every genotype of the rule, or it is for both. */
function noneOfItsSex({patterns, sex}: Rule): string | null {
  if (sex === null) return null
  for (const [locus, pattern] of patterns) if (!genotypesAt(locus, sex).some(genotype => matches(pattern, genotype))) return writePattern(pattern, locus)
  return null
}
