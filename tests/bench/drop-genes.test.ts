import {describe, expect, it} from 'vitest'
import {drawPedigree} from './draw-pedigree.ts'
import {dropGenes} from './drop-genes.ts'

describe('dropGenes(seed, pedigree, drop)', () => {
  const pedigree = drawPedigree(3, {birds: 1200, doubtful: 1 / 3}), dropped = dropGenes(3, pedigree, {dominant: 0.5, scored: 0.8, wrong: 0.01})

  it('gives every chick one allele of each parent, and parents that it may have', () => {
    dropped.genes.forEach(([one, other], animal) => {
      const born = dropped.bornOf[animal] ?? null, matings = pedigree.animals[animal]?.matings ?? []
      expect(born === null).toBe(matings.length === 0)
      if (born === null) return
      expect(matings).toContain(born)
      expect(dropped.genes[born.sire ?? -1]).toContain(one)
      expect(dropped.genes[born.dam ?? -1]).toContain(other)
    })
  })

  it('scores as many as asked, and as many of these wrongly, within four binomial errors', () => {
    const scored = dropped.genes.flatMap(([a, b], animal) => dropped.flock.readings(animal).map(({scored: [state]}) => state === (a === 0 || b === 0 ? 0 : 1)))
    expect(Math.abs(scored.length - 960)).toBeLessThan(4 * Math.sqrt(1200 * 0.16))
    expect(Math.abs(scored.filter(right => !right).length - 0.01 * scored.length)).toBeLessThan(4 * Math.sqrt(scored.length * 0.0099))
  })

  it('drops the same for the same seed', () => {
    expect(dropGenes(3, pedigree, {dominant: 0.5, scored: 0.8, wrong: 0.01}).genes).toEqual(dropped.genes)
  })
})
