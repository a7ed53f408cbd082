import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {maleLines} from '../../src/findings/male-lines.ts'
import type {Bird} from '../../src/logbook/book.ts'
import {bird, parents} from '../pages/small-logbook.ts'
import '../seeded.ts'

const A = bird('A', 'male'), B = bird('B', 'male'), hen = bird('h', 'female')
const son = (id: string, ...sires: readonly (readonly [Bird, number])[]): Bird => bird(id, 'male', {parentage: parents(sires, hen)})
const told = (birds: readonly Bird[]) => {
  const {lines, least, most} = maleLines(birds)
  return {lines: lines.map(({founder, males}) => `${founder?.id ?? '?'}: ${males.map(({id}) => id).join(' ')}`), least, most}
}

describe('maleLines(birds)', () => {
  it('follows each male from sire to sire', () => {
    const a = son('a', [A, 1]), aa = son('aa', [a, 1]), ab = son('ab', [a, 1]), b = son('b', [B, 1])
    expect(told([aa, ab, b, hen])).toEqual({lines: ['A: aa ab', 'B: b'], least: 2, most: 2})
    expect(told([A, aa])).toEqual({lines: ['A: A aa'], least: 1, most: 1})
    expect(told([hen])).toEqual({lines: [], least: 0, most: 0})
  })

  it('counts one of two possible sires for neither line, unless both are of one', () => {
    const a = son('a', [A, 1]), either = son('e', [A, 0.5], [B, 0.5]), same = son('s', [A, 0.5], [a, 0.5])
    expect(told([same])).toEqual({lines: ['A: s'], least: 1, most: 1})
    expect(told([a, either])).toEqual({lines: ['A: a', '?: e'], least: 1, most: 2})
    expect(told([either])).toEqual({lines: ['?: e'], least: 1, most: 1})
  })

  it('lets a sire outside the book be of any line, or of one of its own', () => {
    const open = son('o', [A, 0.6])
    expect(told([A, open])).toEqual({lines: ['A: A', '?: o'], least: 1, most: 2})
    expect(told([bird('m', 'male', {maybe: [A, B], parentage: {kind: 'uncertain', pairs: [], sires: [], dams: []}}), B])).toEqual({lines: ['B: B', '?: m'], least: 1, most: 2})
  })

  it('never has more lines than males or fewer than are sure, and naming a sire never widens what is in doubt', () => {
    fc.assert(fc.property(fc.array(fc.tuple(fc.nat(30), fc.nat(30), fc.boolean()), {minLength: 1, maxLength: 25}), draws => {
      const all: Bird[] = [A, B], sure: Bird[] = [A, B]
      draws.forEach(([one, other, certain], index) => {
        const pick = (from: readonly Bird[], place: number): Bird => from[place % from.length] ?? A
        all.push(son(`x${index}`, ...(certain || pick(all, one) === pick(all, other) ? [[pick(all, one), 1] as const] : [[pick(all, one), 0.5] as const, [pick(all, other), 0.5] as const])))
        sure.push(son(`x${index}`, [pick(sure, one), 1]))
      })
      const found = maleLines(all), known = maleLines(sure)
      expect(found.least).toBeLessThanOrEqual(found.most)
      expect(found.most).toBeLessThanOrEqual(all.length)
      expect(known.least).toBe(known.most)
      expect([found.least <= known.least, known.least <= found.most]).toEqual([true, true])
    }))
  })
})
