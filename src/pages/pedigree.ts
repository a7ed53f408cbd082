/** A bird's pedigree as nested entries, sire above dam; a parent that may be one of several stands as that, with each one's chance. */
import type {Bird, Parent, Sex} from '../logbook/book.ts'
import {birdPath} from './links.ts'
import {percentSign} from './numbers.ts'
import {stepWords} from './step-words.ts'
import {sexSymbol} from './sex-words.ts'

export type Fill = 'open' | 'solid' | 'speckled'

/** How a bird's symbol is filled, and the same in words: `pea comb`. */
export interface Mark {
  readonly fill: Fill
  readonly words: string
}

export interface Ancestor {
  readonly symbol: string
  /** the symbol in words, and of an ancestor its place: `sire, comb pea` */
  readonly label: string
  /** one name, several that it may be, or none */
  readonly known: 'one' | 'several' | 'none'
  readonly names: readonly {readonly text: string; readonly link: string | null; readonly chance: string | null}[]
  /** said where there is no name: `not recorded`, `one of 6 hens` */
  readonly unnamed: string
  /** its step, or that it is one of those named */
  readonly note: string
  readonly parents: readonly Ancestor[]
}

const PLACE = {male: 'sire', female: 'dam'} as const

type ParentSex = keyof typeof PLACE

const notRecorded = (sex: ParentSex): Ancestor =>
  ({symbol: sexSymbol(sex, 'speckled'), label: PLACE[sex], known: 'none', names: [], unnamed: 'not recorded', note: '', parents: []})

/** More than this many candidates are counted, not named: the drawing has no room, and a bird's own page names its own. */
const NAMED_AT_MOST = 2
const MANY = {male: 'males', female: 'hens'} as const

/** Several that it may be: one entry that names them, likeliest first, and goes no further back. */
function oneOf(candidates: readonly Parent[], sex: ParentSex): Ancestor {
  const known = candidates.reduce((sum, {chance}) => sum + chance, 0), many = candidates.length > NAMED_AT_MOST
  const outside = known < 0.9995 ? [{text: 'not recorded', link: null, chance: percentSign(1 - known)}] : []
  return {
    symbol: sexSymbol(sex, 'speckled'), label: `${PLACE[sex]}, uncertain`, known: 'several', names: many ? [] : [...namesOf(candidates), ...outside],
    unnamed: many ? `one of ${candidates.length} ${MANY[sex]}` : 'not recorded', note: many ? '' : 'one of these', parents: [],
  }
}

const namesOf = (candidates: readonly Parent[]): Ancestor['names'] => candidates.map(({bird, chance}) => ({text: bird.band, link: birdPath(bird), chance: percentSign(chance)}))

/** The candidates for a bird's own parents that its drawing only counts, by side, likeliest first. */
export function candidatesNotDrawn({parentage}: Bird): readonly {readonly side: string; readonly names: Ancestor['names']}[] {
  return ([['Sire', parentage.sires], ['Dam', parentage.dams]] as const).filter(([, candidates]) => candidates.length > NAMED_AT_MOST)
    .map(([side, candidates]) => ({side, names: namesOf(candidates)}))
}

function side(bird: Bird, sex: ParentSex, left: number, mark: (bird: Bird) => Mark): Ancestor {
  const candidates = sex === 'male' ? bird.parentage.sires : bird.parentage.dams
  const [only] = candidates
  if (!only) return notRecorded(sex)
  if (candidates.length > 1 || only.chance < 0.9995) return oneOf(candidates, sex)
  return entry(only.bird, left, mark, only.bird.sex === sex ? PLACE[sex] : `${PLACE[sex]}, ${sexWords(only.bird.sex)}`)
}

const sexWords = (sex: Sex): string => (sex === 'unknown' ? 'sex unknown' : sex)

/** @param as  the bird's sex, or its place, which tells the sex */
function entry(bird: Bird, left: number, mark: (bird: Bird) => Mark, as: string): Ancestor {
  const {fill, words} = mark(bird)
  const parents = left > 1 && bird.parentage.kind !== 'founder' ? [side(bird, 'male', left - 1, mark), side(bird, 'female', left - 1, mark)] : []
  return {
    symbol: sexSymbol(bird.sex, fill), label: `${as}, ${words}`,
    known: 'one', names: [{text: bird.band, link: birdPath(bird), chance: null}], unnamed: '', note: stepWords(bird), parents,
  }
}

/**
 * The bird and its ancestors, so many generations in all, the bird itself counted.
 *
 * @param generations whole, 1 or more; default 5, which the page has room for
 */
export function pedigree(bird: Bird, mark: (bird: Bird) => Mark, generations = 5): Ancestor {
  const drawn = entry(bird, generations, mark, sexWords(bird.sex))
  return {...drawn, names: drawn.names.map(name => ({...name, link: null}))}
}

/** Of the places drawn above the bird itself: how many are known for sure, may be one of several birds, or are not recorded. */
export function known(ancestor: Ancestor): {readonly one: number; readonly several: number; readonly none: number} {
  return ancestor.parents.reduce((sum, parent) => {
    const above = known(parent)
    const count = (is: Ancestor['known']): number => sum[is] + above[is] + (parent.known === is ? 1 : 0)
    return {one: count('one'), several: count('several'), none: count('none')}
  }, {one: 0, several: 0, none: 0})
}

const SEXES = {m: 'square male', f: 'circle female', u: 'diamond unknown'} as const

/**
 * What the drawing shows, in words, and no sign that it has not.
 *
 * @param marked  the trait whose looks fill the symbols, in lower case; null when there is none
 */
export function legend(tree: Ancestor, marked: string | null): string {
  const symbols = symbolsIn(tree), drawn = (sign: string): boolean => symbols.some(symbol => symbol.includes(sign))
  const sexes = Object.entries(SEXES).flatMap(([sign, words]) => (drawn(sign) ? [words] : [])).join(', ')
  return [
    ...(tree.parents.length > 0 ? ['Sire above, dam below.'] : []), `${sexes.charAt(0).toUpperCase()}${sexes.slice(1)}.`,
    ...(marked === null ? [] : [
      ...(drawn('1') ? [`Solid: the wanted ${marked}.`] : []), ...(drawn('0') ? [drawn('1') ? 'Open: another.' : `Open: another ${marked} than wanted.`] : []),
      ...(drawn('q') ? ['Speckled: not scored, or not certain.'] : []),
    ]),
  ].join(' ')
}

const symbolsIn = ({symbol, parents}: Ancestor): readonly string[] => [symbol, ...parents.flatMap(symbolsIn)]
