/** Which chicks of some hatches are of one step, where others hatched beside them; and how sure their descent is. */
import type {Chicks, Hatch, Strain} from '../logbook/book.ts'
import {figured, listWords, percent, percentSign} from './numbers.ts'

/** Bands named at most; more are counted only. */
const NAMED = 6

/** `1 of their 15 chicks is of BC1: 24-031`; null where all are, or none that is known. */
export function ofStepWords(hatches: readonly Hatch[], label: string): string | null {
  let own = 0, all = 0
  const bands: string[] = []
  for (const hatch of hatches) {
    const listed = [...hatch.chicks, ...hatch.tallies]
    all += listed.reduce((sum, {count}) => sum + count, hatch.unlisted)
    own += listed.reduce((sum, {count, step}) => sum + (step.label === label ? count : 0), hatch.step.label === label ? hatch.unlisted : 0)
    bands.push(...hatch.chicks.filter(({step}) => step.label === label).map(({band}) => band))
  }
  if (own === all || own === 0) return null
  const named = bands.length === own && own <= NAMED ? `: ${listWords(bands)}` : ''
  return `${own} of ${hatches.length === 1 ? 'its' : 'their'} ${figured(all, 'chick')} ${own === 1 ? 'is' : 'are'} of ${label}${named}`
}

/** The shares of a strain that a chick may have, by which of the possible pairs had it, rounded as they are shown; one where all agree. */
function possibleShares({parentage: {pairs, outside}}: Pick<Chicks, 'parentage'>, strain: Strain): ReadonlySet<number> {
  const side = (pair: (typeof pairs)[number], of: 'sire' | 'dam'): number => pair[of]?.shares.get(strain) ?? (outside?.[of] === strain ? 1 : 0)
  return new Set(pairs.map(pair => Number(percent((side(pair, 'sire') + side(pair, 'dam')) / 2))))
}

/** `One chick may be 75.0% or 50.0% Holm White, …`: the chicks whose share hangs on which parents they had; null where none does. */
export function uncertainShareWords(chicks: readonly (Pick<Chicks, 'parentage'> & {readonly count: number})[], strain: Strain): string | null {
  const open = chicks.map(chick => ({count: chick.count, shares: possibleShares(chick, strain)})).filter(({count, shares}) => count > 0 && shares.size > 1)
  if (open.length === 0) return null
  const count = open.reduce((sum, each) => sum + each.count, 0), all = [...new Set(open.flatMap(({shares}) => [...shares]))].sort((a, b) => b - a).map(share => percentSign(share / 100))
  return `${figured(count, 'chick')} may be of one parent or another, and so ${listWords(all, 'or')} ${strain.name}: the mean is over what is possible.`
}
