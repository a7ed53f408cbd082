/** What every room of linking is handed: the records as read, and a hand to take what is wrong with them. */
import type {Note, Spot} from '../records/problem.ts'
import type {Reading, Records} from '../records/records.ts'

export interface Bench {
  readonly records: Records
  /** the reference of loci, as far as the traits name them */
  readonly reference: Reading['reference']
  /** of the records as they were read, 64 hex digits */
  readonly checksum: string
  /** every file that was read */
  readonly files: readonly string[]
  readonly note: Note
  /** takes what is wrong with uses of a thing; nothing, when the thing's own file could not be read whole */
  noteAbout(thing: {readonly at: Spot}): Note
  /** could something of this file not be read? Then what it lacks is no second fault */
  isFaulty(file: string): boolean
  /** could something of any file below this folder (`traits/`) not be read? */
  hasFaultyIn(folder: string): boolean
  /** does a file that could not be read whole give this band to a bird? Then the band is not also unknown */
  mayStandInFaulty(band: string): boolean
}

export function benchOf(reading: Reading, note: Note): Bench {
  let bands: Set<string> | null = null
  return {
    records: reading.records,
    reference: reading.reference,
    checksum: reading.checksum.whole,
    files: [...reading.texts.keys()],
    note,
    noteAbout: ({at}) => (reading.faulty.has(at.file) ? () => undefined : note),
    isFaulty: file => reading.faulty.has(file),
    hasFaultyIn: folder => [...reading.faulty.keys()].some(file => file.startsWith(folder)),
    mayStandInFaulty(band) {
      bands ??= bandsInFaulty(reading)
      return bands.has(band)
    },
  }
}

/** Bands after `band:` or `bands:` in the text of hatches and birds that could not be read whole, and the names of those files. */
function bandsInFaulty({faulty, texts}: Reading): Set<string> {
  const bands = new Set<string>()
  for (const [place, file] of faulty) {
    if (!/^(?:birds|hatches)\//.test(place)) continue
    bands.add(place.replace(/^.*\//, '').replace(/\.md$/, ''))
    for (const [, words = ''] of (texts.get(file) ?? '').matchAll(/\bbands?["']?\s*:\s*(\[[^\]]*\]|[^\s,}\]]+)/g)) {
      for (const word of words.split(/[\s,[\]{}"']+/)) if (word !== '') bands.add(word)
    }
  }
  return bands
}
