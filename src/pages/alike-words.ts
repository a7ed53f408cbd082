/** Whether two groups were kept alike, and in what they were not. */
import type {RearedAlike, Unlike} from '../findings/reared-alike.ts'
import {figured, listWords} from './numbers.ts'

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
  return listWords(names.map(name => (name.includes(', ') ? `“${name}”` : name)))
}

/** For a sentence: `season 2025 against 2024; feed “pellets” against none`; empty where they were kept alike. */
export const unlikeWords = ({unlike}: RearedAlike): string => unlike.map(each => `${WHAT[each.what]} ${named(each, each.one)} against ${named(each, each.other)}`).join('; ')

/** Whether the two were kept alike, as a sentence. */
export function alikeSentence(alike: RearedAlike): string {
  if (alike.verdict === 'alike') return 'Nothing on record says that they were kept apart.'
  if (alike.verdict === 'not-told') return `How ${figured(alike.untold, 'of them was', 'of them were')} hatched is not written, so nobody can say whether they were kept alike.`
  return `They were not kept alike: ${unlikeWords(alike)}.`
}

/** What to make of a table of comparisons in which some groups were not kept alike; empty where all were. */
export function alikeCaution(all: readonly RearedAlike[]): string {
  const apart = all.filter(({verdict}) => verdict !== 'alike').length
  if (apart === 0) return ''
  const who = all.length === 1 ? 'the two groups were not kept alike' : apart === all.length ? 'none of these were kept alike' : `${apart} of these ${all.length} were not kept alike`
  return `By the records ${who}: what differs may come of how they were kept and not of the birds. Chicks of both hatched and reared together would tell.`
}
