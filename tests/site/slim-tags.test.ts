/** Held against a parser that follows the standard: what a browser makes of a page is the same before and after. */
import {fileURLToPath} from 'node:url'
import {defaultTreeAdapter as tree, parse, type DefaultTreeAdapterTypes} from 'parse5'
import {afterEach, describe, expect, it, vi} from 'vitest'
import {openBook} from '../../src/commands/open-book.ts'
import {progressIn} from '../../src/commands/progress.ts'
import {compose} from '../../src/pages/compose.ts'
import {renderSite} from '../../src/site/render.ts'
import {slimTags} from '../../src/site/slim-tags.ts'
import {readTemplates} from '../../src/site/templates-folder.ts'
import {listeningWorld} from '../folders/listening-world.ts'

const turn = vi.hoisted(() => ({off: false}))
vi.mock('../../src/site/slim-tags.ts', async original => {
  const real = await original<{slimTags: (html: string) => string}>()
  return {slimTags: (html: string) => (turn.off ? html : real.slimTags(html))}
})

const BLOCK = /^(?:#document|html|head|body|main|header|footer|nav|section|div|p|ul|ol|li|dl|dt|dd|table|caption|thead|tbody|tfoot|tr|td|th|figure|figcaption|details|summary|blockquote|h[1-6]|pre|title|meta|link)$/
const AS_IT_IS = new Set(['pre', 'textarea', 'script', 'style'])

/** A tree as it is seen: white space runs together, and is not there at the edge of a block. */
function seen(node: DefaultTreeAdapterTypes.Node, raw = false): unknown {
  if (!('childNodes' in node)) return node.nodeName
  const rawHere = raw || AS_IT_IS.has(node.nodeName), children = node.childNodes
  const isEdge = (place: number) => (children[place] ? BLOCK.test(children[place].nodeName) : BLOCK.test(node.nodeName))
  const within = children.map((child, place) => {
    if (!tree.isTextNode(child)) return seen(child, rawHere)
    if (rawHere) return child.value
    const text = child.value.replace(/\s+/g, ' '), start = isEdge(place - 1) ? text.trimStart() : text
    return isEdge(place + 1) ? start.trimEnd() : start
  }).filter(child => child !== '')
  return [node.nodeName, 'attrs' in node ? node.attrs.map(({name, value}) => `${name}=${value}`) : [], within]
}

/** Every page of a project of some hundred chicks. */
async function pagesOf(folder: string, slim: boolean): Promise<ReadonlyMap<string, string>> {
  turn.off = !slim
  const {book, findings} = openBook(fileURLToPath(new URL(`../folders/${folder}/records`, import.meta.url)), undefined, progressIn(listeningWorld(), true))
  if (!book || !findings) throw new Error(`${folder} has records at fault`)
  const {frame, pages, downloads} = compose(findings)
  const site = await renderSite({pages, downloads, frame, photos: {pictures: new Map(), files: new Map()}, templates: readTemplates(null).files})
  return new Map([...site].filter((file): file is [string, string] => file[0].endsWith('.html')))
}

afterEach(() => {
  turn.off = false
})

describe('slimTags(html)', () => {
  it('leaves what a browser makes of every page as it was', async () => {
    const [whole, slim] = [await pagesOf('small-yard', false), await pagesOf('small-yard', true)]
    expect([...slim.keys()]).toEqual([...whole.keys()])
    for (const [path, html] of slim) expect(seen(parse(html)), path).toEqual(seen(parse(whole.get(path) ?? '')))
    const bytes = (pages: ReadonlyMap<string, string>) => [...pages.values()].reduce((sum, html) => sum + html.length, 0)
    expect(bytes(slim)).toBeLessThan(0.94 * bytes(whole))
  })

  it('leaves out what the next tag closes, or the end of the parent', () => {
    expect(slimTags('<table>\n<thead><tr><th>a</th><th>b</th></tr></thead>\n<tbody>\n<tr><td>1</td><td>2</td></tr>\n</tbody></table>'))
      .toBe('<table><thead><tr><th>a<th>b<tbody><tr><td>1<td>2</table>')
    expect(slimTags('<ul><li><p>a</p></li>\n<li>b</li></ul>')).toBe('<ul><li><p>a<li>b</ul>')
    expect(slimTags('<dl><div><dt>a</dt><dd>b</dd></div></dl>')).toBe('<dl><div><dt>a<dd>b</div></dl>')
    expect(slimTags('<p>a</p>\n<p>b</p><figure>c</figure>')).toBe('<p>a<p>b<figure>c</figure>')
  })

  it.each([
    '<p>a</p> and text', '<p>a</p><svg></svg>', '<p>a</p><a href="b">b</a>', '<a href="b"><p>a</p></a>', '<li>a</li><!-- b -->', '<p>a</p><img src="b">', '<p><b>a</b> <i>b</i></p>',
    '<pre>\n<p>a</p>\n<p>b</p></pre>', '<script>"</td><td>"</script>', '<style>\n</style>', '<textarea>\n<p></p><p></textarea>', '<b>a</b>\n<i>b</i>', '<span>a</span><link-like>b</link-like>',
  ])('touches nothing in %s', html => {
    expect(slimTags(html)).toBe(html)
  })
})
