/** Every order of a few things, by taking each first in turn: the slow twin of what is worked without laying them out. */
export function ordersOf(all: readonly number[]): number[][] {
  return all.length === 0 ? [[]] : all.flatMap((first, place) => ordersOf(all.filter((_, other) => other !== place)).map(rest => [first, ...rest]))
}
