import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import type {Logbook} from '../../src/logbook/book.ts'
import {malesPage, type MalesView} from '../../src/pages/males.ts'
import {oneMoreWords, ratePassedWords, remedyLine} from '../../src/pages/one-more-male-words.ts'
import {nearestKinWords, pairReasonWords} from '../../src/pages/pair-reason-words.ts'
import {penPage, type PenView} from '../../src/pages/pen.ts'
import {twoPens} from '../findings/breeding-book.ts'
import {halfSibs} from '../findings/kin-book.ts'
import {logbook, smallBook, weekOld} from './small-logbook.ts'

const of = (book: Logbook): MalesView => malesPage(study(book)).view as MalesView
const text = (value: unknown): string => JSON.stringify(value)

describe('malesPage(findings)', () => {
  const view = of(twoPens())

  it('puts the least kin first in every pen, and says who stands there and who passes the limit', () => {
    expect(view.lead).toBe('Four males to choose from for the hens of two pens of 2026, by how closely bred their chicks would be.')
    const [a] = view.pens
    expect(a?.words).toBe('Two living hens. A1 (25.0%) stands here now.')
    expect(a?.table.rows.map(row => row.map(cell => (typeof cell === 'string' ? cell : cell.text)))).toEqual([
      ['B1', 'F1', '0.0', 'A2', '0.0', '0 of 2'], ['C2', 'F1', '0.0', 'A2', '0.0', '0 of 2'], ['A1', 'F1, here now', '25.0', 'A2', '25.0', '2 of 2'], ['C1', 'F1', '25.0', 'A2', '25.0', '2 of 2'],
    ])
    expect(view.limit).toBe('The project’s limit for one mating is 12.5%, tried at the upper end of what may be.')
  })

  it('answers first: one male a pen, what it costs, and whom to keep out', () => {
    const rows = view.answer?.table.rows.map(row => row.map(cell => (typeof cell === 'string' ? cell : cell.text)))
    expect(rows).toEqual([['2026-A', 'B1', '0.0', '0.0'], ['2026-B', 'A1', '0.0', '0.0']])
    expect(view.answer?.pens).toEqual([
      {id: '2026-A', words: 'B1: he and these hens share no ancestor in the book. As good by kinship: C2. Here now: A1, 25.0%.', avoid: 'A1 and C1.'},
      {id: '2026-B', words: 'A1: he and the hen share no ancestor in the book. As good by kinship: C1 and C2. Here now: B1, 25.0%.', avoid: 'B1.'},
    ])
    expect(view.answer?.words.at(-1)).toBe('Avoid: with some hen of the pen the chicks would, or may, pass the project’s limit of 12.5%.')
    expect(of(twoPens(null)).answer?.words.at(-1)).toBe('Avoid: with some hen of the pen the chicks would, or may, reach 25.0%, as from brother and sister.')
  })

  it('shows a handful, the one that stands there always among them, the rest behind', () => {
    const book = twoPens(), brothers = ['D1', 'D2', 'D3', 'D4'].map(id => Object.assign({...book.named('C2')}, {id, band: id}))
    const [a] = of({...book, birds: [...book.birds, ...brothers]}).pens
    const shown = a?.table.rows.map(([cell]) => (typeof cell === 'object' ? cell.text : ''))
    expect(shown).toEqual(['B1', 'C2', 'D1', 'D2', 'D3', 'A1'])
    expect(a?.more?.title).toBe('Two more males, closer kin')
    expect(a?.more?.table.rows.length).toBe(2)
  })

  it('tells the best and the worst pairs with the reason, and the table of all', () => {
    expect(view.reasons[0]).toBe('B1 and B2 are kin through H-2 and B-2, parents of both (25.0): together 25.0%.')
    expect(view.kinship?.columns.map(({head}) => head)).toEqual(['Hen', 'A1', 'B1'])
    expect(text(view.kinship?.rows)).toContain('["A2"'.replace('"A2"', '{"text":"A2","link":"birds/A2.html"}'))
  })

  it('names the command where there are too many for a table', () => {
    const book = twoPens(), hens = Array.from({length: 45}, (_, index) => Object.assign({...book.named('A2')}, {id: `E${index}`, band: `E${index}`, kept: {on: null, why: 'for breeding'}}))
    const many = of({...book, birds: [...book.birds, ...hens]})
    expect(many.kinship).toBe(null)
    expect(many.kinshipWords).toContain('figures kinship')
  })

  it('says in words what cannot be said yet', () => {
    expect(of(logbook('2024-01-01')).wanting).toMatch(/^No pen has been put together/)
    expect(of(weekOld()).wanting).toMatch(/^No pen has been put together/)
    for (const book of [logbook('2024-01-01'), weekOld(), smallBook(), twoPens(), twoPens(null)]) expect(text(of(book))).not.toMatch(/NaN|undefined|Infinity/)
    expect(of(twoPens(null)).pens[0]?.table.columns.map(({head}) => head)).not.toContain('Hens over the limit')
  })
})

