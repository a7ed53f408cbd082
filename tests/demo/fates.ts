/** What became of birds that were not kept: when they left, how, and the reason that was written down. */
import {daysBetween, plusDays} from './calendar.ts'
import {marksOf, WEIGHT_WANTED} from './choosing.ts'
import type {Chance} from '../bench/chance.ts'
import type {DrawnBird, Flock} from './flock.ts'
import {trueGround, trueSkin} from './looks.ts'
import {BANDED_LATER} from './notebook.ts'

/** Last day of the demo. */
export const AS_OF = '2025-10-30'

/** Hatches of the test matings: nobody was banded, and the combs were all that was wanted. */
export const TRIALS: readonly string[] = ['2024-06', '2025-01']

const ofYear = (bird: DrawnBird, year: number) => bird.hatch !== null && bird.hatch.on.startsWith(String(year))

function leave(bird: DrawnBird, on: string, how: string, why: string | null, monthOnly = false): void {
  if (on >= AS_OF) return
  // often only the month was written down, but never one that had begun when the bird was weighed
  const month = on.slice(0, 7)
  const vague = monthOnly && `${month}-01` > plusDays(bird.hatched, 148)
  bird.left = {on: vague ? `${month}-01` : on, words: `${vague ? month : on} ${how}${why === null ? '' : `, ${why}`}`}
  const age = daysBetween(bird.hatched, on)
  const {comb, skin, ground, down} = bird.looks
  bird.looks = {...(age >= 43 && {comb}), ...(age >= 57 && {skin}), ...(age >= 85 && {ground}), down}
}

/** Chicks that did not live to be scored, and a few that went later. */
export function dieYoung(flock: Flock, year: number): void {
  for (const bird of flock.birds.values()) {
    if (!ofYear(bird, year) || bird.left) continue
    const chance = flock.chance(`young ${bird.id}`)
    const luck = chance.whole(1, 1000)
    if (luck <= 55) leave(bird, plusDays(bird.hatched, chance.whole(2, 26)), 'died', chance.oneOf([null, null, null, 'never throve', 'found cold under the others', 'splayed legs']))
    else if (luck <= 70) leave(bird, plusDays(bird.hatched, chance.whole(40, 110)), chance.oneOf(['lost', 'taken']), null)
  }
  // June 2021: a fox at Ternhouse, in daylight
  if (year === 2021) {
    const growers = [...flock.birds.values()].filter(bird => bird.hatch?.plan.id === '2021-02' && !bird.left)
    for (const bird of flock.chance('fox').some(growers, 4)) leave(bird, '2021-06-09', 'taken', 'fox')
  }
  for (const hatch of flock.hatches.values()) {
    if (hatch.on.startsWith(String(year)) && !TRIALS.includes(hatch.plan.id)) tallyFates(flock, hatch.plan.id)
  }
}

/** Unbanded chicks go in handfuls: a few die, the singles go first, the rest are sold at seven or eight weeks. */
export function tallyFates(flock: Flock, id: string): void {
  const hatch = flock.hatches.get(id)
  if (!hatch) return
  const chance = flock.chance(`tally ${id}`)
  const soldOn = plusDays(hatch.on, chance.whole(58, 66))
  const culledOn = plusDays(hatch.on, chance.whole(49, 56))
  const test = TRIALS.includes(id)
  for (const bird of hatch.tallied) {
    const later = BANDED_LATER[bird.id]
    bird.mark = later ?? null
    if (chance.happens(test ? 0.04 : 0.12)) leave(bird, plusDays(hatch.on, chance.whole(2, 9)), 'died', null)
    else if (test) leave(bird, soldOn, 'sold', null)
    else if (later !== undefined) continue
    else if (bird.looks.skin === 'yellow') leave(bird, soldOn, 'culled', 'yellow skin')
    else if (bird.looks.comb === 'single' && chance.happens(0.5)) leave(bird, culledOn, 'culled', 'single comb')
    else leave(bird, soldOn, 'sold', null)
  }
}

/** Everyone who was not kept for the next season leaves after the weighing. */
export function sendAway(flock: Flock, year: number, kept: ReadonlyMap<string, number>): void {
  for (const bird of flock.birds.values()) {
    if (!ofYear(bird, year) || bird.left || kept.has(bird.id)) continue
    const chance = flock.chance(`away ${bird.id}`)
    if (bird.hatch?.plan.strain === 'holm-white' || bird.id.startsWith('H')) leave(bird, plusDays(bird.hatched, chance.whole(170, 230)), 'sold', null, true)
    else awayOne(flock, bird, chance)
  }
}

function awayOne(flock: Flock, bird: DrawnBird, chance: Chance): void {
  const early = plusDays(bird.hatched, chance.whole(60, 96))
  const grown = plusDays(bird.hatched, chance.whole(152, 205))
  const hen = bird.sex === 'female'
  if (bird.looks.skin === 'yellow' || trueSkin(bird.genes) === 'yellow') return leave(bird, chance.happens(0.5) ? early : grown, hen ? 'sold' : 'culled', 'yellow skin')
  if (bird.looks.comb === 'single') {
    const soon = chance.happens(0.22)
    return hen ? leave(bird, soon ? early : grown, 'sold', 'single comb', !soon) : leave(bird, soon ? early : grown, 'culled', 'single comb')
  }
  if (trueGround(bird.genes) === 'gold') return leave(bird, grown, 'sold', 'gold', true)
  // every male of the first cross is brassy; from 2021 on it is a fault
  if (bird.hatched >= '2021' && bird.looks.ground === 'brassy') return leave(bird, grown, 'culled', 'brassy')
  const {tail, type, neatness} = marksOf(flock, bird)
  const light = bird.grams20 < 0.88 * WEIGHT_WANTED[bird.sex]
  const fault = tail > (hen ? 47 : 52) ? 'tail too high' : light ? 'light' : type <= 5 ? 'narrow behind' : neatness === 'coarse' && chance.happens(0.4) ? 'coarse comb' : null
  if (hen) return leave(bird, grown, 'sold', fault, chance.happens(0.7))
  return leave(bird, grown, chance.happens(0.2) ? 'sold' : 'culled', fault ?? chance.oneOf(['surplus', 'surplus', 'not wanted', 'a better brother', null]))
}
