/** Evidence on paper: statements, what a veterinarian signed, and what only a person can say. */
import type {Paper, Requirement} from '../logbook/book.ts'
import type {Day} from '../records/dates.ts'
import {behind, judged, judgedWith, type Aged, type Behind, type Finding} from './evidence-found.ts'
import type {Sources} from './evidence-shown.ts'
import {siftByDay} from './evidence-window.ts'
import {onDay} from './next-season.ts'
import {paperHoldsUntil} from './paper-holds.ts'

export interface Papers {
  /** all that prove it, oldest first */
  readonly papers: readonly Paper[]
  /** those that hold on the book's day, of the days that count */
  readonly valid: readonly Paper[]
  readonly aged: Aged
  readonly behind: Behind
}

export function papersFor(asked: Requirement, {book}: Sources): Papers {
  const papers = (book.requirements?.papers ?? []).filter(paper => paper.proves === asked.kind && paper.on.first <= book.asOf).sort((a, b) => a.on.first - b.on.first)
  const {counted, aged} = siftByDay(papers, paper => paper.on, paper => paper.at, asked, book.asOf)
  const valid = counted.filter(paper => paper.until === null || paper.until.last >= book.asOf)
  return {papers, valid, aged, behind: behind([], valid, valid.map(paper => paper.on.last))}
}

/** Met by a paper that holds on the book's day, or by the keeper's own statement; nobody else can say. */
export function paperOrWord(asked: Requirement, from: Sources): Finding {
  const {papers, valid, aged, behind: found} = papersFor(asked, from)
  if (valid.length > 0) return judged(true, {kind: 'papers', papers, valid, keepers: null, until: until(valid, asked)}, {behind: found, aged})
  if (asked.stated !== null) return judged(true, {kind: 'stated', stated: asked.stated}, {behind: behind([], [asked]), aged})
  const ways = [{kind: 'statement', earliest: onDay(from.book.asOf)}] as const
  return papers.length > 0 ? judged(false, {kind: 'papers', papers, valid, keepers: null, until: null}, {aged, ways}) : judged(null, {kind: 'nothing-recorded'}, {ways})
}

/**
 * How many keepers have signed? Papers that hold, each keeper once; as many as are asked, every keeper on record where no number is. A paper that does not say whose it is may be another’s or one’s again,
 * which leaves it untold where it would make the number.
 */
export function statementPapers(asked: Requirement, from: Sources): Finding {
  const {papers, valid, aged, behind: found} = papersFor(asked, from), {keepers} = from.book, least = asked.atLeast ?? Math.max(1, keepers.length)
  const signed = [...new Set(valid.flatMap(({keeper}) => keeper ?? []))], unnamed = valid.filter(({keeper}) => keeper === null).length, without = keepers.filter(keeper => !signed.includes(keeper))
  const more = least - signed.length - unnamed, now = onDay(from.book.asOf), isSigned = keepers.length === 0 ? valid.length >= least : judgedWith(signed.length, least, unnamed)
  return judged(isSigned, {kind: 'papers', papers, valid, keepers: {signed, without, unnamed}, until: until(valid, asked)}, {
    behind: found, aged, ways: [
      ...(unnamed === 0 ? [] : [{kind: 'name-signers', papers: valid.filter(({keeper}) => keeper === null), earliest: now} as const]),
      ...(more <= 0 ? [] : [{kind: 'paper', more, instead: null, held: null, keepers: without, earliest: now} as const]),
    ],
  })
}

/** A paper of a veterinarian that holds on the book's day, and is no older than the rule allows; without an end it holds. */
export function veterinaryPaper(asked: Requirement, from: Sources): Finding {
  const {papers, valid, aged, behind: found} = papersFor(asked, from), instead = papers.at(-1) ?? null, least = asked.atLeast ?? 1
  return judged(valid.length >= least, {kind: 'papers', papers, valid, keepers: null, until: until(valid, asked)}, {
    behind: found, aged, ways: [{kind: 'paper', more: least - valid.length, instead, held: instead && paperHoldsUntil(instead, asked.within), keepers: [], earliest: onDay(from.book.asOf)}],
  })
}

/** The day on which the last of them stops counting; null where one never does. */
function until(valid: readonly Paper[], asked: Requirement): Day | null {
  const ends = valid.map(paper => paperHoldsUntil(paper, asked.within))
  return ends.length === 0 || ends.includes(null) ? null : Math.max(...ends.map(day => day ?? 0))
}
