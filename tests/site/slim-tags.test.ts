/** Held against a parser that follows the standard: what a browser makes of a page is the same before and after. */
import {fileURLToPath} from 'node:url'
import {defaultTreeAdapter as tree, parse, parseFragment, type DefaultTreeAdapterTypes} from 'parse5'
import {describe, expect, it, vi} from 'vitest'
import {openBook} from '../../src/commands/open-book.ts'
import {progressIn} from '../../src/commands/progress.ts'
import {compose} from '../../src/pages/compose.ts'
import {renderSite} from '../../src/site/render.ts'
import {slimFrame, slimTags} from '../../src/site/slim-tags.ts'
import {readTemplates} from '../../src/site/templates-folder.ts'
import {listeningWorld} from '../folders/listening-world.ts'

/** What was slimmed while a site was set: before and after. */
const passed = vi.hoisted((): [string, string][] => [])
vi.mock('../../src/site/slim-tags.ts', async original => {
  const real = await original<{slimTags: (html: string) => string}>()
  return {
    ...real, slimTags: (html: string) => {
      const slim = real.slimTags(html)
      passed.push([html, slim])
      return slim
    },
  }
})

const BLOCK = /^(?:#document|html|head|body|main|header|footer|nav|section|div|p|ul|ol|li|dl|dt|dd|table|caption|thead|tbody|tfoot|tr|td|th|figure|figcaption|details|summary|blockquote|h[1-6]|pre|title|meta|link)$/
const AS_IT_IS = new Set(['pre', 'textarea', 'script', 'style'])

/** The page's frame: the root, what is in it, and what is in its body but for drawings and a way past the head. */
function outline(page: DefaultTreeAdapterTypes.Document): unknown {
  const elements = (node: DefaultTreeAdapterTypes.ParentNode): DefaultTreeAdapterTypes.Element[] => node.childNodes.filter(tree.isElementNode)
  const [html] = elements(page), [, body] = html ? elements(html) : []
  return [html?.nodeName, (html ? elements(html) : []).map(({nodeName}) => nodeName), (body ? elements(body) : []).map(({nodeName}) => nodeName).filter(name => name !== 'svg' && name !== 'a')]
}

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

describe('slimTags(html)', () => {
  it('leaves what a browser makes of every page as it was', async () => {
    const {book, findings} = openBook(fileURLToPath(new URL('../folders/small-yard/records', import.meta.url)), undefined, progressIn(listeningWorld(), true))
    if (!book || !findings) throw new Error('the small yard has records at fault')
    const {frame, pages, downloads} = compose(findings)
    passed.length = 0
    const site = [...await renderSite({pages, downloads, frame, photos: {pictures: new Map(), files: new Map()}, templates: readTemplates(null).files})]
    const matters = passed.filter(([before]) => before.includes('<h1'))
    expect(matters.length).toBe(pages.length)
    for (const [before, after] of matters) expect(seen(parseFragment(after)), before.slice(0, 200)).toEqual(seen(parseFragment(before)))
    expect(matters.reduce((sum, [, {length}]) => sum + length, 0)).toBeLessThan(0.92 * matters.reduce((sum, [{length}]) => sum + length, 0))
    // and the whole, frame and all, stands as it should: nothing of the foot has slipped into the matter
    for (const [path, html] of site) if (typeof html === 'string' && path.endsWith('.html')) expect(outline(parse(html)), path).toEqual(['html', ['head', 'body'], ['header', 'main', 'footer']])
  })

  it('leaves out what the next tag closes, or the end of the parent', () => {
    expect(slimTags('<table>\n<thead><tr><th>a</th><th>b</th></tr></thead>\n<tbody>\n<tr><td>1</td><td>2</td></tr>\n</tbody></table>'))
      .toBe('<table><thead><tr><th>a<th>b<tbody><tr><td>1<td>2</table>')
    expect(slimTags('<ul><li><p>a</p></li>\n<li>b</li></ul>')).toBe('<ul><li><p>a<li>b</ul>')
    expect(slimTags('<dl><div><dt>a</dt><dd>b</dd></div></dl>')).toBe('<dl><div><dt>a<dd>b</div></dl>')
    expect(slimTags('<p>a</p>\n<p>b</p><figure>c</figure>')).toBe('<p>a<p>b<figure>c</figure>')
  })

  it('leaves out quotes that a value needs none of', () => {
    expect(slimTags('<a class="id" href="../birds/24-031.html#a" title="a b">x</a>')).toBe('<a class=id href=../birds/24-031.html#a title="a b">x</a>')
  })

  it.each([
    '<path class="off"/>', '<a title="">x</a>', '<a title="a=b">x</a>', '<a title="a&quot;b">x</a>', '<a title="x > y">x</a>', '<p>said class="big" >', '<img alt="a, b" src="c"/>',
    '<p>a</p> and text', '<p>a</p><svg></svg>', '<p>a</p><a href=b>b</a>', '<a href=b><p>a</p></a>', '<li>a</li><!-- b -->', '<p>a</p><img src=b>', '<p><b>a</b> <i>b</i></p>',
    '<pre>\n<p>a</p>\n<p>b</p></pre>', '<script>"</td><td>"</script>', '<style>\n</style>', '<textarea>\n<p></p><p></textarea>', '<b>a</b>\n<i>b</i>', '<span>a</span><link-like>b</link-like>',
  ])('touches nothing in %s', html => {
    expect(slimTags(html)).toBe(html)
  })
})

describe('slimFrame(html)', () => {
  it('leaves out where head and body begin and end, and keeps the class of a body', () => {
    const frame = (body: string) => `<!DOCTYPE html>\n<html lang=en><head><meta charset=utf-8><title>a</title>\n<script src=b></script></head>${body}\n<header>c</header><main>d</main>\n</body>\n</html>\n`
    expect(slimFrame(frame('<body>'))).toBe('<!DOCTYPE html>\n<html lang=en><meta charset=utf-8><title>a</title>\n<script src=b></script><header>c</header><main>d</main>\n')
    for (const body of ['<body>', '<body class=summary>']) expect(outline(parse(slimFrame(frame(body))))).toEqual(outline(parse(frame(body))))
    expect(slimFrame(frame('<body class=summary>'))).toContain('<body class=summary>')
  })
})
