/** The founding strains, the one crossed back to first. */
import type {Logbook, Strain} from '../logbook/book.ts'
import {STRAINS, strainPath} from './links.ts'
import {counted, listWords, sentence} from './numbers.ts'
import type {Page} from './page.ts'
import {birdsOf, roleWords} from './strain.ts'

export interface StrainsView {
  readonly lead: string
  readonly strains: readonly {readonly name: string; readonly link: string; readonly role: string; readonly words: string}[]
}

const ROLES: readonly Strain['role'][] = ['recurrent', 'donor', 'other']

function strainWords(book: Logbook, strain: Strain): string {
  const gives = [...strain.trueFor].map(([trait, state]) => `${trait.name.toLowerCase()} ${state}`)
  const birds = `${sentence(counted(birdsOf(book, strain).length, 'bird'))} in the book.`
  return gives.length === 0 ? birds : `Breeds true for ${listWords(gives)}. ${birds}`
}

export function strainsPage(book: Logbook): Page {
  const strains = [...book.strains].sort((a, b) => ROLES.indexOf(a.role) - ROLES.indexOf(b.role) || (a.id < b.id ? -1 : 1))
  const view: StrainsView = {
    lead: strains.length === 0 ? 'No founding strain is on record yet.' : `${sentence(counted(strains.length, 'founding strain'))}.`,
    strains: strains.map(strain => ({name: strain.name, link: strainPath(strain), role: sentence(roleWords(strain)), words: strainWords(book, strain)})),
  }
  return {path: STRAINS, template: 'strains', title: 'Strains', section: 'records', view, search: {kind: 'strain', words: 'founding strains recurrent donor'}}
}
