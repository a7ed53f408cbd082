import {nearWords, orNear} from '../../records/near.ts'
import {inside} from '../../records/problem.ts'
import {latestDraft} from '../latest-draft.ts'
import type {Linked} from '../linked.ts'
import {sexOfHeading} from '../section-kinds.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const draft = (weights: string) => `---\ndraft: 1\non: 2024-10-01\nweights: {${weights}}\n---\n## General characteristics, male\n\n**Tail.** Of medium length.\n`

export const entry: ManualEntry = {
  code: 'class-weights-odd', severity: 'warning', title: 'Weights by class that cannot be right',
  cause: 'In the latest draft a cockerel is to weigh more than a cock, or a pullet more than a hen, or the female of an age more than the male (common practice, no source); or a class is a letter away from one of these, so that its sex is not known.',
  remedy: 'Mend the weight or the name of the class.',
  wrong: {'standard/1.md': draft('cock: 2.3 kg, cockerel: 3.2 kg')},
  right: {'standard/1.md': draft('cock: 3.2 kg, cockerel: 2.3 kg')},
}

/** The lighter first. That the hen is the lighter sex is common practice, no source. */
const PAIRS = [
  ['cockerel', 'cock', 'the younger bird is the lighter'], ['pullet', 'hen', 'the younger bird is the lighter'], ['hen', 'cock', 'the hen is the lighter'], ['pullet', 'cockerel', 'the pullet is the lighter'],
  ['female', 'male', 'the female is the lighter'],
] as const
const CLASSES = ['cock', 'cockerel', 'hen', 'pullet', 'male', 'female']

export function check({bench, book}: Linked): void {
  const draft = latestDraft({bench, book})
  if (!draft) return
  const at = (name: string) => inside(draft.at, 'weights', name), of = (name: string) => draft.weights.find(weight => weight.class.toLowerCase() === name)
  const written = new Map(bench.records.draft.find(record => record.at.file === draft.at.file)?.data.weights?.map(({key, value: {low, high}}) => [key, low === high ? low.text : `${low.text} to ${high.text}`]))
  for (const [lighter, heavier, because] of PAIRS) {
    const light = of(lighter), heavy = of(heavier)
    if (light && heavy && light.grams > heavy.grams && (light.high ?? light.grams) > (heavy.high ?? heavy.grams)) {
      bench.note(slipOf(entry, at(light.class), `a ${lighter} is to weigh ${written.get(light.class) ?? ''} and a ${heavier} ${written.get(heavy.class) ?? ''}`, `mend the weights; ${because}`))
    }
  }
  for (const {class: name} of draft.weights) {
    const likely = sexOfHeading(name) === null ? nearWords(name, CLASSES) : []
    if (likely.length > 0) bench.note(slipOf(entry, at(name), `${name} is no class whose sex is known`, orNear(likely, '')))
  }
}
