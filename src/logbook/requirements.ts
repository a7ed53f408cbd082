/** What the association asks for, the papers that prove something, and the table of distinctness. */
import {inside} from '../records/problem.ts'
import type {RecordOf} from '../records/records.ts'
import type {Bench} from './bench.ts'
import type {Draft, Requirement, Requirements} from './book.ts'
import {clausesOf} from './clauses-of.ts'
import {draftsInDoubt} from './drafts-in-doubt.ts'
import {askingsWithoutUse} from './inspect/asking-without-use.ts'
import {unknownClause} from './inspect/clause-unknown.ts'
import type {Keepers} from './keepers.ts'
import type {Traits} from './traits.ts'

export function linkRequirements(bench: Bench, traits: Traits, keepers: Keepers, draft: Draft | undefined): Requirements | null {
  const {records, note} = bench, [record] = records.requirements
  if (!record) return null
  const {data, body, at} = record
  const known = draft ? clausesOf(draft).map(clause => clause.id) : [], inDoubt = draftsInDoubt(bench)
  const items = data.requirements.map((read, index) => {
    for (const {text, at: where} of read.clauses ?? []) if (!inDoubt && !known.includes(text)) note(unknownClause(text, where, known))
    const where = read.at ?? inside(at, 'requirements', index)
    for (const slip of askingsWithoutUse(read.kind, read, where)) note(slip)
    return itemOf(read, where, data, traits)
  })
  return {
    at, body, association: data.association ?? null, items, distinctness: distinctnessOf(data.distinctness ?? [], inside(at, 'distinctness')),
    papers: (data.papers ?? []).map((paper, index) => ({
      title: paper.title ?? paper.proves, proves: paper.proves, on: paper.on, until: paper.until ?? null, keeper: paper.keeper ? keepers.find(paper.keeper) ?? null : null, at: inside(at, 'papers', index),
    })),
  }
}

type Read = RecordOf<'requirements'>['data']

function itemOf(read: Read['requirements'][number], at: Requirement['at'], {papers}: Read, traits: Traits): Requirement {
  return {
    kind: read.kind, title: read.title, asked: read.asked, atLeast: read['at-least']?.value ?? null, atMost: read['at-most']?.value ?? null, males: read.males ?? null, females: read.females ?? null,
    seasons: read.seasons ?? null, inARow: read['in-a-row'] ?? false, inside: read.inside ?? false, perClass: read['per-class'] ?? null, judges: read.judges ?? null, exhibitors: read.exhibitors ?? null, shows: read.shows ?? null,
    insideAtLeast: read['inside-at-least'] ?? null, rateAtMost: read['rate-at-most'] ?? null, sizeAtLeast: read['size-at-least'] ?? null, maleLines: read['male-lines'] ?? null,
    judgedOn: read['judged-on'] ?? null, interval: read.interval ?? null, trait: read.trait ? traits.find(read.trait) : null, clauses: (read.clauses ?? []).map(({text}) => text),
    classes: read.classes ?? [], ages: read.ages ?? [], varieties: read.varieties ?? [], sections: read.sections ?? [], toAge: read['to-age'] ?? null, grades: read.grades ?? [],
    leastGrade: read['least-grade'] ?? null, from: read.from ?? null, by: read.by ?? null, within: read.within ?? null, stated: read.stated ?? null, at,
    waived: read.waived ? {
      because: read.waived.because, by: read.waived.by ?? null, until: read.waived.until ?? null,
      on: papers?.find(({file}) => file !== undefined && file === read.waived?.paper)?.on ?? null,
    } : null,
  }
}

type Rows = NonNullable<Bench['records']['requirements'][number]['data']['distinctness']>

/** Breeds in the order in which they are first named; a breed that a row leaves out has nothing in it. */
function distinctnessOf(rows: Rows, at: Requirements['at']): Requirements['distinctness'] {
  if (rows.length === 0) return null
  const breeds = [...new Set(rows.flatMap(row => row.others.map(other => other.key)))]
  return {
    breeds,
    rows: rows.map(({character, others}, index) => ({character, at: inside(at, index), values: breeds.map(breed => others.find(other => other.key === breed)?.value ?? '')})),
  }
}
