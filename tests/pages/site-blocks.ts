/** A book's whole site as blocks of words: rows, sentences, headings. Charts are drawn from nothing, since their words stand beside them; what they would draw is given apart. */
import {compose} from '../../src/pages/compose.ts'
import type {Findings} from '../../src/findings/study.ts'
import {renderSite} from '../../src/site/render.ts'
import {readTemplates} from '../../src/site/templates-folder.ts'

export interface Block {
  readonly page: string
  readonly text: string
}

const templates = readTemplates('no-folder').files
/** pages of words that no record enters */
const MANUALS = new Set(['methods.html', 'problems.html', 'record-formats.html'])
const BEGINS = /(?=<(?:tr|p|li|h[1-6]|dt|caption|figcaption|section|table|article|aside|summary|desc|title|div)\b)/
const NOTHING_DRAWN = {$schema: 'https://vega.github.io/schema/vega-lite/v6.json', data: {values: []}, mark: 'point'}

/** Every page but the manuals, and of birds the first few. */
export async function siteOf(findings: Findings, birds = 3): Promise<{readonly blocks: readonly Block[]; readonly drawn: readonly unknown[]}> {
  const composed = compose(findings), drawn: unknown[] = []
  let taken = 0
  const undrawn = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(undrawn)
    if (value === null || typeof value !== 'object' || Object.getPrototypeOf(value) !== Object.prototype) return value
    if ('kind' in value && value.kind === 'figure' && 'spec' in value) {
      drawn.push(value.spec)
      return {...value, spec: NOTHING_DRAWN}
    }
    return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, undrawn(each)]))
  }
  const pages = composed.pages.filter(({path}) => !MANUALS.has(path) && (!path.startsWith('birds/') || taken++ < birds)).map(page => ({...page, view: undrawn(page.view) as object}))
  const site = await renderSite({...composed, pages, downloads: [], photos: {pictures: new Map(), files: new Map()}, templates})
  const blocks = [...site].flatMap(([page, text]) => (page.endsWith('.html') && typeof text === 'string' ? text.replace(/<(style|script)[\s\S]*?<\/\1>/g, '').split(BEGINS).map(block => ({page, text: wordsOf(block)})) : []))
  return {blocks: blocks.filter(({text}) => text !== ''), drawn}
}

const wordsOf = (html: string): string => html.replace(/<[^>]+>/g, ' ').replace(/&#x3D;/g, '=').replace(/&[a-z#0-9]+;/g, ' ').replace(/\s+/g, ' ').trim()
