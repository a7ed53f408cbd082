import {describe, expect, it} from 'vitest'
import {inspectJson, inspectReport} from '../../src/commands/inspect-report.ts'
import type {Problem} from '../../src/records/problem.ts'

const place = (file: string, line: number, column: number, width: number) => ({file, start: {line, column}, end: {line, column: column + width}})

const PROBLEMS: readonly Problem[] = [
  {
    code: 'hatch-counts', severity: 'error', place: place('hatches/2024-03.md', 8, 10, 2),
    reason: '38 hatched, but 48 set less 5 clear, 2 dead in germ and 4 dead in shell leave 37', remedy: 'mend whichever count is wrong',
    related: [{place: place('hatches/2024-03.md', 4, 7, 2), note: 'the eggs set are given at'}],
  },
  {
    code: 'unknown-band', severity: 'error', place: place('hatches/2024-03.md', 11, 38, 6),
    reason: 'no bird wears band 22-071', remedy: 'did you mean 22-017 (content/birds/22-017.md)?',
  },
  {
    code: 'band-twice', severity: 'error', place: place('hatches/2024-03.md', 12, 12, 6), reason: 'band 24-032 is given twice', remedy: 'every bird needs a band of its own',
    related: [{place: place('hatches/2024-02.md', 13, 12, 6), note: 'first given at'}],
  },
]
const WARNING: Problem = {
  code: 'step-contradicted', severity: 'warning', place: place('pens/2024-A.md', 8, 10, 3), reason: 'descent makes this BC1', remedy: 'mend the step or the parents',
  related: [{place: place('birds/22-004.md', 2, 7, 6), note: 'its sire stands at'}, {place: place('birds/22-017.md', 2, 7, 6), note: 'its dam stands at'}],
}
const PLAIN = {folder: 'content', files: 41, colour: false}

describe('inspectReport', () => {
  it('names the file of every one of several places, also where it is the same', () => {
    const loop: Problem = {...WARNING, related: [{place: place('pens/2024-A.md', 1, 1, 1), note: 'in it'}, {place: place('birds/22-017.md', 2, 7, 6), note: 'in it'}]}
    const text = inspectReport([loop], PLAIN)
    expect(text).toContain('in it: content/pens/2024-A.md:1:1')
    expect(text).toContain('in it: content/birds/22-017.md:2:7')
  })
  it('prints place, what was found and expected, remedy and second place, and counts', () => {
    expect(inspectReport(PROBLEMS, {...PLAIN, outcome: 'Nothing was published; site/ is as it was.'})).toBe(`content/hatches/2024-03.md
   8:10-8:12   error  38 hatched, but 48 set less 5 clear, 2 dead in germ and 4 dead in shell leave 37   hatch-counts
                      mend whichever count is wrong; the eggs set are given at line 4, column 7
  11:38-11:44  error  no bird wears band 22-071                                                          unknown-band
                      did you mean 22-017 (content/birds/22-017.md)?
  12:12-12:18  error  band 24-032 is given twice                                                         band-twice
                      every bird needs a band of its own; first given at content/hatches/2024-02.md:13:12

✖ 3 errors in 1 of 41 files. Nothing was published; site/ is as it was.
`)
  })

  it('puts files under headings of their own, warnings beside errors, several other places in lines', () => {
    expect(inspectReport([...PROBLEMS.slice(1, 2), WARNING], {...PLAIN, folder: ''})).toBe(`hatches/2024-03.md
  11:38-11:44  error    no bird wears band 22-071   unknown-band
                        did you mean 22-017 (content/birds/22-017.md)?

pens/2024-A.md
   8:10-8:13   warning  descent makes this BC1   step-contradicted
                        mend the step or the parents
                        its sire stands at birds/22-004.md:2:7
                        its dam stands at birds/22-017.md:2:7

✖ 1 error and 1 warning in 2 of 41 files.
`)
  })

  it('puts a colon between a place and a note that does not lead to it', () => {
    const described = {...WARNING, related: [{place: place('traits/comb.md', 1, 1, 3), note: 'the trait is described here'}]}
    expect(inspectReport([described], PLAIN)).toContain('mend the step or the parents; the trait is described here: content/traits/comb.md:1:1\n')
  })

  it('says so when there is nothing to mend', () => {
    expect(inspectReport([], PLAIN)).toBe('✔ no problems in 41 files.\n')
    expect(inspectReport([], {...PLAIN, files: 1})).toBe('✔ no problems in 1 file.\n')
  })

  it('warnings alone have a mark of their own', () => {
    expect(inspectReport([WARNING], PLAIN)).toContain('\n⚠ 1 warning in 1 of 41 files.\n')
  })

  it('colours nothing unless asked, and the coloured text is the plain one', () => {
    const plain = inspectReport([...PROBLEMS, WARNING], PLAIN)
    const coloured = inspectReport([...PROBLEMS, WARNING], {...PLAIN, colour: true})
    expect(plain).not.toContain('\u001b')
    expect(coloured).toContain('\u001b[31m')
    // eslint-disable-next-line no-control-regex
    expect(coloured.replace(/\u001b\[\d+m/g, '')).toBe(plain)
  })

  it('a very long reason does not push its neighbours’ codes aside', () => {
    const long = {...WARNING, reason: 'x'.repeat(150)}
    const lines = inspectReport([long, {...WARNING, reason: 'short'}], PLAIN).split('\n')
    expect(lines.find(line => line.includes('short'))).toBe('   8:10-8:13   warning  short   step-contradicted')
  })
})

describe('inspectJson', () => {
  it('is an array of problems with their keys in one order', () => {
    expect(inspectJson(PROBLEMS.slice(2), 'content/')).toBe(`[
  {
    "code": "band-twice",
    "severity": "error",
    "place": {
      "file": "content/hatches/2024-03.md",
      "start": {
        "line": 12,
        "column": 12
      },
      "end": {
        "line": 12,
        "column": 18
      }
    },
    "reason": "band 24-032 is given twice",
    "remedy": "every bird needs a band of its own",
    "related": [
      {
        "place": {
          "file": "content/hatches/2024-02.md",
          "start": {
            "line": 13,
            "column": 12
          },
          "end": {
            "line": 13,
            "column": 18
          }
        },
        "note": "first given at"
      }
    ]
  }
]
`)
  })

  it('is an empty array when all is well', () => {
    expect(inspectJson([], 'content')).toBe('[]\n')
  })
})
