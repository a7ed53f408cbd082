import {LETHAL} from '../../records/schema/loci.ts'
import {inside} from '../../records/problem.ts'
import {matches} from '../../heredity/genotype-notation.ts'
import {alleleShares} from '../allele-shares.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const LEG = '---\nname: Leg\nstates: [short, long]\nloci:\n  Cp: {on: autosome, alleles: [Cp, cp+]}\nshows:\n  - {Cp: Cp/Cp, is: lethal}\n  - {Cp: Cp/_, is: short}\n  - {Cp: cp+/cp+, is: long}\n---\n'
const strain = (alleles: string) => `---\nname: Fell Buff\nrole: donor\nalleles: {Cp: {${alleles}}}\n---\n`

export const entry: ManualEntry = {
  code: 'lethal-fixed', severity: 'error', title: 'A strain of which no chick could hatch',
  cause: 'A strain has one allele alone at a locus, and the rules of a trait say that birds with two of it never hatch.',
  remedy: 'State the alleles as they are: of birds with one lethal allele at most half of the strain’s alleles are of that kind.',
  wrong: {'traits/leg.md': LEG, 'strains/fell-buff.md': strain('Cp: 100%')},
  right: {'traits/leg.md': LEG, 'strains/fell-buff.md': strain('Cp: 30%, cp+: 70%')},
}

export function check({bench, book}: Linked): void {
  for (const strain of book.strains) {
    for (const trait of book.traits) {
      for (const {patterns, is, penetrance} of trait.shows) {
        const [named, ...more] = patterns, [locus, pattern] = named ?? []
        if (is !== LETHAL || penetrance < 1 || !locus || !pattern || more.length > 0) continue
        const only = alleleShares(strain, locus).shares.findIndex(share => share >= 1 - 1e-12)
        if (only < 0 || !matches(pattern, [only, only])) continue
        const {alleles} = locus, name = alleles[only] ?? '', other = alleles.find((_, allele) => allele !== only) ?? ''
        const at = strain.alleles.has(locus.symbol) ? inside(strain.at, 'alleles', locus.symbol) : inside(strain.at, 'true-for')
        bench.noteAbout(trait)(slipOf(entry, at, `${strain.id} has no other allele than ${name} at ${locus.symbol}, and ${name}/${name} never hatches`, `state its alleles as they are, such as {${locus.symbol}: {${name}: 40%, ${other}: 60%}}`))
      }
    }
  }
}
