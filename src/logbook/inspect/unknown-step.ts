import {near, orNear} from '../../records/near.ts'
import {inside, type Spot} from '../../records/problem.ts'
import type {Linked} from '../linked.ts'
import {parseStepName} from '../step-names.ts'
import {told} from '../tellings.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const step = (joins: string) => `---\nname: SY1\njoins: [${joins}]\n---\n`

export const entry: ManualEntry = {
  code: 'unknown-step', severity: 'warning', title: 'A word that is no step',
  cause: 'The ladder, a step that joins others, a bird’s step or a pen’s intends names something that is neither F1, F2 …, BC1, BC1F2 …, a strain, nor a step of your own in steps/.',
  remedy: 'Write the step as it is called, or add it to steps/ with what it joins.',
  wrong: {'steps/SY1.md': step('BC2, holm-whit')},
  right: {'steps/SY1.md': step('BC2, holm-white')},
}

export function check({bench, book, tellings, steps}: Linked): void {
  const strains = book.strains.map(strain => strain.id)
  const names = [...strains, ...steps.ownNames, ...book.project.ladder, 'strain']
  const isKnown = (word: string): boolean => {
    const name = parseStepName(word, steps.ownNames)
    if (!name) return strains.includes(word) || word === 'strain' || book.strains.some(strain => strain.name === word)
    return (name.donor === null || strains.some(strain => name.donor?.includes(strain))) && (name.to === null || strains.includes(name.to))
  }
  const see = (word: string, at: Spot) => {
    if (isKnown(word)) return
    const likely = near(word, names.filter(name => name !== word))
    bench.note(slipOf(entry, at, `“${word}” is no step`, orNear(likely, 'write F1, BC2 or BC2F3, a strain’s id, or a step of your own in steps/')))
  }
  book.project.ladder.forEach((word, index) => see(word, inside(book.project.at, 'ladder', index)))
  for (const {id, data, at} of bench.records.step) {
    data.joins?.forEach((word, index) => see(word, inside(at, 'joins', index)))
    if (!data.joins) see(data.name ?? id, data.name === undefined ? at : inside(at, 'name'))
  }
  for (const pen of book.pens) if (pen.intends !== null) see(pen.intends, inside(pen.at, 'intends'))
  for (const bird of book.birds) {
    if (bird.stepWritten === null) continue
    see(bird.stepWritten, inside(told(tellings.get(bird) ?? [], 'step')?.by.at ?? bird.at, 'step'))
  }
}
