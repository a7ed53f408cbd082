import {describe, expect, it} from 'vitest'
import {problemManualPage, type ProblemManual} from '../../src/pages/problem-manual.ts'
import {recordFormatsPage, type RecordFormats} from '../../src/pages/record-formats.ts'
import {KINDS} from '../../src/records/kinds.ts'
import {LINKING_CODES, READING_CODES} from '../../src/records/problem-codes.ts'

describe('the reference page of record formats', () => {
  const view = recordFormatsPage().view as RecordFormats

  it('shows every kind with its own keys first and its example', () => {
    expect(view.kinds.map(kind => kind.id)).toEqual(Object.values(KINDS).map(kind => kind.id))
    for (const kind of view.kinds) {
      expect(kind.tables[0]?.caption).toBe('Its keys')
      expect(kind.example.startsWith('---')).toBe(true)
    }
  })

  it('says which keys are needed, what they hold and what they are for', () => {
    const keys = view.kinds.find(kind => kind.id === 'show')?.tables[0]?.keys
    expect(keys?.find(({key}) => key === 'on')).toMatchObject({required: true, holds: expect.stringContaining('date') as string, help: 'The day.'})
  })

  it('describes what several kinds hold once', () => {
    const captions = [...view.shared, ...view.kinds.flatMap(kind => kind.tables)].map(({caption}) => caption)
    expect(captions.filter(caption => caption.startsWith('A photograph'))).toHaveLength(1)
  })

  it('gives every part a place of its own to point at', () => {
    const ids = [...view.kinds.flatMap(kind => [kind.id, ...kind.tables.map(({id}) => id)]), ...view.shared.map(({id}) => id), ...view.tables.map(({id}) => id)]
    expect(new Set(ids).size).toBe(ids.length)
  })
})

describe('the manual of problems', () => {
  it('has an entry for every code, under the code itself', () => {
    const codes = (problemManualPage().view as ProblemManual).groups.flatMap(({entries}) => entries.map(({code}) => code))
    expect([...READING_CODES, ...LINKING_CODES].filter(code => !codes.includes(code))).toEqual([])
    expect(new Set(codes).size).toBe(codes.length)
  })
})
