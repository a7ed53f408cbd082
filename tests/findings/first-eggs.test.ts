import {describe, expect, it} from 'vitest'
import {ageAtFirstEgg, firstEggs} from '../../src/findings/first-eggs.ts'
import type {Bird} from '../../src/logbook/book.ts'
import {studentQuantile} from '../../src/statistics/student-t.ts'
import {expectClose} from '../expect-close.ts'
import {bird, date, F1, logbook} from '../pages/small-logbook.ts'

const hen = (id: string, firstEgg: string | null, more: Partial<Bird> = {}) => bird(id, 'female', {step: F1, hatched: date('2024-03-01'), firstEgg: firstEgg === null ? null : date(firstEgg), ...more})
const told = (...birds: Bird[]) => firstEggs(logbook('2025-03-01', {birds}))

describe('the age at the first egg', () => {
  it('is counted in days, by step and by season of hatch', () => {
    // by hand: 2024-03-01 to 2024-08-18 is 170 days, to 2024-08-28 is 180
    const found = told(hen('1', '2024-08-18'), hen('2', '2024-08-28'), hen('3', '2024-08-23'))
    expect(found.map(({by, name, hens, mean, median, earliest, latest}) => [by, name, hens, mean, median, earliest, latest])).toEqual([['step', 'F1', 3, 175, 175, 170, 180], ['season', '2024', 3, 175, 175, 170, 180]])
    expectClose(found[0]?.interval?.high ?? NaN, 175 + (studentQuantile(0.95, 2) * 5) / Math.sqrt(3), 1e-9)
    expect(told(hen('1', '2024-08-18'), hen('2', '2024-08-28'))[0]).toMatchObject({hens: 2, interval: null})
  })
  it('counts the hens that are old enough and of which none is written to the day', () => {
    expect(told(hen('1', '2024-08-18'), hen('2', null), hen('3', '2024-09'), hen('4', null, {left: {on: date('2024-05-01'), how: 'died', why: null}}), hen('5', null, {hatched: date('2025-02-01')}))[0]).toMatchObject({hens: 1, sd: null, interval: null, notWritten: 2})
  })
  it('has no entry without an egg, and none for males or an egg before the hatch', () => {
    expect(told(hen('1', null))).toEqual([])
    expect(told(bird('2', 'male', {step: F1, hatched: date('2024-03-01'), firstEgg: date('2024-08-18')}))).toEqual([])
    expect(ageAtFirstEgg(hen('3', '2024-02-01'))).toBeNull()
  })
})
