import {describe, expect, it} from 'vitest'
import {changeTable, EVENNESS_QUESTIONS, scoresTable, trendTable} from '../../src/findings/evenness-figures.ts'
import {study} from '../../src/findings/study.ts'
import {EVENNESS_COLUMN_WORDS} from '../../src/pages/evenness-columns.ts'
import {bookOfFamilies, F3} from '../findings/evenness-book.ts'
import {F2} from './small-logbook.ts'

describe('EVENNESS_COLUMN_WORDS', () => {
  const findings = study(bookOfFamilies([{step: F2, pea: 1}, {step: F3, pea: 1}])), [from, to] = findings.ladder.filter(step => step.kind === 'reached')
  it.each(EVENNESS_QUESTIONS)('says what every column of %s holds, and of no other', question => {
    if (!from || !to) return expect.fail('no steps')
    const table = {trend: trendTable(findings), change: changeTable(findings.change(from, to)), scores: scoresTable(findings.gradedScores)}[question]
    expect(Object.keys(EVENNESS_COLUMN_WORDS[question]).sort()).toEqual(table.columns.map(({name}) => name).sort())
  })
})
