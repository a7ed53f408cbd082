import {describe, expect, it} from 'vitest'
import {locate} from '../../src/records/locate.ts'
import type {Slip, Spot} from '../../src/records/problem.ts'
import {front, problemsOf, readFiles, short} from './reading.ts'

describe('where a problem stands', () => {
  it.each([
    ['chicks:\n  - {band: 24-031, sex: femal}', '4:25-4:30 unreadable-value'],
    ['chicks:\n  - band: 24-031\n    sex: femal', '5:10-5:15 unreadable-value'],
    ['chicks:\n  - {sex: female}', '4:5-4:18 missing-key'],
    ['chicks:\n  - sex: female\n    comb: pea', '4:5-4:16 missing-key'],
    ['chicks:\n  - {band: 24-031}\n  -', '5:4-5:4 no-value'],
    ['eggs: {22-017: 14, unknown: many}', '3:29-3:33 unreadable-value'],
    ['pen: {2024-A, 2024-B: 18 eggs}', '3:7-3:13 comma-in-braces'],
    ['chicks: [{band: 24-031, left: 2024-03-24 culled, off type}]', '3:50-3:58 comma-in-braces'],
    ['chicks: [{band:24-031}]', '3:11-3:22 comma-in-braces'],
    ['eggs: "many"', '3:7-3:13 unreadable-value'],
    ['laid: >\n  2024-02-31', '3:7-3:8 impossible-date'],
    ['egs: 48', '3:1-3:4 unknown-key'],
    ['egs:', '3:1-3:4 unknown-key'],
    ['photos: {file: a.jpg, vew: left}', '3:23-3:26 unknown-key'],
    ['chicks: [{band: 24-031, photo: [{file: a.jpg}]}]', '3:25-3:30 unknown-key'],
    ['chicks: [{band: 24-031, comb: [pea]}]', '3:31-3:36 wrong-form'],
    ['chicks: [{{band: 24-031}}]', '3:10-3:26 wrong-form'],
    ['chicks: [{band: [24-031]}]', '3:17-3:25 wrong-form'],
  ])('%s', (lines, problem) => {
    const [first, ...echoes] = problemsOf({'hatches/2024-03.md': front(`machine: I3\n${lines}`)}).filter(found => !found.endsWith('missing-key') || problem.endsWith('missing-key'))
    expect(first).toBe(`hatches/2024-03.md ${problem}`)
    expect(echoes).toEqual([])
  })

  it('is that of the nearest thing above where the path leads nowhere', () => {
    const text = front('band: 24-031\nphotos: [{file: a.jpg}]\nkin:\n  - {with: a, kinship: 5%}')
    const at = (path: readonly (string | number)[], part?: 'key' | 'value'): string => {
      const slip: Slip = {code: 'wrong-form', severity: 'error', at: {file: 'a.md', path, part}, reason: '', remedy: ''}
      return locate([slip], () => text).map(short)[0] ?? ''
    }
    expect(at([])).toBe('a.md 1:1-1:4 wrong-form')
    expect(at(['nowhere'])).toBe('a.md 1:1-1:4 wrong-form')
    expect(at(['band', 'deeper'])).toBe('a.md 2:7-2:13 wrong-form')
    expect(at(['photos', 7])).toBe('a.md 3:9-3:24 wrong-form')
    expect(at(['photos', 0, 'alt'], 'key')).toBe('a.md 3:10-3:23 wrong-form')
    expect(at(['kin'])).toBe('a.md 4:1-4:4 wrong-form')
    expect(at(['kin', 0, 'with'])).toBe('a.md 5:12-5:13 wrong-form')
    expect(at(['kin', 0, 'with'], 'key')).toBe('a.md 5:6-5:10 wrong-form')
  })

  it('is the file’s beginning when its text is not to be had', () => {
    expect(locate([{code: 'wrong-form', severity: 'error', at: {file: 'a.md', path: ['x']}, reason: '', remedy: ''}], () => null).map(short)).toEqual(['a.md 1:1-1:1 wrong-form'])
  })
})

