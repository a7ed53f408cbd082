import {digitsMeant, lettersForDigits} from '../../records/letters-for-digits.ts'
import {orNear, slipsBetween} from '../../records/near.ts'
import type {Spot} from '../../records/problem.ts'
import type {Missed} from '../band-book.ts'
import {isNamedAfter} from '../bird-files.ts'
import type {Bird} from '../book.ts'
import {nearPlaces} from '../directory.ts'
import type {Linked} from '../linked.ts'
import {bandsTold, type Telling} from '../tellings.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

export const entry: ManualEntry = {
  code: 'unknown-band', severity: 'error', title: 'A band that no bird wears',
  cause: 'A record names a bird by a band that no hatch and no file in birds/ gives to a bird. It is said once, however many places name the band; where the band of a chick that no record names is as good as the same, it is said at that chick’s line.',
  remedy: 'Mend the band, or record the bird: a line in its hatch, or a file in birds/ for a founder.',
  wrong: {'pens/2024-B.md': '---\nseason: 2024\nmales: [H-1]\nfemales: [B-22]\n---\n'},
  right: {'pens/2024-B.md': '---\nseason: 2024\nmales: [H-1]\nfemales: [B-2]\n---\n'},
}

interface Worn {
  readonly bird: Bird
  readonly telling: Telling
}

/** So many further places are listed. */
const LISTED = 5

export function check(linked: Linked): void {
  const worn = wornBands(linked)
  const lone = [...worn].filter(([, wearers]) => wearers.every(wearer => isLone(wearer, linked))).map(([band, wearers]) => ({band, ...wearers[0] as Worn}))
  // those named most choose first, so that one chick's line is not taken for two bands
  const missed = [...missedBands(linked)].sort(([, a], [, b]) => b.length - a.length)
  const taken = new Set<string>()
  for (const [band, uses] of missed) {
    const as = asOf(uses)
    const line = uses.length > 1 ? nearestOf(band, lone.filter(({band: other, bird}) => !taken.has(other) && mayBe(bird, as))) : null
    if (line) taken.add(line.band)
    linked.bench.note(line ? mistypedLine(band, uses, line) : nobodyWears(band, uses, worn, linked))
  }
}

/** The uses of each band that no bird wears and no file at fault may give, in the order of their files. */
function missedBands({bench, missedBands: all}: Linked): ReadonlyMap<string, readonly Missed[]> {
  const bands = new Map<string, Missed[]>()
  const seen = new Set<Spot>()
  const inOrder = [...all].sort((a, b) => (a.ref.at.file < b.ref.at.file ? -1 : a.ref.at.file > b.ref.at.file ? 1 : lineOf(a) - lineOf(b)))
  for (const use of inOrder) {
    const {text, at} = use.ref
    if (seen.has(at) || bench.mayStandInFaulty(text)) continue
    seen.add(at)
    const others = bands.get(text)
    if (others) others.push(use)
    else bands.set(text, [use])
  }
  return bands
}

const lineOf = ({ref: {at}}: Missed): number => ('line' in at ? at.line : 0)

function wornBands({book, tellings}: Linked): ReadonlyMap<string, readonly Worn[]> {
  const worn = new Map<string, Worn[]>()
  for (const bird of book.birds) {
    for (const telling of tellings.get(bird) ?? []) {
      for (const band of bandsTold(telling)) worn.set(band, [...(worn.get(band) ?? []), {bird, telling}])
    }
  }
  return worn
}

/** A chick of which its line in the hatch alone knows. */
const isLone = ({bird, telling}: Worn, {tellings, namedBirds}: Linked): boolean =>
  telling.row && telling.told.bands === undefined && tellings.get(bird)?.length === 1 && !namedBirds.has(bird)

/** The side on which every use that has one names the bird. */
function asOf(uses: readonly Missed[]): Missed['as'] {
  const sides = new Set(uses.flatMap(use => use.as ?? []))
  return sides.size === 1 ? [...sides][0] ?? null : null
}

const mayBe = (bird: Bird, as: Missed['as']): boolean => as === null || bird.sex === 'unknown' || bird.sex === as

/** The one that is nearest, if one is nearer than all others. */
function nearestOf<L extends {readonly band: string}>(band: string, lines: readonly L[]): L | null {
  const found = lines.flatMap(line => {
    const slips = slipsBetween(band, line.band)
    return slips === null ? [] : [{line, slips}]
  }).sort((a, b) => a.slips - b.slips)
  const [first, second] = found
  return first && first.slips !== second?.slips ? first.line : null
}

function mistypedLine(band: string, uses: readonly Missed[], {band: written, telling}: Worn & {readonly band: string}) {
  return slipOf(entry, telling.band.at, `nothing else names ${written}, while ${uses.length} places name ${band}, which no bird wears`,
    `if this chick wears ${band}, write that here; if not, record ${band} or mend those places`,
    ...uses.slice(0, LISTED).map(({ref}) => ({at: ref.at, note: `${band} is named at`})))
}

function nobodyWears(band: string, uses: readonly Missed[], worn: ReadonlyMap<string, readonly Worn[]>, linked: Linked) {
  const [first, ...others] = uses
  const reason = `no bird wears band ${band}${others.length > 0 ? `, which is named in ${uses.length} places` : ''}`
  return slipOf(entry, first?.ref.at ?? {file: '', path: []}, reason, remedyFor(band, asOf(uses), worn, linked),
    ...others.slice(0, LISTED).map(({ref}) => ({at: ref.at, note: 'also at'})))
}

function remedyFor(band: string, as: Missed['as'], worn: ReadonlyMap<string, readonly Worn[]>, {bench}: Linked): string {
  const named = bench.records.bird.find(({id}) => isNamedAfter(id, band))
  if (named) return `${named.file} gives its bird the band ${named.data.band.text}: mend whichever is wrong`
  const several = band.split(/[\s;&+]+/)
  if (several.length > 1 && several.every(one => worn.has(one))) return `for several birds write [${several.join(', ')}]`
  const places = new Map([...worn].flatMap(([other, wearers]) => {
    const fitting = wearers.find(({bird}) => mayBe(bird, as))
    return fitting ? [[other, fitting.telling.at] as const] : []
  }))
  const meant = digitsMeant(band), likely = nearPlaces(band, places)
  if (meant !== null && worn.has(meant) && likely.length === 1) return `did you mean ${likely[0] ?? ''}? ${lettersForDigits(band)}`
  return orNear(likely, `mend the band, or add birds/${band.replaceAll('/', '-')}.md for a founder`)
}
