import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {countByFamily, sireFamilies} from '../../src/findings/sire-families.ts'
import type {Bird} from '../../src/logbook/book.ts'
import {bird, hatch, parents} from '../pages/small-logbook.ts'

const COCKS = ['a', 'b', 'c', 'd', 'e', 'f'].map(id => bird(id, 'male')), hen = bird('hen', 'female')
const cock = (place: number): Bird => COCKS[place] ?? expect.fail('no cock')
const by = (id: string, ...sires: readonly number[]): Bird => bird(id, 'male', {parentage: parents(sires.map(place => [cock(place), 1 / sires.length] as const), null)})
const named = (families: readonly (readonly Bird[])[]): string[][] => families.map(chicks => chicks.map(({id}) => id))

describe('sireFamilies(chicks)', () => {
  it('makes one family of all that a sire may have', () => {
    expect(named(sireFamilies([by('1', 0), by('2', 1), by('3', 0), by('4', 2), by('5', 1, 2)]))).toEqual([['1', '3'], ['2', '4', '5']])
  })

  it('stands chicks without a sire by their dam, else by their hatch, else together', () => {
    const from = hatch('h'), lone = (id: string, more: Partial<Bird> = {}) => bird(id, 'male', more)
    const dam = {parentage: parents([], hen)}
    expect(named(sireFamilies([lone('1', dam), lone('2', {hatch: from}), lone('3', dam), lone('4'), lone('5', {hatch: from}), lone('6')]))).toEqual([['1', '3'], ['2', '5'], ['4', '6']])
    expect(sireFamilies([])).toEqual([])
  })

  it('agrees with families spread by asking every two chicks until nothing changes, and does not mind the order', () => {
    fc.assert(fc.property(fc.array(fc.uniqueArray(fc.nat(5), {minLength: 1, maxLength: 2}), {maxLength: 14}), drawn => {
      const chicks = drawn.map((sires, index) => by(`${index}`, ...sires)), label = chicks.map((_, index) => index)
      for (let changed = true; changed;) {
        changed = false
        chicks.forEach((one, i) => chicks.forEach((other, j) => {
          const kin = one.parentage.sires.some(({bird: sire}) => other.parentage.sires.some(each => each.bird === sire))
          if (kin && (label[i] ?? 0) < (label[j] ?? 0)) {
            label[j] = label[i] ?? 0
            changed = true
          }
        }))
      }
      const slow = [...new Set(label)].map(each => chicks.filter((_, index) => label[index] === each).map(({id}) => id).sort().join(' ')).sort()
      const fast = (of: readonly Bird[]) => named(sireFamilies(of)).map(ids => ids.sort().join(' '))
      expect([...fast(chicks)].sort()).toEqual(slow)
      expect(fast([...chicks].reverse())).toEqual(fast(chicks))
    }), {numRuns: 100})
  })
})

describe('countByFamily(chicks, is)', () => {
  it('counts those judged, and passes over a family in which nobody was', () => {
    expect(countByFamily([by('1', 0), by('2', 0), by('3', 0), by('4', 1)], ({id}) => (id === '1' ? true : id === '2' ? false : null))).toEqual([{k: 1, n: 2}])
  })
})
