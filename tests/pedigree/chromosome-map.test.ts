import {describe, expect, it} from 'vitest'
import {FOWL_AUTOSOMES, recombination} from '../../src/pedigree/chromosome-map.ts'
import {expectClose} from '../expect-close.ts'

describe('FOWL_AUTOSOMES', () => {
  const whole = FOWL_AUTOSOMES.reduce((sum, length) => sum + length, 0)

  it('has the mapped autosomes, and with the Z the length of the whole map', () => {
    expect(FOWL_AUTOSOMES).toHaveLength(28)
    // source: Elferink et al. 2010, BMC Genetics 11:11: 31 linkage groups, 3054 cM; the Z takes about 200, two small groups are left out
    expect(whole).toBeGreaterThan(3054 - 350)
    expect(whole).toBeLessThan(3054)
  })

  it('has its five large chromosomes first, and none shorter than one crossover a meiosis', () => {
    const [one = 0, two = 0, three = 0, four = 0, five = 0] = FOWL_AUTOSOMES
    expect(one > two && two > three && three > four && four > five).toBe(true)
    // every pair of chromosomes crosses over at least once in a meiosis, which is 50 cM (general rule, no page)
    expect(Math.min(...FOWL_AUTOSOMES)).toBeGreaterThanOrEqual(50)
  })
})

describe('recombination(morgans)', () => {
  it.each([
    // Haldane 1919, J. Genet. 8:299: ½(1 − e^(−2d)), by hand
    [0, 0], [0.1, 0.0906346], [0.5, 0.3160603], [1, 0.4323324],
  ])('%f morgans part in %f of gametes', (morgans, expected) => expectClose(recombination(morgans), expected, 1e-7))

  it('adds up as independent crossovers do, and ends at one half', () => {
    // two stretches: parted in all when parted in one of them
    const [a, b] = [recombination(0.3), recombination(0.45)]
    expectClose(recombination(0.75), a * (1 - b) + b * (1 - a), 1e-15)
    expectClose(recombination(50), 0.5, 1e-15)
  })
})
