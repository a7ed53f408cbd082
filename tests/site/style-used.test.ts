import {describe, expect, it} from 'vitest'
import {runningHead, styleUsed} from '../../src/site/style-used.ts'
import {readTemplates} from '../../src/site/templates-folder.ts'

const whole = String(readTemplates(null).files.get('style.css'))
const used = (style: string, html: string): string => styleUsed(style)(html)

describe('styleUsed(style)(html)', () => {
  it.each([
    ['p { margin: 0; }', '<p>a</p>', 'p{margin:0}'],
    ['p { margin: 0; }', '<b>a</b>', ''],
    ['.a .b { margin: 0; }', '<p class=a><i class="c b"></i>', '.a .b{margin:0}'],
    ['.a .b { margin: 0; }', '<p class=a>', ''],
    ['p, .b { margin: 0; }', '<p>a</p>', 'p{margin:0}'],
    [':is(.a, td):has(> i[class]) { margin: 0; }', '<td><i class=x></i>', ':is(.a,td):has(> i[class]){margin:0}'],
    [':is(.a, .b) > p { margin: 0; }', '<p class=c>', ''],
    ['p:not(.b, :last-child) { margin: 0; }', '<p>', 'p:not(.b,:last-child){margin:0}'],
    ['td:nth-child(2n + 1) { margin: 0; }', '<td>', 'td:nth-child(2n + 1){margin:0}'],
    ['[aria-current] { margin: 0; }', '<p>', ''],
    ['a[href$="x.html"] { margin: 0; }', '<a href="y">', 'a[href$="x.html"]{margin:0}'],
    ['p::before { content: "}"; }', '<p>', 'p::before{content:"}"}'],
    ['@media print { p { margin: 0; } .b { margin: 0; } }', '<p>', '@media print{p{margin:0}}'],
    ['@media print { .b { margin: 0; } }', '<p>', ''],
    ['@page { margin: 1cm; @top-left { content: "x"; } }', '<p>', '@page{margin:1cm;@top-left{content:"x"}}'],
    ['@font-face { font-family: "X"; src: url("x.woff2"); }', '<p>', ''],
    ['.tip li { margin: 0; } .tip p { margin: 0; }', '<main><ul><li>a</ul></main><footer class=tip><p>b</footer>', '.tip p{margin:0}'],
    ['/* a } b */ p { margin: 0; }', '<p>', 'p{margin:0}'],
    [':root { --a: 1px; --b: 2px; } p { margin: var(--a); }', '<html><p>', ':root{--a:1px;}\np{margin:var(--a)}'],
    [':root { --a: 1px; --b: 2px; } p { margin: 0; }', '<html><p><svg><path fill=var(--b) /></svg>', ':root{--b:2px}\np{margin:0}'],
  ])('of %j for %j leaves %j', (style, html, left) => {
    expect(used(style, html)).toBe(left)
  })

  it('keeps every rule of our own stylesheet whose classes and elements are there', () => {
    const html = `<html><body class="summary"><main id=matter><section class="scroll" tabindex=0><table class="wide n2"><thead><tr><th scope=col>a<tbody><tr><td>1</table></section>`
    const style = used(whole, html)
    for (const rule of ['.scroll{overflow-x:auto', '.wide{width:100%}', 'th,td{', '.summary', '@media print', ':where(.n2 tr) > :nth-child(2)']) expect(style).toContain(rule)
    for (const rule of ['.ladder', '.pedigree', '.candle', '@font-face', 'n3']) expect(style).not.toContain(rule)
    expect(style.split('{').length).toBe(style.split('}').length)
  })

  it('keeps the typeface and what forced colours ask for, where a page need not be light', () => {
    const style = '@font-face { font-family: "X"; src: url("data:font/woff2;base64,d09G+/=="); }\n@media (forced-colors: active) { p { margin: 0; } .b { margin: 0; } }'
    expect(styleUsed(style, false)('<p>')).toBe('@font-face{font-family:"X";src:url("data:font/woff2;base64,d09G+/==")}\n@media (forced-colors:active){p{margin:0}}')
  })

  it('takes for there what HTML lets one leave out the tags of', () => {
    expect(used('body { margin: 0; }', '<html lang=en><title>a</title><p>b')).toBe('body{margin:0}')
  })

  it('refuses a stylesheet that does not close what it opens', () => {
    expect(() => styleUsed('p { margin: 0;')).toThrow(/open/)
    expect(() => styleUsed('p { margin: 0; }}')).toThrow(/never opens/)
  })
})

describe('runningHead(words)', () => {
  it('lets no word end the rule or the style it stands in', () => {
    expect(runningHead('Skerry Fowl · 2025')).toContain('content:"Skerry Fowl · 2025"')
    expect(runningHead('a "b" \\ </style>')).toContain('content:"a \\22 b\\22  \\5c  \\3c /style>"')
  })
})
