/** So many of so many, with what may bear on it. */
export interface LogitRow {
  /** whole, 0 to n */
  readonly k: number
  /** whole, 1 or more */
  readonly n: number
  /** the columns' values, best of mean 0 and of a size near 1; the first 1 for the level */
  readonly x: readonly number[]
}

/** A fit of shares on columns. */
export interface LogitFit {
  readonly coefficients: readonly number[]
  /** expected share of each row, between 0 and 1 */
  readonly shares: readonly number[]
  /** logarithm of the likelihood, but for the binomial coefficients; with the penalty where there is one */
  readonly logLikelihood: number
  /** inverse of the information XᵀWX, row by row */
  readonly inverse: readonly (readonly number[])[]
}

/** How a fit is sought. */
export interface LogitOptions {
  readonly penalised: boolean
  readonly fixed?: {readonly place: number; readonly value: number}
  readonly start?: readonly number[]
}

/** Newton's own steps settle in ten or so; with the penalty, whose own curvature is left aside, they would creep where few rows part failures from successes, and are lengthened. */
const MOST_STEPS = {plain: 40, penalised: 2000}
const LONGEST_STEP = 4
const CLOSE = 1e-9
const FLAT = 1e-9
/** of a column of a size near 1, where likelihoods hang on differences of rounding */
const AS_CLOSE_AS_MAY_BE = 1e-3
/** Steps that shrink no faster than this are lengthened by what they leave undone; as a rate nearer to 1 would throw them too far. */
const CREEPING = {from: 0.2, to: 0.98}

/**
 * Which coefficients make the counts most likely, when the logit of the share is a mixture of columns?
 *
 *     logit π = X·b        log L = Σ k·log π + (n − k)·log(1 − π)        penalised: + ½ log |XᵀWX|, W = n·π(1 − π)
 *
 * By Newton's steps, each halved until it gains. The penalty takes off the first-order bias of b and keeps it finite where the columns part failures
 * from successes altogether; without it such data have no most likely b.
 *
 * @param rows counts and columns; the columns must not depend on each other
 * @param options `penalised`: with Firth's penalty · `fixed`: a coefficient that is held, for a profile · `start`: where to begin, default 0 for all
 * @returns the fit; null when the steps do not settle, as where data separate and there is no penalty. With a coefficient held it is enough that the likelihood settles
 * @see McCullagh & Nelder 1989, Generalized Linear Models, ch. 4. Firth 1993, Biometrika 80:27–38. Heinze & Schemper 2002, Stat. Med. 21:2409–2419. All from memory.
 * @example logitFit([{k: 3, n: 10, x: [1]}], {penalised: true})?.shares  // (3 + ½)/(10 + 1) = 0.3182
 */
export function logitFit(rows: readonly LogitRow[], options: LogitOptions): LogitFit | null {
  return logitFits(rows)(options)
}

/** The same rows fitted again and again, as a profile asks: they are laid out once. */
export function logitFits(rows: readonly LogitRow[]): (options: LogitOptions) => LogitFit | null {
  const laid = layOut(rows)
  return ({penalised, fixed, start = []}) => {
    const {count} = laid, free = Array.from({length: count}, (_, place) => place).filter(place => place !== fixed?.place)
    let at = stateAt(laid, Float64Array.from({length: count}, (_, place) => (place === fixed?.place ? fixed.value : start[place] ?? 0)), penalised), before = 0, gain = Infinity
    for (let step = 0; at !== null && step < (penalised ? MOST_STEPS.penalised : MOST_STEPS.plain); step++) {
      const move = newtonStep(laid, at, free, penalised)
      if (move === null) return null
      const longest = move.reduce((most, value) => Math.max(most, Math.abs(value)), 0)
      if (longest < CLOSE) return fitOf(at)
      const rate = before > 0 ? longest / before : 0, lengthened = penalised && rate > CREEPING.from && rate < 1 ? 1 / (1 - Math.min(rate, CREEPING.to)) : 1
      before = lengthened > 1 ? 0 : longest
      const next = gaining(laid, at, move, free, Math.min(lengthened, LONGEST_STEP / longest), penalised)
      if (next === null) return null
      gain = next.logLikelihood - at.logLikelihood
      // where a small step gains nothing, rounding is all that is left
      if (gain <= 0 && longest < AS_CLOSE_AS_MAY_BE) return fitOf(next)
      at = next
    }
    // a profile may be likeliest with another coefficient without end: its height is known all the same
    return at !== null && fixed && Math.abs(gain) < FLAT ? fitOf(at) : null
  }
}

