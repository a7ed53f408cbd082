import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import {bookOf, type Files} from '../logbook/around.ts'

const file = (band: string, lines: string) => `---\nband: ${band}\n${lines}\n---\n`
const chick = (band: string, sex: string, sire: string, dam: string, more = '') => file(band, `sex: ${sex}\nhatched: 2024-04-01\nsire: ${sire}\ndam: ${dam}${more}`)
const founded = (files: Files) => study(bookOf(files)).founders

describe('founders(book)', () => {
  it('says nothing while no bird of the new breed lives', () => {
    expect(founded({})).toBeNull()
  })

  // three F1: two by H-1 with B-1, one by H-2 with B-2
  const f1: Files = {'birds/24-901.md': chick('24-901', 'male', 'H-1', 'B-1'), 'birds/24-902.md': chick('24-902', 'female', 'H-1', 'B-1'), 'birds/24-903.md': chick('24-903', 'female', 'H-2', 'B-2')}

  it('gives shares, fe and fg of the living, by hand', () => {
    const left = founded(f1)
    expect(left?.of).toBe('living')
    expect(left?.founders.map(({bird, share}) => [bird.band, Number(share.toFixed(9))])).toEqual([
      ['B-1', 0.333333333], ['H-1', 0.333333333], ['B-2', 0.166666667], ['H-2', 0.166666667], ['B-3', 0], ['H-3', 0],
    ])
    // 1 / (2/9 + 2/36)
    expect(left?.effectiveFounders).toBeCloseTo(3.6, 9)
    // mean kinship (3 · ½ + 2 · ¼) / 9
    expect(left?.meanKinship).toBeCloseTo(2 / 9, 12)
    expect(left?.founderGenomes).toBeCloseTo(9 / 4, 12)
    // all came through 24-901's family: no ancestor stands for more than its parents do
    expect(left?.effectiveAncestors.high).toBeLessThanOrEqual(3.6 + 1e-9)
    expect(left?.strains.map(({strain, share, effectiveFounders}) => [strain.id, share, Number(effectiveFounders.toFixed(9))])).toEqual([['fell-buff', 0.5, 1.8], ['holm-white', 0.5, 1.8]])
  })

  it('counts who descends from each, and the founders with nothing left last', () => {
    const left = founded(f1)
    expect(left?.founders.map(({bird, cocks, hens}) => `${bird.band} ${cocks} ${hens}`)).toEqual(['B-1 1 1', 'H-1 1 1', 'B-2 0 1', 'H-2 0 1', 'B-3 0 0', 'H-3 0 0'])
  })

  it('counts a found bird with each founder that one of the birds it may be descends from', () => {
    const left = founded({...f1, 'birds/X-1.md': file('X-1', 'sex: female\nhatched: 2024\nmaybe: [24-902, 24-903]')})
    expect(left?.founders.map(({bird, hens}) => `${bird.band} ${hens}`)).toEqual(['B-1 2', 'H-1 2', 'B-2 2', 'H-2 2', 'B-3 0', 'H-3 0'])
  })

  it('names lines that end: a cock without a living son, a hen without a living daughter', () => {
    expect(founded(f1)?.endingLines.map(({bird, sons, daughters}) => [bird.band, sons, daughters])).toEqual([['H-2', 0, 1]])
  })

  it('counts a parent outside the book as a founder of its own', () => {
    const left = founded({'birds/24-901.md': chick('24-901', 'male', 'H-1', '{strain: fell-buff}'), 'birds/24-902.md': chick('24-902', 'male', 'H-1', '{strain: fell-buff}')})
    expect(left?.unknown).toEqual({count: 2, share: 0.5})
    // ½ and twice ¼
    expect(left?.effectiveFounders).toBeCloseTo(1 / (1 / 4 + 2 / 16), 12)
  })

  it('asks of the breeders where there are some, and of the dead never', () => {
    const left = founded({...f1, 'birds/24-903.md': chick('24-903', 'female', 'H-2', 'B-2', '\nleft: 2024-10-01 died'), 'birds/24-902.md': chick('24-902', 'female', 'H-1', 'B-1', '\nkept: 2024-10-01 for breeding')})
    expect([left?.of, left?.birds.map(({band}) => band)]).toEqual(['breeders', ['24-902']])
    expect(left?.effectiveFounders).toBe(2)
  })
})
