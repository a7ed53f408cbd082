/** Birds as compact rows: band, what each does now and its step, which a phone shows without scrolling, then sex, year and the looks of the traits that matter most. */
import {countedValue} from '../findings/counted-value.ts'
import type {InbreedingOfBird, Kinship} from '../findings/inbreeding.ts'
import type {Bird, Logbook, Trait} from '../logbook/book.ts'
import {amount, shownIn} from './amounts.ts'
import {markOf, markedTrait} from './bird.ts'
import {hatchYear} from './dates.ts'
import {lastKeeper, leftWords} from './life-words.ts'
import {birdPath} from './links.ts'
import {mainMeasure} from './main-measure.ts'
import {NOTHING, percent} from './numbers.ts'
import {birdWord, sexSymbol} from './sex-words.ts'
import {stepWords} from './step-words.ts'

export interface BirdRow {
  readonly band: string
  readonly link: string
  readonly symbol: string
  /** `hen`, `cockerel` */
  readonly word: string
  readonly step: string | null
  readonly hatched: string
  readonly looks: readonly string[]
  readonly now: string
  /** F in per cent, where the table has it */
  readonly f: string | null
}

export interface BirdTable {
  /** names the scrolled region */
  readonly label: string
  readonly traits: readonly string[]
  /** is there a column for the step? */
  readonly steps: boolean
  /** the place of the column of F, the last; 0 where there is none */
  readonly f: number
  readonly rows: readonly BirdRow[]
}

/** The traits a row has room for: the marked one and one measure. */
function rowTraits(traits: readonly Trait[]): readonly Trait[] {
  const marked = markedTrait(traits), measured = mainMeasure(traits)
  return [marked, measured].filter(trait => trait !== null)
}

function lookWords(bird: Bird, trait: Trait, book: Logbook): string {
  const value = countedValue(bird, trait)
  if (value === null) return NOTHING
  return typeof value === 'number' ? amount(value, shownIn(trait, book.project.units)) : value
}

/** `breeding, with Inga` */
function nowWords(bird: Bird, breeders: ReadonlySet<Bird>): string {
  if (bird.left) return leftWords(bird.left)
  const keeper = lastKeeper(bird)
  return `${breeders.has(bird) ? 'breeding' : 'living'}${keeper === null ? '' : `, with ${keeper}`}`
}

const inbredText = ({f, atLeast}: InbreedingOfBird): string => `${atLeast && f.mean > 0 ? '≥ ' : ''}${percent(f.mean)}`

const differInStep = (birds: readonly Bird[]): boolean => new Set(birds.map(bird => stepWords(bird))).size > 1

/**
 * @param steps  give the step of each; else only where the birds differ in it, since the page has named it
 * @param kinship  for a column of F
 */
export function birdTable(birds: readonly Bird[], book: Logbook, breeders: ReadonlySet<Bird>, label: string, steps = differInStep(birds), kinship: Pick<Kinship, 'of'> | null = null): BirdTable {
  const traits = rowTraits(book.traits), mark = markOf(markedTrait(book.traits))
  return {
    label, steps, f: kinship ? traits.length + (steps ? 6 : 5) : 0, traits: traits.map(trait => trait.name),
    rows: birds.map(bird => ({
      band: bird.band, link: birdPath(bird), symbol: sexSymbol(bird.sex, mark(bird).fill), word: birdWord(bird, book.project.species, bird.left?.on?.last ?? book.asOf),
      step: steps ? stepWords(bird) : null, hatched: bird.hatched ? hatchYear(bird.hatched) : NOTHING, looks: traits.map(trait => lookWords(bird, trait, book)), now: nowWords(bird, breeders),
      f: kinship && inbredText(kinship.of(bird)),
    })),
  }
}

/** What the symbols of such a table mean. */
export function symbolNote(traits: readonly Trait[]): string {
  const marked = markedTrait(traits)
  const shapes = 'Square male, circle female, diamond unknown.'
  return marked === null ? shapes : `${shapes} Solid: scored with the wanted ${marked.name.toLowerCase()}. Open: scored otherwise. Speckled: not scored.`
}
