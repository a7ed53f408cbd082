import type {Paragraph} from 'mdast'
import {toString} from 'mdast-util-to-string'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import {unified} from 'unified'
import type {Slip, Spot} from '../../records/problem.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const draft = (head: string) => `---\ndraft: 1\non: 2024-10-01\n---\n## General characteristics, male\n\n**Tail.** Of medium length.\n\n${head}\n\nA wry tail.\n`

export const entry: ManualEntry = {
  code: 'head-unread', severity: 'warning', title: 'A heading or head of a clause that is not read as one',
  cause: 'In the latest draft a line begins with ## and no space behind them, a paragraph with a name in single stars, or a section has a heading a letter away from a part of a standard. What was meant to begin there is taken for more words of what stands above, or for a section of your own.',
  remedy: 'Write ## and a space before a heading, two stars on either side of the name of a clause, and the name of a part as it is spelt.',
  wrong: {'standard/1.md': draft('##Faults')},
  right: {'standard/1.md': draft('## Faults')},
}

export interface UnreadHead {
  readonly is: 'heading' | 'clause'
  /** as written: `##Faults`, `*Comb.*` */
  readonly words: string
  readonly meant: string
  /** in the body */
  readonly offset: number
}

const markdown = unified().use(remarkParse).use(remarkGfm)

/** A name of so many words can head a clause; more are a sentence. */
const LONGEST = 5

/** `*Comb.*` at the start of a paragraph, whose stop stands inside the stars. */
function starred({children: [first]}: Paragraph): string | null {
  const words = first?.type === 'emphasis' ? toString(first) : ''
  return /[.:]\s*$/.test(words) && words.split(/\s+/).length <= LONGEST ? words.replace(/[.:]\s*$/, '').trim() : null
}

export function unreadHeads(body: string): readonly UnreadHead[] {
  return markdown.parse(body).children.flatMap((node): readonly UnreadHead[] => {
    if (node.type !== 'paragraph') return []
    const from = node.position?.start.offset ?? 0, words = body.slice(from, node.position?.end.offset ?? from), name = starred(node)
    const glued = [...words.matchAll(/^( {0,3})(#{2,6})(\p{L}[^\n]*)/gmu)].map(({index, 1: blank = '', 2: marks = '', 3: rest = ''}): UnreadHead => (
      {is: 'heading', words: `${marks}${rest}`.trim(), meant: `${marks} ${rest.trim()}`, offset: from + index + blank.length}))
    return [...(name === null ? [] : [{is: 'clause' as const, words: /^\S[^\n]{0,80}?[.:][*_]/.exec(words)?.[0] ?? name, meant: `**${name}.**`, offset: from}]), ...glued]
  })
}

export const unreadHead = ({is, words, meant}: UnreadHead, at: Spot): Slip => slipOf(entry, at, `“${words}” begins no ${is === 'heading' ? 'section' : 'clause'}`, is === 'heading' ? `write a space: ${meant}` : `begin the paragraph with ${meant}`)

export const headingMisspelt = (title: string, at: Spot, meant: readonly string[]): Slip => slipOf(entry, at, `no part of a standard is called ${title}`, `did you mean ${meant.join(' or ')}?`)
