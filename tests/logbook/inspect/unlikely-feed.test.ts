/** Feed that nobody can have eaten, and feed left that was never there. */
import {describe, expect, it} from 'vitest'
import {around, codesAt, linkFiles} from '../around.ts'

const found = (...rows: string[]) => linkFiles(around({'measures/f.csv': `pen,on,feed (kg),left (kg)\n${rows.map(row => `${row}\n`).join('')}`})).problems

describe('unlikely-feed', () => {
  it('tells grams under a heading in kilograms', () => {
    const problems = found('2024-A,2024-03-02,2500,', '2024-A,2024-03-09,2.5,')
    expect(codesAt(problems)).toEqual(['measures/f.csv:2 unlikely-feed'])
    expect(problems[0]?.reason).toBe('2500 kg eaten by 3 birds of pen 2024-A in 7 days')
  })
  it('tells more left than there was', () => expect(codesAt(found('2024-A,2024-03-02,2.5,', '2024-A,2024-03-09,2.5,3'))).toEqual(['measures/f.csv:3 unlikely-feed']))
  it('tells grams in the last row, of which nobody knows how long it lasted', () => {
    const problems = found('2024-A,2024-03-02,2.5,', '2024-A,2024-03-09,2.5,', '2024-A,2024-03-16,2500,')
    expect(codesAt(problems)).toEqual(['measures/f.csv:4 unlikely-feed'])
    expect(problems[0]?.reason).toBe('2500 kg given to pen 2024-A on 2024-03-16, while the middle of its records is 2.5 kg')
  })
  it('adds up what is given twice on a day', () => expect(codesAt(found('2024-A,2024-03-02,2500,', '2024-A,2024-03-02,2.5,', '2024-A,2024-03-09,2.5,'))).toEqual(['measures/f.csv:3 unlikely-feed']))
  it.each([['a week’s feed', ['2024-A,2024-03-02,2.5,', '2024-A,2024-03-09,2.5,0.4', '2024-A,2024-03-16,2.1,0.2']], ['a single record', ['2024-A,2024-03-02,25,']], ['two on a day', ['2024-A,2024-03-02,25,', '2024-A,2024-03-02,25,']]])(
    'lets %s be', (_, rows) => expect(found(...rows)).toEqual([]))
})
