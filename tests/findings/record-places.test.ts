import {expect, it} from 'vitest'
import {recordPlaces} from '../../src/findings/record-places.ts'

const row = (file: string, line: number) => ({file, line, column: 1, width: 3})

it('recordPlaces(spots, tellable) names each place once, in order, with lines of tables', () => {
  const spots = [row('scores/b.csv', 12), row('scores/b.csv', 3), row('scores/b.csv', 12), {file: 'hatches/2024-03.md', path: ['chicks', 2, 'comb']}, {file: 'hatches/2024-03.md', path: ['chicks', 3, 'comb']}, row('scores/of-somebody.csv', 2)]
  expect(recordPlaces(spots, new Set(['scores/b.csv', 'hatches/2024-03.md']))).toBe('hatches/2024-03.md scores/b.csv:3 scores/b.csv:12')
  expect(recordPlaces([], new Set())).toBeNull()
  expect(recordPlaces([row('scores/of-somebody.csv', 2)], new Set())).toBeNull()
})
