/** A Vega-Lite specification, complete but for the theme, and the lists it is drawn from: never empty, so that no chart can be. */
import type {TopLevelSpec} from 'vega-lite'

export type ChartSpec = TopLevelSpec

/** A list with at least one entry. */
export type Rows<Row> = readonly [Row, ...Row[]]

/** Is there anything to draw? Where there is not, the page says so in words. */
export function hasRows<Row>(list: readonly Row[]): list is Rows<Row> {
  return list.length > 0
}

/** `map`, for lists that are never empty. */
export function mapRows<Row, Other>([first, ...rest]: Rows<Row>, change: (row: Row) => Other): Rows<Other> {
  return [change(first), ...rest.map(change)]
}

export const SCHEMA = 'https://vega.github.io/schema/vega-lite/v6.json'
