import {fisherTail} from './fisher-f.ts'
import {solveLeastSquares} from './householder.ts'
import type {Interval} from './interval.ts'
import {logitFits, type LogitFit, type LogitRow} from './logit-fit.ts'
import {studentQuantile} from './student-t.ts'

/** So many of so many, and what may bear on it: the eggs of one hen in one hatch, say. */
export interface BinomialRow {
  /** whole, 0 to n */
  readonly k: number
  /** whole, 0 or more; rows of 0 are passed over */
  readonly n: number
  /** the columns' values, all finite: F of the embryo, F of the dam … without a column of 1s */
  readonly x: readonly number[]
  /** what was set together and may have done well or badly together; a row without a name is a cluster of its own */
  readonly cluster?: string
  /** what is of one pair, in whichever cluster: pairs do well or badly as a whole too, and tell of a column that goes with the pair once each, not once a cluster. All rows name one, or none does */
  readonly family?: string
}

/** Change of the logit per unit of a column. */
export interface LogitSlope {
  readonly value: number
  /** standard error, with the extra spread in it */
  readonly error: number
  /** by profile likelihood; null when it was not asked for, or no limit was found, which no data we tried came to */
  readonly interval: Interval | null
  /** two-sided, 0 to 1, by likelihood ratio; from value and error where no interval was asked for */
  readonly p: number
}

/** A regression of shares. */
export type BinomialRegression =
  | {
      readonly kind: 'fitted'
      /** `plain`: most likely coefficients · `penalised`: the columns part failures from successes, and Firth's penalty keeps them finite */
      readonly how: 'plain' | 'penalised'
      readonly slopes: readonly LogitSlope[]
      /** φ, how many times the spread is what chance alone would give; 1 or more */
      readonly extra: number
      readonly n: number
      readonly clusters: number
      /** null where rows name none */
      readonly families: number | null
      /** clusters less columns less the level, or what is left of families where that is less; 1 or more, whole where there are none */
      readonly freedom: number
      readonly level: number
      /** for `shareAt`: middle and size of each column, coefficients and their covariance on that scale, the level first */
      readonly scale: {readonly middles: readonly number[]; readonly sizes: readonly number[]; readonly coefficients: readonly number[]; readonly covariance: readonly (readonly number[])[]}
    }
  /** `few`: no cluster or family to spare for the spread between them · `dependent`: the columns named do not vary, or say nothing that those before them do not · `unsettled`: no fit was found */
  | {readonly kind: 'few' | 'unsettled'; readonly n: number; readonly clusters: number}
  | {readonly kind: 'dependent'; readonly n: number; readonly clusters: number; readonly columns: readonly number[]}

/**
 * Is inbreeding costing us chicks? How the logit of a share changes with each column, when hatches do well and badly as a whole.
 *
 *     logit π = level + Σ b_j x_j        φ = max(1, X²/(N − p), X²_clusters/(C − p))        X² = Σ (k − nπ)²/(nπ(1 − π)), X²_clusters the same of cluster sums
 *     limits of b_j: where 2·(log L_max − log L_profile)/φ = t²        t of ν = C − p, p columns with the level
 *     where families are named     φ is at least X²_families/Σ l and Σ n_f X²_f/Σ l·n_f        ν at most (Σ l·n_f)²/Σ l·n_f²        l = 1 − s_fᵀ(XᵀWX)⁻¹s_f/Σw, s_f = Σ w·x, w = nπ(1 − π)
 *
 * l is what chance alone leaves of a family: a column that goes with the family costs one in all, and a season in which all families were set costs nothing. The second φ and its ν count a family
 * by its size, as the slope does, since one of many eggs strays further from what its columns give.
 *
 * Extra spread is taken in by quasi-likelihood and not by a beta-binomial, since with the six to thirty hatches of a flock the latter's spread sits at its edge as
 * often as not, while φ always has a value and never makes an interval narrower than chance does. A column that varies inside clusters is judged a little too hard.
 *
 * @param rows counts with their columns
 * @param level above 0 and below 1; default 0.95
 * @param from the first column that limits are asked for: those before it, levels of seasons say, are held and nothing more; default 0
 * @returns slopes per unit of each column and the extra spread, or why there are none
 * @throws RangeError when a count is none, columns do not fit or are not finite, or the level is out of its range
 * @see McCullagh & Nelder 1989, Generalized Linear Models, 4.5 (φ). Firth 1993, Biometrika 80:27–38; Heinze & Schemper 2002, Stat. Med. 21:2409–2419. From memory.
 *   φ by clusters and its being the greater of the two: own; in simulation of 8 to 20 hatches, alike or not, the 95 % limits held the truth 95 to 98 times in a hundred.
 * @example binomialRegression([{k: 9, n: 10, x: [0]}, {k: 8, n: 10, x: [0]}, {k: 6, n: 10, x: [0.25]}, {k: 7, n: 10, x: [0.25]}])  // slope −4.4622, extra 1
 */
