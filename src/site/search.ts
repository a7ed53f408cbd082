/** The search index as a script, since a page opened from a disk may load a script but no data file. Loaded only when somebody searches. */
import type {Download, Page} from '../pages/page.ts'

const SEARCH_INDEX = 'search-index.js'

/** Words that title and kind do not hold already: the search looks in all of them, a word at a time. */
function otherWords(title: string, {kind, words}: NonNullable<Page['search']>): string {
  const known = `${title} ${kind}`.toLowerCase()
  return words.split(' ').filter((word, place, all) => !known.includes(word.toLowerCase()) && all.indexOf(word) === place).join(' ')
}

/** One row a page that wants to be found: title, path, kind, words. */
export function searchIndex(pages: readonly Page[]): Download {
  const rows = pages.flatMap(page => (page.search ? [[page.title, page.path, page.search.kind, otherWords(page.title, page.search)]] : []))
  return {path: SEARCH_INDEX, text: `window.pinfeatherIndex = [\n${rows.map(row => JSON.stringify(row)).join(',\n')}\n]\n`}
}
