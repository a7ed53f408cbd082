/** A flock as groups of birds alike in how they are used (the cocks of one pen, its hens): how closely kin they are on average. */

export interface Groups {
  /** birds in each group, 1 or more */
  readonly sizes: readonly number[]
  /** mean kinship of a bird of the group with itself, ½(1 + F) */
  readonly self: readonly number[]
  /** mean kinship of two different birds, one of each group; within a group of one bird it is 0 and never used */
  readonly kinship: readonly (readonly number[])[]
}

/** Founders kin to nobody and not inbred. */
export function unrelatedGroups(sizes: readonly number[]): Groups {
  sizes.forEach(mustBeCount)
  return {sizes, self: sizes.map(() => 0.5), kinship: sizes.map(() => sizes.map(() => 0))}
}

/**
 * How closely kin are today's birds, pen by pen?
 *
 * @param kinship of each bird with each, row by row, itself on the diagonal: `coancestry(…).among(birds)`
 * @param members the birds of each group by their row; a bird that is in no group is left out
 * @throws RangeError for a group without a bird, a bird that is in two groups or has no row
 */
export function groupsAmong(kinship: readonly ArrayLike<number>[], members: readonly (readonly number[])[]): Groups {
  const placed = new Set<number>()
  for (const bird of members.flat()) {
    if (kinship[bird] === undefined) throw new RangeError(`bird ${bird} has no row of kinships`)
    if (placed.has(bird)) throw new RangeError(`bird ${bird} stands in two groups`)
    placed.add(bird)
  }
  const sizes = members.map(group => group.length)
  sizes.forEach(mustBeCount)
  const between = (a: number, b: number) => kinship[a]?.[b] ?? NaN
  return {
    sizes,
    self: members.map(group => mean(group.map(bird => between(bird, bird)))),
    kinship: members.map(one => members.map(other => mean(one.flatMap(a => other.filter(b => b !== a).map(b => between(a, b)))))),
  }
}

/** Kinship of two draws, each of any bird of its group: within a group the same bird may be drawn twice. */
export function drawnKinship({sizes, self, kinship}: Groups, a: number, b: number): number {
  const different = kinship[a]?.[b] ?? NaN
  if (a !== b) return different
  const same = 1 / (sizes[a] ?? NaN)
  return same * (self[a] ?? NaN) + (1 - same) * different
}

function mustBeCount(size: number): void {
  if (!Number.isInteger(size) || size < 1) throw new RangeError(`a group has 1 bird or more, not ${size}`)
}

const mean = (values: readonly number[]) => (values.length === 0 ? 0 : values.reduce((sum, each) => sum + each, 0) / values.length)