describe('the list of problems', () => {
  const slip = (at: Spot, code: Slip['code'], reason = ''): Slip => ({at, code, severity: 'error', reason, remedy: ''})
  const cell = (file: string, line: number, column: number): Spot => ({file, line, column, width: 1})

  it('is sorted by file, line, column and code, and says the same thing once', () => {
    const slips = [
      slip(cell('b.csv', 2, 1), 'no-value'), slip(cell('b.csv', 10, 1), 'no-value'), slip(cell('b.csv', 2, 1), 'wrong-unit'), slip(cell('a.csv', 3, 12), 'no-value'),
      slip(cell('a.csv', 3, 9), 'no-value'), slip(cell('a.csv', 3, 9), 'no-value'), slip(cell('a.csv', 3, 9), 'no-value', 'another'),
    ]
    const expected = ['a.csv 3:9-3:10 no-value', 'a.csv 3:9-3:10 no-value', 'a.csv 3:12-3:13 no-value', 'b.csv 2:1-2:2 no-value', 'b.csv 2:1-2:2 wrong-unit', 'b.csv 10:1-10:2 no-value']
    expect(locate(slips, () => null).map(short)).toEqual(expected)
    expect(locate([...slips].reverse(), () => null).map(short)).toEqual(expected)
  })

  it('places what is related, too', () => {
    const [problem] = locate([{...slip({file: 'a.md', path: ['band']}, 'band-twice'), related: [{at: {file: 'b.md', path: ['band']}, note: 'first given at'}]}], () => front('band: 1'))
    expect(problem?.related).toEqual([{place: {file: 'b.md', start: {line: 2, column: 7}, end: {line: 2, column: 8}}, note: 'first given at'}])
  })
})

describe('the likely right word', () => {
  it.each([
    ['keper: kelpgarth', 'did you mean keeper?'], ['dead-in-gern: 2', 'did you mean dead-in-germ?'], ['Eggs: 48', 'did you mean eggs?'], ['chick: []', 'did you mean chicks?'],
  ])('%s: %s', (line, remedy) => {
    expect(readFiles({'hatches/1.md': front(line)}).problems).toMatchObject([{code: 'unknown-key', remedy}])
  })

  it.each(['Private', 'PRIVATE', 'privat', 'pirvate', 'privates', 'private-note', 'note private', 'PrivateNote'])('%s is meant for private, wherever words of one’s own are taken, and goes nowhere', key => {
    const files = {
      'birds/1.md': front(`band: 1\n${key}: secretword\nobservations: [{on: 2024-05-04, ${key}: secretword}]`),
      'hatches/1.md': front(`chicks: [{band: 24-001, ${key}: secretword}]\neggs: {H-1: 4, ${key}: 5}`),
      'traits/comb.md': front(`name: Comb\nstates: [pea, single]\nloci: {P: {on: autosome, alleles: [P, p+]}}\nshows: [{P: P/_, is: pea, ${key}: secretword}]`),
      'pens/2024-A.md': front(`season: 2024\nmales: [{band: 1, ${key}: secretword}]\nfemales: [2]`),
    }
    const {records, problems} = readFiles(files)
    expect(new Set(problems.map(({code, remedy}) => `${code}: ${remedy}`))).toEqual(new Set(['unknown-key: did you mean private?']))
    expect(problems.map(({place}) => place.file)).toEqual(['birds/1.md', 'birds/1.md', 'hatches/1.md', 'hatches/1.md', 'pens/2024-A.md', 'traits/comb.md'])
    expect(JSON.stringify({records, problems})).not.toContain('secretword')
  })

  it('is the whole list where nothing is near', () => {
    expect(readFiles({'diary/1.md': front('on: 2025\ntitle: Rain\nweather: wet')}).problems[0]?.remedy).toBe('use one of on, title, photos, private')
  })

  it('tells what to do about a comma or a colon', () => {
    const remedies = (line: string) => readFiles({'hatches/1.md': front(line)}).problems.map(problem => problem.remedy)
    expect(remedies('chicks: [{band: 1, left: 2024-03-24 culled, off type}]')).toEqual(['put the whole text in quotes: "2024-03-24 culled, off type"'])
    expect(remedies('chicks: [{band: 1, comb:pea}]')).toEqual(['write comb: pea'])
    expect(remedies('pen: {2024-A, 2024-B: 18 eggs}')).toEqual(['give “2024-A” a value (a number of eggs such as 30 eggs); a list of names goes in square brackets'])
  })
})
