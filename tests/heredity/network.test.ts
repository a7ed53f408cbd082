import {describe, expect, it} from 'vitest'
import {emptyNetwork} from '../../src/heredity/network.ts'

describe('emptyNetwork()', () => {
  it('numbers variables and tables, and lays a table out with its last variable running fastest', () => {
    const network = emptyNetwork(), a = network.variable(2), b = network.variable(3)
    expect([a, b, network.sizes]).toEqual([0, 1, [2, 3]])
    expect(network.factor([b, a], ([three = 0, two = 0]) => 10 * three + two)).toBe(0)
    expect(network.factor([], () => 7)).toBe(1)
    expect(network.factors.map(({of, table}) => [of, ...table])).toEqual([[[1, 0], 0, 1, 10, 11, 20, 21], [[], 7]])
  })
})