/** The counts and columns, row after row in one array each. */
interface LaidOut {
  readonly count: number
  readonly successes: Float64Array
  readonly totals: Float64Array
  readonly columns: Float64Array
}

interface State {
  readonly coefficients: Float64Array
  readonly shares: Float64Array
  /** 1 less the share, without the rounding of a share near 1 */
  readonly rests: Float64Array
  readonly logLikelihood: number
  /** XᵀWX, the lower half */
  readonly information: readonly Float64Array[]
  /** its root; worked for the penalty, and at the end */
  readonly root: readonly Float64Array[] | null
}

function layOut(rows: readonly LogitRow[]): LaidOut {
  const count = rows[0]?.x.length ?? 0, columns = new Float64Array(rows.length * count)
  rows.forEach(({x}, row) => { columns.set(x, row * count) })
  return {count, columns, successes: Float64Array.from(rows, ({k}) => k), totals: Float64Array.from(rows, ({n}) => n)}
}

/** The farthest of the step, its half, its quarter … that gains; null where none does. */
function gaining(laid: LaidOut, at: State, move: Float64Array, free: readonly number[], whole: number, penalised: boolean): State | null {
  const least = at.logLikelihood - 1e-12 * Math.abs(at.logLikelihood)
  for (let halving = 0, part = whole; halving < 30; halving++, part /= 2) {
    const tried = at.coefficients.slice()
    free.forEach((place, index) => { tried[place] = (tried[place] ?? 0) + part * (move[index] ?? 0) })
    const next = stateAt(laid, tried, penalised)
    if (next !== null && next.logLikelihood >= least) return next
  }
  return null
}

function stateAt({count, successes, totals, columns}: LaidOut, coefficients: Float64Array, penalised: boolean): State | null {
  const shares = new Float64Array(totals.length), rests = new Float64Array(totals.length), information = Array.from({length: count}, () => new Float64Array(count))
  let logLikelihood = 0
  for (let row = 0, first = 0; row < totals.length; row++, first += count) {
    const k = successes[row] ?? 0, n = totals[row] ?? 0
    let eta = 0
    for (let place = 0; place < count; place++) eta += (columns[first + place] ?? 0) * (coefficients[place] ?? 0)
    // log(1 + e^−|η|), which neither overflows nor cancels
    const small = Math.exp(-Math.abs(eta)), soft = Math.log1p(small)
    logLikelihood -= k * (soft + Math.max(0, -eta)) + (n - k) * (soft + Math.max(0, eta))
    shares[row] = (eta < 0 ? small : 1) / (1 + small)
    rests[row] = (eta < 0 ? 1 : small) / (1 + small)
    addSquare(information, columns, first, (n * small) / (1 + small) ** 2)
  }
  const root = penalised ? choleskyRoot(information) : null
  if (penalised && root === null) return null
  if (root) logLikelihood += root.reduce((sum, row, place) => sum + Math.log(row[place] ?? 0), 0)
  return Number.isFinite(logLikelihood) ? {coefficients, shares, rests, logLikelihood, information, root} : null
}

/** Adds weight·x·xᵀ of one row to the lower half of a matrix. */
function addSquare(matrix: readonly Float64Array[], columns: Float64Array, first: number, weight: number): void {
  for (let i = 0; i < matrix.length; i++) {
    const line = matrix[i], own = weight * (columns[first + i] ?? 0)
    if (line && own !== 0) for (let j = 0; j <= i; j++) line[j] = (line[j] ?? 0) + own * (columns[first + j] ?? 0)
  }
}

function fitOf({coefficients, shares, logLikelihood, information, root}: State): LogitFit | null {
  const found = root ?? choleskyRoot(information)
  return found === null ? null : {coefficients: [...coefficients], shares: [...shares], logLikelihood, inverse: inverseOf(found)}
}

