/**
 * Heights moved apart until no two names overlap, in their order, inside the drawing.
 *
 * @param heights where each name would stand, from the top
 * @param line between the middles of two names
 * @param bottom the lowest a name may stand
 */
export function spaced(heights: readonly number[], line: number, bottom: number): readonly number[] {
  const order = heights.map((height, index) => ({height, index})).sort((a, b) => a.height - b.height || a.index - b.index)
  const placed: number[] = []
  let floor = 0
  order.forEach(({height}, place) => {
    const most = bottom - line * (order.length - 1 - place)
    const here = Math.min(most, Math.max(height, floor))
    placed.push(here)
    floor = here + line
  })
  const found = [...heights]
  order.forEach(({index}, place) => { found[index] = placed[place] ?? 0 })
  return found
}
