/** What the association asks for, the papers that prove something, and the table of distinctness. */
import {inside} from '../records/problem.ts'
import type {Bench} from './bench.ts'
import type {Requirement, Requirements} from './book.ts'
import type {Traits} from './traits.ts'

export function linkRequirements({records}: Bench, traits: Traits): Requirements | null {
  const [record] = records.requirements
  if (!record) return null
  const {data, body, at} = record
  return {
    at, body, association: data.association ?? null,
    items: data.requirements.map((read, index): Requirement => ({
      kind: read.kind, title: read.title, asked: read.asked, atLeast: read['at-least'] ?? null, atMost: read['at-most'] ?? null, males: read.males ?? null,
      females: read.females ?? null, seasons: read.seasons ?? null, perClass: read['per-class'] ?? null, judges: read.judges ?? null, interval: read.interval ?? null,
      trait: read.trait ? traits.find(read.trait) : null, stated: read.stated ?? null,
      waived: read.waived ? {because: read.waived.because, by: read.waived.by ?? null, on: data.papers?.find(({file}) => file !== undefined && file === read.waived?.paper)?.on ?? null} : null, at: read.at ?? inside(at, 'requirements', index),
    })),
    papers: (data.papers ?? []).map(paper => ({title: paper.title ?? paper.proves, proves: paper.proves, on: paper.on, until: paper.until ?? null})),
    distinctness: distinctnessOf(data.distinctness ?? []),
  }
}

type Rows = NonNullable<Bench['records']['requirements'][number]['data']['distinctness']>

/** Breeds in the order in which they are first named; a breed that a row leaves out has nothing in it. */
function distinctnessOf(rows: Rows): Requirements['distinctness'] {
  if (rows.length === 0) return null
  const breeds = [...new Set(rows.flatMap(row => row.others.map(other => other.key)))]
  return {
    breeds,
    rows: rows.map(({character, others}) => ({character, values: breeds.map(breed => others.find(other => other.key === breed)?.value ?? '')})),
  }
}
