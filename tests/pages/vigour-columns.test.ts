import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import {VIGOUR_QUESTIONS, vigourTable} from '../../src/findings/vigour-figures.ts'
import {VIGOUR_COLUMN_WORDS} from '../../src/pages/vigour-columns.ts'
import {weekOld} from '../pages/small-logbook.ts'

describe('VIGOUR_COLUMN_WORDS', () => {
  it.each(VIGOUR_QUESTIONS)('say what every column of %s holds, and of no other', question => {
    expect(Object.keys(VIGOUR_COLUMN_WORDS[question]).sort()).toEqual(vigourTable(question, study(weekOld())).columns.map(({name}) => name).sort())
  })
})
