import type {Slip, Spot} from '../../records/problem.ts'
import type {Ref} from '../../records/scalars.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const chick = (dam: string) => `---\nband: 24-901\nsex: male\nhatched: 2024-05-01\nsire: H-1\ndam: ${dam}\n---\n`

export const entry: ManualEntry = {
  code: 'none-at-keeper', severity: 'warning', title: 'A parent of a keeper who had none',
  cause: 'A sire or dam is any bird that a keeper had when the egg was laid, but no grown bird of that sex is known to have stood there then, or nobody knows when the egg was laid. The parent counts as unknown.',
  remedy: 'Write the day the chick hatched, mend the keeper’s name, or write where the birds were kept: keeper in their records or in the pen’s.',
  wrong: {'keepers/ternhouse.md': '---\nname: The keeper at Ternhouse\nconsent: 2020-01-15\n---\n', 'birds/24-901.md': chick('{keeper: ternhouse}')},
  right: {'birds/24-901.md': chick('{keeper: kelpgarth}')},
}

export function noneAtKeeper(at: Spot, keeper: Ref, as: 'male' | 'female', dayKnown: boolean): Slip {
  const sex = as === 'male' ? 'grown male' : 'grown hen'
  return slipOf(entry, at,
    dayKnown ? `no ${sex} is known to have stood with ${keeper.text} when the egg was laid` : `nobody knows when the egg was laid, and so which ${sex} of ${keeper.text} it may be of`,
    dayKnown ? 'mend the keeper’s name, or write keeper: in the records of the birds or the pen' : 'write the day the chick hatched')
}
