import {describe, expect, it} from 'vitest'
import type {TestAdvice} from '../../src/findings/test-mates.ts'
import {unwantedInBook, type UnwantedAlleles} from '../../src/findings/unwanted-alleles.ts'
import {writeGenotype} from '../../src/heredity/genotype-notation.ts'
import {testMatingPlan} from '../../src/findings/test-mating-plan.ts'
import {COMB, GROUND, heredityBook, HIDING, LEGS, SHELL, TOES, WALNUT, type HeredityBook} from './heredity-book.ts'

const ALLELES = '{P: {P: 50%, p+: 50%}, R: {R: 50%, r+: 50%}, S: {S: 50%, s+: 50%}, Q: {Q: 50%, q+: 50%}, Po: {Po: 50%, po+: 50%}, Cp: {Cp: 10%, cp+: 90%}}'
const bookWith = (text: string, birds: readonly string[] = ['A male - -']) => heredityBook(birds, ALLELES, {'traits/comb.md': text})

function unwanted({book, findings}: HeredityBook, symbol: string): UnwantedAlleles {
  return book.traits.flatMap(trait => unwantedInBook(trait, findings.allelesOfBook)).find(({locus}) => locus.symbol === symbol) ?? expect.fail(symbol)
}
function advice(text: string, symbol: string, sex: 'male' | 'female' = 'male'): TestAdvice & {at?: string} {
  const book = bookWith(text), asked = unwanted(book, symbol), found = book.findings.testMates.of(asked, sex)
  return found.kind === 'mate' ? {...found, at: found.atLocus.map(alleles => writeGenotype(alleles, asked.locus)).join()} : found
}

describe('testMates(…).of(asked, sex)', () => {
  it('takes two doses of a recessive allele', () => {
    expect(advice(COMB, 'P')).toMatchObject({kind: 'mate', at: 'p+/p+', looks: ['single'], lookIsEnough: true, any: false, among: 'all'})
  })

  it('takes a mate free of a dominant one, and daughters where hens alone show it', () => {
    expect(advice(SHELL, 'Q')).toMatchObject({at: 'q+/q+', looks: ['white'], lookIsEnough: true, among: 'daughters'})
    // a cock shows no shell
    expect(advice(SHELL, 'Q', 'female')).toMatchObject({at: 'q+/q+', looks: [], lookIsEnough: false, among: 'daughters'})
  })

  it('says that the look of the mate proves nothing where carriers often look so', () => {
    expect(advice(TOES, 'Po')).toMatchObject({at: 'po+/po+', looks: ['four'], lookIsEnough: false, among: 'all'})
  })

  it('takes any hen for a cock’s Z, and his daughters; a hen’s own look tells', () => {
    expect(advice(GROUND, 'S')).toMatchObject({any: true, among: 'daughters'})
    expect(advice(GROUND.replace('target: silver', 'target: gold'), 'S')).toMatchObject({any: true, among: 'daughters'})
    expect(advice(GROUND, 'S', 'female')).toEqual({kind: 'own-look'})
  })

  it('names at each of two loci the looks that clear that one', () => {
    // walnut wanted: a rose bird clears nothing at R
    expect(advice(WALNUT, 'R')).toMatchObject({at: 'r+/r+', looks: ['pea', 'single'], lookIsEnough: true})
    expect(advice(WALNUT, 'P')).toMatchObject({at: 'p+/p+', looks: ['rose', 'single'], lookIsEnough: true})
  })

  it('advises no mating where two doses kill', () => {
    expect(advice(LEGS.replace('loci:', 'target: long\nloci:'), 'Cp')).toEqual({kind: 'ordinary', because: 'lethal'})
    const recessive = '---\nname: Comb\nstates: [sound]\ntarget: sound\nloci:\n  L: {on: autosome, alleles: [L+, l]}\nshows:\n  - {L: l/l, is: lethal}\n  - {L: _/_, is: sound}\n---\n'
    const book = heredityBook(['A male - -'], '{L: {L+: 50%, l: 50%}}', {'traits/comb.md': recessive}), [trait] = book.book.traits, [locus] = trait?.loci ?? []
    expect(trait && locus ? book.findings.testMates.of({trait, locus, unwanted: [1]}, 'male') : null).toMatchObject({kind: 'untold'})
  })

  it('advises no mate that has twice what a caution calls a burden; one that is free of it, yes', () => {
    // the reference warns of `h`, a recessive coat that keeps out no rain, and of `Po`
    const coat = '---\nname: Comb\nstates: [plain, silky]\ntarget: plain\nloci: [H]\nshows:\n  - {H: H+/_, is: plain}\n  - {H: h/h, is: silky}\n---\n'
    const book = heredityBook(['A male - -'], '{H: {H+: 50%, h: 50%}}', {'traits/comb.md': coat})
    expect(book.findings.testMates.of(unwanted(book, 'H'), 'male')).toEqual({kind: 'ordinary', because: 'welfare'})
    expect(advice(TOES.replace('  Po: {on: autosome, alleles: [Po, po+]}', '  Po: {alleles: [Po, po+]}'), 'Po')).toMatchObject({kind: 'mate', at: 'po+/po+'})
  })

  it('tells at least as much as any other mate with one allele alone', () => {
    for (const [text, symbol, allele] of [[COMB, 'P', 1], [TOES, 'Po', 0], [SHELL, 'Q', 0]] as const) {
      const book = bookWith(text, [`A male - - tested={${symbol}:~${text === COMB ? 'P/p+' : `${symbol}/${symbol.toLowerCase()}+`}}`, 'B female - -', 'X male A B']), asked = unwanted(book, symbol), {heredity, pedigree, testMates} = book.findings
      const found = testMates.of(asked, 'male'), bird = book.bird('X')
      if (found.kind !== 'mate') expect.fail('no mate')
      const left = (mate: readonly (readonly [number, number])[]) => testMatingPlan({bird, locus: asked.locus, alleles: [allele], mate, among: 'all', limit: 1e-6}, heredity, pedigree)?.course[4]?.carrier ?? 1
      for (const mate of [[[0, 0]], [[0, 1]], [[1, 1]]] as const) expect(left(found.atLocus.map(([one, other]) => [one, other ?? one] as const))).toBeLessThanOrEqual(left(mate) + 1e-12)
    }
  })
})

