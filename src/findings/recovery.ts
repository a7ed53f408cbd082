import type {Logbook, Strain, Trait} from '../logbook/book.ts'
import {recoveryOfType, type Recovery} from '../statistics/recovery-of-type.ts'
import {lineValues, meansOfLines, stepLine, strainLine, type MeansOfLines} from './contemporaries.ts'
import type {LadderStep} from './ladder.ts'
import type {StrainShares} from './strain-shares.ts'

/** How far a step has come from the donor to the strain crossed back to, in one measured trait. */
export interface RecoveryOfTrait {
  readonly step: string
  readonly trait: Trait
  readonly donor: Strain
  /** null: no class holds birds of all three, one of them has a single bird a class, or the two strains have one mean */
  readonly found: Recovery | null
  /** share of the recurrent strain to be expected by descent, of all that comes of the two */
  readonly expected: number | null
  /** birds in classes that hold all three, else measured at all */
  readonly birds: {readonly step: number; readonly donor: number; readonly recurrent: number}
  /** null where they were not reared together */
  readonly together: Pick<MeansOfLines, 'families' | 'speaksOf'> | null
}

/**
 * How far has type come back?
 *
 *     ρ = (step − donor)/(recurrent − donor)        0 as the donor, 1 as the recurrent strain
 *
 * of birds of all three reared together, with Fieller's limits, beside the share of genes expected. A step of several donors is held against none of them.
 *
 * @see `recoveryOfType`, `contemporaryMeans`
 */
export function recovery(book: Logbook, ladder: readonly LadderStep[], shares: StrainShares): readonly RecoveryOfTrait[] {
  const {recurrent, donors} = book.project
  if (recurrent === null) return []
  return book.traits.filter(({kind}) => kind === 'measured').flatMap(trait => {
    const values = lineValues(book, trait)
    return ladder.flatMap((entry): RecoveryOfTrait[] => {
      if (entry.kind !== 'reached' || entry.label === 'mixed') return []
      const own = donors.filter(strain => entry.step.strains.includes(strain)), [donor] = own, line = stepLine(entry.label)
      if (!donor || own.length > 1 || !values.some(each => each.line === line)) return []
      const lines = [line, strainLine(donor.id), strainLine(recurrent.id)], means = meansOfLines(values, lines), [step, from, to] = means?.groups ?? []
      const found = step && from && to && step.freedom > 0 && from.freedom > 0 && to.freedom > 0 ? recoveryOfType(step, from, to) : null
      const descent = shares.steps.find(each => each.step === entry.label)?.shares, a = descent?.get(recurrent) ?? 0, b = descent?.get(donor) ?? 0
      const [ofStep = 0, ofDonor = 0, ofRecurrent = 0] = lines.map((name, place) => means?.groups[place]?.birds ?? values.filter(each => each.line === name).length)
      return [{step: entry.label, trait, donor, found, expected: a + b > 0 ? a / (a + b) : null, birds: {step: ofStep, donor: ofDonor, recurrent: ofRecurrent}, together: means}]
    })
  })
}
