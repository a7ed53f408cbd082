import {describe, expect, it} from 'vitest'
import type {Sex} from '../../src/logbook/book.ts'
import {sexOf} from '../../src/logbook/life.ts'
import {parseDate} from '../../src/records/dates.ts'

const sexings = (...read: readonly (readonly [Sex, string?])[]) => read.map(([is, on]) => ({is, on: on === undefined ? null : parseDate(on), because: null}))

describe('sexOf(sexings)', () => {
  it.each([
    [[], 'unknown'],
    [[['male']], 'male'],
    [[['male', '2024-06'], ['female', '2024-09']], 'female'],
    [[['female', '2024-09'], ['male', '2024-06']], 'female'],
    [[['female', '2024-09'], ['male']], 'male'],
    [[['female', '2024-09'], ['male'], ['unknown', '2024-06']], 'male'],
    [[['female', '2024-09'], ['male'], ['unknown', '2024-10']], 'unknown'],
    [[['male'], ['female', '2024-09'], ['male', '2024-06']], 'female'],
  ] as [[Sex, string?][], Sex][])('%j: %s', (read, sex) => expect(sexOf(sexings(...read))).toBe(sex))
})
