import {nearWords, orNear} from '../../records/near.ts'
import {inside} from '../../records/problem.ts'
import type {Linked} from '../linked.ts'
import {sexOfHeading} from '../section-kinds.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const draft = (weights: string) => `---\ndraft: 1\non: 2024-10-01\nweights: {${weights}}\n---\n## General characteristics, male\n\n**Tail.** Of medium length.\n`

export const entry: ManualEntry = {
  code: 'class-weights-odd', severity: 'warning', title: 'Weights by class that cannot be right',
  cause: 'In the latest draft a cockerel is to weigh more than a cock, or a pullet more than a hen; or a class is a letter away from one of these, so that its sex is not known.',
  remedy: 'Mend the weight or the name of the class.',
  wrong: {'standard/1.md': draft('cock: 2.3 kg, cockerel: 3.2 kg')},
  right: {'standard/1.md': draft('cock: 3.2 kg, cockerel: 2.3 kg')},
}

const GROWN = {cockerel: 'cock', pullet: 'hen'} as const
const CLASSES = ['cock', 'cockerel', 'hen', 'pullet', 'male', 'female']

export function check({bench, book}: Linked): void {
  const draft = book.drafts.at(-1)
  if (!draft) return
  const at = (name: string) => inside(draft.at, 'weights', name), of = (name: string) => draft.weights.find(weight => weight.class.toLowerCase() === name)
  for (const young of ['cockerel', 'pullet'] as const) {
    const light = of(young), heavy = of(GROWN[young])
    if (light && heavy && light.grams > heavy.grams && (light.high ?? light.grams) > (heavy.high ?? heavy.grams)) {
      bench.note(slipOf(entry, at(light.class), `a ${young} is to weigh ${light.grams} g and a ${GROWN[young]} ${heavy.grams} g`, 'mend the weights; the younger bird is the lighter'))
    }
  }
  for (const {class: name} of draft.weights) {
    const likely = sexOfHeading(name) === null ? nearWords(name, CLASSES) : []
    if (likely.length > 0) bench.note(slipOf(entry, at(name), `${name} is no class whose sex is known`, orNear(likely, '')))
  }
}
