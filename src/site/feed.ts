/** An Atom feed (RFC 4287) of diary entries and drafts of the standard. Dates come from the records alone, so equal records give an equal feed. */
import type {Download} from '../pages/page.ts'
import type {PartialDate} from '../records/dates.ts'
import {isoDay} from '../records/dates.ts'

export const FEED = 'feed.xml'

export interface FeedEntry {
  readonly title: string
  /** site path */
  readonly path: string
  /** a partial date counts as its first day */
  readonly on: PartialDate
  /** plain text; may be empty */
  readonly summary: string
}

/** Newest entries kept. */
const MOST = 30

/**
 * @param url  address of the site, ending in `/`: entries need addresses that hold anywhere
 * @returns null when there is nothing to tell yet
 */
export function atomFeed(entries: readonly FeedEntry[], {breed, url}: {readonly breed: string; readonly url: string}): Download | null {
  const newest = [...entries].sort((a, b) => b.on.first - a.on.first || (a.path < b.path ? -1 : 1)).slice(0, MOST)
  const [latest] = newest
  if (!latest) return null
  const root = url.endsWith('/') ? url : `${url}/`
  const when = (date: PartialDate): string => `${isoDay(date.first)}T00:00:00Z`
  const lines = [
    '<?xml version="1.0" encoding="utf-8"?>',
    '<feed xmlns="http://www.w3.org/2005/Atom">',
    `<title>${xml(breed)}</title>`,
    `<id>${xml(root)}</id>`,
    `<updated>${when(latest.on)}</updated>`,
    `<author><name>${xml(`The keepers of ${breed}`)}</name></author>`,
    `<link rel="self" href="${xml(root + FEED)}"/>`,
    `<link href="${xml(root)}"/>`,
    ...newest.flatMap(({title, path, on, summary}) => {
      const address = xml(root + encodeURI(path))
      return [
        '<entry>', `<title>${xml(title)}</title>`, `<id>${address}</id>`, `<link href="${address}"/>`, `<updated>${when(on)}</updated>`,
        ...(summary === '' ? [] : [`<summary>${xml(summary)}</summary>`]), '</entry>',
      ]
    }),
    '</feed>', '',
  ]
  return {path: FEED, text: lines.join('\n')}
}

const xml = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;')
