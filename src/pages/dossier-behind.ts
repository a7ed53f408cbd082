/**
 * What stands behind each number of the dossier. As its parts are composed, in the order they are read, each hands in the birds and the records that its numbers count, and is
 * given a reference; at the end they are listed in turn, so that every number can be followed to bands and files, on a screen by a link and on paper by [n].
 */
import type {Bird, Logbook} from '../logbook/book.ts'
import type {Spot} from '../records/problem.ts'
import {bandRuns} from './band-runs.ts'
import {figured, listWords} from './numbers.ts'
import type {Table} from './page.ts'
import {recordNames} from './record-names.ts'

export interface Behind {
  /** what it is of: `Years bred`, `Table 2, BC2` */
  readonly of: string
  readonly birds?: readonly Bird[]
  /** what is counted and wears no band: `12 chicks without a band` */
  readonly besides?: string
  readonly records: readonly Spot[]
  /** the page of the site that shows it, by its path */
  readonly page?: string | null
}

/** A reference in the text: `[7]` and the place it stands for. */
export interface Reference {
  readonly text: string
  readonly link: string
}

export interface BehindView {
  readonly id: string
  readonly number: number
  readonly of: string
  /** `26 birds: 24-001 to 24-007, …`; empty where no bird is counted */
  readonly birds: string
  readonly records: string
  readonly page: string | null
}

/** A table of the dossier with its number. */
export interface NumberedTable extends Table {
  /** `Table 4.` */
  readonly head: string
  /** `Table 4, hatch by season` */
  readonly label: string
}

export interface References {
  /** gives the reference for what is handed in; for the very same handed in again, the same */
  readonly to: (behind: Behind) => Reference
  /** the number of the next table that stands: none is missing where a book has nothing for one */
  readonly table: (title: string) => {readonly name: string; readonly head: string; readonly label: string}
  readonly listed: () => readonly BehindView[]
  /** `G-4 wore 23-020`: birds behind a number that wore another band before; null where there are none */
  readonly otherBands: () => string | null
}

export function references({tellableFiles}: Logbook): References {
  const views: BehindView[] = [], known = new Map<string, number>(), told = new Set<Bird>()
  let tables = 0
  return {
    to({of, birds = [], besides, records, page = null}) {
      const counted = birds.length === 0 ? [] : [`${figured(new Set(birds).size, 'bird')}: ${bandRuns(birds.map(({band}) => band))}`]
      const view = {of, birds: [...counted, ...(besides ? [besides] : [])].join('; '), records: recordNames(records, tellableFiles), page}
      const key = JSON.stringify(view), number = known.get(key) ?? views.length + 1
      if (!known.has(key)) {
        views.push({id: `r${number}`, number, ...view})
        known.set(key, number)
      }
      for (const bird of birds) told.add(bird)
      return {text: `[${number}]`, link: `#r${number}`}
    },
    table(title) {
      tables += 1
      const name = `Table ${tables}`
      return {name, head: `${name}.`, label: `${name}, ${title}`}
    },
    listed: () => views,
    otherBands() {
      const words = [...told].flatMap(({band, bands}) => {
        const before = [...new Set(bands.map(worn => worn.band))].filter(worn => worn !== band)
        return before.length === 0 ? [] : [`${band} wore ${listWords(before)}`]
      }).sort()
      return words.length === 0 ? null : listWords(words)
    },
  }
}

/** Chicks without a band, where there are any. */
export const besidesOf = (unbanded: number): {readonly besides?: string} => (unbanded > 0 ? {besides: `${figured(unbanded, 'chick')} without a band`} : {})
