/** Whether two groups were kept alike, and in what they were not. */
import type {RearedAlike, Unlike} from '../findings/reared-alike.ts'
import {CARE_KINDS} from '../logbook/book.ts'
import {listWords} from './numbers.ts'

const WHAT: Readonly<Record<Unlike['what'], string>> = {
  season: 'season', months: 'time of year', ages: 'age of the hens', way: 'hen or machine', machine: 'machine', keeper: 'keeper', feed: 'feed', housing: 'housing', vaccination: 'vaccination', treatment: 'treatment',
  illness: 'illness', loss: 'losses',
}

/** For a table: `yes`, `not told`, `no: season, feed`. */
export function alikeShort({verdict, unlike}: RearedAlike): string {
  return verdict === 'alike' ? 'yes' : verdict === 'not-told' ? 'not told' : `no: ${unlike.map(({what}) => WHAT[what]).join(', ')}`
}

const MONTHS = ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December']

function named({what}: Unlike, names: readonly string[]): string {
  if (names.length === 0) return 'none'
  if (what === 'months') return listWords(names.map(name => MONTHS[Number(name) - 1] ?? name))
  if (what === 'way') return listWords(names.map(name => (name === 'broody' ? 'hens' : 'machines')))
  return listWords(names.map(name => (CARE_KINDS.some(kind => kind === what) ? `“${name}”` : name)))
}

/** For a sentence: `season 2025 against 2024; feed “pellets” against none`; empty where they were kept alike. */
export const unlikeWords = ({unlike}: RearedAlike): string => unlike.map(each => `${each.what === 'way' ? 'hatched by' : WHAT[each.what]} ${named(each, each.one)} against ${named(each, each.other)}`).join('; ')

/** In what the groups of one comparison were not kept alike: `BC2 less BC1: season 2022 against 2021`; null where nothing on record says so. */
export const unlikeLine = (compared: string, alike: RearedAlike): string | null => (alike.unlike.length === 0 ? null : `${compared}: ${unlikeWords(alike)}.`)

/** What to make of a table of comparisons in which some groups were not kept alike; empty where all were. */
export function alikeCaution(all: readonly RearedAlike[]): string {
  const apart = all.filter(({verdict}) => verdict !== 'alike').length
  if (apart === 0) return ''
  const who = all.length === 1 ? 'the two groups were not kept alike' : apart === all.length ? 'none of these were kept alike' : `${apart} of these ${all.length} were not kept alike`
  return `By the records ${who}: what differs may come of how they were kept and not of the birds. Chicks of both hatched and reared together would tell.`
}
