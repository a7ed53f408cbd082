/** A show class called after one sex, and a bird of the other in it. */
import {describe, expect, it} from 'vitest'
import {around, codesAt, linkFiles} from '../around.ts'

const tried = (band: string, name: string, sex = '') => codesAt(linkFiles(around({
  'shows/2024-11-02-ternhouse.md': `---\nname: Autumn show\non: 2024-11-02\nentries:\n  - {bird: ${band}, class: ${name}}\n---\n`,
  ...(sex === '' ? {} : {'birds/H-2.md': `---\nband: H-2\nsex: ${sex}\nstrain: holm-white\nhatched: 2022-03-20\n---\n`}),
})).problems)

describe('class-of-other-sex', () => {
  it.each([['H-2', 'pullet'], ['H-2', 'Hens'], ['B-3', 'Cockerel'], ['B-3', 'old cock']])('%s in %s', (band, name) => {
    expect(tried(band, name)).toEqual(['shows/2024-11-02-ternhouse.md:5 class-of-other-sex'])
  })

  it.each([['H-2', 'cock'], ['H-2', 'Hen-feathered cock'], ['B-3', 'hen'], ['B-3', 'Large fowl']])('%s in %s is none', (band, name) => expect(tried(band, name)).toEqual([]))

  it('is none where the bird was taken for the other sex at some time', () => expect(tried('H-2', 'pullet', '[{is: female, on: 2024-06}, {is: male, on: 2024-12}]')).toEqual([]))
})
