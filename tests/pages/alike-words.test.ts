import {describe, expect, it} from 'vitest'
import {rearedAlike, type Kept} from '../../src/findings/reared-alike.ts'
import {alikeCaution, alikeShort, unlikeLine, unlikeWords} from '../../src/pages/alike-words.ts'
import {toldApartWords, type Compared} from '../../src/pages/told-apart-words.ts'

const kept = (more: Partial<Kept> = {}): Kept => ({season: 2024, way: 'incubator', machine: 'I1', keeper: null, care: [], ...more})
const same = rearedAlike([kept()], [kept()]), apart = rearedAlike([kept({way: 'broody', machine: null, months: ['03']})], [kept({season: 2025, months: ['11', '12']})]), untold = rearedAlike([kept(), kept({way: 'not-stated', machine: null})], [kept()])

describe('whether groups were kept alike', () => {
  it('is said short, in a sentence, and as a warning', () => {
    expect([same, apart, untold].map(alikeShort)).toEqual(['yes', 'no: season, time of year, hen or machine', 'not told'])
    expect(unlikeWords(apart)).toBe('season 2024 against 2025; time of year March against November and December; hatched by hens against machines')
    expect([unlikeLine('F2 less F1', same), unlikeLine('F2 less F1', rearedAlike([kept()], [kept({season: 2025})]))]).toEqual([null, 'F2 less F1: season 2024 against 2025.'])
    expect(alikeCaution([same])).toBe('')
    expect(alikeCaution([apart])).toMatch(/^By the records the two groups were not kept alike: what differs may come of how they were kept/)
    expect(alikeCaution([apart, apart])).toMatch(/^By the records none of these were kept alike/)
    expect(alikeCaution([apart, same, untold])).toMatch(/^By the records 2 of these 3 were not kept alike/)
  })
})

describe('the answer above a table of comparisons', () => {
  const one = (verdict: Compared['verdict'], more: Partial<Compared> = {}): Compared => ({words: 'more of A than of B', verdict, only: false, alike: apart, ...more})
  it('is nothing without comparisons, and says so where nothing differs', () => {
    expect(toldApartWords([], 'eggs')).toBe('')
    expect(toldApartWords([one('cannot-tell')], 'eggs')).toBe('No difference is shown: the limits leave room for none.')
    expect(toldApartWords([one('cannot-tell'), one('cannot-tell')], 'eggs')).toContain('None of two comparisons shows a difference')
  })
  it('lists few and counts many, with how many chance alone would show', () => {
    expect(toldApartWords([one('more')], 'eggs')).toBe('There is a difference: more of A than of B.')
    expect(toldApartWords([one('more', {only: true, alike: same}), one('cannot-tell')], 'hens')).toBe('One of two comparisons shows a difference: more of A than of B. It speaks of these hens only. By the records they were kept alike.')
    expect(toldApartWords(Array.from({length: 40}, (_, place) => one(place < 5 ? 'less' : 'cannot-tell', {only: place < 2})), 'eggs')).toBe('Five of 40 comparisons show a difference, where chance alone would show about two of the 38 that speak of more than these eggs. Two speak of these eggs only.')
  })
})
