/** A page that goes out alone: what is taken into it, and which links stay. */
import {describe, expect, it} from 'vitest'
import {linksInside, picturesInside} from '../../src/site/one-file.ts'

describe('linksInside(html)', () => {
  it.each([
    ['<a href="x.html">words</a>', 'words'],
    ['<a href="x.html" title="a > b">words</a>', 'words'],
    ['<a title="a > b" href="x.html">words</a>', 'words'],
    ["<a title='a \"> b' href='x.html'>words</a>", 'words'],
    ['<a title="see href=" class="b" href="#there">words</a>', '<a title="see href=" class="b" href="#there">words</a>'],
    ['<a\n  class="b"\n  href="x.html"\n>words</a>', 'words'],
    ['<a data-href="x.html" href="https://example.org/a>b">words</a>', '<a data-href="x.html" href="https://example.org/a>b">words</a>'],
    ['<a id="here">words</a> <a href="x.html"><b>more</b></a>', '<a id="here">words</a> <b>more</b>'],
    ['<abbr title="x">w</abbr> <a href="mailto:a@example.org">words</a>', '<abbr title="x">w</abbr> <a href="mailto:a@example.org">words</a>'],
  ])('%s', (html, inside) => {
    expect(linksInside(html)).toBe(inside)
  })
})

describe('picturesInside(html, page, files)', () => {
  it('takes in a picture whose words hold a sign that ends tags', () => {
    const html = picturesInside('<img alt="a > b" src="../photos/a.jpg" width="4"> <img src="../photos/none.jpg" alt="">', 'birds/1.html', new Map([['photos/a.jpg', 'A']]))
    expect(html).toBe('<img alt="a > b" src="data:image/jpeg;base64,QQ==" width="4"> <img src="../photos/none.jpg" alt="">')
  })
})
