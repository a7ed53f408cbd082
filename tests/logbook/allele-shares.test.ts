import {describe, expect, it} from 'vitest'
import {allelesTrueFor, alleleShares} from '../../src/logbook/allele-shares.ts'
import {around, bookOf, codesAt, linkFiles, type Files} from './around.ts'

const trait = (states: string, ...lines: string[]) => `${['---', 'name: X', `states: [${states}]`, ...lines, '---'].join('\n')}\n`
const strain = (...lines: string[]) => `${['---', 'name: Fell Buff', 'role: donor', ...lines, '---'].join('\n')}\n`

/** Shares of a strain at a locus in the order of its alleles, and how they are known. */
function sharesOf(symbol: string, files: Files): string {
  const book = bookOf(files)
  const buff = book.strains.find(({id}) => id === 'fell-buff'), locus = book.loci.get(symbol)?.locus
  if (!buff || !locus) throw new Error(symbol)
  const {shares, known} = alleleShares(buff, locus)
  expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12)
  return `${shares.map((share, allele) => `${locus.alleles[allele] ?? ''} ${share}`).join(', ')}: ${known}`
}

const WALNUT = trait('walnut, rose, pea, single', 'loci: [R, P]'), TOES = trait('five, four', 'loci: [Po]'), PEA = trait('pea, single', 'loci: [P]')
const WHITES = trait('white, coloured', 'loci: {I: {on: autosome, alleles: [I, I^D, i+]}}', 'shows: [{I: I/_, is: white}, {I: I^D/_, is: white}, {I: _/_, is: coloured}]')

describe('alleleShares', () => {
  it('follow from a look that one true-breeding genotype has', () => {
    const of = (state: string, symbol: string) => sharesOf(symbol, {'traits/head.md': WALNUT, 'strains/fell-buff.md': strain(`true-for: {head: ${state}}`)})
    expect(['walnut', 'rose', 'pea', 'single'].map(state => [of(state, 'R'), of(state, 'P')])).toEqual([
      ['R 1, r+ 0: true-for', 'P 1, p+ 0: true-for'], ['R 1, r+ 0: true-for', 'P 0, p+ 1: true-for'],
      ['R 0, r+ 1: true-for', 'P 1, p+ 0: true-for'], ['R 0, r+ 1: true-for', 'P 0, p+ 1: true-for'],
    ])
  })

  it('are as stated where they are stated, made whole, before anything else', () => {
    expect(sharesOf('P', {'traits/head.md': PEA, 'strains/fell-buff.md': strain('true-for: {head: pea}', 'alleles: {P: {P: 75%, p+: 25%}}')})).toBe('P 0.75, p+ 0.25: stated')
    expect(sharesOf('I', {'traits/white.md': WHITES, 'strains/fell-buff.md': strain('alleles: {I: {I: 33%, I^D: 33%, i+: 33%}}')})).toMatch(/: stated$/)
  })

  it('are alike, and said to be assumed, where nothing is known', () => {
    expect(sharesOf('P', {'traits/head.md': PEA, 'strains/fell-buff.md': strain()})).toBe('P 0.5, p+ 0.5: assumed')
  })

  it('leave out what the look rules out, and are assumed among the rest; the records say so', () => {
    const files = {'traits/white.md': WHITES, 'strains/fell-buff.md': strain('true-for: {white: white}')}
    expect(sharesOf('I', files)).toBe('I 0.5, I^D 0.5, i+ 0: assumed')
    expect(codesAt(linkFiles(around(files)).problems)).toEqual(['strains/fell-buff.md:4 not-fixed'])
  })

  it('follow from the likelier look where a gene does not always show', () => {
    const of = (state: string) => sharesOf('Po', {'traits/toes.md': TOES.replace('[Po]', '{Po: {alleles: [Po, po+]}}'), 'strains/fell-buff.md': strain(`true-for: {toes: ${state}}`)})
    expect([of('five'), of('four')]).toEqual(['Po 1, po+ 0: true-for', 'Po 0, po+ 1: true-for'])
  })

  it('of a hen’s Z follow as a cock’s do', () => {
    expect(sharesOf('S', {'traits/ground.md': trait('silver, gold', 'loci: {S: {alleles: [S, s+]}}'), 'strains/fell-buff.md': strain('true-for: {ground: gold}')})).toBe('S 0, s+ 1: true-for')
  })

  it('cannot follow from a look that only mixed birds have', () => {
    const files = {'traits/colour.md': trait('splash, blue, black', 'loci: [Bl]'), 'strains/fell-buff.md': strain('true-for: {colour: blue}')}
    expect(sharesOf('Bl', files)).toBe('Bl 0.5, bl+ 0.5: assumed')
    expect(linkFiles(around(files)).problems.map(({code, reason}) => [code, reason])).toEqual([['not-fixed', 'no true-breeding genotype gives colour blue, so fell-buff cannot breed true for it']])
  })

  it('come of all looks together', () => {
    const files = {
      'traits/white.md': WHITES, 'traits/dun.md': trait('dun, other', 'loci: [I]', 'shows: [{I: I^D/_, is: dun}, {I: _/_, is: other}]'), 'strains/fell-buff.md': strain('true-for: {white: white, dun: other}'),
    }
    expect(sharesOf('I', files)).toBe('I 1, I^D 0, i+ 0: true-for')
  })
})

describe('allelesTrueFor', () => {
  it('says nothing of a locus that the trait does not rest on', () => {
    const book = bookOf({'traits/head.md': PEA, 'traits/ground.md': trait('silver, gold', 'loci: [S]')})
    const [head, S] = [book.traits.find(({id}) => id === 'head'), book.loci.get('S')?.locus]
    expect(head && S && allelesTrueFor(head, 'pea', S)).toBeNull()
  })
})
