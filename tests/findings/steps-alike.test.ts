import {describe, expect, it} from 'vitest'
import {reachedSteps} from '../../src/findings/ladder.ts'
import {stepsAlike} from '../../src/findings/steps-alike.ts'
import {study} from '../../src/findings/study.ts'
import {date, F2} from '../pages/small-logbook.ts'
import {bookOfFamilies, F3} from './evenness-book.ts'

describe('stepsAlike(from, to, touching)', () => {
  it('sets the later step’s hatches first, beside the earlier’s', () => {
    const book = bookOfFamilies([{step: F2, pea: 3}, {step: F3, pea: 3}])
    book.hatches.forEach((each, index) => Object.assign(each, {broody: null, machine: 'I1', on: date(index === 0 ? '2024-03-20' : '2025-03-20')}))
    const {ladder, life} = study(book), [one, other] = reachedSteps(ladder).on
    if (!one || !other) return expect.fail('two steps')
    expect(stepsAlike(one, other, life.touching)).toMatchObject({verdict: 'not-alike', unlike: [{what: 'season', one: ['2025'], other: ['2024']}]})
    expect(stepsAlike(one, one, life.touching).verdict).toBe('alike')
  })
})
