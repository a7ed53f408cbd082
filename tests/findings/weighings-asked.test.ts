import {describe, expect, it} from 'vitest'
import type {SpreadRow} from '../../src/findings/spread.ts'
import {measuresAsked, weighingsBehind} from '../../src/findings/weighings-asked.ts'
import type {LooseWeighing, Trait} from '../../src/logbook/book.ts'
import {plainRequirement} from '../paper-parts.ts'
import {comb, date, hatch, logbook, weight} from '../pages/small-logbook.ts'

const shank: Trait = {...weight, id: 'shank', name: 'Shank', wanted: {male: weight.wanted.male, female: null}}, plain: Trait = {...weight, id: 'plain', name: 'Plain', wanted: {male: null, female: null}}

describe('measuresAsked(requirement, sexes, sources)', () => {
  const book = logbook('2025-10-30', {traits: [comb, weight, shank, plain]})
  it('asks of every measured trait the sexes of which anything is wanted, and of one that is named all of them', () => {
    expect(measuresAsked(plainRequirement('even-weight', {}), ['male', 'female'], {book}).measures.map(({trait, sexes}) => [trait.id, sexes])).toEqual([['weight-20', ['male', 'female']], ['shank', ['male']], ['plain', ['male', 'female']]])
    expect(measuresAsked(plainRequirement('even-weight', {trait: shank}), ['male', 'female'], {book}).measures).toMatchObject([{trait: shank, sexes: ['male', 'female']}])
    expect(measuresAsked(plainRequirement('even-weight', {}), ['female'], {book}).measures.map(({trait}) => trait.id)).toEqual(['weight-20', 'shank', 'plain'])
  })
})

describe('weighingsBehind(rows, sources)', () => {
  const one = hatch('h-1'), other = hatch('h-2'), on = date('2025-08-01')
  const loose = (of: typeof one, sex: 'male' | 'female', file: string, trait: Trait): LooseWeighing => ({hatch: of, sex, value: 2400, measure: 'weight', on, at: {file, path: []}, countsFor: [trait]})
  const rowOf = (values: number): SpreadRow => ({
    step: 'F2', trait: weight, sex: 'male', spread: {kind: 'cannot-say', have: 0, need: 5, why: 'too-few', leftOut: []}, values: Array.from({length: values}, () => ({bird: null, hatch: one, sex: 'male', value: 2400, counted: true})),
  })

  it('has the weighings without bands of the row’s hatches, of its sex and trait, with their files and days', () => {
    const looseWeighings = [loose(one, 'male', 'a.csv', weight), loose(one, 'male', 'a.csv', weight), loose(one, 'female', 'b.csv', weight), loose(one, 'male', 'c.csv', shank), loose(other, 'male', 'd.csv', weight)]
    expect(weighingsBehind([rowOf(2)], {book: {...logbook('2025-10-30'), looseWeighings}})).toEqual({birds: [], records: [{file: 'a.csv', path: []}], on: on.last})
  })

  it('goes through those of a hatch once, however many they are', () => {
    let looked = 0
    const looseWeighings = Array.from({length: 300}, (): LooseWeighing => ({
      ...loose(one, 'male', 'a.csv', weight),
      get countsFor() {
        looked++
        return [weight]
      },
    }))
    weighingsBehind([rowOf(300)], {book: {...logbook('2025-10-30'), looseWeighings}})
    expect(looked).toBe(300)
  })
})
