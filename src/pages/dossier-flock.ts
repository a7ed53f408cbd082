/** Hatch, health and shows for the dossier: season by season, show by show, as the findings have them. */
import type {Share, CannotSay} from '../findings/estimate.ts'
import type {Findings} from '../findings/study.ts'
import type {OneShow} from '../findings/show-results.ts'
import {seasonOfHatch} from '../findings/ladder-chicks.ts'
import {isJudged} from '../findings/set-aside.ts'
import type {CareKind, Hatch, Leaving} from '../logbook/book.ts'
import {dateWords} from './dates.ts'
import {besidesOf, type NumberedTable, type Reference, type References} from './dossier-behind.ts'
import {cannotSay} from './estimate-words.ts'
import {CARE as CARE_PAGE, HATCHES, SHOWS, showPath} from './links.ts'
import type {Naming} from './naming.ts'
import {figured, limitsShort, listWords, NOTHING, ofWords, percent, saying, sentence} from './numbers.ts'
import type {Cell} from './page.ts'

const rateCell = (share: Share | CannotSay): string => (share.kind === 'cannot-say' ? sentence(cannotSay(share)) : `${percent(share.value)} (${limitsShort(share.interval)})`)

/** What became of the eggs, a row a season. */
export function hatchTable({hatchResults, book}: Findings, refs: References): NumberedTable | null {
  if (hatchResults.seasons.length === 0) return null
  const settings = (season: number): readonly Hatch[] => book.hatches.filter(hatch => isJudged(hatch) && seasonOfHatch(hatch) === season), {name, ...head} = refs.table('hatch by season')
  const rows = hatchResults.seasons.map((season): readonly Cell[] => [
    String(season.season), String(season.settings), season.eggs === null ? NOTHING : String(season.eggs), season.hatched === null ? NOTHING : String(season.hatched),
    rateCell(season.fertility), rateCell(season.hatchOfFertile), rateCell(season.hatchOfSet),
    refs.to({of: `${name}, ${season.season}`, records: settings(season.season).map(({at}) => at), page: HATCHES}),
  ])
  return {
    ...head, columns: [
      {head: 'Season'}, {head: 'Settings', number: true}, {head: 'Eggs', number: true}, {head: 'Hatched', number: true}, {head: 'Fertility, %', number: true},
      {head: 'Hatch of fertile, %', number: true}, {head: 'Hatch of set, %', number: true}, {head: 'Behind it'},
    ],
    rows,
  }
}

/** `Settings of pure strains are counted with them: 2021-05 and 2022-06, of which 18 chicks hatched.` Nothing where there are none. */
export function pureWords({hatches}: Findings['book']): readonly string[] {
  const pure = hatches.filter(hatch => hatch.step.kind === 'strain' && isJudged(hatch) && seasonOfHatch(hatch) !== null), chicks = pure.reduce((sum, {hatched}) => sum + (hatched ?? 0), 0)
  return pure.length === 0 ? [] : [`Settings of pure strains are counted with them: ${listWords(pure.map(({id}) => id))}, of which ${figured(chicks, 'chick')} hatched.`]
}

/** What became of the chicks of each step, by how they left; those not named are there still. */
export function lossTable({ladder}: Findings, refs: References): NumberedTable | null {
  const steps = ladder.filter(step => step.kind === 'reached')
  if (steps.length === 0) return null
  const {name, ...head} = refs.table('what became of the chicks')
  const ways: readonly (readonly [string, readonly Leaving['how'][]])[] =
    [['Died', ['died']], ['Culled', ['culled']], ['Lost or taken', ['lost', 'taken']], ['Sold, given or lent', ['sold', 'given', 'lent']]]
  return {
    ...head, columns: [{head: 'Step'}, {head: 'Hatched', number: true}, ...ways.map(([head]) => ({head, number: true})), {head: 'Behind it'}],
    rows: steps.map(({label, chicks, birds, tallies}): readonly Cell[] => {
      const gone = birds.filter(({left}) => left !== null), unbanded = tallies.reduce((sum, {left, count}) => sum + (left === null ? 0 : count), 0)
      return [
        label, String(chicks.hatched), ...ways.map(([, hows]) => String(hows.reduce((sum, how) => sum + (chicks.left.get(how) ?? 0), 0))),
        refs.to({of: `${name}, ${label}, gone`, birds: gone, ...besidesOf(unbanded), records: [...gone, ...tallies.filter(({left}) => left !== null)].map(({at}) => at)}),
      ]
    }),
  }
}

