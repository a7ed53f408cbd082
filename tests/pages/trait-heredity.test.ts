import {describe, expect, it} from 'vitest'
import type {Table} from '../../src/pages/page.ts'
import {traitPage, type TraitView} from '../../src/pages/trait.ts'
import {heredityBook, LEGS} from '../findings/heredity-book.ts'

const fell = (tested: string) => ({'birds/A.md': `---\nband: A\nsex: male\nstrain: fell-buff\ntested: ${tested}\n---\n`})
const rowsOf = (table: Table | null | undefined) => table?.rows.map(row => row.map(cell => (typeof cell === 'string' ? cell : cell.text)).join(' | '))

function view(trait: string, lines: readonly string[], files = {}): TraitView {
  const {book, findings} = heredityBook(lines, undefined, files), asked = book.traits.find(({id}) => id === trait)
  return traitPage(asked ?? expect.fail(trait), findings).view as TraitView
}

/** Carrier by carrier, so many pea and single chicks. */
const family = (pea: number, single: number) => ['A male - -', 'B female - - tested={P:~P/p+}',
  ...Array.from({length: pea + single}, (_, index) => `c${index} male A B comb=${index < pea ? 'pea' : 'single'}`)]

describe('the page of a trait whose genes are known', () => {
  const shown = view('comb', family(3, 1), fell('{P: P/p+}'))

  it('puts what was expected beside what was seen, in the chart and in the table', () => {
    const [figure] = shown.course.figures
    expect(figure?.caption).toBe('Scored chicks with pea, solid, and without, barred. The tick: what was to be expected of their parents.')
    expect(figure?.table.rows).toEqual([['F1', '3 of 4', '3.0 of 4', '75.0', '30.1 to 95.4']])
    expect(figure?.description).toBe('F1: 3 pea and 1 single of 4, expected 3.0 of 4 as wanted.')
  })

  it('names the living birds that may hide it, and the test that would tell', () => {
    const [at] = shown.hidden
    expect(rowsOf(at?.birds)).toEqual(['c0 | 66.7% | 8 | – | F1 cockerel', 'c1 | 66.7% | 8 | – | F1 cockerel', 'c2 | 66.7% | 8 | – | F1 cockerel'])
    expect(at?.words.at(-1)).toBe('3 living birds may hide p+; the likeliest first. 1 more living bird shows it.')
    expect(at?.test).toContain('Mated to a bird that shows single, c0 would need 8 chicks, all as wanted')
    expect(at?.how).toBe('Exact.')
  })

  it('says how common the allele is, and holds the mating against its ratio', () => {
    // by hand: three pea with ⅔ of a copy each and one single with two, of eight genes
    expect(shown.frequencies?.figures[0]?.table.rows[0]?.slice(0, 2)).toEqual(['F1', '50.0'])
    expect(rowsOf(shown.segregation?.crosses)).toEqual(['P/p+ × P/p+ | 1 | 3 pea, 1 single | 3.0 pea, 1.0 single | 1.00 | –'])
    expect(shown.segregation?.questions).toEqual([])
  })

  it('asks the three questions in their order where a mating strays', () => {
    const {segregation} = view('comb', family(1, 12), fell('{P: P/p+}')), [open] = segregation?.questions ?? []
    expect(open?.head).toBe('A × B: 1 pea, 12 single, where P/p+ × P/p+ gives 9.8 pea, 3.3 single')
    expect(open?.asks.map(ask => ask.split('?')[0])).toEqual(['First, a mis-scored bird', 'Second, a wrong parent', 'Third, a wrong rule'])
  })

  it('says before anything else that chicks die in the egg', () => {
    const {grave, inheritance} = view('legs', ['A male - -', 'B female - -'], {'traits/legs.md': LEGS})
    expect(grave[0]?.head).toBe('Chicks that never hatch')
    expect(inheritance.known.flatMap(({cautions}) => cautions).filter(({about}) => about !== 'breeding')).toEqual([])
  })

  it('says nothing of heredity where no locus is known', () => {
    const plain = '---\nname: Gait\nstates: [even, lame]\ntarget: even\n---\n'
    expect(view('gait', ['A male - - gait=even'], {'traits/gait.md': plain})).toMatchObject({hidden: [], frequencies: null, segregation: null, grave: []})
  })
})
