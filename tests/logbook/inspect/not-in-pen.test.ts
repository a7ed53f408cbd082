/** A sire and a dam who never met are no parents, though each was in one of the hatch's pens. */
import {describe, expect, it} from 'vitest'
import {around, codesAt, linkFiles, type Files} from '../around.ts'

const two = (lines: string, more: Files = {}): Files => ({
  'pens/2024-B.md': '---\nseason: 2024\nmales: [H-2]\nfemales: [B-3]\nfrom: 2024-02-10\nto: 2024-06-01\n---\n',
  'hatches/2024-09.md': `---\npen: [2024-A, 2024-B]\nlaid: 2024-04-10..2024-04-20\non: 2024-05-12\n${lines}\n---\n`, ...more,
})
const problems = (files: Files) => linkFiles(around(files)).problems
const chick = (lines: string) => `chicks:\n  - {band: 24-901, ${lines}}`

describe('a sire and a dam of two pens', () => {
  it('who never met are one warning, which says where each was', () => {
    const found = problems(two(chick('sire: H-2, dam: B-1')))
    expect(codesAt(found)).toEqual(['hatches/2024-09.md:6 not-in-pen'])
    expect(found[0]).toMatchObject({
      severity: 'warning', reason: 'H-2 and B-1 stand here as sire and dam, but had never met when the eggs were laid',
      remedy: 'mend the band that is wrong, or the days in the pens: H-2 was in 2024-B, B-1 in 2024-A',
    })
  })

  it('are one warning a hatch, in its chicks and tallies', () => {
    expect(codesAt(problems(two('chicks:\n  - {band: 24-901, sire: H-2, dam: B-1}\n  - {band: 24-902, sire: H-2, dam: B-1}\ntallies:\n  - {chicks: 3, sire: H-2, dam: B-1}')))).toEqual(['hatches/2024-09.md:9 not-in-pen'])
    expect(codesAt(problems(two('tallies:\n  - {chicks: 3, sire: H-2, dam: B-1}')))).toEqual(['hatches/2024-09.md:6 not-in-pen'])
  })

  it('told by a bird’s own file, its tally or its family are found too', () => {
    const late = (line: string) => ({'birds/24-950.md': `---\nband: 24-950\nsex: male\nout-of: {hatch: 2024-09}\n${line}\n---\n`})
    expect(codesAt(problems(two('tallies:\n  - {chicks: 3, dam: B-1}', late('sire: H-2'))))).toEqual(['birds/24-950.md:5 not-in-pen'])
    expect(codesAt(problems(two('chicks:\n  - {band: 24-901, family: f1, dam: B-1}\n  - {band: 24-902, family: f1, sire: H-2}')))).toEqual(['hatches/2024-09.md:7 not-in-pen'])
  })

  it('are believed where one of several pairs can have met', () => {
    expect(problems(two(chick('sire: [H-1, H-2], dam: B-1')))).toEqual([])
    expect(problems(two(chick('sire: H-2, dam: {strain: fell-buff}')))).toEqual([])
  })

  it('who never met by any of the pairs are found', () => {
    expect(problems(two(chick('sire: H-2, dam: [B-1, B-2]'))).map(({reason}) => reason)).toEqual(['H-2 and B-1 or B-2 stand here as sire and dam, but had never met when the eggs were laid'])
  })

  it('may have met elsewhere, so lately that she kept his sperm', () => {
    const before = {'pens/2024-C.md': '---\nseason: 2024\nmales: [{band: H-2, to: 2024-03-25}]\nfemales: [{band: B-1, to: 2024-03-25}]\nfrom: 2024-02-01\n---\n'}
    expect(codesAt(problems(two(chick('sire: H-2, dam: B-1'), before))).filter(code => code.endsWith('not-in-pen'))).toEqual([])
  })

  it('are not held to it where a pen or a bird of it is at fault, nor where one had died', () => {
    const codes = (files: Files) => codesAt(problems(files)).filter(code => code.endsWith('not-in-pen'))
    expect(codes(two(chick('sire: H-2, dam: B-1'), {'pens/2024-A.md': '---\nseason: 2024\nmales: [H-22]\nfemales: [B-1, B-2]\n---\n'}))).toEqual([])
    const unknown = two(chick('sire: H-2, dam: B-1'))
    expect(codes({...unknown, 'hatches/2024-09.md': (unknown['hatches/2024-09.md'] ?? '').replace('2024-A,', '2024-A, 2024-Z,')})).toEqual([])
    expect(codesAt(problems(two(chick('sire: H-2, dam: B-1'), {'birds/H-2.md': '---\nband: H-2\nsex: male\nstrain: holm-white\nhatched: 2022\nleft: 2024-02-20 died\n---\n'})))).toEqual(['pens/2024-B.md:3 parent-dead'])
  })
})

it('says of a dam hatched too late nothing but that', () => {
  const problems = linkFiles(around({
    'birds/B-3.md': '---\nband: B-3\nsex: female\nstrain: fell-buff\nhatched: 2024-05-20\n---\n',
    'hatches/2024-09.md': '---\npen: 2024-A\nset: 2024-03-02\non: 2024-03-23\nchicks:\n  - {band: 24-901, sex: male, dam: B-3}\n---\n',
  })).problems
  expect(problems.map(({code}) => code)).toEqual(['parent-too-young'])
})
