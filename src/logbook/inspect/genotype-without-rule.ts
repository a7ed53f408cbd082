import {writeGenotype} from '../../heredity/genotype-notation.ts'
import {inside} from '../../records/problem.ts'
import type {Locus, Trait} from '../book.ts'
import type {Linked} from '../linked.ts'
import {reachOf, type Uncovered} from '../rule-reach.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const trait = (white: string) => `---\nname: Skin\nstates: [white, yellow]\nloci:\n  W: {on: autosome, alleles: [W+, w]}\nshows:\n  - {W: ${white}, is: white}\n  - {W: w/w, is: yellow}\n---\n`

export const entry: ManualEntry = {
  code: 'genotype-without-rule', severity: 'warning', title: 'A genotype that no rule speaks of',
  cause: 'A trait has rules of inheritance, and some birds that could be hatched fit none of them. Nothing is foretold of their looks, and a score of theirs tells nothing.',
  remedy: 'Widen the rule that was meant to hold, with _ for any allele, or add one; a last rule with _/_ takes all that the others leave.',
  wrong: {'traits/skin.md': trait('W+/W+')},
  right: {'traits/skin.md': trait('W+/_')},
}

/** So many genotypes are named. */
const NAMED = 3

export function check({bench, book}: Linked): void {
  for (const each of book.traits) {
    const reach = reachOf(each)
    // a look that no rule gives is said as such: its rule is what these genotypes want
    if (!reach || reach.uncovered.length === 0 || each.states.some(state => !reach.states.has(state)) || each.shows.some(({from}) => from === 'reference')) continue
    const uncovered = reach.uncovered.filter(({genotype}) => genotype.every((alleles, place) => alleles.every(allele => allele === null || isMeant(allele, each.loci[place], each, bench))))
    const names = [...new Set(uncovered.map(one => nameOf(one, each, uncovered)))], more = names.length - NAMED
    const listed = more > 0 ? `${names.slice(0, NAMED).join(', ')} and ${more} more` : names.join(' and ')
    const [first] = uncovered, [locus] = each.loci
    if (!first || !locus) continue
    const example = `{${each.loci.map(({symbol}, place) => `${symbol}: ${written(first, each, place)}`).join(', ')}, is: …}`
    bench.noteAbout(each)(slipOf(entry, inside(each.at, 'shows'), `no rule of ${each.id} says what ${listed} ${names.length === 1 ? 'looks' : 'look'} like${uncovered.every(({partly}) => partly) ? ' where the rules for it do not show' : ''}`,
      `add a rule for ${names.length === 1 ? 'it' : 'them'}, such as ${example}, or end with {${locus.symbol}: _/_, is: …} for all that is left`))
  }
}

/** An allele of the reference that no rule of the trait names may be none of this flock's; those that the project writes out are its own. */
function isMeant(allele: number, locus: Locus | undefined, {shows}: Trait, {records}: Linked['bench']): boolean {
  if (!locus || shows.some(({patterns}) => patterns.get(locus)?.includes(allele))) return true
  return records.locus.some(each => each.id === locus.symbol) || records.trait.some(({data}) => data.loci?.some(each => each.symbol === locus.symbol && each.alleles !== undefined))
}

const written = ({genotype}: Uncovered, {loci}: Trait, place: number): string => {
  const alleles = genotype[place], locus = loci[place]
  return alleles && locus ? writeGenotype(alleles, locus) : '_/_'
}

/** `W+/w`, and the sex where only that one is left out. */
function nameOf(one: Uncovered, trait: Trait, all: readonly Uncovered[]): string {
  const name = wordsOf(one, trait)
  const other = all.some(each => each.sex !== one.sex && wordsOf(each, trait) === name)
  return other || trait.seenIn !== null || name.includes('/-') ? name : `${name} in ${one.sex}s`
}

const wordsOf = (one: Uncovered, trait: Trait): string => trait.loci.map((_, place) => written(one, trait, place)).join(' ')
