import {inside} from '../../records/problem.ts'
import type {Hatch} from '../book.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const hatch = (hatched: number) => `---\npen: 2024-A\nset: 2024-03-02\neggs: 48\nclear: 5\ndead-in-germ: 2\ndead-in-shell: 4\nhatched: ${hatched}\non: 2024-03-23\n---\n`

export const entry: ManualEntry = {
  code: 'hatch-counts', severity: 'error', title: 'Counts of a hatch that do not add up',
  cause: 'The eggs set, less the clear, the dead in germ, the dead in shell and the bad, are not the chicks hatched. Where a count is wanting, the others must at least leave room for it.',
  remedy: 'Mend whichever count is wrong. Eggs cracked or lost go under bad.',
  wrong: {'hatches/2024-09.md': hatch(38)},
  right: {'hatches/2024-09.md': hatch(37)},
}

export function check({bench, book}: Linked): void {
  const pensNamed = new Map(bench.records.hatch.map(({id, data}) => [id, data.pen?.length ?? 0]))
  for (const hatch of book.hatches) {
    noteCounts(hatch)
    if (!bench.isFaulty(hatch.at.file)) notePens(hatch)
  }

  function noteCounts(hatch: Hatch): void {
    const {eggs, clear, deadInGerm, deadInShell, bad, hatched} = hatch
    if (eggs === null) return
    // in a file that could not be read whole a loss may be wanting or misread: only the eggs and the chicks are held together
    const faulty = bench.isFaulty(hatch.at.file)
    const lost = faulty ? [] : [[clear, 'clear'], [deadInGerm, 'dead in germ'], [deadInShell, 'dead in shell'], [bad, 'bad']] as const
    const stated = lost.flatMap(([count, name]) => (count === null ? [] : [{count, name}]))
    const left = eggs - stated.reduce((sum, {count}) => sum + count, 0)
    const whole = !faulty && clear !== null && deadInGerm !== null && deadInShell !== null
    const less = stated.length === 0 ? '' : ` less ${inWords(stated.map(({count, name}) => `${count} ${name}`))}`
    const set = {at: inside(hatch.at, 'eggs'), note: 'the eggs set are given here'}
    const remedy = 'mend whichever count is wrong'
    if (hatched === null ? left < 0 : hatched > left || (whole && hatched !== left)) {
      const reason = left < 0 ? `more eggs were lost than set: ${eggs} set${less}`
        : stated.length === 0 ? `${hatched ?? 0} hatched, but only ${eggs} were set` : `${hatched ?? 0} hatched, but ${eggs} set${less} leave ${left}`
      bench.note(slipOf(entry, inside(hatch.at, hatched === null ? 'eggs' : 'hatched'), reason, remedy, ...(hatched === null ? [] : [set])))
    }
  }

  function notePens({id, at, eggs, pens}: Hatch): void {
    // a pen whose own record is at fault is not among them, and its eggs are not missed a second time
    if (eggs === null || pens.length < (pensNamed.get(id) ?? 0) || pens.length === 0 || pens.some(pen => pen.eggs === null)) return
    const sum = pens.reduce((total, pen) => total + (pen.eggs ?? 0), 0)
    if (sum !== eggs) bench.note(slipOf(entry, inside(at, 'pen'), `the pens’ eggs make ${sum}, but ${eggs} were set`, 'mend whichever count is wrong', {at: inside(at, 'eggs'), note: 'the eggs set are given here'}))
  }
}

const inWords = (parts: readonly string[]): string => (parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1) ?? ''}`)