const CARE: readonly (readonly [CareKind, string, string])[] = [
  ['vaccination', 'vaccination', 'vaccinations'], ['treatment', 'treatment', 'treatments'], ['illness', 'illness', 'illnesses'], ['loss', 'loss', 'losses'],
]

/** Words with the place that they lead to. */
export interface Told {
  readonly text: string
  readonly ref: Reference | null
}

export function careTold(findings: Findings, refs: References): Told {
  const entries = findings.book.care.filter(({care}) => CARE.some(([kind]) => kind === care))
  return {text: careSentence(findings), ref: entries.length === 0 ? null : refs.to({of: 'The care book', records: entries.map(({at}) => at), page: CARE_PAGE})}
}

function careSentence({book}: Findings): string {
  const counts = CARE.map(([kind, one, many]) => ({count: book.care.filter(entry => entry.care === kind).length, one, many})).filter(({count}) => count > 0)
  const say = saying(...counts.map(({count}) => count))
  const told = counts.map(({count, one, many}) => say(count, one, many))
  return told.length === 0 ? 'The care book holds no vaccination, treatment, illness or loss.' : `The care book holds ${listWords(told)}.`
}

function shownWords({classes, judges}: OneShow, naming: Naming): string {
  if (classes.length === 0) return 'No entries on record.'
  const said = classes.map(({class: name, birds, firsts}) => `${name ?? 'no class'} ${birds}${firsts === 0 ? '' : `, ${figured(firsts, 'first')}`}`).join('; ')
  return `${sentence(said)}.${judges.length === 0 ? '' : ` Judged by ${listWords(judges.map(naming.judge))}.`}`
}

export interface ShowLine {
  readonly when: string
  readonly title: string
  readonly link: string
  readonly text: string
  readonly ref: Reference
}

/** Every show, oldest first, those officially cancelled with their reason. */
export function showLines({shows}: Findings, naming: Naming, refs: References): readonly ShowLine[] {
  const held = shows.shows.map(one => ({show: one.show, text: shownWords(one, naming)}))
  const cancelled = shows.cancelled.map(show => ({show, text: `Officially cancelled: ${(show.cancelled ?? '').replace(/[.]$/, '')}.`}))
  return [...held, ...cancelled].sort((a, b) => a.show.on.first - b.show.on.first || (a.show.id < b.show.id ? -1 : 1))
    .map(({show, text}) => ({when: dateWords(show.on), title: `${show.name}.`, link: showPath(show), text, ref: refs.to({of: `Show: ${show.name}, ${dateWords(show.on)}`, birds: show.entries.map(({bird}) => bird), records: [show.at], page: showPath(show)})}))
}

/** What has been won over all shows: `Entries over all shows: pullet 3 of 14 first, 14 birds.` */
export function classesTold({shows}: Findings, refs: References): Told | null {
  if (shows.classes.length === 0) return null
  const said = shows.classes.map(({class: name, birds, entries, firsts}) => `${name ?? 'no class'} ${ofWords(firsts, entries.length)} first, ${figured(birds, 'bird')}`)
  return {text: `Entries over all shows: ${said.join('; ')}.`, ref: refs.to({of: 'All shows', birds: [...shows.birds.keys()], records: shows.shows.map(({show}) => show.at), page: SHOWS})}
}
