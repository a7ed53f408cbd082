/** What DNA tests found of a bird: of several records that name a locus the last goes before the others. */
import type {GenotypePattern} from '../heredity/genotype-notation.ts'
import {nearSymbols} from '../records/near.ts'
import type {Bench} from './bench.ts'
import type {Locus} from './book.ts'
import {unknownLocus} from './inspect/unknown-locus.ts'
import type {Loci} from './loci.ts'
import {readPattern} from './read-pattern.ts'
import type {Telling} from './tellings.ts'

export function testedOf(tellings: readonly Telling[], loci: Loci, bench: Bench): ReadonlyMap<Locus, GenotypePattern> {
  const tests = tellings.flatMap(({told: {tested}}) => tested ?? [])
  if (tests.length === 0) return NONE
  return new Map(tests.flatMap(({key, value, at, keyAt}) => {
    const locus = loci.get(key)
    if (!locus) {
      if (!loci.isMissed(key) && !bench.hasFaultyIn('traits/') && !bench.isFaulty(`loci/${key}.md`)) bench.note(unknownLocus(key, keyAt, nearSymbols(key, loci.symbols)))
      return []
    }
    const pattern = readPattern(value, locus, at, bench.note)
    return pattern ? [[locus, pattern] as const] : []
  }))
}

const NONE: ReadonlyMap<Locus, GenotypePattern> = new Map()
