/** A standard's body cut into sections (headings) and clauses (paragraphs with a bold run-in head, or smaller headings). */
import type {Paragraph, RootContent, Strong} from 'mdast'
import {toString} from 'mdast-util-to-string'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import {unified} from 'unified'
import {fileName} from '../records/file-name.ts'
import {sectionKindOf} from './section-kinds.ts'

export interface SectionOfDraft {
  readonly id: string
  readonly title: string
  readonly lead: string
  readonly clauses: readonly PieceOfDraft[]
  /** headings of colour varieties, each with where in the body it begins */
  readonly varieties: readonly {readonly title: string; readonly offset: number}[]
  /** where in the body it begins */
  readonly offset: number
}

export interface PieceOfDraft {
  readonly id: string
  readonly title: string
  readonly text: string
  readonly variety: string | null
  readonly offset: number
}

const markdown = unified().use(remarkParse).use(remarkGfm)

/**
 * Cuts a body by its own Markdown; every piece keeps the keeper's words as they are. A smaller heading begins a clause, but in a section that `hasVarieties` a colour
 * variety, whose name then stands in the ids of its clauses; unless it names a sex or the down, or is smaller than the variety's own. No two pieces have one id, nor ids that make one anchor on a page.
 *
 * @param taken  ids that other pieces of the draft have: `weights/cock`, `egg`
 */
export function sectionsOf(body: string, hasVarieties: (title: string) => boolean = () => false, taken: readonly string[] = []): readonly SectionOfDraft[] {
  const sections: {id: string; title: string; lead: string; clauses: PieceOfDraft[]; varieties: {title: string; offset: number}[]; offset: number}[] = []
  const used = new Set(taken.map(anchorOfId))
  let section: (typeof sections)[number] | null = null
  let clause: {id: string; title: string; text: string; variety: string | null; offset: number} | null = null
  let variety: {readonly name: string; readonly id: string; readonly depth: number} | null = null
  const open = (title: string, offset: number) => {
    section = {id: freeName(slug(title), used), title, lead: '', clauses: [], varieties: [], offset}
    sections.push(section)
    clause = null
    variety = null
    return section
  }
  for (const node of markdown.parse(body).children) {
    const start = node.position?.start.offset ?? 0, end = node.position?.end.offset ?? 0
    if (node.type === 'heading' && node.depth <= 2) {
      open(toString(node), start)
      continue
    }
    // what stands before the first heading is a section without a title
    const own: (typeof sections)[number] = section ?? open('', start), under: typeof variety = variety
    const head = headOf(node)
    if (head && node.type === 'heading' && hasVarieties(own.title) && !isPartOfVariety(head.title) && !(under !== null && node.depth > under.depth)) {
      const again = own.varieties.some(({title}) => title === head.title), name = `${own.id}/${slug(head.title)}`
      variety = {name: head.title, depth: node.depth, id: again ? name : freeName(name, used)}
      own.varieties.push({title: head.title, offset: start})
      clause = null
    } else if (head) {
      clause = {id: freeName(`${under?.id ?? own.id}/${slug(head.title)}`, used), title: head.title, text: body.slice(start + head.length, end).trim(), variety: under?.name ?? null, offset: start}
      own.clauses.push(clause)
    } else {
      const words = body.slice(start, end)
      if (clause) clause.text = joined(clause.text, words)
      else if (under === null) own.lead = joined(own.lead, words)
      else {
        // a variety told in one piece is a clause by its own name
        clause = {id: own.clauses.some(({id}) => id === under.id) ? freeName(under.id, used) : under.id, title: under.name, text: words, variety: under.name, offset: start}
        own.clauses.push(clause)
      }
    }
  }
  return sections
}

/** Words of which a heading speaks of sexes, and of no variety. */
const SEXES_ALONE = /^(?:(?:in|of|the|both|either|sex|sexes|and|adult|males?|females?|cocks?|hens?|cockerels?|pullets?)(?:[\s,]+|$))+$/i

const isPartOfVariety = (title: string): boolean => SEXES_ALONE.test(title) || sectionKindOf(title) === 'down'

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

/** As it stands in the address of a page: `colour/light` and `colour-light` are one. */
const anchorOfId = (id: string): string => fileName(id.replaceAll('/', '-'))

/** The name, with a number where it is taken; it is taken from now on. */
function freeName(name: string, used: Set<string>): string {
  let free = name
  for (let number = 2; used.has(anchorOfId(free)); number++) free = `${name}-${number}`
  used.add(anchorOfId(free))
  return free
}
