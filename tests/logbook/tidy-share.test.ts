import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import {figuresTable} from '../../src/findings/figures.ts'
import {sumOfShares, tidyShare} from '../../src/logbook/tidy-share.ts'
import {bookOf, type Files} from './around.ts'

describe('tidyShare(share)', () => {
  it.each([[0.7000000000000001, 0.7], [1 - 0.7, 0.3], [0.1 + 0.2, 0.3], [0.7 * 0.1, 0.07], [0.9999999999999999, 1], [1 - 0.99, 0.01]])('%s is %s but for its rounding', (share, tidy) => expect(tidyShare(share)).toBe(tidy))

  it.each([1 / 3, 2 / 3, 1 / 7, 0.5 ** 13, 0.5 ** 40, 1 - 0.5 ** 20, 1e-16, 0, 1, 5 / 12])('%s is a figure of its own', share => expect(tidyShare(share)).toBe(share))

  it('never moves a share by more than its sum may be off, and does nothing twice', () => {
    fc.assert(fc.property(fc.double({min: 0, max: 1, noNaN: true}), share => {
      expect(Math.abs(tidyShare(share) - share)).toBeLessThanOrEqual(1e-15)
      expect(tidyShare(tidyShare(share))).toBe(tidyShare(share))
    }))
  })
})

describe('sumOfShares(shares)', () => {
  it('gives a stated chance back, over however many hens it was spread', () => {
    for (let hens = 1; hens <= 60; hens++) {
      for (const stated of [0.7, 0.3, 0.55, 0.9, 0.05]) expect(sumOfShares(Array<number>(hens).fill((1 / hens) * stated))).toBe(stated)
    }
  })

  it('agrees with adding one by one', () => {
    fc.assert(fc.property(fc.array(fc.double({min: 0, max: 1, noNaN: true}), {maxLength: 80}), shares => {
      const slow = shares.reduce((sum, share) => sum + share, 0)
      expect(Math.abs(sumOfShares(shares) - slow)).toBeLessThanOrEqual(1e-12 * Math.max(1, slow))
    }))
  })
})

describe('figures birds and strains', () => {
  const hens = (count: number): Files => ({
    ...Object.fromEntries(Array.from({length: count}, (_, index) => [`birds/B-1${index}.md`, `---\nband: B-1${index}\nsex: female\nstrain: fell-buff\nhatched: 2022-03-20\n---\n`])),
    'birds/X-1.md': '---\nband: X-1\nsex: male\nsire: {strain: fell-buff}\ndam: H-3\nhatched: 2023-03-20\n---\n',
    'pens/2024-B.md': `---\nseason: 2024\nmales: {X-1: 70%, H-2: 30%}\nfemales: [${Array.from({length: count}, (_, index) => `B-1${index}`).join(', ')}]\n---\n`,
    'hatches/2024-09.md': '---\npen: 2024-B\non: 2024-04-23\nhatched: 1\nchicks:\n  - {band: 24-901}\n---\n',
  })
  it.each([1, 2, 3, 4, 5, 6, 7, 9, 23, 59])('print the stated chance and a short share, from %s hens', count => {
    const findings = study(bookOf(hens(count)))
    const cell = (question: 'birds' | 'strains', column: string) => {
      const {columns, rows} = figuresTable(question, findings)
      const index = columns.findIndex(({name}) => name === column)
      return rows.find(([band]) => band === '24-901')?.[index]
    }
    // half of the mean of 0.7 × ½ and 0.3 × 1
    expect([cell('birds', 'sire'), cell('birds', 'recurrent_share'), cell('strains', 'fell-buff'), cell('strains', 'unknown')]).toEqual(['X-1:0.7 H-2:0.3', 0.325, 0.675, 0])
  })
})
