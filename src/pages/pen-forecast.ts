/** What the pairs of a pen will give, and what its chicks were expected to be beside what came; what is lethal or hurts the bird stands first. */
import type {ExpectedLooks} from '../findings/expected-looks.ts'
import type {IfScoredRight} from '../findings/if-scored-right.ts'
import type {CautionOfPair, ForecastOfSex, LooksOfTrait, MatingForecast} from '../findings/mating-forecast.ts'
import type {Findings} from '../findings/study.ts'
import {outOfPairs, pairsInPens, type OutOfPairs} from '../findings/throw-backs.ts'
import type {Pen, Trait} from '../logbook/book.ts'
import {chance} from './chance-words.ts'
import {traitPath} from './links.ts'
import {countWord, listWords, NOTHING, rounded} from './numbers.ts'
import type {Cell, Table} from './page.ts'
import {SEX_ROWS} from './sex-words.ts'
import {CAUTIONS} from './trait-inheritance.ts'
import {bandCell} from './trait-segregation.ts'

export interface PenForecast {
  /** the gravest first */
  readonly cautions: readonly {readonly head: string; readonly text: string}[]
  /** of every living pair, in a pen of the latest season */
  readonly pairs: Table | null
  /** birds of the pen that stand in none of these pairs, with the reason; empty where there are none */
  readonly leftOut: string
  readonly came: Table | null
  /** `Worked exactly` */
  readonly how: string
}

/** What is to be said wherever germs will die. */
export const GERMS_ADVICE = 'With a mate free of the gene none need die; what the law says of such matings goes before any plan, and a veterinarian can tell more.'

export const DOUBTED_HEAD = 'A score in doubt that may be right'

/** `23-08 was scored short, which its kin make doubtful; if that is right and 22-12 carries Cp too (100%), 25.0% of the germs die.` */
function scoredRight({bird, mate, state, allele, mateCarries, lost, having, locus}: IfScoredRight): string {
  const scored = `${bird.band} was scored ${state}, which its ${bird.tested.has(locus) ? 'test makes' : 'kin make'} doubtful; if that is right`
  return lost === null ? `${scored}, ${chance(having)} of the chicks by ${mate.band} have ${allele}.` : `${scored} and ${mate.band} carries ${allele} too (${chance(mateCarries)}), ${chance(lost)} of the germs die.`
}

/** All of a pair or a pen, and what to do about it. */
export const scoredRightWords = (all: readonly IfScoredRight[]): string =>
  `${all.map(scoredRight).join(' ')} ${all.some(({lost}) => lost !== null) ? GERMS_ADVICE : 'Ask a veterinarian, and your local law, before you breed from such a bird.'}`

/** Null where nothing is to be said: no rule names a locus, or nothing was scored and no pair lives. */
export function penForecast(pen: Pen, findings: Findings): PenForecast | null {
  const forecasts = pairsInPens(findings.census).flatMap((pair, index) => {
    const forecast = findings.forecastsInPens[index]
    return pair.pen === pen && forecast ? [forecast] : []
  })
  const traits = findings.book.traits.filter(trait => trait.shows.length > 0), came = findings.expectedLooks.pens.filter(row => row.pen === pen)
  if (traits.length === 0 || (forecasts.length === 0 && came.length === 0)) return null
  return {
    cautions: cautionsOf(forecasts, forecasts.flatMap(findings.ifScoredRight)), pairs: forecasts.length === 0 ? null : pairTable(forecasts, traits), leftOut: leftOutWords(outOfPairs(findings.census, pen), forecasts.length > 0),
    came: came.length === 0 ? null : cameTable(came),
    how: forecasts.every(({exact}) => exact) && came.every(({trait}) => isExact(trait, findings)) ? 'Worked exactly' : 'Worked approximately',
  }
}

/** Was what is known of a trait's loci worked exactly, for every bird? */
const isExact = (trait: Trait, {heredity}: Findings): boolean => heredity.groups.every(group => !group.traits.includes(trait) || heredity.worked(group).found.exact)

