/** The name of a bird's page: its first band, with the hatch year where two birds shared it; always safe as a file's name. */
import {yearOf, type PartialDate} from '../records/dates.ts'
import {fileName} from '../records/file-name.ts'

export interface Nameable {
  readonly firstBand: string
  readonly hatched: PartialDate | null
}

/** One name a bird, in their order. Names that differ only in case would be one file on some disks, and count as the same. */
export function birdIds(birds: readonly Nameable[]): string[] {
  const plain = birds.map(bird => fileName(bird.firstBand))
  const shared = countOf(plain)
  const dated = birds.map((bird, index) => {
    const name = plain[index] ?? ''
    return (shared.get(name.toLowerCase()) ?? 0) > 1 && bird.hatched ? `${name}-${yearOf(bird.hatched.first)}` : name
  })
  const used = new Set<string>()
  return dated.map(name => {
    let free = name
    for (let number = 2; used.has(free.toLowerCase()); number++) free = `${name}-${number}`
    used.add(free.toLowerCase())
    return free
  })
}

function countOf(names: readonly string[]): Map<string, number> {
  const counts = new Map<string, number>()
  for (const name of names) counts.set(name.toLowerCase(), (counts.get(name.toLowerCase()) ?? 0) + 1)
  return counts
}
