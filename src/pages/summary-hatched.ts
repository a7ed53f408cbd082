/** From egg to breeder, beside the one before: eggs, chicks, losses and birds kept, each with its share, and what to think of the comparison. */
import type {FlockSummary} from '../findings/flock-summary.ts'
import type {CannotSay, Share} from '../findings/estimate.ts'
import type {ChickCounts} from '../findings/chick-counts.ts'
import type {HatchRates} from '../findings/hatch-results.ts'
import {shareOf} from '../findings/share-of.ts'
import type {Leaving} from '../logbook/book.ts'
import {cannotSay} from './estimate-words.ts'
import {limitsShort, NOTHING, ofWords, percentSign} from './numbers.ts'
import type {Cell, Table} from './page.ts'

/** `94 of 124, 75.8% (67.6–82.5)`, or why it cannot be said */
export const shareShort = (share: Share | CannotSay): string => (share.kind === 'cannot-say' ? cannotSay(share) : `${ofWords(share.count, share.total)}, ${percentSign(share.value)} (${limitsShort(share.interval)})`)

const GONE: readonly (readonly [string, readonly Leaving['how'][]])[] = [
  ['Died', ['died']], ['Lost or taken', ['lost', 'taken']], ['Culled', ['culled']], ['Sold, given or lent', ['sold', 'given', 'lent']],
]

type Told = {readonly chicks: ChickCounts; readonly rates: HatchRates}
type Stage = readonly [string, (of: Told) => string, (of: Told) => boolean]

const share = (count: number, {hatched}: ChickCounts): string => shareShort(shareOf(count, hatched))

/** A stage that neither has anything of is not shown. */
const STAGES: readonly Stage[] = [
  ['Eggs set', ({rates}) => (rates.eggs === null ? 'not counted' : String(rates.eggs)), () => true],
  ['Fertile of eggs', ({rates}) => shareShort(rates.fertility), ({rates}) => rates.eggs !== null],
  ['Hatched of fertile', ({rates}) => shareShort(rates.hatchOfFertile), ({rates}) => rates.eggs !== null],
  ['Hatched of eggs', ({rates}) => shareShort(rates.hatchOfSet), ({rates}) => rates.eggs !== null],
  ['Chicks hatched', ({chicks}) => String(chicks.hatched), () => true],
  ...GONE.map(([head, hows]): Stage => {
    const count = ({chicks}: Told): number => hows.reduce((sum, how) => sum + (chicks.left.get(how) ?? 0), 0)
    return [head, of => share(count(of), of.chicks), of => count(of) > 0]
  }),
  ['Scored or measured', ({chicks}) => share(chicks.scored, chicks), ({chicks}) => chicks.hatched > 0],
  ['Kept, or penned to breed', ({chicks}) => share(chicks.kept, chicks), ({chicks}) => chicks.hatched > 0],
]

export interface SummaryHatched {
  readonly table: Table
  readonly words: readonly string[]
}

export function summaryHatched(summary: FlockSummary): SummaryHatched {
  const {name, before} = summary, both: readonly Told[] = before ? [summary, before] : [summary]
  return {
    table: {
      columns: [{head: 'Stage'}, {head: name}, ...(before ? [{head: before.name}] : [])],
      rows: STAGES.filter(([, , shown]) => both.some(shown)).map(([head, said]): readonly Cell[] => [head, ...both.map(said)]),
    },
    words: summary.rates.eggs === null ? [] : ['Eggs of one hen do well or badly together, so the intervals of hatch are narrower than the truth.'],
  }
}

/** `75.8%`, for a statistic; a dash where it cannot be said */
export const shareAlone = (of: Share | CannotSay): string => (of.kind === 'share' ? percentSign(of.value) : NOTHING)
