/** The table of keys follows the reading itself: a requirement that notes what is asked of it is handed to each kind, over books that hold much and little. */
import {describe, expect, it} from 'vitest'
import {evidence} from '../../src/findings/evidence.ts'
import {study} from '../../src/findings/study.ts'
import {ASKED_KEYS, KEYS_READ, type AskedKey} from '../../src/logbook/asked-keys.ts'
import {REQUIREMENT_KINDS, type Logbook, type Requirement, type RequirementKind} from '../../src/logbook/book.ts'
import {gapsBook} from '../findings/gaps-book.ts'
import {date, logbook, smallBook, weight} from '../pages/small-logbook.ts'
import {plainRequirement} from '../paper-parts.ts'

const KEYS = new Map(Object.entries(ASKED_KEYS).map(([key, property]) => [property as string, key as AskedKey]))

const ASKED: readonly Partial<Requirement>[] = [
  {}, {atLeast: 2, within: 400}, {atMost: 0.1, trait: weight, males: 2, females: 2, seasons: 2, perClass: 1, judges: 1, exhibitors: 1, shows: 1, insideAtLeast: 0.7, rateAtMost: 0.01, sizeAtLeast: 20, maleLines: 2},
  {judgedOn: 'cautious', clauses: ['male/comb'], sections: ['male'], grades: ['good'], leastGrade: 'good', toAge: 56, atLeast: 0.5, from: date('2020')},
]

/** The keys that were read of a requirement of the kind. */
function keysRead(kind: RequirementKind, books: readonly Logbook[]): readonly AskedKey[] {
  const read = new Set<AskedKey>()
  for (const book of books) {
    for (const more of ASKED) {
      const noting = new Proxy(plainRequirement(kind, more), {
        get(requirement, property) {
          const key = KEYS.get(String(property))
          if (key !== undefined) read.add(key)
          return requirement[property as keyof Requirement]
        },
      })
      const asking = {...book, requirements: {at: noting.at, body: '', association: null, items: [noting], papers: book.requirements?.papers ?? [], distinctness: book.requirements?.distinctness ?? null}}
      evidence(asking, study(asking))
    }
  }
  return [...read].sort()
}

describe('KEYS_READ', () => {
  const books = [gapsBook(['kind: history']), smallBook(), logbook('2024-01-01')]
  it.each(REQUIREMENT_KINDS)('%s reads what the table says, no more and no less', kind => expect(keysRead(kind, books)).toEqual([...KEYS_READ[kind]].sort()))
})
