import {describe, expect, it} from 'vitest'
import {lineValues, meansOfLines, plainMean, stepLine, strainLine} from '../../src/findings/contemporaries.ts'
import {looseWeighings} from '../../src/logbook/weighings.ts'
import {date, smallBook, weight} from '../pages/small-logbook.ts'
import {linesTogether} from './vigour-book.ts'

describe('lineValues(book, trait)', () => {
  it('has every counted value with its line and class, also of those weighed without a band', () => {
    // by hand: two cockerels and six pullets of the small book
    const book = smallBook(), values = lineValues(book, weight)
    expect(values.map(({line, group, value}) => [line, group, value])).toEqual([2310, 2455, 1840, 1905, 1760, 2010, 1955, 1875].map((grams, place) => ['step F1', `${place < 2 ? 'male' : 'female'} 2024-01`, grams]))
    const [hatch] = book.hatches, loose = looseWeighings([{measure: 'weight', value: 2000, on: date('2024-08-10'), at: hatch!.at, hatch: hatch!, sex: 'male'}], [weight])
    expect(lineValues({...book, looseWeighings: loose}, weight).at(-1)).toMatchObject({bird: null, line: 'step F1', value: 2000})
  })
})

describe('meansOfLines, plainMean', () => {
  const values = lineValues(linesTogether(1, {holm: 2500, fell: 1500, cross: 2000, back: 2250}, 4, 2), weight)
  it('hold lines against each other in the classes that have them all', () => {
    const found = meansOfLines(values, [stepLine('F1'), strainLine('holm-white')])
    expect([found?.classes, found?.groups.map(({birds}) => birds)]).toEqual([4, [8, 8]])
    expect(meansOfLines(values, [stepLine('F1'), stepLine('F9')])).toBeNull()
  })

  it('weigh the sexes alike, and say nothing where one was not measured', () => {
    const own = (sex: string) => values.filter(each => each.line === 'step F1' && each.sex === sex).map(({value}) => value), mean = (numbers: readonly number[]) => numbers.reduce((a, b) => a + b, 0) / numbers.length
    expect(plainMean(values, stepLine('F1'), ['male', 'female'])).toBeCloseTo((mean(own('male')) + mean(own('female'))) / 2, 9)
    expect(plainMean(values.filter(({sex}) => sex === 'male'), stepLine('F1'), ['male', 'female'])).toBeNull()
    expect(plainMean(values, stepLine('F1'), [])).toBeNull()
  })
})
