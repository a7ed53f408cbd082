import type {Bird, Chicks, Logbook, Trait} from '../logbook/book.ts'
import {FEWEST_FAMILIES} from '../statistics/family-bootstrap.ts'
import {contemporaryMeans, type ContemporaryMeans} from '../statistics/contemporary-means.ts'
import {familyKey} from './blood-of-chicks.ts'
import {countedValue} from './counted-value.ts'
import {grouped} from './grouped.ts'

/** One measured value, its line and its class. */
export interface LineValue {
  /** null: weighed without a band */
  readonly bird: Bird | null
  /** see `lineOf` */
  readonly line: string
  readonly sex: 'male' | 'female'
  /** one sex, reared alike */
  readonly group: string
  readonly value: number
}

/** The step of a chick or, of a pure strain, the strain. */
export function lineOf({step}: Pick<Chicks, 'step'>): string {
  const [strain] = step.strains
  return step.kind === 'strain' && strain ? strainLine(strain.id) : `step ${step.label}`
}

export const strainLine = (id: string): string => `strain ${id}`
export const stepLine = (label: string): string => `step ${label}`

/** Every counted value of a measured trait, pure strains among them; birds of unknown sex or rearing have no contemporaries and are not in it. */
export function lineValues(book: Logbook, trait: Trait): readonly LineValue[] {
  const banded = book.birds.flatMap((bird): LineValue[] => {
    const value = countedValue(bird, trait), {sex, hatch} = bird
    return typeof value === 'number' && hatch && sex !== 'unknown' ? [{bird, line: lineOf(bird), sex, group: `${sex} ${hatch.rearing}`, value}] : []
  })
  const loose = book.looseWeighings.flatMap(({hatch, sex, value, countsFor}): LineValue[] =>
    (sex !== 'unknown' && countsFor.includes(trait) ? [{bird: null, line: lineOf(hatch), sex, group: `${sex} ${hatch.rearing}`, value}] : []))
  return [...banded, ...loose]
}

/** Means of lines, and by how many families each is held up. */
export interface MeansOfLines extends ContemporaryMeans {
  /** families of the line that has fewest, in the classes that hold all: chicks of one pair or of one doubt; those of unknown parents by their hatch */
  readonly families: number
  /** under five families the limits hold for these chicks, and not for others bred like them; from five on they are still somewhat too narrow, since sibs count one by one */
  readonly speaksOf: 'these chicks only' | 'chicks one by one'
}

/** The means of these lines in the classes that hold all of them; null where none does. */
export function meansOfLines(values: readonly LineValue[], lines: readonly string[]): MeansOfLines | null {
  const whole = [...grouped(values.filter(({line}) => lines.includes(line)), ({group}) => group)].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, own]) => own)
    .filter(own => lines.every(line => own.some(each => each.line === line)))
  const means = contemporaryMeans(whole.map(own => lines.map(line => own.filter(each => each.line === line).map(({value}) => value))))
  if (means === null) return null
  const families = Math.min(...lines.map(line => new Set(whole.flat().filter(each => each.line === line).map(({bird, group}) => (bird && bird.parentage.pairs.length > 0 ? familyKey(bird.parentage) : group))).size))
  return {...means, families, speaksOf: families < FEWEST_FAMILIES ? 'these chicks only' : 'chicks one by one'}
}

/** The mean of a line over both sexes alike, whoever it was reared with; null where either sex of those asked for was not measured. */
export function plainMean(values: readonly LineValue[], line: string, sexes: readonly ('male' | 'female')[]): number | null {
  const means = sexes.map(sex => {
    const own = values.filter(each => each.line === line && each.sex === sex)
    return own.length === 0 ? null : own.reduce((sum, {value}) => sum + value, 0) / own.length
  })
  return means.length === 0 || means.includes(null) ? null : means.reduce<number>((sum, mean) => sum + (mean ?? 0), 0) / means.length
}
