import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {LargestFirst} from '../../src/pedigree/largest-first.ts'

describe('LargestFirst', () => {
  it('gives what a sorted list would give, whenever it is asked', () => {
    fc.assert(fc.property(fc.array(fc.option(fc.nat(9), {freq: 3}), {maxLength: 80}), calls => {
      const queue = new LargestFirst<number>()
      const list: {size: number; item: number}[] = []
      calls.forEach((size, item) => {
        if (size !== null) {
          queue.add(size, item)
          list.push({size, item})
          return
        }
        // the last of equals
        const expected = [...list].sort((a, b) => b.size - a.size || b.item - a.item)[0]
        expect(queue.take()).toBe(expected?.item)
        if (expected) list.splice(list.indexOf(expected), 1)
      })
    }))
  })

  it('gives nothing when it is empty', () => {
    expect(new LargestFirst<string>().take()).toBeUndefined()
  })
})
