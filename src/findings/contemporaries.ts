import type {Bird, Chicks, Logbook, Trait} from '../logbook/book.ts'
import {FEWEST_FAMILIES} from '../statistics/family-bootstrap.ts'
import {contemporaryMeans, type ContemporaryMeans} from '../statistics/contemporary-means.ts'
import {countedValue} from './counted-value.ts'
import {grouped} from './grouped.ts'
import {sireFamilies, type OfASire} from './sire-families.ts'

/** One measured value, its line and its class. */
export interface LineValue extends OfASire {
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
    return typeof value === 'number' && hatch && sex !== 'unknown' ? [{bird, hatch, parentage: bird.parentage, line: lineOf(bird), sex, group: `${sex} ${hatch.rearing}`, value}] : []
  })
  const loose = book.looseWeighings.flatMap(({hatch, sex, value, countsFor}): LineValue[] =>
    (sex !== 'unknown' && countsFor.includes(trait) ? [{bird: null, hatch, parentage: hatch.parentage, line: lineOf(hatch), sex, group: `${sex} ${hatch.rearing}`, value}] : []))
  return [...banded, ...loose]
}

/** Means of lines, and by how many families each is held up. */
export interface MeansOfLines extends ContemporaryMeans {
  /** sire families of the line that has fewest, in the classes that hold all */
  readonly families: number
  /** from five families on they are drawn whole; under five chicks count one by one, and the limits hold for these chicks and not for others bred like them */
  readonly speaksOf: 'these chicks only' | 'birds bred like these'
}

/** The means of these lines in the classes that hold all of them; null where none does. */
export function meansOfLines(values: readonly LineValue[], lines: readonly string[]): MeansOfLines | null {
  const whole = [...grouped(values.filter(({line}) => lines.includes(line)), ({group}) => group)].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, own]) => own)
    .filter(own => lines.every(line => own.some(each => each.line === line)))
  const apart = <Told>(told: (value: LineValue) => Told) => whole.map(own => lines.map(line => own.filter(each => each.line === line).map(told)))
  const byLine = lines.map(line => sireFamilies(whole.flat().filter(each => each.line === line))), nameOf = new Map(byLine.flatMap(own => own.flatMap((members, number) => members.map(member => [member, String(number)] as const))))
  const measured = apart(({value}) => value), names = apart(value => nameOf.get(value) ?? '')
  const families = Math.min(...byLine.map(own => own.length)), drawn = families >= FEWEST_FAMILIES
  const means = contemporaryMeans(measured, drawn ? names : undefined)
  return means && {...means, families, speaksOf: drawn ? 'birds bred like these' : 'these chicks only'}
}

/** The mean of a line over both sexes alike, whoever it was reared with; null where either sex of those asked for was not measured. */
export function plainMean(values: readonly LineValue[], line: string, sexes: readonly ('male' | 'female')[]): number | null {
  const means = sexes.map(sex => {
    const own = values.filter(each => each.line === line && each.sex === sex)
    return own.length === 0 ? null : own.reduce((sum, {value}) => sum + value, 0) / own.length
  })
  return means.length === 0 || means.includes(null) ? null : means.reduce<number>((sum, mean) => sum + (mean ?? 0), 0) / means.length
}
