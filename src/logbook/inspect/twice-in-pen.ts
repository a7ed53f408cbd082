import type {Pen, Stay} from '../book.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const pen = (females: string) => `---\nseason: 2024\nmales: [H-1]\nfemales: [${females}]\n---\n`

export const entry: ManualEntry = {
  code: 'twice-in-pen', severity: 'error', title: 'A bird that stands twice in one pen',
  cause: 'The males or the females of a pen name the same bird twice, for the same days: a band written twice, or one of the two misread.',
  remedy: 'Take one of the two out, or mend its band. A bird that went and came back has days in each: {band: H-1, to: 2024-03-01}, {band: H-1, from: 2024-04-01}.',
  wrong: {'pens/2024-B.md': pen('B-2, B-2')},
  right: {'pens/2024-B.md': pen('B-2, B-3')},
}

export function check({bench, book, doubtful}: Linked): void {
  for (const pen of book.pens) {
    for (const side of ['males', 'females'] as const) {
      const said = new Set<unknown>()
      pen[side].forEach((stay, index) => {
        if (said.has(stay.bird) || doubtful.has(stay.bird)) return
        const first = pen[side].slice(0, index).find(other => other.bird === stay.bird && areTogether(other, stay, pen))
        if (!first) return
        said.add(stay.bird)
        bench.note(slipOf(entry, stay.at, `${stay.bird.band} stands twice among the ${side} of pen ${pen.id}`,
          `take one of the two out, or mend its band; if it went and came back, write its days: {band: ${stay.bird.band}, from: …, to: …}`, {at: first.at, note: 'it first stands at'}))
      })
    }
  }
}

/** Certainly on some same day; the day on which one stay ends and the other begins is none. */
function areTogether(one: Stay, other: Stay, pen: Pen): boolean {
  const start = (stay: Stay) => (stay.from ?? pen.from)?.last ?? -Infinity, end = (stay: Stay) => (stay.to ?? pen.to)?.first ?? Infinity
  return Math.max(start(one), start(other)) < Math.min(end(one), end(other))
}
