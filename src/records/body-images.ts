/** The pictures that a body names: in Markdown, by reference, or as an `<img>` tag; for whoever publishes them and whoever checks that each is there and has words. */
import type {Image, Parent, Root} from 'mdast'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import {unified} from 'unified'
import {visit} from 'unist-util-visit'

/** A picture that a body asks for. */
export interface BodyImage {
  readonly url: string
  /** path inside `content/photos/`, or null when the address is another */
  readonly file: string | null
  /** empty when none is written, which is a problem for the reader who cannot see it */
  readonly alt: string
  /** written as an `<img>` tag */
  readonly isTag: boolean
  /** characters of the body from and to */
  readonly range: readonly [number, number]
}

const reader = unified().use(remarkParse).use(remarkGfm).freeze()

/** `./photos/a.jpg`, `../photos/a.jpg`, `/photos/a.jpg` → `a.jpg`; null for any other address. */
export function photoFile(url: string): string | null {
  const match = /^(?:\.{0,2}\/)*photos\/([^?#]+)$/.exec(url)
  if (!match?.[1]) return null
  try {
    return decodeURIComponent(match[1])
  } catch {
    return match[1]
  }
}

/** In their order. A body that names none, as most do, is not parsed. */
export function imagesIn(text: string): readonly BodyImage[] {
  if (!/!\[|<img\b/i.test(text)) return []
  const images: BodyImage[] = []
  const tree: Root = reader.parse(text)
  const urls = new Map<string, string>()
  visit(tree, 'definition', ({identifier, url}) => void (urls.has(identifier) || urls.set(identifier, url)))
  visit(tree, node => {
    const start = node.position?.start.offset ?? 0
    const add = (url: string, alt: string, isTag: boolean, from: number, to: number) => images.push({url, file: photoFile(url), alt, isTag, range: [from, to]})
    if (node.type === 'html') for (const tag of imageTags(node.value)) add(tag.url, tag.alt, true, start + tag.at, start + tag.at + tag.length)
    const url = node.type === 'image' ? node.url : node.type === 'imageReference' ? urls.get(node.identifier) : undefined
    if (url !== undefined && 'alt' in node) add(url, node.alt ?? '', false, start, node.position?.end.offset ?? start)
  })
  return images
}

interface ImageTag {
  readonly url: string
  readonly alt: string
  readonly at: number
  readonly length: number
}

/** With values in quotes, as Markdown wants them where they hold a slash. */
const TAG = /<img((?:\s+[^\s=>"'/]+(?:\s*=\s*(?:"[^"]*"|'[^']*'))?)*)\s*\/?>/gi

function imageTags(html: string): ImageTag[] {
  return [...html.matchAll(TAG)].flatMap(({0: {length}, 1: attributes = '', index}) => {
    const values = new Map([...attributes.matchAll(/([^\s=>"'/]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/g)].map(([, name = '', double, single]) => [name.toLowerCase(), double ?? single ?? '']))
    const url = values.get('src')
    return url === undefined ? [] : [{url, alt: values.get('alt') ?? '', at: index, length}]
  })
}

/** What holds paragraphs rather than words. */
const BLOCKS: ReadonlySet<string> = new Set(['root', 'blockquote', 'listItem', 'footnoteDefinition'])

/** Puts a Markdown picture in the place of each `<img>` tag of a photograph or of one on the web, so that both ways of writing one are published alike. */
export function tagsToImages(tree: Root): void {
  visit(tree, 'html', (html, index, parent: Parent | undefined) => {
    if (!parent || index === undefined) return undefined
    const images = imageTags(html.value).filter(({url}) => photoFile(url) !== null || /^https?:/i.test(url)).map(({url, alt}): Image => ({type: 'image', url, alt}))
    if (images.length === 0) return undefined
    const isBlock = BLOCKS.has(parent.type)
    parent.children.splice(index, 1, ...(isBlock ? [{type: 'paragraph' as const, children: images}] : images))
    return index + (isBlock ? 1 : images.length)
  })
}
