/** The twin's figures, as rows of text and numbers like those of `figures … --format csv`. */
import {plainInbreeding} from './plain-inbreeding.ts'
import {descent, readPlainBook, type PlainChicks} from './plain-descent.ts'
import {daysIn, plain, recordsOf, rowsOf, wholeDay, type Plain} from './plain-reading.ts'

export type Row = Readonly<Record<string, string | number | null>>

/** Both limits of the score test: the roots p of (k/n − p)² = z²·p(1 − p)/n, found by halving. */
export function scoreLimits(k: number, n: number): {low: number; high: number} {
  const z = 1.959963984540054 // 97.5 % point of the normal distribution, the value every table gives to these digits
  const off = (p: number) => (k / n - p) ** 2 - (z ** 2 * p * (1 - p)) / n
  const root = (inner: number, outer: number) => {
    let [inside, outside] = [inner, outer]
    for (let i = 0; i < 200; i++) {
      const middle = (inside + outside) / 2
      if (off(middle) <= 0) inside = middle
      else outside = middle
    }
    return inside
  }
  return {low: k === 0 ? 0 : root(k / n, 0), high: k === n ? 1 : root(k / n, 1)}
}

const shareOf = (k: number | null, n: number | null, name: string): Row => {
  if (k === null || n === null || n === 0) return {[name]: null, [`${name}_low`]: null, [`${name}_high`]: null}
  const {low, high} = scoreLimits(k, n)
  return {[name]: k / n, [`${name}_low`]: low, [`${name}_high`]: high}
}

/** The sex last found out. */
function sexOf(fields: {[key: string]: Plain}): string {
  const written = fields.sex
  if (typeof written === 'string') return written
  return plain.text(plain.map(plain.list(written).at(-1)).is) ?? 'unknown'
}

