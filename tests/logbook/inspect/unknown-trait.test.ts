import {describe, expect, it} from 'vitest'
import {around, linkFiles} from '../around.ts'

const COMB = '---\nname: Comb\nstates: [pea, single]\nloci: [P]\n---\n'
const told = (files: Readonly<Record<string, string>>) => linkFiles(around({'traits/comb.md': COMB, ...files})).problems.map(({place, code, reason, remedy}) => [`${place.file}:${place.start.line} ${code}`, reason, remedy])
const WORDS = ['P is a locus and no trait’s id', 'what a DNA test found goes with the bird, as tested: {P: P/p+}; what was seen goes under the id of a trait']

describe('a locus in the place of a trait', () => {
  it('is told where tests are written, beside a chick and once for a table', () => {
    expect(told({'birds/B-9.md': '---\nband: B-9\nsex: female\nstrain: fell-buff\nP: P/p+\n---\n'})).toEqual([['birds/B-9.md:5 unknown-trait', ...WORDS]])
    expect(told({'scores/tests.csv': 'band,on,P\nB-1,2023-01-01,P/p+\nB-2,2023-01-01,P/P\n'})).toEqual([['scores/tests.csv:1 unknown-trait', ...WORDS]])
  })
})
