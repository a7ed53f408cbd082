/** A whole weigh day in another unit is one warning, by the trait's target. */
import {describe, expect, it} from 'vitest'
import {around, linkFiles} from '../around.ts'

const tried = (table: string, trait?: string) => linkFiles(around({
  'hatches/2024-09.md': '---\npen: 2024-A\nset: 2024-03-02\non: 2024-03-23\nchicks:\n  - {band: 24-901, sex: female}\n  - {band: 24-902, sex: female}\n  - {band: 24-903, sex: female}\n  - {band: 24-904, sex: unknown}\n---\n',
  'measures/2024.csv': table, ...(trait === undefined ? {} : {'traits/weight-20.md': `---\nname: Weight\nmeasure: weight\nunit: g\n${trait}\n---\n`}),
})).problems.map(({code, severity, place, reason, remedy}) => [code, severity, `${place.start.line}:${place.start.column}`, reason, remedy])
const day = (on: string, ...amounts: (number | string)[]) => `band,on,weight\n${amounts.map((amount, index) => `24-90${index + 1},${on},${amount}\n`).join('')}`

describe('far-from-target', () => {
  it('is one message for a column', () => {
    expect(tried(day('2024-08-10', 1.98, 1.72))).toEqual([['far-from-target', 'warning', '2:19', '2 amounts of the column, from here on: weight 1.98 g, while the target of weight-20 is 1900 g',
      'did you mean kg? write it into the heading: weight (kg)']])
    expect(tried(day('2024-08-10', 1.98, 1.72, 1.8, 2.1))).toHaveLength(1)
  })

  it('names the unit that was meant under a heading of another', () => {
    expect(tried(day('2024-08-10', 1980, 1720).replace('weight', 'weight (kg)')).map(([, , , , remedy]) => remedy)).toEqual(['did you mean g? write it into the heading: weight (g)'])
  })

  it('takes birds weighed without bands too', () => {
    expect(tried('hatch,on,sex,weight\n2024-09,2024-08-10,female,1.98\n2024-09,2024-08-10,female,1.85\n').map(([code]) => code)).toEqual(['far-from-target'])
  })

  it('compares with a target that names no age only what is grown', () => {
    expect(tried(day('2024-08-10', 1.98), 'target: 1.9 kg').map(([code]) => code)).toEqual(['far-from-target'])
    expect(tried(day('2024-03-24', 41, 40), 'target: 1.9 kg')).toEqual([])
  })

  it.each([['right amounts', day('2024-08-10', 1980, 1720)], ['small birds', day('2024-08-10', 250, 240)], ['amounts with their unit', day('2024-08-10', '1.98 kg')], ['chicks', day('2024-03-24', 41, 40)]])(
    'is silent for %s', (_, table) => expect(tried(table)).toEqual([]))

  it('is silent where there is no target', () => expect(tried(day('2024-08-10', 1.98, 1.72), 'at: 20 weeks')).toEqual([]))
})
