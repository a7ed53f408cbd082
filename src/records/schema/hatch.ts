import {count, date, period, reference, text, type Ref} from '../scalars.ts'
import {byForm, listOf, mapOf, object, optional, required, scalar, turned, type Shape, type ValueOf} from '../shape.ts'
import {kind} from './kind.ts'
import {BIRD_FIELDS, flock, photos, privateNotes} from './parts.ts'

const band = reference('a band such as 24-031')
const eggsOf = scalar('a number of eggs such as 30 eggs', words => {
  const match = /^(\d+)(?:\s+eggs?)?$/.exec(words.trim())
  return match ? Number(match[1]) : undefined
})
const penName = reference('a pen such as 2024-A')

interface PenEggs {
  readonly pen: Ref
  readonly eggs: number | null
}

const pens: Shape<readonly PenEggs[]> = byForm({
  text: turned(penName, pen => [{pen, eggs: null}]),
  list: turned(listOf(penName), names => names.map(pen => ({pen, eggs: null}))),
  map: turned(mapOf('pens with their eggs, such as {2024-A: 30 eggs}', eggsOf), entries =>
    entries.map(({key, value, keyAt}) => ({pen: {text: key, at: keyAt}, eggs: value}))),
})

const reason = scalar('a reason such as The incubator stood at 35 °C', words => (/^(?:yes|true|no|false)?$/i.test(words.trim()) ? undefined : words.trim()))

interface EggsSet {
  readonly total: number
  readonly byDam: readonly {readonly dam: Ref; readonly eggs: number}[]
}

const eggs: Shape<EggsSet> = byForm({
  text: turned(eggsOf, total => ({total, byDam: []})),
  map: turned(mapOf('hens with their eggs, such as {22-017: 14, unknown: 10}', eggsOf), entries => ({
    total: entries.reduce((sum, entry) => sum + entry.value, 0),
    byDam: entries.filter(entry => entry.key !== 'unknown').map(({key, value, keyAt}) => ({dam: {text: key, at: keyAt}, eggs: value})),
  })),
})

const chick = object('a chick', {
  band: required(band, 'Its band. Chicks that never wore one go into tallies.'),
  ...BIRD_FIELDS,
  mark: optional(text('a mark such as basket 2'), 'The basket or toe mark it had at hatch.'),
  note: optional(text('a note'), 'A note on it.'),
}, {others: 'a trait’s id, with what was seen'})

const tally = object('a tally of unbanded chicks', {
  chicks: required(count, 'How many.'),
  mark: optional(text('a mark such as basket 2'), 'The basket or toe mark that tells them apart.'),
  sex: BIRD_FIELDS.sex,
  sire: BIRD_FIELDS.sire,
  dam: BIRD_FIELDS.dam,
  pen: BIRD_FIELDS.pen,
  family: BIRD_FIELDS.family,
  left: BIRD_FIELDS.left,
}, {others: 'a trait’s id, with what was seen'})

export type TallyRecord = ValueOf<typeof tally>

const hatch = object('a hatch', {
  pen: optional(pens, 'The pen the eggs came from, or several with their eggs.'),
  strain: optional(reference('a strain such as holm-white'), 'In place of a pen: the strain of eggs bought in.'),
  flock: optional(flock, 'The flock that bought eggs came from.'),
  set: optional(date, 'When the eggs were set.'),
  laid: optional(period, 'When they were laid: with the males’ dates it tells who can be the sire.'),
  eggs: optional(eggs, 'Eggs set: a number, or a number by hen.'),
  clear: optional(count, 'Clear when candled: infertile, or dead too early to tell.'),
  'dead-in-germ': optional(count, 'Dead early in the shell.'),
  'dead-in-shell': optional(count, 'Fully formed, unhatched.'),
  bad: optional(count, 'Cracked, rotten or lost in the setting.'),
  hatched: optional(count, 'Chicks hatched.'),
  on: optional(date, 'When they hatched.'),
  machine: optional(text('a machine such as I3'), 'The incubator. Settings of one machine and day are reared as one class.'),
  broody: optional(band, 'In place of a machine: the hen that sat.'),
  keeper: optional(reference('a keeper'), 'Whose hatch it was; else the pen’s keeper.'),
  'set-aside': optional(reason, 'Why this setting tells nothing of its parents. It stays on record, but its eggs and its chicks’ lives enter no share and no comparison, and pages say so.'),
  chicks: optional(listOf(chick), 'The banded chicks, one line each.'),
  tallies: optional(listOf(tally), 'Chicks that never wore a band: how many, of which look, what became of them.'),
  photos,
  private: privateNotes,
})

export const hatchKind = kind({
  id: 'hatch', files: 'hatches/<id>.md', title: 'A hatch', shape: hatch,
  purpose: 'One setting of eggs and its chicks, one line a chick. The chicks’ looks go under the traits’ ids.',
  example: `---
pen: 2024-A
set: 2024-03-02
laid: 2024-02-20..2024-03-01
eggs: 48
clear: 5
dead-in-germ: 2
dead-in-shell: 4
hatched: 37
on: 2024-03-23
machine: I3
chicks:
  - {band: 24-031, sex: female, dam: 22-017, comb: pea, skin: white, chick-down: buff}
  - {band: 24-032, sex: male, comb: single, left: 2024-06-30 culled}
  - {band: 24-033, sex: female, dam: {keeper: kelpgarth}, comb: pea}
tallies:
  - {chicks: 12, mark: basket 2, dam: 22-017, comb: pea, skin: white, left: 2024-04-05 sold}
  - {chicks: 3, comb: single, left: "2024-03-24 culled, off type"}
  - {chicks: 2, left: 2024-03-29 died}
---
`,
})
