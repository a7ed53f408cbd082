/** A folder of records as reading sees it: the names of its files and their bytes. On disk, or held in memory by a test. */
import {readdirSync, readFileSync, realpathSync, statSync} from 'node:fs'
import {join} from 'node:path'

export interface Folder {
  /** every file, as its path inside the folder, with `/` */
  list(): string[]
  /** one of them, as it is on disk */
  bytes(file: string): Uint8Array
}

/** Something in a folder of records that cannot be looked into: what it holds would be missed without a word. */
export class Unopenable extends Error {
  /** as the folder was named, with the path inside it */
  readonly place: string
  /** the system's word for the reason, such as `EACCES` */
  readonly code: string

  constructor(place: string, fault: unknown) {
    super(`${place} cannot be opened`, {cause: fault})
    this.place = place
    this.code = fault instanceof Error && 'code' in fault ? String(fault.code) : ''
  }
}

/** Files and folders that begin with a dot belong to tools; `templates/` holds the project's own page templates, which are no records. */
const isLeftAlone = (path: string) => /(?:^|\/)\./.test(path) || path === 'templates'

/** A folder on disk. Links are followed, except back into a folder they lie in. Listing it throws `Unopenable` where a folder or a link cannot be followed. */
export function folderOnDisk(root: string): Folder {
  const files: string[] = []
  const opened = <T>(inside: string, open: () => T): T => {
    try {
      return open()
    } catch (fault) {
      throw new Unopenable(join(root, inside), fault)
    }
  }
  const walk = (inside: string, above: readonly string[]) => {
    const here = opened(inside, () => realpathSync(join(root, inside)))
    if (above.includes(here)) return
    for (const entry of opened(inside, () => readdirSync(here, {withFileTypes: true}))) {
      const path = inside === '' ? entry.name : `${inside}/${entry.name}`
      if (isLeftAlone(path)) continue
      const kind = entry.isSymbolicLink() ? opened(path, () => statSync(join(here, entry.name))) : entry
      if (kind.isDirectory()) walk(path, [...above, here])
      else files.push(path)
    }
  }
  return {
    list() {
      files.length = 0
      walk('', [])
      return [...files]
    },
    bytes: file => readFileSync(join(root, file)),
  }
}

/** A folder that lives in memory: paths with their texts. */
export function folderInMemory(texts: Readonly<Record<string, string>>): Folder {
  return {
    list: () => Object.keys(texts).filter(path => !isLeftAlone(path) && !path.startsWith('templates/')),
    bytes(file) {
      const text = texts[file]
      if (text === undefined) throw new Error(`${file} is not in this folder`)
      return Buffer.from(text)
    },
  }
}
