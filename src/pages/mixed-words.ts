/** Why a chick has no step of the ladder, in a clause: an uncertain parent, one not recorded, or a mating no step is named for. */
import type {Bird, Chicks, Parentage} from '../logbook/book.ts'
import {listWords} from './numbers.ts'
import {stepWords} from './step-words.ts'

type Side = 'sire' | 'dam'

/** The strains or steps that a parent may be of, as far as the book knows its candidates. */
const kindsOf = (candidates: Parentage['sires']): readonly string[] => [...new Set(candidates.map(({bird}) => stepWords(bird)))]

const isPure = ({bird}: {readonly bird: Bird}): boolean => bird.step.kind === 'strain'

function uncertain(side: Side, candidates: Parentage['sires']): string | null {
  const kinds = kindsOf(candidates)
  if (kinds.length < 2) return null
  return candidates.every(isPure) ? `its ${side} may be of ${kinds.length === 2 ? 'either strain' : 'any of these strains'}, ${listWords(kinds, 'or')}, so its step cannot be told`
    : `its ${side} may be ${listWords(kinds, 'or')}, so its step cannot be told`
}

function missing(side: Side, {pairs, outside}: Parentage): string | null {
  const wanting = pairs.length === 0 || pairs.some(pair => pair[side] === null)
  return wanting && !outside?.[side] ? `its ${side} is not recorded, so its step cannot be told` : null
}

/** `its sire may be of either strain, Holm White or Fell Buff, so its step cannot be told`; null for a chick that has a step. */
export function mixedWhy({step, parentage}: Pick<Chicks, 'step' | 'parentage'>): string | null {
  if (step.kind !== 'mixed') return null
  if (parentage.kind === 'founder') return 'its strain is not recorded, so its step cannot be told'
  const {sires, dams} = parentage
  const reason = uncertain('sire', sires) ?? uncertain('dam', dams) ?? missing('sire', parentage) ?? missing('dam', parentage)
  if (reason !== null) return reason
  const [sire] = kindsOf(sires), [dam] = kindsOf(dams)
  if (sire === 'mixed' || dam === 'mixed') return `the step of its ${sire === 'mixed' ? 'sire' : 'dam'} cannot be told, so neither can its own`
  return sire && dam ? `the mating of ${sire} with ${dam} is no step of the ladder` : 'its parents’ mating is no step of the ladder'
}

/** The same of many chicks, the commonest reason first, each with its count. */
export function mixedReasons(chicks: readonly Pick<Chicks, 'step' | 'parentage' | 'count'>[]): readonly {readonly why: string; readonly count: number}[] {
  const counts = new Map<string, number>()
  for (const chick of chicks) {
    const why = mixedWhy(chick)
    if (why !== null) counts.set(why, (counts.get(why) ?? 0) + chick.count)
  }
  return [...counts].map(([why, count]) => ({why, count})).sort((a, b) => b.count - a.count || (a.why < b.why ? -1 : 1))
}
