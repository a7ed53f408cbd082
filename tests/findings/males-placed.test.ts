import {describe, expect, it} from 'vitest'
import {malesPlaced} from '../../src/findings/males-placed.ts'
import {study} from '../../src/findings/study.ts'
import {twoPens} from './breeding-book.ts'

const bands = (list: readonly {readonly male: {readonly band: string}}[]): readonly string[] => list.map(({male}) => male.band)

describe('malesPlaced(pairings)', () => {
  it('puts no male into two pens, at the least F over all hens', () => {
    // by hand: the A are full sibs, the B are, and C2 is kin to nobody; so B1 or C2 goes to the A hens and A1, C1 or C2 to the B hen, all at F 0
    const {pens, mean} = malesPlaced(study(twoPens()).pairings)
    const placed = pens.map(each => each.placed?.male.band)
    expect(placed[0]).not.toBe(placed[1])
    expect(['B1', 'C2']).toContain(placed[0])
    expect(placed[1]).not.toBe('B1')
    expect(mean).toBe(0)
  })

  it('tells whom to keep out: past the limit where somebody keeps within it, else as close as full sibs', () => {
    const of = (limit: number | null) => malesPlaced(study(twoPens(limit)).pairings).pens.map(({mark, avoid}) => [mark.of, bands(avoid)])
    expect(of(0.125)).toEqual([['limit', ['A1', 'C1']], ['limit', ['B1']]])
    expect(of(null)).toEqual([['sibs', ['A1', 'C1']], ['sibs', ['B1']]])
  })

  it('names who would be less kin and serves elsewhere, and leaves a pen empty when males are wanting', () => {
    const {pairings} = study(twoPens()), c2 = pairings.males.filter(({band}) => band === 'C2')
    const one = {...pairings, males: c2, pens: pairings.pens.map(pen => ({...pen, males: pen.males.filter(({male}) => male.band === 'C2')}))}
    const {pens, mean} = malesPlaced(one)
    expect(pens.filter(({placed}) => placed === null).length).toBe(1)
    expect(mean).toBe(0)
    expect(malesPlaced({...pairings, males: [], pens: []})).toEqual({pens: [], mean: null})

    const [a, b] = pairings.pens
    if (!a || !b) throw new Error('two pens')
    // the hens of B told to be as near to C2 as he is to nobody: he is the least kin in A too, and B has only B1 besides
    const few = {...pairings, males: pairings.males.filter(({band}) => ['B1', 'C2'].includes(band)), pens: [a, b].map(pen => ({...pen, males: pen.males.filter(({male}) => ['B1', 'C2'].includes(male.band))}))}
    const shifted = {...few, pens: few.pens.map((pen, place) => ({...pen, males: pen.males.map(each => (place === 0 && each.male.band === 'B1' ? {...each, mean: 0.05} : each))}))}
    const [first, second] = malesPlaced(shifted).pens
    expect([first?.placed?.male.band, second?.placed?.male.band]).toEqual(['B1', 'C2'])
    expect(bands(first?.elsewhere ?? [])).toEqual(['C2'])
  })
})
