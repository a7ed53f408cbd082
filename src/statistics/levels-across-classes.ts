/** One value of what is to be compared, and the class in which it was seen. */
export interface SeenInClass {
  /** whose level is asked for: a parent, a pair, a feed */
  readonly name: string
  /** hatch, rearing, season … */
  readonly group: string
  /** finite */
  readonly value: number
}

/** Where one of them stands, the classes taken off. */
export interface LevelAcross {
  readonly name: string
  /** in the unit of the values; only differences between those that are linked mean anything */
  readonly level: number
  /** number of the set within which all are linked by classes they share, from 0 in the order of the rows */
  readonly linked: number
  /** values behind it */
  readonly count: number
}

/** Residues are brought down to this part of the values. */
const SETTLED = 1e-13

/**
 * What is each one's level, where each was seen in several classes and every class saw others?
 *
 *     value = level + class + rest, by least squares over all values        min Σ (y − level_name − class_group)²
 *
 * In one class, or where every class saw all of them equally often, the level is the plain mean. The levels are taken out of the normal equations, and the classes that are
 * left solved by conjugate gradients, so that thousands of classes cost no table of classes by classes.
 *
 * @param rows in any number
 * @returns one line a name, in the order of the rows
 * @throws RangeError when a value is not finite
 * @see Yates 1934, J. Am. Stat. Assoc. 29:51–66 (fitting constants); Hestenes & Stiefel 1952, J. Res. Natl. Bur. Stand. 49:409–436; both from memory
 * @example levelsAcrossClasses([{name: 'a', group: '1', value: 1}, {name: 'b', group: '1', value: 3}, {name: 'b', group: '2', value: 13}, {name: 'c', group: '2', value: 14}])  // b 2 above a, c 1 above b
 */
export function levelsAcrossClasses(rows: readonly SeenInClass[]): readonly LevelAcross[] {
  for (const {value} of rows) if (!Number.isFinite(value)) throw new RangeError(`a value is a finite number, not ${value}`)
  const names = numbered(rows.map(({name}) => name)), groups = numbered(rows.map(({group}) => group))
  const at = rows.map(({name, group, value}) => ({name: names.get(name) ?? 0, group: groups.get(group) ?? 0, value}))
  const own = meanOf(at.map(({name, value}) => ({to: name, value})), names.size)
  // what each class saw above the plain means of those it saw; then the levels follow whatever the classes are
  const nameOf = Int32Array.from(at, ({name}) => name), groupOf = Int32Array.from(at, ({group}) => group), counts = sumOf(at.map(({name}) => ({to: name, value: 1})), names.size)
  const classes = solved(of => {
    const means = new Float64Array(names.size), above = new Float64Array(groups.size)
    nameOf.forEach((name, place) => { means[name] = (means[name] ?? 0) + (of[groupOf[place] ?? 0] ?? 0) / (counts[name] ?? 1) })
    groupOf.forEach((group, place) => { above[group] = (above[group] ?? 0) + (of[group] ?? 0) - (means[nameOf[place] ?? 0] ?? 0) })
    return above
  }, sumOf(at.map(({name, group, value}) => ({to: group, value: value - (own[name] ?? 0)})), groups.size), at.reduce((sum, {value}) => sum + value ** 2, 0))
  const levels = meanOf(at.map(({name, group, value}) => ({to: name, value: value - (classes[group] ?? 0)})), names.size)
  const sets = linkedSets(at, names.size, groups.size)
  return [...names].map(([name, place]) => ({name, level: levels[place] ?? NaN, linked: sets[place] ?? 0, count: counts[place] ?? 0}))
}

const numbered = (names: readonly string[]): ReadonlyMap<string, number> => new Map([...new Set(names)].map((name, place) => [name, place]))

interface Part {
  readonly to: number
  readonly value: number
}
function sumOf(parts: readonly Part[], count: number): Float64Array {
  const sums = new Float64Array(count)
  for (const {to, value} of parts) sums[to] = (sums[to] ?? 0) + value
  return sums
}
function meanOf(parts: readonly Part[], count: number): Float64Array {
  const counts = sumOf(parts.map(({to}) => ({to, value: 1})), count)
  return sumOf(parts, count).map((sum, place) => sum / (counts[place] ?? 1))
}

const product = (a: Float64Array, b: Float64Array): number => a.reduce((sum, value, place) => sum + value * (b[place] ?? 0), 0)

/** A·x = right for a symmetric A without negative roots, to within rounding of what has `scale` for its sum of squares; what A does not see stays 0. */
function solved(times: (x: Float64Array) => Float64Array, right: Float64Array, scale: number): Float64Array {
  const x = new Float64Array(right.length), residue = right.slice(), way = right.slice()
  let length = product(residue, residue)
  const least = scale * SETTLED ** 2
  for (let step = 0; step < 2 * right.length + 10 && length > least; step++) {
    const ahead = times(way), bend = product(way, ahead)
    if (!(bend > 0)) break
    const far = length / bend
    way.forEach((value, place) => {
      x[place] = (x[place] ?? 0) + far * value
      residue[place] = (residue[place] ?? 0) - far * (ahead[place] ?? 0)
    })
    const next = product(residue, residue)
    way.forEach((value, place) => { way[place] = (residue[place] ?? 0) + (next / length) * value })
    length = next
  }
  return x
}

/** Number of the set of each name. */
function linkedSets(at: readonly {readonly name: number; readonly group: number}[], names: number, groups: number): readonly number[] {
  const seen = Array.from({length: groups}, (): number[] => []), where = Array.from({length: names}, (): number[] => [])
  for (const {name, group} of at) {
    seen[group]?.push(name)
    where[name]?.push(group)
  }
  const sets = new Array<number>(names).fill(-1), walked = new Set<number>()
  let next = 0
  for (let start = 0; start < names; start++) {
    if (sets[start] !== -1) continue
    const ahead = [start]
    sets[start] = next
    for (let name = ahead.pop(); name !== undefined; name = ahead.pop()) {
      for (const group of where[name] ?? []) {
        if (walked.has(group)) continue
        walked.add(group)
        for (const other of seen[group] ?? []) {
          if (sets[other] !== -1) continue
          sets[other] = next
          ahead.push(other)
        }
      }
    }
    next += 1
  }
  return sets
}
