import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import type {Findings} from '../../src/findings/study.ts'
import {stepCloseness} from '../../src/pages/step-closeness.ts'
import {halfSibs} from '../findings/kin-book.ts'

describe('stepCloseness(step, findings)', () => {
  const findings = study(halfSibs())
  const view = stepCloseness('F2', findings)

  it('sets mean F with its range beside mean kinship (⅛, ⅛ or ¼, ¼, 0)', () => {
    expect(view?.stats.slice(0, 2).map(({title, value}) => [title, value])).toEqual([['Mean F', '13.8'], ['Mean kinship', expect.any(String)]])
    expect(view?.stats[0]?.words).toBe('12.5 to 15.6 by who the parents are; 4 banded birds.')
    expect(view?.stats[0]?.candle).toMatchObject({off: true, label: '13.8 per cent, 12.5 to 15.6, limit 12.5'})
    expect(view?.scale).toEqual(expect.stringMatching(/^F and kinship on a scale from 0 to 30\.0, rates from 0 to \d+\.0\. Dotted: the project’s limit, 12\.5% for a mating and 1\.0% a generation\.$/))
  })
  it('has a rate inside the closed phase only', () => {
    expect(view?.stats.map(({title}) => title).slice(2)).toEqual(['Rise since the step before', 'Birds’ own rate'])
    expect(stepCloseness('F1', findings)?.stats.length).toBe(2)
  })
  it('cautions in plain words when the project’s limit is passed', () => {
    expect(view?.caution?.text).toMatch(/^The birds of F2 have lost \d+\.\d% a generation; the project allows 1\.0%\./)
    const free: Findings = {...findings, closenessLimits: findings.closenessLimits.map(each => ({...each, rate: null}))}
    expect(stepCloseness('F2', free)?.caution).toBeNull()
  })
  it('says who may be above the limit for a mating, and how far descent is known', () => {
    expect(view?.words[0]).toContain('Highest is 24-002, at up to 25.0%. 2 of 4 birds are, or may be, above the limit for a mating.')
    expect(view?.words[1]).toContain('a grandparent is not on record for 2, whose F is “at least”')
  })
  it('is nothing for a step without banded birds', () => expect(stepCloseness('F9', findings)).toBeNull())
})
