import {describe, expect, it} from 'vitest'
import {nearRelation} from '../../src/findings/near-relation.ts'
import {bird} from '../pages/small-logbook.ts'
import {chick} from './kin-book.ts'

const [a, b] = [bird('A', 'male'), bird('B', 'male')], [x, y, z] = [bird('X', 'female'), bird('Y', 'female'), bird('Z', 'female')]

describe('nearRelation(one, other)', () => {
  const ofAX = chick('1', 'male', [[a, x]])
  it('tells parent and child either way round', () => {
    expect(nearRelation(a, ofAX)).toEqual({is: 'parent and child', sure: true})
    expect(nearRelation(chick('2', 'female', [[a, x, 0.5], [b, x, 0.5]]), a)).toEqual({is: 'parent and child', sure: false})
  })
  it('tells full sibs from half sibs', () => {
    expect(nearRelation(ofAX, chick('2', 'female', [[a, x]]))).toEqual({is: 'full sibs', sure: true})
    expect(nearRelation(ofAX, chick('2', 'female', [[a, y]]))).toEqual({is: 'half sibs', sure: true})
    expect(nearRelation(ofAX, chick('2', 'female', [[b, y]]))).toBe(null)
  })
  it('tells what may be', () => {
    expect(nearRelation(ofAX, chick('2', 'female', [[a, x, 0.6], [a, y, 0.4]]))).toEqual({is: 'full sibs', sure: false})
    // the sire is the same for certain, the dam by one chance in four
    expect(nearRelation(ofAX, chick('2', 'female', [[a, x, 0.25], [a, y, 0.75]]))).toEqual({is: 'half sibs', sure: true})
    expect(nearRelation(ofAX, chick('2', 'female', [[a, z, 0.5], [b, z, 0.5]]))).toEqual({is: 'half sibs', sure: false})
  })
})
