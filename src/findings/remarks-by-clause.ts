import type {Clause, Draft, Logbook} from '../logbook/book.ts'
import {draftInForce} from '../logbook/draft-in-force.ts'
import {slug} from '../logbook/draft-sections.ts'
import {plainWords} from '../logbook/plain-words.ts'
import {matchedDrafts} from './clauses-matched.ts'
import {clausesMeant} from './clauses-meant.ts'
import type {ShowResult, ShowResults} from './show-results.ts'

/** What judges said, under the clause of the standard that it is about. */
export interface RemarksByClause {
  /** in the order of the latest draft; those it no longer has after them */
  readonly clauses: readonly RemarksOfClause[]
  /** newest first: fits no clause by its words, and the keeper names none */
  readonly unplaced: readonly ShowResult[]
  /** of all remarks, by the keeper's own word and by their words */
  readonly byKeeper: number
  readonly byWords: number
}

export interface RemarksOfClause {
  /** as in the latest draft that has it */
  readonly id: string
  /** the class it is the weight of; null for a clause or the egg */
  readonly weightOf: string | null
  /** of its section, as in that draft; null for a weight or the egg */
  readonly section: string | null
  readonly clause: Clause | null
  /** the latest draft that has it */
  readonly draft: Draft
  /** is that draft the latest? */
  readonly stands: boolean
  /** newest first */
  readonly remarks: readonly RemarkOnClause[]
}

export interface RemarkOnClause extends ShowResult {
  readonly by: 'keeper' | 'words'
  /** the draft the bird was judged by */
  readonly draft: Draft
  /** the first draft after it in which the clause reads otherwise, or is gone; null where it stands as it was */
  readonly since: {readonly draft: Draft; readonly is: 'changed' | 'dropped'} | null
}

/**
 * What did the judges say of each clause? A remark stands under the clauses that the keeper names for it, else under those that its words fit, of the draft it was judged by; without a draft named that is the
 * one in force on the day. It may stand under several. Beside each stands in which draft the clause was changed since: a clause is followed from draft to draft as the comparison of drafts does.
 *
 * @see `clausesMeant`, `matchedDrafts`
 */
export function remarksByClause({drafts}: Pick<Logbook, 'drafts'>, {remarks}: ShowResults): RemarksByClause {
  const history = historyOf(drafts)
  const gathered = new Map<Piece, RemarkOnClause[]>(), unplaced: ShowResult[] = []
  let byKeeper = 0, byWords = 0
  for (const result of newestFirst([...remarks].reverse())) {
    const {entry: {remark, about, bird, draft: number}, show} = result, draft = draftInForce(drafts, number, show.on.last)
    const pieces = history.find(each => each.draft === draft)?.pieces, named = about.filter(id => pieces?.has(id))
    const ids = draft === null || remark === null ? [] : named.length > 0 ? named : clausesMeant(remark, bird.sex, draft)
    if (draft === null || ids.length === 0) {
      unplaced.push(result)
      continue
    }
    const by = named.length > 0 ? 'keeper' : 'words'
    if (by === 'keeper') byKeeper += 1
    else byWords += 1
    for (const id of ids) {
      const {last, since} = fateOf(id, draft, history)
      const own = gathered.get(last) ?? []
      gathered.set(last, own)
      own.push({...result, by, draft, since})
    }
  }
  const latest = drafts.at(-1)
  // the latest draft first: what it no longer has comes after
  const clauses = [...history].reverse().flatMap(({draft, pieces}) => [...pieces.values()].flatMap((piece): RemarksOfClause[] => {
    const own = gathered.get(piece)
    return own ? [{id: piece.id, weightOf: piece.weightOf, section: piece.section, clause: piece.clause, draft, stands: draft === latest, remarks: newestFirst(own)}] : []
  }))
  return {clauses, unplaced, byKeeper, byWords}
}

interface Piece {
  readonly id: string
  readonly weightOf: string | null
  readonly section: string | null
  readonly clause: Clause | null
  /** what a change of is a change of the clause */
  readonly reads: string
}

/** Clauses, weights by class and the egg. */
function piecesOf({sections, weights, egg, eggAtLeast}: Draft): Piece[] {
  return [
    ...sections.flatMap(({title: section, clauses}) => clauses.map((clause): Piece => ({id: clause.id, weightOf: null, section, clause, reads: `${clause.title}\n${plainWords(clause.text)}\n${JSON.stringify(clause.ownRange ? clause.allows : null)}`}))),
    ...weights.map(({class: name, grams, high}): Piece => ({id: `weights/${slug(name)}`, weightOf: name, section: null, clause: null, reads: `${grams} ${high ?? ''}`})),
    ...(egg === null ? [] : [{id: 'egg', weightOf: null, section: null, clause: null, reads: `${egg} ${eggAtLeast ?? ''}`}]),
  ]
}

interface PiecesOfDraft {
  readonly draft: Draft
  readonly pieces: ReadonlyMap<string, Piece>
  /** what each became in the next draft; none: dropped */
  readonly next: ReadonlyMap<string, string>
}

function historyOf(drafts: readonly Draft[]): readonly PiecesOfDraft[] {
  return drafts.map((draft, place) => {
    const after = drafts[place + 1]
    const clauses = after ? matchedDrafts(draft, after).clauses.flatMap(({before, after: then}) => (before && then ? [[before.id, then.id] as const] : [])) : []
    return {draft, pieces: new Map(piecesOf(draft).map(piece => [piece.id, piece])), next: new Map([...draft.weights.map(weight => `weights/${slug(weight.class)}`), 'egg'].map(id => [id, id] as const).concat(clauses))}
  })
}

/** Where a piece of one draft ends up, and when it first read otherwise. */
function fateOf(id: string, judgedBy: Draft, history: readonly PiecesOfDraft[]): {readonly last: Piece; readonly since: RemarkOnClause['since']} {
  const from = history.findIndex(({draft}) => draft === judgedBy), first = history[from]?.pieces.get(id)
  if (!first) throw new Error(`draft ${judgedBy.number} has no clause ${id}`)
  let last = first, since: RemarkOnClause['since'] = null
  for (let place = from; place < history.length - 1; place++) {
    const then = history[place + 1], nextId = history[place]?.next.get(last.id), next = nextId === undefined ? undefined : then?.pieces.get(nextId)
    if (!then) break
    if (!next) return {last, since: since ?? {draft: then.draft, is: 'dropped'}}
    if (next.reads !== last.reads) since ??= {draft: then.draft, is: 'changed'}
    last = next
  }
  return {last, since}
}

/** By show, the latest first; within one in the order of its record. */
const newestFirst = <Said extends ShowResult>(remarks: readonly Said[]): Said[] => [...remarks].sort((a, b) => b.show.on.first - a.show.on.first)
