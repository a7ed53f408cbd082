/** A queue that gives the largest first; of equals the one that came last, so that what was begun is finished before more is begun. */
export class LargestFirst<T> {
  readonly #heap: {readonly size: number; readonly turn: number; readonly item: T}[] = []
  #turn = 0

  add(size: number, item: T): void {
    const heap = this.#heap
    let place = heap.push({size, turn: this.#turn++, item}) - 1
    while (place > 0) {
      const above = (place - 1) >> 1
      if (!this.#isBefore(place, above)) return
      this.#swap(place, above)
      place = above
    }
  }

  take(): T | undefined {
    const heap = this.#heap
    const [top] = heap
    const last = heap.pop()
    if (!top || !last || heap.length === 0) return top?.item
    heap[0] = last
    for (let place = 0; ;) {
      const left = 2 * place + 1
      const lower = left + 1 < heap.length && this.#isBefore(left + 1, left) ? left + 1 : left
      if (lower >= heap.length || !this.#isBefore(lower, place)) return top.item
      this.#swap(place, lower)
      place = lower
    }
  }

  #isBefore(a: number, b: number): boolean {
    const one = this.#heap[a], other = this.#heap[b]
    if (!one || !other) return false
    return one.size === other.size ? one.turn > other.turn : one.size > other.size
  }

  #swap(a: number, b: number): void {
    const one = this.#heap[a], other = this.#heap[b]
    if (!one || !other) return
    this.#heap[a] = other
    this.#heap[b] = one
  }
}
