/** Founders known to be kin: said of one, true of both, and only as far as no two statements exclude each other. */
import {contradictedFounders} from '../pedigree/founder-flow.ts'
import type {Animal, Kin} from '../pedigree/pedigree.ts'
import type {Ref} from '../records/scalars.ts'
import {inside, type Spot} from '../records/problem.ts'
import type {Bench} from './bench.ts'
import type {Birds} from './birds.ts'
import type {Bird, Strain} from './book.ts'
import {founderBases} from './founder-bases.ts'
import {kinOfItself, kinshipsContradict, kinshipStatedTwice} from './inspect/kinship-contradicts.ts'
import {kinshipFollows} from './inspect/kinship-follows.ts'
import {kinshipTooHigh, mostKinship} from './inspect/kinship-too-high.ts'
import type {Open} from './open.ts'
import {told} from './tellings.ts'

/** One statement that two founders are kin. */
interface Stated {
  readonly birds: readonly [Open<Bird>, Open<Bird>]
  readonly kinship: number
  readonly at: Spot
}

/** Wants parentage to be settled: only founders can be kin by word. What is at fault is noted and left out. */
export function linkFounderKin(book: Birds, strains: readonly Strain[], bench: Bench): void {
  noteFlocks(book, strains, bench)
  const stated = new Map<string, Stated>()
  for (const bird of book.birds) {
    for (const {with: ref, kinship} of told(book.tellings.get(bird) ?? [], 'kin')?.value ?? []) {
      const other = book.find(ref)
      if (other) state(bird, other, kinship, ref)
    }
  }
  for (const {birds: [one, other], kinship} of consistent([...stated.values()], strains, bench)) {
    one.kin = [...one.kin, {with: other, kinship}]
    other.kin = [...other.kin, {with: one, kinship}]
  }

  function state(bird: Open<Bird>, other: Open<Bird>, kinship: number, {at}: Ref): void {
    const most = Math.min(mostKinship(inbreedingOf(bird)), mostKinship(inbreedingOf(other)))
    const key = bird.id < other.id ? `${bird.id}\n${other.id}` : `${other.id}\n${bird.id}`
    const before = stated.get(key)
    const descended = [bird, other].find(each => !isFounder(each))
    if (bird === other) bench.note(kinOfItself(bird, at))
    else if (descended) bench.note(kinshipFollows(descended, at))
    else if (kinship > most + 1e-9) bench.note(kinshipTooHigh(at, `${bird.band} and ${other.band}`, kinship, most))
    else if (!before) stated.set(key, {birds: [bird, other], kinship, at})
    else if (Math.abs(before.kinship - kinship) > 1e-9) bench.note(kinshipStatedTwice(before, {birds: [bird, other], kinship, at}))
  }
}

/** A bird that may be one of several is none itself: what it is kin to follows from them. */
const isFounder = ({parentage, maybe}: Bird): boolean => parentage.kind === 'founder' && maybe.length === 0
const inbreedingOf = ({strain}: Bird): number => strain?.inbreeding ?? 0

/** A flock’s kinship is held against its strain’s inbreeding, wherever it is written. */
function noteFlocks({birds, tellings}: Birds, strains: readonly Strain[], {records, note}: Bench): void {
  const ofBirds = birds.flatMap(bird => {
    const flock = told(tellings.get(bird) ?? [], 'flock')?.value
    return flock ? [{flock, strain: bird.strain}] : []
  })
  const ofHatches = records.hatch.flatMap(({data: {flock, strain}}) => (flock ? [{flock, strain: strains.find(({id}) => id === strain?.text) ?? null}] : []))
  for (const {flock: {name, kinship = 0, at}, strain} of [...ofBirds, ...ofHatches]) {
    const most = mostKinship(strain?.inbreeding ?? 0)
    if (kinship > most + 1e-9) note(kinshipTooHigh(inside(at, 'kinship'), `the birds of flock ${name}`, kinship, most))
  }
}

/** Those of the groups in which every founder has a part of its own left, whatever it shares with the others. */
function consistent(stated: readonly Stated[], strains: readonly Strain[], bench: Bench): readonly Stated[] {
  if (stated.length === 0) return stated
  const birds = [...new Set(stated.flatMap(each => each.birds))]
  const {bases, ofFounder} = founderBases(strains, birds)
  const animals = birds.map((bird): Animal => ({sex: bird.sex, base: ofFounder(bird), matings: []}))
  const kin = stated.map(({birds: [one, other], kinship}): Kin => ({animals: [birds.indexOf(one), birds.indexOf(other)], kinship}))
  const contradicted = contradictedFounders({animals, bases, kin})
  const faulty = new Set(contradicted.map(animal => birds[animal]))
  if (faulty.size === 0) return stated
  const left = new Set(stated)
  for (const group of groupsOf(stated)) {
    if (!group.some(each => each.birds.some(bird => faulty.has(bird)))) continue
    bench.note(kinshipsContradict(group))
    for (const each of group) left.delete(each)
  }
  return [...left]
}

/** Statements tied to one another by the birds they are of. */
function groupsOf(stated: readonly Stated[]): readonly (readonly Stated[])[] {
  const left = new Set(stated)
  const groups: Stated[][] = []
  for (const start of stated) {
    if (!left.delete(start)) continue
    const group = [start]
    for (const here of group) {
      for (const other of left) {
        if (!other.birds.some(bird => here.birds.includes(bird))) continue
        left.delete(other)
        group.push(other)
      }
    }
    groups.push(group)
  }
  return groups
}
