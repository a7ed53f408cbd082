import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import type {Logbook} from '../../src/logbook/book.ts'
import {stepPage, type StepView} from '../../src/pages/step.ts'
import {bookOfFamilies, F3, type Family} from '../findings/evenness-book.ts'
import {date, F2} from './small-logbook.ts'

const many = (count: number, family: Family): Family[] => Array.from({length: count}, () => family)
function viewOf(book: Logbook, label = 'F3'): StepView {
  const findings = study(book), step = findings.ladder.find(each => each.label === label) ?? expect.fail(`no ${label}`)
  return stepPage(step, {findings, records: () => ({stays: []}) as never, trueBredFigure: null, large: false}).view as StepView
}

describe('the true-bred rate of a step', () => {
  it('has both intervals where there are five sire families, and says which a committee should read', () => {
    const {trueBred, answer} = viewOf(bookOfFamilies([...many(6, {step: F2, pea: 5, single: 5}), ...many(6, {step: F3, pea: 9, single: 1})]))
    expect(trueBred?.all).toMatchObject({chicks: '54 of 60', percent: '90.0'})
    expect(trueBred?.families).toMatchObject({text: 'The same, by 6 sire families', percent: '90.0', candle: {label: expect.stringContaining('by families') as string}})
    expect(trueBred?.words[0]).toBe('A committee should read the interval by 6 sire families: it speaks of birds bred like these. The other speaks of these chicks only.')
    expect(answer).toBe('Against F2, F3 is truer (90.0% after 50.0%), by sire families too; nothing measured can be compared.')
  })

  it('has the plain one alone where there are fewer, as said of these chicks only', () => {
    const {trueBred} = viewOf(bookOfFamilies([{step: F3, pea: 9, single: 1}]))
    expect(trueBred?.families).toBeNull()
    expect(trueBred?.words[0]).toBe('A committee should read the interval as said of these chicks only: they come of one sire family, and under five nothing can be said of birds bred like them.')
  })

  it('counts culls among those judged, and says how many', () => {
    const book = bookOfFamilies([{step: F3, pea: 9, single: 1}])
    const culled = book.birds.filter(({step}) => step === F3).slice(0, 2)
    for (const bird of culled) Object.assign(bird, {left: {how: 'culled', on: date('2024-09-01'), why: null}})
    expect(viewOf(book).trueBred?.words).toContain('Among those counted: 2 culled since.')
  })

  it('stands by sex and by the last seasons, with the lower limit beside what is asked', () => {
    const asked = {association: null, papers: [], items: [{kind: 'true-to-type', atLeast: 0.5} as never], distinctness: [], at: {file: 'made-by-hand.md', path: []}, body: ''} as never
    const view = viewOf(bookOfFamilies([...many(6, {step: F3, pea: 9, single: 1}), ...many(2, {step: F3, pea: 9, single: 1, sex: 'female'})], {requirements: asked}))
    expect(view.parts?.rows.map(([head]) => head)).toEqual(['Males', 'Females', 'All inside the line, 2024'])
    expect(view.parts?.rows[2]?.[3]).toMatch(/; by 8 families /)
    expect(view.asked).toMatch(/^Asked for are 50\.0%; of 2024 the lower limit, \d\d\.\d% by families, reaches that too\.$/)
  })
})
