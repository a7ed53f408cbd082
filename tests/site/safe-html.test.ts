import {readdirSync, readFileSync} from 'node:fs'
import {expect, it} from 'vitest'
import {SafeHtml} from '../../src/site/safe-html.ts'

const sources = readdirSync(new URL('../../src/', import.meta.url), {recursive: true, encoding: 'utf8'}).filter(path => path.endsWith('.ts'))

it('is made by the Markdown room, the chart drawings and finished templates alone', () => {
  const makers = sources.filter(path => readFileSync(new URL(`../../src/${path}`, import.meta.url), 'utf8').includes('new SafeHtml('))
  expect(makers.map(path => path.replaceAll('\\', '/')).sort()).toEqual(['site/markdown.ts', 'site/render.ts', 'site/templates.ts'])
})

it('no template prints a variable raw', () => {
  const templates = readdirSync(new URL('../../templates/', import.meta.url), {recursive: true, encoding: 'utf8'}).filter(path => path.endsWith('.hbs'))
  for (const path of templates) expect(readFileSync(new URL(`../../templates/${path}`, import.meta.url), 'utf8'), path).not.toMatch(/\{\{\{|\{\{&/)
})

it('says what it holds', () => {
  expect(String(new SafeHtml('<b>x</b>'))).toBe('<b>x</b>')
})