describe('testMates(…).clearing(asked, bird)', () => {
  const clearing = (book: HeredityBook, symbol: string, band: string) => book.findings.testMates.clearing(unwanted(book, symbol), book.bird(band))

  it('is what the plan says of the mate advised', () => {
    // 2/(2 + 2ⁿ) ≤ 1/100 first at 8; 1/(1 + 2ⁿ) at 7 (posteriors of the textbooks)
    const comb = bookWith(COMB, ['A male - - tested={P:~P/p+}', 'B female - - tested={P:~P/p+}', 'C female - - tested={P:~P/P}', 'x male A B comb=pea', 'y female A C comb=pea'])
    expect([clearing(comb, 'P', 'x'), clearing(comb, 'P', 'y'), clearing(comb, 'P', 'C'), clearing(comb, 'P', 'A')]).toEqual([
      {chicks: 8, shows: ['single']}, {chicks: 7, shows: ['single']}, {chicks: 0, shows: []}, {chicks: null, shows: ['single']},
    ])
  })

  it('has penetrance and misscoring in it', () => {
    const birds = ['A male - - tested={Po:~Po/po+}', 'B female - - tested={Po:~po+/po+}', 'x male A B toes=four']
    const toes = (text: string) => clearing(heredityBook(birds, ALLELES, {'traits/toes.md': text}), 'Po', 'x')
    // by hand: 0.4 · 0.7ⁿ ≤ 1/99 first at 11; with 5 % misread q 0.68/0.95 a chick and 0.43/0.95 beforehand, first at 12
    expect(toes(TOES)).toEqual({chicks: 11, shows: ['five']})
    expect(toes(TOES.replace('required: true', 'required: true\nmisscoring: 5%'))?.chicks).toBe(12)
  })

  it('takes the most that any of the mates advised needs, and the looks of all their chicks', () => {
    const book = bookWith(WALNUT, ['A male - - tested={R:~R/r+,~P:~P/p+}', 'B female - - tested={R:~R/R,~P:~P/p+}', 'x male A B comb=walnut'])
    expect(clearing(book, 'R', 'x')).toEqual({chicks: 7, shows: ['pea', 'single']})
  })

  it('is none of a hen’s one Z', () => {
    expect(clearing(bookWith(GROUND, ['A male - - tested={S:~S/s+}', 'B female - -', 'y female A B']), 'S', 'y')).toBeNull()
  })
})

describe('testMates(…) where another locus can hide the look', () => {
  it('takes of the hens that tell a cock’s Z alike one that hides nothing of a cock mixed for white', () => {
    const book = heredityBook(['A male - -'], '{S: {S: 50%, s+: 50%}, C: {C+: 50%, c: 50%}}', {'traits/ground.md': HIDING}), found = book.findings.testMates.of(unwanted(book, 'S'), 'male')
    expect(found).toMatchObject({any: true, among: 'daughters'})
    expect(found.kind === 'mate' && found.others.map(({locus, alleles}) => alleles.map(each => writeGenotype(each, locus)))).toEqual([['C+/C+']])
  })
})
