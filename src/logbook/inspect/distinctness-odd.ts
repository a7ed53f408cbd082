import {near, orNear} from '../../records/near.ts'
import {inside, keyOf, type Spot} from '../../records/problem.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const table = (name: string) => `---\nrequirements:\n  - {kind: distinct, title: Distinct, asked: One character, at-least: 1}\ndistinctness:\n  - {character: Comb, ${name}: pea, Holm White: single}\n---\n`

export const entry: ManualEntry = {
  code: 'distinctness-odd', severity: 'warning', title: 'A table of distinctness that does not begin with the breed',
  cause: 'The first breed of the table is taken for the new one, and it is not called as the project is; or a neighbour is called nearly as the breed is, so that a mistyped name stands for another breed; or a character stands twice, and counts once.',
  remedy: 'Write the breed’s own name first, as the project has it, and each character once.',
  wrong: {'requirements.md': table('Skery Fowl')},
  right: {'requirements.md': table('Skerry Fowl')},
}

const plain = (name: string): string => name.trim().replace(/\s+/g, ' ').toLowerCase()

export function check({bench, book}: Linked): void {
  const [record] = bench.records.requirements, distinctness = book.requirements?.distinctness, {name} = book.project
  if (!record || !distinctness) return
  const rows = record.data.distinctness ?? [], [first, ...neighbours] = distinctness.breeds
  const placeOf = (breed: string): Spot => {
    const index = rows.findIndex(({others}) => others.some(({key}) => key === breed))
    return keyOf(inside(record.at, 'distinctness', index), breed)
  }
  if (first !== undefined && plain(first) !== plain(name)) {
    const isLater = neighbours.some(breed => plain(breed) === plain(name))
    bench.note(slipOf(entry, placeOf(first), `${first} stands first, and is taken for the new breed, which is called ${name}`, isLater ? `write ${name} before it` : orNear(near(first, [name]), `write ${name} and what it shows first`)))
  }
  for (const breed of neighbours) {
    if (plain(breed) !== plain(name) && near(breed, [name]).length > 0) bench.note(slipOf(entry, placeOf(breed), `${breed} is nearly the breed’s own name, and is taken for another breed`, `did you mean ${name}?`))
  }
  distinctness.rows.forEach(({character}, index) => {
    const before = distinctness.rows.findIndex(each => plain(each.character) === plain(character))
    if (before < index) bench.note(slipOf(entry, inside(record.at, 'distinctness', index, 'character'), `the character ${character} stands twice, and counts once`, 'put the two rows into one, or name what parts them', {at: inside(record.at, 'distinctness', before, 'character'), note: 'first here'}))
  })
}
