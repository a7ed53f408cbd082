/** How birds grow, sex by sex and step by step, where a measure was taken on several weigh days. */
import {hasRows} from '../charts/chart-spec.ts'
import {growth, MOST_LINES} from '../charts/growth.ts'
import type {GrowthCurve, GrowthOfMeasure, GrowthPoint} from '../findings/growth-curves.ts'
import type {Findings} from '../findings/study.ts'
import type {Trait} from '../logbook/book.ts'
import {fileName} from '../records/file-name.ts'
import {amountPlain, shownIn, type Shown} from './amounts.ts'
import {ageWords} from './dates.ts'
import {traitPath} from './links.ts'
import {figured, listWords, NOTHING, sentence} from './numbers.ts'
import type {Cell, Figure, Table} from './page.ts'
import {SEX_ROWS} from './sex-words.ts'

export interface TraitGrowth {
  readonly figures: readonly Figure[]
  /** what cannot be drawn, being of one age alone */
  readonly tables: readonly Table[]
  readonly words: readonly string[]
  /** where another trait of the same measure shows it */
  readonly elsewhere: {readonly text: string; readonly link: string} | null
}

const SEXES = ['male', 'female'] as const

/** Null where its measure was taken at no two ages. @param first  number of the first figure */
export function traitGrowth(trait: Trait, findings: Findings, first: number): TraitGrowth | null {
  const found = findings.growthCurves.find(({traits}) => traits.includes(trait))
  if (!found || found.ages.length < 2) return null
  const [shower] = found.traits
  if (shower && shower !== trait) return {figures: [], tables: [], words: [], elsewhere: {text: `How they grow: ${shower.name.toLowerCase()}`, link: traitPath(shower)}}
  const shown = shownIn(trait, findings.book.project.units)
  const made = SEXES.flatMap(sex => {
    const curves = found.curves.filter(curve => curve.sex === sex)
    return curves.length === 0 ? [] : [{sex, curves, table: tableOf(curves, shown)}]
  })
  const figures = made.flatMap(({sex, curves, table}) => figureOf(found, sex, curves, table, shown) ?? []).map((figure, index) => ({...figure, head: `Figure ${first + index}.`}))
  const {sexUnknown, ageUnknown} = found.leftOut, left = [...(sexUnknown > 0 ? [`${sexUnknown} of unknown sex`] : []), ...(ageUnknown > 0 ? [`${ageUnknown} of an age not known to the day`] : [])]
  return {
    figures, tables: made.filter(({sex}) => !figures.some(({id}) => id === `growth-${sex}`)).map(({sex, table}) => ({caption: `How ${SEX_ROWS[sex]} grow`, ...table})), elsewhere: null,
    words: [`Later weighings are of those still there: where the small are culled or the best kept, the line rises by that alone.${left.length === 0 ? '' : ` Left out: ${listWords(left)}.`}`],
  }
}

/** `1.92 of 13, 1.80–2.04` */
function pointCell(point: GrowthPoint | undefined, shown: Shown): string {
  if (!point) return NOTHING
  return `${amountPlain(point.mean, shown)} of ${point.n}${point.interval ? `, ${amountPlain(point.interval.low, shown)}–${amountPlain(point.interval.high, shown)}` : ''}`
}

function tableOf(curves: readonly GrowthCurve[], shown: Shown): Table {
  const ages = [...new Set(curves.flatMap(({points}) => points.map(({age}) => age)))].sort((a, b) => a - b)
  return {
    columns: [{head: 'Step'}, ...ages.map(age => ({head: sentence(age === 0 ? 'at hatch' : ageWords(age)), number: true}))],
    rows: curves.map(({step, points}): readonly Cell[] => [step, ...ages.map(age => pointCell(points.find(point => point.age === age), shown))]),
  }
}

function figureOf({measure}: GrowthOfMeasure, sex: GrowthCurve['sex'], curves: readonly GrowthCurve[], table: Table, shown: Shown): Figure | null {
  const grown = curves.filter(({points}) => points.length >= 2), unit = shown.unit === '' ? '' : `, ${shown.unit}`
  const lines = grown.slice(-MOST_LINES).flatMap(({step, points}) => {
    const drawn = points.map(({age, mean}) => ({weeks: Math.round(age / 7), value: mean * shown.factor}))
    return hasRows(drawn) ? [{name: step, points: drawn}] : []
  })
  if (!hasRows(lines)) return null
  const name = measure.toLowerCase(), fewer = grown.length > lines.length ? ` The last ${lines.length} of ${figured(grown.length, 'step')} are drawn.` : ''
  return {
    kind: 'figure', id: `growth-${sex}`, name: `${fileName(measure)}-growth-${sex}`, head: '', title: `How ${SEX_ROWS[sex]} grow`,
    caption: `Mean ${name} of ${SEX_ROWS[sex]}${unit}, by weeks of age, a line a step. The table has how many were weighed and, of five or more, the 95% interval of the mean.${fewer}`,
    description: `${lines.map(({name: step, points}) => `${step}: ${listWords(points.map(({weeks, value}) => `${amountPlain(value, {...shown, factor: 1})} at ${figured(weeks, 'week')}`))}`).join('; ')}.`,
    spec: growth(lines), table,
  }
}
