/** A record that stands in the folder of another kind, or where nothing is looked for: the folder’s name and the record’s keys say where it belongs. */
import {KINDS, type KindId} from './kinds.ts'
import {near} from './near.ts'
import {folderOf, idOf, isWords, KIND_IDS} from './places.ts'
import type {Slip} from './problem.ts'
import {isMap, type Raw} from './raw.ts'

/** Where a record belongs. */
export interface Home {
  readonly kind: KindId
  /** `birds/24-031.md` */
  readonly file: string
}

/**
 * Where a file belongs that is no record of `owner`, the kind its place says; null when it is where it should be, or is no record at all.
 *
 * @param front null where the front matter cannot be read
 */
export function homeOf(file: string, front: Raw, owner: KindId | null): Home | null {
  const kind = owner === null ? kindFromNowhere(file, front) : kindAmongOthers(front, owner)
  return kind === null ? null : {kind, file: placeOf(kind, file)}
}

/** The one slip of a misplaced record. `taken`: another file stands already where it belongs. */
export function misplaced(file: string, home: Home, owner: KindId | null, taken: boolean): Slip {
  const here = owner === null ? ', but no record is looked for here' : `, which ${folderOf(owner)} does not hold`
  const sameFolder = file.slice(0, file.lastIndexOf('/') + 1) === home.file.slice(0, home.file.lastIndexOf('/') + 1)
  return {
    code: 'misplaced-record', severity: 'error', at: {file, path: []}, reason: `this looks like the record of ${KINDS[home.kind].shape.says}${here}`,
    remedy: taken ? `${home.file} stands there already: bring the two together in it` : `${sameFolder ? 'call it' : 'move it to'} ${home.file}`,
  }
}

/** The one slip of a table that lies in the other folder of tables. */
export function misplacedTable(file: string, home: 'measures' | 'scores'): Slip {
  return {
    code: 'misplaced-record', severity: 'error', at: {file, line: 1, column: 1, width: 0}, reason: `this looks like ${home === 'scores' ? 'scores' : 'measures'}, and measures and scores have a folder each`,
    remedy: `move it to ${home}/${file.slice(file.lastIndexOf('/') + 1)}`,
  }
}

function placeOf(kind: KindId, file: string): string {
  const folder = folderOf(kind)
  return folder.endsWith('/') ? `${folder}${idOf(file)}.md` : folder
}

interface Fit {
  readonly kind: KindId
  /** keys that the kind knows */
  readonly known: number
  /** all keys but `private` */
  readonly keys: number
  readonly lacking: number
  readonly strange: number
}

function fitOf(front: Raw, kind: KindId): Fit {
  const {fields = {}, schema} = KINDS[kind].shape
  const keys = isMap(front) ? Object.keys(front).filter(key => key !== 'private') : []
  const known = keys.filter(key => Object.hasOwn(fields, key)).length
  return {
    kind, known, keys: keys.length,
    lacking: Object.entries(fields).filter(([key, field]) => field.required && !keys.includes(key)).length,
    strange: schema.additionalProperties === false ? keys.length - known : 0,
  }
}

/** The likeliest of several kinds: the one that knows the most of the keys. */
const likeliest = (fits: readonly Fit[]): KindId | null => fits.reduce<Fit | null>((best, fit) => (best === null || fit.known > best.known ? fit : best), null)?.kind ?? null

/** Another kind has to have all its needful keys there and know most of them, and more of them than the owner, who finds fault with them. */
function kindAmongOthers(front: Raw, owner: KindId): KindId | null {
  const own = fitOf(front, owner)
  if (own.lacking + own.strange === 0) return null
  return likeliest(KIND_IDS.filter(kind => kind !== owner).map(kind => fitOf(front, kind))
    .filter(fit => fit.lacking === 0 && fit.known > own.known && fit.known >= 2 && 2 * fit.known > fit.keys))
}

/** A folder called nearly as one of ours says the kind, whatever is wrong inside; elsewhere all of the keys have to fit. */
function kindFromNowhere(file: string, front: Raw): KindId | null {
  if (!isWords(file)) return null
  const steps = file.split('/')
  const folder = steps.length > 1 ? `${steps[0] ?? ''}/` : `${idOf(file)}.md`
  const [meant] = near(folder, KIND_IDS.map(folderOf))
  const named = KIND_IDS.find(kind => folderOf(kind) === meant)
  if (named !== undefined && (front === null || fitOf(front, named).known > 0)) return named
  return likeliest(KIND_IDS.map(kind => fitOf(front, kind)).filter(fit => fit.lacking + fit.strange === 0 && fit.known > 0))
}
