/** An amount far from the others’ is named with its unit, and with the unit that was likely meant. */
import {describe, expect, it} from 'vitest'
import {around, linkFiles} from '../around.ts'

const weighed = (unit: string, others: readonly string[], odd: string) => linkFiles(around({
  'traits/weight-20.md': `---\nname: Weight at 20 weeks\nmeasure: weight\nunit: ${unit}\nat: 20 weeks\nwindow: 10 days\ntarget: 2.4 kg\n---\n`,
  'hatches/2024-09.md': '---\npen: 2024-A\nset: 2024-03-02\non: 2024-03-23\nchicks:\n  - {band: 24-901, sex: male}\n  - {band: 24-902, sex: male}\n  - {band: 24-903, sex: male}\n  - {band: 24-904, sex: male}\n---\n',
  'measures/2024-08-10.csv': `band,on,weight\n${[...others, odd].map((value, index) => `24-90${index + 1},2024-08-10,${value}\n`).join('')}`,
})).problems.map(({code, reason, remedy}) => [code, reason, remedy])

const GRAMS = ['2310', '2405', '2280']

describe('unlikely-weight', () => {
  it.each([
    ['2.41', '2.41 g', 'did you mean 2.41 kg?'],
    ['"2,41"', '2.41 g', 'did you mean 2.41 kg?'],
    ['5.3', '5.3 g', 'did you mean 5.3 lb?'],
    ['241', '241 g', 'mend the amount, or write its unit, such as 2.4 kg'],
  ])('%s in a column of grams', (odd, shown, remedy) => {
    expect(weighed('g', GRAMS, odd)).toEqual([['unlikely-weight', `24-904: weight ${shown}, while the middle of the birds measured with it is 2310 g`, remedy]])
  })

  it.each([['2900', '2900 g'], ['2300', null], ['800', null], ['700', '700 g']] as const)('%s among pullets of 1580 g', (odd, told) => {
    const chicks = [1, 2, 3, 4, 5].map(number => `  - {band: 24-90${number}, sex: female}\n`).join('')
    const problems = linkFiles(around({
      'hatches/2024-09.md': `---\npen: 2024-A\nset: 2024-03-02\non: 2024-03-23\nchicks:\n${chicks}---\n`,
      'measures/2024-08-10.csv': `band,on,weight\n${['1510', '1580', '1640', '1560', odd].map((value, index) => `24-90${index + 1},2024-08-10,${value}\n`).join('')}`,
    })).problems
    expect(problems.map(({code, reason}) => `${code}: ${reason}`)).toEqual(told ? [`unlikely-weight: 24-905: weight ${told}, while the middle of the 4 other females of its hatch weighed that day is 1580 g`] : [])
  })

  it('2410 kg, where the others are in grams', () => {
    expect(weighed('g', GRAMS, '2410 kg').map(([, , remedy]) => remedy)).toEqual(['did you mean 2410 g?'])
  })

  it('2410 in a column of kilograms', () => {
    expect(weighed('kg', ['2.31', '2.405', '2.28'], '2410')).toEqual([['unlikely-weight', '24-904: weight 2410 kg, while the middle of the birds measured with it is 2.405 kg', 'did you mean 2410 g?']])
  })
})
