import {inside} from '../../records/problem.ts'
import type {Bird} from '../book.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const HATCH = '---\npen: 2024-A\nset: 2024-03-02\non: 2024-03-23\nchicks:\n  - {band: 24-901, sex: male}\n---\n'
const show = (name: string) => `---\nname: Autumn show\non: 2024-11-02\nentries:\n  - {bird: 24-901, class: ${name}, result: 2 of 5}\n---\n`

export const entry: ManualEntry = {
  code: 'class-of-other-sex', severity: 'warning', title: 'A bird shown in a class of the other sex',
  cause: 'A bird recorded as a male stands in a class that is called after hens or pullets, or a female in one called after cocks or cockerels.',
  remedy: 'Mend the band, the class or the bird’s sex. Where it was shown under a mistaken sex, write the sexings in turn: sex: [{is: female, on: 2024-06}, {is: male, on: 2024-12}].',
  wrong: {'hatches/2024-09.md': HATCH, 'shows/2024-11-02-ternhouse.md': show('pullet')},
  right: {'hatches/2024-09.md': HATCH, 'shows/2024-11-02-ternhouse.md': show('cockerel')},
}

const WORDS = {male: /\b(?:cocks?|cockerels?|roosters?|drakes?|males?)\b/i, female: /\b(?:hens?|pullets?|females?)\b/i} as const

export function check({bench, book, doubtful}: Linked): void {
  for (const show of book.shows) {
    for (const {bird, class: name, at} of show.entries) {
      const sex = name === null ? null : sexOfClass(name)
      if (name === null || sex === null || doubtful.has(bird) || bird.sex === 'unknown' || bird.sex === sex || wasTakenFor(bird, sex)) continue
      bench.note(slipOf(entry, inside(at, 'class'), `${bird.band} is recorded as ${bird.sex}, but was shown in the class “${name}”`, 'mend the band, the class, or the bird’s sex',
        {at: bird.at, note: `${bird.band} stands here`}))
    }
  }
}

/** The sex a class is called after; null where it names neither, or both. */
export function sexOfClass(name: string): 'male' | 'female' | null {
  const male = WORDS.male.test(name), female = WORDS.female.test(name)
  return male === female ? null : male ? 'male' : 'female'
}

const wasTakenFor = ({sexings}: Bird, sex: 'male' | 'female'): boolean => sexings.some(({is}) => is === sex)
