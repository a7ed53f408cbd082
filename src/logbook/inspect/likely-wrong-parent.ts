import type {Slip, Spot} from '../../records/problem.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const COMB = '---\nname: Comb\nstates: [pea, single]\ntarget: pea\nloci:\n  P: {on: autosome, alleles: [P, p+]}\nshows:\n  - {P: P/_, is: pea}\n  - {P: p+/p+, is: single}\n---\n'
const chick = (dam: string) => `---\nband: 24-901\nsex: male\nhatched: 2024-05-01\nsire: H-1\ndam: ${dam}\ncomb: pea\n---\n`

export const entry: ManualEntry = {
  code: 'likely-wrong-parent', severity: 'warning', title: 'A parent that the looks of the chick speak against',
  cause: 'What was seen of a chick and of its kin is at least two hundred times likelier if another bird that stood near had it than with the parents as written: more than a wrong score explains. Or a sire or dam that the records gave four chances in five or more is left with one in twenty or less.',
  remedy: 'See which birds were in the pen when the egg was laid, and whether bands were mixed up; then write the parent that it was, or that it is unknown. If the parents are right, look again at the chick; of one that is dead see photographs or notes.',
  wrong: {'traits/comb.md': COMB, 'birds/24-901.md': chick('H-3')},
  right: {'traits/comb.md': COMB, 'birds/24-901.md': chick('B-1')},
}

const timesWords = (times: number): string => (times >= 1000 ? 'more than a thousand' : String(Math.round(times)))

const again = (gone: boolean): string => (gone ? 'see photographs or notes of the chick, and strike the score if it was wrong' : 'look again at the chick')

/**
 * @param chick `24-901`, `3 chicks of hatch 2024-03`
 * @param times null where as written it cannot be at all
 * @param gone the chick died or was culled
 */
export function likelyWrongParent(at: Spot, {chick, gone}: {readonly chick: string; readonly gone: boolean}, looks: string, {band, role, times}: {readonly band: string; readonly role: 'sire' | 'dam'; readonly times: number | null}, related: Slip['related'] = []): Slip {
  const how = times === null ? `as written it cannot be, with ${band} as its ${role} it can` : `with ${band} as its ${role} all that was seen is ${timesWords(times)} times likelier than as written`
  return slipOf(entry, at, `${chick} (${looks}) hardly comes of the parents written: ${how}`, `see whether ${band} may be the ${role}; if not, ${again(gone)}`, ...related)
}

/** A parent in doubt, given the most chances, of whom the looks leave little. */
export function unlikelyParent(at: Spot, {chick, gone}: {readonly chick: string; readonly gone: boolean}, role: 'sire' | 'dam', written: {readonly band: string; readonly recorded: number; readonly now: number}, likeliest: string, related: Slip['related'] = []): Slip {
  const percent = (chance: number): string => (chance < 0.005 ? 'less than 1%' : `${Math.round(chance * 100)}%`)
  return slipOf(entry, at, `${written.band} is written as the ${role} of ${chick} with ${percent(written.recorded)}; by the looks of them all it is ${percent(written.now)}, and the likeliest is ${likeliest}`,
    `see whether ${likeliest} may be the ${role}; if not, ${again(gone)}`, ...related)
}
