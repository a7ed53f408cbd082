import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import type {Bird} from '../../src/logbook/book.ts'
import {birdDescent, doubtAboveWords, inbreedingWords} from '../../src/pages/bird-descent.ts'
import {halfSibs} from '../findings/kin-book.ts'

describe('inbreedingWords(F)', () => {
  it('gives the range and the likeliest where parents are in doubt, else one figure', () => {
    expect(inbreedingWords({mean: 0.098, low: 0.06, high: 0.19, likeliest: 0.125}, {as: 'pairs', all: 3, likeliest: 1})).toBe('6.0 to 19.0%, most likely 12.5%, on average 9.8%')
    expect(inbreedingWords({mean: 0.125, low: 0.125, high: 0.125, likeliest: 0.125}, {as: 'pairs', all: 1, likeliest: 1})).toBe('12.5%')
  })
  it('calls none the likeliest where several are alike', () => {
    const f = {mean: 0.1875, low: 0.125, high: 0.25, likeliest: 0.125}
    expect(inbreedingWords(f, {as: 'pairs', all: 2, likeliest: 2})).toBe('12.5 or 25.0%, equally likely, on average 18.8%')
    expect(inbreedingWords(f, {as: 'pairs', all: 6, likeliest: 6})).toBe('12.5 to 25.0%, six pairs alike, on average 18.8%')
    expect(inbreedingWords(f, {as: 'birds', all: 6, likeliest: 2})).toBe('12.5 to 25.0%, two of six birds likeliest alike, on average 18.8%')
  })
})

describe('doubtAboveWords(bird)', () => {
  it('says that doubt about grandparents is averaged, and nothing where there is none or the parents are in doubt themselves', () => {
    const birds = halfSibs().birds, unsure = birds.find(({parentage: {kind}}) => kind === 'uncertain'), founder = birds.find(({parentage: {kind}}) => kind === 'founder')
    if (!unsure || !founder) expect.fail('the book has both')
    const chickOf = (sire: Bird, dam: Bird): Pick<Bird, 'parentage'> => ({parentage: {kind: 'known', pairs: [{sire, dam, chance: 1}], sires: [], dams: []}})
    expect(doubtAboveWords(chickOf(unsure, founder))).toBe(' Who the parents of its sire were is in doubt, and averaged here.')
    expect(doubtAboveWords(chickOf(unsure, unsure))).toBe(' Who the parents of its sire and dam were is in doubt, and averaged here.')
    expect([doubtAboveWords(chickOf(founder, founder)), doubtAboveWords(unsure)]).toEqual(['', ''])
  })
})

describe('birdDescent(bird)', () => {
  const book = halfSibs(), findings = study(book)
  const of = (id: string) => birdDescent(book.named(id), findings)

  it('says F, the Z of cocks (half sibs by a cock: ½ · ½), and how far descent is known', () => {
    expect(of('24-001').words).toBe('F 12.5%; on the Z 25.0%. Ancestors all known for two generations; 2.0 equivalent complete generations.')
  })
  it('names the project’s limit where F may pass it, or does', () => {
    expect(of('24-002').words).toBe('F 12.5 to 25.0%, most likely 12.5%, on average 17.5%. Ancestors all known for two generations; 2.0 equivalent complete generations. It may be above the project’s limit of 12.5%.')
    expect(of('24-003').words).toMatch(/^F at least 25\.0%.* Above the project’s limit of 12\.5%\.$/)
  })
  it('is “at least” with a grandparent unknown, and plain for founders', () => {
    expect(of('24-004').words).toBe('F at least 0.0%. Not both parents are sure to be in the book; 1.0 equivalent complete generations.')
    expect(of('22-005')).toEqual({words: 'F 0.0%, as stated for its strain.', reason: '', blood: null})
  })
  it('keeps autosomes, Z and mother’s line apart', () => {
    const {blood} = of('23-017')
    expect(blood?.shares).toEqual([
      {text: 'Holm White', link: 'strains/holm-white.html', percent: '50.0%'}, {text: 'Fell Buff', link: 'strains/fell-buff.html', percent: '50.0%'},
    ])
    expect(blood?.words).toBe('On the Z all Holm White; mother’s line all Fell Buff. Copies of two strains in 100.0% of genes.')
    expect(of('24-001').blood?.shares[0]?.percent).toMatch(/^50\.0%, give or take \d\.\d$/)
  })
})