function newtonStep(laid: LaidOut, at: State, free: readonly number[], penalised: boolean): Float64Array | null {
  const {count, successes, totals, columns} = laid, score = new Float64Array(count), information = penalised ? at.information.map(row => row.slice()) : at.information
  for (let row = 0, first = 0; row < totals.length; row++, first += count) {
    const k = successes[row] ?? 0, n = totals[row] ?? 0, share = at.shares[row] ?? 0, rest = at.rests[row] ?? 0
    let left = k * rest - (n - k) * share
    if (at.root) {
      // the penalty acts as half a success and half a failure more, times the row's leverage
      const leverage = n * share * rest * squareOf(at.root, columns, first)
      left += leverage * (0.5 - share)
      addSquare(information, columns, first, leverage * share * rest)
    }
    for (let place = 0; place < count; place++) score[place] = (score[place] ?? 0) + left * (columns[first + place] ?? 0)
  }
  const own = free.length === count ? information : free.map(i => Float64Array.from(free, j => information[Math.max(i, j)]?.[Math.min(i, j)] ?? 0)), root = choleskyRoot(own)
  return root && solved(root, Float64Array.from(free, place => score[place] ?? 0))
}

/** xᵀ(LLᵀ)⁻¹x = |L⁻¹x|² of one row. */
function squareOf(root: readonly Float64Array[], columns: Float64Array, first: number): number {
  const half = new Float64Array(root.length)
  let square = 0
  for (let i = 0; i < root.length; i++) {
    const row = root[i]
    let left = columns[first + i] ?? 0
    for (let j = 0; j < i; j++) left -= (row?.[j] ?? 0) * (half[j] ?? 0)
    half[i] = left / (row?.[i] ?? 1)
    square += (half[i] ?? 0) ** 2
  }
  return square
}

/** (LLᵀ)⁻¹ times a column. */
function solved(root: readonly Float64Array[], column: Float64Array): Float64Array {
  const found = column.slice()
  for (let i = 0; i < root.length; i++) {
    for (let j = 0; j < i; j++) found[i] = (found[i] ?? 0) - (root[i]?.[j] ?? 0) * (found[j] ?? 0)
    found[i] = (found[i] ?? 0) / (root[i]?.[i] ?? 1)
  }
  for (let i = root.length - 1; i >= 0; i--) {
    for (let j = i + 1; j < root.length; j++) found[i] = (found[i] ?? 0) - (root[j]?.[i] ?? 0) * (found[j] ?? 0)
    found[i] = (found[i] ?? 0) / (root[i]?.[i] ?? 1)
  }
  return found
}

/** L with L·Lᵀ the matrix whose lower half is given; null when it is not positive definite. */
function choleskyRoot(lower: readonly Float64Array[]): Float64Array[] | null {
  const root = lower.map(row => row.slice())
  for (let i = 0; i < root.length; i++) {
    for (let j = 0; j <= i; j++) {
      let left = lower[i]?.[j] ?? 0
      for (let k = 0; k < j; k++) left -= (root[i]?.[k] ?? 0) * (root[j]?.[k] ?? 0)
      if (i === j && !(left > 1e-13 * (lower[i]?.[i] ?? 0))) return null
      root[i]?.set([i === j ? Math.sqrt(left) : left / (root[j]?.[j] ?? 1)], j)
    }
  }
  return root
}

function inverseOf(root: readonly Float64Array[]): number[][] {
  // L⁻¹ row by row, then its product with itself
  const half = root.map(() => root.map(() => 0))
  root.forEach((row, i) => {
    for (let j = 0; j <= i; j++) {
      let left = i === j ? 1 : 0
      for (let k = j; k < i; k++) left -= (row[k] ?? 0) * (half[k]?.[j] ?? 0)
      half[i]?.splice(j, 1, left / (row[i] ?? 1))
    }
  })
  return root.map((_, i) => root.map((_unused, j) => half.reduce((sum, line) => sum + (line[i] ?? 0) * (line[j] ?? 0), 0)))
}
