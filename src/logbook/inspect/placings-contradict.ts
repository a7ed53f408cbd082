import {inside, type Slip} from '../../records/problem.ts'
import type {ShowEntry} from '../book.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const show = (second: string) => `---\nname: Autumn show\non: 2024-11-02\nentries:\n  - {bird: H-1, class: cock, result: 1 of 4}\n  - {bird: H-2, class: cock, result: ${second}}\n---\n`

export const entry: ManualEntry = {
  code: 'placings-contradict', severity: 'warning', title: 'Placings of one class that cannot all be right',
  cause: 'In one class of a show, under one judge, two birds have the same place, or their lines say that different numbers were shown, or more of your birds stand there than were shown; or a bird was placed and disqualified.',
  remedy: 'Mend the placings. Where two birds shared a place, write so in both lines: 2= of 7.',
  wrong: {'shows/2024-11-02-ternhouse.md': show('1 of 4')},
  right: {'shows/2024-11-02-ternhouse.md': show('2 of 4')},
}

export function check({bench, book}: Linked): void {
  for (const {entries} of book.shows) {
    for (const one of entries) if (one.disqualified && one.place !== null) {
      bench.note(slipOf(entry, inside(one.at, 'result'), `${one.bird.band} is disqualified, and placed ${one.place}`, 'take the placing out, or disqualified'))
    }
    const classes = new Map<string, ShowEntry[]>()
    for (const one of entries) if (one.class !== null) {
      const key = `${one.class}\n${one.judge ?? ''}`
      classes.set(key, [...(classes.get(key) ?? []), one])
    }
    for (const all of classes.values()) {
      const [fault] = [...shownOtherwise(all), ...samePlace(all)]
      if (fault) bench.note(fault)
    }
  }
}

/** One slip a class: that its lines do not agree on how many were shown. */
function shownOtherwise(all: readonly ShowEntry[]): Slip[] {
  const numbered = all.filter(({of}) => of !== null), [first] = numbered, other = numbered.find(({of}) => of !== first?.of)
  if (first && other) {
    return [slipOf(entry, inside(other.at, 'result'), `${other.of} were shown in the class “${other.class}” by this line, and ${first.of} by another`, 'mend one of the two numbers', {at: first.at, note: 'the other stands here'})]
  }
  // a bird entered twice is told of by itself
  const birds = new Set(all.map(({bird}) => bird)).size, shown = first?.of ?? null
  return first && shown !== null && birds > shown ? [slipOf(entry, inside(first.at, 'result'), `${shown} were shown in the class “${first.class}”, but ${birds} birds stand in it`, 'mend the number or the classes')] : []
}

function samePlace(all: readonly ShowEntry[]): Slip[] {
  return all.flatMap((one, index) => {
    const before = all.slice(0, index).find(({place, bird}) => place !== null && place === one.place && bird !== one.bird)
    if (!before || (before.shared && one.shared)) return []
    return [slipOf(entry, inside(one.at, 'result'), `${one.bird.band} and ${before.bird.band} both have place ${one.place} in the class “${one.class}”`,
      `mend one of the two; where they shared it, write ${one.place}=${one.of === null ? '' : ` of ${one.of}`} for both`, {at: before.at, note: `${before.bird.band} stands here`})]
  })
}
