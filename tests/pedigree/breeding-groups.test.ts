import {describe, expect, it} from 'vitest'
import {drawnKinship, groupsAmong, unrelatedGroups} from '../../src/pedigree/breeding-groups.ts'
import {coancestry} from '../../src/pedigree/coancestry.ts'
import {expectClose} from '../expect-close.ts'
import {written} from './pedigrees.ts'

describe('groupsAmong(kinship, members)', () => {
  // a cock, his two sons by one hen and a daughter by another
  const {pedigree, of} = written('A♂ - -\nB♀ - -\nC♀ - -\nS♂ A B\nT♂ A B\nD♀ A C')
  const birds = ['A', 'S', 'T', 'D'].map(of)
  const kinship = coancestry(pedigree).among(birds)

  it('takes means over pairs of different birds, by hand', () => {
    const {sizes, self, kinship: found} = groupsAmong(kinship, [[1, 2], [0, 3]])
    expect(sizes).toEqual([2, 2])
    expect(self).toEqual([0.5, 0.5])
    // S and T full brothers ¼; A and his daughter ¼; A with S and T ¼ each, D with her half brothers ⅛ each
    expect(found).toEqual([[0.25, 3 / 16], [3 / 16, 0.25]])
  })

  it('has no kinship within a group of one', () => {
    expect(groupsAmong(kinship, [[0], [3]])).toEqual({sizes: [1, 1], self: [0.5, 0.5], kinship: [[0, 0.25], [0.25, 0]]})
  })

  it('refuses a group without a bird, a bird in two groups and one without a row', () => {
    expect(() => groupsAmong(kinship, [[0], []])).toThrow('a group has 1 bird or more, not 0')
    expect(() => groupsAmong(kinship, [[0, 1], [1]])).toThrow('bird 1 stands in two groups')
    expect(() => groupsAmong(kinship, [[4]])).toThrow('bird 4 has no row')
  })
})

describe('drawnKinship(groups, a, b)', () => {
  it('may draw the same bird twice within a group', () => {
    const groups = {sizes: [1, 4], self: [0.5, 0.6], kinship: [[0, 0.1], [0.1, 0.2]]}
    expect(drawnKinship(groups, 0, 0)).toBe(0.5)
    // one time in four the same hen
    expectClose(drawnKinship(groups, 1, 1), 0.6 / 4 + 0.2 * 3 / 4, 1e-15)
    expect(drawnKinship(groups, 0, 1)).toBe(0.1)
  })

  it('of unrelated birds is a chance of drawing the same one', () => {
    expect(drawnKinship(unrelatedGroups([5, 2]), 0, 0)).toBe(0.1)
    expect(drawnKinship(unrelatedGroups([5, 2]), 0, 1)).toBe(0)
    expect(() => unrelatedGroups([0.5])).toThrow(RangeError)
  })
})
