import {describe, expect, it} from 'vitest'
import {hatchPlan, shareWanted} from '../../src/findings/hatch-plan.ts'
import type {MatingForecast} from '../../src/findings/mating-forecast.ts'
import {COMB, heredityBook} from './heredity-book.ts'

const HATCH = {'hatches/2024-01.md': '---\npen: 2024-A\nset: 2024-03-02\non: 2024-03-23\neggs: 48\nclear: 4\nhatched: 37\n---\n'}
const book = (files: Readonly<Record<string, string>> = {}) => heredityBook(['A male - - tested={P:~P/p+}', 'B female - - tested={P:~P/p+}', 'X male A B-1 comb=pea', 'Y female A B-1 left=2023-04-09~died'], undefined, {'traits/comb.md': COMB.replace('required: yes', 'required: yes\nscored-from: 6 weeks'), ...files})

function parts(of: ReturnType<typeof book>) {
  const {traits} = of.book, comb = traits.find(({id}) => id === 'comb') ?? expect.fail('no comb'), [forecast] = of.findings.forecasts([{sire: of.bird('A'), dam: of.bird('B')}])
  return {comb, forecast: forecast ?? expect.fail('no forecast')}
}
const plan = (of: ReturnType<typeof book>, atLeast: number, sex: 'male' | 'female' | null = null) => {
  const {comb, forecast} = parts(of)
  return hatchPlan(forecast, {looks: [{trait: comb, state: 'single'}], sex}, atLeast, 0.95, of.book, of.findings.hatchResults.all)
}

describe('hatchPlan(forecast, wanted, …)', () => {
  it('takes the chicks from the published table for a quarter and an eighth', () => {
    // source: Sedcole 1977, Crop Sci. 17:667, table: chance ¼, at least 3: 23; ⅛: 49 (from memory)
    expect([plan(book(), 3).chicks, plan(book(), 3, 'female').chicks]).toEqual([23, 49])
  })

  it('goes back to the egg through what was counted, and says what', () => {
    const {stages, eggs} = plan(book(HATCH), 3)
    expect(stages).toEqual([
      {stage: 'fertility', counted: {through: 44, of: 48}}, {stage: 'hatch of fertile', counted: {through: 37, of: 44}}, {stage: 'livability', counted: {through: 1, of: 2}},
    ])
    expect(eggs?.eggs).toBeGreaterThan(eggs?.eggsAtMean ?? Infinity)
    expect(eggs?.meanShare).toBeCloseTo((44.5 / 49) * (37.5 / 45) * (1.5 / 3), 12)
  })

  it('cannot tell the eggs where nothing was counted', () => {
    expect(plan(book(), 1)).toMatchObject({eggs: null, chicks: 11, stages: [{stage: 'hatch of set', counted: null}, {stage: 'livability'}]})
  })
})

describe('shareWanted(forecast, wanted)', () => {
  it('is half of it where one sex is wanted, and a half where only a sex is', () => {
    const {comb, forecast}: {comb: ReturnType<typeof parts>['comb']; forecast: MatingForecast} = parts(book()), looks = [{trait: comb, state: 'single'}]
    expect(shareWanted(forecast, {looks, sex: null})).toBeCloseTo(0.25, 12)
    expect(shareWanted(forecast, {looks, sex: 'male'})).toBeCloseTo(0.125, 12)
    expect(shareWanted(forecast, {looks: [], sex: 'male'})).toBe(0.5)
    expect(shareWanted(forecast, {looks: [...looks, {trait: comb, state: 'pea'}], sex: null})).toBe(0)
  })
})
