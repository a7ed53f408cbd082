/** A letter that was taken for a figure. */
import {describe, expect, it} from 'vitest'
import {digitsMeant, lettersForDigits} from '../../src/records/letters-for-digits.ts'
import {front, readFiles} from './reading.ts'

describe('digitsMeant', () => {
  it.each([['198O', '1980'], ['l.98 kg', '1.98 kg'], ['23-0l2', '23-012'], ['2O24-03-0I sold', '2024-03-01 sold'], ['198o g', '1980 g'], ['3 of lO', null]])('%s → %s', (text, meant) => {
    expect(digitsMeant(text)).toBe(meant)
  })

  it.each(['1980', '23-012', 'sold', 'H-1', 'lol', 'O-ring', '1 lb', 'Fell-2', 'BC2'])('%s is left alone', text => expect(digitsMeant(text)).toBeNull())

  it('says which letter', () => {
    expect(lettersForDigits('198O')).toBe('“198O” has the letter O for a nought')
    expect(lettersForDigits('23-0l2')).toBe('“23-0l2” has the letter l for a one')
  })
})

describe('a letter for a figure', () => {
  const told = (files: Readonly<Record<string, string>>) => readFiles(files).problems.map(({code, reason, remedy}) => `${code}: ${reason}: ${remedy}`)

  it.each([
    ['eggs: 4O', '“4O” has the letter O for a nought: write 40'], ['clear: l', null], ['clear: l2', '“l2” has the letter l for a one: write 12'],
    ['set: 2O24-03-02', '“2O24-03-02” has the letter O for a nought: write 2024-03-02'], ['tallies: [{chicks: 2, left: 2O24-04-05 sold}]', '“2O24-04-05 sold” has the letter O for a nought: write 2024-04-05 sold'],
  ])('%s', (line, problem) => {
    const problems = told({'hatches/1.md': front(['pen: 2024-A', line].join('\n'))})
    if (problem !== null) expect(problems).toEqual([`unreadable-value: ${problem}`])
    else expect(problems).toHaveLength(1)
  })

  it('is said of amounts in a weigh day', () => {
    expect(told({'measures/1.csv': 'band,on,weight\n24-031,2024-08-10,198O\n24-032,2024-08-10,l.98 kg\n'})).toEqual([
      'unreadable-value: “198O” has the letter O for a nought: write 1980', 'unreadable-value: “l.98 kg” has the letter l for a one: write 1.98 kg'])
  })
})
