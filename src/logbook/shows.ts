/** Shows: entries with placings and remarks, score sheets, and judges as far as they may be named. */
import {near} from '../records/near.ts'
import {inside} from '../records/problem.ts'
import type {Ref} from '../records/scalars.ts'
import {spanOf} from './band-book.ts'
import type {Bench} from './bench.ts'
import type {Birds} from './birds.ts'
import type {Draft, Show, ShowEntry, ShowScore} from './book.ts'
import {clauseIdsOf} from './clause-ids.ts'
import {draftInForce} from './draft-in-force.ts'
import {draftsInDoubt} from './drafts-in-doubt.ts'
import {unknownClause} from './inspect/clause-unknown.ts'
import {unknownJudge} from './inspect/unknown-judge.ts'
import type {Judges, ShowFile} from './judges.ts'
import type {Keepers} from './keepers.ts'
import {pointsIn} from './points-sheets.ts'

/** The records of shows in the order of their days. */
export const showsInOrder = ({records}: Bench): readonly ShowFile[] => [...records.show].sort((a, b) => a.data.on.first - b.data.on.first || (a.id < b.id ? -1 : 1))

export function linkShows(bench: Bench, birds: Birds, keepers: Keepers, judges: Judges, drafts: readonly Draft[]): readonly Show[] {
  return showsInOrder(bench).map(record => showOf(record, judges, birds, keepers, drafts, bench))
}

function showOf(record: ShowFile, judges: Judges, birds: Birds, keepers: Keepers, drafts: readonly Draft[], bench: Bench): Show {
  const {id, data, body, at} = record
  const when = spanOf(data.on), {note} = bench, noteClause: Bench['note'] = draftsInDoubt(bench) ? () => undefined : note
  const judgeOf = (ref: Ref | undefined): string | null => {
    if (!ref) return null
    if (data.judges && !data.judges.some(judge => judge.key === ref.text)) note(unknownJudge(ref, near(ref.text, data.judges.map(judge => judge.key))))
    return judges.called(record, ref.text)
  }
  const entries = (data.entries ?? []).flatMap((read): readonly ShowEntry[] => {
    const bird = birds.find(read.bird, when)
    const judge = judgeOf(read.judge)
    return bird ? [{
      bird, class: read.class ?? null, judge, place: read.result?.place ?? null, shared: read.result?.shared ?? false, of: read.result?.of ?? null, award: read.award ?? null,
      points: read.points ?? null, grade: read.grade ?? null, remark: read.remark ?? null, about: clausesMeant(read, draftInForce(drafts, read.draft, data.on.last), noteClause), disqualified: read.disqualified ?? false,
      draft: read.draft ?? null, at: read.at,
    }] : []
  })
  const scores = (data.scores ?? []).flatMap((read): readonly ShowScore[] => {
    const bird = birds.find(read.bird, when)
    const by = read.by ? (data.judges?.some(judge => judge.key === read.by?.text) ? judgeOf(read.by) : keepers.find(read.by)) : null
    return bird ? [{bird, by: by ?? null, draft: read.draft ?? null, headings: headingsOf(read.others, note), at: read.at ?? inside(at, 'scores')}] : []
  })
  const order = data.cancelled && (data.cancelled.by ?? data.cancelled.on) !== undefined ? {by: data.cancelled.by ?? null, on: data.cancelled.on ?? null} : null
  return {at, body, id, name: data.name, on: data.on, place: data.place ?? null, cancelled: data.cancelled?.because ?? null, ...(order ? {order} : {}), entries, scores}
}

type EntryRead = NonNullable<ShowFile['data']['entries']>[number]

/** The clauses that the keeper names; one that the draft does not have is a slip. Where no draft is on record nothing can be named. */
function clausesMeant({about = []}: EntryRead, draft: Draft | null, note: Bench['note']): readonly string[] {
  const known = draft ? clauseIdsOf(draft) : []
  return about.flatMap(({text, at}) => {
    if (known.includes(text)) return [text]
    note(unknownClause(text, at, known))
    return []
  })
}

/** `28 of 30` under a heading of the scale of points. */
function headingsOf(others: NonNullable<ShowFile['data']['scores']>[number]['others'], note: Bench['note']): ShowScore['headings'] {
  return others.flatMap(({key, value, at}) => {
    const given = pointsIn(value)
    if (given && (given.of === null || given.points <= given.of)) return [{name: key, ...given}]
    if (given) note({code: 'unreadable-value', severity: 'error', at, reason: `“${value}” is more than the heading has`, remedy: `write the points first and then how many there are: ${given.of ?? ''} of ${given.points}`})
    else note({code: 'unreadable-value', severity: 'error', at, reason: `“${value}” cannot be read as points`, remedy: 'write points such as 28 of 30'})
    return []
  })
}
