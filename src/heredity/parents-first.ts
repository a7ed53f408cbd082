import {aboveOf, type Animal} from '../pedigree/pedigree.ts'

/** Animals' numbers, each after its parents, whatever order they were given in. @throws {RangeError} where a bird is its own ancestor */
export function parentsFirst(animals: readonly Animal[]): readonly number[] {
  const order: number[] = [], state = new Uint8Array(animals.length)
  for (let start = 0; start < animals.length; start++) {
    const way = [start]
    while (way.length > 0) {
      const index = way.at(-1) ?? 0
      if (state[index] === 2) {
        way.pop()
        continue
      }
      const waiting = aboveOf(animals[index]).filter(parent => state[parent] !== 2)
      if (waiting.length === 0) {
        state[index] = 2
        order.push(index)
        way.pop()
      } else {
        if (state[index] === 1) throw new RangeError(`animal ${index} is its own ancestor`)
        state[index] = 1
        way.push(...waiting)
      }
    }
  }
  return order
}
