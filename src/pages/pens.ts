/** All pens as cards, season by season, the latest first. */
import type {Findings} from '../findings/study.ts'
import {PENS} from './links.ts'
import {saying, sentence} from './numbers.ts'
import type {Page} from './page.ts'
import {penCards} from './pen-cards.ts'
import type {PenCard} from './pen-cards.ts'

export interface PensView {
  readonly lead: string
  readonly empty: string
  readonly seasons: readonly {readonly title: string; readonly id: string; readonly cards: readonly PenCard[]}[]
}

export function pensPage(findings: Findings): Page {
  const {pens} = findings.book
  const seasons = [...new Set(pens.map(pen => pen.season))].sort((a, b) => b - a)
  const say = saying(pens.length, seasons.length)
  const view: PensView = {
    lead: pens.length === 0 ? 'No birds have been penned up yet.' : `${sentence(say(pens.length, 'pen'))} in ${say(seasons.length, 'season')}: who was mated to whom, and what came of it.`,
    empty: pens.length === 0 ? 'A pen is one mating group in one season. Write down its males, its females and from when to when, and every chick of it finds its parents by itself.' : '',
    seasons: seasons.map(season => ({title: String(season), id: `season-${season}`, cards: penCards(pens.filter(pen => pen.season === season), findings)})),
  }
  return {path: PENS, template: 'pens', title: 'Pens', section: 'pens', view, search: {kind: 'index', words: 'pens matings seasons'}}
}
