import type {Bench} from './bench.ts'

/** Is it not known which drafts there are, since one could not be read, or two have one number? Then a draft or clause that is missed is no second fault. */
export function draftsInDoubt({records, hasFaultyIn}: Pick<Bench, 'records' | 'hasFaultyIn'>): boolean {
  const numbers = records.draft.map(({data}) => data.draft)
  return hasFaultyIn('standard/') || new Set(numbers).size < numbers.length
}
