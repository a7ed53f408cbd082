/** The mark a chick had at hatch stays with the bird, whichever of its records speaks last. */
import {expect, it} from 'vitest'
import {around, bookOf} from './around.ts'

it('keeps a chick’s mark', () => {
  const book = bookOf(around({
    'hatches/2024-90.md': '---\nstrain: holm-white\non: 2024-04-01\nchicks: [{band: Z-1, sex: male, mark: basket 2}, {band: Z-2, sex: male}]\n---\n',
    'birds/Z-1.md': '---\nband: Z-1\nstrain: holm-white\n---\nA calm one.\n',
  }))
  expect(['Z-1', 'Z-2'].map(band => book.birds.find(bird => bird.band === band)?.mark)).toEqual(['basket 2', null])
})
