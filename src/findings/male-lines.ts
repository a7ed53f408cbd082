import type {Bird} from '../logbook/book.ts'
import {grouped} from './grouped.ts'

/** The lines that some males are of, each by the cock it goes back to from sire to sire. */
export interface MaleLines {
  /** of males whose line is sure, most males first; then, under null, those of which it is not */
  readonly lines: readonly {readonly founder: Bird | null; readonly males: readonly Bird[]}[]
  /** as many lines there are at the least, and at the most, by what is in doubt */
  readonly least: number
  readonly most: number
}

/**
 * How many lines of males are there? A male's line is that of his sire, and of his, back to a cock without a sire in the book that is a founder. One with several possible sires of different lines, or a sire
 * outside the book, is of no sure line: he may be of one of the others or of one of his own.
 *
 * Two founders of one strain may be brothers: lines are counted by descent as far as it is written.
 */
export function maleLines(birds: readonly Bird[]): MaleLines {
  const known = new Map<Bird, ReadonlySet<Bird | null>>(), males = birds.filter(({sex}) => sex === 'male')
  const rootsOf = (bird: Bird): ReadonlySet<Bird | null> => {
    const found = known.get(bird)
    if (found) return found
    // a loop in descent is cut where it is linked; were one left, it would end here
    known.set(bird, new Set([null]))
    const {parentage: {kind, sires}, maybe} = bird, above = maybe.length > 0 && sires.length === 0 ? maybe : sires.map(sire => sire.bird)
    const isOpen = sires.reduce((sum, {chance}) => sum + chance, 0) < 1 - 1e-9 && maybe.length === 0
    const roots = kind === 'founder' && maybe.length === 0 ? new Set([bird]) : new Set<Bird | null>([...above.flatMap(each => [...rootsOf(each)]), ...(isOpen ? [null] : [])])
    known.set(bird, roots)
    return roots
  }
  const sure = grouped(males, male => {
    const [root, ...more] = rootsOf(male)
    return root && more.length === 0 ? root : null
  })
  const certain = [...sure].flatMap(([founder, own]) => (founder ? [{founder, males: own}] : [])), doubtful = sure.get(null) ?? []
  const all = new Set(males.flatMap(male => [...rootsOf(male)].filter(root => root !== null))), own = doubtful.filter(male => rootsOf(male).has(null)).length
  return {
    lines: [...certain.sort((a, b) => b.males.length - a.males.length || (a.founder.id < b.founder.id ? -1 : 1)), ...(doubtful.length > 0 ? [{founder: null, males: doubtful}] : [])],
    least: Math.max(certain.length, males.length > 0 ? 1 : 0), most: Math.min(males.length, certain.length + doubtful.length, all.size + own),
  }
}
