/** Two rows of one bird, day and scorer: which counts? */
import {describe, expect, it} from 'vitest'
import {around, linkFiles} from '../around.ts'

const FILES = {'traits/type.md': '---\nname: Type\nscale: 1 to 10\ntarget: at least 7\n---\n', 'standard/1.md': '---\ndraft: 1\non: 2024-01-10\nscale: {Colour: 60, Condition: 40}\n---\n## General characteristics, male\n\n**Comb.** Pea, low.\n'}
const tried = (...rows: string[]) => linkFiles(around({...FILES, 'scores/2024.csv': `band,on,by,type,Colour,Condition,struck\n${rows.join('\n')}\n`})).problems.filter(({code}) => code === 'scored-twice').map(({place, reason}) => [place.start.line, reason])

describe('scored-twice', () => {
  it('is two marks, or two lots of points, of one bird on one day by one scorer', () => {
    expect(tried('H-1,2024-10-02,inga,7,50,30,', 'H-1,2024-10-02,inga,8,50,31,')).toEqual([
      [3, 'H-1: Condition 31 here, 30 in another row of 2024-10-02 by The keeper at Kelpgarth'], [3, 'H-1: Type 8 here, 7 in another row of 2024-10-02 by The keeper at Kelpgarth'],
    ])
  })
  it('says rightly that the later row counts', () => {
    const {book} = linkFiles(around({...FILES, 'scores/2024.csv': 'band,on,by,type\nH-1,2024-10-02,inga,7\nH-1,2024-10-02,inga,8\n'}))
    const one = book?.birds.find(({band}) => band === 'H-1')
    expect([...one?.looks ?? []].filter(([{id}]) => id === 'type').map(([, {counted}]) => counted?.value)).toEqual([8])
  })
  it('is none of another day, scorer or bird, of the same marks, or of one that is struck', () => {
    expect(tried('H-1,2024-10-02,inga,7,50,30,', 'H-1,2024-10-03,inga,8,50,31,', 'H-1,2024-10-02,,8,50,31,', 'H-2,2024-10-02,inga,8,50,31,', 'H-1,2024-10-02,inga,7,50,30,', 'H-1,2024-10-02,inga,9,51,31,misread')).toEqual([])
  })
})
