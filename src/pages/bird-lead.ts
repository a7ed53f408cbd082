/** A bird in one sentence, and the facts beside its band: when hatched, from where, at whose place, what it does now. */
import type {Bird, Logbook, Parent} from '../logbook/book.ts'
import {dateWords, onDate} from './dates.ts'
import {lastKeeper, leftSentence} from './life-words.ts'
import {hatchPath, penPath, stepPath, strainPath} from './links.ts'
import {mixedWhy} from './mixed-words.ts'
import {listWords, sentence} from './numbers.ts'
import {birdWord} from './sex-words.ts'
import {stepWords} from './step-words.ts'

/** A fact for the narrow vane, as the `aside` partial takes it. */
export interface Fact {
  readonly term: string
  readonly words: string
  readonly link: string | null
}

export const fact = (term: string, words: string, link: string | null = null): Fact => ({term, words, link})

const names = (candidates: readonly Parent[], many: string): string => {
  if (candidates.length > 2) return `one of ${candidates.length} ${many}`
  const outside = candidates.reduce((sum, {chance}) => sum + chance, 0) < 0.9995 ? ['a bird not recorded'] : []
  return listWords([...candidates.map(({bird}) => bird.band), ...outside], 'or')
}

function descent(bird: Bird): string {
  const {parentage} = bird
  if (parentage.kind === 'founder') {
    if (bird.flock) return `, of the bought flock ${bird.flock.name}`
    return bird.hatch?.strain ? ', from bought eggs' : ', a founder of the project'
  }
  const sire = parentage.sires.length === 0 ? null : `by ${names(parentage.sires, 'males')}`
  const dam = parentage.dams.length === 0 ? null : `out of ${names(parentage.dams, 'hens')}`
  if (sire === null && dam === null) return ', its parents not recorded'
  return `, ${[sire, dam].filter(part => part !== null).join(' ')}${sire === null ? ', sire not recorded' : dam === null ? ', dam not recorded' : ''}`
}

/** `A BC2 hen, hatched on 23 March 2024, by 22-004 or 22-009 out of 22-017.` */
export function birdLead(bird: Bird, book: Logbook): string {
  const hatched = bird.hatched ? `, hatched ${onDate(bird.hatched)}` : ''
  const step = stepWords(bird)
  const kind = `${step} ${birdWord(bird, book.project.species, bird.left?.on?.last ?? book.asOf)}`
  const why = mixedWhy(bird)
  return `${/^F\d/.test(step) ? 'An' : article(step)} ${kind}${hatched}${descent(bird)}.${why === null ? '' : ` Mixed: ${why}.`}`
}

const article = (word: string): string => (/^[AEIOUaeiou]/.test(word) ? 'An' : 'A')

function nowWords(bird: Bird, breeding: boolean, pen: string | null): string {
  if (bird.left) return leftSentence(bird.left)
  if (breeding) return pen === null ? 'breeding' : `breeding, pen ${pen}`
  return bird.maybe.length > 0 ? 'living, band gone' : 'living'
}

/** @param breeding is it a breeder on the book's day  @param pen the pen it stands in then, or null */
export function birdFacts(bird: Bird, breeding: boolean, pen: {readonly id: string; readonly path: string} | null): readonly Fact[] {
  const from = bird.hatch?.pens ?? []
  const [onlyPen] = from
  const keeper = lastKeeper(bird)
  return [
    bird.step.kind === 'strain'
      ? fact('Strain', stepWords(bird), bird.strain ? strainPath(bird.strain) : null)
      : fact('Step', bird.step.label, stepPath(bird.step.label)),
    fact('Hatched', bird.hatched ? dateWords(bird.hatched) : 'day not recorded'),
    ...(bird.hatch ? [fact('From hatch', bird.hatch.id, hatchPath(bird.hatch))] : []),
    ...(from.length === 1 && onlyPen ? [fact('From pen', onlyPen.pen.id, penPath(onlyPen.pen))] : from.length > 1 ? [fact('From pens', from.map(each => each.pen.id).join(' or '))] : []),
    ...(keeper === null ? [] : [fact('Kept by', keeper)]),
    fact(bird.left ? 'Left' : 'Now', sentence(nowWords(bird, breeding, pen?.id ?? null)), bird.left ? null : pen?.path ?? null),
  ]
}
