/** The words of a piece of Markdown as a reader hears them: without marks, links' addresses and line breaks, so that only a change of words is one. */
import type {Nodes} from 'mdast'
import {toString} from 'mdast-util-to-string'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import {unified} from 'unified'

const markdown = unified().use(remarkParse).use(remarkGfm).freeze()

/** Pieces whose words stand together; two of them are parted by a space. */
const PIECES: ReadonlySet<string> = new Set(['paragraph', 'heading', 'tableCell', 'code', 'html'])

function pieces(node: Nodes): readonly string[] {
  if (PIECES.has(node.type)) return [toString(node, {includeHtml: false})]
  return 'children' in node ? node.children.flatMap(pieces) : []
}

/** Nothing that Markdown could read as more than words. */
const PLAIN = /^[\p{L}\p{N}\s.,;:?!()’“”'/%-]*$/u

const spaced = (text: string): string => text.trim().replace(/\s+/g, ' ')

export function plainWords(text: string): string {
  if (PLAIN.test(text) && !/^\s*(?:[-+=:]|\d+[.)])|\n\s*(?:[-+=:]|\d+[.)])|:\/\/|www\./m.test(text)) return spaced(text)
  return spaced(pieces(markdown.parse(text.replace(/(?:\\| {2,})\n/g, ' \n'))).join(' '))
}
