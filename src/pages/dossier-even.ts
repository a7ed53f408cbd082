/** The dossier's drawings: how many chicks show everything required, and how even the latest birds are. */
import type {Findings} from '../findings/study.ts'
import type {Figure} from './page.ts'
import {trueBredFigure} from './step-figures.ts'
import {weightsFigure} from './weights-figure.ts'

/** The latest step with a measured trait that the standard names a weight for, the first such trait. */
function latestWeights({ladder, spread, trueBred, book}: Findings, head: string): Figure | null {
  for (const {label} of [...ladder].reverse()) {
    const rows = spread.rows.filter(row => row.step === label && row.sex !== 'all')
    const trait = rows.find(row => row.trait.wanted.male !== null || row.trait.wanted.female !== null)?.trait ?? rows[0]?.trait
    if (label !== 'mixed' && trait) return weightsFigure(label, trait, rows.filter(row => row.trait === trait), trueBred.verdicts, book.project, head)
  }
  return null
}

export function evenFigures(findings: Findings): readonly Figure[] {
  const bred = trueBredFigure(findings.trueBred.steps, 'Figure 1.')
  const even = latestWeights(findings, bred ? 'Figure 2.' : 'Figure 1.')
  return [bred, even].filter(figure => figure !== null)
}
