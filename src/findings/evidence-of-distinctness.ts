import type {Requirement} from '../logbook/book.ts'
import {characterName, differ, isFilled} from './characters-differ.ts'
import {behind, judged, nothing, type Finding} from './evidence-found.ts'
import type {FromNeighbour, Sources} from './evidence-shown.ts'
import {grouped} from './grouped.ts'
import {onDay} from './next-season.ts'
import type {Way} from './ways.ts'

/**
 * In how many characters does the breed differ from each neighbour of the keeper's table? The new breed is named first; a character named twice counts once. A cell that is not filled in, or only with a
 * sign for that, tells nothing: where the characters that differ are too few, but would be enough were each of the untold ones to differ, it cannot be told of that neighbour. The nearest decides.
 */
export function distinctness({atLeast}: Requirement, {book}: Sources): Finding {
  const table = book.requirements?.distinctness, now = onDay(book.asOf)
  if (!table || table.breeds.length < 2 || table.rows.length === 0) return {...nothing, ways: [{kind: 'first-table', earliest: now}]}
  const characters = [...grouped(table.rows, ({character}) => characterName(character)).values()].map(rows => ({character: rows[0]?.character ?? '', rows}))
  const breeds = table.breeds.slice(1).map((breed, index): FromNeighbour => {
    const cells = characters.map(({character, rows}) => {
      const filled = rows.map(({values}) => ({own: values[0] ?? '', other: values[index + 1] ?? ''})).filter(({own, other}) => isFilled(own) && isFilled(other))
      // of two rows on one character that do not agree neither shows a difference
      return {character, isFilled: filled.length > 0, isOther: filled.length > 0 && filled.every(({own, other}) => differ(own, other))}
    })
    return {breed, differing: cells.filter(({isOther}) => isOther).map(({character}) => character), unfilled: cells.filter(cell => !cell.isFilled).map(({character}) => character)}
  })
  const short = atLeast === null ? [] : breeds.filter(({differing}) => differing.length < atLeast), least = atLeast ?? 0
  const ways = atLeast === null ? [{kind: 'name-figure', earliest: null} as const] : short.map(({breed, differing, unfilled}): Way => {
    const more = least - differing.length
    return unfilled.length >= more ? {kind: 'fill-cells', breed, characters: unfilled, more, earliest: now} : {kind: 'differ', breed, more: more - unfilled.length, unfilled, earliest: null}
  })
  const state = atLeast === null ? null : short.length === 0 ? true : short.every(({differing, unfilled}) => differing.length + unfilled.length >= least) ? null : false
  return judged(state, {kind: 'distinct', breeds}, {behind: behind([], table.rows), ways})
}
