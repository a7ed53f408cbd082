import {describe, expect, it} from 'vitest'
import {evidenceTable, evidenceToRead} from '../../src/commands/evidence-to-read.ts'
import {study} from '../../src/findings/study.ts'
import {EVIDENCE_COLUMN_WORDS} from '../../src/pages/evidence-columns.ts'
import {REQUIREMENT_KINDS} from '../../src/logbook/book.ts'
import {weekOld} from '../pages/small-logbook.ts'
import {gapsBook} from './gaps-book.ts'

const row = (line: string) => {
  const {columns, rows} = evidenceTable(study(gapsBook([line])))
  return Object.fromEntries(columns.map(({name}, index) => [name, rows[0]?.[index] ?? null]))
}

describe('evidenceTable(findings)', () => {
  it('gives the figure, what stands behind it and the way, a row a requirement', () => {
    expect(row('kind: years-bred, at-least: 6')).toEqual({
      kind: 'years-bred', title: 't', asked: 'a', state: 'not yet', found: 'not yet', value: 4, low: null, high: null, count: 4, total: 5, on: '2025-04-11', by: null, waived_because: null, waived_by: null, waived_until: null, not_counted: 0,
      way: 'Shortest way: two more seasons with a hatch, in 2027 at the earliest.', earliest: '2027', birds: null, records: 'hatches/2021-1.md hatches/2023-1.md hatches/2024-1.md hatches/2024-2.md hatches/2025-1.md',
    })
    expect(row('kind: shown-per-class, per-class: 1, classes: [cock, pullet]')).toMatchObject({state: 'met', value: 1, on: '2025-10-04', way: null, earliest: null, birds: '24-001 25-002', records: 'shows/2025-10-04.md'})
    expect(row('kind: statements, at-least: 1, within: 100 days')).toMatchObject({state: 'not yet', value: 0, not_counted: 1, earliest: '2025-11-15', records: null})
    expect(row('kind: identity, at-least: 95%, waived: {because: Grown old., by: the secretary, until: 2026}')).toMatchObject({state: 'waived', found: 'met', waived_because: 'Grown old.', waived_by: 'the secretary', waived_until: '2026', on: null, value: 1, count: 11, total: 11})
  })

  it('answers for every kind, and tells of every column', () => {
    const findings = study(gapsBook(REQUIREMENT_KINDS.map(kind => `kind: ${kind}`))), {columns, rows} = evidenceTable(findings)
    expect(rows.map(([kind]) => kind)).toEqual([...REQUIREMENT_KINDS])
    expect(Object.keys(EVIDENCE_COLUMN_WORDS)).toEqual(columns.map(({name}) => name))
    expect(rows.flat().some(cell => typeof cell === 'number' && Number.isNaN(cell))).toBe(false)
    const {above, table, beneath} = evidenceToRead(findings)
    expect(above).toContain('Nothing here is a real association’s rule')
    expect(table.rows.map(([, state]) => state).every(state => ['met', 'not yet', 'cannot be told', 'waived'].includes(String(state)))).toBe(true)
    expect(beneath.match(/\nt: /g)?.length).toBe(REQUIREMENT_KINDS.length)
  })

  it('has no rows, and says so, where nothing is asked', () => expect(evidenceTable(study(weekOld())).rows).toEqual([]))
})
