/** All hatches by season, newest first, with what became of the eggs; broody hens and machines apart. */
import type {Findings} from '../findings/study.ts'
import {hatchFigure, hatchTable, rateWords, ratesTable} from './hatch-rows.ts'
import type {HatchTable} from './hatch-rows.ts'
import {HATCHES} from './links.ts'
import {counted, figured, sentence} from './numbers.ts'
import type {Figure, Page} from './page.ts'

export interface HatchesView {
  readonly lead: string
  readonly empty: string
  readonly figure: Figure | null
  readonly seasons: HatchTable | null
  readonly ways: HatchTable | null
  readonly groups: readonly {readonly title: string; readonly id: string; readonly table: HatchTable}[]
  readonly caution: string
}

export function hatchesPage({hatchResults, book}: Findings): Page {
  const {hatches, seasons, broody, incubator, all} = hatchResults
  const years = [...new Set(hatches.map(({season}) => season))].sort((a, b) => (b ?? -Infinity) - (a ?? -Infinity))
  const ways = [{label: 'Under a broody hen', rates: broody}, {label: 'In a machine', rates: incubator}].filter(({rates}) => rates.settings > 0)
  const bySeason = seasons.map(rates => ({label: String(rates.season), rates}))
  const view: HatchesView = {
    lead: hatches.length === 0 ? 'No eggs have been set yet.'
      : `${sentence((all.eggs === null ? counted : figured)(hatches.length, 'setting'))} on record${all.eggs === null ? '' : `; on the ladder ${figured(all.eggs, 'egg')} set, hatch of set ${rateWords(all.hatchOfSet)}`}.`,
    empty: hatches.length === 0 ? 'When the first eggs are set, write down how many, from which pen and on what day; candling and hatch can follow.' : '',
    figure: hatchFigure(bySeason, {id: 'eggs', name: 'eggs-by-season', head: 'Figure 1.', what: 'season by season'}),
    seasons: ratesTable(bySeason, 'Season', 'Every season, pure strains counted in'),
    ways: ways.length === 2 ? ratesTable(ways, 'Hatched', 'Broody hens and machines, pure strains left aside') : null,
    groups: years.flatMap(year => {
      const title = year === null ? 'Season not known' : String(year)
      const table = hatchTable(hatches.filter(({season}) => season === year), `Hatches, ${title}`, 'season')
      return table ? [{title, id: year === null ? 'not-known' : `season-${year}`, table}] : []
    }),
    caution: book.hatches.length === 0 ? '' : 'Rates carry their 95% interval. Eggs of one hen are not independent, one infertile hen clears them all, so the truth may lie wider.',
  }
  return {path: HATCHES, template: 'hatches', title: 'Hatches', section: 'hatches', view, search: {kind: 'index', words: 'hatches eggs fertility settings'}}
}
