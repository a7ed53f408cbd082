/** A score before the trait can be scored counts nowhere, and that is told. */
import {describe, expect, it} from 'vitest'
import {around, codesAt, linkFiles} from '../around.ts'

const HATCH = '---\npen: 2024-A\nset: 2024-03-02\non: 2024-03-23\nchicks:\n  - {band: 24-901, sex: male}\n  - {band: 24-902, sex: male}\n---\n'
const found = (...rows: string[]) => linkFiles(around({'hatches/2024-09.md': HATCH, 'scores/s.csv': `band,on,by,comb,struck\n${rows.map(row => `${row}\n`).join('')}`})).problems

describe('scored-too-young', () => {
  it('is one message for a trait and file', () => {
    const problems = found('24-901,2024-04-10,inga,pea,', '24-902,2024-04-10,inga,single,')
    expect(codesAt(problems)).toEqual(['scores/s.csv:2 scored-too-young'])
    expect(problems[0]?.reason).toBe('2 scores of comb in this file, here the first: 24-901 was 18 days old on 2024-04-10, and comb is scored from 42 days on, so this counts nowhere')
  })
  it('lets be what was scored again in time', () => expect(found('24-901,2024-04-10,inga,single,', '24-901,2024-05-10,inga,pea,')).toEqual([]))
  it.each(['24-901,2024-04-10,inga,pea,too early', '24-901,2024-05-04,inga,pea,', '24-901,,inga,pea,'])('lets %s be', row => expect(found(row)).toEqual([]))
})
