/** `figures trend`, `change` and `scores`, as a reader and as a program gets them. */
import {mkdirSync, writeFileSync} from 'node:fs'
import {dirname, join} from 'node:path'
import {describe, expect, it} from 'vitest'
import {figures, type FiguresOptions} from '../../src/commands/figures.ts'
import {listeningWorld} from '../folders/listening-world.ts'
import {temporaryFolder} from '../folders/temporary-folder.ts'
import {AROUND} from '../logbook/around.ts'

const COMB = '---\nname: Comb\nstates: [pea, single]\ntarget: pea\nrequired: yes\n---\n', TYPE = '---\nname: Type\nscale: 1 to 10\ntarget: at least 7\n---\n'
const chick = (band: string, year: number, sire: string, dam: string, more: string) => `---\nband: ${band}\nsex: ${band.endsWith('1') ? 'male' : 'female'}\nhatched: ${year}-04-01\nsire: ${sire}\ndam: ${dam}\n${more}\n---\n`
const line = (year: number, count: number, sire: string, dam: string, single: number) => Object.fromEntries(Array.from({length: count}, (_, index) =>
  [`birds/${year - 2000}-${index + 1}.md`, chick(`${year - 2000}-${index + 1}`, year, sire, dam, `comb: ${index < single ? 'single' : 'pea'}\ntype: ${6 + (year - 2023)}`)] as const))

const folder = temporaryFolder('evenness')
const FILES = {...AROUND, 'traits/comb.md': COMB, 'traits/type.md': TYPE, ...line(2023, 2, 'H-1', 'B-1', 0), ...line(2024, 9, '23-1', '23-2', 6), ...line(2025, 9, '24-1', '24-2', 0)}
for (const [file, text] of Object.entries(FILES)) {
  mkdirSync(dirname(join(folder, file)), {recursive: true})
  writeFileSync(join(folder, file), text)
}

function asked(question: string, more: Partial<FiguresOptions> = {}) {
  const world = listeningWorld()
  const code = figures({question, folder, format: 'table', asOf: undefined, quiet: true, ...more}, world)
  return {code, out: world.said.out, err: world.said.err}
}
const rows = (question: string, more: Partial<FiguresOptions> = {}) => JSON.parse(asked(question, {format: 'json', ...more}).out) as Record<string, unknown>[]

describe('figures trend', () => {
  it('says in words what the trend is and of whom it speaks', () => {
    const {code, out} = asked('trend')
    expect(code).toBe(0)
    expect(out).toContain('comb, over F2 and F3: rises; +66.7 points a step, P 0.009, exact, of these chicks only.')
    expect(out).toContain('The families’ interval is the one for a committee')
  })
  it('gives programs every row with its counts and method', () => {
    expect(rows('trend').find(row => row['row'] === 'trend')).toMatchObject({what: 'true-bred', step: 'F2 to F3', count: 12, total: 18, method: 'Cochran–Armitage, exact', speaks_of: 'these chicks only', verdict: 'rises'})
  })
})

describe('figures change', () => {
  it('sets step against step', () => {
    const {code, out} = asked('change', {steps: {from: 'F2', to: 'F3'}})
    expect(code).toBe(0)
    expect(out).toMatch(/^comb +all +3 of 9 +9 of 9 +\+66\.7 points \(.*\) +these chicks only +truer$/m)
    expect(out).toMatch(/^type +all +median 7, 9 chicks +median 8, 9 chicks +\+1\.0 +these chicks only, higher in 100\.0% +too few families$/m)
    expect(rows('change', {steps: {from: 'F2', to: 'F3'}})[0]).toMatchObject({from_count: 3, from_total: 9, to_count: 9, to_total: 9, method: 'Newcombe’s hybrid score interval'})
  })
  it('must be told two steps that have hatched', () => {
    expect(asked('change')).toEqual({code: 2, out: '', err: 'Say with --from which step; hatched are F1, F2, F3.\n'})
    expect(asked('change', {steps: {from: 'F2'}}).err).toBe('Say with --to which step; hatched are F1, F2, F3.\n')
    expect(asked('change', {steps: {from: 'F2', to: 'F2'}}).err).toBe('Say two steps; F2 cannot have changed from itself.\n')
    expect(asked('change', {steps: {from: 'F2', to: 'BC7F9'}}).err).toContain('There is no step BC7F9; ')
  })
  it('is the only one that asks for steps', () => {
    expect(asked('trend', {steps: {from: 'F2'}})).toEqual({code: 2, out: '', err: '--from is for figures change and changes.\n'})
    expect(asked('scores', {steps: {to: 'F2'}}).err).toBe('--to is for figures change and changes.\n')
  })
})

describe('figures scores', () => {
  it('gives grades, the middle one and the share at the mark', () => {
    expect(asked('scores').out).toMatch(/^type +F2 +all +9 +9 × 7 +7 +9 of 9, 100\.0%/m)
    expect(rows('scores').filter(({step, sex}) => step === 'F1' && sex === 'all')).toMatchObject([{what: 'grade', is: '6', count: 2, total: 2}, {what: 'median', value: 6, total: 2}, {what: 'at the mark', count: 0, total: 2}])
  })
  it('says why there is nothing', () => {
    const empty = temporaryFolder('evenness-none')
    for (const [file, text] of Object.entries(AROUND)) {
      mkdirSync(dirname(join(empty, file)), {recursive: true})
      writeFileSync(join(empty, file), text)
    }
    expect(asked('scores', {folder: empty}).out).toContain('(no rows: no chick of a step has been graded')
    expect(asked('trend', {folder: empty}).out).toContain('(no rows: no chick of a step')
  })
})