/** What dies in the egg, pair by pair; then what is known of alleles that the chicks may have, each said once with the most that a pair gives. */
function cautionsOf(forecasts: readonly MatingForecast[], doubted: readonly IfScoredRight[]): PenForecast['cautions'] {
  const lost = forecasts.filter(({lost: all}) => all.length > 0).map(({sire, dam, lost: all}) =>
    `${sire.band} × ${dam.band}, ${listWords(all.map(({loci, share}) => `${chance(share)} by ${listWords(loci.map(({symbol}) => symbol))}`))}`)
  const said = new Map<string, {readonly head: string; readonly of: CautionOfPair; readonly pairs: number}>()
  for (const [about, head] of CAUTIONS) {
    for (const of of forecasts.flatMap(({cautions}) => cautions).filter(each => each.about === about)) {
      const before = said.get(of.says)
      said.set(of.says, {head, of: before && before.of.chance >= of.chance ? before.of : of, pairs: (before?.pairs ?? 0) + 1})
    }
  }
  return [
    ...(lost.length === 0 ? [] : [{head: 'Germs that will die in the egg.', text: `${lost.join('; ')}. ${GERMS_ADVICE}`}]),
    ...(doubted.length === 0 ? [] : [{head: `${DOUBTED_HEAD}.`, text: scoredRightWords(doubted)}]),
    ...[...said].map(([says, {head, of, pairs}]) => ({head: `${head}.`, text: `${says} (${whoseWords(of, pairs, forecasts.length)}.)`})),
  ]
}

/** `Cp, by two of the three pairs, in up to 65.9% of the chicks` */
function whoseWords({alleles, chance: most}: CautionOfPair, pairs: number, all: number): string {
  const whose = pairs === all ? '' : `, by ${countWord(pairs)} of the ${countWord(all)} pairs`
  return `${listWords(alleles, 'or')}${whose}, in ${pairs === 1 ? '' : 'up to '}${chance(most)} of the chicks`
}

/** `24-003 and 24-007, no longer here; H-3, of a pure strain` */
function leftOutWords(birds: readonly OutOfPairs[], arePairs: boolean): string {
  if (birds.length === 0) return ''
  const why = ({why: reason, to}: OutOfPairs): string => (reason === 'gone' ? 'no longer here' : reason === 'strain' ? 'of a pure strain' : `put into pen ${to?.id ?? NOTHING} since`)
  const groups = [...new Set(birds.map(why))].map(reason => `${listWords(birds.filter(each => why(each) === reason).map(({bird}) => bird.band))}, ${reason}`)
  return `${arePairs ? 'In none of these pairs' : 'No pair of the line stands here now'}: ${groups.join('; ')}.`
}

function pairTable(forecasts: readonly MatingForecast[], traits: readonly Trait[]): Table {
  return {
    caption: 'What each pair will give', columns: [{head: 'Dam'}, {head: 'Sire'}, ...traits.map(({name}) => ({head: name}))],
    rows: forecasts.map((forecast): readonly Cell[] => [bandCell(forecast.dam), bandCell(forecast.sire), ...traits.map(trait => looksWords(trait, forecast))]),
  }
}

/** `pea 99.1%, single 0.9%`; `males silver 100%; females silver 50.0%, gold 50.0%` where the sexes differ */
function looksWords(trait: Trait, {male, female}: Pick<MatingForecast, 'male' | 'female'>): string {
  const words = (sex: ForecastOfSex): string => {
    const found = sex.traits.find(each => each.trait === trait)
    return found ? stateWords(found) : ''
  }
  const his = trait.seenIn === 'female' ? '' : words(male), hers = trait.seenIn === 'male' ? '' : words(female)
  if (his === hers || his === '' || hers === '') return his || hers || NOTHING
  return `${SEX_ROWS.male} ${his}; ${SEX_ROWS.female} ${hers}`
}

/** Looks of less than one in ten thousand are not worth a word. */
const stateWords = ({states}: LooksOfTrait): string => states.filter(({share}) => share >= 0.0001).map(({state, share}) => `${state} ${chance(share)}`).join(', ')

function cameTable(rows: readonly (ExpectedLooks & {readonly pen: Pen})[]): Table {
  const told = rows.filter(({trait, sex}) => (trait.loci.some(({on}) => on === 'Z') ? sex !== 'all' : sex === 'all'))
  const looks = (row: ExpectedLooks, of: 'seen' | 'expected'): string => row.states.filter(state => state[of] >= 0.05).map(({state, [of]: count}) => `${rounded(count, of === 'seen' ? 0 : 1)} ${state}`).join(', ')
  return {
    caption: 'What came beside what was to be expected', columns: [{head: 'Trait'}, {head: 'Came'}, {head: 'Expected'}],
    rows: told.map((row): readonly Cell[] => [{text: row.sex === 'all' ? row.trait.name : `${row.trait.name}, ${SEX_ROWS[row.sex]}`, link: traitPath(row.trait)}, looks(row, 'seen'), looks(row, 'expected')]),
  }
}

