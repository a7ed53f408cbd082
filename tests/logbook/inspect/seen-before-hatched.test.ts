/** A bird shown, weighed or scored before it hatched is at fault; a hatch whose own day is wrong says so once. */
import {describe, expect, it} from 'vitest'
import {around, codesAt, linkFiles, type Files} from '../around.ts'

const HATCH = '---\npen: 2024-A\nset: 2024-03-02\non: 2024-03-23\nchicks:\n  - {band: 24-901, sex: male}\n  - {band: 24-902, sex: male}\n---\n'
const found = (files: Files) => linkFiles(around({'hatches/2024-09.md': HATCH, ...files})).problems
const show = (on: string, lines: string) => ({[`shows/${on}-x.md`]: `---\nname: Autumn show\non: ${on}\n${lines}\n---\n`})

describe('seen-before-hatched', () => {
  it('finds a show before the bird it lists hatched, with both places', () => {
    const problems = found(show('2023-11-04', 'entries:\n  - {bird: 24-901, result: 1 of 3}'))
    expect(codesAt(problems)).toEqual(['shows/2023-11-04-x.md:5 seen-before-hatched'])
    expect(problems[0]).toMatchObject({severity: 'error', reason: '24-901 was shown 2023-11-04, before it hatched (2024-03-23)'})
    expect(problems[0]?.related?.map(({place}) => `${place.file}:${place.start.line}`)).toEqual(['hatches/2024-09.md:4'])
  })

  it('finds a score sheet, a weighing and a score, and the hatch day of a founder', () => {
    expect(codesAt(found(show('2023-11-04', 'scores:\n  - {bird: 24-901, type: 28 of 30}')))).toEqual(['shows/2023-11-04-x.md:5 seen-before-hatched'])
    expect(codesAt(found({'measures/w.csv': 'band,on,weight\n24-901,2024-02-10,2310\n'}))).toEqual(['measures/w.csv:2 seen-before-hatched'])
    expect(codesAt(found({'scores/s.csv': 'band,on,comb\nH-1,2021-06-01,single\n'}))).toEqual(['scores/s.csv:2 seen-before-hatched'])
  })

  it('holds nothing against a day that may be later', () => {
    expect(found({...show('2024-03', 'entries:\n  - {bird: 24-901}'), 'measures/w.csv': 'band,on,weight\n24-901,2024,2310\n24-902,2024-03-23,38\n'}).filter(({code}) => code === 'seen-before-hatched')).toEqual([])
  })

  it('is one fault a hatch', () => {
    const problems = found({'measures/w.csv': 'band,on,weight\n24-901,2023-08-10,2310\n24-901,2023-08-11,2300\n24-902,2023-08-10,2330\n'})
    expect(problems.map(({reason}) => reason)).toEqual(['24-901 was weighed 2023-08-10, before it hatched (2024-03-23); so was one other bird of hatch 2024-09'])
  })
})
