import {isoDay} from '../../records/dates.ts'
import {inside} from '../../records/problem.ts'
import type {Span} from '../band-book.ts'
import type {Hatch, Pen, Stay} from '../book.ts'
import {malesAt, malesMetBy, MOST_DAYS_KEPT} from '../laying.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const pen = (from: string) => `---\nseason: 2023\nmales: [{band: H-1, to: 2023-02-12}, {band: H-2, from: ${from}}]\nfemales: [B-1]\nfrom: 2023-01-10\nto: 2023-06-01\n---\n`
const HATCH = '---\npen: 2023-B\nlaid: 2023-03-16..2023-03-24\nset: 2023-03-25\non: 2023-04-15\n---\n'

export const entry: ManualEntry = {
  code: 'no-male-then', severity: 'warning', title: 'Eggs laid while no male was with the hens',
  cause: 'By their dates no male of the pen was with the hens when the eggs were laid, nor so shortly before that they can have kept his sperm (sperm-store in project.md, 21 days where it says nothing).',
  remedy: 'Mend the male’s days in the pen, or the laying days. Until then every male of the pen is held for a possible sire.',
  wrong: {'pens/2023-B.md': pen('2023-04-25'), 'hatches/2023-09.md': HATCH},
  right: {'pens/2023-B.md': pen('2023-03-01'), 'hatches/2023-09.md': HATCH},
}

export function check({bench, book, records, staysOf, layingOf}: Linked): void {
  const {spermStoreDays} = book.project
  for (const hatch of book.hatches) {
    const laying = layingOf(hatch)
    if (laying) for (const {pen} of hatch.pens) if (isWithoutMale(pen, laying)) note(hatch, pen, laying)
  }

  function isWithoutMale(pen: Pen, laying: Span): boolean {
    const males = pen.males.filter(({bird}) => bird.sex !== 'female')
    // a male that was not found may be the one; a pen that was not together then, or a male dead by then, is another rule's
    return males.length > 0 && records.pen.get(pen)?.data.males.length === pen.males.length
      && males.some(({from, to}) => from || to) && males.every(stay => isAway(stay, pen, laying, spermStoreDays)) && malesAt(pen, laying, spermStoreDays).length === 0
      && pen.females.every(({bird}) => malesMetBy(bird, pen, staysOf.get(bird) ?? [], laying, spermStoreDays).size === 0)
  }

  function note(hatch: Hatch, pen: Pen, laying: Span): void {
    const stays = pen.males.map(stay => `${stay.bird.band} ${daysOf(stay, pen)}`).join(', ')
    const laid = hatch.laid ? '' : ` (at most ${MOST_DAYS_KEPT} days before they were set)`
    const assumed = pen.males.length === 1 ? 'he is held for the sire all the same' : 'each of them is held for a possible sire all the same'
    bench.note(slipOf(entry, inside(hatch.at, hatch.laid ? 'laid' : hatch.set ? 'set' : 'on'),
      `the eggs were laid ${isoDay(laying.from)} to ${isoDay(laying.to)}${laid}, while no male was in pen ${pen.id} (${stays}); hens keep sperm for ${spermStoreDays} days, and ${assumed}`,
      'mend the males’ days in the pen, or the laying days', ...pen.males.map(({bird, at}) => ({at, note: `${bird.band} stands here`}))))
  }
}

/** By his own and the pen's days alone, whatever became of him. */
function isAway(stay: Stay, pen: Pen, laying: Span, spermStoreDays: number): boolean {
  const from = stay.from ?? pen.from, to = stay.to ?? pen.to
  return (from !== null && from.first > laying.to) || (to !== null && to.last + spermStoreDays < laying.from)
}

function daysOf(stay: Stay, pen: Pen): string {
  const from = stay.from ?? pen.from, to = stay.to ?? pen.to
  return [from ? `from ${from.text}` : '', to ? `to ${to.text}` : ''].filter(words => words !== '').join(' ')
}
