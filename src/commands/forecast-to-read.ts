/** A mating's forecast as a reader on a terminal wants it: what to beware of first, a warning a line, then the looks alone. The other formats have all of it. */
import type {FiguresTable} from '../findings/figures.ts'
import type {IfScoredRight} from '../findings/if-scored-right.ts'
import type {ForecastOfSex, LooksOfTrait, MatingForecast} from '../findings/mating-forecast.ts'
import {chance} from '../pages/chance-words.ts'
import {figured, listWords} from '../pages/numbers.ts'
import {DOUBTED_HEAD, GERMS_ADVICE, scoredRightWords} from '../pages/pen-forecast.ts'
import {CAUTIONS} from '../pages/trait-inheritance.ts'

/** What is printed in place of the table of the other formats. */
export interface ToRead {
  /** ends in a line break, and in an empty line where a table follows; empty where nothing is to be warned of */
  readonly above: string
  readonly table: FiguresTable
  readonly beneath: string
}

/** Looks of several traits together that fewer chicks have are counted in one row. */
const RARE = 0.01
const WIDTH = 96

/** @param doubted what comes if a doubted score of the pair is right */
export function forecastToRead(forecast: MatingForecast, doubted: readonly IfScoredRight[]): ToRead {
  const {lost, cautions, exact} = forecast, warnings = [
    ...lost.map(({loci, share}) => `Germs that will die in the egg: ${chance(share)} by ${listWords(loci.map(({symbol}) => symbol))}. ${GERMS_ADVICE}`),
    ...(doubted.length === 0 ? [] : [`${DOUBTED_HEAD}: ${scoredRightWords(doubted)}`]),
    ...cautions.map(({about, says, alleles, chance: share}) => `${CAUTIONS.find(([word]) => word === about)?.[1] ?? about} (${listWords(alleles, 'or')}, in ${chance(share)} of the chicks): ${says}`),
  ]
  return {
    above: warnings.length === 0 ? '' : `${warnings.map(wrapped).join('\n')}\n\n`,
    table: {columns: [{name: 'sex', as: 'text'}, {name: 'look', as: 'text'}, {name: 'share', as: 'share'}], rows: [...rowsOf('male', forecast.male), ...rowsOf('female', forecast.female)]},
    beneath: `Of the chicks of each sex that hatch. ${exact ? 'Worked exactly.' : 'Worked approximately.'} Genotypes, and every look, with --format csv or json.\n`,
  }
}

/** Each trait by itself; then, where there are several, the looks of all of them together that are not rare. */
function rowsOf(sex: 'male' | 'female', {traits, together}: ForecastOfSex): FiguresTable['rows'] {
  const seen = traits.filter(({trait}) => trait.seenIn === null || trait.seenIn === sex), all = seen.length > 1 ? together(seen.map(({trait}) => trait)) : []
  const common = all.filter(({share}) => share >= RARE), rare = all.filter(({share}) => share < RARE && share > 0)
  return [
    ...seen.flatMap(rowsOfTrait).map(([look, share]) => [sex, look, share]),
    ...common.map(({looks, share}) => [sex, looks.map(look => look ?? UNSAID).join(', '), share]),
    ...(rare.length === 0 ? [] : [[sex, figured(rare.length, 'rarer look together', 'rarer looks together'), rare.reduce((sum, {share}) => sum + share, 0)]]),
  ]
}

const UNSAID = 'no rule says'

const rowsOfTrait = ({trait, states, unsaid}: LooksOfTrait): readonly (readonly [look: string, share: number])[] =>
  [...states.map(({state, share}) => [`${trait.name}: ${state}`, share] as const), ...(unsaid > 0 ? [[`${trait.name}: ${UNSAID}`, unsaid] as const] : [])]

/** Broken between words, further lines set in. */
function wrapped(text: string): string {
  const lines: string[] = []
  for (const word of text.split(' ')) {
    const last = lines.at(-1)
    if (last !== undefined && last.length + 1 + word.length <= WIDTH) lines[lines.length - 1] = `${last} ${word}`
    else lines.push(last === undefined ? word : `  ${word}`)
  }
  return lines.join('\n')
}
