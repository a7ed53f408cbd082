/** A standard's body cut into sections (headings) and clauses (paragraphs with a bold run-in head, or smaller headings). */
import type {Paragraph, RootContent, Strong} from 'mdast'
import {toString} from 'mdast-util-to-string'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import {unified} from 'unified'

export interface SectionOfDraft {
  readonly id: string
  readonly title: string
  readonly lead: string
  readonly clauses: readonly PieceOfDraft[]
}

export interface PieceOfDraft {
  readonly id: string
  readonly title: string
  readonly text: string
  readonly variety: string | null
}

const markdown = unified().use(remarkParse).use(remarkGfm)

/**
 * Cuts a body by its own Markdown; every piece keeps the keeper's words as they are. A smaller heading begins a clause, but in a section that `hasVarieties` a colour
 * variety, whose name then stands in the ids of its clauses.
 */
export function sectionsOf(body: string, hasVarieties: (title: string) => boolean = () => false): readonly SectionOfDraft[] {
  const sections: {id: string; title: string; lead: string; clauses: PieceOfDraft[]}[] = []
  let section: (typeof sections)[number] | null = null
  let clause: {id: string; title: string; text: string; variety: string | null} | null = null
  let variety: string | null = null
  const open = (title: string) => {
    section = {id: freeName(slug(title), sections.map(each => each.id)), title, lead: '', clauses: []}
    sections.push(section)
    clause = null
    variety = null
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
    const head = headOf(node), ids = own.clauses.map(each => each.id)
    if (head && node.type === 'heading' && hasVarieties(own.title)) {
      variety = head.title
      clause = null
    } else if (head) {
      clause = {id: freeName([own.id, ...(variety === null ? [] : [slug(variety)]), slug(head.title)].join('/'), ids), title: head.title, text: body.slice(start + head.length, end).trim(), variety}
      own.clauses.push(clause)
    } else {
      const words = body.slice(start, end)
      if (clause) clause.text = joined(clause.text, words)
      else if (variety === null) own.lead = joined(own.lead, words)
      else {
        // a variety told in one piece is a clause by its own name
        clause = {id: freeName(`${own.id}/${slug(variety)}`, ids), title: variety, text: words, variety}
        own.clauses.push(clause)
      }
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
