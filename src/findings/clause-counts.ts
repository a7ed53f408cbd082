import type {Clause, Draft, Sex, Trait, Wanted} from '../logbook/book.ts'
import type {Spot} from '../records/problem.ts'
import type {Count} from '../statistics/share-difference.ts'
import type {CannotSay, Share} from './estimate.ts'
import type {Chick} from './ladder-chicks.ts'
import {LeftAside} from './left-out.ts'
import {shareOf} from './share-of.ts'
import type {SexRow} from './shares.ts'
import {countByFamily} from './sire-families.ts'
import {isOfVarieties} from './variety-of.ts'
import {looksRight} from './wanted-look.ts'

/** How many birds of one step and sex meet a clause. */
export interface ClauseShare {
  /** null: of all the steps together */
  readonly step: string | null
  readonly sex: SexRow
  /** of the birds scored that can be judged; left out are those that could show it and have no score that counts */
  readonly share: Share | CannotSay
  /** of those that meet it, how many by what is accepted for some seasons yet, and by that alone */
  readonly accepted: number
  /** the share without those */
  readonly outright: Share | CannotSay
  /** scored, but not to be judged while their sex is unknown */
  readonly sexUnknown: number
  /** scored, but it cannot be told whether they are of the clause's variety */
  readonly varietyUnknown: number
  /** scored under other words of the clause, and counted there */
  readonly otherWords: number
  readonly missed: readonly Chick[]
  /** the scores that were judged: where each stands in the records */
  readonly behind: () => readonly Spot[]
  /** numbers of the drafts that the birds counted were scored under, ascending; none where a ruler told */
  readonly drafts: readonly number[]
}

/** Where chicks are counted as they come. */
export class ClauseCell {
  readonly aside = new LeftAside()
  readonly missed: Chick[] = []
  readonly judged = new Map<Chick, boolean>()
  readonly behind: Spot[] = []
  readonly drafts = new Set<number>()
  count = 0
  total = 0
  accepted = 0
  sexUnknown = 0
  varietyUnknown = 0
  otherWords = 0

  judge(chick: Chick, is: Judged, at: Spot, draft: number | null): void {
    if (is === 'sex-unknown') {
      this.sexUnknown += chick.count
      return
    }
    this.total += chick.count
    this.judged.set(chick, is !== 'missed')
    this.behind.push(at)
    if (draft !== null) this.drafts.add(draft)
    if (is === 'missed') this.missed.push(chick)
    else this.count += chick.count
    if (is === 'accepted') this.accepted += chick.count
  }

  /** Nothing to tell of: nobody scored and nobody missing. */
  get empty(): boolean {
    return this.total + this.sexUnknown + this.varietyUnknown + this.otherWords === 0 && this.aside.list().length === 0
  }
}

/** Cells as one row. */
export function shareOfCells(step: string | null, sex: SexRow, cells: readonly ClauseCell[]): ClauseShare {
  const sum = (of: 'count' | 'total' | 'accepted' | 'sexUnknown' | 'varietyUnknown' | 'otherWords'): number => cells.reduce((all, cell) => all + cell[of], 0)
  const aside = new LeftAside()
  for (const cell of cells) aside.addAll(cell.aside)
  return {
    step, sex, share: shareOf(sum('count'), sum('total'), aside.list()), accepted: sum('accepted'), outright: shareOf(sum('count') - sum('accepted'), sum('total'), aside.list()), sexUnknown: sum('sexUnknown'), varietyUnknown: sum('varietyUnknown'), otherWords: sum('otherWords'),
    missed: cells.flatMap(({missed}) => missed), behind: () => cells.flatMap(({behind}) => behind), drafts: [...new Set(cells.flatMap(({drafts}) => [...drafts]))].sort((a, b) => a - b),
  }
}

/** The same, family by family. */
export function familiesOfCells(cells: readonly ClauseCell[]): readonly Count[] {
  const judged = new Map(cells.flatMap(cell => [...cell.judged]))
  return countByFamily([...judged.keys()], chick => judged.get(chick) ?? null)
}

export type Judged = 'met' | 'accepted' | 'missed' | 'sex-unknown'

/** Can this wish be held against a value at all? A mark without a tolerance has no limits. */
const hasLimits = (wanted: Wanted | null): boolean => wanted !== null && !(wanted.kind === 'about' && wanted.tolerance === null)

/** Does a clause allow anything that can be held against a bird of some sex? */
export const canBeHeld = ({allows}: Pick<Clause, 'allows'>): boolean => hasLimits(allows.male) || hasLimits(allows.female)

/** Does a clause concern birds of this sex? An unsexed bird may be of either. */
export const concerns = ({allows}: Pick<Clause, 'allows'>, sex: Sex): boolean => (sex === 'unknown' ? canBeHeld({allows}) : hasLimits(allows[sex]))

/** Does a value meet what is allowed, or what is still accepted? An unsexed bird by the rule of `looksRight`: in both sexes or in neither. */
export function judge(trait: Trait, allows: Trait['wanted'], accepted: Trait['wanted'] | null, sex: Sex, value: string | number): Judged {
  const met = looksRight({...trait, wanted: allows}, sex, value)
  if (met === true) return 'met'
  const also = accepted && looksRight({...trait, wanted: accepted}, sex, value)
  return also === true ? 'accepted' : met === null ? 'sex-unknown' : 'missed'
}

/** Is a chick of a clause’s variety? A clause of no variety is of all. Null where the records do not tell. */
export const isOfVariety = ({variety}: Pick<Clause, 'variety'>, draft: Pick<Draft, 'varieties'>): ((chick: Chick) => boolean | null) =>
  (variety === null ? () => true : chick => isOfVarieties(chick, draft, [variety]))

/** Is what a clause still accepts in force in the season of the book's day? */
export const acceptedIn = ({accepted}: Clause, season: number): Trait['wanted'] | null => (accepted && season <= accepted.until && (accepted.looks.male ?? accepted.looks.female) ? accepted.looks : null)
