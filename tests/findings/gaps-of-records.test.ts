import {describe, expect, it} from 'vitest'
import {openBook} from '../../src/commands/open-book.ts'
import {progressIn} from '../../src/commands/progress.ts'
import {gapsOfRecords} from '../../src/findings/gaps-of-records.ts'
import {listeningWorld} from '../folders/listening-world.ts'
import {logbook} from '../pages/small-logbook.ts'

const {findings} = openBook('content', undefined, progressIn(listeningWorld(), true))
if (!findings) throw new Error('the demo cannot be read')
const {book} = findings, gaps = gapsOfRecords(book), of = (kind: string) => gaps.find(gap => gap.kind === kind)

describe('gapsOfRecords(book)', () => {
  it('counts over the birds of the breed alone, each gap as many as the birds that lack it', () => {
    // counted by hand in the hatches of the demo: eight of 2020-03, twenty never sexed; the nine pure chicks of 2021-05 may have one of two dams and are not of the breed
    expect(of('hatch-day')).toMatchObject({count: 8, of: 306})
    expect(of('sex')).toMatchObject({count: 20, of: 306})
    expect(of('unbanded')).toMatchObject({count: 114, of: 420, unbanded: 114, birds: []})
    // six birds of hatch 2020-03, whose day is not known, were weighed once each; two traits read that weighing
    expect(of('outside')).toMatchObject({count: 6, unbanded: 0})
    expect(of('lost-band')?.birds.map(({band}) => band)).toEqual(['G-4'])
    for (const {kind, count, birds, unbanded} of gaps) if (kind !== 'candled') expect(birds.length + unbanded, kind).toBe(count)
    for (const {birds} of gaps) for (const {step} of birds) expect(step.kind).not.toBe('strain')
  })

  it('tells birds whose scores of a required look do not agree, by hand from hatches and scores', () => {
    // silver in its hatch and brassy in June 2022; yellow in their hatches and white in the autumn
    expect(of('unlike')).toMatchObject({count: 3, birds: [{band: '21-111'}, {band: '23-111'}, {band: '25-032'}]})
  })

  it('has no more of one parent in doubt than of either', () => {
    expect(Math.max(of('several-sires')?.count ?? 0, of('several-dams')?.count ?? 0)).toBeLessThanOrEqual(of('parents')?.count ?? 0)
  })

  it('has none where nothing is on record', () => {
    expect(gapsOfRecords(logbook('2024-06-01'))).toEqual([])
  })
})
