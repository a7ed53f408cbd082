/**
 * Keepers, and what of them may be told. Whoever has not agreed is keeper A, B … in order of their ids (a letter by which
 * somebody else is named is passed over), with no words, no region and no
 * file of their own in the book. Somebody who is named in the records without a record of their own is such a keeper too.
 */
import {fileName} from '../records/file-name.ts'
import {nearPlaces} from './directory.ts'
import type {Bench} from './bench.ts'
import type {Keeper} from './book.ts'
import type {NamedToCommittee} from './confidential.ts'
import type {Open} from './open.ts'
import type {Ref} from '../records/scalars.ts'
import type {Spot} from '../records/problem.ts'
import {unknownKeeper} from './inspect/unknown-keeper.ts'

export interface Keepers {
  /** the keeper a reference names by id or by how they sign; one without a record is taken in as somebody unnamed */
  find(ref: Ref): Keeper
  /** all of them, once every record has been linked: those without a record last. Gives the unnamed their letters. */
  finish(): readonly Keeper[]
  /** what those without a record are called in the records */
  strangers(): readonly string[]
  /** of those who agreed to be named to the committee alone: kept beside the book, never in it */
  readonly forCommittee: ReadonlyMap<Keeper, NamedToCommittee>
}

export function linkKeepers(bench: Bench): Keepers {
  const byName = new Map<string, Open<Keeper>>()
  const places = new Map<string, Spot>()
  const all: Open<Keeper>[] = []
  const strangers = new Map<string, Open<Keeper>>()
  const forCommittee = new Map<Keeper, NamedToCommittee>()
  const records = [...bench.records.keeper].sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0))
  for (const {id, data, body, at} of records) {
    const consents = data.consent?.given ?? false
    const keeper: Open<Keeper> = consents
      ? {at, body, id, name: data.name, consents, since: data.since ?? null, region: data.region ?? null}
      : {...unnamed(), since: data.since ?? null}
    all.push(keeper)
    if (!consents && data['consent-committee']?.given === true) forCommittee.set(keeper, {name: data.name, region: data.region ?? null})
    byName.set(id, keeper)
    places.set(id, at)
  }
  records.forEach(({data, at}, index) => {
    for (const short of data['signs-as'] ?? []) {
      const keeper = all[index]
      if (!keeper || byName.has(short)) continue
      byName.set(short, keeper)
      places.set(short, at)
    }
  })
  return {
    find(ref) {
      const known = byName.get(ref.text) ?? strangers.get(ref.text)
      if (known) return known
      const stranger = unnamed()
      strangers.set(ref.text, stranger)
      if (!bench.hasFaultyIn('keepers/')) bench.note(unknownKeeper(ref, nearPlaces(ref.text, places)))
      return stranger
    },
    finish() {
      const others = [...strangers].sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0)).map(([, keeper]) => keeper)
      const everybody = [...all, ...others]
      const named = everybody.filter(keeper => keeper.consents)
      const taken = new Set(named.flatMap(({id, name}) => [plain(id), plain(name)]))
      let index = 0
      for (const keeper of everybody) {
        if (keeper.consents) continue
        while (taken.has(`keeper-${lettersOf(index)}`)) index++
        const letters = lettersOf(index++)
        keeper.id = `keeper-${letters}`
        keeper.name = `keeper ${letters.toUpperCase()}`
      }
      return everybody
    },
    strangers: () => [...strangers.keys()],
    forCommittee,
  }
}

/** Nothing that leads back to a person: not even the file's name. */
function unnamed(): Open<Keeper> {
  return {at: {file: 'keepers', path: []}, body: '', id: '', name: '', consents: false, since: null, region: null}
}

/** As the name of a page, which is one file with another that differs only in capital letters. */
const plain = (name: string): string => fileName(name).toLowerCase()

/** 0 → a, 25 → z, 26 → aa */
function lettersOf(index: number): string {
  const before = Math.floor(index / 26)
  return `${before > 0 ? lettersOf(before - 1) : ''}${String.fromCharCode(97 + (index % 26))}`
}
