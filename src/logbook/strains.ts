/** The founding strains. */
import {nearSymbols} from '../records/near.ts'
import {inside} from '../records/problem.ts'
import type {RecordOf} from '../records/records.ts'
import type {Bench} from './bench.ts'
import type {Strain, Trait} from './book.ts'
import {directory, type Directory} from './directory.ts'
import {chancesDoNotSum, SLACK} from './inspect/chances-do-not-sum.ts'
import {kinshipTooHigh, mostKinship} from './inspect/kinship-too-high.ts'
import {unknownAllele} from './inspect/unknown-allele.ts'
import {unknownLocus} from './inspect/unknown-locus.ts'
import {unknownState} from './inspect/unknown-state.ts'
import {unknownStrain} from './inspect/unknown-strain.ts'
import type {Loci} from './loci.ts'
import type {Traits} from './traits.ts'

/** Strains by their ids, with a way to tell what each breeds true for once the traits are known (a trait knows no strain, a strain names traits). */
export interface Strains extends Directory<Strain> {
  readonly all: readonly Strain[]
  readTraits(traits: Traits): void
}

export function linkStrains(bench: Bench): Strains {
  const made = bench.records.strain.map(record => ({record, trueFor: new Map<Trait, string>()}))
  const all = made.map(({record, trueFor}) => strainOf(record, trueFor))
  for (const {id, data: {inbreeding = 0, kinship = 0}, at} of bench.records.strain) {
    if (kinship > mostKinship(inbreeding) + 1e-9) bench.note(kinshipTooHigh(inside(at, 'kinship'), `the birds of ${id}`, kinship, mostKinship(inbreeding)))
  }
  const named = all.map(strain => ({name: strain.id, thing: strain, at: strain.at}))
  return {
    ...directory(named, unknownStrain, name => bench.isFaulty(`strains/${name}.md`), bench.note),
    all,
    readTraits(traits) {
      for (const {record, trueFor} of made) {
        for (const {key, value: state, at, keyAt} of record.data['true-for'] ?? []) {
          const trait = traits.find({text: key, at: keyAt})
          if (!trait) continue
          if (trait.states.includes(state)) trueFor.set(trait, state)
          else bench.noteAbout(trait)(unknownState(trait, state, at))
        }
        noteAlleles(record, traits.loci, bench)
      }
    },
  }
}

/** Stated alleles make a whole at each locus and are its own, and the locus is one that some trait describes. */
function noteAlleles({data}: RecordOf<'strain'>, loci: Loci, bench: Bench): void {
  for (const {key, value, at, keyAt} of data.alleles ?? []) {
    const sum = value.reduce((total, allele) => total + allele.value, 0)
    if (Math.abs(sum - 1) > SLACK) bench.note(chancesDoNotSum(at, sum, `the alleles of ${key}`))
    const locus = loci.get(key)
    for (const allele of value) if (locus && !locus.alleles.includes(allele.key)) bench.note(unknownAllele(allele.key, locus, allele.keyAt))
    if (!locus && !loci.isMissed(key) && !bench.hasFaultyIn('traits/') && !bench.isFaulty(`loci/${key}.md`)) bench.note({...unknownLocus(key, keyAt, nearSymbols(key, loci.symbols)), severity: 'warning'})
  }
}

function strainOf({id, data, body, at}: RecordOf<'strain'>, trueFor: ReadonlyMap<Trait, string>): Strain {
  const {inbreeding = 0, kinship = 0} = data
  return {
    at, body, id, name: data.name, role: data.role, trueFor,
    alleles: new Map((data.alleles ?? []).map(locus => [locus.key, new Map(locus.value.map(allele => [allele.key, allele.value]))])),
    inbreeding, kinship: Math.min(kinship, mostKinship(inbreeding)),
  }
}
