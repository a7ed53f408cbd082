/**
 * What stands behind each number of the dossier. As its parts are composed each hands in the birds and the records that its numbers count, and is given
 * a reference; at the end they are listed in turn, so that every number can be followed to bands and files, on a screen by a link and on paper by [n].
 */
import type {Bird, Logbook} from '../logbook/book.ts'
import type {Spot} from '../records/problem.ts'
import {bandRuns} from './band-runs.ts'
import {figured} from './numbers.ts'
import {recordNames} from './record-names.ts'

export interface Behind {
  /** what it is of: `Years bred`, `Table 1, BC2` */
  readonly of: string
  readonly birds?: readonly Bird[]
  /** what is counted and wears no band: `12 unbanded chicks` */
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

export interface References {
  /** gives the reference for what is handed in; of what was handed in before in the same words, the same */
  readonly to: (behind: Behind) => Reference
  readonly listed: () => readonly BehindView[]
}

export function references({tellableFiles}: Logbook): References {
  const views: BehindView[] = [], known = new Map<string, number>()
  const add = ({of, birds = [], besides, records, page}: Behind): number => {
    const number = views.length + 1
    const counted = birds.length === 0 ? [] : [`${figured(new Set(birds).size, 'bird')}: ${bandRuns(birds.map(({band}) => band))}`]
    views.push({id: `r${number}`, number, of, birds: [...counted, ...(besides ? [besides] : [])].join('; '), records: recordNames(records, tellableFiles), page: page ?? null})
    known.set(of, number)
    return number
  }
  return {
    to(behind) {
      const number = known.get(behind.of) ?? add(behind)
      return {text: `[${number}]`, link: `#r${number}`}
    },
    listed: () => views,
  }
}
