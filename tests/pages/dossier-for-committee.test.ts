/** The dossier made for the committee beside the public one: the same but for the names, and it says for whom it is. */
import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import type {Confidential} from '../../src/logbook/confidential.ts'
import type {Logbook} from '../../src/logbook/book.ts'
import {dossierPage, type DossierView} from '../../src/pages/dossier.ts'
import {keeper, requirement, shownBook} from './shown-logbook.ts'

const told = keeper('keeper-a', 'keeper A', {consents: false}), silent = keeper('keeper-b', 'keeper B', {consents: false})
const confidential = (more: Partial<Confidential> = {}): Confidential => ({keepers: new Map([[told, {name: 'The keeper at Ternhouse', region: 'the south shore'}]]), judges: new Map(), ...more})
const base = shownBook()
const judged: Logbook = {...base, keepers: [...base.keepers.filter(({consents}) => consents), told, silent], shows: base.shows.map(show => ({...show, entries: show.entries.map(entry => ({...entry, judge: 'judge 1'}))}))}
const pageOf = (book: Logbook, names: Confidential | null) => dossierPage(study(book), names)
const viewOf = (book: Logbook, names: Confidential | null): DossierView => pageOf(book, names).view as DossierView

describe('the dossier for the committee', () => {
  it('says at its head, in its title and on every sheet that it is not to be published', () => {
    const page = pageOf(judged, confidential({judges: new Map([['judge 1', 'A judge']])}))
    expect((page.view as DossierView).confidential).toBe('For the committee only, not to be published. Keeper A and judge 1 of the site stand here by name.')
    expect(page.title).toContain('for the committee only')
    expect(page.heads?.right).toBe('For the committee only, not to be published')
  })

  it.each([
    [confidential(), 'Keeper A of the site stands here by name.'],
    [confidential({keepers: new Map()}), 'It names nobody whom the site does not.'],
  ])('says whom it names besides', (names, words) => {
    expect(viewOf(judged, names).confidential).toBe(`For the committee only, not to be published. ${words}`)
  })

  it('has lines to sign on with the name, the region and the letter of the site; who agreed to nothing stays a letter', () => {
    expect(viewOf(judged, confidential()).signing.names).toEqual(expect.arrayContaining(['The keeper at Ternhouse, the south shore (keeper A on the site)', 'keeper B']))
    expect(viewOf(judged, confidential()).signing.keepers).toContain('One keeper without consent to be named to the committee stands as a letter.')
  })

  it('names judges where shows are listed', () => {
    const words = viewOf(judged, confidential({judges: new Map([['judge 1', 'A judge']])})).shows.map(({text}) => text).join(' ')
    expect(words).toContain('Judged by A judge.')
    expect(words).not.toContain('judge 1')
  })

  it('names keepers in the evidence, and counts consent as the committee has it', () => {
    const book: Logbook = {...judged, hatches: judged.hatches.map(hatch => ({...hatch, keeper: told})),
      requirements: {...(judged.requirements ?? never()), items: [requirement('independent-keepers', 'Keepers', 'Two keepers', {atLeast: 1, seasons: 1})]}}
    expect(viewOf(book, confidential()).evidence[0]?.shown).toMatch(/The keeper at Ternhouse.*Consent to be named to the committee is on record from this keeper\./)
    expect(viewOf(book, null).evidence[0]?.shown).toMatch(/keeper A.*No consent to be named is on record from this keeper\./)
  })

  it('is the public one to the letter but for names and the words that say for whom it is', () => {
    const names = confidential({keepers: new Map(), judges: new Map()})
    const view = viewOf(judged, names), open = viewOf(judged, null)
    expect(view.signing.names).toEqual(open.signing.names)
    expect({...view, confidential: null, signing: open.signing}).toEqual(open)
  })
})

describe('the public dossier', () => {
  it('says that keepers without consent stand as letters, and no word of a committee’s own', () => {
    const page = pageOf(judged, null)
    expect((page.view as DossierView).signing.keepers).toContain('Two keepers without consent to be named stand as a letter.')
    expect(JSON.stringify(page)).not.toMatch(/committee only|Ternhouse/)
  })

  it('says which records it was made from', () => {
    expect(viewOf(judged, null).facts).toContainEqual({term: 'This book', words: expect.stringMatching(/^Records to \d+ \w+ \d{4}, checksum ab12\u00a0cd34 ef56\u00a07890$/) as string})
  })
})

function never(): never {
  throw new Error('the book has requirements')
}
