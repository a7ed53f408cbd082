import {fileName} from '../../records/file-name.ts'
import {isNamedAfter} from '../bird-files.ts'
import type {Bird} from '../book.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const BIRD = '---\nband: H-9\nsex: male\nstrain: holm-white\n---\n'

export const entry: ManualEntry = {
  code: 'file-misnamed', severity: 'warning', title: 'A bird’s file with another name than its band',
  cause: 'A file in birds/ is named after none of the bands of its bird: a file copied for the next bird of which the name or the band was not changed, or a figure mistyped in one of them.',
  remedy: 'Name the file after one of the bird’s bands, or after a band and the hatch year where two birds shared it (17-2022.md); or mend the band.',
  wrong: {'birds/H-8.md': BIRD},
  right: {'birds/H-9.md': BIRD},
}

export function check({bench, book, tellings, doubtful, missedBands}: Linked): void {
  const names = new Map(bench.records.bird.map(({at, id}) => [at.file, id]))
  const taken = new Set(bench.records.bird.map(({id}) => id))
  /** where another record names the bird as the file does, the band that nobody wears says it */
  const missed = new Set(missedBands.map(({ref}) => ref.text))
  for (const bird of book.birds) {
    if (doubtful.has(bird)) continue
    for (const {band, at} of tellings.get(bird) ?? []) {
      const name = names.get(at.file)
      if (name === undefined || [...missed].some(band => isNamedAfter(name, band)) || fits(name, bird)) continue
      const plain = fileName(band.text)
      bench.note(slipOf(entry, band.at, `the file is called ${name}, but its bird wears ${bird.bands.map(worn => worn.band).join(', ')}`,
        `name it birds/${taken.has(plain) ? bird.id : plain}.md, or mend the band`))
    }
  }
}

/** Capital letters make no other file on some disks, so they make none here. */
const fits = (name: string, {id, bands, hatched}: Bird): boolean => name.toLowerCase() === id.toLowerCase() || bands.some(({band}) => isNamedAfter(name, band, hatched))
