/** Placings of one class that cannot all be right, and those that can. */
import {describe, expect, it} from 'vitest'
import {around, linkFiles} from '../around.ts'

const tried = (...entries: string[]) => linkFiles(around({'shows/2024-11-02-hall.md': `---\nname: Autumn show\non: 2024-11-02\njudges: {j1: {name: A judge, consent: no}, j2: {name: Another judge, consent: no}}\nentries:\n${entries.map(each => `  - {${each}}\n`).join('')}---\n`}))
  .problems.filter(({code}) => code === 'placings-contradict').map(({place, reason, remedy}) => [place.start.line, reason, remedy])

describe('placings-contradict', () => {
  it('says where two birds have one place, and how to share it', () => {
    expect(tried('bird: H-1, class: cock, result: 2 of 4', 'bird: H-2, class: cock, result: 2 of 4'))
      .toEqual([[7, 'H-2 and H-1 both have place 2 in the class “cock”', 'mend one of the two; where they shared it, write 2= of 4 for both']])
  })
  it('takes a place that both say they shared', () => {
    expect(tried('bird: H-1, class: cock, result: 2= of 4', 'bird: H-2, class: cock, result: 2= of 4')).toEqual([])
    expect(tried('bird: H-1, class: cock, result: 2= of 4', 'bird: H-2, class: cock, result: 2 of 4')).toHaveLength(1)
  })
  it('tells classes, judges and entries without a class apart', () => {
    expect(tried('bird: H-1, class: cock, judge: j1, result: 1 of 4', 'bird: H-2, class: cock, judge: j2, result: 1 of 3')).toEqual([])
    expect(tried('bird: H-1, class: cock, result: 1 of 4', 'bird: B-3, class: hen, result: 1 of 9')).toEqual([])
    expect(tried('bird: H-1, result: 1 of 4', 'bird: B-3, result: 1 of 9')).toEqual([])
  })
  it('says where the number shown differs, and where more stand than were shown', () => {
    expect(tried('bird: H-1, class: cock, result: 1 of 4', 'bird: H-2, class: cock, result: 2 of 5')).toEqual([[7, '5 were shown in the class “cock” by this line, and 4 by another', 'mend one of the two numbers']])
    expect(tried('bird: B-1, class: hen, result: 1 of 2', 'bird: B-2, class: hen, result: 2 of 2', 'bird: B-3, class: hen')).toEqual([[6, '2 were shown in the class “hen”, but 3 birds stand in it', 'mend the number or the classes']])
  })
  it('says where a bird was placed and disqualified', () => {
    expect(tried('bird: H-1, class: cock, result: 1 of 4, disqualified: yes')).toEqual([[6, 'H-1 is disqualified, and placed 1', 'take the placing out, or disqualified']])
  })
})
