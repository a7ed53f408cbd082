import {describe, expect, it} from 'vitest'
import type {Table} from '../../src/pages/page.ts'
import {traitPage, type TraitView} from '../../src/pages/trait.ts'
import {GROUND, heredityBook, LEGS, SHELL, TOES} from '../findings/heredity-book.ts'

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
    expect(at?.test).toContain('Test for p+ at P: mated to a hen that shows single (p+/p+), c0 would need 8 chicks, none scored single, to leave one chance in a hundred.')
    expect(at?.how).toBe('Exact.')
  })

  it('names the daughters where they alone tell, and the mate free of a dominant allele', () => {
    const birds = (symbol: string, own: string, rest = '') => ['A male - -', `B female - - tested={${symbol}:~${own}}`, `x male A B${rest}`]
    const test = (trait: string, lines: readonly string[], files: Readonly<Record<string, string>>) => view(trait, lines, files).hidden[0]?.test
    expect(test('ground', birds('S', 'S/-'), {'traits/ground.md': GROUND, ...fell('{S: S/s+}')})).toMatch(/^Test for s\+ at S: mated to any hen, x would need 7 daughters, none scored gold,/)
    expect(test('shell', birds('Q', 'q+/q+'), {'traits/shell.md': SHELL, ...fell('{Q: Q/q+}')})).toMatch(/^Test for Q at Q: mated to a hen that shows white \(q\+\/q\+\), x would need 7 daughters, none scored blue,/)
    expect(test('toes', birds('Po', 'po+/po+', ' toes=four'), {'traits/toes.md': TOES, ...fell('{Po: Po/po+}')}))
      .toMatch(/^Test for Po at Po: mated to a hen that is po\+\/po\+, which four alone does not prove, x would need 11 chicks, none scored five,/)
  })

  it('lists of a long series only the alleles that are there, and draws two', () => {
    const three = GROUND.replace('[S, s+]', '[S, s+, s^al]').replace('S: _/_, is: gold', 'S: s+/_, is: gold')
    const strains = {'strains/holm-white.md': '---\nname: Holm White\nrole: recurrent\nalleles: {S: {S: 100%}}\n---\n', 'strains/fell-buff.md': '---\nname: Fell Buff\nrole: donor\nalleles: {S: {S: 50%, s+: 50%}}\n---\n'}
    const shownOf = view('ground', ['A male - -', 'B female - -', 'x male A B'], {'traits/ground.md': three, ...strains, ...fell('{S: S/s+}')}).frequencies
    expect(shownOf?.figures[0]?.title).toBe('Share of s+ by step')
    expect(JSON.stringify(shownOf)).not.toContain('s^al')
  })

  it('advises no mating where two doses kill, and counts no chicks', () => {
    const [at] = view('legs', ['A male - -', 'B female - - tested={Cp:~cp+/cp+}', 'x male A B'], {'traits/legs.md': LEGS.replace('loci:', 'target: long\nloci:'), ...fell('{Cp: Cp/cp+}')}).hidden
    expect(at?.test).toBe('At Cp mate no bird to find this out, for two doses of such an allele kill the chick: look at the ordinary chicks it has anyway, or have its DNA tested.')
    expect([at?.clears, at?.birds?.columns.map(({head}) => head)]).toEqual([false, ['Bird', 'Carries', 'If not bred from', 'What']])
  })

  it('says how common the allele is, and holds the mating against its ratio', () => {
    // by hand: three pea with ⅔ of a copy each and one single with two, of eight genes
    expect(shown.frequencies?.figures[0]?.table.rows[0]?.slice(0, 2)).toEqual(['F1', '50.0'])
    expect(rowsOf(shown.segregation?.crosses)).toEqual(['P/p+ × P/p+ | 1 | 3 pea, 1 single | 3.0 pea, 1.0 single | 1.00 | –'])
    expect(shown.segregation?.questions).toEqual([])
  })

  it('says what is sure of a mating known by its recessives, and tests those of a cross by their sum', () => {
    // A shows pea and is a carrier by his single chicks; B and C are pea, B a carrier by a test
    const lines = ['A male - - comb=pea tested={P:~P/p+}', 'B female - - tested={P:~P/p+}', 'C female - - comb=pea', ...['B', 'B', 'B', 'B', 'B', 'C', 'C', 'C'].map((dam, index) => `c${index} male A ${dam} comb=${[0, 5, 6].includes(index) ? 'single' : 'pea'}`)]
    const {segregation} = view('comb', lines, fell('{P: P/p+}'))
    // 5 · ¼ and 3 · ¼ / (1 − (¾)³)
    expect(rowsOf(segregation?.crosses)?.map(row => row.split(' | ').slice(0, 4))).toEqual([['P/p+ × P/p+', '2', '5 pea, 3 single', '5.5 pea, 2.5 single; one sure in 1 mating']])
    expect(segregation?.words[1]).toMatch(/^“One sure” marks matings that are known to carry only because a chick hatched that was scored single\. /)
    expect(rowsOf(segregation?.matings)?.map(row => row.split(' | ')[4])).toEqual(['3.8 pea, 1.3 single', '1.7 pea, 1.3 single; one sure'])
  })

  it('says that nothing was to be held against a ratio where all could look one way only', () => {
    const lines = ['A male - - tested={P:~P/P}', 'B female - -', 'c male A B comb=pea', 'd male A B comb=pea'].map(line => line.replace('B female - -', 'B female - - tested={P:~p+/p+}'))
    expect(view('comb', lines).segregation).toMatchObject({words: ['Two scored chicks of known parents could look one way only, and do: there is no ratio to hold against.'], crosses: null})
  })

  it('says how many germs should have died', () => {
    const pen = '---\nseason: 2023\nmales: [A]\nfemales: [B]\nfrom: 2023-01-10\nkeeper: kelpgarth\n---\n'
    const hatch = '---\npen: 2023-A\nset: 2023-03-11\non: 2023-04-01\neggs: 20\nclear: 4\ndead-in-germ: 5\ndead-in-shell: 0\nhatched: 11\ntallies:\n  - {chicks: 7, legs: creeper}\n  - {chicks: 4, legs: long}\n---\n'
    const old = ['A male', 'B female'].map(bird => `${bird} - - tested={Cp:~Cp/cp+} hatched=2021-04-01`)
    expect(view('legs', old, {'traits/legs.md': LEGS, 'pens/2023-A.md': pen, 'hatches/2023-01.md': hatch}).segregation?.words[1]).toBe('Of Cp/cp+ × Cp/cp+ 25.0% of the fertile eggs should die of their genotype, 4.0 of 16; 5 germs died, of whatever cause.')
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
