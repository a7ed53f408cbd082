/** Which kind of record a file is: its place in the folder decides. */
import {KINDS, type KindId} from './kinds.ts'
import {near} from './near.ts'

export type Owner = {readonly what: 'record'; readonly kind: KindId} | {readonly what: 'measures' | 'scores' | 'photo' | 'paper'}

export const KIND_IDS = Object.keys(KINDS) as KindId[]

/** Where the records of a kind lie: `hatches/`, or the one file `project.md`. */
export const folderOf = (kind: KindId): string => KINDS[kind].files.replace(/[^/]*<.*$/, '')

const BY_PLACE = new Map<string, KindId>(KIND_IDS.map(kind => [folderOf(kind).replace('/', ''), kind]))
const TABLES: readonly string[] = ['measures', 'scores']
/** Every folder in which something is looked for. */
export const FOLDERS: readonly string[] = [...[...BY_PLACE.keys()].filter(place => !place.endsWith('.md')), ...TABLES, 'photos', 'papers']

/** What a file is, by its path inside the folder of records; null when it stands where nothing is looked for. */
export function ownerOf(file: string): Owner | null {
  const steps = file.split('/')
  const [place = ''] = steps
  if (steps.length > 1 && place === 'photos') return {what: 'photo'}
  if (steps.length > 1 && place === 'papers') return {what: 'paper'}
  if (steps.length === 2 && file.endsWith('.csv') && (place === 'measures' || place === 'scores')) return {what: place}
  const kind = BY_PLACE.get(place)
  return kind !== undefined && steps.length === (place.endsWith('.md') ? 1 : 2) && file.endsWith('.md') ? {what: 'record', kind} : null
}

/** Files of words: what can be a record, if not under this name. */
export const isWords = (file: string): boolean => /\.(?:md|markdown|mdown|txt)$/i.test(file)

/** A file's name without its folders and its ending: `hatches/2024-03.md` → `2024-03`. */
export function idOf(file: string): string {
  const name = file.slice(file.lastIndexOf('/') + 1)
  return isWords(name) ? name.replace(/(?:\.(?:md|markdown|mdown|txt))+$/i, '') : name.replace(/\.[^.]*$/, '')
}

/** What to do with a file that stands where nothing is looked for and is no record. */
export function placeFor(file: string): string {
  const steps = file.split('/')
  const name = steps.at(-1) ?? file
  const [place = ''] = steps
  if (/\.(?:jpe?g|png|webp|avif|gif|tiff?|heic)$/i.test(name)) return `move it to photos/${name}`
  if (/\.(?:csv|tsv)$/i.test(name)) {
    const table = steps.length > 1 ? [...TABLES.filter(folder => folder === place), ...near(place, TABLES)][0] : undefined
    return table === undefined ? `move it to measures/${name} (weigh days, eggs, feed) or scores/${name} (scoring days)` : `move it to ${table}/${name.replace(/\.\w+$/, '.csv')}`
  }
  if (/\.(?:xlsx?|xlsm|ods|numbers)$/i.test(name)) {
    const csv = name.replace(/\.\w+$/, '.csv')
    return `save it as CSV: ${place === 'scores' ? `scores/${csv}` : place === 'measures' ? `measures/${csv}` : `measures/${csv} or scores/${csv}`}`
  }
  if (/\.(?:pdf|docx?|odt)$/i.test(name)) return `move it to papers/${name}, or out of the records`
  return `records lie in ${FOLDERS.join(', ')}; move it there, or out of the records`
}
