import type {FamilyLivability} from '../statistics/livability-of-families.ts'
import {resultsBy, type ResultsOfGroup, type ShareOfGroup} from './hatch-comparisons.ts'
import type {LayOfBook, LayGroup} from './lay.ts'
import type {LivabilityOfGroups} from './livability-of-groups.ts'

/** One season in three figures: how it hatched, how the chicks lived, how the hens laid. */
export interface SeasonOfLife {
  /** year */
  readonly season: string
  /** hatch of set of the ladder's hatches; null: none */
  readonly hatching: ShareOfGroup | null
  /** to eight weeks; null where nobody was watched so long */
  readonly livability: FamilyLivability | null
  /** null: no egg sheet */
  readonly lay: LayGroup | null
}

/** Every season in which something hatched or was laid, the oldest first. */
export function seasonsOfLife(results: readonly ResultsOfGroup[], life: LivabilityOfGroups, lay: LayOfBook): readonly SeasonOfLife[] {
  const hatching = resultsBy(results, 'season'), living = new Map(life.groups.filter(({group}) => group.by === 'season').map(one => [one.group.name, one] as const)), laying = new Map(lay.groups.filter(({by}) => by === 'season').map(one => [one.name, one] as const))
  return [...new Set([...hatching.keys(), ...living.keys(), ...laying.keys()])].sort((a, b) => Number(a) - Number(b)).map(season => ({
    season, hatching: hatching.get(season)?.shares.find(({what, share}) => what === 'hatchOfSet' && share.kind === 'share') ?? null, livability: living.get(season)?.ages[0]?.found ?? null, lay: laying.get(season) ?? null,
  }))
}
