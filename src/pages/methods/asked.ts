/** Where each question of `pinfeather figures` is explained: the entries that its columns are worked by, the first that fits best. */
import type {EvennessQuestion} from '../../findings/evenness-figures.ts'
import type {FigureQuestion} from '../../findings/figures.ts'
import type {HeredityQuestion} from '../../findings/heredity-figures.ts'
import type {VigourQuestion} from '../../findings/vigour-figures.ts'

export const METHODS_OF_QUESTION: Readonly<Record<FigureQuestion | EvennessQuestion | VigourQuestion | HeredityQuestion, readonly string[]>> = {
  birds: ['inbreeding', 'range', 'completeness', 'z-inbreeding', 'steps', 'parents', 'strain-share'],
  shares: ['state-shares', 'share'],
  spread: ['evenness', 'mean', 'within-tenth'],
  hatches: ['hatch'],
  strains: ['strain-share', 'shares-by-chromosome', 'heterozygosity', 'share-spread'],
  'true-bred': ['true-bred', 'share'],
  kinship: ['kinship', 'range', 'kin-reason'],
  founders: ['founder-shares', 'effective-ancestors', 'founder-genomes', 'mean-kinship'],
  inbreeding: ['inbreeding', 'rate', 'mean-kinship', 'completeness', 'z-inbreeding', 'heterozygosity'],
  clans: ['mating-systems', 'census-size'],
  trend: ['trend', 'share', 'evenness'],
  change: ['change', 'trend'],
  scores: ['grades'],
  depression: ['depression'],
  selection: ['kept-against-all', 'selection', 'likeness', 'recovery'],
  crosses: ['crosses'],
  genotypes: ['genotypes', 'genotypes-exact', 'genotypes-misscoring', 'uncertain-sires'],
  forecast: ['mating-forecast', 'lethal'],
  'test-mating': ['test-mating'],
  'hatch-size': ['hatch-size'],
}
