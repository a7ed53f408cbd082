import {describe, expect, it} from 'vitest'
import {lineageOfBook} from '../../src/findings/lineage.ts'
import {pedigreeOfBook} from '../../src/findings/pedigree-of-book.ts'
import {shareSpread} from '../../src/pedigree/share-spread.ts'
import {strainHeterozygosity} from '../../src/pedigree/strain-heterozygosity.ts'
import {bird, F1, fell, holm, logbook, project} from '../pages/small-logbook.ts'
import {BC1, buff, chick} from './kin-book.ts'

describe('lineageOfBook(book)', () => {
  const white = bird('H-1', 'male'), hen = bird('H-2', 'female'), buffHen = buff('B-1', 'female'), buffCock = buff('B-2', 'male')
  const son = chick('S', 'male', [[white, buffHen]], {step: F1}), daughter = chick('D', 'female', [[white, buffHen]], {step: F1}), other = chick('O', 'female', [[buffCock, hen]], {step: F1})
  const back = chick('K', 'male', [[white, daughter]], {step: BC1}), backHen = chick('L', 'female', [[white, daughter]], {step: BC1})
  const book = logbook('2025-01-01', {birds: [white, hen, buffHen, buffCock, son, daughter, other, back, backHen]})
  const pedigree = pedigreeOfBook(book), lineage = lineageOfBook(book, pedigree, strainHeterozygosity(pedigree.pedigree))

  it('follows the Z: a daughter has her sire’s alone, so a line of hens loses the donor’s at once', () => {
    expect([son, daughter, other, back, backHen].map(each => lineage.of(each).z.get(fell))).toEqual([0.5, 0, 1, 0, 0])
  })
  it('follows the mother’s line whole from hen to chick', () => {
    expect([son, daughter, other, back, backHen].map(each => lineage.of(each).damLine.get(fell))).toEqual([1, 1, 0, 1, 1])
    expect(lineage.of(other).damLine.get(holm)).toBe(1)
  })
  it('gives H as descent has it: F1 1, BC1 ½, strain 0', () => {
    expect([white, son, back].map(each => lineage.of(each).heterozygosity)).toEqual([0, 1, 0.5])
  })
  it('gives the spread of the recurrent strain: none in an F1, as `shareSpread` in a backcross', () => {
    const spread = shareSpread(pedigree.pedigree, pedigree.baseOf(holm))
    expect(lineage.of(son).spread).toBe(0)
    expect(lineage.of(back).spread).toBe(spread[pedigree.numberOf(back)])
    expect(lineage.of(back).spread).toBeGreaterThan(0.02)
  })
  it('gives no spread where no strain is crossed back to', () => {
    const without = {...book, project: {...project, recurrent: null}}
    expect(lineageOfBook(without, pedigree, strainHeterozygosity(pedigree.pedigree)).of(back).spread).toBeNull()
  })
})
