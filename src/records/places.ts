/** Which kind of record a file is: its place in the folder decides. */
import {KINDS, type KindId} from './kinds.ts'
import {near} from './near.ts'

export type Owner = {readonly what: 'record'; readonly kind: KindId} | {readonly what: 'measures' | 'scores' | 'photo' | 'paper'}

const KIND_IDS = Object.keys(KINDS) as KindId[]

/** `hatches` → hatch; `project.md` → project. */
const BY_PLACE = new Map<string, KindId>(KIND_IDS.map(kind => [KINDS[kind].files.split('/')[0] ?? '', kind]))
const TABLES: readonly string[] = ['measures', 'scores']
const FOLDERS = [...[...BY_PLACE.keys()].filter(place => !place.endsWith('.md')), ...TABLES, 'photos', 'papers']

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

/** A file's name without its folders and its ending: `hatches/2024-03.md` → `2024-03`. */
export function idOf(file: string): string {
  return file.slice(file.lastIndexOf('/') + 1).replace(/\.[^.]*$/, '')
}

/** Where the front matter alone would put a record: the kinds whose shape it fits, by their place. */
function fitting(front: Parameters<(typeof KINDS)[KindId]['shape']['read']>[0]): KindId[] {
  if (typeof front !== 'object' || front === null || Object.keys(front).length === 0) return []
  return KIND_IDS.filter(kind => {
    let slips = 0
    KINDS[kind].shape.read(front, {file: '', path: []}, () => slips++)
    return slips === 0
  })
}

/** What to do with a file that stands where nothing is looked for. */
export function placeFor(file: string, front: Parameters<typeof fitting>[0]): string {
  const steps = file.split('/')
  const name = steps.at(-1) ?? file
  const [place = ''] = steps
  if (/\.(?:jpe?g|png|webp|avif|gif|tiff?|heic)$/i.test(name)) return `move it to photos/${name}`
  if (/\.(?:csv|tsv)$/i.test(name)) {
    const table = steps.length > 1 ? [...TABLES.filter(folder => folder === place), ...near(place, TABLES)][0] : undefined
    return table === undefined ? `move it to measures/${name} (weigh days, eggs, feed) or scores/${name} (scoring days)` : `move it to ${table}/${name.replace(/\.\w+$/, '.csv')}`
  }
  if (/\.(?:pdf|docx?|odt)$/i.test(name)) return `move it to papers/${name}, or out of the records`
  if (/\.(?:md|markdown|mdown|txt)$/i.test(name)) {
    const base = `${idOf(name)}.md`
    const known = FOLDERS.filter(folder => BY_PLACE.has(folder))
    const meant = steps.length > 1 ? [...known.filter(folder => folder === place), ...near(place, known)][0] : near(base, [...BY_PLACE.keys()])[0]
    if (meant !== undefined) return `move it to ${meant.endsWith('.md') ? meant : `${meant}/${base}`}`
    const [kind] = fitting(front)
    if (kind !== undefined) return `it reads as ${KINDS[kind].shape.says}: move it to ${KINDS[kind].files.includes('/') ? `${KINDS[kind].files.split('/')[0]}/${base}` : KINDS[kind].files}`
  }
  return `records lie in ${FOLDERS.join(', ')}; move it there, or out of the records`
}
