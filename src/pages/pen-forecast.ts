/** What the pairs of a pen will give, and what its chicks were expected to be beside what came; what is lethal or hurts the bird stands first. */
import type {ExpectedLooks} from '../findings/expected-looks.ts'
import type {ForecastOfSex, LooksOfTrait, MatingForecast} from '../findings/mating-forecast.ts'
import type {Findings} from '../findings/study.ts'
import {pairsInPens} from '../findings/throw-backs.ts'
import type {Pen, Trait} from '../logbook/book.ts'
import {chance} from './chance-words.ts'
import {traitPath} from './links.ts'
import {listWords, NOTHING, rounded} from './numbers.ts'
import type {Cell, Table} from './page.ts'
import {SEX_ROWS} from './sex-words.ts'
import {CAUTIONS} from './trait-inheritance.ts'
import {bandCell} from './trait-segregation.ts'

export interface PenForecast {
  /** the gravest first */
  readonly cautions: readonly {readonly head: string; readonly text: string}[]
  /** of every living pair, in a pen of the latest season */
  readonly pairs: Table | null
  readonly came: Table | null
  /** `Worked exactly` */
  readonly how: string
}

/** Null where nothing is to be said: no rule names a locus, or nothing was scored and no pair lives. */
export function penForecast(pen: Pen, findings: Findings): PenForecast | null {
  const forecasts = pairsInPens(findings.census).flatMap((pair, index) => {
    const forecast = findings.forecastsInPens[index]
    return pair.pen === pen && forecast ? [forecast] : []
  })
  const traits = findings.book.traits.filter(trait => trait.shows.length > 0), came = findings.expectedLooks.pens.filter(row => row.pen === pen)
  if (traits.length === 0 || (forecasts.length === 0 && came.length === 0)) return null
  return {
    cautions: cautionsOf(forecasts), pairs: forecasts.length === 0 ? null : pairTable(forecasts, traits), came: came.length === 0 ? null : cameTable(came),
    how: forecasts.every(({exact}) => exact) ? 'Worked exactly' : 'Worked approximately',
  }
}

/** What dies in the egg, pair by pair; then what is known of alleles that chicks may have, each said once. */
function cautionsOf(forecasts: readonly MatingForecast[]): PenForecast['cautions'] {
  const lost = forecasts.filter(({lost: all}) => all.length > 0).map(({sire, dam, lost: all}) =>
    `${sire.band} × ${dam.band}, ${listWords(all.map(({group, share}) => `${chance(share)} by ${listWords(group.loci.map(({symbol}) => symbol))}`))}`)
  const said = new Map<string, {readonly head: string; readonly symbol: string; most: number}>()
  for (const [about, head] of CAUTIONS) {
    for (const caution of forecasts.flatMap(({cautions}) => cautions).filter(each => each.about === about && !namesOther(each))) {
      const before = said.get(caution.says)
      said.set(caution.says, {head, symbol: caution.locus.locus.symbol, most: Math.max(before?.most ?? 0, caution.chance)})
    }
  }
  return [
    ...(lost.length === 0 ? [] : [{head: 'Germs that will die in the egg.', text: `${lost.join('; ')}. With a mate free of the gene none need die; what the law says of such matings goes before any plan, and a veterinarian can tell more.`}]),
    ...[...said].map(([says, {head, symbol, most}]) => ({head: `${head}.`, text: `${says} (${symbol}; up to ${chance(most)} of the chicks of a pair have another allele than the wild one.)`})),
  ]
}

/** `s^al` in a caution, where the project's own locus does not have it: it speaks of other birds. */
const namesOther = ({says, locus: {locus}}: MatingForecast['cautions'][number]): boolean =>
  (says.match(/\b[A-Za-z]+\^[A-Za-z]+/g) ?? []).some(allele => !locus.alleles.includes(allele))

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

