import {near, orNear} from '../../records/near.ts'
import {inside} from '../../records/problem.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const asked = (name: string) => `---\nrequirements:\n  - {kind: shown-per-class, title: Shown in every class, asked: Two of each class, per-class: 2, classes: [cock, ${name}]}\n---\n`

export const entry: ManualEntry = {
  code: 'class-unknown', severity: 'warning', title: 'A class that nobody shows or weighs birds in',
  cause: 'A requirement is about a class that is none of cock, cockerel, hen and pullet, has no weight in the latest draft of the standard, and that no bird was shown in. No bird will ever stand in it.',
  remedy: 'Write the class as the shows or the standard name it.',
  wrong: {'requirements.md': asked('pulet')},
  right: {'requirements.md': asked('pullet')},
}

/** The words that classes of grown and young birds of either sex go by. Common practice, no source. */
const WORDS = ['cock', 'cockerel', 'hen', 'pullet'] as const
const HAS_WORD = /\b(?:cock|cockerel|hen|pullet)s?\b/i

const plain = (name: string): string => name.trim().toLowerCase()

export function check({bench, book}: Linked): void {
  const shown = book.shows.flatMap(({entries}) => entries.flatMap(({class: name}) => name ?? [])), weighed = book.drafts.at(-1)?.weights.map(weight => weight.class) ?? []
  const isKnown = (name: string): boolean => HAS_WORD.test(name) || weighed.some(each => plain(each) === plain(name)) || shown.some(each => plain(each).includes(plain(name)))
  for (const {classes, at} of book.requirements?.items ?? []) {
    classes.forEach((name, index) => {
      const likely = isKnown(name) ? [] : near(name, [...new Set([...WORDS, ...weighed, ...shown])])
      // of other fowl the words are many, and before the first show nobody wrote one down
      if (isKnown(name) || (likely.length === 0 && book.project.species !== 'chicken')) return
      bench.note(slipOf(entry, inside(at, 'classes', index), `no bird can stand in a class ${name}`, orNear(likely, 'write cock, cockerel, hen or pullet, or a class as the shows name it')))
    })
  }
}
