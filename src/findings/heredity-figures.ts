import type {Bird, Locus} from '../logbook/book.ts'
import type {FigureColumn, FiguresTable} from './figures.ts'
import type {HatchPlan} from './hatch-plan.ts'
import type {ForecastOfSex, MatingForecast} from './mating-forecast.ts'
import type {Findings} from './study.ts'
import type {TestMatingPlan} from './test-mating-plan.ts'

/** The questions of `pinfeather figures` that must be told what they are asked of. */
export const HEREDITY_QUESTIONS = ['genotypes', 'forecast', 'test-mating', 'hatch-size'] as const
export type HeredityQuestion = (typeof HEREDITY_QUESTIONS)[number]

const columns = (as: FigureColumn['as'], ...names: string[]): FigureColumn[] => names.map(name => ({name, as}))
const how = (exact: boolean): string => (exact ? 'exact' : 'approximate')

/** One row a bird and genotype that it may have, each bird's likeliest first. */
export function genotypesTable({heredity}: Findings, locus: Locus, birds: readonly Bird[]): FiguresTable {
  return {
    columns: [...columns('text', 'band', 'genotype'), ...columns('share', 'probability'), ...columns('text', 'how')],
    rows: birds.flatMap(bird => {
      const {genotypes, exact} = heredity.of(bird, locus)
      return genotypes.map(({written, probability}) => [bird.band, written, probability, how(exact)])
    }),
  }
}

/** What is lost, then what to beware of; then by sex every look of each trait, all traits together, and every genotype of each locus. */
export function forecastTable(forecast: MatingForecast): FiguresTable {
  const {lost, cautions, exact} = forecast
  return {
    columns: [...columns('text', 'what', 'of', 'sex', 'is'), ...columns('share', 'share'), ...columns('text', 'how')],
    rows: [
      ...lost.map(({loci, share}) => ['never hatches', loci.map(({symbol}) => symbol).join(' '), null, null, share, how(exact)]),
      ...cautions.map(({locus, about, says, chance}) => [`beware: ${about}`, locus.locus.symbol, null, says, chance, how(exact)]),
      ...(['male', 'female'] as const).flatMap(sex => forecastRows(sex, forecast[sex], how(exact))),
    ],
  }
}

function forecastRows(sex: string, of: ForecastOfSex, worked: string): FiguresTable['rows'] {
  const traits = of.traits.map(({trait}) => trait)
  return [
    ...of.traits.flatMap(({trait, states, unsaid}) => [
      ...states.map(({state, share}) => ['look', trait.id, sex, state, share, worked]), ...(unsaid > 0 ? [['look', trait.id, sex, null, unsaid, worked]] : []),
    ]),
    ...(traits.length > 1 ? of.together(traits).map(({looks, share}) => ['looks together', traits.map(({id}) => id).join(', '), sex, looks.map(look => look ?? '?').join(', '), share, worked]) : []),
    ...of.genotypes.flatMap(({locus, genotypes}) => genotypes.map(({written, probability}) => ['genotype', locus.symbol, sex, written, probability, worked])),
  ]
}

/** One row a number of clean chicks, up to the number that clears the bird. */
export function testMatingTable(plan: TestMatingPlan): FiguresTable {
  return {
    columns: [...columns('count', 'clean_chicks'), ...columns('share', 'still_carrier', 'carrier_missed'), ...columns('text', 'clears', 'how')],
    rows: plan.course.map(({chicks, carrier, missed}) => [chicks, carrier, missed, plan.chicks !== null && chicks >= plan.chicks ? 'yes' : 'no', how(plan.exact)]),
  }
}

/** One row: the share, the chicks, the eggs. */
export function hatchSizeTable({share, chicks, eggs, stages}: HatchPlan, atLeast: number, assurance: number, exact: boolean): FiguresTable {
  const counted = stages.map(({stage, counted: each}) => (each ? `${stage} ${each.through}/${each.of}` : `${stage} not counted`)).join(', ')
  return {
    columns: [...columns('count', 'at_least'), ...columns('share', 'chance', 'share_wanted'), ...columns('count', 'chicks', 'eggs', 'eggs_at_mean'), ...columns('share', 'egg_to_chick'), ...columns('text', 'counted', 'how')],
    rows: [[atLeast, assurance, share, chicks, eggs?.eggs ?? null, eggs?.eggsAtMean ?? null, eggs?.meanShare ?? null, counted, how(exact)]],
  }
}
