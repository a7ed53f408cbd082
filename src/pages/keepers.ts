/** Who keeps the birds. Only keepers who have agreed to it are named; the others stand as keeper A, keeper B. */
import type {Keeper, Logbook} from '../logbook/book.ts'
import {dateWords} from './dates.ts'
import {keeperAnchor, KEEPERS, penPath} from './links.ts'
import {counted, sentence} from './numbers.ts'
import type {Page} from './page.ts'

interface KeeperView {
  readonly id: string
  readonly name: string
  readonly words: readonly string[]
  readonly pens: readonly {readonly text: string; readonly link: string}[]
  /** Markdown; empty without consent */
  readonly body: string
}

export interface KeepersView {
  readonly lead: string
  readonly keepers: readonly KeeperView[]
}

function keeperView(book: Logbook, keeper: Keeper): KeeperView {
  const words = [
    ...(keeper.consents ? [] : ['Not named here: no consent is on record.']),
    ...(keeper.region === null ? [] : [sentence(keeper.region) + '.']),
    ...(keeper.since === null || !keeper.consents ? [] : [`Keeps birds of the project since ${dateWords(keeper.since)}.`]),
  ]
  return {
    id: keeperAnchor(keeper), name: sentence(keeper.name), words, body: keeper.consents ? keeper.body : '',
    pens: book.pens.filter(pen => pen.keeper === keeper).map(pen => ({text: pen.id, link: penPath(pen)})),
  }
}

export function keepersPage(book: Logbook): Page {
  const named = book.keepers.filter(keeper => keeper.consents).length, unnamed = book.keepers.length - named
  const lead = book.keepers.length === 0 ? 'No keeper is on record yet.'
    : `${sentence(counted(book.keepers.length, 'keeper'))}. ${unnamed === 0 ? 'All have agreed to be named.' : named === 0 ? 'None has agreed to be named here.'
      : `${sentence(counted(named, 'has', 'have'))} agreed to be named; the others stand as letters.`}`
  const view: KeepersView = {lead, keepers: book.keepers.map(keeper => keeperView(book, keeper))}
  return {
    path: KEEPERS, template: 'keepers', title: 'Keepers', section: 'records', view,
    search: {kind: 'keepers', words: ['keepers', ...book.keepers.map(keeper => keeper.name)].join(' ')},
  }
}
