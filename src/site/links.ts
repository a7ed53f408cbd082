/** From a path of the site to an address that works from the page it stands on, also when the page is opened from a disk. */

/** `birds/24-031.html` → `../`; `index.html` → `` */
export function rootOf(pagePath: string): string {
  return '../'.repeat(pagePath.split('/').length - 1)
}

/** `birds/24-031.html` → `birds/`; `index.html` → ``. Pages of one folder have the same addresses. */
export const folderOf = (pagePath: string): string => pagePath.slice(0, pagePath.lastIndexOf('/') + 1)

/**
 * The address of a site path, of a place on the same page (`#weights`), or of a page elsewhere (http, https, mailto).
 *
 * @throws Error for any other scheme: no record may put one into a link
 * @example addressOf('birds/24-031.html#pedigree', 'steps/BC2.html')  // '../birds/24-031.html#pedigree'
 * @example addressOf('birds/24-031.html', 'birds/22-004.html')  // '24-031.html'
 */
export function addressOf(target: string, pagePath: string): string {
  if (target.startsWith('#')) return target
  const scheme = /^[^/?#]*:/.exec(target)
  if (scheme) {
    if (/^(https?|mailto):$/i.test(scheme[0])) return target
    throw new Error(`${pagePath} links to ${target}, which is neither a page of the site nor a web address`)
  }
  if (target.startsWith('/')) throw new Error(`${pagePath} links to ${target}; paths are counted from the site's root and begin without a slash`)
  const folder = folderOf(pagePath), beside = folder !== '' && target.startsWith(folder) ? target.slice(folder.length) : ''
  // a neighbour is called by its name alone: pages of hundreds of birds are the lighter for it
  return beside !== '' && !beside.includes('/') ? encodeURI(beside) : rootOf(pagePath) + encodeURI(target)
}
