/** Papers, distinctness and signatures for the dossier. The papers themselves are never published, only that they are there and until when they hold. */
import type {Keeper, Logbook, Paper} from '../logbook/book.ts'
import {dateWords} from './dates.ts'
import type {NumberedTable, Reference, References} from './dossier-behind.ts'
import {KEEPERS} from './links.ts'
import {counted, NOTHING, sentence} from './numbers.ts'
import {IN_PUBLIC, type Naming} from './naming.ts'
import type {Cell} from './page.ts'

function holds({on, until}: Paper, asOf: number): string {
  if (on.first > asOf) return 'not yet'
  return until === null || until.last >= asOf ? 'yes' : 'no, ended'
}

/** A table with the record that it is written in. */
export interface TableWithRef extends NumberedTable {
  readonly ref: Reference
}

export function papersTable(book: Logbook, refs: References): TableWithRef | null {
  const papers = [...(book.requirements?.papers ?? [])].sort((a, b) => a.on.first - b.on.first)
  if (papers.length === 0) return null
  const proves = (paper: Paper): string => book.requirements?.items.find(({kind}) => kind === paper.proves)?.title ?? paper.proves.replaceAll('-', ' ')
  const {head, label} = refs.table('papers')
  return {
    head, label, ref: refs.to({of: label, records: papers.map(({at}) => at)}), columns: [{head: 'Paper'}, {head: 'For'}, {head: 'Dated'}, {head: 'Until'}, {head: 'Holds now'}],
    rows: papers.map((paper): readonly Cell[] =>
      [paper.title, proves(paper), dateWords(paper.on), paper.until ? dateWords(paper.until) : NOTHING, holds(paper, book.asOf)]),
  }
}

export function distinctTable({requirements}: Logbook, refs: References): TableWithRef | null {
  const table = requirements?.distinctness
  if (!table || table.breeds.length < 2 || table.rows.length === 0) return null
  const {head, label} = refs.table('distinctness')
  return {
    head, label, ref: refs.to({of: label, records: table.rows.map(({at}) => at)}), columns: [{head: 'Character'}, ...table.breeds.map(head => ({head}))],
    rows: table.rows.map(({character, values}): readonly Cell[] => [character, ...table.breeds.map((_, index) => values[index] || NOTHING)]),
  }
}

export interface Signing {
  readonly keepers: string
  readonly statement: string
  readonly names: readonly string[]
  readonly ref: Reference | null
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

export function signers({keepers}: Logbook, refs: References, naming: Naming = IN_PUBLIC): Signing {
  const unnamed = keepers.filter(keeper => !naming.isNamed(keeper)).length
  return {
    names: keepers.map(keeper => signerWords(keeper, naming)), ref: keepers.length === 0 ? null : refs.to({of: 'Keepers', records: keepers.map(({at}) => at), page: KEEPERS}),
    keepers: keepers.length === 0 ? 'No keeper is on record yet.' : `${sentence(counted(keepers.length, 'keeper'))} on record. ${consentWords(unnamed, naming)}`,
    statement: `${keepers.length < 2 ? 'I have' : 'We have'} bred the birds described here, kept the records from which these figures are worked, and will show any of them on request.`,
  }
}
