import {clopperPearson} from '../statistics/clopper-pearson.ts'
import {familyShare, type FamilyShare} from '../statistics/family-bootstrap.ts'
import type {Count} from '../statistics/share-difference.ts'
import type {CannotSay, Interval, Share} from './estimate.ts'
import {judgedRight, sumOf} from './judged-chicks.ts'
import {seasonOf, type Chick} from './ladder-chicks.ts'
import {penOf} from './pen-of.ts'
import {shareOf} from './share-of.ts'
import {countByFamily, FAMILY_SEED} from './sire-families.ts'
import {trueBredOf, type TrueBred} from './true-bred.ts'
import type {Logbook} from '../logbook/book.ts'

/** So many of the last seasons with a hatch inside the line are taken together. */
const SEASONS = 2

/** The last seasons with a hatch inside the line, ascending. */
export const lastSeasons = ({interSeSeasons}: Pick<TrueBred, 'interSeSeasons'>): readonly number[] => interSeSeasons.map(({season}) => season).slice(-SEASONS)

/** How true the chicks of one part of the flock are: of one sex of a step, one pen, or the last seasons inside the line. */
export interface TrueBredPart {
  readonly of: 'sex' | 'pen' | 'seasons'
  /** the step, the pen, or the first and the last season */
  readonly name: string
  readonly sex: 'male' | 'female' | 'all'
  readonly share: Share | CannotSay
  /** Clopper and Pearson's */
  readonly exact: Interval | null
  /** null: no chick was judged */
  readonly family: FamilyShare | null
  /** hatched there and not judged */
  readonly leftOut: number
}

/**
 * How true does each sex, each pen and the flock of the last two seasons breed? Passes of passes and fails as in the true-bred rate of steps, with the same three intervals; a pen's
 * chicks are mostly of one cock, and speak of themselves only. Chicks of unknown sex are in no row of a sex, those whose pen is in doubt in no row of a pen.
 *
 * @see `trueBred`, `familyShare`
 */
export function trueBredParts(book: Logbook, trueBred: TrueBred): readonly TrueBredPart[] {
  const {required, verdicts, steps, pens} = trueBred
  if (required.length === 0) return []
  const chicks = [...verdicts.keys()], seasons = lastSeasons(trueBred)
  const part = (of: TrueBredPart['of'], name: string, sex: TrueBredPart['sex'], own: readonly Chick[], unlisted: number): TrueBredPart => partOf(trueBred, {of, name, sex}, own, unlisted)
  return [
    ...steps.flatMap(({step}) => (['male', 'female'] as const).map(sex => part('sex', step, sex, chicks.filter(chick => chick.step.label === step && chick.sex === sex), 0))),
    ...pens.map(({pen, unlisted}) => part('pen', pen.id, 'all', chicks.filter(chick => penOf(chick) === pen), unlisted)),
    ...(seasons.length === 0 ? [] : [trueBredInSeasons(book, trueBred, seasons)]),
  ]
}

/** The chicks hatched inside the line in some seasons, one or more. */
function trueBredInSeasons(book: Logbook, trueBred: TrueBred, seasons: readonly number[]): TrueBredPart {
  const own = [...trueBred.verdicts.keys()].filter(chick => chick.step.interSe >= 1 && inSeasons(chick, seasons))
  return partOf(trueBred, {of: 'seasons', name: [...new Set([seasons[0], seasons.at(-1)])].join(' to '), sex: 'all'}, own, trueBredOf(book, trueBred, seasons).unlisted)
}

function partOf({verdicts}: TrueBred, shape: Shape, own: readonly Chick[], unlisted: number): TrueBredPart {
  const families = countByFamily(own, chick => {
    const verdict = verdicts.get(chick)
    return verdict ? judgedRight(verdict, 'true-bred') : null
  })
  return partOfFamilies(shape, families, own.reduce((sum, {count}) => sum + count, 0) + unlisted)
}

type Shape = Pick<TrueBredPart, 'of' | 'name' | 'sex'>

/** So many right of so many in every family, of so many hatched, with every interval. */
export function partOfFamilies(shape: Shape, families: readonly Count[], hatched: number): TrueBredPart {
  const {k, n} = sumOf(families)
  return {...shape, share: shareOf(k, n), exact: n === 0 ? null : clopperPearson(k, n), family: familyShare(families, {seed: FAMILY_SEED}), leftOut: hatched - n}
}

const inSeasons = (chick: Chick, seasons: readonly number[]): boolean => {
  const season = seasonOf(chick)
  return season !== null && seasons.includes(season)
}
