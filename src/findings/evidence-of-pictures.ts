import type {Bird, Photo, Requirement} from '../logbook/book.ts'
import {countBySex} from './census.ts'
import {behind, judged, type Finding} from './evidence-found.ts'
import type {Sources} from './evidence-shown.ts'
import {siftByDay} from './evidence-window.ts'
import {inSeason, nextSeason, onDay} from './next-season.ts'
import {sameName} from './same-name.ts'
import {showAge} from './show-age.ts'
import {varietyOf} from './variety-of.ts'
import type {PictureWanted, Way} from './ways.ts'

const BOTH_AGES = ['young', 'grown'] as const
const SEXES = ['male', 'female'] as const

/**
 * Is there a dated picture of each sex, young and grown, in each variety? The age is the bird's on the picture's day, as shows have it; the varieties those named, else of the latest draft where it has
 * several, and a bird is of one by the looks that the draft gives. How many birds of a sex, and how many pictures, may be asked besides. A picture without its date, or of a bird of which sex, hatch or
 * variety is not known, shows none of them; where such pictures could make it whole, it cannot be told.
 */
export function photographs(asked: Requirement, {book, census}: Sources): Finding {
  const draft = book.drafts.at(-1), {males, females, atLeast} = asked, ages = asked.ages.length > 0 ? asked.ages : BOTH_AGES
  const ofDraft = draft?.varieties.map(({name}) => name) ?? [], varieties: readonly (string | null)[] = asked.varieties.length > 0 ? asked.varieties : ofDraft.length > 1 ? ofDraft : [null]
  const own = book.birds.filter(bird => bird.step.kind !== 'strain'), all = own.flatMap(bird => bird.photos.map(photo => ({bird, photo})))
  const {counted, aged} = siftByDay(all, ({photo}) => photo.on, ({bird}) => bird.at, asked, book.asOf)
  const variety = (bird: Bird): string | null => (draft ? varietyOf(bird, draft)?.name ?? null : null)
  const isOf = (name: string | null, bird: Bird): boolean => name === null || sameName(variety(bird) ?? '', name)
  const ageIn = (bird: Bird, {on}: Photo): 'young' | 'grown' | null => {
    const ages = on === null ? [] : [showAge(bird, on.first), showAge(bird, on.last)], [first, last] = ages
    return first !== undefined && first === last ? first : null
  }
  const wanted = SEXES.flatMap(sex => ages.flatMap(age => varieties.map(name => ({sex, age, variety: name}))))
  const missing = wanted.filter(cell => !counted.some(({bird, photo}) => bird.sex === cell.sex && ageIn(bird, photo) === cell.age && isOf(cell.variety, bird)))
  const birds = countBySex(new Set(counted.map(({bird}) => bird))), undated = counted.filter(({photo}) => photo.on === null)
  const more = {males: Math.max(0, (males ?? 0) - birds.male), females: Math.max(0, (females ?? 0) - birds.female), all: Math.max(0, (atLeast ?? 0) - counted.length)}
  const living = census.alive.filter(bird => bird.step.kind !== 'strain'), alive = (cell: (typeof wanted)[number]): number => living.filter(bird => bird.sex === cell.sex && showAge(bird, book.asOf) === cell.age && isOf(cell.variety, bird)).length
  const pictures = missing.map((cell): PictureWanted => ({...cell, living: alive(cell)}))
  const might = undated.filter(({bird}) => missing.some(cell => bird.sex === cell.sex && isOf(cell.variety, bird))), isShort = more.males + more.females + more.all > 0
  const wait = pictures.some(each => each.living === 0) ? inSeason(nextSeason(book)) : onDay(book.asOf)
  // pictures of the right sex and age, of birds of which nobody knows the variety
  const unsure = counted.filter(({bird, photo}) => variety(bird) === null && missing.some(cell => cell.variety !== null && bird.sex === cell.sex && ageIn(bird, photo) === cell.age)).map(({bird}) => bird)
  const without = varieties.filter(name => name !== null && !draft?.varieties.some(each => sameName(each.name, name) && each.looks.size > 0)).filter(name => name !== null)
  const isOpen = !isShort && missing.length > 0 && missing.every(cell => might.some(({bird}) => bird.sex === cell.sex && isOf(cell.variety, bird))
    || counted.some(({bird, photo}) => unsure.includes(bird) && bird.sex === cell.sex && ageIn(bird, photo) === cell.age))
  const ways: readonly Way[] = [
    ...(might.length > 0 ? [{kind: 'date-photographs', birds: [...new Set(might.map(({bird}) => bird))], earliest: onDay(book.asOf)} as const] : []),
    ...(unsure.length > 0 ? [{kind: 'tell-varieties', varieties: without, birds: [...new Set(unsure)], earliest: onDay(book.asOf)} as const] : []),
    ...(isOpen || pictures.length + more.males + more.females + more.all === 0 ? [] : [{kind: 'photographs', wanted: pictures, ...more, earliest: wait} as const]),
  ]
  return judged(isOpen ? null : !isShort && missing.length === 0, {
    kind: 'photographs', birds, photos: counted.length, dated: counted.length - undated.length, wanted: wanted.length, missing,
  }, {behind: behind(counted.map(({bird}) => bird), counted.map(({bird}) => bird), counted.map(({photo}) => photo.on?.last)), aged, ways})
}
