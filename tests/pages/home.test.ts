/** What the home page headlines is of the step the breed stands at; another step's figures stand beneath, named. */
import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import type {Bird, Step} from '../../src/logbook/book.ts'
import {homePage} from '../../src/pages/home.ts'
import type {HomeView} from '../../src/pages/home.ts'
import {ladderPage} from '../../src/pages/ladder.ts'
import {siteFrame} from '../../src/pages/site-frame.ts'
import {bird, comb, F1, F2, holm, logbook, looks, project, score, smallBook} from './small-logbook.ts'

const BC1: Step = {...F1, label: 'BC1', kind: 'backcross', to: holm, backcrosses: 1, depth: 2}
const chick = (id: string, step: Step, value: string | null): Bird => bird(id, 'male', {step, strain: null, looks: value === null ? new Map() : looks(score(comb, value))})

/** F1 and BC1 on the ladder, and one F2 chick of a test mating beside it. */
const beside = (bc1: readonly (string | null)[]) => study(logbook('2025-10-30', {
  project: {...project, ladder: ['F1', 'BC1', 'BC2']},
  birds: [chick('1', F1, 'pea'), chick('2', F2, 'pea'), ...bc1.map((value, index) => chick(`b${index}`, BC1, value))],
}))
const stats = (findings: ReturnType<typeof study>) => (homePage(findings).view as HomeView).stats

describe('the headline figures', () => {
  it('give no true-bred rate of a step that is not mated inter se, and name another step’s beneath', () => {
    expect(stats(beside(['pea', 'single']))[0]).toMatchObject({
      title: 'True-bred rate, BC1', value: '–', candle: null,
      words: 'The rate is asked of inter se matings, and none of BC1 is. Of another step, F2: 1 of 1 (100.0%, 20.7 to 100.0) right in all they could show.',
    })
  })
  it('say the least uniform trait of the step the breed stands at, or of which other step it is', () => {
    expect(stats(beside(['pea', 'single']))[1]).toMatchObject({title: 'Least uniform: Comb, BC1', value: '50.0'})
    expect(stats(beside([null]))[1]).toMatchObject({
      title: 'Least uniform trait, BC1', value: '–', words: 'Nothing that the standard requires has been scored in BC1 yet. In another step, F1: comb, 1 of 1 (100.0%, 20.7 to 100.0) as wanted.',
    })
  })
  it('are of the latest step where it is mated inter se', () => expect(stats(study(smallBook()))[0]?.title).toBe('True-bred rate, F2'))
})

describe('the steps reached', () => {
  it('are counted on the ladder, those beside it apart', () => {
    const findings = beside(['pea'])
    expect(ladderPage(findings, null).view).toMatchObject({lead: 'Two steps reached, the breed now at BC1; one more planned; one step beside the ladder.'})
    expect(siteFrame(findings, [ladderPage(findings, null)]).contents[0]?.note).toBe('two steps from F1 to BC1, and one step beside the ladder')
  })
})
