/** Birds that were kept: why, when they first laid, and when they left after their last season. */
import {plusDays} from './calendar.ts'
import {marksOf, WEIGHT_WANTED} from './choosing.ts'
import {AS_OF} from './fates.ts'
import type {DrawnBird, Flock} from './flock.ts'

/** The seasons in which a bird stood in a pen, first and last day. */
export function lastStay(flock: Flock, band: string): {first: string; last: string; pen: string} | null {
  const stays = [...flock.pens.values()].flatMap(pen =>
    [...pen.males, ...pen.females].filter(stay => stay.band === band).map(stay => ({from: stay.from ?? pen.from, to: stay.to ?? pen.to, pen: pen.id})))
  const [first] = stays
  const last = stays.reduce((latest, stay) => (stay.to > latest.to ? stay : latest), first ?? {from: '', to: '', pen: ''})
  return first ? {first: stays.reduce((early, stay) => (stay.from < early ? stay.from : early), first.from), last: last.to, pen: last.pen} : null
}

/** How a kept bird or a founder left, if it did. */
export function retirement(flock: Flock, bird: DrawnBird, keptFor: number | undefined): string | null {
  if (bird.left) return bird.left.words
  if (keptFor === 2026) return null
  const chance = flock.chance(`retired ${bird.id}`)
  const stay = lastStay(flock, bird.id)
  if (stay === null) return sayLeft(plusDays(`${keptFor ?? 2023}-05-20`, chance.whole(10, 120)), 'sold', 'not needed', chance.happens(0.5))
  const season = Number(stay.last.slice(0, 4))
  const stays = season === 2025 ? 0.75 : season === 2024 ? 0.06 : 0.04
  if (chance.happens(stays)) return null
  const on = plusDays(stay.last, chance.whole(25, season === 2025 ? 160 : 330))
  const luck = chance.whole(1, 10)
  if (luck <= 2) return sayLeft(on, 'died', chance.oneOf([null, null, bird.sex === 'female' ? 'found dead on the nest' : 'in the gale', 'never came through the moult']), false)
  if (luck === 3) return sayLeft(on, 'given', chance.oneOf(['to a neighbour for eggs', 'to the school']), true)
  return sayLeft(on, 'sold', luck === 4 && bird.sex === 'female' ? 'laying well' : null, chance.happens(0.6))
}

function sayLeft(on: string, how: string, why: string | null, monthOnly: boolean): string | null {
  return on > AS_OF ? null : `${monthOnly ? on.slice(0, 7) : on} ${how}${why === null ? '' : `, ${why}`}`
}

/** The reason written on the evening of the choice, from what stood out. */
export function keptBecause(flock: Flock, bird: DrawnBird, season: number, undecided: boolean): string {
  const {type, neatness, tail} = marksOf(flock, bird)
  const chance = flock.chance(`kept ${bird.id}`)
  const off = Math.abs(bird.grams20 / WEIGHT_WANTED[bird.sex] - 1)
  const his = bird.sex === 'male' ? 'his' : 'her'
  const good = [
    ...(type >= 9 ? [chance.oneOf(['best type of the hatch', `best back of ${his} hatch`, 'broad and square', `stands like ${his} sire`])] : []),
    ...(type === 8 ? [chance.oneOf(['good through the body', `good keel`, 'level back'])] : []),
    ...(off < 0.03 ? [chance.oneOf(['on the weight', 'weight as written'])] : []),
    ...(neatness === 'neat' ? [chance.oneOf(['neat comb', 'neat comb', 'three clean ridges'])] : []),
    ...(tail <= (bird.sex === 'male' ? 43 : 38) ? [chance.oneOf(['low tail', `${his} tail`, 'tail where we want it'])] : []),
    ...(season > 2024 && neatness === 'coarse' ? [chance.oneOf([`in spite of ${his} comb`, 'comb could be better'])] : []),
  ]
  if (undecided) return `${season - 1}-10-25 ${chance.oneOf(['to see another winter', 'to be looked at again in January', 'as a spare', 'for her eggs first'].slice(0, bird.sex === 'male' ? 3 : 4))}`
  const words = good.length > 0 ? good.slice(0, 2).join(', ') : chance.oneOf([`the last of ${his} family`, 'a good foot', 'sound, nothing more', 'quiet, and eats out of the hand', 'tight feather'])
  return `${season - 1}-${chance.oneOf(['10-02', '10-09', '10-12', '10-19', '10-25'])} for breeding, ${words}`
}

/** When she laid first: about twenty-five weeks, often known only to the month. */
export function firstEgg(flock: Flock, bird: DrawnBird): string | null {
  const chance = flock.chance(`egg ${bird.id}`)
  const on = plusDays(bird.hatched, chance.whole(158, 204))
  return on > AS_OF ? null : chance.happens(0.3) ? on.slice(0, 7) : on
}
