/** One fault in, that fault out: with its code and line, and no echoes of it elsewhere. */
import {readFileSync} from 'node:fs'
import {join} from 'node:path'
import {fileURLToPath} from 'node:url'
import {describe, expect, it} from 'vitest'
import {link} from '../../src/logbook/link.ts'
import {folderInMemory} from '../../src/records/folder.ts'
import {locate} from '../../src/records/locate.ts'
import type {Problem} from '../../src/records/problem.ts'
import {readRecords} from '../../src/records/read.ts'
import {BROKEN_YARDS, type BrokenYard} from './broken-yards.ts'
import {filesOf} from './files-of.ts'

const YARD = fileURLToPath(new URL('small-yard/records', import.meta.url))
const whole: Readonly<Record<string, string>> = Object.fromEntries(filesOf(YARD).map(path => [path, readFileSync(join(YARD, path), 'utf8')]))

function problemsOf(files: Readonly<Record<string, string>>): Problem[] {
  const reading = readRecords(folderInMemory(files))
  const {slips} = link(reading, {})
  return locate([...reading.slips, ...slips], file => reading.texts.get(file))
}

function broken({file, edit}: BrokenYard): Record<string, string> {
  if (!Array.isArray(edit)) return {...whole, [file]: (edit as {whole: string}).whole}
  const [words, instead] = edit as readonly [string, string]
  const text = whole[file] ?? ''
  if (!text.includes(words)) throw new Error(`${file} does not hold ${words}`)
  return {...whole, [file]: text.replace(words, instead)}
}

describe('the small yard', () => {
  it('has nothing to report when nothing is broken', () => {
    expect(problemsOf(whole)).toEqual([])
  })

  it.each(BROKEN_YARDS)('with $fault reports that alone', yard => {
    const problems = problemsOf(broken(yard))
    expect(problems.map(({code, place}) => `${place.file}:${place.start.line} ${code}`)).toEqual(yard.reported)
    if (yard.remedy !== undefined) expect(problems.map(problem => problem.remedy).join('\n')).toContain(yard.remedy)
  })

  it.each(BROKEN_YARDS)('with $fault says what was found and what to do, in words', yard => {
    for (const {reason, remedy, place} of problemsOf(broken(yard))) {
      expect(reason).not.toMatch(/undefined|NaN|\[object/)
      expect(remedy).not.toMatch(/undefined|NaN|\[object/)
      expect(Math.min(reason.length, remedy.length)).toBeGreaterThan(8)
      const line = broken(yard)[place.file]?.split('\n')[place.start.line - 1] ?? ''
      expect(place.start.column).toBeLessThanOrEqual(line.length + 1)
      expect(place.end.column).toBeGreaterThanOrEqual(place.start.column)
    }
  })
})
