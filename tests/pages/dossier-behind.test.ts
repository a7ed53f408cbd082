import {describe, expect, it} from 'vitest'
import {references} from '../../src/pages/dossier-behind.ts'
import {bird, logbook} from './small-logbook.ts'

describe('references(book)', () => {
  it('counts what is handed in, and gives the same reference for the same thing', () => {
    const refs = references(logbook('2024-06-01', {tellableFiles: new Set(['hatches/1.md'])}))
    const birds = ['24-003', '24-001', '24-002', '24-003'].map(id => bird(id, 'female'))
    expect(refs.to({of: 'A', birds, records: [{file: 'hatches/1.md', path: []}], page: 'hatches.html'})).toEqual({text: '[1]', link: '#r1'})
    expect(refs.to({of: 'B', besides: '3 chicks without a band', records: [{file: 'keepers/inga.md', path: []}]})).toEqual({text: '[2]', link: '#r2'})
    expect(refs.to({of: 'A', birds, records: []}).text).toBe('[1]')
    expect(refs.listed()).toEqual([
      {id: 'r1', number: 1, of: 'A', birds: '4 birds: 24-001 to 24-003', records: 'hatches/1', page: 'hatches.html'},
      {id: 'r2', number: 2, of: 'B', birds: '3 chicks without a band', records: 'keepers/ (1 file)', page: null},
    ])
  })
})
