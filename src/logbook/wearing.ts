/** The bands of one bird in turn, and from when to when each was worn. */
import type {PartialDate} from '../records/dates.ts'
import type {Spot} from '../records/problem.ts'
import {told, type Told} from './tellings.ts'

export interface Worn {
  readonly band: string
  readonly from: PartialDate | null
  readonly to: PartialDate | null
  readonly lost: boolean
  readonly at: Spot
}

/** When a band was on a leg: both ends as far as known. `ended`: it came off, but nobody knows when. */
export interface Wearing extends Worn {
  readonly start: PartialDate | null
  readonly end: PartialDate | 'ended' | null
}

/** The bands in turn: as listed, with the hatch's band before them and the file's own after, where the list leaves them out. */
export function bandsInTurn(tellings: Told): readonly Worn[] {
  const listed = (told(tellings, 'bands')?.value ?? []).map((worn): Worn =>
    ({band: worn.band.text, from: worn.from ?? null, to: worn.to?.on ?? null, lost: worn.to?.lost ?? false, at: worn.band.at}))
  if (listed.length > 1 && listed.every(worn => worn.from !== null)) listed.sort((a, b) => (a.from?.first ?? 0) - (b.from?.first ?? 0))
  const worn = [...listed]
  for (const {band, row} of tellings) {
    if (worn.some(each => each.band === band.text)) continue
    const own: Worn = {band: band.text, from: null, to: null, lost: false, at: band.at}
    const cameFirst = listed.length > 0 && (row || (listed[0]?.from !== null && listed.at(-1)?.to === null))
    if (cameFirst) worn.unshift(own)
    else worn.push(own)
  }
  return worn
}

export function wearings(worn: readonly Worn[], hatched: PartialDate | null, left: {readonly on: PartialDate | null} | null): readonly Wearing[] {
  return worn.map((each, index) => {
    const before = worn[index - 1], after = worn[index + 1]
    return {
      ...each,
      start: each.from ?? before?.to ?? hatched,
      end: each.to ?? after?.from ?? (after ? 'ended' : left ? left.on ?? 'ended' : null),
    }
  })
}

/** Could the second have been put on when the first was off? */
export function inTurn(first: Wearing, second: Wearing): boolean {
  if (second.start === null || first.end === null) return false
  if (first.end === 'ended') return first.start === null || first.start.first < second.start.first
  return first.end.first <= second.start.last
}

/** May a band have been on the leg at some time from one day to another? */
export function mayBeWorn({start, end}: Wearing, span: {readonly from: number; readonly to: number}): boolean {
  return (start === null || start.first <= span.to) && (end === null || end === 'ended' || end.last >= span.from)
}
