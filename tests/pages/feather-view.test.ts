import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import {featherView} from '../../src/pages/feather-view.ts'
import {bird, comb, date, F2, logbook, looks, score} from './small-logbook.ts'

describe('the grown feather', () => {
  const chick = (band: string, more: Parameters<typeof bird>[2]) => bird(band, 'female', {hatched: date('2025-03-01'), step: F2, strain: null, ...more})
  const book = logbook('2025-10-30', {birds: [
    chick('1', {looks: looks(score(comb, 'pea'))}), chick('2', {sex: 'unknown', looks: looks(score(comb, 'single'))}),
    chick('3', {left: {on: date('2025-03-05'), how: 'died', why: null}}),
  ]})

  it('has a title that counts what is drawn, and says what is not', () => {
    const view = featherView(study(book))
    expect(view?.title).toBe('2 birds, one feather')
    expect(view?.words).toContain('those not sexed among them')
    expect(view?.words).toMatch(/Not drawn: 1 banded bird gone before scoring age\.$/)
    expect(view?.table.rows.find(([step]) => typeof step === 'object' && step.text === 'F2')?.slice(1, 5)).toEqual(['0', '2', '1', '1 of 2'])
  })
})
