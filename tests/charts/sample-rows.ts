/** Small lists for the chart tests; invented. */
import type {Rows} from '../../src/charts/chart-spec.ts'
import type {ShareRow} from '../../src/charts/share-by-step.ts'

export const shareRows: Rows<ShareRow> = [
  {label: 'F1', count: 24, total: 24, expected: 1},
  {label: 'BC1', count: 19, total: 41, expected: 0.5},
  {label: 'BC3F2', count: 0, total: 7, expected: null},
]

export const words = {id: 'figure-1', title: 'Pea comb by step', description: 'All of 24 in F1, 19 of 41 in BC1, none of 7 in BC3F2.'}

/** How often a pattern stands in a drawing. */
export const times = (text: string, what: RegExp): number => [...text.matchAll(new RegExp(what, 'g'))].length
