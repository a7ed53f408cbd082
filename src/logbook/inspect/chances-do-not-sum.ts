import type {Slip, Spot} from '../../records/problem.ts'
import {slipOf, type ManualEntry} from './rule.ts'

const bird = (chance: string) => `---\nband: 24-901\nsex: male\nsire: {H-1: 60%, H-2: ${chance}}\ndam: B-2\n---\n`

export const entry: ManualEntry = {
  code: 'chances-do-not-sum', severity: 'error', title: 'Chances that do not make a whole',
  cause: 'The chances of the birds that may be a parent make less or more than 100%.',
  remedy: 'Mend the chances so that they make 100%. What may be a bird outside the book is written as unknown: 20%.',
  wrong: {'birds/24-901.md': bird('50%')},
  right: {'birds/24-901.md': bird('40%')},
}

export function chancesDoNotSum(at: Spot, sum: number): Slip {
  const percent = Math.round(sum * 1000) / 10
  return slipOf(entry, at, `the chances make ${percent}%, not 100%`, sum < 1 ? 'mend them, or add unknown: with what is wanting, for a bird outside the book' : 'mend them so that they make 100%')
}
