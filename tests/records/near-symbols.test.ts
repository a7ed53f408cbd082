import {expect, it} from 'vitest'
import {nearSymbols} from '../../src/records/near.ts'

it.each([
  ['p', ['P', 'p+'], ['P', 'p+']], ['r', ['R', 'P', 'W'], ['R']], ['K', ['C', 'I', 'P'], []], ['w+', ['W+', 'w'], ['W+', 'w']], ['Lev', ['Lav', 'P'], ['Lav']], ['pti1', ['Pti-1', 'Pti-2'], ['Pti-1']],
])('for %s among %j: %j', (word, symbols, likely) => {
  expect(nearSymbols(word, symbols)).toEqual(likely)
})
