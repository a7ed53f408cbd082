/** Hatch, health and shows for the dossier: season by season, show by show, as the findings have them. */
import type {Share, CannotSay} from '../findings/estimate.ts'
import type {Findings} from '../findings/study.ts'
import type {CareKind} from '../logbook/book.ts'
import {dateWords} from './dates.ts'
import {cannotSay} from './estimate-words.ts'
import {showPath} from './links.ts'
import {counted, countWord, limitsShort, listWords, NOTHING, ofWords, percent, sentence} from './numbers.ts'
import type {Cell, Table} from './page.ts'

const rateCell = (share: Share | CannotSay): string => (share.kind === 'cannot-say' ? sentence(cannotSay(share)) : `${percent(share.value)} (${limitsShort(share.interval)})`)

/** What became of the eggs, a row a season. */
export function hatchTable({hatchResults}: Findings): Table | null {
  if (hatchResults.seasons.length === 0) return null
  const rows = hatchResults.seasons.map((season): readonly Cell[] => [
    String(season.season), String(season.settings), season.eggs === null ? NOTHING : String(season.eggs), season.hatched === null ? NOTHING : String(season.hatched),
    rateCell(season.fertility), rateCell(season.hatchOfFertile), rateCell(season.hatchOfSet),
  ])
  return {
    columns: [
      {head: 'Season'}, {head: 'Settings', number: true}, {head: 'Eggs', number: true}, {head: 'Hatched', number: true}, {head: 'Fertility, %', number: true},
      {head: 'Hatch of fertile, %', number: true}, {head: 'Hatch of set, %', number: true},
    ],
    rows,
  }
}

const noneOr = (count: number): string => (count === 0 ? 'none' : countWord(count))

/** Chicks that died or were lost, of those hatched, and what the care book holds. */
export function healthSentences({ladder, book}: Findings): readonly string[] {
  const gone = ladder.flatMap(step => {
    if (step.kind === 'planned') return []
    const died = step.chicks.left.get('died') ?? 0, culled = step.chicks.left.get('culled') ?? 0
    return died + culled === 0 ? [] : [`of ${step.chicks.hatched} hatched in ${step.label} ${noneOr(died)} died and ${noneOr(culled)} ${culled === 1 ? 'was' : 'were'} culled`]
  })
  const kinds: readonly (readonly [CareKind, string, string])[] = [
    ['vaccination', 'vaccination', 'vaccinations'], ['treatment', 'treatment', 'treatments'], ['illness', 'illness', 'illnesses'], ['loss', 'loss', 'losses'],
  ]
  const care = kinds.flatMap(([kind, one, many]) => {
    const count = book.care.filter(entry => entry.care === kind).length
    return count === 0 ? [] : [counted(count, one, many)]
  })
  return [
    gone.length === 0 ? 'No death and no cull is on record.' : `${sentence(gone.join('; '))}.`,
    care.length === 0 ? 'The care book holds no vaccination, treatment, illness or loss.' : `The care book holds ${listWords(care)}.`,
  ]
}

/** A row a show, those officially cancelled with their reason. */
export function showsTable({shows}: Findings): Table | null {
  const held = shows.shows.map(({show, classes, judges, birds}) => ({show, cells: [
    String(birds), classes.map(({class: name, birds: of}) => `${name ?? 'no class'} ${of}`).join(', ') || NOTHING, judges.length === 0 ? NOTHING : listWords(judges),
    String(classes.reduce((sum, {firsts}) => sum + firsts, 0)),
  ]}))
  const cancelled = shows.cancelled.map(show => ({show, cells: [NOTHING, `officially cancelled: ${show.cancelled ?? ''}`, NOTHING, NOTHING]}))
  const all = [...held, ...cancelled].sort((a, b) => a.show.on.first - b.show.on.first || (a.show.id < b.show.id ? -1 : 1))
  if (all.length === 0) return null
  return {
    columns: [{head: 'Show'}, {head: 'Day'}, {head: 'Birds', number: true}, {head: 'Classes'}, {head: 'Judges'}, {head: 'Firsts', number: true}],
    rows: all.map(({show, cells}): readonly Cell[] => [{text: show.name, link: showPath(show)}, dateWords(show.on), ...cells]),
  }
}

/** What has been won over all shows: `Pullets 7, of which 2 first.` */
export function classSentence({shows}: Findings): string | null {
  if (shows.classes.length === 0) return null
  const said = shows.classes.map(({class: name, birds, entries, firsts}) => `${name ?? 'no class'} ${ofWords(firsts, entries.length)} first, ${counted(birds, 'bird')}`)
  return `Entries over all shows: ${said.join('; ')}.`
}
