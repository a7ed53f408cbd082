import type {Slip, Spot} from '../../records/problem.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const bird = (chance: string) => `---\nband: 24-901\nsex: male\nsire: {H-1: 60%, H-2: ${chance}}\ndam: B-2\n---\n`

export const entry: ManualEntry = {
  code: 'chances-do-not-sum', severity: 'error', title: 'Chances that make more than the whole',
  cause: 'The chances of the birds that may be a parent, or the shares of a pen’s males, make more than 100%; or a strain’s shares of the alleles of a locus make more or less.',
  remedy: 'Mend the chances so that they make 100%.',
  wrong: {'birds/24-901.md': bird('60%')},
  right: {'birds/24-901.md': bird('40%')},
}

/** A sum this near to the whole is whole: thirds are written as 33%. */
export const SLACK = 0.015

export const percentWords = (sum: number): string => `${Math.round(sum * 1000) / 10}%`

/** @param what whose chances they are, as the sentence begins; `the chances` of a parent */
export function chancesDoNotSum(at: Spot, sum: number, what = 'the chances'): Slip {
  return slipOf(entry, at, `${what} make ${percentWords(sum)}, not 100%`, 'mend them so that they make 100%')
}
