import {inside, type Spot} from '../../records/problem.ts'
import type {Bird, Hatch, Pair, Tally} from '../book.ts'
import {lastDayOf} from '../laying.ts'
import type {Linked} from '../linked.ts'
import {told} from '../tellings.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const hatch = (dam: string) => `---\npen: 2024-A\nset: 2024-03-02\non: 2024-03-23\nchicks:\n  - {band: 24-901, sex: male, dam: ${dam}}\n---\n`

export const entry: ManualEntry = {
  code: 'not-in-pen', severity: 'warning', title: 'A parent that was not in the pen',
  cause: 'A chick’s line names a sire or dam, or the eggs by hen a hen, that the hatch’s pen does not have, and that no hen of the pen had met shortly before; or a sire and a dam of different pens or times who can never have met. The line is believed, but a band may have been misread.',
  remedy: 'Mend the band, or add the bird to the pen for its days there.',
  wrong: {'hatches/2024-09.md': hatch('B-3')},
  right: {'hatches/2024-09.md': hatch('B-1')},
}

/** So many birds, and pens of a bird, are listed. */
const LISTED = 3

export function check(linked: Linked): void {
  for (const hatch of linked.book.hatches) if (isWhole(hatch, linked)) noteApart(hatch, linked)
  noteStrangers(linked)
}

/** A pen that was not found, or one of which a bird was not, may be the one. */
function isWhole(hatch: Hatch, {records}: Linked): boolean {
  const named = records.hatch.get(hatch)?.data.pen ?? []
  return named.length > 0 && named.length === hatch.pens.length && hatch.pens.every(({pen}) => {
    const data = records.pen.get(pen)?.data
    return data?.males.length === pen.males.length && data.females.length === pen.females.length
  })
}

/** A bird that was in none of the hatch's pens. */
function noteStrangers(linked: Linked): void {
  const {bench, uses, doubtful, matings} = linked
  const said = new Set<string>()
  for (const {bird, as, at, pen, layings} of uses) {
    const hatch = layings[0]?.hatch
    if (pen || !hatch || doubtful.has(bird) || matings.get(hatch)?.holds(bird, as) || !isWhole(hatch, linked)) continue
    // a hen named as a sire is found by her sex
    if (bird.sex !== 'unknown' && bird.sex !== as) continue
    // nor was one that had not hatched yet, which is told of its age
    if (bird.hatched && bird.hatched.first > (layings[0]?.span.to ?? Infinity)) continue
    const key = `${hatch.id}\n${bird.id}`
    if (said.has(key)) continue
    said.add(key)
    const where = pensOf(bird, linked)
    bench.note(slipOf(entry, at, `${bird.band} stands here as the ${as === 'male' ? 'sire' : 'dam'}, but was not in ${hatch.pens.map(each => `pen ${each.pen.id}`).join(' or ')}`,
      where.length > 0 ? `mend the band; ${bird.band} was in ${where.join(', ')}` : 'mend the band, or add the bird to the pen', {at: hatch.pens[0]?.pen.at ?? hatch.at, note: 'the pen stands here'}))
  }
}

/** Parents of whom no pair had met. What a death, a sale or a sex explains is told by other rules. */
function noteApart(hatch: Hatch, linked: Linked): void {
  const {bench, doubtful, matings} = linked
  const mayHaveMet = (pair: Pair): boolean => matings.get(hatch)?.mayHaveMet(pair.sire, pair.dam) ?? true
  const said = new Set<string>()
  for (const chicks of [...hatch.tallies, ...hatch.chicks]) {
    const {pairs} = chicks.parentage
    if (pairs.length === 0 || (chicks.kind === 'bird' && doubtful.has(chicks)) || pairs.some(pair => mayHaveMet(pair) || isExplained(pair, hatch, linked))) continue
    const sires = birdsOf(pairs.map(pair => pair.sire)), dams = birdsOf(pairs.map(pair => pair.dam))
    const key = `${bandsOf(sires)}\n${bandsOf(dams)}`
    if (said.has(key)) continue
    said.add(key)
    const stays = [...sires, ...dams].slice(0, LISTED).map((bird, index) => `${bird.band}${index === 0 ? ' was' : ''} in ${pensOf(bird, linked).join(' and ')}`)
    bench.note(slipOf(entry, statedAt(chicks, linked), `${bandsOf(sires)} and ${bandsOf(dams)} stand here as sire and dam, but had never met when the eggs were laid`,
      `mend the band that is wrong, or the days in the pens: ${stays.join(', ')}`,
      {at: hatch.pens[0]?.pen.at ?? hatch.at, note: 'the pen stands here'}))
  }
}

/** Is something else said of one of the two already: that it is of the other sex, or had left too long before? */
function isExplained({sire, dam}: Pair, hatch: Hatch, {book, doubtful, layingOf}: Linked): boolean {
  if (sire === null || dam === null || doubtful.has(sire) || doubtful.has(dam) || sire.sex === 'female' || dam.sex === 'male') return true
  const laid = layingOf(hatch)?.from ?? -Infinity
  return lastDayOf(sire) + book.project.spermStoreDays < laid || lastDayOf(dam) < laid
}

/** Where the first of the two is written; for a bird of which nothing is, where it stands itself. */
function statedAt(chicks: Bird | Tally, {tellings}: Linked): Spot {
  if (chicks.kind === 'tally') return inside(chicks.at, 'sire')
  const own = tellings.get(chicks) ?? []
  const sire = told(own, 'sire'), dam = told(own, 'dam')
  return sire ? inside(sire.by.at, 'sire') : dam ? inside(dam.by.at, 'dam') : chicks.at
}

const pensOf = (bird: Bird, {staysOf}: Linked): readonly string[] => [...new Set(staysOf.get(bird)?.map(({pen}) => pen.id))].slice(0, LISTED)
const birdsOf = (all: readonly (Bird | null)[]): readonly Bird[] => [...new Set(all)].filter(bird => bird !== null)
const bandsOf = (birds: readonly Bird[]): string => birds.map(({band}) => band).sort().join(' or ')
