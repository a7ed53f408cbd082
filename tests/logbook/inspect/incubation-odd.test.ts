/** Early or late may be; before the setting cannot be. */
import {describe, expect, it} from 'vitest'
import {around, linkFiles} from '../around.ts'

const severities = (set: string, on: string) => linkFiles(around({'hatches/2024-09.md': `---\npen: 2024-A\nset: ${set}\non: ${on}\n---\n`})).problems.map(({code, severity}) => `${severity} ${code}`)

describe('incubation-odd', () => {
  it.each([
    ['2024-03-02', '2024-02-23', ['error incubation-odd']], ['2024-03-02', '2024-02', ['error incubation-odd']], ['2024-04', '2024-03-23', ['error incubation-odd']],
    ['2024-03-02', '2024-03-02', ['warning incubation-odd']], ['2024-03-02', '2024-04-23', ['warning incubation-odd']], ['2024-03', '2024-03-23', []], ['2024-03-02', '2024-03', []],
  ])('set %s, hatched %s: %s', (set, on, codes) => expect(severities(set, on)).toEqual(codes))
})
