/** What records say of loci: their alleles, what lies near them, and which genotypes look like what. */
import {chance, text} from '../scalars.ts'
import {byForm, listOf, mapOf, object, oneOf, optional, refuse, required, scalar, turned, type Shape} from '../shape.ts'
import {inside, type Spot} from '../problem.ts'

export const PLACES = ['autosome', 'Z'] as const
export type PlaceWord = (typeof PLACES)[number]

/** The word of a rule for a genotype of which no chick hatches. */
export const LETHAL = 'lethal'

const allele = scalar('an allele such as P or p+', words => {
  const name = words.trim()
  if (name === '') return undefined
  return /^[_-]$|[/\s]/.test(name) ? refuse('unreadable-value', `“${name}” cannot name an allele`, 'write a name without a stroke or a space; _ stands for any allele, - for a hen’s missing one') : name
})

const listed = listOf(allele)

/** Two alleles or more, each once. */
export const alleles: Shape<readonly string[]> = {
  ...listed,
  read(raw, at, note) {
    const read = listed.read(raw, at, note)
    if (read === undefined) return undefined
    const again = read.findIndex((name, index) => read.indexOf(name) < index)
    if (again >= 0) note({code: 'unreadable-value', severity: 'error', at: inside(at, again), reason: `the allele ${read[again] ?? ''} stands here twice`, remedy: 'name each allele once; capitals tell them apart'})
    return again >= 0 ? undefined : read
  },
}

export interface LinkRead {
  readonly recombination: number
  readonly doubt: string | undefined
}

/** `{O: 4%}` or `{O: {recombination: 4%, doubt: from a table of hobbyists}}`. */
export const linked = mapOf('loci near it with the share of gametes that cross over between the two, such as {O: 4%}', byForm({
  text: turned(chance, (recombination): LinkRead => ({recombination, doubt: undefined})),
  map: turned(object('a neighbour', {
    recombination: required(chance, 'The share of gametes that cross over between the two: 50% for loci that go their own ways.'),
    doubt: optional(text('a sentence'), 'Why the share is not to be relied on.'),
  }), ({recombination, doubt}): LinkRead => ({recombination, doubt})),
}))

export const rules = listOf(object('a rule', {
  is: required(text('a state, or lethal'), 'What such a bird looks like; `lethal` where none hatches.'),
  penetrance: optional(chance, 'The share of such birds that show it; of the rest the next rule that fits holds. All of them when not given.'),
  sex: optional(oneOf(['male', 'female']), 'The only sex that the rule holds for.'),
}, {others: 'a locus with a genotype such as P/_'}))

/** A locus as a trait names it: by its symbol alone, or with what is to hold here. */
export interface LocusNamed {
  readonly symbol: string
  readonly on: PlaceWord | undefined
  readonly alleles: readonly string[] | undefined
  readonly linked: readonly {readonly key: string; readonly value: LinkRead; readonly at: Spot; readonly keyAt: Spot}[]
  /** where its symbol stands */
  readonly keyAt: Spot
  /** where what is said of it stands */
  readonly at: Spot
}

const bare = turned(text('a symbol such as P'), (symbol, at): LocusNamed => ({symbol, on: undefined, alleles: undefined, linked: [], keyAt: at, at}))

/** `[R, P]` from the reference, or `{P: {on: autosome, alleles: [P, p+]}}` written out; in the written form `{}` leaves all to the reference. */
export const traitLoci: Shape<readonly LocusNamed[]> = byForm({
  text: listOf(bare),
  list: listOf(bare),
  map: turned(
    mapOf('symbols with where they lie', object('a locus', {
      on: optional(oneOf(PLACES), 'Where it lies; as the reference has it when not given.'),
      alleles: optional(alleles, 'Its alleles; as the reference has them when not given.'),
      linked: optional(linked, 'Loci near it.'),
    })),
    entries => entries.map(({key, value, keyAt, at}): LocusNamed => ({symbol: key, on: value.on, alleles: value.alleles, linked: value.linked ?? [], keyAt, at})),
  ),
})
