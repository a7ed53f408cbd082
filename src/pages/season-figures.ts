/** Every season's hatching, livability and lay: a chart a measure. */
import {bySeason, type SeasonRow} from '../charts/by-season.ts'
import {hasRows} from '../charts/chart-spec.ts'
import type {SeasonOfLife} from '../findings/seasons-of-life.ts'
import {CHICKS_SPEAK_OF} from './livability-rows.ts'
import {EGGS_SPEAK_OF} from './hatch-compared.ts'
import {HENS_SPEAK_OF} from './lay-rows.ts'
import {limits, listWords, ofWords, percent, figured} from './numbers.ts'
import type {Cell, Figure} from './page.ts'

interface Told extends SeasonRow {
  readonly count: string
  readonly speaksOf: string
}

function hatchingOf({season, hatching}: SeasonOfLife): Told[] {
  if (!hatching || hatching.share.kind !== 'share') return []
  const {share, drawn, speaksOf} = hatching
  return [{label: season, share: share.value, interval: drawn ?? share.interval, count: ofWords(share.count, share.total), speaksOf: EGGS_SPEAK_OF[speaksOf]}]
}

const livingOf = ({season, livability}: SeasonOfLife): Told[] => (livability ? [{label: season, share: livability.share, interval: livability, count: figured(livability.n, 'chick'), speaksOf: CHICKS_SPEAK_OF[livability.kind]}] : [])

const layingOf = ({season, lay}: SeasonOfLife): Told[] => (lay ? [{label: season, share: Math.min(1, lay.henDay.ratio), interval: lay.henDay.interval, count: `${lay.eggs} in ${figured(lay.henDays, 'hen-day')}`, speaksOf: lay.henDay.interval ? HENS_SPEAK_OF[lay.speaksOf] : lay.speaksOf === 'mixed' ? 'pens and hens: no limits together' : 'no limits'}] : [])

const FIGURES = [
  {id: 'hatching', title: 'Hatch of set by season', caption: 'Hatch of set by season, %, pure strains left aside.', counted: 'Hatched', of: hatchingOf},
  {id: 'living', title: 'Chicks that lived to 8 weeks, by season of hatch', caption: 'Chicks that lived to 8 weeks, %, by the season they hatched in.', counted: 'Followed', of: livingOf},
  {id: 'laying', title: 'Hen-day rate by season', caption: 'Eggs of a hundred hens in a day, by season.', counted: 'Eggs', of: layingOf},
] as const

/** Those of which anything is on record, numbered in turn. */
export function seasonFigures(seasons: readonly SeasonOfLife[]): readonly Figure[] {
  const drawn = FIGURES.flatMap(({of, ...figure}) => {
    const rows = seasons.flatMap(of)
    return hasRows(rows) ? [{...figure, rows}] : []
  })
  return drawn.map(({id, title, caption, counted, rows}, place): Figure => ({
    kind: 'figure', id, name: `${id}-by-season`, head: `Figure ${place + 1}.`, title, caption: `${caption} Lines are the 95% interval.`,
    description: `${title}: ${listWords(rows.map(({label, share, interval}) => `${label} ${percent(share ?? 0)} per cent${interval ? `, ${limits(interval)}` : ''}`))}.`, spec: bySeason(rows),
    table: {
      columns: [{head: 'Season'}, {head: counted}, {head: '%', number: true}, {head: '95%'}, {head: 'Speaks of'}],
      rows: rows.map(({label, count, share, interval, speaksOf}): readonly Cell[] => [label, count, percent(share ?? 0), interval ? limits(interval) : '–', speaksOf]),
    },
  }))
}
