/** The words at the head of printed sheets, safe in a stylesheet that stands in a page. */
import {describe, expect, it} from 'vitest'
import {cssString, pageHeads} from '../../src/site/page-heads.ts'
import {sampleSite, textAt} from './sample-site.ts'

describe('cssString(words)', () => {
  it.each([
    ['Skerry Fowl', '"Skerry Fowl"'], ['the “Skerry”, ½ bred', '"the “Skerry”, ½ bred"'], ['a "b"', '"a \\22 b\\22 "'], ['a \\ b', '"a \\5c  b"'],
    ['</style><b>', '"\\3c /style>\\3c b>"'], ['a\nb\r\f', '"a\\a b\\d \\c "'],
  ])('%j is %s', (words, wanted) => {
    expect(cssString(words)).toBe(wanted)
  })
})

describe('pageHeads(heads)', () => {
  it('stand on every sheet but the first, and differ where a part is enclosed', () => {
    const rules = pageHeads({left: 'L', right: 'R', enclosed: 'E'})
    expect(rules).toContain('@page{@top-left{')
    expect(rules).toContain('@top-left{content:"L"}@top-right{content:"R"}')
    expect(rules).toContain('@page enclosed{@top-right{content:"E"}}')
    expect(rules).toMatch(/@page:first\{@top-left\{content:none\}@top-right\{content:none\}\}$/)
    expect(pageHeads({left: 'L', right: 'R'})).not.toContain('enclosed')
  })

  it('are in the head of a page that has them, and of no other', async () => {
    const page = textAt(await sampleSite({template: 'x', heads: {left: 'Skerry </title> Fowl', right: 'R'}}), 'page.html')
    expect(page).toMatch(/<\/title>\n<style>@page\{.*\\3c \/title> Fowl.*<\/style>[\s\S]*<main/)
    expect(textAt(await sampleSite({template: 'x'}), 'page.html')).not.toContain('<style>')
  })
})
