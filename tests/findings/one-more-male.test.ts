import {describe, expect, it} from 'vitest'
import {census} from '../../src/findings/census.ts'
import type {ClosenessOfStep} from '../../src/findings/closeness.ts'
import {kinshipOfBook} from '../../src/findings/inbreeding.ts'
import {malesForPens} from '../../src/findings/males-for-pens.ts'
import {oneMoreMale, ratePassed} from '../../src/findings/one-more-male.ts'
import {pedigreeOfBook} from '../../src/findings/pedigree-of-book.ts'
import {coancestry} from '../../src/pedigree/coancestry.ts'
import type {Animal} from '../../src/pedigree/pedigree.ts'
import type {Bird} from '../../src/logbook/book.ts'
import {expectClose} from '../expect-close.ts'
import {logbook} from '../pages/small-logbook.ts'
import {twoPens} from './breeding-book.ts'

function asked() {
  const book = twoPens(), pedigree = pedigreeOfBook(book), kin = kinshipOfBook(pedigree), now = census(book)
  return {book, pedigree, kin, now, found: oneMoreMale(now, malesForPens(book, now, pedigree, kin).males, pedigree, kin)}
}

describe('oneMoreMale(census, choices)', () => {
  it('gives what is to be expected now and with each male more, by hand', () => {
    // males A1, B1: K(M, M) = (½ + ½) / 4 = ¼; females A2, A3, B2: (3·½ + 2·¼) / 9 = 2/9; across: (2·¼ + ¼) / 6 = ⅛
    const {found} = asked()
    expectClose(found?.now ?? NaN, (1 / 4 + 2 / 8 + 2 / 9) / 4, 1e-12)
    // C2, kin to nobody: K(M, M) = 3·½ / 9 = 1/6, across 0.75 / 9; C1, brother of A1: (3·½ + 2·¼) / 9, across (0.75 + 0.5) / 9
    expect(found?.choices.map(({male}) => male.id)).toEqual(['C2', 'C1'])
    expectClose(found?.choices[0]?.kinship ?? NaN, (1 / 6 + 2 * 0.75 / 9 + 2 / 9) / 4, 1e-12)
    expectClose(found?.choices[1]?.kinship ?? NaN, (2 / 9 + 2 * 1.25 / 9 + 2 / 9) / 4, 1e-12)
  })

  it('is the mean kinship of chicks that are really had: two of every pair, each of the first with each of the second', () => {
    const {book, pedigree, now, found} = asked()
    for (const extra of [[], [book.named('C2')]] as const) {
      const males = [...now.ownBreeders.filter(({sex}) => sex === 'male'), ...extra], hens = now.ownBreeders.filter(({sex}) => sex === 'female')
      const pairs = males.flatMap(sire => hens.map(dam => ({sire: pedigree.numberOf(sire), dam: pedigree.numberOf(dam), chance: 1})))
      const chicks = [...pairs, ...pairs].map((mating): Animal => ({sex: 'unknown', base: null, matings: [mating]}))
      const {animals} = pedigree.pedigree, all = coancestry({...pedigree.pedigree, animals: [...animals, ...chicks]})
      const first = pairs.map((_, index) => animals.length + index), second = first.map(animal => animal + pairs.length)
      const mean = first.reduce((sum, a) => sum + second.reduce((of, b) => of + all.between(a, b), 0), 0) / pairs.length ** 2
      expectClose(extra.length === 0 ? found?.now ?? NaN : found?.choices[0]?.kinship ?? NaN, mean, 1e-12)
    }
  })

  it('has nothing to say without a male or a female bred from', () => {
    const book = logbook('2024-01-01'), pedigree = pedigreeOfBook(book)
    expect(oneMoreMale(census(book), [], pedigree, kinshipOfBook(pedigree))).toBe(null)
  })
})

describe('ratePassed(book, steps)', () => {
  const step = (label: string, rate: number | null, own: number | null): ClosenessOfStep => ({
    step: label, interSe: 1, birds: 1, unbanded: 0, mean: 0, fresh: 0, meanLow: 0, meanHigh: 0, most: {bird: {} as Bird, f: 0}, doubtful: 0, atLeast: 0, generations: 2, kinship: 0,
    onZ: null, heterozygosity: 0, rate: rate === null ? null : {since: 'F2', value: rate},
    realised: own === null ? null : {rate: own, count: 3, tooShort: 0, size: 'no rise', standardError: null},
  })
  const book = twoPens()

  it('asks the last step that has a rate, its own birds’ where there is no step before', () => {
    expect(ratePassed(book, [step('F2', null, 0.02), step('F3', 0.05, 0.03)])).toEqual({step: 'F3', rate: 0.05, limit: 0.01})
    expect(ratePassed(book, [step('F2', null, 0.02)])).toEqual({step: 'F2', rate: 0.02, limit: 0.01})
  })

  it('is silent within the limit, on it, without one and without a rate', () => {
    expect(ratePassed(book, [step('F2', 0.5, null), step('F3', 0.01, null)])).toBe(null)
    expect(ratePassed(book, [step('mixed', 0.5, null), step('BC1', null, null)])).toBe(null)
    expect(ratePassed({...book, project: {...book.project, limits: {matingInbreeding: null, inbreedingPerGeneration: null}}}, [step('F3', 0.5, null)])).toBe(null)
  })
})
