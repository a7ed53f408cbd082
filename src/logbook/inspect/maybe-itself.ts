import type {Slip, Spot} from '../../records/problem.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const found = (maybe: string) => `---\nband: X-1\nsex: female\nmaybe: [${maybe}]\n---\n`

export const entry: ManualEntry = {
  code: 'maybe-itself', severity: 'error', title: 'A bird that may be itself',
  cause: 'A bird found without its band is said to be perhaps the very bird whose record this is.',
  remedy: 'Name the birds of the book that it may be; where it is known which one, write same-as instead.',
  wrong: {'birds/X-1.md': found('X-1, B-1')},
  right: {'birds/X-1.md': found('B-3, B-1')},
}

export const maybeItself = (band: string, at: Spot): Slip =>
  slipOf(entry, at, `${band} is said to be perhaps itself`, 'name the other birds that it may be, or write same-as: where it is known which')
