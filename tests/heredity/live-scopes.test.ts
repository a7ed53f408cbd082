import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {LiveScopes, type Scope} from '../../src/heredity/live-scopes.ts'
import {someTables} from './summed.ts'

const scopesOf = (lists: readonly (readonly number[])[]): Scope[] => lists.map((of, factor) => ({of: [...of].sort((a, b) => a - b), factor, cluster: -1}))

/** fill and size of a variable's cluster, reckoned from the scopes alone */
function weighed(variable: number, scopes: readonly Scope[], sizes: readonly number[], alike: boolean): readonly [number, number, number] {
  const together = (a: number, b: number) => scopes.some(({of}) => of.includes(a) && of.includes(b))
  const beside = sizes.flatMap((_, other) => (other !== variable && together(variable, other) ? [other] : []))
  const fill = beside.reduce((sum, a, place) => sum + beside.slice(place + 1).filter(b => !together(a, b)).reduce((all, b) => all + (alike ? 1 : Math.log(sizes[a]!) * Math.log(sizes[b]!)), 0), 0)
  return [Math.round(fill * 1e5), beside.reduce((product, other) => product * sizes[other]!, sizes[variable]!), variable]
}

describe('LiveScopes', () => {
  it('always gives the variable of least fill, then least cluster, then lowest number, as reckoning all anew does', () => {
    fc.assert(fc.property(someTables, fc.boolean(), fc.boolean(), ({sizes, factors}, parting, alike) => {
      const live = new LiveScopes(sizes, alike)
      let plain = scopesOf(factors.map(({of}) => of)).filter(({of}) => of.length > 0)
      plain.forEach(scope => live.add(scope))
      for (let variable = live.next(); variable !== null; variable = live.next()) {
        const taken = variable, [best] = sizes.map((_, each) => each).filter(each => plain.some(({of}) => of.includes(each)))
          .map(each => weighed(each, plain, sizes, alike)).sort((a, b) => a[0] - b[0] || a[1] - b[1] || a[2] - b[2])
        expect(taken).toBe(best?.[2])
        const scopes = live.take(taken)
        expect(new Set(scopes)).toEqual(new Set(plain.filter(({of}) => of.includes(taken))))
        // what is left goes on joined, or each by itself as where a bound parts them
        const rests = parting ? scopes.map(({of}) => of) : [[...new Set(scopes.flatMap(({of}) => of))].sort((a, b) => a - b)]
        const fresh = scopesOf(rests.map(of => of.filter(each => each !== taken))).filter(({of}) => of.length > 0)
        plain = [...plain.filter(({of}) => !of.includes(taken)), ...fresh]
        fresh.forEach(scope => live.add(scope))
      }
      expect(plain).toEqual([])
    }), {seed: 5, numRuns: 100})
  })

  it('takes the chicks of a mating before its parents', () => {
    const live = new LiveScopes([3, 3, 3, 3, 3])
    for (const scope of scopesOf([[0, 1, 2], [0, 1, 3], [0, 4], [1, 4]])) live.add(scope)
    const order: number[] = []
    for (let variable = live.next(); variable !== null; variable = live.next()) {
      const rest = [...new Set(live.take(variable).flatMap(({of}) => of))].filter(each => each !== variable)
      if (rest.length > 0) live.add({of: rest.sort((a, b) => a - b), factor: -1, cluster: order.push(variable) - 1})
      else order.push(variable)
    }
    expect(order).toEqual([2, 3, 0, 1, 4])
  })
})
