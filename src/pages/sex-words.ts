/** What a keeper calls a bird by sex and age. Common practice, no source; the age of a year likewise. */
import type {Sex} from '../logbook/book.ts'
import type {Day, PartialDate} from '../records/dates.ts'
import type {Species} from '../records/species.ts'

interface Names {
  readonly youngMale: readonly [string, string]
  readonly male: readonly [string, string]
  readonly youngFemale: readonly [string, string]
  readonly female: readonly [string, string]
}

const COCK_AND_HEN: Names = {youngMale: ['young cock', 'young cocks'], male: ['cock', 'cocks'], youngFemale: ['young hen', 'young hens'], female: ['hen', 'hens']}
const DRAKE_AND_DUCK: Names = {youngMale: ['young drake', 'young drakes'], male: ['drake', 'drakes'], youngFemale: ['young duck', 'young ducks'], female: ['duck', 'ducks']}

const NAMES: Readonly<Record<Species, Names>> = {
  chicken: {youngMale: ['cockerel', 'cockerels'], male: ['cock', 'cocks'], youngFemale: ['pullet', 'pullets'], female: ['hen', 'hens']},
  duck: DRAKE_AND_DUCK,
  'muscovy-duck': DRAKE_AND_DUCK,
  turkey: {...COCK_AND_HEN, youngMale: ['young stag', 'young stags'], male: ['stag', 'stags']},
  goose: {youngMale: ['young gander', 'young ganders'], male: ['gander', 'ganders'], youngFemale: ['young goose', 'young geese'], female: ['goose', 'geese']},
  'guinea-fowl': COCK_AND_HEN,
  'japanese-quail': COCK_AND_HEN,
  'ringneck-pheasant': COCK_AND_HEN,
}

const YEAR = 365

/** `cockerel`, `hen` …; the age on a day decides, and a bird of unknown age counts as grown. Unsexed: `bird`. */
export function birdWord(bird: {readonly sex: Sex; readonly hatched: PartialDate | null}, species: Species, on: Day): string {
  const young = bird.hatched !== null && on - bird.hatched.first < YEAR
  const names = NAMES[species]
  if (bird.sex === 'male') return (young ? names.youngMale : names.male)[0]
  if (bird.sex === 'female') return (young ? names.youngFemale : names.female)[0]
  return young ? 'chick, unsexed' : 'bird, unsexed'
}

/** Those of one sex and age together: `cockerels`, `hens`, `birds of unknown sex`. */
export function flockWord(sex: Sex, species: Species, ageDays: number | null): string {
  const names = NAMES[species]
  const young = ageDays === null || ageDays < YEAR
  if (sex === 'male') return (young ? names.youngMale : names.male)[1]
  return sex === 'female' ? (young ? names.youngFemale : names.female)[1] : 'birds of unknown sex'
}

/** `males`, `females`, `sex unknown` and `all` for table heads and rows. */
export const SEX_ROWS = {male: 'males', female: 'females', unknown: 'sex unknown', all: 'all'} as const

/** `he`, `she`, `it` */
export const pronoun = (sex: Sex): string => (sex === 'male' ? 'he' : sex === 'female' ? 'she' : 'it')

/** The pedigree symbol of a sex with its fill: square, circle, diamond; open, half, solid, speckled. */
export function sexSymbol(sex: Sex, fill: 'open' | 'half' | 'solid' | 'speckled'): string {
  return {male: 'm', female: 'f', unknown: 'u'}[sex] + {open: '0', half: 'h', solid: '1', speckled: 'q'}[fill]
}
