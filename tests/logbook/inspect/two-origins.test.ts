/** A hatch of bought eggs has no parents in the book: what is written of them is not passed over. */
import {describe, expect, it} from 'vitest'
import {around, codesAt, linkFiles} from '../around.ts'

const bought = (lines: string) => ({'hatches/2024-09.md': `---\nstrain: holm-white\nset: 2024-03-02\non: 2024-03-23\n${lines}\n---\n`})
const problems = (lines: string, files = {}) => linkFiles(around({...bought(lines), ...files})).problems

describe('a hatch that names one pen twice', () => {
  const twice = {'hatches/2024-09.md': '---\npen: [2024-A, 2024-A]\nset: 2024-03-02\non: 2024-03-23\nchicks:\n  - {band: 24-901}\n---\n'}

  it('is a problem at the second place, and of one pen', () => {
    const {book, problems: found} = linkFiles(around(twice))
    expect(codesAt(found)).toEqual(['hatches/2024-09.md:2 two-origins'])
    expect(found[0]).toMatchObject({severity: 'error', reason: 'hatch 2024-09 names pen 2024-A twice', place: {start: {line: 2, column: 15}}})
    expect(found[0]?.related?.map(({place}) => place.start.column)).toEqual([7])
    expect(book?.hatches[0]?.pens.map(({pen}) => pen.id)).toEqual(['2024-A'])
  })
})

describe('bought eggs', () => {
  it.each(['sire: H-1', 'dam: B-1', 'pen: 2024-A', 'sire: {H-1: 50%, H-2: 50%}', 'dam: {strain: fell-buff}'])('whose chick has %s', line => {
    const found = problems(`chicks:\n  - {band: 24-901}\n  - {band: 24-902, ${line}}`)
    expect(codesAt(found)).toEqual(['hatches/2024-09.md:7 two-origins'])
    expect(found[0]?.related?.map(({place}) => place.start.line)).toEqual([2])
  })

  it('whose tally has a dam', () => {
    expect(codesAt(problems('tallies:\n  - {chicks: 3, dam: B-1}'))).toEqual(['hatches/2024-09.md:6 two-origins'])
  })

  it('whose chick has a sire in its own file', () => {
    expect(codesAt(problems('chicks:\n  - {band: 24-901}', {'birds/24-901.md': '---\nband: 24-901\nsex: male\nsire: H-1\n---\n'}))).toEqual(['birds/24-901.md:4 two-origins'])
  })

  it('may say that nobody knows the parents', () => {
    expect(problems('chicks:\n  - {band: 24-901, sire: unknown, dam: unknown}')).toEqual([])
  })

  it('that have a pen too are one fault, not one a chick', () => {
    expect(codesAt(problems('pen: 2024-A\nchicks:\n  - {band: 24-901, dam: B-1}'))).toEqual(['hatches/2024-09.md:2 two-origins'])
  })
})
