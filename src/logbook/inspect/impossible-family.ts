import type {Slip, Spot} from '../../records/problem.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const COMB = '---\nname: Comb\nstates: [pea, single]\ntarget: pea\nmisscoring: 1%\nloci:\n  P: {on: autosome, alleles: [P, p+]}\nshows:\n  - {P: P/_, is: pea}\n  - {P: p+/p+, is: single}\n---\n'
const chick = (comb: string) => `---\nband: 24-901\nsex: male\nhatched: 2024-05-01\nsire: H-1\ndam: H-3\ncomb: ${comb}\n---\n`

export const entry: ManualEntry = {
  code: 'impossible-family', severity: 'warning', title: 'A look that the parents cannot give, or hardly',
  cause: 'By the rules of a trait, and by everything that was scored in the flock, a chick’s parents cannot have a chick that looks like this, or so seldom that a slip is likelier; or a founder’s strain or its chicks speak against its look. Some slips come of themselves: where one score in a hundred is wrong, a flock of three hundred has about three such birds.',
  remedy: 'Look again at the bird, or strike the score out; of one that is dead see photographs or notes. If it stands, and a parent was tested, see whether the sample was of that parent. Then see whether another male of the pens, or another hen, may be the parent. Only then doubt the rule of the trait, or what is said of a strain.',
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
  /** they are several chicks of a tally */
  readonly several: boolean
  /** what speaks against the look: of a founder the strain it is said to be of, or its chicks */
  /** it died or was culled, so that nobody can look at it again */
  readonly gone: boolean
  /** parents whose tests at the trait's loci it is held against */
  readonly testedParents: readonly string[]
  readonly resting: {readonly on: 'parents' | 'chicks'} | {readonly on: 'strain'; readonly strain: string}
}

/** @param other another bird that would explain it, in words: `with B-1 as its dam all that was seen is 98 times likelier` */
export function impossibleFamily(at: Spot, {chick, several, trait, scored, instead, wrong, given, neverWrong, gone, testedParents, resting}: DoubtedLook, other: string | null, related: Slip['related'] = []): Slip {
  const [it, its] = several ? ['they', 'their'] : ['it', 'its']
  const those = resting.on === 'strain' ? `of its strain ${resting.strain} and its kin` : `of ${its} family`
  const kin = given >= 1e-4 ? `which ${given < 0.01 ? 'fewer than one in a hundred' : `${Math.round(given * 100)} in a hundred`} ${those} would be`
    : resting.on === 'strain' ? `which no bird of its strain ${resting.strain} can be` : `which ${its} family cannot give`
  const error = neverWrong ? `, though the records of ${trait} allow for no wrong score` : ''
  const holding = resting.on === 'strain' ? `what is said of ${resting.strain} is right` : resting.on === 'chicks' ? 'its chicks are as written' : `${its} parents are as written`
  const sure = wrong > 0.995, likely = instead === null ? '' : `; ${it} ${sure ? 'must be' : several ? 'are' : 'is'} ${instead}${sure ? '' : ` with ${Math.round(wrong * 100)}%`}, if ${holding}${error}`
  return slipOf(entry, at, `${chick} ${several ? 'were' : 'was'} scored ${scored} in ${trait}, ${kin}${likely}${other === null ? '' : `; ${other}`}`, remedyOf(resting, several, gone, testedParents), ...related)
}

function remedyOf(resting: DoubtedLook['resting'], several: boolean, gone: boolean, testedParents: readonly string[]): string {
  const again = gone ? `see photographs or notes of the ${several ? 'birds' : 'bird'}, and strike the score if it was wrong` : `look again at the ${several ? 'birds' : 'bird'} and strike the score if it is wrong`
  const samples = testedParents.length > 0 ? `; else see whether the sample was of ${testedParents.join(', and the other of ')}` : ''
  switch (resting.on) {
    case 'strain': return `${again}; else see whether it is of ${resting.strain}, and mend what is said of that; else mend the rule of the trait`
    case 'chicks': return `${again}; else see whether its chicks are its own; else mend the rule of the trait`
    case 'parents': return `${again}${samples}; else see who was in the pen; else mend the rule of the trait or what is said of the strains`
  }
}

/** Looks of which one must be wrong, and none is likelier wrong than right. */
export function contraryLooks(at: Spot, symbols: readonly string[], looks: readonly {readonly look: string; readonly wrong: number}[], related: NonNullable<Slip['related']>): Slip {
  const named = looks.map(({look, wrong}) => `${look} (wrong with ${Math.round(wrong * 100)}%)`)
  return slipOf(entry, at, `the looks on record contradict each other at ${symbols.join(', ')}, though no score is allowed to be wrong; likeliest to be so ${named.length === 1 ? 'is' : 'are'} ${named.join('; ')}`,
    'look again at these birds, and strike the score that is wrong; else see whether their parents are as written; else state under misscoring of the trait how often a score is wrong', ...related)
}