export function binomialRegression(rows: readonly BinomialRow[], level = 0.95, from = 0): BinomialRegression {
  if (!(level > 0 && level < 1)) throw new RangeError(`a level lies between 0 and 1, not at ${level}`)
  const width = rows[0]?.x.length ?? 0
  for (const {k, n, x} of rows) {
    if (!Number.isInteger(n) || n < 0) throw new RangeError(`n is a count of 0 or more, not ${n}`)
    if (!Number.isInteger(k) || k < 0 || k > n) throw new RangeError(`k is a count from 0 to ${n}, not ${k}`)
    if (x.length !== width) throw new RangeError(`every row has ${width} columns, not ${x.length}`)
    for (const value of x) if (!Number.isFinite(value)) throw new RangeError(`a column holds finite numbers, not ${value}`)
  }
  const used = rows.filter(({n}) => n > 0)
  const names = used.map((row, place) => (row.cluster === undefined ? `row ${place}` : `cluster ${row.cluster}`))
  const clusters = new Set(names).size, n = used.reduce((sum, row) => sum + row.n, 0), spare = clusters - width - 1
  if (spare < 1) return {kind: 'few', n, clusters}
  const {middles, sizes, scaled} = standardised(used, width)
  const solution = solveLeastSquares(scaled.map(({x}) => x), scaled.map(() => 0))
  if (solution.kind === 'dependent') return {kind: 'dependent', n, clusters, columns: solution.columns.map(column => column - 1)}
  const {alike, rowOf} = alikeTogether(scaled), fitted = logitFits(alike), plain = fitted({penalised: false}), whole = plain ?? fitted({penalised: true})
  const fit = whole && {...whole, shares: rowOf.map(place => whole.shares[place] ?? 0)}
  if (fit === null) return {kind: 'unsettled', n, clusters}
  const hatches = spreadOf(scaled, names, fit), kin = used.every(({family}) => family !== undefined) ? spreadOf(scaled, used.map(({family}) => family ?? ''), fit) : null
  const freedom = Math.min(spare, kin?.freedom ?? spare), penalised = plain === null
  if (freedom < 1 - 1e-9) return {kind: 'few', n, clusters}
  const extra = Math.max(1, singleSpread(scaled, fit), hatches.squares / spare, kin?.extra ?? 1)
  const quantile = studentQuantile(level, freedom)
  const slopes = sizes.map((size, place) => {
    const value = fit.coefficients[place + 1] ?? 0, error = Math.sqrt(extra * (fit.inverse[place + 1]?.[place + 1] ?? 0))
    if (place < from) return {value: value / size, error: error / size, interval: null, p: error > 0 ? fisherTail((value / error) ** 2, 1, freedom) : 1}
    let start = fit.coefficients
    const far = (at: number): number | null => {
      const fixed = {place: place + 1, value: at}, held = fitted({penalised, fixed, start}) ?? fitted({penalised, fixed})
      if (held !== null) start = held.coefficients
      return held === null ? null : Math.max(0, (2 * (fit.logLikelihood - held.logLikelihood)) / extra)
    }
    const none = far(0), [low = null, high = null] = [-error, error].map(side => {
      start = fit.coefficients
      return limit(value, quantile * side, far, quantile)
    })
    return {
      value: value / size,
      error: error / size,
      interval: low === null || high === null ? null : {low: low / size, high: high / size},
      p: none === null ? 0 : fisherTail(none, 1, freedom),
    }
  })
  return {
    kind: 'fitted', how: penalised ? 'penalised' : 'plain', slopes, extra, n, clusters, families: kin?.groups ?? null, freedom, level,
    scale: {middles, sizes, coefficients: fit.coefficients, covariance: fit.inverse.map(row => row.map(entry => entry * extra))},
  }
}

/**
 * Which share does a regression expect where the columns have these values?
 *
 *     logit π = X·b        limits from its standard error on the logit's scale
 *
 * @param fit what `binomialRegression` found, of kind `fitted`
 * @param x the columns' values, all finite
 * @returns share and limits, all between 0 and 1
 * @throws RangeError when the columns do not fit
 * @see McCullagh & Nelder, as above
 */
export function shareAt(fit: BinomialRegression & {readonly kind: 'fitted'}, x: readonly number[]): Interval & {readonly share: number} {
  const {middles, sizes, coefficients, covariance} = fit.scale
  if (x.length !== middles.length || !x.every(Number.isFinite)) throw new RangeError(`there are ${middles.length} columns of finite numbers`)
  const row = [1, ...x.map((value, place) => (value - (middles[place] ?? 0)) / (sizes[place] ?? 1))]
  const eta = row.reduce((sum, value, place) => sum + value * (coefficients[place] ?? 0), 0)
  const variance = row.reduce((sum, value, i) => sum + value * row.reduce((part, other, j) => part + other * (covariance[i]?.[j] ?? 0), 0), 0)
  const half = studentQuantile(fit.level, fit.freedom) * Math.sqrt(Math.max(0, variance))
  const share = (at: number) => 1 / (1 + Math.exp(-at))
  return {share: share(eta), low: share(eta - half), high: share(eta + half)}
}

