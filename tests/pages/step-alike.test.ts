import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import type {Hatch} from '../../src/logbook/book.ts'
import {stepAlikeWords} from '../../src/pages/step-alike.ts'
import {bookOfFamilies, F3} from '../findings/evenness-book.ts'
import {date, F2} from './small-logbook.ts'

function words(...more: readonly Partial<Hatch>[]): string {
  const book = bookOfFamilies([{step: F2, pea: 3}, {step: F3, pea: 3}])
  book.hatches.forEach((each, index) => Object.assign(each, {broody: null, machine: 'I1', ...more[index]}))
  const findings = study(book), [change] = findings.changes
  return change ? stepAlikeWords(change, findings) : expect.fail('no change')
}

describe('stepAlikeWords(change, findings)', () => {
  it('is empty where nothing on record tells the two apart', () => expect(words()).toBe(''))

  it('names in what they differ, and what that leaves open', () => {
    expect(words({}, {machine: 'I2', on: date('2025-03-20')})).toBe('By the records both were not reared alike (season, machine): that alone may make birds less even or graded otherwise, and changes a comb or a skin hardly.')
  })

  it('says that it cannot be said where it is not written how some were hatched', () => {
    expect(words({machine: null}, {machine: null})).toBe('How some of them were hatched is not written, so nobody can say whether both were reared alike.')
  })
})
