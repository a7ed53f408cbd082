import {readdirSync} from 'node:fs'
import {fileURLToPath} from 'node:url'
import {describe, expect, it} from 'vitest'
import {RULES} from '../../src/logbook/inspect/rules.ts'
import {LINKING_CODES} from '../../src/records/problem-codes.ts'
import {around, inspectFiles, AROUND} from './around.ts'

const entries = RULES.map(rule => rule.entry)

describe('the rules between files', () => {
  it('have each code of linking once', () => {
    expect(entries.map(entry => entry.code).sort()).toEqual([...LINKING_CODES].sort())
  })

  it('are one file a rule, called after its code', () => {
    const folder = fileURLToPath(new URL('../../src/logbook/inspect', import.meta.url))
    const files = readdirSync(folder).map(file => file.replace(/\.ts$/, '')).filter(file => !['rule', 'rules', 'slip-of'].includes(file))
    expect(files.sort()).toEqual([...LINKING_CODES].sort())
  })

  it('find nothing wrong with the project that the examples stand in', () => {
    expect(inspectFiles(AROUND).problems).toEqual([])
  })

  describe.each(entries)('$code', entry => {
    it('finds the wrong example, and nothing else that is an error', () => {
      const {problems} = inspectFiles(around(entry.wrong))
      expect(problems.map(problem => problem.code)).toContain(entry.code)
      expect(problems.filter(problem => problem.severity === 'error' && problem.code !== entry.code)).toEqual([])
      for (const problem of problems.filter(({code}) => code === entry.code)) {
        expect(problem.severity).toBe(entry.severity)
        expect(Object.keys(around(entry.wrong)).concat('project.md')).toContain(problem.place.file)
        expect(`${problem.reason}\n${problem.remedy}`).not.toMatch(/undefined|null|NaN|\[object|Infinity/)
      }
    })

    it('finds nothing wrong with the right example', () => {
      expect(inspectFiles(around(entry.right)).problems).toEqual([])
    })

    it('says how it comes about and how it is mended, in sentences', () => {
      for (const words of [entry.cause, entry.remedy]) expect(words).toMatch(/^[A-Z].*[.!)}\]]$/s)
      expect(entry.title.length).toBeGreaterThan(8)
    })
  })
})
