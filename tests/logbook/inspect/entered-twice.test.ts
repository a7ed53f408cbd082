/** One bird twice in a class, and the shows of two judges in which that is no fault. */
import {describe, expect, it} from 'vitest'
import {around, codesAt, linkFiles} from '../around.ts'

const tried = (...entries: string[]) => codesAt(linkFiles(around({'shows/2024-11-02-hall.md': `---\nname: Autumn show\non: 2024-11-02\njudges: {j1: {name: A judge, consent: no}, j2: {name: Another judge, consent: no}}\nentries:\n${entries.map(each => `  - {${each}}\n`).join('')}---\n`})).problems)

describe('entered-twice', () => {
  it('is one bird in one class under one judge, named or not', () => {
    expect(tried('bird: H-1, class: cock, judge: j1', 'bird: H-1, class: cock, judge: j1')).toEqual(['shows/2024-11-02-hall.md:7 entered-twice'])
    expect(tried('bird: H-1', 'bird: H-1')).toEqual(['shows/2024-11-02-hall.md:7 entered-twice'])
  })
  it('is one bird with two results, though one line names no judge, or writes the class otherwise', () => {
    const at = ['shows/2024-11-02-hall.md:7 entered-twice']
    expect(tried('bird: H-1, class: cock, judge: j1, result: 1 of 6', 'bird: H-1, class: cock, result: 2 of 6')).toEqual(at)
    expect(tried('bird: H-1, class: cock, judge: j1, result: 1 of 6', 'bird: H-1, class: Cock, judge: j1, result: 2 of 6')).toEqual(at)
    // a class parted between two judges: no bird stands before both
    expect(tried('bird: H-1, class: cock, judge: j1, result: 1 of 6', 'bird: H-1, class: cock, judge: j2, result: 2 of 2')).toEqual(at)
    expect(tried('bird: H-1, class: cock, judge: j1, result: 1 of 6', 'bird: H-1, class: cock, judge: j2, result: 2 of 6')).toEqual([])
  })
  it('is none where another judge judged, or another class', () => {
    expect(tried('bird: H-1, class: cock, judge: j1', 'bird: H-1, class: cock, judge: j2')).toEqual([])
    expect(tried('bird: H-1, class: cock', 'bird: H-1, class: champion row')).toEqual([])
  })
  it('does not also count the bird beyond those shown', () => {
    expect(tried('bird: H-1, class: cock, result: 1 of 1', 'bird: H-1, class: cock, result: 1 of 1')).toEqual(['shows/2024-11-02-hall.md:7 entered-twice'])
  })
})
