/** A pen in a few lines: who was mated to whom, when, and what came of it. */
import type {Findings} from '../findings/study.ts'
import type {Pen} from '../logbook/book.ts'
import {stayWords} from './dates.ts'
import {penPath} from './links.ts'
import {counted, listWords, ofWords, sentence} from './numbers.ts'

export interface PenCard {
  readonly id: string
  readonly link: string
  readonly lines: readonly string[]
}

const MANY = 4

/** `22-004 and 22-009 with 9 females` */
export function matingWords(pen: Pen): string {
  const males = pen.males.map(({bird}) => bird.band)
  const his = males.length === 0 ? 'no male on record' : males.length > MANY ? `${males.length} males` : listWords(males)
  return `${his} with ${counted(pen.females.length, 'female')}`
}

export function penCards(pens: readonly Pen[], {hatchResults}: Findings): readonly PenCard[] {
  return pens.map(pen => {
    const rates = hatchResults.pens.find(each => each.pen === pen)
    const came = pen.hatches.length === 0 ? 'No hatch yet.'
      : `${sentence(counted(pen.hatches.length, 'hatch', 'hatches'))}${rates && rates.hatched !== null && rates.eggs !== null ? `, ${ofWords(rates.hatched, rates.eggs)} eggs hatched` : ''}.`
    return {id: pen.id, link: penPath(pen), lines: [`${sentence(matingWords(pen))}.`, `${sentence(stayWords(pen.from, pen.to) ?? `season ${pen.season}`)}.`, came]}
  })
}
