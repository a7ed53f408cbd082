import {describe, expect, it} from 'vitest'
import {geneFlow} from '../../src/pedigree/gene-flow.ts'
import {drawPedigree, GENERATIONS} from './draw-pedigree.ts'

describe('drawPedigree(seed, size)', () => {
  it('has the birds asked for, in twelve generations, each of parents of the generation before', () => {
    const pedigree = drawPedigree(1, {birds: 1200, doubtful: 0})
    expect(pedigree.animals).toHaveLength(1200)
    expect(Math.max(...geneFlow(pedigree, 'autosome').level)).toBe(GENERATIONS - 1)
  })

  it('leaves a third of the hens’ chicks one of three sires, and is the same for the same seed', () => {
    const pedigree = drawPedigree(2, {birds: 2400, doubtful: 1 / 3})
    const bred = pedigree.animals.filter(({matings}) => matings.length > 0)
    expect(Math.abs(bred.filter(({matings}) => matings.length === 3).length / bred.length - 1 / 3)).toBeLessThan(0.03)
    for (const {matings} of bred) expect(new Set(matings.map(({sire}) => sire)).size).toBe(matings.length)
    expect(drawPedigree(2, {birds: 2400, doubtful: 1 / 3})).toEqual(pedigree)
  })
})
