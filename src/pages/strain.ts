/** One founding strain: what it gives the breed, what it breeds true for, and its birds in the book. */
import type {Bird, Logbook, Strain} from '../logbook/book.ts'
import {dateOr} from './dates.ts'
import {leftSentence} from './life-words.ts'
import {birdPath, hatchPath, strainPath, traitPath} from './links.ts'
import {counted, percentSign, sentence} from './numbers.ts'
import type {Cell, Page, Table} from './page.ts'
import {plates, type Plate} from './plates.ts'

export interface StrainView {
  readonly name: string
  readonly lead: string
  readonly plates: readonly Plate[]
  readonly facts: readonly {readonly term: string; readonly words: string}[]
  /** Markdown */
  readonly body: string
  readonly trueFor: Table | null
  readonly alleles: Table | null
  readonly kin: string
  readonly birds: Table | null
  readonly birdsWords: string
  readonly hatches: readonly {readonly text: string; readonly link: string}[]
}

export const roleWords = (strain: Strain): string =>
  ({recurrent: 'the strain crossed back to', donor: 'a donor, taken for what it gives', other: 'a founding strain'})[strain.role]

const SYMBOLS_FIRST = (a: readonly [string, unknown], b: readonly [string, unknown]): number => (a[0] < b[0] ? -1 : 1)

function trueForTable(strain: Strain): Table | null {
  if (strain.trueFor.size === 0) return null
  const rows = [...strain.trueFor].map(([trait, state]): readonly Cell[] => [{text: trait.name, link: traitPath(trait)}, state])
  return {columns: [{head: 'Trait'}, {head: 'Breeds true for'}], rows}
}

function allelesTable(strain: Strain): Table | null {
  if (strain.alleles.size === 0) return null
  const rows = [...strain.alleles].sort(SYMBOLS_FIRST).flatMap(([symbol, shares]) =>
    [...shares].map(([allele, share]): readonly Cell[] => [symbol, allele, percentSign(share)]))
  return {columns: [{head: 'Gene'}, {head: 'Allele'}, {head: 'Stated share', number: true}], rows}
}

function kinWords(strain: Strain): string {
  if (strain.inbreeding === 0 && strain.kinship === 0) {
    return 'Nothing is stated of how inbred its founders are or how closely they are kin, so both are taken as 0. If they were kin, every figure of inbreeding is higher than it is printed.'
  }
  return `Its founders are taken to have an inbreeding of ${percentSign(strain.inbreeding)}, and two of them a kinship of ${percentSign(strain.kinship)}, as the keeper states.`
}

export const birdsOf = (book: Logbook, strain: Strain): readonly Bird[] => book.birds.filter(bird => bird.step.kind === 'strain' && bird.strain === strain)

function birdsTable(birds: readonly Bird[]): Table | null {
  if (birds.length === 0) return null
  const rows = [...birds].sort((a, b) => (a.id < b.id ? -1 : 1)).map((bird): readonly Cell[] =>
    [{text: bird.band, link: birdPath(bird)}, bird.sex, dateOr(bird.hatched, 'day not recorded'), bird.left ? sentence(leftSentence(bird.left)) : 'In the flock'])
  return {columns: [{head: 'Bird'}, {head: 'Sex'}, {head: 'Hatched'}, {head: 'Now'}], rows}
}

export function strainPages(book: Logbook): readonly Page[] {
  return book.strains.map(strain => {
    const birds = birdsOf(book, strain)
    const view: StrainView = {
      name: strain.name, lead: `${sentence(roleWords(strain))}.`, facts: [{term: 'In the book', words: counted(birds.length, 'bird')}], body: strain.body, plates: plates(strain.photos ?? [], strain.name, false),
      trueFor: trueForTable(strain), alleles: allelesTable(strain), kin: kinWords(strain), birds: birdsTable(birds),
      birdsWords: birds.length === 0 ? 'No bird of this strain is in the book.' : 'Birds of the pure strain. They stand outside every share and spread of the ladder.',
      hatches: book.hatches.filter(hatch => hatch.strain === strain).map(hatch => ({text: hatch.id, link: hatchPath(hatch)})),
    }
    return {
      path: strainPath(strain), template: 'strain', title: strain.name, section: 'records', view,
      search: {kind: 'strain', words: `${strain.name} strain ${strain.role}`},
    }
  })
}
