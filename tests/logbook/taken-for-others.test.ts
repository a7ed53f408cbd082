import {expect, it} from 'vitest'
import {takenForOthers} from '../../src/logbook/taken-for-others.ts'

it('takenForOthers(trait) sums what each look is taken for, itself left out', () => {
  const misscoring = new Map([['rose', new Map([['pea', 0.25], ['single', 0.5], ['rose', 0.1]])], ['pea', new Map<string, number>()]])
  expect(takenForOthers({misscoring})).toEqual([{state: 'rose', share: 0.75}, {state: 'pea', share: 0}])
})
