/** The dossier's drawings: how many chicks show everything required, and how even the latest birds are. */
import type {Findings} from '../findings/study.ts'
import {NOTHING} from './numbers.ts'
import type {Cell, Figure} from './page.ts'
import {trueBredFigure} from './step-figures.ts'
import {weightsFigure} from './weights-figure.ts'

const textOf = (cell: Cell | undefined): string => (cell === undefined ? NOTHING : typeof cell === 'string' ? cell : cell.text)

/** The table with the columns that a narrow page has room for: who, how many, mean, and CV with its interval. */
function narrow(figure: Figure): Figure {
  const [who, birds, mean, , cv] = figure.table.columns
  if (!who || !birds || !mean || !cv) return figure
  const rows = figure.table.rows.map((row): readonly Cell[] => {
    const interval = textOf(row[5])
    return [textOf(row[0]), textOf(row[1]), textOf(row[2]), interval === NOTHING ? textOf(row[4]) : `${textOf(row[4])} (${interval})`]
  })
  return {...figure, table: {...figure.table, columns: [who, birds, mean, cv], rows}}
}

/** Steps from the end of the ladder the project plans backwards; steps off that ladder come after. */
function latestFirst({ladder, book: {project}}: Findings): readonly string[] {
  const reached = ladder.filter(step => step.kind === 'reached' && step.label !== 'mixed').map(({label}) => label).reverse()
  const place = (label: string): number => project.ladder.indexOf(label)
  return [...reached].sort((a, b) => place(b) - place(a))
}

/** Of the furthest step that has a spread to show, the first measured trait with a target, else the first measured one. */
function latestWeights(findings: Findings, head: string): Figure | null {
  const {spread, trueBred, book} = findings
  for (const label of latestFirst(findings)) {
    const rows = spread.rows.filter(row => row.step === label && row.sex !== 'all')
    const told = rows.filter(row => row.spread.kind === 'spread')
    const trait = told.find(row => row.trait.wanted.male !== null || row.trait.wanted.female !== null)?.trait ?? told[0]?.trait
    if (!trait) continue
    const figure = weightsFigure(label, trait, rows.filter(row => row.trait === trait), trueBred.verdicts, book.project, head)
    return figure && narrow(figure)
  }
  return null
}

export function evenFigures(findings: Findings): readonly Figure[] {
  const bred = trueBredFigure(findings.trueBred.steps, 'Figure 1.')
  const even = latestWeights(findings, bred ? 'Figure 2.' : 'Figure 1.')
  return [bred, even].filter(figure => figure !== null)
}
