/** Helpers that only look at the values they are given: comparisons, optional parameters, the odd questions of our partials. No figure is worked here. */
import type {Cell, Table} from '../pages/page.ts'
import {eggShape} from '../charts/egg.ts'

interface Plate {
  readonly file: string
  readonly alt: string | null
  readonly caption?: string | null
}

/** A list as it comes, or what a partial's own parameters have made of it: an object with the list's positions as keys. */
function platesOf(list: readonly Plate[] | Readonly<Record<string, unknown>>): readonly Plate[] {
  if (Array.isArray(list)) return list as readonly Plate[]
  if ('pictures' in list) return list.pictures as readonly Plate[]
  return Object.entries(list).filter(([key]) => /^\d+$/.test(key)).map(([, plate]) => plate as Plate)
}

/** So many columns from the left the stylesheet sets as numbers at a word on their table: `.n1` to `.n12`. */
const NUMBERED = 12

export const valueHelpers = {
  eq: (one: unknown, other: unknown): boolean => one === other,

  /** a parameter or field that may be left out: `{{optional "caption"}}` */
  optional(this: unknown, name: string): unknown {
    return this !== null && typeof this === 'object' && name in this ? ((this as Record<string, unknown>)[name] ?? '') : ''
  },

  eggShape: (): string => eggShape,
  isNumberValue: (value: unknown): boolean => typeof value === 'number',

  /** from five columns a table scrolls on a phone */
  many: (columns: readonly unknown[]): boolean => columns.length >= 5,
  /** must this cell itself say that it is a number? */
  isNumber: (columns: Table['columns'], index: number): boolean => columns[index]?.number === true && index >= NUMBERED,
  /** a sentence in pieces: those with figures on both sides of a hyphen or dash, as bands and ranges are, must not be broken */
  whole: (text: string): readonly {readonly text: string; readonly band: boolean}[] =>
    text.split(/([A-Za-z]*\d[\w./]*(?:[-–]\w*\d\w*(?:\.\d+)?)+)/).map((piece, place) => ({text: piece, band: place % 2 === 1})).filter(({text: piece}) => piece !== ''),

  /** one word with a number in it is a band or an id, and never broken; a name may be */
  isBand: (text: string): boolean => /^\S*\d\S*$/.test(text),
  cellText: (cell: Cell): string => (typeof cell === 'string' ? cell : cell.text),
  tableLabel: (table: Table): string => table.caption ?? `Table: ${table.columns.map(column => column.head).filter(head => head !== '').join(', ')}`,
  /** `wide n2 n4`: the second column and the fourth are numbers, said once and not in every cell */
  tableClass: (wide: unknown, sortable: unknown, columns: Table['columns'], look?: unknown): string => [
    ...(wide === true ? ['wide'] : []), ...(sortable === true ? ['sortable'] : []), ...columns.flatMap(({number}, index) => (number === true && index < NUMBERED ? [`n${index + 1}`] : [])),
    ...(typeof look === 'string' && look !== '' ? [look] : []),
  ].join(' '),
  /** `Figure 1.` → `Figure 1 as a table` */
  tableTitle: (head: string): string => `${head.replace(/[.:]$/, '')} as a table`,

  platesOf: (list: readonly Plate[]) => platesOf(list).map(plate => ({file: plate.file, alt: plate.alt ?? ''})),
  plateHeadOrCaption(list: readonly Plate[] & {readonly head?: string; readonly caption?: string}): boolean {
    return (list.head ?? '') !== '' || valueHelpers.plateCaption(list) !== ''
  },
  plateCaption(list: readonly Plate[] & {readonly caption?: string}): string {
    if (typeof list.caption === 'string' && list.caption !== '') return list.caption
    return platesOf(list).map(plate => plate.caption ?? '').filter(caption => caption !== '').join(' ')
  },
}
