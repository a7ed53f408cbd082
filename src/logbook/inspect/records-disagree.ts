import {inside} from '../../records/problem.ts'
import type {Bird} from '../book.ts'
import type {Linked} from '../linked.ts'
import {told, type Telling, type Told} from '../tellings.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const HATCH = '---\npen: 2024-A\nset: 2024-03-02\non: 2024-03-23\nchicks:\n  - {band: 24-901, sex: female}\n---\n'

export const entry: ManualEntry = {
  code: 'records-disagree', severity: 'error', title: 'Two records of one bird that disagree',
  cause: 'A bird’s own file and its line in the hatch say different things of its sex, hatch day, strain, parents, tests or end, or two hatches list it.',
  remedy: 'Mend the wrong one. Where a sex was mistaken at first, write the sexings in turn: sex: [{is: female, on: 2024-05}, {is: male, on: 2024-08}].',
  wrong: {'hatches/2024-09.md': HATCH, 'birds/24-901.md': '---\nband: 24-901\nsex: male\n---\n'},
  right: {'hatches/2024-09.md': HATCH, 'birds/24-901.md': '---\nband: 24-901\nsex: [{is: female, on: 2024-05}, {is: male, on: 2024-08}]\n---\n'},
}

export function check({bench, book, tellings, doubtful}: Linked): void {
  for (const bird of book.birds) {
    const own = tellings.get(bird) ?? []
    if (doubtful.has(bird) || (own.length < 2 && !own[0]?.told['out-of'])) continue
    const first = own[0], last = own.at(-1)
    if (!first || !last) continue
    const disagree = (key: string, by: Telling, other: Telling, says: string, remedy: string) =>
      bench.note(slipOf(entry, inside(by.at, key), `${bird.band}: ${says}`, remedy, {at: inside(other.at, key), note: 'the other record stands here'}))
    for (const other of own.slice(1)) compare(bird, first, other, disagree)
    noteHatches(bird, own, (by, other, says) => bench.note(slipOf(entry, by.at, `${bird.band}: ${says}`, 'mend the hatch that is wrong', {at: other.at, note: 'the other record stands here'})))
  }
}

type Disagree = (key: string, by: Telling, other: Telling, says: string, remedy: string) => void

function compare(bird: Bird, first: Telling, other: Telling, disagree: Disagree): void {
  const here = other.told.sex, there = first.told.sex
  const [sex, ...laterSexes] = here ?? [], [was, ...more] = there ?? []
  if (sex && was && laterSexes.length === 0 && more.length === 0 && !sex.on && sex.is !== was.is && sex.is !== 'unknown' && was.is !== 'unknown') {
    disagree('sex', other, first, `${sex.is} here, ${was.is} in the other record`, 'mend the wrong one, or write the sexings in turn: sex: [{is: …, on: …}, {is: …, on: …}]')
  }
  const hatched = other.told.hatched, on = first.hatch?.on ?? first.told.hatched
  if (hatched && on && (hatched.last < on.first || hatched.first > on.last)) {
    disagree('hatched', other, first, `hatched ${hatched.text} here, ${on.text} in the other record`, 'mend the wrong day; the hatch’s own day is enough')
  }
  const strain = other.told.strain
  if (strain && first.hatch?.strain && first.hatch.strain.id !== strain.text && bird.strain !== null) {
    disagree('strain', other, first, `strain ${strain.text} here, ${first.hatch.strain.id} in its hatch`, 'mend the wrong one')
  }
  for (const {key, value} of other.told.tested ?? []) {
    const found = first.told.tested?.find(test => test.key === key)?.value
    if (found !== undefined && plain(alike(found)) !== plain(alike(value))) disagree('tested', other, first, `tested ${key} ${value} here, ${found} in the other record`, 'mend the wrong one, or write it in one place only')
  }
  for (const key of ['sire', 'dam', 'pen', 'left'] as const) {
    const one = other.told[key], another = first.told[key]
    if (one && another && plain(one) !== plain(another)) disagree(key, other, first, `the two records do not give the same ${key === 'left' ? 'end' : key}`, 'mend the wrong one, or write it in one place only')
  }
}

/** A genotype whatever the order of its alleles. */
const alike = (genotype: string): readonly string[] => genotype.split('/').map(allele => allele.trim()).sort()

/** What was read, without where it stands. */
const plain = (value: unknown): string => JSON.stringify(value, (key, inner: unknown) => (key === 'at' || key === 'keyAt' ? undefined : inner))

function noteHatches(bird: Bird, own: Told, disagree: (by: Telling, other: Telling, says: string) => void): void {
  const rows = own.filter(telling => telling.hatch)
  const [first, second] = rows
  if (first?.hatch && second?.hatch) disagree(second, first, first.hatch === second.hatch ? `hatch ${first.hatch.id} lists it twice` : `hatches ${first.hatch.id} and ${second.hatch.id} both list it`)
  const outOf = told(own, 'out-of')
  if (outOf && first?.hatch && outOf.value.hatch.text !== first.hatch.id) disagree(outOf.by, first, `out of hatch ${outOf.value.hatch.text}, but hatch ${bird.hatch?.id ?? ''} lists it`)
}
