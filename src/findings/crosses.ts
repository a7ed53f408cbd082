import type {Logbook, Step, Strain, Trait} from '../logbook/book.ts'
import {heterosis, type Heterosis} from '../statistics/heterosis.ts'
import {lineOf, lineValues, meansOfLines, type LineValue, type MeansOfLines} from './contemporaries.ts'
import {grouped} from './grouped.ts'

/** A strain, or a step that is mated as a line. */
export interface Line {
  /** as `lineOf` has it */
  readonly key: string
  readonly strain: Strain | null
  /** label of the step; null for a strain */
  readonly step: string | null
}

/** How far the chicks of two lines stand above the mean of both, in one measured trait. */
export interface CrossOfLines {
  /** by key, steps before strains: whose sires they were stands in neither */
  readonly lines: readonly [Line, Line]
  readonly trait: Trait
  /** labels of the steps its chicks are of */
  readonly steps: readonly string[]
  /** null: no class holds birds of all three, one of them has a single bird a class, or nobody differs */
  readonly found: Heterosis | null
  /** birds in classes that hold all three, else measured at all */
  readonly birds: {readonly cross: number; readonly one: number; readonly other: number}
  readonly classes: number
  /** null where no class holds all three */
  readonly families: Pick<MeansOfLines, 'families' | 'speaksOf'> | null
}

const sameStrains = (one: Step, other: Step): boolean => one.strains.length === other.strains.length && one.strains.every(strain => other.strains.includes(strain))

/** Two strains; a step and a strain that has no part in it; two steps of other strains, or that the keeper gave names of their own. A backcross is none, nor two generations of one line. */
function areLines(one: Step, other: Step): boolean {
  if (one.kind === 'mixed' || other.kind === 'mixed') return false
  if (one.kind === 'strain' && other.kind === 'strain') return one.strains[0] !== other.strains[0]
  if (one.kind === 'strain' || other.kind === 'strain') {
    const [strain, step] = one.kind === 'strain' ? [one, other] : [other, one]
    return !strain.strains.some(each => step.strains.includes(each))
  }
  return one.kind === 'named' && other.kind === 'named' ? one.label !== other.label : !sameStrains(one, other)
}

const asLine = (step: Step): Line => ({key: lineOf({step}), strain: step.kind === 'strain' ? step.strains[0] ?? null : null, step: step.kind === 'strain' ? null : step.label})

/** The two lines a bird is the first cross of; null where it is none, or may be another. */
function linesOf({bird}: LineValue): readonly [Line, Line] | null {
  const pairs = bird?.parentage.pairs ?? []
  const found = pairs.map(({sire, dam}) => (sire && dam && areLines(sire.step, dam.step) ? [asLine(sire.step), asLine(dam.step)].sort((a, b) => (a.key < b.key ? -1 : 1)) : null))
  const [first] = found, [a, b] = first ?? []
  return a && b && found.every(each => each?.[0]?.key === a.key && each[1]?.key === b.key) ? [a, b] : null
}

/**
 * Are chicks of two lines better than the mean of both?
 *
 *     H = (cross − mid-parent)/mid-parent
 *
 * of the cross and of chicks of either line reared together, sexes apart. Both ways of mating count as one cross. Half of it is to be expected in the next generation.
 *
 * @see `heterosis`, `contemporaryMeans`
 */
export function crosses(book: Logbook): readonly CrossOfLines[] {
  return book.traits.filter(({kind}) => kind === 'measured').flatMap(trait => {
    const values = lineValues(book, trait)
    const crossed = values.flatMap(value => {
      const lines = linesOf(value)
      return lines ? [{value, lines, key: lines.map(({key}) => key).join(' × ')}] : []
    })
    return [...grouped(crossed, ({key}) => key)].sort(([a], [b]) => (a < b ? -1 : 1)).flatMap(([key, own]): CrossOfLines[] => {
      const [first] = own
      if (!first) return []
      const [a, b] = first.lines, these = new Set(own.map(({value}) => value))
      // a bird of the cross stands under no line of its own step here
      const apart = values.filter(value => !these.has(value)), all = [...own.map(({value}) => ({...value, line: key})), ...apart]
      const lines = [key, a.key, b.key], means = meansOfLines(all, lines), [cross, one, other] = means?.groups ?? []
      const found = cross && one && other && cross.freedom > 0 && one.freedom > 0 && other.freedom > 0 ? heterosis(cross, one, other) : null
      const [ofCross = 0, ofOne = 0, ofOther = 0] = lines.map((name, place) => means?.groups[place]?.birds ?? all.filter(each => each.line === name).length)
      return [{lines: [a, b], trait, steps: [...new Set(own.flatMap(({value: {bird}}) => (bird ? [bird.step.label] : [])))].sort(), found, birds: {cross: ofCross, one: ofOne, other: ofOther}, classes: means?.classes ?? 0, families: means}]
    })
  })
}
