import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import {closenessFigure} from '../../src/pages/closeness-figure.ts'
import {halfSibs} from '../findings/kin-book.ts'
import {weekOld} from './small-logbook.ts'

describe('closenessFigure(findings)', () => {
  it('stands kinship beside F in drawing, words and table, with the limit', () => {
    const figure = closenessFigure(study(halfSibs()), 'Figure 4.')
    expect(figure?.table.columns.map(({head}) => head)).toEqual(['Step', 'Birds', 'F, %', 'By who the parents are', 'Kinship, %'])
    expect(figure?.table.rows[1]?.slice(0, 4)).toEqual(['F2', '4', '13.8', '12.5–15.6'])
    expect(figure?.description).toMatch(/^Mean F and mean kinship: 0\.0 and \d+\.\d in F1 and 13\.8 and \d+\.\d in F2 per cent\.$/)
    expect(figure?.caption).toContain('limit for a mating, 12.5%')
  })
  it('is none while nobody is banded', () => expect(closenessFigure(study(weekOld()), '')).toBeNull())
})
