/** How even the birds of a step are, and how they stand to what is wanted: one row a measure and sex, every count beside its figure. */
import type {AgainstStandard} from '../findings/against-standard.ts'
import type {SpreadRow} from '../findings/spread.ts'
import type {Project, Trait} from '../logbook/book.ts'
import {amount, amountInUnit, amountPlain, shownIn, wantedWords} from './amounts.ts'
import type {Shown} from './amounts.ts'
import {cannotSayShort, leftOutWords, shareCells} from './estimate-words.ts'
import {traitPath} from './links.ts'
import {limits, NOTHING, ofWords, percent, rounded, signed} from './numbers.ts'
import type {Cell, Table} from './page.ts'
import {SEX_ROWS} from './sex-words.ts'

const measureCell = (trait: Trait, sex: keyof typeof SEX_ROWS): Cell => ({text: `${trait.name}, ${SEX_ROWS[sex]}`, link: traitPath(trait)})

export function spreadTable(rows: readonly SpreadRow[], units: Project['units']): Table | null {
  const own = rows.filter(row => row.sex !== 'all')
  if (own.length === 0) return null
  return {
    columns: [{head: 'Measure'}, {head: 'Birds', number: true}, {head: 'Mean', number: true}, {head: 'SD', number: true}, {head: 'CV, %', number: true},
      {head: 'Interval of the CV', number: true}, {head: 'Within a tenth of the mean', number: true}],
    rows: own.map(({trait, sex, spread, values}): readonly Cell[] => {
      const shown = shownIn(trait, units)
      if (spread.kind === 'cannot-say') return [measureCell(trait, sex), String(values.length), cannotSayShort(spread), NOTHING, NOTHING, NOTHING, NOTHING]
      return [measureCell(trait, sex), ofWords(spread.n, values.length), amount(spread.mean, shown), amountPlain(spread.sd, shown), percent(spread.cv),
        spread.cvInterval ? limits(spread.cvInterval) : spread.cv === 0 ? 'all alike' : NOTHING, ofWords(spread.within10.count, spread.within10.total)]
    }),
  }
}

/** What the spreads leave out, a sentence a measure and sex. */
export function spreadLeftOut(rows: readonly SpreadRow[]): readonly string[] {
  return rows.filter(row => row.sex !== 'all').flatMap(({trait, sex, spread}) => {
    const words = leftOutWords(spread.leftOut)
    return words === '' ? [] : [`${trait.name}, ${SEX_ROWS[sex]}, leaves out ${words}.`]
  })
}

/** `−0.04 kg, −0.2 SD` */
function offWords(row: AgainstStandard, shown: Shown): string {
  if (row.off === null) return NOTHING
  return `${signed(amountInUnit(row.off, shown))}${row.offInSd === null ? '' : `, ${signed(rounded(row.offInSd, 1))} SD`}`
}

export function standardTable(rows: readonly AgainstStandard[], units: Project['units']): Table | null {
  if (rows.length === 0) return null
  return {
    columns: [{head: 'Measure'}, {head: 'Wanted'}, {head: 'Inside', number: true}, {head: '%', number: true}, {head: 'Interval', number: true}, {head: 'Mean off the mark', number: true}],
    rows: rows.map((row): readonly Cell[] => {
      const shown = shownIn(row.trait, units)
      return [measureCell(row.trait, row.sex), wantedWords(row.wanted, shown), ...shareCells(row.inside), offWords(row, shown)]
    }),
  }
}
