import type {Bird, Logbook, Trait} from '../logbook/book.ts'
import {contrast, type Contrast} from '../statistics/contrast.ts'
import {realisedHeritability, type RealisedHeritability} from '../statistics/realised-heritability.ts'
import {selectionDifferential, type Differential, type SelectedClass} from '../statistics/selection-differential.ts'
import type {Passage} from './bred-from.ts'
import {lineValues, meansOfLines, plainMean, stepLine, strainLine, type LineValue, type MeansOfLines} from './contemporaries.ts'
import {grouped} from './grouped.ts'

/** What was chosen in one sex. */
export interface DifferentialOfSex {
  /** null: no bird bred from has mates that were measured */
  readonly found: Differential | null
  /** birds bred from that were not measured, or of whose hatch and sex no other was */
  readonly leftOut: number
}

/** What choosing did to one measured trait from one step to the next. */
export interface SelectionOfTrait {
  readonly passage: Passage
  readonly trait: Trait
  readonly male: DifferentialOfSex
  readonly female: DifferentialOfSex
  /** S, in the unit; of a backcross half of what was chosen in the step, the other parent's being unknown; null where it is not known in every sex bred from */
  readonly differential: number | null
  /** R with interval, of birds of both steps (in a backcross of the strain crossed back to as well) reared together; null where none were */
  readonly response: Contrast | null
  /** classes that hold them, and the birds of either step in them */
  readonly classes: number
  readonly birds: {readonly from: number; readonly to: number}
  /** null where no class holds them */
  readonly families: Pick<MeansOfLines, 'families' | 'speaksOf'> | null
  /** the next step's mean less this one's as they stand, the sexes weighing alike: season, rearing and choosing in one; null where a sex of either was not measured */
  readonly move: number | null
  /** birds behind it */
  readonly moved: {readonly from: number; readonly to: number}
  /** the move that strain shares alone would bring: in a backcross half way to the strain crossed back to, else none; null where that strain was not measured */
  readonly expected: number | null
}

export interface RealisedOfTrait {
  readonly trait: Trait
  readonly found: RealisedHeritability
}

export interface Selection {
  readonly passages: readonly SelectionOfTrait[]
  readonly realised: readonly RealisedOfTrait[]
}

const SEXES = ['male', 'female'] as const

function differentialOf(values: readonly LineValue[], {from, chicks}: Passage, sex: 'male' | 'female'): DifferentialOfSex {
  const bred = [...chicks].filter(([bird]) => bird.sex === sex), mates = grouped(values.filter(each => each.line === stepLine(from) && each.sex === sex), ({group}) => group)
  const classes = [...mates.values()].filter(own => own.length > 1)
  const selected = classes.map((own): SelectedClass => ({all: own.map(({value}) => value), bred: bred.flatMap(([bird, weight]) => {
    const its = own.find(each => each.bird === bird)
    return its ? [{value: its.value, weight}] : []
  })}))
  const used = selected.reduce((sum, each) => sum + each.bred.length, 0)
  return {found: selectionDifferential(selected), leftOut: bred.length - used}
}

/** Both parents of the step: ½(S♂ + S♀); of a backcross half of those chosen in the step, each sex with its chicks. */
function together(passage: Passage, male: DifferentialOfSex, female: DifferentialOfSex): number | null {
  const weight = (sex: Bird['sex']) => [...passage.chicks].reduce((sum, [bird, chicks]) => (bird.sex === sex ? sum + chicks : sum), 0)
  const parts = [{of: male, weight: weight('male')}, {of: female, weight: weight('female')}].filter(part => part.weight > 0), all = parts.reduce((sum, part) => sum + part.weight, 0)
  if (parts.length === 0 || parts.some(({of}) => of.found === null) || (passage.back === null && parts.length < 2)) return null
  return parts.reduce((sum, part) => sum + (part.weight / all) * (part.of.found?.differential ?? 0), 0) * (passage.back === null ? 1 : 0.5)
}

function ofTrait(passage: Passage, trait: Trait, values: readonly LineValue[]): SelectionOfTrait {
  const male = differentialOf(values, passage, 'male'), female = differentialOf(values, passage, 'female')
  const from = stepLine(passage.from), to = stepLine(passage.to), {back} = passage
  const lines = back ? [from, to, strainLine(back.id)] : [from, to], means = meansOfLines(values, lines), [before, after, strain] = means?.groups ?? []
  const response = !before || !after ? null : contrast([{of: after, times: 1}, ...(strain ? [{of: before, times: -0.5}, {of: strain, times: -0.5}] : [{of: before, times: -1}])])
  const sexes = SEXES.filter(sex => lines.every(line => values.some(each => each.line === line && each.sex === sex))), both = sexes.length > 0 ? sexes : SEXES.filter(sex => [from, to].every(line => values.some(each => each.line === line && each.sex === sex)))
  const old = plainMean(values, from, both), young = plainMean(values, to, both), pure = back && plainMean(values, strainLine(back.id), both)
  return {
    passage, trait, male, female, differential: together(passage, male, female), response, classes: means?.classes ?? 0, birds: {from: before?.birds ?? 0, to: after?.birds ?? 0}, families: means,
    moved: {from: values.filter(each => each.line === from && both.includes(each.sex)).length, to: values.filter(each => each.line === to && both.includes(each.sex)).length},
    move: old === null || young === null ? null : young - old, expected: !back ? 0 : old === null || pure === null ? null : (pure - old) / 2,
  }
}

/**
 * How much of what we chose did we get?
 *
 *     S = ½(S♂ + S♀), each the mean of those bred from, by their scored chicks, less the mean of their hatch mates        R = next step's mean − this one's
 *     in a backcross S = ½·S of the step's own parents, and R = next step's mean − ½(this step's + the mean of the strain crossed back to)
 *
 * Without birds of both steps reared together season and selection cannot be told apart: then there is no response, only the move of the means, and no realised
 * heritability. The move that a backcross brings by its strain shares stands apart from the response.
 *
 * @param from of `passages`
 * @see Falconer & Mackay 1996, ch. 11 (from memory)
 */
export function selection(book: Logbook, from: readonly Passage[]): Selection {
  const found = book.traits.filter(({kind}) => kind === 'measured').map(trait => {
    const values = lineValues(book, trait), measured = new Set(values.map(({line}) => line))
    return {trait, passages: from.filter(passage => measured.has(stepLine(passage.from)) || measured.has(stepLine(passage.to))).map(passage => ofTrait(passage, trait, values))}
  })
  return {
    passages: found.flatMap(({passages}) => passages),
    realised: found.flatMap(({trait, passages}): RealisedOfTrait[] => {
      const steps = passages.flatMap(({differential, response}) => (differential !== null && response ? [{differential, response: response.value}] : []))
      return steps.length === 0 ? [] : [{trait, found: realisedHeritability(steps)}]
    }),
  }
}

