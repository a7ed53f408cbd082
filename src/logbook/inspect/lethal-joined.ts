import {inside} from '../../records/problem.ts'
import {LETHAL} from '../../records/schema/loci.ts'
import type {BookLinkage, Locus} from '../book.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const trait = (lethal: string) =>
  `---\nname: Legs\nstates: [short, long]\nloci:\n  Cp: {on: autosome, alleles: [Cp, cp+]}\n  Na: {on: autosome, alleles: [Na, na+]}\nshows:\n  - ${lethal}\n  - {Cp: Cp/_, Na: _/_, is: short}\n  - {Cp: cp+/cp+, is: long}\n---\n`

export const entry: ManualEntry = {
  code: 'lethal-joined', severity: 'error', title: 'A lethal rule over loci that go their own ways',
  cause: 'A rule says that no chick of a genotype hatches, and asks it of several loci that do not lie near each other. Every lethal known in the hen’s kin is a matter of one locus, so that a slip is likely, and the chances of genotypes are not reckoned with such a rule.',
  remedy: 'Ask it of the one locus that kills, and leave the other out.',
  wrong: {'traits/legs.md': trait('{Cp: Cp/Cp, Na: Na/Na, is: lethal}')},
  right: {'traits/legs.md': trait('{Cp: Cp/Cp, is: lethal}')},
}

export function check({bench, book}: Linked): void {
  for (const trait of book.traits) {
    trait.shows.forEach(({is, patterns}, index) => {
      const apart = is === LETHAL ? apartFromFirst([...patterns.keys()], book.linkages) : []
      const [first] = patterns.keys()
      if (!first || apart.length === 0) return
      bench.noteAbout(trait)(slipOf(entry, inside(trait.at, 'shows', index), `the lethal rule joins ${first.symbol} with ${apart.map(({symbol}) => symbol).join(' and ')}, which does not lie near it`, `ask it of one locus, or say under linked how near ${apart[0]?.symbol ?? ''} lies`))
    })
  }
}

/** Those to which no chain of linkages leads from the first. */
function apartFromFirst(loci: readonly Locus[], linkages: readonly BookLinkage[]): readonly Locus[] {
  const reached = new Set(loci.slice(0, 1))
  for (const locus of reached) for (const {loci: pair} of linkages) if (pair.includes(locus)) pair.forEach(other => reached.add(other))
  return loci.filter(locus => !reached.has(locus))
}
