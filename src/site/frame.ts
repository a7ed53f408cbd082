/** What every page of a site shares: the breed's name, the list of all pages, the line at the foot. Words only; made by the pages room. */
import type {Section} from '../pages/page.ts'

export interface Frame {
  /** the breed's name, at the head of every page and in every title */
  readonly breed: string
  /** language of the pages, `en` */
  readonly language: string
  /** the foot's list of all pages, home first; the main pages of the head are taken from it by section */
  readonly contents: readonly ContentsEntry[]
  /** the line at the foot: `Worked from the records as they stood on 30 October 2025. …` */
  readonly asOf: string
  /** absolute address of the published site, ending in `/`; null when it has none, and then there is no feed */
  readonly url: string | null
}

export interface ContentsEntry {
  readonly section: Section | null
  /** `Birds` */
  readonly title: string
  /** `birds.html` */
  readonly path: string
  /** `320 scored, 61 living`; printed after the title and a comma; may be empty */
  readonly note: string
}

const NOT_IN_HEAD: ReadonlySet<Section | null> = new Set<Section | null>(['home', 'methods', 'records', null])

export interface NavEntry {
  readonly title: string
  readonly path: string
  /** for `aria-current`: `page` on that page itself, `true` on a page beneath it, else empty */
  readonly current: 'page' | 'true' | ''
}

/** The head's row of pages; the section's own one is marked. */
export function navOf(frame: Frame, section: Section | null, path: string): readonly NavEntry[] {
  return frame.contents
    .filter(entry => !NOT_IN_HEAD.has(entry.section))
    .map(entry => ({
      title: entry.title, path: entry.path,
      current: entry.path === path ? 'page' : entry.section === section ? 'true' : '',
    }))
}
