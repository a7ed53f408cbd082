/** How chicks lived, in words and table rows. */
import type {LeftAlive, LifeComparison, LifeOfChicks} from '../findings/livability-of-groups.ts'
import type {FamilyLivability} from '../statistics/livability-of-families.ts'
import {alikeShort, unlikeLine} from './alike-words.ts'
import {ageWords} from './dates.ts'
import {pointLimits, points} from './difference-words.ts'
import {inText, pairWords} from './hatch-compared.ts'
import {figured, limits, limitsShort, listWords, NOTHING, percent, percentSign, whole} from './numbers.ts'
import type {Cell, Table} from './page.ts'
import type {Compared} from './told-apart-words.ts'

export const CHICKS_SPEAK_OF: Readonly<Record<FamilyLivability['kind'], string>> = {families: 'like these', 'these-chicks': 'these chicks'}

/** `13 culled, 22 sold`; empty where none left alive */
function leftAliveWords({culled, sold, taken, lost}: LeftAlive): string {
  return ([['culled', culled], ['sold', sold], ['taken', taken], ['lost', lost]] as const).flatMap(([how, count]) => (count === 0 ? [] : [`${count} ${how}`])).join(', ')
}

/** `1 by 20 weeks, 4 later`: to the greatest age asked for, and beyond */
function diedWords({ages, died}: LifeOfChicks): string {
  const last = ages.at(-1), early = last?.died ?? 0, later = died - early
  return died === 0 || !last ? String(died) : [...(early > 0 ? [`${early} by ${ageWords(last.age)}`] : []), ...(later > 0 ? [`${later} ${early > 0 ? 'later' : `after ${ageWords(last.age)}`}`] : [])].join(', ')
}

const notFollowed = ({undated, unlisted}: LifeOfChicks): number => undated + unlisted
const cell = (found: FamilyLivability | null | undefined): string => (found ? `${percent(found.share)} (${whole(limitsShort(found))})` : NOTHING)

/** One row a group. */
export function livabilityTable(groups: readonly {readonly name: string; readonly life: LifeOfChicks}[]): Table | null {
  const told = groups.filter(({life}) => life.n > 0), gone = told.some(({life}) => notFollowed(life) > 0)
  if (told.length === 0) return null
  return {
    caption: 'Chicks that lived, %',
    columns: [
      {head: 'Of'}, ...(told[0]?.life.ages ?? []).map(({age}) => ({head: `To ${ageWords(age)}`})), {head: 'Speaks of'}, {head: 'Chicks', number: true}, {head: 'Died'}, {head: 'Left alive'}, ...(gone ? [{head: 'Not followed', number: true}] : []),
    ],
    rows: told.map(({name, life}): readonly Cell[] => {
      const [first] = life.ages
      return [name, ...life.ages.map(({found}) => cell(found)), first?.found ? CHICKS_SPEAK_OF[first.found.kind] : NOTHING, String(life.n), diedWords(life), leftAliveWords(life.leftAlive) || NOTHING, ...(gone ? [String(notFollowed(life))] : [])]
    }),
  }
}

export function lifeComparisonTable(all: readonly LifeComparison[]): Table | null {
  const [first] = all
  if (!first) return null
  return {
    caption: `Differences in those that lived to ${ageWords(first.age)}, in points`, columns: [{head: 'Compared'}, {head: 'Difference'}, {head: 'Speaks of'}, {head: 'Kept alike?'}],
    rows: all.map(({pair, difference, speaksOf, verdict, alike}): readonly Cell[] => [
      pairWords({pair}), `${points(difference.difference)} (${pointLimits(difference)})${verdict === 'cannot-tell' ? '' : `: ${verdict}`}`, CHICKS_SPEAK_OF[speaksOf], alikeShort(alike),
    ]),
  }
}

/** Each comparison in few words. */
export const livesToldApart = (all: readonly LifeComparison[]): readonly Compared[] =>
  all.map(({pair, verdict, speaksOf, alike}) => ({words: `${verdict === 'less' ? 'fewer' : 'more'} chicks of ${inText(pair.one)} lived than of ${inText(pair.other)}`, verdict, only: speaksOf === 'these-chicks', alike}))

/** In what the groups that differ were not kept alike. */
export const livesUnlike = (all: readonly LifeComparison[]): readonly string[] => all.flatMap(found => (found.verdict === 'cannot-tell' ? [] : unlikeLine(pairWords(found), found.alike) ?? []))

/** Of one hatch, in sentences. */
export function livedWords(life: LifeOfChicks): readonly string[] {
  if (life.n === 0) return notFollowed(life) === 0 ? [] : [`${figured(notFollowed(life), 'chick')} of which nothing more is written; how they lived cannot be told.`]
  const ages = life.ages.flatMap(({age, found}) => (found ? [{share: percentSign(found.share), words: `to ${ageWords(age)} (${limits(found)})`}] : [])), [first, ...later] = ages
  const left = leftAliveWords(life.leftAlive)
  return [
    `Of ${figured(life.n, 'chick')} ${first ? `${listWords([`${first.share} lived ${first.words}`, ...later.map(({share, words}) => `${share} ${words}`)])}` : 'none has been watched long enough to say how many live'}. Died: ${diedWords(life)}.${left === '' ? '' : ` Left alive, and counted as long as they were there: ${left}.`}`,
    ...(notFollowed(life) === 0 ? [] : [`${figured(notFollowed(life), 'chick')} could not be followed, since no day is written of them.`]),
  ]
}
