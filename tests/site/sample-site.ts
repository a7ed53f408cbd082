/** A site of one page, for tests of templates and of what stands around a page. */
import type {Page} from '../../src/pages/page.ts'
import {SECTIONS} from '../../src/pages/page.ts'
import type {Frame} from '../../src/site/frame.ts'
import {renderSite} from '../../src/site/render.ts'
import type {SiteInput} from '../../src/site/render.ts'
import {readTemplates} from '../../src/site/templates-folder.ts'

export const frame: Frame = {
  breed: 'Skerry Fowl', language: 'en', url: null, asOf: 'Worked from the records as they stood on 30 October 2025.',
  contents: SECTIONS.map(section => ({section, title: section.charAt(0).toUpperCase() + section.slice(1), path: section === 'home' ? 'index.html' : `${section}.html`, note: ''})),
}

export function samplePage(own: Partial<Page>): Page {
  return {path: 'page.html', title: 'A page', section: null, view: {}, ...own, template: 'sample'}
}

/** Everything `renderSite` needs, with one page on a template of this text. */
export function sampleInput(template = 'x'): SiteInput {
  return {
    pages: [samplePage({})], downloads: [], frame, photos: {pictures: new Map(), files: new Map()},
    templates: new Map([...readTemplates(null).files, ['pages/sample.hbs', template]]),
  }
}

/** All files of a site at once, by path. */
export const wholeSite = async (input: SiteInput): Promise<Map<string, string | Uint8Array>> => new Map(await renderSite(input))

export function sampleSite({template, ...own}: Partial<Page> & {readonly template: string}): Promise<Map<string, string | Uint8Array>> {
  return wholeSite({...sampleInput(template), pages: [samplePage(own)]})
}

export function textAt(files: ReadonlyMap<string, string | Uint8Array>, path: string): string {
  const content = files.get(path)
  if (typeof content !== 'string') throw new Error(`${path} is not in the site, or is no text: ${[...files.keys()].join(' ')}`)
  return content
}
