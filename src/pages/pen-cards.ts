/** A pen in a few lines: who was mated to whom, when, and what came of it. */
import type {Findings} from '../findings/study.ts'
import type {Pen} from '../logbook/book.ts'
import {ofStepWords} from './chicks-of-step.ts'
import {stayWords} from './dates.ts'
import {penPath} from './links.ts'
import {counted, figured, listWords, ofWords, saying, sentence} from './numbers.ts'

export interface PenCard {
  readonly id: string
  readonly link: string
  readonly lines: readonly string[]
}

const MANY = 4

/** `22-004 and 22-009 with nine females` */
export function matingWords(pen: Pen): string {
  const males = pen.males.map(({bird}) => bird.band), many = males.length > MANY
  const say = saying(pen.females.length, many ? males.length : 0)
  const his = males.length === 0 ? 'no male on record' : many ? say(males.length, 'male') : listWords(males)
  return `${his} with ${say(pen.females.length, 'female')}`
}

/** @param step  the step whose page they stand on: which of their chicks are of it is said where not all are */
export function penCards(pens: readonly Pen[], {hatchResults}: Findings, step: string | null = null): readonly PenCard[] {
  return pens.map(pen => {
    const rates = hatchResults.pens.find(each => each.pen === pen)
    const hatches = pen.hatches.length
    const came = hatches === 0 ? 'No hatch yet.' : rates && rates.hatched !== null && rates.eggs !== null
      ? `${figured(hatches, 'hatch', 'hatches')}, ${ofWords(rates.hatched, rates.eggs)} eggs hatched${rates.setAside.length === 0 ? '' : `, ${figured(rates.setAside.length, 'hatch', 'hatches')} set aside`}.` : `${sentence(counted(hatches, 'hatch', 'hatches'))}.`
    const own = step === null ? null : ofStepWords(pen.hatches, step)
    return {id: pen.id, link: penPath(pen), lines: [`${sentence(matingWords(pen))}.`, `${sentence(stayWords(pen.from, pen.to) ?? `season ${pen.season}`)}.`, own === null ? came : `${came} ${sentence(own)}.`]}
  })
}
