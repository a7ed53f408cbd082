/** A page that goes out alone, by mail or in an envelope: stylesheet, fonts and pictures are inside it, and no link leads out of it to where nobody has the site. */
import type {Files} from './assets.ts'
import {addressOf} from './links.ts'

const TYPES: Readonly<Record<string, string>> = {woff2: 'font/woff2', jpg: 'image/jpeg', png: 'image/png', svg: 'image/svg+xml'}

function dataAddress(path: string, content: string | Uint8Array): string {
  const type = TYPES[path.slice(path.lastIndexOf('.') + 1)]
  if (type === undefined) throw new Error(`${path} cannot be put inside a page: what kind of file it is is not known`)
  return `data:${type};base64,${Buffer.from(content).toString('base64')}`
}

/** The stylesheet as it is written. */
export function styleOnly(templates: Files): string {
  const style = templates.get('style.css')
  if (typeof style !== 'string') throw new Error('the templates folder has no style.css')
  return style
}

/** The stylesheet with its fonts inside, for a page that is one file. */
export function styleInside(templates: Files, style = styleOnly(templates)): string {
  return style.replace(/\/\*[\s\S]*?\*\//g, '').replace(/\n\s*/g, '\n').replace(/url\("?([\w./-]+)"?\)/g, (whole, path: string) => {
    const content = templates.get(path)
    return content === undefined ? whole : `url("${dataAddress(path, content)}")`
  })
}

/** A tag's attributes: a sign that ends tags may stand within quotes. */
const ATTRIBUTES = /(?:\s+[^\s=>"']+(?:=(?:"[^"]*"|'[^']*'|[^\s>"']+))?)*\s*\/?/.source
const IMAGE = new RegExp(`<img${ATTRIBUTES}>`, 'g')
const LINK = new RegExp(`<a(${ATTRIBUTES})>([\\s\\S]*?)</a>`, 'g')

/** The value of an attribute as it is written; null when the tag has none of that name. */
function attribute(attributes: string, name: string): string | null {
  for (const [, own, double, single, bare] of attributes.matchAll(/([^\s=>"']+)=(?:"([^"]*)"|'([^']*)'|([^\s>"']+))/g)) if (own === name) return double ?? single ?? bare ?? null
  return null
}

/** A page with its pictures inside. */
export function picturesInside(html: string, pagePath: string, files: Files): string {
  return html.replace(IMAGE, tag => {
    const address = attribute(tag, 'src')
    const found = address === null ? undefined : [...files].find(([path]) => addressOf(path, pagePath) === address)
    const written = tag.includes(` src="${address}"`) ? ` src="${address}"` : ` src=${address}`
    return found ? tag.replace(written, () => ` src="${dataAddress(...found)}"`) : tag
  })
}

/**
 * A page whose links to other pages of the site are words alone; those within it, to the web and to mail stay.
 *
 * @param beside  the file that lies beside it wherever it goes, and may be linked to
 */
export function linksInside(html: string, beside?: string): string {
  return html.replace(LINK, (whole, attributes: string, words: string) => {
    const address = attribute(attributes, 'href') ?? '#'
    return address === beside || /^(?:#|https?:|mailto:)/.test(address) ? whole : words
  })
}
