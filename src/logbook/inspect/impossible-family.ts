import type {Slip, Spot} from '../../records/problem.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const COMB = '---\nname: Comb\nstates: [pea, single]\ntarget: pea\nmisscoring: 1%\nloci:\n  P: {on: autosome, alleles: [P, p+]}\nshows:\n  - {P: P/_, is: pea}\n  - {P: p+/p+, is: single}\n---\n'
const chick = (comb: string) => `---\nband: 24-901\nsex: male\nhatched: 2024-05-01\nsire: H-1\ndam: H-3\ncomb: ${comb}\n---\n`

export const entry: ManualEntry = {
  code: 'impossible-family', severity: 'warning', title: 'A look that the parents cannot give, or hardly',
  cause: 'By the rules of a trait, and by everything that was scored in the flock, a chick’s parents cannot have a chick that looks like this, or so seldom that a slip is likelier. Some slips come of themselves: where one score in a hundred is wrong, a flock of three hundred has about three such birds.',
  remedy: 'Look again at the bird, or strike the score out. If it stands, see whether another male of the pens, or another hen, may be the parent. Only then doubt the rule of the trait.',
  wrong: {'traits/comb.md': COMB, 'birds/24-901.md': chick('pea')},
  right: {'traits/comb.md': COMB, 'birds/24-901.md': chick('single')},
}

export interface DoubtedLook {
  /** `24-901`, `3 chicks of hatch 2024-03` */
  readonly chick: string
  readonly trait: string
  readonly scored: string
  /** the look it most likely has; null where that is the one scored */
  readonly instead: string | null
  /** chance that the score is wrong */
  readonly wrong: number
  /** of birds of its kin, the share that has the look */
  readonly given: number
  /** the records of the trait allow for no wrong score */
  readonly neverWrong: boolean
}

/** @param instead another bird that would explain it, in words: `with B-1 as its dam all that was seen is 98 times likelier` */
export function impossibleFamily(at: Spot, {chick, trait, scored, instead, wrong, given, neverWrong}: DoubtedLook, other: string | null, related: Slip['related'] = []): Slip {
  const kin = given < 1e-4 ? 'which its family cannot give' : `which ${given < 0.01 ? 'fewer than one in a hundred' : `${Math.round(given * 100)} in a hundred`} of its family would be`
  const error = neverWrong ? `, though the records of ${trait} allow for no wrong score` : ''
  const likely = instead === null ? '' : `; ${wrong > 0.995 ? 'it must be' : `it is ${instead} with ${Math.round(wrong * 100)}%`}${wrong > 0.995 ? ` ${instead}` : ''}, if its parents are as written${error}`
  return slipOf(entry, at, `${chick} was scored ${scored} in ${trait}, ${kin}${likely}${other === null ? '' : `; ${other}`}`,
    'look again at the bird and strike the score if it is wrong; else see who was in the pen; else mend the rule of the trait', ...related)
}
