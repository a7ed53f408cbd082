import type {Slip, Spot} from '../../records/problem.ts'
import {percentWords} from './chances-do-not-sum.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const bird = (chances: string) => `---\nband: 24-901\nsex: male\nsire: {${chances}}\ndam: B-2\n---\n`

export const entry: ManualEntry = {
  code: 'chances-wanting', severity: 'warning', title: 'Chances that leave something over',
  cause: 'The chances of the birds that may be a parent, or the shares of a pen’s males, make less than 100%. What is wanting counts as a bird from outside the book, kin to none.',
  remedy: 'Mend the chances; or write unknown with what is left, so that it is seen to be meant.',
  wrong: {'birds/24-901.md': bird('H-1: 60%, H-2: 20%')},
  right: {'birds/24-901.md': bird('H-1: 60%, H-2: 20%, unknown: 20%')},
}

/** @param what whose chances they are, as the sentence begins */
export function chancesWanting(at: Spot, sum: number, what = 'the chances'): Slip {
  const left = percentWords(1 - sum)
  return slipOf(entry, at, `${what} make ${percentWords(sum)}; the other ${left} count as a bird from outside the book`,
    what === 'the chances' ? `mend them, or add unknown: ${left} if that is so` : 'mend them so that they make 100%, if one of these it must be')
}
