/** All hatches by season, newest first, with what became of the eggs; steps, seasons, broody hens and machines apart, and what may be read into their differences. */
import {resultsBy} from '../findings/hatch-comparisons.ts'
import type {Findings} from '../findings/study.ts'
import {alikeCaution} from './alike-words.ts'
import {comparisonTable, deadByStage, drawnRates, EGGS_SPEAK_WORDS, hatchesToldApart, hatchesUnlike} from './hatch-compared.ts'
import {hatchFigure, hatchTable, rateWords, ratesTable} from './hatch-rows.ts'
import type {HatchTable} from './hatch-rows.ts'
import {HATCHES, LAY} from './links.ts'
import {counted, figured, sentence} from './numbers.ts'
import type {Figure, Page, Table} from './page.ts'
import {setAsideWords} from './set-aside-words.ts'
import {toldApartWords} from './told-apart-words.ts'

export interface HatchesView {
  readonly lead: string
  readonly empty: string
  readonly figure: Figure | null
  readonly seasons: HatchTable | null
  readonly steps: HatchTable | null
  readonly ways: HatchTable | null
  readonly dead: Table | null
  readonly answer: string
  readonly compared: Table | null
  readonly alike: string
  /** in what the groups that differ were not kept alike */
  readonly unlike: readonly string[]
  readonly groups: readonly {readonly title: string; readonly id: string; readonly table: HatchTable}[]
  readonly caution: string
  /** where it goes on to chicks and hens */
  readonly lay: string
}

export function hatchesPage({hatchResults, life, book}: Findings): Page {
  const {hatches, all} = hatchResults
  const years = [...new Set(hatches.map(({season}) => season))].sort((a, b) => (b ?? -Infinity) - (a ?? -Infinity))
  const drawn = (by: 'step' | 'season' | 'way') => drawnRates([...resultsBy(life.hatching, by).values()])
  // of a project that has hatched pure strains alone there are no groups yet, but there are seasons
  const ofLadder = drawn('season'), bySeason = ofLadder.length > 0 ? ofLadder : hatchResults.seasons.map(rates => ({label: String(rates.season), rates})), ways = drawn('way')
  const view: HatchesView = {
    lead: hatches.length === 0 ? 'No eggs have been set yet.'
      : `${sentence((all.eggs === null ? counted : figured)(hatches.length, 'setting'))} on record${all.eggs === null ? '' : `; on the ladder ${figured(all.eggs, 'egg')} set, hatch of set ${rateWords(all.hatchOfSet)}`}.${setAsideWords(all.setAside).map(words => ` ${words}`).join('')}`,
    empty: hatches.length === 0 ? 'When the first eggs are set, write down how many, from which pen and on what day; candling and hatch can follow.' : '',
    figure: hatchFigure(bySeason, {id: 'eggs', name: 'eggs-by-season', head: 'Figure 1.', what: 'season by season', rows: 'Season'}),
    seasons: ratesTable(bySeason, 'Season', ofLadder.length > 0 ? 'Every season, pure strains left aside' : 'Every season'), steps: ratesTable(drawn('step'), 'Step', 'Every step'),
    ways: ways.length === 2 ? ratesTable(ways, 'Hatched', 'Broody hens and machines, pure strains left aside') : null,
    dead: deadByStage(bySeason, 'Season'), answer: toldApartWords(hatchesToldApart(life.hatchComparisons), 'eggs'), compared: comparisonTable(life.hatchComparisons), alike: alikeCaution([...new Map(life.hatchComparisons.map(({pair, alike}) => [pair, alike])).values()]), unlike: hatchesUnlike(life.hatchComparisons),
    groups: years.flatMap(year => {
      const title = year === null ? 'Season not known' : String(year)
      const table = hatchTable(hatches.filter(({season}) => season === year), `Hatches, ${title}`, 'season')
      return table ? [{title, id: year === null ? 'not-known' : `season-${year}`, table}] : []
    }),
    caution: book.hatches.length === 0 ? '' : EGGS_SPEAK_WORDS, lay: LAY,
  }
  return {path: HATCHES, template: 'hatches', title: 'Hatches', section: 'hatches', view, search: {kind: 'index', words: 'hatches eggs fertility settings'}}
}
