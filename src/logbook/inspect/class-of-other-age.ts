import {yearOf} from '../../records/dates.ts'
import {inside} from '../../records/problem.ts'
import type {Bird, Show} from '../book.ts'
import type {Linked} from '../linked.ts'
import {sexOfClass} from './class-of-other-sex.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const HATCH = '---\npen: 2024-A\nset: 2024-03-02\non: 2024-03-23\nchicks:\n  - {band: 24-901, sex: male}\n---\n'
const show = (name: string) => `---\nname: Autumn show\non: 2024-11-02\nentries:\n  - {bird: 24-901, class: ${name}, result: 2 of 5}\n---\n`

export const entry: ManualEntry = {
  code: 'class-of-other-age', severity: 'warning', title: 'A bird shown in a class of the other age',
  cause: 'A bird stands in a class that is called after young birds (cockerel, pullet) though it hatched in an earlier year and was over a year old, or in one of grown birds (cock, hen) in the year it hatched. A bird is young in the calendar year of its hatching: common practice, no source. Between that and a full year either class passes.',
  remedy: 'Mend the band, the class or the day of the show.',
  wrong: {'hatches/2024-09.md': HATCH, 'shows/2024-11-02-ternhouse.md': show('cock')},
  right: {'hatches/2024-09.md': HATCH, 'shows/2024-11-02-ternhouse.md': show('cockerel')},
}

const SAID = {young: /\b(?:young|juniors?)\b/i, grown: /\b(?:old|adults?|grown)\b/i} as const
const CALLED = {young: /\b(?:cockerels?|pullets?)\b/i, grown: /\b(?:cocks?|hens?)\b/i} as const

export function check({bench, book, doubtful}: Linked): void {
  for (const show of book.shows) {
    for (const {bird, class: name, at} of show.entries) {
      const age = name === null ? null : ageOf(name), sex = name === null ? null : sexOfClass(name)
      // of a class of the other sex it is said that the line is wrong
      if (name === null || age === null || doubtful.has(bird) || (sex !== null && bird.sex !== 'unknown' && sex !== bird.sex) || fits(bird, show, age)) continue
      bench.note(slipOf(entry, inside(at, 'class'), `${bird.band} hatched ${bird.hatched?.text ?? ''} and was shown ${show.on.text} in the class “${name}”`, 'mend the band, the class or the day', {at: bird.at, note: `${bird.band} stands here`}))
    }
  }
}

/** The age a class is called after, by its plain word before its noun (`young hens`); null where it names neither, or both. */
function ageOf(name: string): 'young' | 'grown' | null {
  for (const words of [SAID, CALLED]) {
    const young = words.young.test(name), grown = words.grown.test(name)
    if (young !== grown) return young ? 'young' : 'grown'
    if (young) return null
  }
  return null
}

/** Doubt is in its favour, in either way of counting and of a day that is not known. */
function fits({hatched}: Bird, {on}: Show, age: 'young' | 'grown'): boolean {
  if (hatched === null) return true
  if (age === 'grown') return yearOf(on.last) > yearOf(hatched.first)
  return yearOf(on.first) <= yearOf(hatched.last) || on.first - hatched.last <= 366
}
