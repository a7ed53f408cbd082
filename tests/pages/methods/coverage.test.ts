import {describe, expect, it} from 'vitest'
import {METHODS, methodsPage, type MethodsView} from '../../../src/pages/methods.ts'
import {coverageView, heldBy, HOLDS} from '../../../src/pages/methods/coverage.ts'
import {MEASURED_COVERAGE} from '../../../src/statistics/measured-coverage.ts'

const INTERVALS = [...new Set(MEASURED_COVERAGE.map(({interval}) => interval))]
const view = coverageView()

describe('the table of how often intervals hold the truth', () => {
  it('has every row measured, under a name of its own', () => {
    expect(view.groups.map(({parts}) => parts.reduce((sum, {rows}) => sum + rows.length, 0))).toEqual(INTERVALS.map(interval => MEASURED_COVERAGE.filter(row => row.interval === interval).length))
    expect(new Set(view.groups.map(({name}) => name)).size).toBe(INTERVALS.length)
    for (const [place, {name}] of view.groups.entries()) expect(name).not.toBe(INTERVALS[place])
  })

  it('says once what several rows have in common', () => {
    const [alike] = view.groups.find(({name}) => name === 'A share, by families')?.parts ?? []
    expect(alike).toMatchObject({of: 'no cock differs', rows: [{flock: '5 cocks', held: '99.6'}, {flock: '8 cocks'}, {flock: '20 cocks'}]})
    for (const {parts} of view.groups) for (const {of, rows} of parts) expect(of !== '' && (rows.length > 1 || rows[0]?.flock === '')).toBe(true)
  })

  it.each(INTERVALS)('leaves no shortfall and no needless width without a word: %s', interval => {
    const rows = MEASURED_COVERAGE.filter(row => row.interval === interval), name = view.groups[INTERVALS.indexOf(interval)]?.name ?? ''
    const told = view.notes.filter(({of}) => of.split('; ').some(each => each.startsWith(`${name}: `))).length
    expect(told).toBe(Number(rows.some(({held}) => held < HOLDS.low)) + Number(rows.some(({held}) => held > HOLDS.high)))
  })

  it('marks what lies under 93.5', () => {
    expect(view.groups.flatMap(({parts}) => parts.flatMap(({rows}) => rows.filter(({short}) => short)))).toHaveLength(MEASURED_COVERAGE.filter(({held}) => held < HOLDS.low).length)
    expect(heldBy('wilson')).toBe('95.0 to 95.3')
  })
})

describe('the page of methods', () => {
  it('lists every entry once under the subjects of its table of contents', () => {
    const {chapters} = methodsPage().view as MethodsView
    expect(chapters.flatMap(({methods}) => methods.map(({id}) => id))).toEqual(METHODS.map(({id}) => id))
    expect(METHODS.map(({id}) => id)).not.toContain('coverage')
  })
})
