/** Changes to a body's syntax tree before it becomes HTML: headings fitted under the page's own, pictures and links led to what the site holds, tables readable on a phone. */
import type {Definition, Image, Link, Parent, PhrasingContent, Root, RootContent, Table} from 'mdast'
import {toString} from 'mdast-util-to-string'
import {SKIP, visit} from 'unist-util-visit'
import type {VFile} from 'vfile'
import {photoFile, tagsToImages} from '../records/body-images.ts'
import {rootOf} from './links.ts'
import type {Pictures} from './picture.ts'

/** What the transformer is told about a body, on its file. */
export interface BodyPlace {
  readonly pagePath: string
  readonly level: number
  readonly pictures: Pictures
  /** paths of the site's pages; a link to anything else that is not on the web is printed as its words alone */
  readonly pages: ReadonlySet<string>
}

export const placeOf = (file: VFile): BodyPlace => file.data.place as BodyPlace

/** As the plugin the processor uses. */
export function fitBody(): (tree: Root, file: VFile) => void {
  return (tree, file) => {
    const place = placeOf(file)
    tagsToImages(tree)
    dropRawHtml(tree)
    resolveReferences(tree)
    fitHeadings(tree, place.level)
    visit(tree, 'image', (image, index, parent) => replace(parent, index, [pictureNode(image, place)]))
    visit(tree, 'link', (link, index, parent) => replace(parent, index, linkNodes(link, place)))
    visit(tree, 'listItem', item => wordForTick(item))
    visit(tree, 'table', (table, index, parent) => replace(parent, index, [tableNode(table)]))
  }
}

function replace(parent: Parent | undefined, index: number | undefined, by: readonly RootContent[]): [typeof SKIP, number] | undefined {
  if (!parent || index === undefined) return undefined
  parent.children.splice(index, 1, ...by)
  return [SKIP, index + by.length]
}

/** Tags and comments go, and with a script or style within a line what stands between its tags. */
function dropRawHtml(tree: Root): void {
  visit(tree, 'html', (html, index, parent) => {
    if (!parent || index === undefined) return undefined
    const element = /^<(script|style)\b/i.exec(html.value)?.[1]?.toLowerCase()
    const end = element === undefined ? -1
      : parent.children.findIndex((child, at) => at > index && child.type === 'html' && child.value.toLowerCase().startsWith(`</${element}`))
    parent.children.splice(index, end < 0 ? 1 : end - index + 1)
    return index
  })
}

/** `[text][name]` and `![alt][name]` become plain links and pictures. */
function resolveReferences(tree: Root): void {
  const definitions = new Map<string, Definition>()
  visit(tree, 'definition', definition => {
    if (!definitions.has(definition.identifier)) definitions.set(definition.identifier, definition)
  })
  if (definitions.size === 0) return
  visit(tree, 'linkReference', (node, index, parent) => {
    const url = definitions.get(node.identifier)?.url
    if (parent && index !== undefined && url !== undefined) parent.children[index] = {type: 'link', url, children: node.children}
  })
  visit(tree, 'imageReference', (node, index, parent) => {
    const url = definitions.get(node.identifier)?.url
    if (parent && index !== undefined && url !== undefined) parent.children[index] = {type: 'image', url, alt: node.alt ?? null}
  })
}

/** The uppermost heading stands at `level`; a deeper one at most one below the heading it belongs to. */
function fitHeadings(tree: Root, level: number): void {
  const open: number[] = []
  visit(tree, 'heading', heading => {
    while (open.length > 0 && (open.at(-1) ?? 0) >= heading.depth) open.pop()
    open.push(heading.depth)
    heading.depth = Math.min(6, level + open.length - 1) as typeof heading.depth
  })
}

/** A picture the site publishes, or the words that say it is not there; a picture elsewhere on the web becomes a link, since no page may need a network. */
function pictureNode(image: Image, place: BodyPlace): PhrasingContent {
  const alt = image.alt ?? ''
  const file = photoFile(image.url)
  const picture = file === null ? undefined : place.pictures.get(file)
  if (picture) {
    const {path, width, height} = picture
    return {...image, data: {hProperties: {src: rootOf(place.pagePath) + encodeURI(path), alt, width: String(width), height: String(height)}}}
  }
  if (/^https?:/i.test(image.url)) return {type: 'link', url: image.url, children: [{type: 'text', value: alt === '' ? 'a picture elsewhere' : alt}]}
  const words = alt === '' ? 'A picture that is not in the photos folder.' : `${alt} (picture not in the photos folder)`
  return {type: 'emphasis', data: {hName: 'span', hProperties: {className: ['soft']}}, children: [{type: 'text', value: words}]}
}

/** Web and mail addresses stay; a record's or page's path is led to its page when there is one; of anything else the words stay. */
function linkNodes(link: Link, place: BodyPlace): readonly PhrasingContent[] {
  const {url} = link
  if (/^(https?|mailto):/i.test(url)) return [{...link, title: null}]
  const [path = '', fragment] = url.replace(/^(?:\.{1,2}\/)+/, '').replace(/\.md(?=#|$)/, '.html').split('#', 2)
  if (/^[/\\]/.test(path) || !place.pages.has(path)) return link.children
  const href = rootOf(place.pagePath) + encodeURI(path) + (fragment === undefined || fragment === '' ? '' : `#${encodeURIComponent(fragment)}`)
  return [{...link, title: null, data: {hProperties: {href}}}]
}

/** `- [x] tail measured` → `done: tail measured`: a box that cannot be ticked says less than a word. */
function wordForTick(item: {checked?: boolean | null | undefined; children: readonly RootContent[]}): void {
  if (typeof item.checked !== 'boolean') return
  const [first] = item.children
  if (first?.type === 'paragraph') first.children.unshift({type: 'text', value: item.checked ? 'done: ' : 'to do: '})
  item.checked = null
}

/** Right-aligned columns hold numbers; from five columns up the table scrolls inside a named region. */
function tableNode(table: Table): RootContent {
  const align = table.align ?? []
  table.align = null
  table.children.forEach((row, line) => row.children.forEach((cell, column) => {
    const number = align[column] === 'right'
    const head = line === 0 && toString(cell).trim() !== '' // an empty corner is the head of nothing
    cell.data = {...(line === 0 && !head ? {hName: 'td'} : {}), hProperties: {...(number ? {className: ['n']} : {}), ...(head ? {scope: 'col'} : {})}}
  }))
  const heads = table.children[0]?.children ?? []
  if (heads.length < 5) return table
  const ariaLabel = `Table: ${heads.map(head => toString(head)).filter(text => text !== '').join(', ')}`
  const region = {type: 'blockquote', data: {hName: 'section', hProperties: {className: ['scroll'], tabIndex: 0, ariaLabel}}, children: [table]}
  return region as RootContent
}
