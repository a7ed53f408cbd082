import {describe, expect, it} from 'vitest'
import {references} from '../../src/pages/dossier-behind.ts'
import {bird, logbook} from './small-logbook.ts'

describe('references(book)', () => {
  it('counts what is handed in, and gives the same reference for the same thing', () => {
    const refs = references(logbook('2024-06-01', {tellableFiles: new Set(['hatches/1.md'])}))
    const birds = ['24-003', '24-001', '24-002', '24-003'].map(id => bird(id, 'female'))
    expect(refs.to({of: 'A', birds, records: [{file: 'hatches/1.md', path: []}], page: 'hatches.html'})).toEqual({text: '[1]', link: '#r1'})
    expect(refs.to({of: 'B', besides: '3 chicks without a band', records: [{file: 'keepers/inga.md', path: []}]})).toEqual({text: '[2]', link: '#r2'})
    expect(refs.to({of: 'A', birds, records: [{file: 'hatches/1.md', path: []}], page: 'hatches.html'}).text).toBe('[1]')
    expect(refs.listed()).toEqual([
      {id: 'r1', number: 1, of: 'A', birds: '4 birds: 24-001 to 24-003', records: 'hatches/1', page: 'hatches.html'},
      {id: 'r2', number: 2, of: 'B', birds: '3 chicks without a band', records: 'keepers/ (1 file)', page: null},
    ])
  })

  it('does not take two things of one name for one: two shows of one name and day, two requirements of one title', () => {
    const refs = references(logbook('2024-06-01', {tellableFiles: new Set(['shows/a.md', 'shows/b.md'])}))
    expect(refs.to({of: 'Show', birds: [bird('24-001', 'male')], records: [{file: 'shows/a.md', path: []}]}).text).toBe('[1]')
    expect(refs.to({of: 'Show', birds: [bird('24-002', 'male')], records: [{file: 'shows/b.md', path: []}]}).text).toBe('[2]')
  })

  it('numbers tables as they stand, and says which birds wore another band before', () => {
    const refs = references(logbook('2024-06-01')), worn = (band: string) => ({band, from: null, to: null, lost: false})
    expect([refs.table('founding birds'), refs.table('every step')]).toEqual([
      {name: 'Table 1', head: 'Table 1.', label: 'Table 1, founding birds'}, {name: 'Table 2', head: 'Table 2.', label: 'Table 2, every step'},
    ])
    expect(refs.otherBands()).toBeNull()
    refs.to({of: 'A', birds: [{...bird('23-020', 'female'), band: 'G-4', bands: [worn('23-020'), worn('G-4')]}, bird('24-001', 'male')], records: []})
    expect(refs.otherBands()).toBe('G-4 wore 23-020')
  })
})
