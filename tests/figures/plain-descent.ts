/** The twin's births: who may be whose parents, which step that makes, and which share of each strain. */
import {plain, recordsOf, wholeDay, type Plain} from './plain-reading.ts'

export interface PlainPair {
  readonly sire: string | null
  readonly dam: string | null
  readonly chance: number
}

/** A banded bird, or a tally of `count` chicks. */
export interface PlainChicks {
  readonly name: string
  readonly count: number
  readonly fields: {[key: string]: Plain}
  readonly hatch: string | null
  readonly hatched: number | null
  readonly hatchedText: string | null
  readonly strain: string | null
  readonly pairs: readonly PlainPair[]
}

export interface PlainBook {
  readonly birds: ReadonlyMap<string, PlainChicks>
  readonly tallies: readonly PlainChicks[]
  readonly hatches: ReadonlyMap<string, {[key: string]: Plain}>
  /** what is known of a chick of a hatch of which nothing more is known */
  readonly hatchPairs: ReadonlyMap<string, readonly PlainPair[]>
  readonly recurrent: string
}

const SPERM_STORE_DAYS = 21

type Chances = readonly {readonly who: string | null; readonly chance: number}[]

/** `22-004`, `[a, b]`, `{a: 50%, b: 50%}`, `unknown`. */
function statedParent(value: Plain | undefined): Chances | null {
  if (value === undefined) return null
  if (typeof value === 'string') return [{who: value === 'unknown' ? null : value, chance: 1}]
  if (Array.isArray(value)) return value.map(one => ({who: plain.text(one), chance: 1 / value.length}))
  return Object.entries(value).map(([who, chance]) => ({who, chance: Number(String(chance).replace('%', '')) / (String(chance).endsWith('%') ? 100 : 1)}))
}

function possibleMales(pen: {[key: string]: Plain}, laid: string | null): Chances {
  if (!Array.isArray(pen.males)) return statedParent(pen.males) ?? []
  const [first, last] = (laid ?? '').split('..').map(wholeDay)
  const there = pen.males.filter(male => {
    const from = wholeDay(plain.text(plain.map(male).from))
    const to = wholeDay(plain.text(plain.map(male).to))
    if (first === null || first === undefined || last === null || last === undefined) return true
    return (from === null || from <= last) && (to === null || to + SPERM_STORE_DAYS >= first)
  })
  return there.map(male => ({who: plain.text(male) ?? plain.text(plain.map(male).band), chance: 1 / there.length}))
}

/** The pairs of a chick: its own words first, else those of its pen or, weighed by their eggs, of the pens of its setting. */
function pairsOf(chick: {[key: string]: Plain}, hatch: {[key: string]: Plain} | null, pens: ReadonlyMap<string, {[key: string]: Plain}>): PlainPair[] {
  const [sire, dam] = [statedParent(chick.sire), statedParent(chick.dam)]
  const sources = hatch === null ? [] : plain.text(chick.pen) !== null
    ? [{pen: plain.text(chick.pen) ?? '', chance: 1}]
    : typeof hatch.pen === 'string'
      ? [{pen: hatch.pen, chance: 1}]
      : Object.entries(plain.map(hatch.pen)).map(([pen, eggs], _, all) => ({
          pen, chance: parseInt(String(eggs), 10) / all.reduce((sum, [, other]) => sum + parseInt(String(other), 10), 0),
        }))
  // a hen that is known tells the pen
  const holding = sources.filter(({pen}) => plain.list(pens.get(pen)?.females).some(female => female === chick.dam))
  const possible = holding.length > 0 ? holding : sources
  const sum = possible.reduce((all, {chance}) => all + chance, 0)
  const byPen = possible.length > 0
    ? possible.map(({pen, chance: weight}) => {
        const chance = weight / sum
        const record = pens.get(pen) ?? {}
        const females = plain.list(record.females).map(plain.text)
        return {chance, sires: possibleMales(record, plain.text(hatch?.laid)), dams: females.map(who => ({who, chance: 1 / females.length}))}
      })
    : [{chance: 1, sires: [{who: null, chance: 1}], dams: [{who: null, chance: 1}]}]
  return byPen.flatMap(source => (sire ?? source.sires).flatMap(male => (dam ?? source.dams).map(female => ({
    sire: male.who, dam: female.who, chance: source.chance * male.chance * female.chance,
  }))))
}

export function readPlainBook(files: ReadonlyMap<string, string>): PlainBook {
  const pens = recordsOf(files, 'pens')
  const hatches = recordsOf(files, 'hatches')
  const own = recordsOf(files, 'birds')
  const birds = new Map<string, PlainChicks>()
  const tallies: PlainChicks[] = []
  const hatchPairs = new Map<string, readonly PlainPair[]>()
  const outOf = [...own.values()].map(record => plain.map(record['out-of'])).filter(record => 'hatch' in record)

  for (const [id, hatch] of hatches) {
    const on = plain.text(hatch.on)
    const strain = plain.text(hatch.strain)
    const pairs = (fields: {[key: string]: Plain}) => (strain === null ? pairsOf(fields, hatch, pens) : [])
    hatchPairs.set(id, pairs({}))
    const same = {hatch: id, hatched: wholeDay(on), hatchedText: on, strain}
    for (const line of plain.list(hatch.chicks).map(plain.map)) {
      const band = plain.text(line.band) ?? ''
      const fields = {...line, ...own.get(band)}
      birds.set(band, {...same, name: band, count: 1, fields, pairs: pairs(fields)})
    }
    for (const line of plain.list(hatch.tallies).map(plain.map)) {
      const taken = outOf.filter(from => from.hatch === id && from.mark === line.mark).length
      tallies.push({...same, name: `${id} ${plain.text(line.mark) ?? ''}`, count: Number(line.chicks) - taken, fields: line, pairs: pairs(line)})
    }
  }
  for (const [name, record] of own) {
    const band = plain.text(record.band) ?? name
    if (birds.has(band)) continue
    const source = plain.map(record['out-of'])
    const from = tallies.find(tally => tally.hatch === source.hatch && tally.fields.mark === source.mark)
    if (from !== undefined) {
      const looks = Object.fromEntries(Object.entries(from.fields).filter(([key]) => key !== 'chicks' && key !== 'left'))
      const fields: {[key: string]: Plain} = {...looks, ...record}
      birds.set(band, {...from, name: band, count: 1, fields, pairs: pairsOf(fields, hatches.get(from.hatch ?? '') ?? null, pens)})
      continue
    }
    const hatched = plain.text(record.hatched)
    const strain = plain.text(record.strain)
    birds.set(band, {
      name: band, count: 1, fields: record, hatch: null, hatched: wholeDay(hatched), hatchedText: hatched, strain,
      pairs: strain === null ? pairsOf(record, null, pens) : [],
    })
  }
  const project = plain.map(recordsOf(new Map([['x/project.md', files.get('project.md') ?? '']]), 'x').get('project'))
  return {birds, tallies, hatches, hatchPairs, recurrent: plain.text(plain.map(project.strains).recurrent) ?? ''}
}