/** Columns brought to mean 0 and standard deviation 1, each chick or egg counting once, with 1 before them; a column that does not vary becomes 0. */
function standardised(rows: readonly BinomialRow[], width: number) {
  const n = rows.reduce((sum, row) => sum + row.n, 0)
  const mean = (of: (row: BinomialRow) => number) => rows.reduce((sum, row) => sum + row.n * of(row), 0) / n
  const middles = Array.from({length: width}, (_, place) => mean(({x}) => x[place] ?? 0))
  const spreads = middles.map((middle, place) => Math.sqrt(mean(({x}) => ((x[place] ?? 0) - middle) ** 2)))
  const sizes = spreads.map((spread, place) => (spread > 1e-12 * Math.abs(middles[place] ?? 0) ? spread : 0))
  const scaled: LogitRow[] = rows.map(({k, n: of, x}) => ({k, n: of, x: [1, ...x.map((value, place) => ((sizes[place] ?? 0) > 0 ? (value - (middles[place] ?? 0)) / (sizes[place] ?? 1) : 0))]}))
  return {middles, sizes, scaled}
}

/** X² of the sums of rows of one name, φ by them, how many names there are, and what is left of them: degrees of freedom where they count by their size. */
function spreadOf(rows: readonly LogitRow[], names: readonly string[], fit: LogitFit) {
  const sums = new Map<string, {left: number; variance: number; eggs: number; x: number[]}>()
  rows.forEach(({k, n, x}, place) => {
    const share = fit.shares[place] ?? 0, name = names[place] ?? '', variance = n * share * (1 - share), own = sums.get(name) ?? {left: 0, variance: 0, eggs: 0, x: x.map(() => 0)}
    sums.set(name, {left: own.left + k - n * share, variance: own.variance + variance, eggs: own.eggs + n, x: own.x.map((value, column) => value + variance * (x[column] ?? 0))})
  })
  let squares = 0, freedom = 0, lefts = 0, room = 0, squared = 0
  for (const {left, variance, eggs, x} of sums.values()) {
    if (!(variance > 0)) continue
    squares += left ** 2 / variance
    const free = 1 - x.reduce((sum, value, i) => sum + value * x.reduce((part, other, j) => part + other * (fit.inverse[i]?.[j] ?? 0), 0), 0) / variance
    freedom += free
    lefts += eggs * left ** 2 / variance
    room += free * eggs
    squared += free * eggs ** 2
  }
  return {squares, extra: freedom > 0 && room > 0 ? Math.max(squares / freedom, lefts / room) : 1, freedom: squared > 0 ? room ** 2 / squared : 0, groups: sums.size}
}

function singleSpread(rows: readonly LogitRow[], fit: LogitFit): number {
  const squares = rows.reduce((sum, {k, n}, place) => {
    const share = fit.shares[place] ?? 0, variance = n * share * (1 - share)
    return variance > 0 ? sum + (k - n * share) ** 2 / variance : sum
  }, 0)
  return squares / (rows.length - (rows[0]?.x.length ?? 0))
}

/** Rows whose columns are the same made one, since only their sums bear on a fit; and where each row has gone. */
function alikeTogether(rows: readonly LogitRow[]): {readonly alike: readonly LogitRow[]; readonly rowOf: readonly number[]} {
  const places = new Map<string, number>(), alike: {k: number; n: number; x: readonly number[]}[] = []
  const rowOf = rows.map(({k, n, x}) => {
    const key = x.join(' '), known = places.get(key), place = known ?? alike.length, before = alike[place]
    if (known === undefined) places.set(key, place)
    alike[place] = {k: k + (before?.k ?? 0), n: n + (before?.n ?? 0), x}
    return place
  })
  return {alike, rowOf}
}

/** As near to the limit as anyone reads, in parts of the way to it. */
const NEAR = 1e-9

/**
 * Where the profile reaches the limit: the root of its square root, which is all but a straight line, less `enough`. From the best value by steps doubled until beyond, then between the
 * two by the false position, halving the side that stands still (Dowell & Jarratt 1971, from memory), or the way where there was no fit.
 */
function limit(from: number, step: number, far: (at: number) => number | null, enough: number): number | null {
  const beyond = (at: number): number => {
    const found = far(at)
    return found === null ? Infinity : Math.sqrt(found) - enough
  }
  let inside = from, outside = from + step, below = -enough, above = beyond(outside)
  for (let doubling = 0; above < 0; doubling++) {
    if (doubling > 12) return null
    inside = outside
    below = above
    outside = from + step * 2 ** (doubling + 1)
    above = beyond(outside)
  }
  for (let tries = 0, stood = 0; tries < 100 && Math.abs(outside - inside) > NEAR * Math.abs(step); tries++) {
    const middle = above === Infinity ? (inside + outside) / 2 : (inside * above - outside * below) / (above - below), found = beyond(middle)
    if (Math.abs(found) <= NEAR * enough) return middle
    if (found < 0) {
      inside = middle
      below = found
      if (stood < 0 && above < Infinity) above /= 2
      stood = -1
    } else {
      outside = middle
      above = found
      if (stood > 0) below /= 2
      stood = 1
    }
  }
  return (inside + outside) / 2
}
