/** The search index as a script, since a page opened from a disk may load a script but no data file. Loaded only when somebody searches. */
import type {Download, Page} from '../pages/page.ts'

export const SEARCH_INDEX = 'search-index.js'

/** One row a page that wants to be found: title, path, kind, words. */
export function searchIndex(pages: readonly Page[]): Download {
  const rows = pages.flatMap(page => (page.search ? [[page.title, page.path, page.search.kind, page.search.words]] : []))
  return {path: SEARCH_INDEX, text: `window.pinfeatherIndex = [\n${rows.map(row => JSON.stringify(row)).join(',\n')}\n]\n`}
}