/** A step as the twin knows it; `generation` counts F1, F2 …, and a BCn itself is the first of its inter se generations. */
type PlainStep =
  | {readonly kind: 'strain'; readonly strain: string}
  | {readonly kind: 'F'; readonly strains: readonly string[]; readonly generation: number}
  | {readonly kind: 'BC'; readonly strains: readonly string[]; readonly to: string; readonly times: number; readonly generation: number}
  | {readonly kind: 'mixed'}

const MIXED: PlainStep = {kind: 'mixed'}
const sameStrains = (a: readonly string[], b: readonly string[]) => [...a].sort().join() === [...b].sort().join()

/** The step of a cross of two birds. */
function crossed(a: PlainStep, b: PlainStep): PlainStep {
  if (a.kind === 'strain' && b.kind === 'strain') {
    return a.strain === b.strain ? a : {kind: 'F', strains: [a.strain, b.strain].sort(), generation: 1}
  }
  if (a.kind === 'strain') return crossed(b, a)
  if (a.kind === 'F' && b.kind === 'F' && sameStrains(a.strains, b.strains)) {
    return {kind: 'F', strains: a.strains, generation: 1 + Math.min(a.generation, b.generation)}
  }
  if (a.kind === 'F' && b.kind === 'strain' && a.strains.includes(b.strain)) {
    return {kind: 'BC', strains: a.strains, to: b.strain, times: 1, generation: 1}
  }
  if (a.kind === 'BC' && b.kind === 'strain' && a.to === b.strain) return {...a, times: a.times + 1, generation: 1}
  if (a.kind === 'BC' && b.kind === 'BC' && a.to === b.to && a.times === b.times && sameStrains(a.strains, b.strains)) {
    return {...a, generation: 1 + Math.min(a.generation, b.generation)}
  }
  return MIXED
}

function label(step: PlainStep, recurrent: string): string {
  if (step.kind === 'F') return `F${step.generation}`
  if (step.kind !== 'BC') return step.kind
  return `BC${step.times}${step.generation > 1 ? `F${step.generation}` : ''}${step.to === recurrent ? '' : ` to ${step.to}`}`
}

export interface Descent {
  step(chicks: PlainChicks): string
  hatchStep(id: string): string
  shares(chicks: PlainChicks): Map<string, number>
}

/** Goes up to the founders anew for every question it has not been asked before. */
export function descent(book: PlainBook): Descent {
  const steps = new Map<string, PlainStep>()
  const shares = new Map<string, Map<string, number>>()
  const ofPairs = (pairs: readonly PlainPair[]): PlainStep => {
    const possible = pairs.filter(pair => pair.chance > 0).map(({sire, dam}) => {
      const [a, b] = [sire, dam].map(who => (who === null ? undefined : book.birds.get(who)))
      return a === undefined || b === undefined ? MIXED : crossed(stepOf(a), stepOf(b))
    })
    const labels = new Set(possible.map(step => label(step, book.recurrent)))
    return labels.size === 1 ? possible[0] ?? MIXED : MIXED
  }
  const stepOf = (chicks: PlainChicks): PlainStep => {
    const known = steps.get(chicks.name)
    if (known !== undefined) return known
    const step: PlainStep = chicks.strain === null ? ofPairs(chicks.pairs) : {kind: 'strain', strain: chicks.strain}
    steps.set(chicks.name, step)
    return step
  }
  const sharesOf = (chicks: PlainChicks): Map<string, number> => {
    if (chicks.strain !== null) return new Map([[chicks.strain, 1]])
    const known = shares.get(chicks.name)
    if (known !== undefined) return known
    const sum = new Map<string, number>()
    for (const pair of chicks.pairs) {
      for (const who of [pair.sire, pair.dam]) {
        const parent = who === null ? undefined : book.birds.get(who)
        if (parent === undefined) continue
        for (const [strain, share] of sharesOf(parent)) sum.set(strain, (sum.get(strain) ?? 0) + (pair.chance * share) / 2)
      }
    }
    shares.set(chicks.name, sum)
    return sum
  }
  return {
    step: chicks => label(stepOf(chicks), book.recurrent),
    hatchStep: id => {
      const strain = plain.text(book.hatches.get(id)?.strain)
      return strain === null ? label(ofPairs(book.hatchPairs.get(id) ?? []), book.recurrent) : 'strain'
    },
    shares: sharesOf,
  }
}
