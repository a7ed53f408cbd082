import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import {comparedWords, heritabilityTable} from '../../src/pages/choosing-figures.ts'
import {selectionWords} from '../../src/pages/choosing-words.ts'
import {chosenFlock} from '../findings/vigour-book.ts'

const findings = study(chosenFlock(5, {h2: 0.5, choose: true}))

describe('heritabilityTable(findings)', () => {
  it('gives a row a measure and way of telling, with its limits beside it and how many parents were compared', () => {
    const table = heritabilityTable(findings), rows = (table?.rows ?? []).map(row => row.map(String))
    expect(table?.columns.map(({head}) => head)).toEqual(['Measure, told by', 'Heritability', 'Of'])
    expect(rows.map(([of]) => of)).toEqual(['Weight at 20 weeks, realised by choosing', 'Weight at 20 weeks, both parents', 'Weight at 20 weeks, sires', 'Weight at 20 weeks, dams'])
    expect(rows[1]?.[1]).toMatch(/^−?\d\.\d\d \(\d\.\d\d–\d\.\d\d\)$/)
    expect(rows[1]?.[2]).toMatch(/^\d+ pairs of \d+ cocks and \d+ hens, \d+ chicks$/)
  })

  it('says where nobody’s chicks were reared beside another’s', () => {
    const [one] = findings.likeness
    expect(one && comparedWords({...one, parents: 'sire', families: 0, males: 0, females: 0, chicks: 0})).toBe('no two sires measured with chicks in one lot')
    expect(one && comparedWords({...one, parents: 'dam', families: 1, males: 0, females: 1, chicks: 1})).toBe('1 dam, 1 chick')
  })
})

describe('selectionWords(of, units)', () => {
  it('counts one bird as one', () => {
    const [of] = findings.selection.passages
    expect(of && selectionWords({...of, response: null, move: 30, moved: {from: 13, to: 1}}, 'metric')).toContain('the mean went +30 g (13 birds and 1), season and choosing in one')
    expect(of && selectionWords({...of, response: null, move: 30, moved: {from: 1, to: 13}}, 'metric')).toContain('(1 bird and 13)')
  })
})
