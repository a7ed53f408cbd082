import {describe, expect, it} from 'vitest'
import {FIGURE_QUESTIONS, figuresTable} from '../../src/findings/figures.ts'
import {study} from '../../src/findings/study.ts'
import {COLUMN_WORDS, columnWords} from '../../src/pages/figure-columns.ts'
import {twoPens} from '../findings/breeding-book.ts'

describe('columnWords(question, column)', () => {
  const findings = study(twoPens())
  it.each(FIGURE_QUESTIONS)('says what every column of %s holds, and of no other', question => {
    const names = figuresTable(question, findings).columns.map(({name}) => name)
    expect(names.filter(name => columnWords(question, name) === '')).toEqual([])
    expect(Object.keys(COLUMN_WORDS[question]).filter(name => !names.includes(name))).toEqual([])
  })
})
