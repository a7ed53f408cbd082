import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import {birdPage} from '../../src/pages/bird.ts'
import {figuresIn} from '../../src/site/render.ts'
import {recordsByBird} from '../../src/pages/records-by-bird.ts'
import type {Bird} from '../../src/logbook/book.ts'
import {bird, date, F2, logbook} from './small-logbook.ts'

describe('what the search says of a bird', () => {
  it('tells a hen from her namesake: step, year, and whether she is still there', () => {
    const old = bird('22-001', 'female', {id: '22-001-2022', hatched: date('2022-03-14'), step: F2, strain: null, left: {on: date('2023-08-01'), how: 'sold', why: 'light'}})
    const young = bird('22-001', 'female', {id: '22-001-2025', hatched: date('2025-03-14')}), gone = bird('X', 'male', {left: {on: null, how: 'died', why: null}})
    const findings = study(logbook('2025-10-30', {birds: [old, young, gone]}))
    const found = (one: Bird, breeding: boolean): string | undefined => birdPage(one, findings, recordsByBird(findings.book)(one), breeding).search?.kind
    expect([found(old, false), found(young, true), found(young, false), found(gone, false)])
      .toEqual(['F2 hen, hatched 2022, sold', 'Holm White pullet, hatched 2025, breeding', 'Holm White pullet, hatched 2025, living', 'Holm White cock, died'])
  })
})

describe('the view of a bird', () => {
  it('is made when it is asked for, and holds no figure, as it says', () => {
    const findings = study(logbook('2025-10-30', {birds: [bird('22-001', 'female')]})), [one] = findings.book.birds
    const page = birdPage(one!, findings, recordsByBird(findings.book)(one!), false)
    expect([page.fleeting, page.view === page.view, figuresIn(page.view)]).toEqual([true, false, []])
    expect(page.view).toEqual(page.view)
  })
})
