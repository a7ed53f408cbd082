import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import type {MatingTest} from '../../src/findings/segregation.ts'
import {expectClose} from '../expect-close.ts'
import {bookOf, type Files} from '../logbook/around.ts'
import {COMB, heredityBook, LEGS} from './heredity-book.ts'

/** One hatch of one cock and one hen, both of tested genotypes, whose chicks are all in tallies. */
function oneMating(trait: string, tested: readonly [string, string], tallies: readonly string[], hatch = ''): readonly MatingTest[] {
  const bird = (band: string, sex: string, genotype: string) => `---\nband: ${band}\nsex: ${sex}\nstrain: holm-white\nhatched: 2022-03-20\ntested: {${genotype}}\n---\n`
  const files: Files = {
    'traits/comb.md': '', 'strains/holm-white.md': '---\nname: Holm White\nrole: recurrent\n---\n', 'strains/fell-buff.md': '---\nname: Fell Buff\nrole: donor\n---\n',
    'traits/plumage.md': trait, 'birds/K-1.md': bird('K-1', 'male', tested[0]), 'birds/K-2.md': bird('K-2', 'female', tested[1]),
    'pens/2024-K.md': '---\nseason: 2024\nmales: [K-1]\nfemales: [K-2]\nfrom: 2024-02-10\nto: 2024-06-01\nkeeper: kelpgarth\n---\n',
    'hatches/2024-01.md': `---\npen: 2024-K\nset: 2024-04-01\non: 2024-04-22\n${hatch}tallies:\n${tallies.map(each => `  - {${each}}\n`).join('')}---\n`,
  }
  return study(bookOf(files)).segregation.matings
}

const PLUMAGE = '---\nname: Plumage\nstates: [black, white, wild]\ntarget: black\nloci:\n  C: {on: autosome, alleles: [C, c]}\n  E: {on: autosome, alleles: [E, e+]}\nshows:\n  - {C: c/c, is: white}\n  - {E: E/_, is: black}\n  - {E: e+/e+, is: wild}\n---\n'

