/** Placings, judges and remarks as a reader wants them. */
import type {Show, ShowEntry} from '../logbook/book.ts'
import {dateWords} from './dates.ts'
import {rounded} from './numbers.ts'

/** Classes in the order a standard names them; others follow as they were first written. */
const CLASS_ORDER = ['cock', 'cockerel', 'hen', 'pullet']
const rank = (name: string | null): number => {
  const place = name === null ? -1 : CLASS_ORDER.indexOf(name.toLowerCase())
  return place === -1 ? CLASS_ORDER.length : place
}

/** `1 of 7`, `1`, `2 of 7 (shared)`, `disqualified`, `not placed` */
export function placing(entry: ShowEntry): string {
  if (entry.disqualified) return 'disqualified'
  if (entry.place === null) return 'not placed'
  return `${entry.of === null ? entry.place : `${entry.place} of ${entry.of}`}${entry.shared ? ' (shared)' : ''}`
}

/** `pullet, 1 of 7, very good, best pullet`: all but points and remark. */
export const resultWords = (entry: ShowEntry): string => [entry.class, placing(entry), entry.grade, entry.award].filter(part => part !== null).join(', ')

/** `93 points`, `93.5 points` */
export const pointsWords = ({points}: ShowEntry): string | null => (points === null ? null : `${rounded(points, 1).replace(/\.0$/, '')} points`)

/** A show's entries by class, the best placed first, birds not placed and disqualified last. */
export function byClass(show: Show): readonly {readonly name: string | null; readonly entries: readonly ShowEntry[]}[] {
  const names = [...new Set(show.entries.map(entry => entry.class))]
  const order = (entry: ShowEntry): number => (entry.disqualified ? 2e6 : entry.place ?? 1e6)
  return names
    .map((name, index) => ({name, index, entries: show.entries.filter(entry => entry.class === name)}))
    .sort((a, b) => rank(a.name) - rank(b.name) || a.index - b.index)
    .map(({name, entries}) => ({name, entries: [...entries].sort((a, b) => order(a) - order(b) || (a.bird.id < b.bird.id ? -1 : 1))}))
}

/** A remark as it stands between quotation marks: its own are single ones there. */
export const quoted = (remark: string): string => remark.replaceAll('“', '‘').replaceAll('”', '’')

/** The reason, and who ordered it on which day where that is written. */
export function cancelledWords({cancelled, order}: Pick<Show, 'cancelled' | 'order'>): string {
  const reason = (cancelled ?? '').replace(/[.]$/, '')
  if (!order || (order.by === null && order.on === null)) return `${reason}.`
  return `${reason}. Ordered${order.by === null ? '' : ` by ${order.by}`}${order.on === null ? '' : `, ${dateWords(order.on)}`}.`
}
