/** A mistyped year is told where it would move the whole book, and only there. */
import {describe, expect, it} from 'vitest'
import {around, codesAt, linkFiles, type Files} from '../around.ts'

const tried = (files: Files) => linkFiles(around({
  'hatches/2023-09.md': '---\nset: 2023-03-02\non: 2023-03-23\nstrain: fell-buff\nchicks:\n  - {band: 23-001, sex: male}\n  - {band: 23-002, sex: male}\n---\n', ...files,
})).problems.filter(({code}) => code === 'year-far-ahead')
const table = (...days: string[]) => `band,on,weight\n${days.map((day, index) => `23-00${index + 1},${day},1980\n`).join('')}`
const PROJECT = '---\nname: Skerry Fowl\naim: A fowl that stands wind and wet.\nas-of: 2032-12-31\nstrains: {recurrent: holm-white, donors: [fell-buff]}\n---\n'

describe('year-far-ahead', () => {
  it('names the place and the year of the other rows', () => {
    const [only, ...others] = tried({'measures/2023.csv': table('2023-08-05', '2032-08-05')})
    expect(others).toEqual([])
    expect(only).toMatchObject({severity: 'warning', remedy: 'did you mean 2023-08-05?', place: {file: 'measures/2023.csv', start: {line: 3}}})
    expect(only?.reason).toBe('2032-08-05 stands more than a year after every other date of the records (the next is 2024-02-10), and makes the whole book as late')
  })

  it('takes the years of the book where the file has no other', () => {
    expect(tried({'measures/weights.csv': table('2032-08-05')})[0]?.remedy).toBe('did you mean 2023-08-05 or 2022-08-05?')
  })

  it('says a whole file once', () => {
    const problems = tried({'measures/weights.csv': table('2032-08-05', '2032-08-06')})
    expect(codesAt(problems)).toEqual(['measures/weights.csv:2 year-far-ahead'])
    expect(problems[0]?.reason).toMatch(/^2032-08-05 and one more date of this file stand more/)
  })

  it.each<[string, Files]>([
    ['two files', {'measures/a.csv': table('2032-08-05'), 'measures/b.csv': table('2032-08-06')}],
    ['an as-of of the project', {'project.md': PROJECT, 'measures/a.csv': table('2032-08-05')}],
    ['a year that the file’s name has too', {'diary/2026-01-02-frost.md': '---\non: 2026-01-02\ntitle: A hard frost\n---\n'}],
    ['less than a year', {'measures/weights.csv': table('2025-01-05')}],
  ])('is silent for %s', (_, files) => expect(tried(files)).toEqual([]))
})
