/** Life and lay: season by season how eggs hatched, chicks lived and hens laid; feed; and what may be read into differences. */
import type {Findings} from '../findings/study.ts'
import {weightMeasures} from '../findings/weight-courses.ts'
import {alikeCaution} from './alike-words.ts'
import {groupName} from './hatch-compared.ts'
import {eggWeightWords, feedTable, firstEggTable, hensTable, layComparisonTable, layGroupsTable, layToldApart, layUnlike, pensTable} from './lay-rows.ts'
import {HATCHES, LAY, traitPath} from './links.ts'
import {lifeComparisonTable, livabilityTable, livesToldApart, livesUnlike} from './livability-rows.ts'
import {counted, figured, listWords} from './numbers.ts'
import type {Figure, Page, Table} from './page.ts'
import {seasonFigures} from './season-figures.ts'
import {setAsideWords} from './set-aside-words.ts'
import {toldApartWords} from './told-apart-words.ts'

export interface LayView {
  readonly lead: string
  readonly figures: readonly Figure[]
  readonly hatches: string
  /** which settings were set aside, and why */
  readonly aside: readonly string[]
  readonly living: {readonly table: Table; readonly answer: string; readonly compared: Table | null; readonly alike: string; readonly unlike: readonly string[]} | null
  readonly laying: {readonly groups: Table | null; readonly pens: Table | null; readonly hens: Table | null; readonly words: readonly string[]; readonly answer: string; readonly compared: Table | null; readonly alike: string; readonly unlike: readonly string[]} | null
  readonly firstEggs: Table | null
  /** the traits that tell how steps grow */
  readonly growth: readonly {readonly name: string; readonly link: string}[]
  readonly feed: Table | null
}

function layingView({life, book}: Findings): LayView['laying'] {
  const {sheets, groups, comparisons, mixed, twice} = life.lay, {units} = book.project
  return sheets.length === 0 ? null : {
    pens: pensTable(sheets), hens: hensTable(sheets), answer: toldApartWords(layToldApart(comparisons), 'hens'), groups: layGroupsTable(groups.filter(({by}) => by === 'step')), compared: layComparisonTable(comparisons), alike: alikeCaution(comparisons.map(({alike}) => alike)), unlike: layUnlike(comparisons),
    words: [
      ...eggWeightWords(groups.filter(({by}) => by === 'step'), units),
      'A day without a row was not counted: neither its eggs nor its hens are in any rate. A day without eggs wants a row with 0.',
      ...(mixed > 0 ? [`${figured(mixed, 'sheet')} of pens with hens of several steps, or of none on record, ${mixed === 1 ? 'is' : 'are'} in no step.`] : []),
      ...(twice > 0 ? [`${figured(twice, 'sheet')} of hens whose pen was counted on the same days ${twice === 1 ? 'is' : 'are'} in no group, so that no egg counts twice.`] : []),
    ],
  }
}

export function layPage(findings: Findings): Page {
  const {life, book} = findings, {units} = book.project
  const living = livabilityTable(life.livability.groups.filter(({group}) => group.by === 'step' || group.by === 'way').map(one => ({name: groupName(one.group), life: one}))), {comparisons} = life.livability
  const laying = layingView(findings), weights = weightMeasures(book.traits)
  const growth = life.growth.hatches.size === 0 ? [] : book.traits.filter(({measure}) => measure !== null && weights.has(measure)).map(trait => ({name: trait.name, link: traitPath(trait)}))
  const feed = feedTable(life.feed, units), firsts = firstEggTable(life.firstEggs.filter(({by}) => by === 'step'))
  const there = [...(living ? ['how chicks lived'] : []), ...(laying ? ['how hens laid'] : []), ...(feed ? ['what they ate'] : [])]
  const view: LayView = {
    lead: there.length === 0 ? 'No chick has hatched and no egg has been counted yet.' : `By ${counted(life.seasons.length, 'season')}: ${listWords(there)}.`, figures: seasonFigures(life.seasons), hatches: HATCHES, aside: setAsideWords(life.groups.steps.flatMap(({hatches}) => hatches)),
    living: living && {table: living, answer: toldApartWords(livesToldApart(comparisons), 'chicks'), compared: lifeComparisonTable(comparisons), alike: alikeCaution(comparisons.map(({alike}) => alike)), unlike: livesUnlike(comparisons)}, laying, firstEggs: firsts, growth, feed,
  }
  return {path: LAY, template: 'lay', title: 'Life and lay', section: null, view, search: {kind: 'index', words: 'life lay eggs livability growth feed hen-day seasons'}}
}
