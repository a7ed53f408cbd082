import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import type {Logbook} from '../../src/logbook/book.ts'
import {malesPage, type MalesView} from '../../src/pages/males.ts'
import {oneMoreWords, ratePassedWords, remedyLine, strongerWords} from '../../src/pages/one-more-male-words.ts'
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
      ['B1', '0.0', 'A2', '0.0', '0 of 2', 'F1'], ['C2', '0.0', 'A2', '0.0', '0 of 2', 'F1'], ['A1', '25.0', 'A2', '25.0', '2 of 2', 'F1, here now'], ['C1', '25.0', 'A2', '25.0', '2 of 2', 'F1'],
    ])
    expect(view.limit).toBe('The project’s limit for one mating is 12.5%, tried at the upper end of what may be.')
  })

  it('answers first: one male a pen, what it costs, and whom to keep out', () => {
    const rows = view.answer?.table.rows.map(row => row.map(cell => (typeof cell === 'string' ? cell : cell.text)))
    expect(rows).toEqual([['2026-A', 'B1', '0.0', '0.0'], ['2026-B', 'A1', '0.0', '0.0']])
    expect(view.answer?.pens).toEqual([
      {title: 'Pen 2026-A', words: 'B1: he and these hens share no ancestor in the book. As good by kinship: C2. Here now: A1, 25.0%.', avoid: 'A1 and C1.'},
      {title: 'Pen 2026-B', words: 'A1: he and the hen share no ancestor in the book. As good by kinship: C1 and C2. Here now: B1, 25.0%.', avoid: 'B1.'},
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
    expect(view.reasons[0]).toBe('A1 and A2 are kin through H-1 and B-1, parents of both (25.0): together 25.0%.')
    expect(view.kinship?.columns.map(({head}) => head)).toEqual(['Hen', 'A1', 'B1'])
    expect(text(view.kinship?.rows)).toContain('["A2"'.replace('"A2"', '{"text":"A2","link":"birds/A2.html"}'))
  })

  it('folds sisters and brothers into one line, the pairs that could be put together too', () => {
    const rows = (table: typeof view.best) => table?.rows.map(row => row.map(cell => (typeof cell === 'string' ? cell : cell.text)))
    expect(rows(view.worst)?.slice(0, 2)).toEqual([['A1 and C1', 'A2 and A3', '25.0', '25.0'], ['B1', 'B2', '25.0', '25.0']])
  })

  it('names by relation the pairs that are never to be made', () => {
    expect(view.never).toEqual([{title: 'Full brother and sister', words: 'A1 and C1 with A2 and A3 (25.0%); B1 with B2 (25.0%).'}])
    expect(of(smallBook()).never.map(({title}) => title)).toContain('Full brother and sister, it may be')
  })

  it('warns where a parent of the two is not in the book', () => {
    const book = twoPens(), found = {...book.named('C2')}
    const lone = Object.assign({...found}, {id: 'D1', band: 'D1', parentage: {kind: 'uncertain', pairs: [{sire: null, dam: book.named('B-3'), chance: 1}], sires: [], dams: [{bird: book.named('B-3'), chance: 1}]}})
    const {pens, least} = of({...book, birds: [...book.birds, lone]})
    expect(pens[0]?.table.rows.find(([cell]) => typeof cell === 'object' && cell.text === 'D1')?.[1]).toBe('≥ 0.0')
    expect(least).toMatch(/^“≥” stands where a parent/)
    expect(view.least).toBe('')
  })

  it('answers for hens that are kept and in no pen yet, as a place and shared out among the pens', () => {
    const book = twoPens(), pullet = Object.assign({...book.named('A2')}, {id: 'A9', band: 'A9', kept: {on: null, why: 'for breeding'}})
    const {lead, answer, pens} = of({...book, birds: [...book.birds, pullet]})
    expect(lead).toContain('the hens of two pens of 2026 and the hens kept and in no pen yet')
    expect(answer?.table.rows.at(-1)?.[0]).toBe('kept, in no pen yet')
    expect(answer?.pens.at(-1)?.words).toMatch(/Or shared out among the pens, each to the male put there that she is least kin to: A9 to pen 2026-A \((B1|C2), 0\.0%\)\.$/)
    expect(pens.at(-1)?.words).toBe('One living hen. A9: counted here as one pen.')
  })

  it('says that all are over the limit where all are, and then leaves the column out', () => {
    const {limit, pens} = of(twoPens(-0.01))
    expect(limit).toContain('Every pair that can be made here is over it')
    expect(pens[0]?.table.columns.map(({head}) => head)).not.toContain('Hens over the limit')
    expect(pens[0]?.words).toMatch(/Every male is over the limit of -1\.0% with every one of them; the least stands first\.$/)
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

  it('says that one more does not bring the flock under the limit, and what would do more', () => {
    const found = study(twoPens())
    const next = {kind: 'prospects', to: {name: 'Holm White'}, interSe: {f: 0.215}, now: {f: 0.22}, backcross: {f: 0.028}} as typeof found.nextBackcross
    const words = strongerWords({book: found.book, oneMoreMale: found.oneMoreMale, ratePassed: null, nextBackcross: next})
    expect(words).toBe('With that too the flock stays over the project’s limit of 12.5%. Stronger is another backcross to Holm White: chicks of F 2.8% in place of 21.5% inside the line.')
    expect(strongerWords({book: study(twoPens(null)).book, oneMoreMale: found.oneMoreMale, ratePassed: null, nextBackcross: next})).toBe('')
    expect(remedyLine({step: 'F3', rate: 0.06, limit: 0.01}, found.oneMoreMale, words)).toContain('13.9%. With that too')
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
