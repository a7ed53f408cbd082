/** Drafts of the standard, each cut into sections (headings) and clauses (paragraphs with a bold run-in head, or smaller headings). */
import type {Paragraph, RootContent, Strong} from 'mdast'
import {toString} from 'mdast-util-to-string'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import {unified} from 'unified'
import {inside, type Note} from '../records/problem.ts'
import {inUnit} from '../records/quantities.ts'
import type {RecordOf} from '../records/records.ts'
import type {Bench} from './bench.ts'
import type {Clause, Draft} from './book.ts'
import {unknownClause} from './inspect/clause-unknown.ts'
import type {Photographs} from './photographs.ts'
import type {Traits} from './traits.ts'

type Section = Draft['sections'][number]

const markdown = unified().use(remarkParse).use(remarkGfm)

export function linkDrafts(bench: Bench, traits: Traits, photographs: Photographs): readonly Draft[] {
  const records = [...bench.records.draft].sort((a, b) => a.data.draft - b.data.draft || a.data.on.first - b.data.on.first)
  const drafts: Draft[] = []
  for (const record of records) {
    const draft = draftOf(record, traits, photographs, bench.note)
    noteReasons(record, draft, drafts.at(-1), bench.note)
    drafts.push(draft)
  }
  return drafts
}

function draftOf({data, body, at}: RecordOf<'draft'>, traits: Traits, photographs: Photographs, note: Note): Draft {
  const sections = sectionsOf(body)
  const ids = sections.flatMap(section => section.clauses.map(clause => clause.id))
  const measured = new Map((data.clauses ?? []).map(({key, value, keyAt}) => {
    if (!ids.includes(key)) note(unknownClause(key, keyAt, ids))
    return [key, value.trait ? traits.find(value.trait) : null]
  }))
  return {
    at, body, number: data.draft, on: data.on, title: data.title ?? '', classification: data.classification ?? null, origin: data.origin ?? null,
    egg: data.egg ?? null, rings: {male: data.rings?.male ?? null, female: data.rings?.female ?? null},
    sections: sections.map(section => ({...section, clauses: section.clauses.map(clause => ({...clause, trait: measured.get(clause.id) ?? null}))})),
    weights: (data.weights ?? []).map(({key, value}) => ({class: key, grams: inUnit(value, 'g') ?? 0})),
    points: (data.scale ?? []).map(({key, value}) => ({name: key, points: value})),
    reasons: new Map((data.reasons ?? []).map(({key, value}) => [key, value])),
    photos: photographs.of(data.photos, inside(at, 'photos')),
  }
}

/** Cuts a body by its own Markdown; every piece keeps the keeper's words as they are. */
export function sectionsOf(body: string): readonly Section[] {
  const sections: {id: string; title: string; lead: string; clauses: Clause[]}[] = []
  let section: (typeof sections)[number] | null = null
  let clause: {id: string; title: string; text: string; trait: null} | null = null
  const open = (title: string) => {
    section = {id: freeName(slug(title), sections.map(each => each.id)), title, lead: '', clauses: []}
    sections.push(section)
    clause = null
    return section
  }
  for (const node of markdown.parse(body).children) {
    const start = node.position?.start.offset ?? 0, end = node.position?.end.offset ?? 0
    if (node.type === 'heading' && node.depth <= 2) {
      open(toString(node))
      continue
    }
    // what stands before the first heading is a section without a title
    const own: (typeof sections)[number] = section ?? open('')
    const head = headOf(node)
    if (head) {
      const name = `${own.id}/${slug(head.title)}`
      clause = {id: freeName(name, own.clauses.map(each => each.id)), title: head.title, text: body.slice(start + head.length, end).trim(), trait: null}
      own.clauses.push(clause)
    } else {
      const words = body.slice(start, end)
      if (clause) clause.text = joined(clause.text, words)
      else own.lead = joined(own.lead, words)
    }
  }
  return sections
}

const joined = (before: string, more: string) => (before === '' ? more : `${before}\n\n${more}`)

/** The title of a clause and how many characters of the piece its head takes. */
function headOf(node: RootContent): {readonly title: string; readonly length: number} | null {
  if (node.type === 'heading') return {title: toString(node), length: lengthOf(node)}
  const strong = node.type === 'paragraph' ? boldStart(node) : null
  return strong ? {title: toString(strong).replace(/[.:]\s*$/, '').trim(), length: lengthOf(strong)} : null
}

const boldStart = ({children: [first]}: Paragraph): Strong | null => (first?.type === 'strong' ? first : null)
const lengthOf = ({position}: RootContent): number => (position?.end.offset ?? 0) - (position?.start.offset ?? 0)

/** `General characteristics, male` → `general-characteristics-male` */
export const slug = (title: string): string => title.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/g, '') || 'preface'

function freeName(name: string, used: readonly string[]): string {
  let free = name
  for (let number = 2; used.includes(free); number++) free = `${name}-${number}`
  return free
}

/** A reason is given for a piece of this draft, or for one of the draft before that was taken out. */
function noteReasons({data}: RecordOf<'draft'>, draft: Draft, before: Draft | undefined, note: Note): void {
  const known = new Set([...piecesOf(draft), ...(before ? piecesOf(before) : [])])
  for (const {key, keyAt} of data.reasons ?? []) if (!known.has(key)) note(unknownClause(key, keyAt, [...known]))
}

function piecesOf({sections, weights, points}: Draft): readonly string[] {
  return [
    'origin', 'classification', 'egg', 'rings', 'rings/male', 'rings/female', 'weights', ...weights.map(weight => `weights/${slug(weight.class)}`),
    'scale', ...points.map(heading => `scale/${slug(heading.name)}`), ...sections.flatMap(section => [section.id, ...section.clauses.map(clause => clause.id)]),
  ]
}