describe('segregation(book)', () => {
  it('holds the chicks of coloured fowl that carry white and wild pattern against 9 : 4 : 3', () => {
    // source: Davenport 1909, Inheritance of Characteristics in Domestic Fowl, Table 58, pen 709
    const [test, ...more] = oneMating(PLUMAGE, ['C: C/c, E: E/e+', 'C: C/c, E: E/e+'], ['chicks: 119, plumage: black', 'chicks: 55, plumage: white', 'chicks: 31, plumage: wild'])
    expect(more).toEqual([])
    expect(test).toMatchObject({cross: 'C/c E/e+ × C/c E/e+', counts: [119, 55, 31], how: 'pearson', sex: null, questions: null, conditional: null, lethal: null})
    expectClose(test?.p ?? NaN, 0.400229, 1e-6, {})
    expect(test?.expected.map(count => count * 16 / 205).map(Math.round)).toEqual([9, 4, 3])
  })

  it('rejects a rule that the chicks of split-combed fowl must reject', () => {
    // source: Davenport 1909, split comb, second generation, against 9 : 3 : 3 : 1
    const comb = ['---\nname: Comb\nstates: [both, split, low, none]\ntarget: none\nloci:\n  A: {on: autosome, alleles: [A, a]}\n  B: {on: autosome, alleles: [B, b]}\nshows:',
      '  - {A: A/_, B: B/_, is: both}\n  - {A: A/_, is: split}\n  - {B: B/_, is: low}\n  - {A: a/a, B: b/b, is: none}\n---\n'].join('\n')
    const [test] = oneMating(comb, ['A: A/a, B: B/b', 'A: A/a, B: B/b'], ['chicks: 471, plumage: both', 'chicks: 289, plumage: split', 'chicks: 226, plumage: low', 'chicks: 10, plumage: none'])
    expect(test?.how).toBe('pearson')
    expectClose((test?.p ?? NaN) / 2.4567e-26, 1, 1e-4, {})
    expect(test?.questions).toMatchObject({misscored: [], parents: [], rule: {otherMatings: 0, straying: 0}})
  })

  it('takes 2 creepers to 1 long-legged for right, and shows the dead germs beside', () => {
    const [test] = oneMating(LEGS, ['Cp: Cp/cp+', 'Cp: Cp/cp+'], ['chicks: 20, plumage: creeper', 'chicks: 10, plumage: long'], 'eggs: 50\nclear: 6\ndead-in-germ: 11\ndead-in-shell: 3\nhatched: 30\n')
    expect(test).toMatchObject({cross: 'Cp/cp+ × Cp/cp+', counts: [20, 10], how: 'exact', lethal: {share: 0.25, fertile: 44, deadInGerm: 11, hatches: 1}})
    expectClose(test?.p ?? NaN, 1, 1e-12, {})
  })

  it('tells a look that cannot come from one that is rare, and asks the three questions', () => {
    const [test] = oneMating(PLUMAGE, ['C: C/C, E: E/E', 'C: C/C, E: E/e+'], ['chicks: 9, plumage: black', 'chicks: 1, plumage: wild'])
    expect(test).toMatchObject({how: 'impossible', p: 0, adjusted: 0})
    expect(test?.questions).toMatchObject({parents: [], rule: {otherMatings: 0, straying: 0}})
    // the rest: one test in a thousand is taken to be wrong as well
    expect(test?.questions?.misscored.map(({chance}) => Math.round(chance * 100))).toEqual([90])
  })

  const pair = (count: number, sire: string, dam: string, looks: readonly [number, number], from = 0) => Array.from({length: count}, (_, index) => `${sire}${dam}${from + index} female ${sire} ${dam} comb=${index < looks[0] ? 'pea' : 'single'}`)
  const tested = (band: string, sex: string, genotype: string) => `${band} ${sex} - - tested={P:~${genotype}}`

  it('pools the matings of one cross, asks whether they differ, and counts the tests in the correction', () => {
    const {findings: {segregation}} = heredityBook([tested('A', 'male', 'P/p+'), tested('B', 'female', 'p+/p+'), tested('C', 'female', 'p+/p+'), ...pair(12, 'A', 'B', [10, 2]), ...pair(12, 'A', 'C', [2, 10])])
    expect(segregation.matings.map(({cross, counts, dams}) => [cross, counts, dams.map(({id}) => id)])).toEqual([['P/p+ × p+/p+', [10, 2], ['B']], ['P/p+ × p+/p+', [2, 10], ['C']]])
    expect(segregation.tests).toBe(2)
    const [cross] = segregation.crosses
    expect(cross).toMatchObject({p: 1, how: 'exact', byRecessives: 0})
    // Σ χ² = 2·(4² · 2/6) = 32/3 with nothing left of it for both together
    expectClose(cross?.heterogeneity?.chiSquare ?? NaN, 32 / 3, 1e-12, {})
    // 2·(1 + 12 + 66)/4096 each
    for (const {p, adjusted} of segregation.matings) {
      expectClose(p, 158 / 4096, 1e-12, {})
      expectClose(adjusted, 2 * 158 / 4096, 1e-12, {})
    }
  })

  it('takes the parents from other evidence: what only these chicks tell makes no test', () => {
    // A is a carrier by his single chick of C; by those of B alone it would not be known what B × A should give
    const known = ['A male - - comb=pea', 'B female - - comb=single', 'C female - - comb=single']
    const {findings: {segregation}} = heredityBook([...known, ...pair(8, 'A', 'B', [4, 4]), ...pair(1, 'A', 'C', [0, 1])])
    expect(segregation.matings.find(({dams}) => dams[0]?.id === 'B')).toMatchObject({counts: [4, 4], conditional: null, cross: 'P/p+ × p+/p+'})
    const alone = heredityBook([...known.slice(0, 2), ...pair(8, 'A', 'B', [4, 4])]).findings.segregation
    expect(alone.matings).toMatchObject([{how: 'given one recessive', counts: [4, 4]}])
  })

  it('tests a mating known by its recessives given that one hatched', () => {
    // 3 chicks, 2 recessive: expected 3·¼/(1 − (¾)³) = 48/37, P 10/37. Source: Emery & Rimoin 1990, table 8.1 (from memory) for the expectation
    const {findings: {segregation}} = heredityBook(['A male - - comb=pea', 'B female - - comb=pea', ...pair(3, 'A', 'B', [1, 2])])
    const [test] = segregation.matings
    expect(test).toMatchObject({cross: 'P/p+ × P/p+', how: 'given one recessive', conditional: {state: 1}})
    expectClose(test?.expected[1] ?? NaN, 48 / 37, 1e-12, {})
    expectClose(test?.p ?? NaN, 10 / 37, 1e-12, {})
    expect(segregation.crosses).toMatchObject([{how: 'summed', byRecessives: 1, heterogeneity: null}])
    expectClose(segregation.crosses[0]?.p ?? NaN, 10 / 37, 1e-12, {})
  })

  it('counts the scored chicks whose parents are not known', () => {
    const {findings: {segregation}} = heredityBook(['A male - - comb=pea', 'B female - - comb=single', ...pair(2, 'A', 'B', [2, 0])])
    expect(segregation.matings).toEqual([])
    expect(segregation.untested).toMatchObject([{unsure: 2, phase: 0, unsaid: 0, sexUnknown: 0, alike: 0}])
  })

  it('is no test where all must look alike and do', () => {
    const {findings: {segregation}} = heredityBook([tested('A', 'male', 'P/P'), tested('B', 'female', 'p+/p+'), ...pair(5, 'A', 'B', [5, 0])])
    expect(segregation).toMatchObject({tests: 0, matings: [], untested: [{alike: 5, unsure: 0}]})
  })

  it('asks of a straying mating who else stood near, and whether the rule strays elsewhere', () => {
    const pen = '---\nseason: 2023\nmales: [A, D]\nfemales: [B, C]\nfrom: 2023-01-10\nkeeper: kelpgarth\n---\n'
    const birds = [tested('A', 'male', 'P/p+'), tested('D', 'male', 'P/P'), tested('B', 'female', 'p+/p+'), tested('C', 'female', 'p+/p+'), ...pair(12, 'A', 'B', [12, 0]), ...pair(10, 'A', 'C', [5, 5])]
      .map(line => (line.includes(' - - ') ? `${line} hatched=2021-04-01` : line))
    const {findings: {segregation}} = heredityBook(birds, undefined, {'pens/2023-A.md': pen, 'traits/comb.md': COMB})
    const [straying, agreeing] = segregation.matings
    expect(agreeing?.questions).toBeNull()
    expect(straying?.questions).toMatchObject({misscored: [], parents: [{bird: {id: 'D'}, role: 'sire', cross: 'P/P × p+/p+'}], rule: {otherMatings: 1, straying: 0}})
    expectClose(straying?.questions?.parents[0]?.times ?? NaN, 2 ** 12, 1e-6, {})
  })

  it('puts matings known by their recessives and others of the cross into one sum', () => {
    // 12 chicks of two tested carriers and a brood of three that was noticed: worked apart in Python 3 with fractions
    const {findings: {segregation}} = heredityBook([tested('A', 'male', 'P/p+'), tested('B', 'female', 'P/p+'), 'C female - - comb=pea', ...pair(12, 'A', 'B', [10, 2]), ...pair(3, 'A', 'C', [0, 3])])
    expect(segregation.crosses).toMatchObject([{how: 'summed', byRecessives: 1, matings: [{counts: [10, 2]}, {counts: [0, 3]}]}])
    expectClose(segregation.crosses[0]?.p ?? NaN, 0.751725889541, 1e-12, {})
  })

  it('keeps misscoring in the ratio of a mating known by its recessives', () => {
    const comb = COMB.replace('required: yes', 'required: yes\nmisscoring: 1%')
    const {findings: {segregation}} = heredityBook(['A male - - comb=pea', 'B female - - comb=pea', ...pair(16, 'A', 'B', [11, 5])], undefined, {'traits/comb.md': comb})
    const [test] = segregation.matings
    expect(test).toMatchObject({how: 'given one recessive', ratio: [expect.closeTo(0.745, 12), expect.closeTo(0.255, 12)]})
    // n p / (1 − qⁿ)
    expectClose(test?.expected[1] ?? NaN, 16 * 0.255 / (1 - 0.745 ** 16), 1e-12, {})
  })

  it('expects as many recessives as come, of broods that were found by them', () => {
    // law: forty pea cocks of a strain half and half, each with a tested carrier and four chicks, drawn with a fixed seed
    let at = 4711
    const draw = (): number => {
      at = at * 16807 % 2147483647
      return at / 2147483647
    }
    const lines = Array.from({length: 40}, (_, index) => index).flatMap(index => {
      const carries = draw() < 2 / 3, singles = Array.from({length: 4}, () => carries && draw() < 1 / 4).filter(Boolean).length
      return [`M${index} male - - comb=pea`, tested(`F${index}`, 'female', 'P/p+'), ...pair(4, `M${index}`, `F${index}`, [4 - singles, singles])]
    })
    const {findings: {segregation}} = heredityBook(lines), [cross] = segregation.crosses, tests = segregation.matings
    const came = tests.reduce((sum, {counts}) => sum + (counts[1] ?? 0), 0), fits = tests.map(({conditional}) => conditional?.fit)
    const mean = fits.reduce((sum, fit) => sum + (fit?.expected ?? NaN), 0), deviation = Math.sqrt(fits.reduce((sum, fit) => sum + (fit?.variance ?? NaN), 0))
    expect(tests.length).toBeGreaterThan(10)
    expect(Math.abs(came - mean)).toBeLessThan(2 * deviation)
    expect(cross?.p).toBeGreaterThan(0.05)
    expect(tests.length + segregation.untested.reduce((sum, {unsure}) => sum + unsure, 0) / 4).toBe(40)
    // held to the plain ratio such broods seem to throw too many
    expect(came - tests.length).toBeGreaterThan(2 * Math.sqrt(tests.length * 4 * 3 / 16))
  })
})
