/** Papers, distinctness and signatures for the dossier. The papers themselves are never published, only that they are there and until when they hold. */
import type {Keeper, Logbook, Paper} from '../logbook/book.ts'
import {dateWords} from './dates.ts'
import {counted, NOTHING, sentence} from './numbers.ts'
import {IN_PUBLIC, type Naming} from './naming.ts'
import type {Cell, Table} from './page.ts'

function holds({on, until}: Paper, asOf: number): string {
  if (on.first > asOf) return 'not yet'
  return until === null || until.last >= asOf ? 'yes' : 'no, ended'
}

export function papersTable(book: Logbook): Table | null {
  const papers = [...(book.requirements?.papers ?? [])].sort((a, b) => a.on.first - b.on.first)
  if (papers.length === 0) return null
  const proves = (paper: Paper): string => book.requirements?.items.find(({kind}) => kind === paper.proves)?.title ?? paper.proves.replaceAll('-', ' ')
  return {
    columns: [{head: 'Paper'}, {head: 'For'}, {head: 'Dated'}, {head: 'Until'}, {head: 'Holds now'}],
    rows: papers.map((paper): readonly Cell[] =>
      [paper.title, proves(paper), dateWords(paper.on), paper.until ? dateWords(paper.until) : NOTHING, holds(paper, book.asOf)]),
  }
}

export function distinctTable({requirements}: Logbook): Table | null {
  const table = requirements?.distinctness
  if (!table || table.breeds.length < 2 || table.rows.length === 0) return null
  return {
    columns: [{head: 'Character'}, ...table.breeds.map(head => ({head}))],
    rows: table.rows.map(({character, values}): readonly Cell[] => [character, ...table.breeds.map((_, index) => values[index] || NOTHING)]),
  }
}

export interface Signing {
  readonly keepers: string
  readonly statement: string
  readonly names: readonly string[]
}

function consentWords(unnamed: number, {isConfidential}: Naming): string {
  const named = isConfidential ? 'named to the committee' : 'named'
  if (unnamed === 0) return `Consent to be ${named} is on record from all.`
  return `${sentence(counted(unnamed, 'keeper'))} without consent to be ${named} ${unnamed === 1 ? 'stands' : 'stand'} as a letter.`
}

/** A keeper as the line to sign on has it: the name, the region where it may be known, and to the committee the letter by which the site speaks of them. */
function signerWords(keeper: Keeper, naming: Naming): string {
  const region = naming.region(keeper), name = naming.keeper(keeper)
  return `${name}${region === null ? '' : `, ${region}`}${name === keeper.name ? '' : ` (${keeper.name} on the site)`}`
}

export function signers({keepers}: Logbook, naming: Naming = IN_PUBLIC): Signing {
  const unnamed = keepers.filter(keeper => !naming.isNamed(keeper)).length
  return {
    names: keepers.map(keeper => signerWords(keeper, naming)),
    keepers: keepers.length === 0 ? 'No keeper is on record yet.' : `${sentence(counted(keepers.length, 'keeper'))} on record. ${consentWords(unnamed, naming)}`,
    statement: `${keepers.length < 2 ? 'I have' : 'We have'} bred the birds described here, kept the records from which these figures are worked, and will show any of them on request.`,
  }
}
