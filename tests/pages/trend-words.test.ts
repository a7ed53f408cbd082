import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import type {Step} from '../../src/logbook/book.ts'
import {trendView} from '../../src/pages/trend-words.ts'
import {bookOfFamilies, F3, F4, LADDER, type Family} from '../findings/evenness-book.ts'
import {F1, F2} from './small-logbook.ts'

const [F5, F6] = [4, 5].map((interSe): Step => ({...F2, label: `F${interSe + 1}`, interSe, depth: interSe + 1})) as [Step, Step]
const told = (families: readonly Family[]) => trendView(study(bookOfFamilies(families, {project: {...LADDER, ladder: ['F1', 'F2', 'F3', 'F4', 'F5', 'F6']}})))
const many = (count: number, family: Family): Family[] => Array.from({length: count}, () => family)

describe('trendView(findings)', () => {
  it('says nothing before a step was mated inside the line, and of one that it takes two', () => {
    expect(told([{step: F1, pea: 20}])).toBeNull()
    expect(told([{step: F1, pea: 20}, {step: F2, pea: 15, single: 5}])).toEqual({
      words: ['Only F2 was mated inside the line and scored so far; whether the line gets truer takes two such steps.', 'F1 was a cross: what share is right in them follows the plan, and is no trend.'], table: null,
    })
  })

  it('speaks of these chicks only where families are few, and of birds bred like these where they are enough', () => {
    const few = told([{step: F2, pea: 40, single: 40}, {step: F3, pea: 60, single: 20}, {step: F4, pea: 78, single: 2}])
    expect(few?.words[0]).toBe('Over F2, F3 and F4 the line gets truer: +23.8 points a step, P\u00a0under 0.001, said of these chicks only, for want of sire families.')
    const enough = told([...many(4, {step: F2, pea: 5, single: 5}), ...many(4, {step: F3, pea: 7, single: 3}), ...many(4, {step: F4, pea: 9, single: 1})])
    expect(enough?.words[0]).toMatch(/^Over F2, F3 and F4 the line gets truer: \+20\.0 points a step \(.* to .*\), by families, P\u00a0.*, said of birds bred like these\.$/)
    expect(enough?.table?.rows[0]).toMatchObject(['Everything required', '50.0, 70.0, 90.0', expect.stringContaining('by families'), 'rises'])
  })

  it('tells less true, alike, and what cannot be told', () => {
    expect(told([{step: F2, pea: 78, single: 2}, {step: F3, pea: 40, single: 40}])?.words[0]).toContain('the line gets less true: −47.5 points a step')
    expect(told([{step: F2, pea: 9}, {step: F3, pea: 9}])?.words[0]).toBe('Over F2 and F3 all chicks are alike.')
    expect(told([{step: F2, pea: 5, single: 5}, {step: F3, pea: 6, single: 4}])?.words[0]).toMatch(/^Whether the line gets truer over F2 and F3 cannot be told: \+10\.0 points a step, P\u00a0/)
  })

  it('tells a direction of evenness from five steps on', () => {
    const grams = (room: number): number[] => [-3, -2, -1, 0, 1, 2, 3].map(place => 2000 + place * room)
    const steps = [F2, F3, F4, F5, F6], falling = steps.map((step, index) => ({step, pea: 7, grams: grams(100 - 15 * index)}))
    expect(told(falling)?.words[1]).toBe('It gets more even in weight at 20 weeks of males.')
    expect(told(falling.slice(0, 4))?.words[1]).toBe('Whether it gets more even in weight at 20 weeks of males cannot be told by so few steps: under five, chance alone could put them in any order.')
    expect(told(steps.map((step, index) => ({step, pea: 7, grams: grams(40 + 15 * index)})))?.words[1]).toBe('It gets less even in weight at 20 weeks of males.')
  })

  it('compares like with like: both sexes only where every step has both, else each by itself, and says which', () => {
    const grams = [1900, 1950, 2000, 2050, 2100], pair = (step: Step, ...sexes: readonly ('male' | 'female')[]): Family[] => sexes.map(sex => ({step, sex, grams}))
    const heads = (families: readonly Family[]): readonly unknown[] => (told(families)?.table?.rows ?? []).map(([head]) => (typeof head === 'object' ? head.text : head))
    expect(heads([...pair(F2, 'male', 'female'), ...pair(F3, 'male', 'female')])).toContain('Weight at 20 weeks of both sexes, CV')
    const mixed = heads([...pair(F2, 'male'), ...pair(F3, 'male', 'female')])
    expect(mixed).toContain('Weight at 20 weeks of males, CV')
    expect(mixed).not.toContain('Weight at 20 weeks of both sexes, CV')
  })
})
