/** The birds that were shown, each with its pedigree in words to the great-grandparents, and what the judges gave it. */
import type {ShowResult} from '../findings/show-results.ts'
import type {Findings} from '../findings/study.ts'
import type {Bird, Parent} from '../logbook/book.ts'
import {dateWords, onDate} from './dates.ts'
import type {Reference, References} from './dossier-behind.ts'
import {LEFT} from './life-words.ts'
import {SHOWS} from './links.ts'
import type {Naming} from './naming.ts'
import {listWords, percentSign} from './numbers.ts'
import {birdWord} from './sex-words.ts'
import {stepWords} from './step-words.ts'

export interface ShownBird {
  readonly band: string
  /** `hen, hatched 14 March 2024, BC3F2, with the keeper at Kelpgarth, F 3.1%`; of a bird that is gone as what it left, and when */
  readonly is: string
  readonly sire: string
  readonly dam: string
  /** show by show */
  readonly results: string
}

/** Parents, grandparents and their parents: what a show catalogue asks; common practice, no source. */
const GENERATIONS = 3

export function shownBirds(findings: Findings, naming: Naming): readonly ShownBird[] {
  const shown = [...findings.shows.birds].toSorted(([a], [b]) => (a.band < b.band ? -1 : 1))
  return shown.map(([bird, results]): ShownBird => ({
    band: bird.band, is: isWords(bird, findings, naming), sire: sideWords(bird.parentage.sires, 'male', GENERATIONS), dam: sideWords(bird.parentage.dams, 'female', GENERATIONS), results: resultsWords(results),
  }))
}

/** Where the birds and their shows are on record. */
export function shownBirdsRef({shows}: Findings, refs: References): Reference | null {
  const birds = [...shows.birds.keys()]
  return birds.length === 0 ? null : refs.to({of: 'Birds shown', birds, records: [...birds.map(({hatch, at}) => hatch?.at ?? at), ...birds.map(({at}) => at), ...shows.shows.map(({show}) => show.at)], page: SHOWS})
}

function isWords(bird: Bird, {book, kinship}: Findings, naming: Naming): string {
  const keeper = bird.keptAt.at(-1)?.keeper, {f, atLeast} = kinship.of(bird), {left} = bird
  return [
    birdWord(bird, book.project.species, left?.on?.first ?? book.asOf), ...(bird.hatched ? [`hatched ${dateWords(bird.hatched)}`] : []), stepWords(bird),
    keeper ? `${left ? 'last with' : 'with'} ${naming.keeper(keeper)}` : 'keeper not recorded', ...(left ? [`${LEFT[left.how]}${left.on ? ` ${onDate(left.on)}` : ''}`] : []),
    `F ${atLeast ? 'at least ' : ''}${percentSign(f.mean)}`,
  ].join(', ')
}

/** Of a bird's own parents in doubt so many are named. */
const NAMED_AT_MOST = 3
const MANY = {male: 'males', female: 'hens'} as const

/** `22-004 (H21-01 × 21-012)`; of several it may be a few are named, of its own parents only, and none goes further back */
function sideWords(parents: readonly Parent[], sex: 'male' | 'female', left: number): string {
  const [only] = parents
  if (!only) return 'not recorded'
  if (parents.length > 1 || only.chance < 0.9995) {
    const isFew = left === GENERATIONS && parents.length <= NAMED_AT_MOST
    return isFew ? listWords(parents.map(({bird, chance}) => `${bird.band} (${percentSign(chance)})`), 'or') : `one of ${parents.length} ${MANY[sex]}`
  }
  const {bird} = only
  if (left < 2 || bird.parentage.kind === 'founder') return bird.strain ? `${bird.band} of ${bird.strain.name}` : bird.band
  return `${bird.band} (${sideWords(bird.parentage.sires, 'male', left - 1)} × ${sideWords(bird.parentage.dams, 'female', left - 1)})`
}

const resultsWords = (results: readonly ShowResult[]): string => results.map(({show, entry}) => {
  const place = entry.disqualified ? 'disqualified' : entry.place === null ? 'no placing' : `${entry.place}${entry.of === null ? '' : ` of ${entry.of}`}`
  return `${show.name}, ${dateWords(show.on)}: ${[...(entry.class === null ? [] : [entry.class]), place, ...(entry.grade === null ? [] : [entry.grade]), ...(entry.award === null ? [] : [entry.award])].join(', ')}`
}).join('; ')
