import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {ancestryOf} from '../../src/pedigree/ancestry-of.ts'
import {coancestry} from '../../src/pedigree/coancestry.ts'
import {shareSpread} from '../../src/pedigree/share-spread.ts'
import {expectClose} from '../expect-close.ts'
import {anyPedigree, written} from './pedigrees.ts'

describe('ancestryOf(pedigree, group)', () => {
  it('keeps the birds asked about and all above them, in order', () => {
    const {pedigree, of} = written(`
      a♂ - -
      b♀ - -
      c♂ - -
      d♀ a b
      e♂ c b
      f♀ c d`)
    const {pedigree: part, numberOf} = ancestryOf(pedigree, [of('d')])
    expect(part.animals.map(({matings}) => matings)).toEqual([[], [], [{sire: 0, dam: 1, chance: 1}]])
    expect([numberOf.get(of('d')), numberOf.get(of('f'))]).toEqual([2, undefined])
  })

  it('leaves every figure of theirs as it was', () => {
    fc.assert(fc.property(anyPedigree(), fc.array(fc.nat(1000), {minLength: 1, maxLength: 5}), (pedigree, picks) => {
      const group = [...new Set(picks.map(pick => pick % pedigree.animals.length))]
      const {pedigree: part, numberOf} = ancestryOf(pedigree, group)
      const whole = coancestry(pedigree), own = coancestry(part), spread = shareSpread(pedigree, 0, [100]), ownSpread = shareSpread(part, 0, [100])
      for (const a of group) {
        const here = numberOf.get(a) ?? NaN
        expectClose(own.inbreeding[here]?.mean ?? NaN, whole.inbreeding[a]?.mean ?? NaN, 1e-12)
        expectClose((ownSpread[here] ?? NaN) ** 2, (spread[a] ?? NaN) ** 2, 1e-9)
        for (const b of group) if (a !== b) expectClose(own.between(here, numberOf.get(b) ?? NaN), whole.between(a, b), 1e-12)
      }
    }), {numRuns: 100})
  })
})
