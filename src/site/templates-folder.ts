/** The templates folder as one map: ours, and over it, file by file, the project's own `templates/` beside its records. */
import {readdirSync, readFileSync} from 'node:fs'
import {join} from 'node:path'
import {fileURLToPath} from 'node:url'

export interface TemplatesFolder {
  /** path in the folder → content; text, but for fonts */
  readonly files: ReadonlyMap<string, string | Uint8Array>
  /** the project's own files in use: most replace one of ours, a new partial may be called by another */
  readonly own: readonly string[]
  /** the project's own files that replace nothing and that no template can call: likely a slip in a name */
  readonly strangers: readonly string[]
}

const OURS = fileURLToPath(new URL('../../templates/', import.meta.url))
const TEXT = /\.(?:hbs|css|js|svg|txt|json)$/
/** Files that may be new, since a project's own templates can call them. */
const MAY_BE_NEW = /^(?:partials|pages)\/[\w-]+\.hbs$/

/** @param own  the project's own templates folder, `<content>/templates`; it need not exist */
export function readTemplates(own: string | null): TemplatesFolder {
  const files = readFolder(OURS)
  const used: string[] = [], strangers: string[] = []
  for (const [path, content] of own === null ? [] : readFolder(own)) {
    if (files.has(path) || MAY_BE_NEW.test(path)) {
      files.set(path, content)
      used.push(path)
    } else strangers.push(path)
  }
  return {files, own: used, strangers}
}

function readFolder(folder: string, inner = ''): Map<string, string | Uint8Array> {
  const files = new Map<string, string | Uint8Array>()
  let entries
  try {
    entries = readdirSync(join(folder, inner), {withFileTypes: true})
  } catch (fault) {
    if (inner === '' && (fault as NodeJS.ErrnoException).code === 'ENOENT') return files
    throw fault
  }
  for (const entry of entries.sort((a, b) => (a.name < b.name ? -1 : 1))) {
    if (entry.name.startsWith('.')) continue
    const path = inner === '' ? entry.name : `${inner}/${entry.name}`
    if (entry.isDirectory()) for (const [key, content] of readFolder(folder, path)) files.set(key, content)
    else if (entry.isFile()) files.set(path, TEXT.test(path) ? readFileSync(join(folder, path), 'utf8') : readFileSync(join(folder, path)))
  }
  return files
}
