/** All birds: those living first, breeders before the rest, by step; a large flock's others by step on pages of their own. */
import type {LivingCarriers} from '../findings/living-carriers.ts'
import type {Kinship} from '../findings/inbreeding.ts'
import type {Bird, Logbook} from '../logbook/book.ts'
import {fileName} from '../records/file-name.ts'
import {birdTable, symbolNote} from './bird-rows.ts'
import type {BirdTable} from './bird-rows.ts'
import {BIRDS, birdsByStepPath, traitPath} from './links.ts'
import {figured, saying, sentence} from './numbers.ts'
import type {Page} from './page.ts'
import {stepWords} from './step-words.ts'
import {unwantedWords} from './trait-hidden.ts'

/** More birds than this on record, and the index names the living only; more living, and it names the breeders. */
export const ON_ONE_PAGE = 600

interface Group {
  readonly title: string
  readonly id: string
  readonly table: BirdTable
}

/** A row of places to jump to, under `Living` or `No longer here`. */
interface Jumps {
  readonly head: string
  readonly places: readonly {readonly label: string; readonly id: string; readonly count: string}[]
}

export interface BirdsView {
  readonly lead: string
  readonly note: string
  readonly groups: readonly Group[]
  /** to the groups, on a page long enough to want it */
  readonly jumps: readonly Jumps[]
  /** to the lists of living birds that may hide what is not wanted, on the pages of the traits */
  readonly hide: readonly {readonly label: string; readonly link: string; readonly count: string}[]
  readonly empty: string
  /** pages by step, when there are any */
  readonly steps: readonly {readonly label: string; readonly link: string; readonly count: string}[]
}

export interface BirdsByStepView {
  readonly title: string
  readonly lead: string
  readonly note: string
  readonly table: BirdTable
  readonly parts: readonly {readonly label: string; readonly link: string | null; readonly current: boolean}[]
}

/** Newest hatch first, then by band, so that the bird in hand stands near the top. */
const newestFirst = (a: Bird, b: Bird): number => (b.hatched?.first ?? -1e9) - (a.hatched?.first ?? -1e9) || (a.id < b.id ? -1 : 1)

/** Birds by their step in words, steps in the order given, those not on the ladder after them. */
function byStep(birds: readonly Bird[], order: readonly string[]): readonly (readonly [string, readonly Bird[]])[] {
  const groups = new Map<string, Bird[]>()
  for (const bird of birds) {
    const label = stepWords(bird), group = groups.get(label)
    if (group) group.push(bird)
    else groups.set(label, [bird])
  }
  const place = (label: string): number => {
    const at = order.indexOf(label)
    return at === -1 ? order.length : at
  }
  return [...groups].sort(([a], [b]) => place(a) - place(b) || (a < b ? -1 : 1)).map(([label, group]) => [label, group.sort(newestFirst)] as const)
}

function lead(book: Logbook, living: readonly Bird[], breeders: ReadonlySet<Bird>): string {
  if (book.birds.length === 0) return 'No bird is in the book yet.'
  const breeding = living.filter(bird => breeders.has(bird)).length
  const say = saying(living.length, breeding, book.birds.length)
  return `${sentence(say(living.length, 'bird'))} living, ${breeding === 0 ? 'none in a breeding pen' : say(breeding, 'of them a breeder', 'of them breeders')}; ${say(book.birds.length, 'bird')} on record.`
}

/** @param order  labels of the steps reached, in the ladder's order */
export function birdsPages(book: Logbook, order: readonly string[], breeders: ReadonlySet<Bird>, kinship: Pick<Kinship, 'of'>, carriers: readonly LivingCarriers[]): readonly Page[] {
  const living = book.birds.filter(bird => bird.left === null), gone = book.birds.filter(bird => bird.left !== null)
  const latestFirst = [...order].reverse()
  const large = book.birds.length > ON_ONE_PAGE
  const breeding = living.filter(bird => breeders.has(bird)), others = living.filter(bird => !breeders.has(bird))
  const steps = byStep(book.birds, order)
  const parts = [
    {head: 'Living', groups: [
      ...(breeding.length === 0 || breeding.length > ON_ONE_PAGE ? [] : [{label: 'Breeding', title: 'Breeding', birds: byStep(breeding, latestFirst).flatMap(([, birds]) => birds)}]),
      ...byStep(living.length > ON_ONE_PAGE ? [] : others, latestFirst).map(([label, birds]) => ({label, title: `Living, ${label}`, birds})),
    ]},
    {head: 'No longer here', groups: byStep(large ? [] : gone, latestFirst).map(([label, birds]) => ({label, title: `No longer here, ${label}`, birds}))},
  ].filter(({groups}) => groups.length > 0)
  const idOf = (title: string): string => fileName(title.toLowerCase())
  const groups = parts.flatMap(part => part.groups.map(({title, birds}): Group => ({title, id: idOf(title), table: birdTable(birds, book, breeders, title, true, part.head === 'Living' ? kinship : null)})))
  const view: BirdsView = {
    lead: lead(book, living, breeders), note: `${symbolNote(book.traits)}${living.length > 0 ? ' F: how closely bred, ≥ where a grandparent or nearer is not in the book.' : ''}`, groups,
    jumps: groups.length < 2 ? [] : parts.map(part => ({head: part.head, places: part.groups.map(({label, title, birds}) => ({label, id: idOf(title), count: figured(birds.length, 'bird')}))})),
    hide: carriers.filter(({birds}) => birds.length > 0).map(each => ({label: `${each.trait.name}, ${unwantedWords(each)}`, link: `${traitPath(each.trait)}#may-hide`, count: figured(each.birds.length, 'bird')})),
    empty: book.birds.length === 0 ? 'The first birds to write down are the founders: band, sex and strain are enough to begin with.' : '',
    steps: large ? steps.map(([label, birds]) => ({label, link: birdsByStepPath(label), count: figured(birds.length, 'bird')})) : [],
  }
  const index: Page = {path: BIRDS, template: 'birds', title: 'Birds', section: 'birds', view, search: {kind: 'index', words: 'birds living breeding all bands'}}
  return [index, ...(large ? steps.flatMap(([label, birds]) => stepPages(label, birds, book, breeders)) : [])]
}

function stepPages(label: string, birds: readonly Bird[], book: Logbook, breeders: ReadonlySet<Bird>): readonly Page[] {
  const count = Math.ceil(birds.length / ON_ONE_PAGE)
  return Array.from({length: count}, (_, index): Page => {
    const part = birds.slice(index * ON_ONE_PAGE, (index + 1) * ON_ONE_PAGE)
    const view: BirdsByStepView = {
      title: `Birds of ${label}`, lead: `${sentence(figured(birds.length, 'bird'))}, newest first${count > 1 ? `; part ${index + 1} of ${count}` : ''}.`, note: symbolNote(book.traits),
      table: birdTable(part, book, breeders, `Birds of ${label}`),
      parts: count === 1 ? [] : Array.from({length: count}, (__, other) => ({label: `Part ${other + 1}`, link: birdsByStepPath(label, other + 1), current: other === index})),
    }
    return {path: birdsByStepPath(label, index + 1), template: 'birds-by-step', title: `Birds of ${label}`, section: 'birds', view}
  })
}
