/**
 * Who goes where, each place filled once and nobody put into two, so that the costs sum to the least there can be?
 *
 * Rows are places, columns those to be put there. Worked by shortest augmenting ways with prices (the Hungarian method), in time rows² × columns:
 * a row is added at a time, and those before it are moved along the cheapest way that makes room.
 *
 * @param cost of each column in each row, finite; every row as long as the first
 * @returns the column of each row; null for the rows left without one, where there are more rows than columns: those that it is cheapest to leave out, a row left
 *   out counting as dearer than any column
 * @throws RangeError for rows of different lengths or a cost that is no finite number
 * @see Kuhn 1955, Naval Research Logistics Quarterly 2:83 (from memory)
 * @example cheapestPlaces([[1, 2], [1, 5]]) gives [1, 0]: 2 + 1, not 1 + 5
 */
export function cheapestPlaces(cost: readonly (readonly number[])[]): readonly (number | null)[] {
  const given = cost[0]?.length ?? 0
  if (cost.some(row => row.length !== given || row.some(value => !Number.isFinite(value)))) throw new RangeError('costs are finite numbers, as many in every row')
  const columns = Math.max(given, cost.length)
  const dear = 1 + cost.length * 2 * cost.flat().reduce((most, value) => Math.max(most, Math.abs(value)), 0)
  const costOf = (row: number, column: number): number => (column < given ? cost[row]?.[column] ?? NaN : dear)

  const rowPrice = new Float64Array(cost.length), columnPrice = new Float64Array(columns)
  const rowOf = new Int32Array(columns).fill(-1)
  for (let row = 0; row < cost.length; row++) addRow(row)
  const placed: (number | null)[] = cost.map(() => null)
  rowOf.forEach((row, column) => {
    if (row >= 0 && column < given) placed[row] = column
  })
  return placed

  function addRow(fresh: number): void {
    const least = new Float64Array(columns).fill(Infinity), from = new Int32Array(columns).fill(-1), done = new Uint8Array(columns)
    let row = fresh, column = -1
    do {
      let step = Infinity, next = -1
      for (let other = 0; other < columns; other++) {
        if (done[other]) continue
        const more = costOf(row, other) - (rowPrice[row] ?? 0) - (columnPrice[other] ?? 0)
        if (more < (least[other] ?? Infinity)) {
          least[other] = more
          from[other] = column
        }
        if ((least[other] ?? Infinity) < step) {
          step = least[other] ?? Infinity
          next = other
        }
      }
      rowPrice[fresh] = (rowPrice[fresh] ?? 0) + step
      for (let other = 0; other < columns; other++) {
        if (done[other]) {
          const its = rowOf[other] ?? -1
          rowPrice[its] = (rowPrice[its] ?? 0) + step
          columnPrice[other] = (columnPrice[other] ?? 0) - step
        } else least[other] = (least[other] ?? Infinity) - step
      }
      column = next
      done[column] = 1
      row = rowOf[column] ?? -1
    } while (row >= 0)
    while (column >= 0) {
      const before = from[column] ?? -1
      rowOf[column] = before < 0 ? fresh : rowOf[before] ?? -1
      column = before
    }
  }
}
