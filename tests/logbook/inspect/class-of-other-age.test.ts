/** A show class called after one age, and a bird of the other in it; where the two ways of counting differ, either passes. */
import {describe, expect, it} from 'vitest'
import {around, codesAt, linkFiles} from '../around.ts'

/** H-1 hatched 2022-03-20. */
const tried = (on: string, name: string, hatched = '2022-03-20') => codesAt(linkFiles(around({
  'birds/H-1.md': `---\nband: H-1\nsex: male\nstrain: holm-white\nhatched: ${hatched}\n---\n`,
  'pens/2024-A.md': '',
  'shows/show.md': `---\nname: Show\non: ${on}\nentries:\n  - {bird: H-1, class: ${name}}\n---\n`,
})).problems).filter(code => code.endsWith('class-of-other-age'))

describe('class-of-other-age', () => {
  it.each([['2022-11-02', 'cock'], ['2022-11-02', 'Old cocks'], ['2023-09-02', 'cockerel'], ['2024-11-02', 'young cock']])('on %s in %s', (on, name) => {
    expect(tried(on, name)).toEqual(['shows/show.md:5 class-of-other-age'])
  })
  it.each([
    ['2022-11-02', 'cockerel'], ['2023-11-02', 'cock'], ['2022-11-02', 'young cock'], ['2022-11-02', 'cock or cockerel'], ['2022-11-02', 'Large fowl'],
    // not yet a year old, hatched in the year before: either
    ['2023-01-14', 'cockerel'], ['2023-01-14', 'cock'],
  ])('on %s in %s is none', (on, name) => expect(tried(on, name)).toEqual([]))

  it('leaves a hatch of no known day alone, where it may be either', () => {
    expect(tried('2022-11-02', 'cock', '2022')).toHaveLength(1)
    expect(tried('2023-11-02', 'cockerel', '2022')).toEqual([])
    expect(tried('2024-11-02', 'cockerel', '2022')).toHaveLength(1)
  })
  it('says nothing where the class is of the other sex: the line is told of once', () => expect(tried('2024-11-02', 'pullet')).toEqual([]))
})
