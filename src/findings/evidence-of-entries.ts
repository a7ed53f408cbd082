import type {Requirement} from '../logbook/book.ts'
import {isAbout} from './asked-about.ts'
import {behind, type Aged, type Behind} from './evidence-found.ts'
import type {Sources} from './evidence-shown.ts'
import {siftByDay} from './evidence-window.ts'
import type {ShowResult} from './show-results.ts'

/** Entries that a requirement is about. */
export interface EntriesAsked {
  /** oldest show first, disqualified ones too */
  readonly entries: readonly ShowResult[]
  /** of which the records do not tell whether it is about them, as their class, age or variety is not known */
  readonly untold: readonly ShowResult[]
  /** entries of birds of a pure strain counted in it, which are not of the breed */
  readonly aged: Aged
}

/** The entries of the breed at shows that were held, of the days, classes, ages and varieties asked about. @param classes  where others than the requirement names are asked about */
export function entriesAsked(asked: Requirement, {book, shows}: Sources, classes = asked.classes): EntriesAsked {
  const {ages, varieties} = asked
  const all = shows.shows.flatMap(({show}) => show.entries.map(entry => ({show, entry})))
  const {counted, aged} = siftByDay(all, ({show}) => show.on, ({entry}) => entry.at, asked, book.asOf)
  const own = counted.filter(({entry}) => entry.bird.step.kind !== 'strain')
  const told = own.map(result => ({result, about: isAbout({classes, ages, varieties}, result.entry.bird, result.show.on.first, book, result.entry.class)}))
  return {entries: told.filter(({about}) => about === true).map(({result}) => result), untold: told.filter(({about}) => about === null).map(({result}) => result), aged: {...aged, pure: counted.length - own.length}}
}

/** Without the disqualified, which stood for nothing. */
export const standing = (entries: readonly ShowResult[]): readonly ShowResult[] => entries.filter(({entry}) => !entry.disqualified)

/** The birds and entries counted, with the day of the latest show. */
export const behindEntries = (entries: readonly ShowResult[]): Behind => behind(entries.map(({entry}) => entry.bird), entries.map(({entry}) => entry), entries.map(({show}) => show.on.last))
