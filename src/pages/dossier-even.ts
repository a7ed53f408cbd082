/** The dossier's drawings: how many chicks show everything required, and how even the latest birds are. */
import type {SpreadRow} from '../findings/spread.ts'
import type {Findings} from '../findings/study.ts'
import type {Bird, Tally, Trait} from '../logbook/book.ts'
import {isUnit, UNITS} from '../records/quantities.ts'
import {besidesOf, type Behind} from './dossier-behind.ts'
import {LADDER} from './links.ts'
import {limitsShort, listWords, percent} from './numbers.ts'
import type {Cell, Figure} from './page.ts'
import {trueBredFigure} from './step-figures.ts'
import {weightsFigure} from './weights-figure.ts'

/** The figure's own table, with the interval beside each coefficient of variation: a committee reads it without the page of the step. */
function withIntervals(figure: Figure, spread: readonly SpreadRow[]): Figure {
  const rows = figure.table.rows.map((row, index): readonly Cell[] => {
    const found = spread[index]?.spread
    return found?.kind === 'spread' && found.cvInterval ? [...row.slice(0, -1), `${percent(found.cv)} (${limitsShort(found.cvInterval)})`] : row
  })
  return {...figure, table: {...figure.table, rows}}
}

/** The figure's own table, with the interval by sire families beside the plain one, where there are families enough; a committee should read that. */
function withFamilies(figure: Figure, {trends}: Findings): Figure {
  const steps = trends.shares.find(({by}) => by === 'true-bred')?.steps ?? []
  const rows = figure.table.rows.map((row): readonly Cell[] => {
    const family = steps.find(({step}) => step === row[0])?.family
    return family?.kind === 'families' ? row.map((cell, index) => (index === INTERVAL && typeof cell === 'string' ? `${cell}; by ${family.families} families ${limitsShort(family)}` : cell)) : row
  })
  return {...figure, caption: `${figure.caption} An interval speaks of these chicks only, unless it is drawn by sire families, which takes five of them.`, table: {...figure.table, rows}}
}

/** Its place among the columns. */
const INTERVAL = 3

const isWeight = ({unit}: Trait): boolean => unit !== null && isUnit(unit) && UNITS[unit].of === 'mass'

/** Steps from the end of the ladder the project plans backwards; steps off that ladder come after. */
function latestFirst({ladder, book: {project}}: Findings): readonly string[] {
  const reached = ladder.filter(step => step.kind === 'reached' && step.label !== 'mixed').map(({label}) => label).reverse()
  const place = (label: string): number => project.ladder.indexOf(label)
  return [...reached].sort((a, b) => place(b) - place(a))
}

/** Of the furthest step that has a spread to show, a weight with a target, else another measure with one, else any. */
function latestWeights(findings: Findings, head: string): Figure | null {
  const {spread, trueBred, book} = findings
  for (const label of latestFirst(findings)) {
    const rows = spread.rows.filter(row => row.step === label && row.sex !== 'all')
    const told = rows.filter(row => row.spread.kind === 'spread')
    const wanted = told.filter(({trait: {wanted: {male, female}}}) => male !== null || female !== null)
    const trait = (wanted.find(row => isWeight(row.trait)) ?? wanted[0] ?? told[0])?.trait
    if (!trait) continue
    const own = rows.filter(row => row.trait === trait)
    const figure = weightsFigure(label, trait, own, trueBred.verdicts, book.project, head)
    return figure && withIntervals(figure, own)
  }
  return null
}

export function evenFigures(findings: Findings): readonly Figure[] {
  const bred = trueBredFigure(findings.trueBred.steps, 'Figure 1.')
  const even = latestWeights(findings, bred ? 'Figure 2.' : 'Figure 1.')
  return [bred && withFamilies(bred, findings), even].filter(figure => figure !== null)
}

/** The chicks and the scores and weighings that the drawings count. */
export function behindFigures({ladder}: Findings, figures: readonly Figure[]): Behind {
  const chicks: readonly (Bird | Tally)[] = ladder.flatMap(step => (step.kind === 'reached' ? [...step.birds, ...step.tallies] : []))
  const counted = chicks.map(chick => ({chick, scores: [...chick.looks].flatMap(([trait, look]) => (look.counted && (trait.required || trait.kind === 'measured') ? [look.counted] : []))})).filter(({scores}) => scores.length > 0)
  const unbanded = counted.reduce((sum, {chick}) => sum + (chick.kind === 'bird' ? 0 : chick.count), 0)
  return {of: listWords(figures.map(({head}) => head.replace(/[.]$/, ''))), birds: counted.flatMap(({chick}) => (chick.kind === 'bird' ? [chick] : [])), ...besidesOf(unbanded), records: counted.flatMap(({scores}) => scores.map(({at}) => at)), page: LADDER}
}