export function plainFigures(files: ReadonlyMap<string, string>) {
  const book = readPlainBook(files)
  const from = descent(book)
  const penRecords = recordsOf(files, 'pens')
  const traits = [...recordsOf(files, 'traits')]
  const scoreRows = rowsOf(files, 'scores')
  const weighRows = rowsOf(files, 'measures').filter(row => 'weight' in row && 'band' in row)
  const birds = [...book.birds.values()]
  const inbred = plainInbreeding(files, book, bird => sexOf(bird.fields))
  const looseRows = rowsOf(files, 'measures').filter(row => 'weight' in row && 'hatch' in row)
  const chicks = [...birds, ...book.tallies].filter(one => from.step(one) !== 'strain')

  /** What counts of all that was seen of a trait: the latest that was not struck and not too early. */
  const lookOf = (one: PlainChicks, id: string, trait: {[key: string]: Plain}): string | null => {
    const seen: {on: number; is: string}[] = []
    const inline = plain.text(one.fields[id])
    if (inline !== null) seen.push({on: -Infinity, is: inline})
    for (const note of plain.list(one.fields.observations).map(plain.map)) {
      const is = plain.text(note[id])
      if (is !== null) seen.push({on: wholeDay(plain.text(note.on)) ?? NaN, is})
    }
    for (const row of scoreRows) {
      if (row.band === one.name && row[id] !== undefined && row[id] !== '' && row.struck === '') seen.push({on: wholeDay(row.on ?? null) ?? NaN, is: row[id]})
    }
    const earliest = typeof trait['scored-from'] === 'string' ? daysIn(trait['scored-from']) : 0
    const counts = seen.filter(score => score.on === -Infinity || one.hatched === null || score.on - one.hatched >= earliest)
    return counts.sort((a, b) => a.on - b.on).at(-1)?.is ?? null
  }

  const shares = (): Row[] => {
    const rows: Row[] = []
    for (const [id, trait] of traits) {
      const states = plain.list(trait.states ?? trait.order).map(plain.text)
      if (states.length === 0) continue
      const looks = chicks.map(one => ({step: from.step(one), sex: sexOf(one.fields), is: lookOf(one, id, trait), count: one.count})).filter(look => look.is !== null)
      for (const step of new Set(looks.map(look => look.step))) {
        for (const sex of ['male', 'female', 'unknown', 'all']) {
          const of = looks.filter(look => look.step === step && (sex === 'all' || look.sex === sex))
          const total = of.reduce((sum, look) => sum + look.count, 0)
          if (total === 0) continue
          for (const state of states) {
            const count = of.filter(look => look.is === state).reduce((sum, look) => sum + look.count, 0)
            const {low, high} = scoreLimits(count, total)
            rows.push({step, trait: id, state, sex, count, total, share: count / total, low, high})
          }
        }
      }
    }
    return rows
  }

  /** Whose a hatch is: as it says itself, else the keeper that all its pens have. */
  const keeperOf = (hatch: {[key: string]: Plain}): string => {
    const pens = typeof hatch.pen === 'string' ? [hatch.pen] : Array.isArray(hatch.pen) ? hatch.pen.map(plain.text) : Object.keys(plain.map(hatch.pen))
    const theirs = new Set(pens.map(pen => plain.text(penRecords.get(pen ?? '')?.keeper) ?? ''))
    return plain.text(hatch.keeper) ?? (theirs.size === 1 ? [...theirs][0] ?? '' : '')
  }

  const spread = (): Row[] => {
    const rows: Row[] = []
    for (const [id, trait] of traits.filter(([, record]) => 'unit' in record)) {
      const [at, window] = [daysIn(plain.text(trait.at) ?? ''), daysIn(plain.text(trait.window) ?? '7 days')]
      const weighed = chicks.flatMap(one => {
        if (one.hatched === null || one.hatch === null) return []
        const due = one.hatched + at
        const near = weighRows.filter(row => row.band === one.name && row.weight !== '')
          .map(row => ({off: (wholeDay(row.on ?? null) ?? NaN) - due, grams: Number((row.weight ?? '').replace(' kg', '')) * ((row.weight ?? '').endsWith('kg') ? 1000 : 1)}))
          .filter(row => Math.abs(row.off) <= window)
          .sort((a, b) => Math.abs(a.off) - Math.abs(b.off) || a.off - b.off)
        const grams = near[0]?.grams
        const hatch = book.hatches.get(one.hatch)
        const rearing = typeof hatch?.machine === 'string' ? `${hatch.machine} ${one.hatchedText ?? ''} ${keeperOf(hatch)}` : one.hatch
        return grams === undefined ? [] : [{step: from.step(one), sex: sexOf(one.fields), rearing, grams}]
      })
      for (const row of looseRows) {
        // birds weighed without bands count with their hatch, on the day nearest to the age
        const hatch = book.hatches.get(row.hatch ?? '') ?? {}
        const due = (wholeDay(plain.text(hatch.on)) ?? NaN) + at
        const off = Math.abs((wholeDay(row.on ?? null) ?? NaN) - due)
        const nearer = looseRows.some(other => other.hatch === row.hatch && other.sex === row.sex && Math.abs((wholeDay(other.on ?? null) ?? NaN) - due) < off)
        if (off > window || nearer) continue
        const rearing = typeof hatch.machine === 'string' ? `${hatch.machine} ${plain.text(hatch.on) ?? ''} ${keeperOf(hatch)}` : row.hatch ?? ''
        weighed.push({step: from.hatchStep(row.hatch ?? ''), sex: row.sex ?? '', rearing, grams: Number(row.weight)})
      }
      for (const step of new Set(weighed.map(one => one.step))) {
        for (const sex of ['male', 'female', 'all']) {
          const classes = new Map<string, number[]>()
          for (const one of weighed) {
            if (one.step !== step || one.sex === 'unknown' || (sex !== 'all' && one.sex !== sex)) continue
            const name = `${one.sex} ${one.rearing}`
            classes.set(name, [...(classes.get(name) ?? []), one.grams])
          }
          const big = [...classes.values()].filter(values => values.length >= 5)
          if (big.length === 0) continue
          const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length
          const variance = (values: readonly number[]) => values.reduce((sum, value) => sum + (value - mean(values)) ** 2, 0) / (values.length - 1)
          const freedom = big.reduce((sum, values) => sum + values.length - 1, 0)
          const all = big.flat()
          rows.push({
            step, trait: id, sex, n: all.length, mean: mean(all),
            sd: Math.sqrt(big.reduce((sum, values) => sum + (values.length - 1) * variance(values), 0) / freedom),
            cv: Math.sqrt(big.reduce((sum, values) => sum + ((values.length - 1) * variance(values)) / mean(values) ** 2, 0) / freedom),
            within10: big.reduce((sum, values) => sum + values.filter(value => Math.abs(value - mean(values)) <= mean(values) / 10).length, 0) / all.length,
          })
        }
      }
    }
    return rows
  }

  const hatches = (): Row[] => [...book.hatches].map(([id, hatch]) => {
    const number = (key: string) => (typeof hatch[key] === 'string' ? Number(hatch[key]) : null)
    const [eggs, clear, hatched] = [number('eggs'), number('clear'), number('hatched')]
    const fertile = eggs === null || clear === null ? null : eggs - clear
    return {
      hatch: id, step: from.hatchStep(id), eggs, fertile, hatched,
      ...shareOf(fertile, eggs, 'fertility'), ...shareOf(hatched, fertile, 'hatch_of_fertile'), ...shareOf(hatched, eggs, 'hatch_of_set'),
    }
  })

  return {
    shares, spread, hatches,
    birds: (): Row[] => birds.map(bird => ({band: bird.name, sex: sexOf(bird.fields), step: from.step(bird), hatched: bird.hatchedText, ...inbred(bird)})),
    strains: () => birds.map(bird => ({band: bird.name, step: from.step(bird), shares: from.shares(bird)})),
    pairs: () => new Map(birds.map(bird => [bird.name, bird.pairs])),
  }
}
