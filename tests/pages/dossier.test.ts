import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import {downloads} from '../../src/pages/downloads.ts'
import {dossierPage, type DossierView} from '../../src/pages/dossier.ts'
import {keeper, requirement, shownBook} from './shown-logbook.ts'
import {at, date, weekOld} from './small-logbook.ts'

const viewOf = (book: Parameters<typeof study>[0]): DossierView => dossierPage(study(book)).view as DossierView

describe('the dossier', () => {
  const view = viewOf(shownBook())

  it('counts its requirements by state, in words', () => {
    expect(view.lead).toBe('Dossier of evidence for the recognition of a new breed. One of three requirements is met, one is not yet and one is waived, with the reason.')
  })

  it('puts what was asked beside what the records show, with the page it stands on', () => {
    expect(view.evidence[0]).toEqual({
      state: 'not', egg: 'egg-open', mark: 'Not yet', title: 'Years bred', asked: 'At least 5 years', waived: null, way: 'Shortest way: three more seasons with a hatch, in 2028 at the earliest.', ref: {text: '[1]', link: '#r1'}, lines: [], where: null,
      shown: expect.stringMatching(/^Two seasons, 2024 and 2025, with hatches in each\./) as string,
    })
    // Wilson's formula for 4 of 6 worked by hand: 30.0 to 90.3
    expect(view.evidence[1]).toMatchObject({state: 'met', shown: '4 of 6 (66.7%, 30.0 to 90.3) showed every required trait of their sex (comb), in 2025, culls counted. They come of one sire family, so the interval speaks of these chicks only. The rate decides; the lower limit, 30.0%, does not reach what is asked. Latest record: 22 May 2025.'})
    expect(view.evidence[2]).toMatchObject({state: 'wai', waived: 'Waived by the association: All gatherings were forbidden.'})
  })

  it('lists behind every reference the birds and the files of records, each reference once', () => {
    const texts = JSON.stringify(view).match(/"\[\d+\]"/g) ?? []
    expect(view.behind.map(({number}) => number)).toEqual(view.behind.map((_, index) => index + 1))
    for (const {id} of view.behind) expect(JSON.stringify(view)).toContain(`"#${id}"`)
    expect(new Set(texts).size).toBe(view.behind.length)
    for (const {birds, records} of view.behind) expect(`${birds}${records}`).not.toBe('')
    expect(view.behind.map(({of}) => of)).toEqual(expect.arrayContaining(['Requirement: Years bred', 'Table 2, F1', 'Show: Autumn show, 28 September 2024']))
  })

  it('says of each bird shown who its parents were and what the judges gave it', () => {
    expect(view.shownBirds.map(({band}) => band)).toEqual(['24-001', '24-003', '24-004'])
    expect(view.shownBirds[1]?.results).toBe('Autumn show, 28 September 2024: pullet, 1 of 7, best pullet')
  })

  it('lists every score that was struck, with its reason', () => {
    expect(view.struck?.rows).toHaveLength(1)
  })

  it('tells how the breed came to be, step by step', () => {
    expect(view.history.opening[0]).toBe('The work began in February 2024, from Holm White and Fell Buff.')
    expect(view.history.steps.map(({label}) => label)).toEqual(['F1', 'F2'])
    expect(view.history.closing[0]).toBe('By the records no other blood was used.')
  })

  it('says when a paper has ended, and never what it holds', () => {
    expect(view.papers?.rows).toEqual([['Veterinary statement', 'veterinary', '12 August 2024', '12 August 2025', 'no, ended']])
  })

  it('counts what is missing', () => {
    expect(view.gaps.map(({text}) => text)).toEqual(expect.arrayContaining(['Two chicks hatched without being listed at all.', 'One score was struck out.']))
  })

  it('gives every keeper a line to sign, the one without consent under a letter', () => {
    expect(view.signing.names).toEqual(['Inga, the outer isles', 'keeper A'])
  })

  it('holds the standard in full', () => {
    expect(view.standard).toMatchObject({number: 2})
  })

  it('says what is missing when there is next to nothing', () => {
    const bare = viewOf(weekOld())
    expect(bare.lead).toBe('Dossier of evidence for the recognition of a new breed. No requirements are on record yet.')
    expect(bare).toMatchObject({evidence: [], figures: [], hatch: null, losses: null, shows: [], distinct: null, papers: null, standard: null, photographs: {plates: []}, shownBirds: [], struck: null})
    expect(bare.history.closing).toEqual(['Nothing has been hatched from a cross yet.'])
    expect(JSON.stringify(bare)).not.toMatch(/NaN|undefined|Infinity/)
  })
})

describe('every kind of requirement', () => {
  const kinds = [
    'years-bred', 'inter-se-generations', 'independent-keepers', 'breeders-alive', 'shown-per-class', 'shows-and-judges', 'show-result', 'true-to-type', 'fixed',
    'even-weight', 'written-standard', 'distinct', 'name-free', 'history', 'photographs', 'statements', 'veterinary', 'welfare', 'inbreeding', 'identity', 'consecutive-shows',
  ] as const
  const requirements = {at, body: '', association: null, papers: [], distinctness: null, items: kinds.map(kind => requirement(kind, kind, 'asked'))}

  it.each([['a small book', shownBook({requirements})], ['a project one week old', {...weekOld(), requirements}]])('has its sentence, in %s', (_, book) => {
    const {evidence} = viewOf(book)
    expect(evidence).toHaveLength(kinds.length)
    for (const {shown} of evidence) expect(shown).toMatch(/^[A-Z0-9].*[.]$/)
    expect(JSON.stringify(evidence)).not.toMatch(/NaN|undefined|Infinity/)
  })
})

describe('downloads', () => {
  const book = shownBook({keepers: [keeper('keeper-a', 'keeper A', {consents: false, body: 'CANARY lives at the red gate', since: date('2019-03')})]})
  const files = downloads(study(book))

  it('give every table as CSV and JSON, the book, and a schema a kind', () => {
    expect(files.map(({path}) => path)).toEqual(expect.arrayContaining(['data/birds.csv', 'data/shares.csv', 'data/book.json', 'data/schema/hatch.schema.json']))
    expect(files.find(({path}) => path === 'data/birds.csv')?.text.split('\n')[0]).toMatch(/^band,sex,step,hatched,sire,dam/)
  })

  it('hold nothing of a keeper without consent but the letter', () => {
    const whole = files.find(({path}) => path === 'data/book.json')?.text ?? ''
    expect((JSON.parse(whole) as {keepers: unknown}).keepers).toEqual([{id: 'keeper-a', name: 'keeper A'}])
    expect(files.map(({text}) => text).join('')).not.toContain('CANARY')
  })

  it('are JSON that reads, without a figure that is none', () => {
    for (const {path, text} of files.filter(file => file.path.endsWith('.json'))) expect(() => JSON.parse(text) as unknown, path).not.toThrow()
  })
})
