/** What comes next, in words: hatches due, ages to weigh and score at, ends of withholding, papers and waivers, days by which something is asked, steps planned. */
import type {Upcoming} from '../findings/upcoming.ts'
import type {Bird} from '../logbook/book.ts'
import type {Day} from '../records/dates.ts'
import {dayWords} from './dates.ts'
import {carePath, DOSSIER, hatchPath, stepPath, traitPath} from './links.ts'
import {figured, listWords} from './numbers.ts'

export interface Coming {
  readonly when: string
  readonly title: string
  readonly link: string
  readonly text: string
}

/** Bands named at most; a longer list says how many. */
const NAMED = 6

const birdsWords = (birds: readonly Bird[]): string =>
  birds.length <= NAMED ? listWords(birds.map(bird => bird.band)) : `${figured(birds.length, 'bird')}, ${listWords(birds.slice(0, 3).map(bird => bird.band))} among them`

export function comingWords(entry: Upcoming, asOf: Day): Coming {
  const when = entry.on === null ? 'no day set' : entry.on < asOf ? `since ${dayWords(entry.on)}` : dayWords(entry.on)
  switch (entry.kind) {
    case 'stop-turning': return {when, title: `Hatch ${entry.hatch.id}`, link: hatchPath(entry.hatch), text: 'Stop turning the eggs.'}
    case 'hatch-due': return {when, title: `Hatch ${entry.hatch.id} due`, link: hatchPath(entry.hatch), text: `${entry.hatch.eggs === null ? 'Eggs set' : figured(entry.hatch.eggs, 'egg')}. Band in the basket, before anything is moved.`}
    case 'hatch-result-wanting': return {when, title: `Hatch ${entry.hatch.id}`, link: hatchPath(entry.hatch), text: 'Its day has passed and nothing hatched is written down.'}
    case 'weigh': return {when, title: entry.trait.name, link: traitPath(entry.trait), text: `To be taken ${entry.from === entry.to ? `on ${dayWords(entry.on)}` : `between ${dayWords(entry.from)} and ${dayWords(entry.to)}`}: ${birdsWords(entry.birds)}.`}
    case 'score': return {when, title: entry.trait.name, link: traitPath(entry.trait), text: `${entry.on < asOf ? 'Could be scored since then, and is not' : 'Can be scored from then'}: ${birdsWords(entry.birds)}.`}
    case 'eggs-withheld': return {when, title: 'Eggs withheld', link: carePath(entry.care), text: 'The last day, as far as the record says; a veterinarian and the law decide.'}
    case 'meat-withheld': return {when, title: 'Meat withheld', link: carePath(entry.care), text: 'The last day, as far as the record says; a veterinarian and the law decide.'}
    case 'paper-ends': return {when, title: entry.paper.title, link: DOSSIER, text: 'This paper holds until then.'}
    case 'waiver-ends': return {when, title: entry.requirement.title, link: DOSSIER, text: 'It is waived until then.'}
    case 'asked-by': return {when, title: entry.requirement.title, link: DOSSIER, text: 'It must be reached by then.'}
    case 'planned-step': return {when: 'planned', title: entry.label, link: stepPath(entry.label), text: 'The next step of the ladder, not reached yet.'}
  }
}
