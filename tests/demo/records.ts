/** The drawn flock as records: pens, hatches and birds. Only front matter; what stands below it is written by hand in `content/`. */
import {plusDays} from './calendar.ts'
import {firstEgg, keptBecause, lastStay, retirement} from './breeders.ts'
import {AS_OF} from './fates.ts'
import type {DrawnBird, DrawnHatch, DrawnPen, Flock, Stay} from './flock.ts'
import {flow, frontMatter, type Entries, type Value} from './front-matter-text.ts'
import {BIRDS, HATCHES, OTHER_BIRDS, PENS} from './notebook.ts'
import {cameToPen, type Choices} from './seasons.ts'

export function penRecord(pen: DrawnPen): string {
  const stays = (list: readonly Stay[]): Value => {
    if (list.every(stay => stay.chance !== undefined)) return Object.fromEntries(list.map(stay => [stay.band, stay.chance]))
    return list.map(stay => (stay.from === undefined && stay.to === undefined ? stay.band : {band: stay.band, from: stay.from, to: stay.to}))
  }
  const whole = (list: readonly Stay[]) => list.map(stay => (stay.from === pen.from ? {...stay, from: undefined} : stay))
  return frontMatter({
    season: String(pen.season), males: stays(whole(pen.males)), females: stays(whole(pen.females)), from: pen.from, to: pen.to, keeper: pen.keeper, intends: pen.intends,
    ...PENS[pen.id],
  })
}

export function hatchRecord(flock: Flock, hatch: DrawnHatch, choices: Choices): string {
  const {plan} = hatch
  const pens = Object.keys(plan.from)
  const eggsOf = (pen: string) => {
    const number = plan.from[pen] ?? 0
    return typeof number === 'number' ? number : Object.values(number).reduce((sum, eggs) => sum + eggs, 0)
  }
  const byHen = Object.entries(plan.from).flatMap(([, number]) => (typeof number === 'number' ? [['unknown', String(number)] as const] : Object.entries(number).map(([hen, eggs]) => [hen, String(eggs)] as const)))
  const knownHens = byHen.some(([hen]) => hen !== 'unknown')
  const [pen = ''] = pens
  const counts = {clear: hatch.clear, 'dead-in-germ': hatch.deadInGerm, 'dead-in-shell': hatch.deadInShell}
  return frontMatter({
    ...(plan.strain === undefined
      ? {pen: pens.length > 1 ? Object.fromEntries(pens.map(name => [name, `${eggsOf(name)} eggs`])) : pen}
      : {strain: plan.strain, flock: plan.flock === undefined ? undefined : {...plan.flock}}),
    set: plan.set, laid: plan.laid, eggs: knownHens ? Object.fromEntries(byHen) : String(hatch.eggs),
    ...Object.fromEntries(Object.entries(counts).map(([key, count]) => [key, String(count)])),
    bad: plan.bad === undefined ? undefined : String(plan.bad),
    hatched: String(hatch.banded.length + hatch.tallied.length), on: hatch.on, machine: plan.machine, broody: plan.broody, keeper: plan.keeper === flock.pens.get(pen)?.keeper ? undefined : plan.keeper,
    ...HATCHES[plan.id],
    chicks: hatch.banded.length > 0 ? hatch.banded.map(chick => chickLine(flock, flock.bird(chick.id), choices)) : undefined,
    tallies: hatch.tallied.length > 0 ? tallyLines(hatch) : undefined,
  })
}

function chickLine(flock: Flock, bird: DrawnBird, choices: Choices): Entries {
  const {hatch} = bird
  const chance = flock.chance(`line ${bird.id}`)
  const pens = Object.keys(hatch?.plan.from ?? {})
  const damKnown = hatch?.plan.damsKnown === true && bird.dam !== null && typeof hatch.plan.from[bird.pen ?? ''] !== 'number' && !chance.happens(0.07)
  const kept = choices.kept.has(bird.id)
  const sexed = bird.left === null || bird.left.on >= plusDays(bird.hatched, 50)
  const strainBird = bird.id.startsWith('H')
  return {
    band: bird.id, sex: sexed ? bird.sex : undefined, pen: pens.length > 1 && !damKnown ? bird.pen ?? undefined : undefined, dam: damKnown ? bird.dam ?? undefined : undefined,
    ...(strainBird ? {} : {
      comb: bird.looks.comb, skin: bird.looks.skin, ground: bird.looks.ground,
      // down was first looked at in 2022
      'chick-down': bird.hatched >= '2022' ? bird.looks.down : undefined,
    }),
    left: kept ? undefined : bird.left?.words, ...BIRDS[bird.id]?.line,
  }
}

function tallyLines(hatch: DrawnHatch): Entries[] {
  const pens = Object.keys(hatch.plan.from)
  const groups = new Map<string, {entries: Entries; chicks: number}>()
  for (const chick of hatch.tallied) {
    const basket = pens.length > 1 ? `basket ${pens.indexOf(chick.pen ?? '') + 1}` : undefined
    const entries: Entries = {
      mark: chick.mark ?? basket, pen: pens.length > 1 ? chick.pen ?? undefined : undefined, dam: hatch.plan.id === '2025-01' ? chick.dam ?? undefined : undefined,
      comb: chick.looks.comb, skin: chick.looks.skin, left: chick.left?.words,
    }
    const key = flow(entries)
    const group = groups.get(key)
    groups.set(key, {entries, chicks: (group?.chicks ?? 0) + 1})
  }
  return [...groups].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, {entries, chicks}]) => ({chicks: String(chicks), ...entries}))
}

/** A bird's own file: founders, birds that were bred from, and those with something to tell. */
export function birdRecord(flock: Flock, bird: DrawnBird, choices: Choices): string | null {
  const notes = BIRDS[bird.id]?.record
  const keptFor = choices.kept.get(bird.id)
  if (bird.strain === null && keptFor === undefined && notes === undefined) return null
  if (bird.strain !== null) {
    return frontMatter({
      band: bird.id, sex: bird.sex, strain: bird.strain, hatched: bird.hatched.slice(0, bird.strain === 'fell-buff' ? 4 : 7), keeper: keeperOf(flock, bird),
      left: retirement(flock, bird, keptFor) ?? undefined, ...notes,
    })
  }
  const egg = bird.sex === 'female' && keptFor !== undefined ? firstEgg(flock, bird) : null
  return frontMatter({
    band: bird.id, 'kept-at': moves(flock, bird), 'first-egg': egg ?? undefined,
    kept: keptFor === undefined ? undefined : keptBecause(flock, bird, keptFor, choices.undecided.has(bird.id)), left: keptFor === undefined ? undefined : retirement(flock, bird, keptFor) ?? undefined, ...notes,
  })
}

function keeperOf(flock: Flock, bird: DrawnBird): string {
  const stay = lastStay(flock, bird.id)
  return flock.pens.get(stay?.pen ?? '')?.keeper ?? 'kelpgarth'
}

/** Birds bred at one place and penned at another. */
function moves(flock: Flock, bird: DrawnBird): Value | undefined {
  const home = bird.hatch?.plan.keeper
  const away = [...flock.pens.values()].find(pen => pen.keeper !== home && [...pen.males, ...pen.females].some(stay => stay.band === bird.id))
  if (home === undefined || away === undefined) return undefined
  const on = cameToPen(away.from)
  return on > AS_OF ? undefined : [{keeper: home, to: on}, {keeper: away.keeper, from: on}]
}

/** Birds banded late or found again: noted wholly by hand. */
export const otherBirds = (): [string, string][] => Object.entries(OTHER_BIRDS).map(([band, entries]) => [band, frontMatter(entries)])
