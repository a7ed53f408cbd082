/** Every file below a folder on disk, as a path inside it with `/`, sorted by code unit. */
import {readdirSync} from 'node:fs'
import {join} from 'node:path'

export function filesOf(folder: string, inside = ''): string[] {
  return readdirSync(join(folder, inside), {withFileTypes: true}).flatMap(entry => {
    const path = inside === '' ? entry.name : `${inside}/${entry.name}`
    return entry.isDirectory() ? filesOf(folder, path) : [path]
  }).sort()
}
