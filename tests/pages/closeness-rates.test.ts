import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import {closenessRates} from '../../src/pages/closeness-rates.ts'
import {halfSibs} from '../findings/kin-book.ts'
import {weekOld} from './small-logbook.ts'

describe('closenessRates(findings)', () => {
  const {closeness, book} = study(halfSibs())
  it('has every step mated inside the line, with its own rate and size', () => {
    const found = closenessRates({closeness, book})
    expect(found?.table.rows.map(([step]) => step)).toEqual(['F2'])
    expect(found?.table.rows[0]?.slice(1, 4)).toEqual(['13.8', '13.8', '–'])
    expect(found?.words).toContain('The project allows 1.0% a generation.')
  })
  it('gives the rise with the figures that it can be had from', () => {
    const f2 = closeness.find(({step}) => step === 'F2')
    if (!f2) throw new Error('no F2')
    const steps = [{...f2, fresh: 0.1, mean: 0.15}, {...f2, step: 'F3', fresh: 0.19, mean: 0.2, rate: {since: 'F2', value: 0.1}}]
    expect(closenessRates({closeness: steps, book})?.words).toContain('for F3 (19.0 − 10.0) / (100 − 10.0) = 10.0%.')
  })
  it('is none before', () => expect(closenessRates(study(weekOld()))).toBeNull())
})
