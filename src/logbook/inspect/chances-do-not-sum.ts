import type {Slip, Spot} from '../../records/problem.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const bird = (chance: string) => `---\nband: 24-901\nsex: male\nsire: {H-1: 60%, H-2: ${chance}}\ndam: B-2\n---\n`

export const entry: ManualEntry = {
  code: 'chances-do-not-sum', severity: 'error', title: 'Chances that do not make a whole',
  cause: 'The chances of the birds that may be a parent, the shares of a pen’s males, or a strain’s shares of the alleles of a locus make less or more than 100%.',
  remedy: 'Mend the chances so that they make 100%. What may be a bird outside the book is written as unknown: 20%.',
  wrong: {'birds/24-901.md': bird('50%')},
  right: {'birds/24-901.md': bird('40%')},
}

/** A sum this near to the whole is whole: thirds are written as 33%. */
export const SLACK = 0.015

const inPercent = (sum: number): string => `${Math.round(sum * 1000) / 10}%`

/** @param what whose chances they are, as the sentence begins; `the chances` of a parent */
export function chancesDoNotSum(at: Spot, sum: number, what = 'the chances'): Slip {
  const wanting = sum < 1 && what === 'the chances'
  return slipOf(entry, at, `${what} make ${inPercent(sum)}, not 100%`, wanting ? 'mend them, or add unknown: with what is wanting, for a bird outside the book' : 'mend them so that they make 100%')
}
