import {describe, expect, it} from 'vitest'
import {fixationOf, type Fixation} from '../../src/findings/fixation.ts'
import {unwantedAlleles} from '../../src/findings/unwanted-alleles.ts'
import type {Bird, Locus} from '../../src/logbook/book.ts'
import {GROUND, heredityBook, type HeredityBook} from './heredity-book.ts'

function locusOf({book}: HeredityBook, symbol: string): Locus {
  return book.loci.get(symbol)?.locus ?? expect.fail(symbol)
}

function fixation(asked: HeredityBook, bands: readonly string[], symbol = 'P'): Fixation {
  const locus = locusOf(asked, symbol), unwanted = asked.book.traits.flatMap(unwantedAlleles).find(each => each.locus === locus)
  return fixationOf(unwanted ?? expect.fail(symbol), bands.map(asked.bird), asked.findings.heredity, asked.findings.pedigree)
}

/** The slow twin: a certain test on each of these birds, and the likelihoods compared. */
function cleanByTest({findings}: HeredityBook, locus: Locus, birds: readonly Bird[]): number {
  const {heredity, pedigree} = findings, group = heredity.groupOf(locus), numbers = new Map(birds.map(bird => [pedigree.numberOf(bird), bird]))
  const tested = heredity.workedOtherwise(group, {tested: animal => {
    const bird = numbers.get(animal)
    return bird ? [[0, locus.on === 'Z' && bird.sex === 'female' ? 'none' : 0]] : null
  }})
  return tested.found.slack > 0 ? 0 : Math.exp(tested.found.logLikelihood - heredity.worked(group).found.logLikelihood)
}

/** Half sibs, full sibs and strangers, with looks that leave much open. */
const FAMILY = [
  'A male - - comb=pea', 'B female - - comb=pea', 'C female - - comb=pea', 'D female - - comb=single', 'X male A B comb=pea', 'Y female A B comb=pea', 'Z female A C comb=pea',
  'U male A D comb=pea', 'S male - - comb=pea', 'V female X Z comb=pea', 'W female X Y', 'T female S Y comb=pea',
]

describe('fixationOf(asked, birds, heredity, pedigree)', () => {
  it('is the product of the single chances for birds that have nothing to do with each other', () => {
    // by hand: pea founders with the alleles alike are P/P with ⅓
    const found = fixation(heredityBook(['A male - - comb=pea', 'B female - - comb=pea', 'C female - - comb=pea']), ['A', 'B', 'C'])
    expect(found).toMatchObject({birds: 3, exact: true, slack: 0, fixed: false, others: 0})
    expect(found.clean).toBeCloseTo(1 / 27, 9)
    expect(found.carriers).toBeCloseTo(2, 12)
    for (const {ifDropped, ifProved, carries} of found.inTheWay) {
      expect([ifDropped, ifProved, carries]).toEqual([expect.closeTo(1 / 9, 6), expect.closeTo(1 / 9, 9), expect.closeTo(2 / 3, 12)])
    }
  })

  it('is not the product for sibs', () => {
    // by hand: sire P/P or P/p+ half and half, dams P/P; four pea sons clean: ½ + ½·1/16, each by itself ¾
    const found = fixation(heredityBook(['G male - - tested={P:~P/P}', 'H female - - tested={P:~P/p+}', 'E female - - tested={P:~P/P}', 'A male G H', ...[1, 2, 3, 4].map(n => `X${n} male A E`)]), ['X1', 'X2', 'X3', 'X4'])
    expect(found.clean).toBeCloseTo(1 / 2 + 1 / 32, 9)
    expect(found.inTheWay[0]?.ifDropped).toBeCloseTo(1 / 2 + 1 / 16, 6)
    expect(found.inTheWay[0]?.ifProved).toBeCloseTo((1 / 2 + 1 / 32) / 0.75, 9)
  })

  it('agrees with a certain test on every bird, and with the same where one is dropped or proved', () => {
    const book = heredityBook(FAMILY), locus = locusOf(book, 'P'), bands = ['X', 'Y', 'Z', 'V', 'W', 'T', 'S'], birds = bands.map(book.bird)
    const found = fixation(book, bands)
    expect(found.clean).toBeCloseTo(cleanByTest(book, locus, birds), 9)
    for (const {bird, ifDropped, ifProved} of found.inTheWay) {
      expect(ifDropped).toBeCloseTo(cleanByTest(book, locus, birds.filter(each => each !== bird)), 5)
      expect(ifProved).toBeCloseTo(cleanByTest(book, locus, birds) / cleanByTest(book, locus, [bird]), 9)
    }
  })

  it('is never above the least single chance, and dropping or proving never makes it worse', () => {
    const book = heredityBook(FAMILY), bands = ['X', 'Y', 'Z', 'V', 'W', 'T', 'S']
    for (let count = 1; count <= bands.length; count++) {
      const {clean, inTheWay, birds, carriers} = fixation(book, bands.slice(0, count))
      expect(clean).toBeLessThanOrEqual(Math.min(...inTheWay.map(({carries}) => 1 - carries)) + 1e-9)
      expect(clean).toBeGreaterThanOrEqual(1 - carriers - 1e-9)
      expect(birds).toBe(count)
      for (const {ifDropped, ifProved} of inTheWay) {
        expect(ifDropped).toBeGreaterThanOrEqual(clean - 1e-9)
        expect(ifProved).toBeGreaterThanOrEqual(clean - 1e-9)
      }
    }
  })

  it('is nought with a certain carrier, who stands first; without it the rest are what they are', () => {
    const {clean, fixed, inTheWay} = fixation(heredityBook(FAMILY), ['U', 'S'])
    expect([clean, fixed, inTheWay[0]?.bird.band, inTheWay[0]?.ifProved]).toEqual([0, false, 'U', 0])
    expect(inTheWay[0]?.ifDropped).toBeCloseTo(1 - (inTheWay[1]?.carries ?? 0), 5)
  })

  it('is certain where nobody can carry it, and of nobody', () => {
    const book = heredityBook(['A male - -', 'B female - -'], '{P: {P: 100%}}')
    expect(fixation(book, ['A', 'B'])).toMatchObject({clean: 1, carriers: 0, fixed: true, inTheWay: []})
    expect(fixation(book, [])).toMatchObject({birds: 0, clean: 1, carriers: 0})
  })

  it('asks of a hen her one Z', () => {
    const book = heredityBook(['A male - - ground=silver', 'B female - -', 'C female A B ground=silver'], '{S: {S: 50%, s+: 50%}}', {'traits/ground.md': GROUND})
    const found = fixation(book, ['A', 'B', 'C'], 'S'), of = (band: string) => found.inTheWay.find(({bird}) => bird.band === band)
    // by hand: a silver cock S/S 1 : S/s+ 2 · ½ given a silver daughter, so ½ each; the hen ½, her Z goes to no daughter
    expect(found.clean).toBeCloseTo(1 / 4, 9)
    expect([of('A')?.carries, of('B')?.carries, of('C')]).toEqual([expect.closeTo(0.5, 12), expect.closeTo(0.5, 12), undefined])
  })

  it('says so where the records contradict themselves, and still answers', () => {
    const found = fixation(heredityBook(['A male - - comb=single', 'B female - - comb=single', 'C female A B comb=pea', 'D male - - comb=pea']), ['D'])
    expect(found.slack).toBe(0.001)
    expect(found.clean).toBeCloseTo(1 / 3, 3)
  })
})
