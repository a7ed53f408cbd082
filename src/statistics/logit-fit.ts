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

/** Newton's own steps settle in ten or so; with the penalty, whose own curvature is left aside, they creep where few rows part failures from successes. */
const MOST_STEPS = {plain: 40, penalised: 5000}
const LONGEST_STEP = 4
const CLOSE = 1e-9

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
 * @returns the fit; null when the steps do not settle, as where data separate and there is no penalty
 * @see McCullagh & Nelder 1989, Generalized Linear Models, ch. 4. Firth 1993, Biometrika 80:27–38. Heinze & Schemper 2002, Stat. Med. 21:2409–2419. All from memory.
 * @example logitFit([{k: 3, n: 10, x: [1]}], {penalised: true})?.shares  // (3 + ½)/(10 + 1) = 0.3182
 */
export function logitFit(rows: readonly LogitRow[], options: LogitOptions): LogitFit | null {
  const {penalised, fixed, start = []} = options
  const count = rows[0]?.x.length ?? 0
  const free = Array.from({length: count}, (_, place) => place).filter(place => place !== fixed?.place)
  let at = stateAt(rows, Array.from({length: count}, (_, place) => (place === fixed?.place ? fixed.value : start[place] ?? 0)), penalised)
  for (let step = 0; at !== null && step < (penalised ? MOST_STEPS.penalised : MOST_STEPS.plain); step++) {
    const move = newtonStep(rows, at, free, penalised)
    if (move === null) return null
    const longest = move.reduce((most, value) => Math.max(most, Math.abs(value)), 0)
    if (longest < CLOSE) return at
    let part = Math.min(1, LONGEST_STEP / longest), next: LogitFit | null = null
    for (let halving = 0; halving < 30; halving++, part /= 2) {
      const tried = at.coefficients.map((value, place) => value + part * (move[free.indexOf(place)] ?? 0))
      next = stateAt(rows, tried, penalised)
      if (next !== null && next.logLikelihood >= at.logLikelihood - 1e-12 * Math.abs(at.logLikelihood)) break
    }
    if (next === null) return null
    at = next
  }
  return null
}

function stateAt(rows: readonly LogitRow[], coefficients: readonly number[], penalised: boolean): LogitFit | null {
  const count = coefficients.length
  const information = coefficients.map(() => new Float64Array(count))
  let logLikelihood = 0
  const shares = rows.map(({k, n, x}) => {
    const eta = x.reduce((sum, value, place) => sum + value * (coefficients[place] ?? 0), 0)
    // log(1 + e^−|η|), which neither overflows nor cancels
    const soft = Math.log1p(Math.exp(-Math.abs(eta)))
    logLikelihood -= k * (soft + Math.max(0, -eta)) + (n - k) * (soft + Math.max(0, eta))
    const share = 1 / (1 + Math.exp(-eta)), weight = (n * Math.exp(-Math.abs(eta))) / (1 + Math.exp(-Math.abs(eta))) ** 2
    for (let i = 0; i < count; i++) {
      const row = information[i]
      if (row) for (let j = 0; j <= i; j++) row[j] = (row[j] ?? 0) + weight * (x[i] ?? 0) * (x[j] ?? 0)
    }
    return share
  })
  const root = choleskyRoot(information)
  if (root === null) return null
  if (penalised) logLikelihood += root.reduce((sum, row, place) => sum + Math.log(row[place] ?? 0), 0)
  return Number.isFinite(logLikelihood) ? {coefficients, shares, logLikelihood, inverse: inverseOf(root)} : null
}

function newtonStep(rows: readonly LogitRow[], at: LogitFit, free: readonly number[], penalised: boolean): number[] | null {
  const score = at.coefficients.map(() => 0), information = free.map(() => new Float64Array(free.length))
  rows.forEach(({k, n, x}, index) => {
    const share = at.shares[index] ?? 0
    let left = k - n * share, weight = n * share * (1 - share)
    if (penalised) {
      // the penalty acts as half a success and half a failure more, times the row's leverage
      const leverage = weight * x.reduce((sum, value, i) => sum + value * (at.inverse[i] ?? []).reduce((part, entry, j) => part + entry * (x[j] ?? 0), 0), 0)
      left += leverage * (0.5 - share)
      weight += leverage * share * (1 - share)
    }
    x.forEach((value, place) => { score[place] = (score[place] ?? 0) + left * value })
    free.forEach((place, i) => {
      const row = information[i]
      if (row) for (let j = 0; j <= i; j++) row[j] = (row[j] ?? 0) + weight * (x[place] ?? 0) * (x[free[j] ?? 0] ?? 0)
    })
  })
  const root = choleskyRoot(information)
  if (root === null) return null
  const inverse = inverseOf(root)
  return free.map((_, i) => free.reduce((sum, place, j) => sum + (inverse[i]?.[j] ?? 0) * (score[place] ?? 0), 0))
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
