import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {solveLeastSquares} from '../../src/statistics/householder.ts'
import {levelsAcrossClasses, type SeenInClass} from '../../src/statistics/levels-across-classes.ts'
import {expectClose} from '../expect-close.ts'

/** Time of reaction of four catalysts on four batches, three of them on each (Montgomery, Design and Analysis of Experiments, balanced incomplete blocks; from memory). */
const CATALYSTS = [[73, 74, null, 71], [null, 75, 67, 72], [73, 75, 68, null], [75, null, 72, 75]]
const rows = CATALYSTS.flatMap((times, catalyst) => times.flatMap((value, batch): SeenInClass[] => (value === null ? [] : [{name: `${catalyst + 1}`, group: `batch ${batch + 1}`, value}])))

const seen = fc.record({name: fc.constantFrom('a', 'b', 'c', 'd', 'e'), group: fc.constantFrom('1', '2', '3', '4'), value: fc.integer({min: -500, max: 500})})
const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length

describe('levelsAcrossClasses(rows)', () => {
  it('gives the published levels of catalysts: −9/8, −7/8, −4/8 and 20/8 about their mean', () => {
    const found = levelsAcrossClasses(rows), middle = mean(found.map(({level}) => level))
    found.forEach(({level}, place) => { expectClose(level - middle, [-9 / 8, -7 / 8, -4 / 8, 20 / 8][place] ?? NaN, 1e-10) })
    expect(found.map(({linked, count}) => [linked, count])).toEqual([[0, 3], [0, 3], [0, 3], [0, 3]])
  })

  it('differs as a slow twin with a column for every name and class does', () => {
    fc.assert(fc.property(fc.array(seen, {minLength: 2, maxLength: 25}), own => {
      const found = levelsAcrossClasses(own)
      for (const set of new Set(found.map(({linked}) => linked))) {
        const inside = found.filter(({linked}) => linked === set), names = inside.map(({name}) => name), its = own.filter(({name}) => names.includes(name)), groups = [...new Set(its.map(({group}) => group))]
        const slow = solveLeastSquares(its.map(({name, group}) => [...names.map(each => Number(each === name)), ...groups.slice(1).map(each => Number(each === group))]), its.map(({value}) => value))
        expect(slow.kind).toBe('solved')
        if (slow.kind === 'solved') inside.forEach(({level}, place) => { expectClose(level - (inside[0]?.level ?? NaN), (slow.coefficients[place] ?? NaN) - (slow.coefficients[0] ?? NaN), 1e-7) })
      }
    }))
  })

  it('parts what no class links', () => {
    fc.assert(fc.property(fc.array(seen, {minLength: 1, maxLength: 12}), own => {
      const found = levelsAcrossClasses(own), setOf = new Map(found.map(({name, linked}) => [name, linked]))
      for (const {name, group} of own) for (const other of own) if (other.group === group) expect(setOf.get(other.name)).toBe(setOf.get(name))
      // a chain of shared classes leads from each to each of its set
      for (const {name, linked} of found) {
        const reached = new Set([name])
        for (let turn = 0; turn < found.length; turn++) for (const {group} of own.filter(each => reached.has(each.name))) for (const each of own) if (each.group === group) reached.add(each.name)
        expect([...reached].sort()).toEqual(found.filter(each => each.linked === linked).map(each => each.name).sort())
      }
    }))
  })

  it('is the plain mean in one class, and does not see what a whole class has more', () => {
    fc.assert(fc.property(fc.array(seen, {minLength: 1, maxLength: 20}), own => {
      for (const {name, level} of levelsAcrossClasses(own.map(each => ({...each, group: 'one'})))) expectClose(level, mean(own.filter(each => each.name === name).map(({value}) => value)), 1e-9)
      const found = levelsAcrossClasses(own), fed = levelsAcrossClasses(own.map(each => (each.group === '2' ? {...each, value: each.value + 300} : each)))
      found.forEach(({linked, level}, place) => {
        const first = found.findIndex(each => each.linked === linked)
        expectClose((fed[place]?.level ?? NaN) - (fed[first]?.level ?? NaN), level - (found[first]?.level ?? NaN), 1e-7)
      })
    }))
  })

  it('gives the values of its example, and takes no rows', () => {
    const [a, b, c] = levelsAcrossClasses([{name: 'a', group: '1', value: 1}, {name: 'b', group: '1', value: 3}, {name: 'b', group: '2', value: 13}, {name: 'c', group: '2', value: 14}]).map(({level}) => level)
    expectClose((b ?? NaN) - (a ?? NaN), 2, 1e-12)
    expectClose((c ?? NaN) - (b ?? NaN), 1, 1e-12)
    expect(levelsAcrossClasses([])).toEqual([])
    expect(() => levelsAcrossClasses([{name: 'a', group: '1', value: NaN}])).toThrow(RangeError)
  })
})
