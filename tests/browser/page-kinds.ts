/** Pages of a built site by their kind, so that a check of a few pages is a check of every kind. */
import {statSync} from 'node:fs'
import {join} from 'node:path'
import {filesOf} from '../folders/files-of.ts'

/** `birds/24-031.html` is a page of the kind `birds/*`; a page at the top and a folder's own index are kinds by themselves. */
function kindOf(path: string): string {
  const [folder = '', ...rest] = path.split('/')
  return rest.length === 0 || rest.at(-1) === 'index.html' ? path : `${folder}/*`
}

export interface PageKind {
  readonly fullest: string
  readonly barest: string
}

/** Of every kind its longest page and its shortest. */
export function pagesOfEveryKind(site: string): PageKind[] {
  const kinds = new Map<string, string[]>()
  for (const path of filesOf(site).filter(file => file.endsWith('.html'))) kinds.set(kindOf(path), [...(kinds.get(kindOf(path)) ?? []), path])
  return [...kinds.values()].map(paths => {
    const bySize = [...paths].sort((a, b) => statSync(join(site, a)).size - statSync(join(site, b)).size || (a < b ? -1 : 1))
    return {fullest: bySize.at(-1) ?? '', barest: bySize[0] ?? ''}
  })
}
