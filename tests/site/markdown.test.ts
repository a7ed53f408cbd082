import fc from 'fast-check'
import remarkGfm from 'remark-gfm'
import remarkHtml from 'remark-html'
import remarkParse from 'remark-parse'
import {unified} from 'unified'
import {describe, expect, it} from 'vitest'
import {openMarkdown} from '../../src/site/markdown.ts'
import {plainBody} from '../../src/site/plain-body.ts'
import type {Picture} from '../../src/site/picture.ts'

const hen: Picture = {path: 'photos/24-031-aa.jpg', width: 960, height: 720, small: null}
const markdown = openMarkdown(new Map([['hen one.jpg', hen]]), new Set(['birds/24-031.html', 'index.html']))
const place = {pagePath: 'diary/x.html', level: 3, footnotes: 'note-1-'}
const html = (text: string, other: Partial<typeof place> = {}): string => markdown.body(text, {...place, ...other}).html

describe('a body made safe', () => {
  it.each([
    ['a script block', '<script>alert(1)</script>\n\nText.', '<p>Text.</p>\n'],
    ['a script in a line', 'One <script>alert(1)</script> two.', '<p>One  two.</p>\n'],
    ['a style in a line', 'One <style>p{}</style> two.', '<p>One  two.</p>\n'],
    ['tags in a line', 'A <b onclick="x()">hen</b>.', '<p>A hen.</p>\n'],
    ['a block with a handler', '<div onload="x()">in it</div>\n\nText.', '<p>Text.</p>\n'],
    ['a comment', 'One <!-- nobody may read this --> two.', '<p>One  two.</p>\n'],
    ['a comment of several lines', '<!-- one\n\ntwo -->\n\nText.', '<p>Text.</p>\n'],
    ['a picture tag', '<img src=x onerror=alert(1)>\n\nText.', '<p>Text.</p>\n'],
    ['a javascript link', '[press](javascript:alert(1))', '<p>press</p>\n'],
    ['a javascript link in disguise', '[press](JaVaScRiPt:alert(1))', '<p>press</p>\n'],
    ['a data link', '[press](data:text/html,x)', '<p>press</p>\n'],
    ['a link by reference', '[press][a]\n\n[a]: javascript:alert(1)', '<p>press</p>\n'],
    ['a link without a scheme', '[press](//elsewhere.example/x)', '<p>press</p>\n'],
    ['control characters', 'One\u0001 *two*\u0008.', '<p>One <em>two</em>.</p>\n'],
  ])('%s', (_, text, expected) => expect(html(text)).toBe(expected))

  it('lets nothing through that could run, whatever is written', () => {
    const piece = fc.constantFrom('<script>', '</script>', '<img src=x onerror=y>', '[a](javascript:b)', '![](javascript:c)', '<!--', '-->', '`', '*', '\n\n', '> ', '| a |', 'word', '<svg/onload=z>', '&lt;', '"', "'")
    fc.assert(fc.property(fc.array(piece, {maxLength: 12}), pieces => {
      expect(html(pieces.join(''))).not.toMatch(/<(?:script|style|svg|iframe|object)|<[^>]*\son\w+\s*=|(?:href|src)="\s*javascript/i)
    }), {numRuns: 300})
  })
})

describe('headings', () => {
  it('stand below the page\'s own, whatever level the keeper began at', () => {
    expect(html('# One\n\n## Two\n\n# Three')).toBe('<h3>One</h3>\n<h4>Two</h4>\n<h3>Three</h3>\n')
    expect(html('## One\n\n### Two')).toBe('<h3>One</h3>\n<h4>Two</h4>\n')
    expect(html('# One', {level: 2})).toBe('<h2>One</h2>\n')
  })

  it('never skip a level', () => {
    expect(html('# One\n\n#### Two\n\n###### Three')).toBe('<h3>One</h3>\n<h4>Two</h4>\n<h5>Three</h5>\n')
  })
})

describe('footnotes', () => {
  const text = 'She sat tight.[^1]\n\n[^1]: For four days.\n'

  it('lead there and back within the page', () => {
    const body = html(text)
    for (const [, target] of body.matchAll(/href="#([^"]+)"/g)) expect(body).toContain(`id="${target ?? ''}"`)
    expect(body).toContain('aria-describedby="note-1-footnote-label"')
    expect(body).toContain('<h3 class="sr-only" id="note-1-footnote-label">Footnotes</h3>')
  })

  it('of two bodies on one page stay apart', () => {
    const ids = (body: string): string[] => [...body.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id ?? '')
    const both = [...ids(html(text)), ...ids(html(text, {footnotes: 'note-2-'}))]
    expect(new Set(both).size).toBe(both.length)
  })
})

describe('tables', () => {
  it('mark heads and columns of numbers', () => {
    expect(html('| a | b |\n|---|--:|\n| 1 | 2 |')).toContain('<th scope="col">a</th>\n<th class="n" scope="col">b</th>')
    expect(html('| a | b |\n|---|--:|\n| 1 | 2 |')).not.toContain('align')
  })

  it('of five columns scroll inside a named region', () => {
    expect(html('| a | b | c | d | e |\n|-|-|-|-|-|\n| 1 | 2 | 3 | 4 | 5 |')).toMatch(/^<section class="scroll" tabindex="0" aria-label="Table: a, b, c, d, e">\n<table>/)
  })
})

describe('pictures', () => {
  it('come from the published copies, with size and words', () => {
    expect(html('![A hen](photos/hen%20one.jpg)')).toBe('<p><img src="../photos/24-031-aa.jpg" alt="A hen" width="960" height="720"></p>\n')
    expect(html('![A hen](../photos/hen%20one.jpg)', {pagePath: 'index.html'})).toContain('src="photos/24-031-aa.jpg"')
  })

  it('that are not there are said to be missing, without their file name', () => {
    expect(html('![A cock](photos/my-house.jpg)')).toBe('<p><span class="soft">A cock (picture not in the photos folder)</span></p>\n')
  })

  it('elsewhere on the web become links, since pages need no network', () => {
    expect(html('![A cock](https://example.org/a.jpg)')).toBe('<p><a href="https://example.org/a.jpg">A cock</a></p>\n')
  })
})

describe('pictures as tags', () => {
  it('are published like others, and of other tags nothing stays', () => {
    const image = '<img src="../photos/24-031-aa.jpg" alt="A hen" width="960" height="720">'
    expect(html('She: <img src="photos/hen%20one.jpg" alt="A hen" onload="x()"> walks.')).toBe(`<p>She: ${image} walks.</p>\n`)
    expect(html('<p align="center">\n<img alt="A hen" src="photos/hen%20one.jpg">\n</p>')).toBe(`<p>${image}</p>\n`)
    expect(html('<script><img src="photos/hen%20one.jpg"></script>')).not.toContain('script')
  })
})

describe('links', () => {
  it('to a record lead to its page', () => {
    expect(html('[hers](../birds/24-031.md#pedigree)')).toBe('<p><a href="../birds/24-031.html#pedigree">hers</a></p>\n')
  })

  it('to nowhere keep their words', () => {
    expect(html('[hers](../birds/99-999.md)')).toBe('<p>hers</p>\n')
    expect(html('[hers](/etc/passwd)')).toBe('<p>hers</p>\n')
  })

  it('to the web stay', () => {
    expect(html('[there](https://example.org/a?b=c&d)')).toBe('<p><a href="https://example.org/a?b=c&#x26;d">there</a></p>\n')
  })
})

describe('words in a line', () => {
  it('lose their paragraph', () => {
    expect(markdown.inline('Low *and* even.', place).html).toBe('Low <em>and</em> even.')
    expect(markdown.inline('Low.', place).html).toBe('Low.')
    expect(markdown.inline('One.\n\nTwo.', place).html).toBe('One. Two.')
  })
})

describe('plainBody(text), the quick way', () => {
  const slow = unified().use(remarkParse).use(remarkGfm).use(remarkHtml)

  it('gives what the full way gives, or steps aside', () => {
    const piece = fc.constantFrom('hen', 'a b', 'x.', '1) y', '12. z', '- a', '+', '=', '---', ' ', '  ', '\n', ' \n', '\n\n', '“quoted”', '"', "it's", '5%', '(see)', 'www.a.de', 'a@b.cd', 'http://x', '&amp;', '<b>', '*e*', '_', '`', '# h', '|', ':', '½', '\t', 'Æ', '!', '?')
    fc.assert(fc.property(fc.array(piece, {maxLength: 10}), pieces => {
      const text = pieces.join('')
      const quick = plainBody(text)
      if (quick !== null) expect(quick).toBe(String(slow.processSync(text)))
    }), {numRuns: 2000})
  })

  it('is taken for plain sentences', () => {
    expect(plainBody('Best keel of her hatch.\nCalm.\n\nMoved to the upper pen.\n')).toBe('<p>Best keel of her hatch.\nCalm.</p>\n<p>Moved to the upper pen.</p>\n')
    expect(plainBody('')).toBe('')
    expect(plainBody('Calm, *very*.')).toBeNull()
  })
})
