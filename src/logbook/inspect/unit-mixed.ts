import type {Slip, Spot} from '../../records/problem.ts'
import type {Trait} from '../book.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

export const entry: ManualEntry = {
  code: 'unit-mixed', severity: 'error', title: 'One measure in two units',
  cause: 'Two traits take their values from the same column of the weigh days, but keep them in different units.',
  remedy: 'Give the traits of one measure the same unit. Amounts in the records may be written in any unit of the kind: 2.4 kg is read as 2400 g.',
  wrong: {'traits/weight-8.md': '---\nname: Weight at 8 weeks\nmeasure: weight\nunit: kg\nat: 8 weeks\n---\n'},
  right: {'traits/weight-8.md': '---\nname: Weight at 8 weeks\nmeasure: weight\nunit: g\nat: 8 weeks\n---\n'},
}

export const unitMixed = (trait: Trait, at: Spot, other: Trait): Slip =>
  slipOf(entry, at, `${trait.id} keeps the measure “${other.measure ?? ''}” in ${trait.unit ?? ''}, ${other.id} keeps it in ${other.unit ?? ''}`,
    `write unit: ${other.unit ?? ''}`, {at: other.at, note: `${other.id} stands here`})
