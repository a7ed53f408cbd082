import {parse} from 'csv-parse/sync'
import {describe, expect, it} from 'vitest'
import {figuresText} from '../../src/commands/figures-text.ts'
import {csvOf, tableToTwelveDigits, toTwelveDigits} from '../../src/pages/figures-file.ts'
import type {FiguresTable} from '../../src/findings/figures.ts'

const table: FiguresTable = {
  columns: [{name: 'band', as: 'text'}, {name: 'n', as: 'count'}, {name: 'share', as: 'share'}, {name: 'mean', as: 'measure'}],
  rows: [['24-031', 7, 2 / 3, 2360.04], ['a "quoted", one', 12, null, null]],
}

describe('figuresText', () => {
  it('writes CSV with whole numbers, quoting as RFC 4180 has it, empty where nothing can be said', () => {
    expect(csvOf(table)).toBe('band,n,share,mean\n24-031,7,0.6666666666666666,2360.04\n"a ""quoted"", one",12,,\n')
  })
  it('writes CSV that a well-kept parser reads back', () => {
    const odd: FiguresTable = {columns: [{name: 'a', as: 'text'}, {name: 'b', as: 'text'}], rows: [['one\ntwo', 'x,y'], ['"', ' spaced ']]}
    expect(parse(csvOf(odd))).toEqual([['a', 'b'], ...odd.rows])
  })
  it('writes a table that is rounded and stands in columns', () => {
    expect(figuresText(table, 'table', '')).toBe('band              n  share    mean\n24-031            7  66.7%  2360.0\na "quoted", one  12      –       –\n')
  })
  it('does not print as nothing or as all what is neither, and leaves the other formats exact', () => {
    const shares: FiguresTable = {columns: [{name: 'share', as: 'share'}], rows: [[0], [1e-5], [0.0005], [0.9994], [0.99999], [1 - 1e-15], [1]]}
    expect(figuresText(shares, 'table', '').trimEnd().split('\n').map(line => line.trim())).toEqual(['share', '0.0%', '< 0.1%', '0.1%', '99.9%', '> 99.9%', '100.0%', '100.0%'])
    expect(figuresText(shares, 'csv', '')).toContain('0.99999\n')
  })
  it('prints a fraction among other figures as per cent', () => {
    const mixed: FiguresTable = {columns: [{name: 'figure', as: 'text'}, {name: 'value', as: 'measure', asIn: ([figure]) => (figure === 'mean kinship' ? 'share' : 'measure')}], rows: [['mean kinship', 0.212], ['genomes', 2.41]]}
    expect(figuresText(mixed, 'table', '')).toBe('figure        value\nmean kinship  21.2%\ngenomes         2.4\n')
  })
  it('says so when there are no rows', () => expect(figuresText({...table, rows: []}, 'table', 'nothing hatched')).toContain('(no rows: nothing hatched)'))
  it('rounds the chances of uncertain parents for reading only', () => {
    const parents: FiguresTable = {columns: [{name: 'sire', as: 'parents'}, {name: 'dam', as: 'parents'}], rows: [['a:0.33333333333333337 b:0.5', '24:0.123']]}
    expect(figuresText(parents, 'table', '')).toBe('sire          dam\na:0.33 b:0.5  24:0.12\n')
    expect(figuresText(parents, 'csv', '')).toContain('a:0.33333333333333337 b:0.5')
  })
  it('writes JSON with a name on every value', () => {
    expect(JSON.parse(figuresText(table, 'json', ''))).toEqual([{band: '24-031', n: 7, share: 2 / 3, mean: 2360.04}, {band: 'a "quoted", one', n: 12, share: null, mean: null}])
  })
})

describe('tableToTwelveDigits(table)', () => {
  it('leaves of numbers and of the chances of parents what means something, and nothing out', () => {
    const noisy: FiguresTable = {
      columns: [{name: 'band', as: 'text'}, {name: 'sire', as: 'parents'}, {name: 'F', as: 'share'}, {name: 'mean', as: 'measure'}],
      rows: [['24:0.33333333333333337', 'a:0.33333333333333337 b:0.5', 0.12499999999999996, null], ['b', null, 1e-15, 2111.5384615384614], ['c', 'H1', 12, 0]],
    }
    expect(tableToTwelveDigits(noisy).rows).toEqual([['24:0.33333333333333337', 'a:0.333333333333 b:0.5', 0.125, null], ['b', null, 1e-15, 2111.53846154], ['c', 'H1', 12, 0]])
  })
  it('touches nothing that is no number', () => expect([1 / 3, '0.33333333333333337', null, true].map(toTwelveDigits)).toEqual([0.333333333333, '0.33333333333333337', null, true]))
})