describe('oneMoreWords(found)', () => {
  const {oneMoreMale} = study(twoPens())

  it('names the male and both figures', () => {
    if (!oneMoreMale) throw new Error('nothing found')
    expect(oneMoreWords(oneMoreMale)).toEqual([
      'Two males and three females of the new breed are bred from. Used alike, they give a next generation of mean kinship 18.1%.',
      'One male more: of the 2 males beside them C2 lowers it most, to 13.9%.',
    ])
    expect(oneMoreWords({...oneMoreMale, choices: []})[1]).toMatch(/^Every male there is/)
    expect(oneMoreWords({...oneMoreMale, choices: oneMoreMale.choices.map(each => ({...each, kinship: oneMoreMale.now}))})[1]).toMatch(/^None of the two males/)
  })

  it('in one line, where a limit is passed', () => {
    const passed = {step: 'F3', rate: 0.0625, limit: 0.01}
    expect(ratePassedWords(passed)).toBe('With F3 the breed lost 6.3% of the variety it had left in one generation; the project allows 1.0%.')
    expect(remedyLine(null, oneMoreMale)).toBe(null)
    expect(remedyLine(passed, oneMoreMale)).toMatch(/one male more: C2 would bring the kinship to be expected from 18\.1% to 13\.9%\.$/)
    expect(remedyLine(passed, null)).toMatch(/No one male more of this flock would mend it\.$/)
  })
})

describe('pairReasonWords(reason)', () => {
  const book = halfSibs(), {pairReason} = study(book)
  const words = (a: string, b: string) => pairReasonWords(pairReason(book.named(a), book.named(b)))

  it('names the ancestors, where they stand, and what each gives', () => {
    expect(words('23-003', '23-017')).toBe('23-003 and 23-017 are kin through 22-005, sire of both (12.5): together 12.5%.')
    expect(words('22-005', '23-017')).toBe('22-005 and 23-017 are kin through 22-005 himself, sire of 23-017 (25.0): together 25.0%.')
    expect(words('23-017', '22-005')).toBe('23-017 and 22-005 are kin through 22-005 himself, sire of 23-017 (25.0): together 25.0%.')
    expect(words('22-005', 'B-1')).toBe('22-005 and B-1 share no ancestor in the book.')
  })

  it('tells the nearest in a few words', () => {
    const near = (a: string, b: string) => nearestKinWords(pairReason(book.named(a), book.named(b)))
    expect(near('23-003', '23-017')).toBe('both are chicks of 22-005')
    expect(near('22-005', '23-017')).toBe('22-005 is the sire of 23-017')
    expect(near('23-017', '22-005')).toBe('22-005 is the sire of 23-017')
    expect(near('22-005', 'B-1')).toBe('')
  })

  it('says that parents in doubt count by their chance', () => {
    expect(words('23-003', '24-002')).toMatch(/Parents in doubt count by their chance\.$/)
  })
})

describe('penPage(pen): how close the pairs are', () => {
  it('gives chicks’ F by male and the worst pair, over the limit', () => {
    const book = twoPens(), findings = study(book), [a] = book.pens
    const view = a && penPage(a, findings).view as PenView
    expect(view?.close).toEqual(['Chicks of A1 and two hens: F 25.0% on average. Closest: A1 with A2, 25.0%, over the project’s limit of 12.5% for one mating.'])
    expect(view?.choose).toBe('males.html')
  })
})
