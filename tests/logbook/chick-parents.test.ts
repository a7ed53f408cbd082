/** A bird banded later: what its own record leaves unsaid of its parents, its tally says. */
import {describe, expect, it} from 'vitest'
import type {Bird} from '../../src/logbook/book.ts'
import {bookOf, type Files} from './around.ts'

/** Pen A (H-1 × B-1, B-2) and pen B (H-2 × B-3) in one setting; 24-950 out of a tally, 24-951 one of its chicks. */
function bandedLater(tally: string, bird: string, hatchPens = '[2024-A, 2024-B]'): Bird {
  const files: Files = {
    'pens/2024-B.md': '---\nseason: 2024\nmales: [H-2]\nfemales: [B-3]\nfrom: 2024-02-10\nto: 2024-06-01\n---\n',
    'hatches/2024-09.md': `---\npen: ${hatchPens}\nset: 2024-03-02\non: 2024-03-23\nchicks:\n  - {band: 24-951, family: basket-2, dam: B-1}\ntallies:\n  - {chicks: 3, mark: b1, ${tally}}\n---\n`,
    'birds/24-950.md': `---\nband: 24-950\nsex: male\nout-of: {hatch: 2024-09, mark: b1}\n${bird}---\n`,
  }
  const found = bookOf(files).birds.find(each => each.band === '24-950')
  if (!found) throw new Error('no bird')
  return found
}

const pairsOf = ({parentage}: Bird): Record<string, number> => Object.fromEntries(parentage.pairs.map(({sire, dam, chance}) => [`${sire?.band ?? '?'} × ${dam?.band ?? '?'}`, chance]))

describe('a bird banded out of a tally', () => {
  it.each([
    ['dam: B-2', '', {'H-1 × B-2': 1}],
    ['dam: B-2', 'sire: H-1\n', {'H-1 × B-2': 1}],
    ['dam: B-2', 'sire: unknown\n', {'H-1 × B-2': 1}],
    ['dam: B-2', 'dam: unknown\n', {'H-1 × B-2': 1}],
    ['dam: B-2', 'dam: B-1\n', {'H-1 × B-1': 1}],
    ['dam: B-2', 'pen: 2024-A\n', {'H-1 × B-2': 1}],
    ['sire: H-1', 'dam: B-2\n', {'H-1 × B-2': 1}],
    ['sire: H-1', 'dam: {strain: fell-buff}\n', {'H-1 × ?': 1}],
    ['pen: 2024-B', 'sire: H-2\n', {'H-2 × B-3': 1}],
    ['pen: 2024-B', 'dam: unknown\n', {'H-2 × B-3': 1}],
    ['family: basket-2', 'sire: H-1\n', {'H-1 × B-1': 1}],
    ['family: basket-2', 'dam: B-2\n', {'H-1 × B-2': 1}],
  ])('of {%s} that says “%s”', (tally, bird, pairs) => expect(pairsOf(bandedLater(tally, bird))).toEqual(pairs))

  it('keeps its step, where the tally tells the pen', () => {
    expect(bandedLater('pen: 2024-B', 'dam: unknown\n').step.label).toBe('F1')
  })

  it('is of its tally’s family, unless it has one of its own', () => {
    expect(bandedLater('family: basket-2', '').family).toBe('basket-2')
    expect(bandedLater('family: basket-2', 'family: basket-3\n').family).toBe('basket-3')
  })
})
