import {describe, expect, it} from 'vitest'
import {folderInMemory} from '../../src/records/folder.ts'
import {locate} from '../../src/records/locate.ts'
import {READING_MANUAL, type ExampleFiles} from '../../src/records/manual.ts'
import {READING_CODES} from '../../src/records/problem-codes.ts'
import {readRecords} from '../../src/records/read.ts'

function problemsIn(files: ExampleFiles) {
  const {slips, texts} = readRecords(folderInMemory(files))
  return locate(slips, file => texts.get(file))
}

describe('the manual of reading', () => {
  it('has one entry for every code, in the order of the codes', () => {
    expect(READING_MANUAL.map(entry => entry.code)).toEqual([...READING_CODES])
  })

  for (const entry of READING_MANUAL) {
    it(`${entry.code}: the wrong example gives that problem and no other, the right one none`, () => {
      const found = problemsIn(entry.wrong).map(({code, severity, place}) => ({code, severity, file: place.file, ...place.start}))
      expect(found).toEqual([{code: entry.code, severity: entry.severity, ...entry.at}])
      expect(problemsIn(entry.right)).toEqual([])
    })
  }
})
