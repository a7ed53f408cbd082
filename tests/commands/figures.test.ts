/** `figures kinship --pair`: the kinship of two birds, and in the table for readers why. */
import {mkdirSync, writeFileSync} from 'node:fs'
import {dirname, join} from 'node:path'
import {describe, expect, it} from 'vitest'
import {figures, type FiguresOptions} from '../../src/commands/figures.ts'
import {listeningWorld} from '../folders/listening-world.ts'
import {temporaryFolder} from '../folders/temporary-folder.ts'
import {AROUND} from '../logbook/around.ts'

const chick = (band: string, sex: string, sire: string, dam: string) => `---\nband: ${band}\nsex: ${sex}\nhatched: 2024-04-01\nsire: ${sire}\ndam: ${dam}\n---\n`
const folder = temporaryFolder('figures')
const FILES = {
  ...AROUND, 'birds/24-1.md': chick('24-1', 'male', 'H-1', 'B-1'), 'birds/24-2.md': chick('24-2', 'female', 'H-1', 'B-2'), 'birds/24-3.md': chick('24-3', 'female', '{H-1: 50%, H-2: 50%}', 'B-3'),
}
for (const [file, text] of Object.entries(FILES)) {
  mkdirSync(dirname(join(folder, file)), {recursive: true})
  writeFileSync(join(folder, file), text)
}

function asked(pair: readonly [string, string], more: Partial<FiguresOptions> = {}) {
  const world = listeningWorld()
  const code = figures({question: 'kinship', folder, format: 'table', asOf: undefined, quiet: true, pair, ...more}, world)
  return {code, out: world.said.out, err: world.said.err, last: world.said.out.trimEnd().split('\n').at(-1)}
}

describe('figures kinship --pair', () => {
  it('ends with the reason: the ancestor shared, where it stands and how much it gives', () => {
    // by hand: half sibs, ⅛
    const {code, last} = asked(['24-1', '24-2'])
    expect(code).toBe(0)
    expect(last).toBe('24-1 and 24-2 are kin through H-1, sire of both (12.5): together 12.5%.')
  })

  it('says where parents are in doubt', () => {
    // by hand: half of ⅛
    expect(asked(['24-1', '24-3']).last).toContain('together 6.3%. Parents in doubt count by their chance.')
  })

  it('of parent and chick, names the parent itself', () => {
    expect(asked(['24-1', 'B-1']).last).toBe('24-1 and B-1 are kin through B-1 herself, dam of 24-1 (25.0): together 25.0%.')
  })

  it('of two that share nobody, says so', () => {
    expect(asked(['24-1', 'B-2']).last).toBe('24-1 and B-2 share no ancestor in the book.')
  })

  it('leaves the reason out for programs, and of a bird with itself', () => {
    expect(asked(['24-1', '24-2'], {format: 'csv'}).out.trimEnd().split('\n')).toEqual(['a,b,sex_a,sex_b,kinship,low,high,id_a,id_b,at_least', '24-1,24-2,male,female,0.125,0.125,0.125,24-1,24-2,'])
    expect(asked(['24-1', '24-1']).out).not.toContain('kin through')
  })

  it('sorts all pairs by kinship, and says where a parent is not in the book', () => {
    const world = listeningWorld()
    figures({question: 'kinship', folder, format: 'json', asOf: undefined, quiet: true}, world)
    const rows = JSON.parse(world.said.out) as {kinship: number; at_least: string | null}[]
    expect(rows.map(({kinship}) => kinship)).toEqual(rows.map(({kinship}) => kinship).sort((a, b) => b - a))
    expect(rows.some(row => row.at_least === 'yes')).toBe(true)
  })

  it('is wrong use of another question, and of a band that nobody wears', () => {
    expect(asked(['24-1', '24-2'], {question: 'birds'})).toMatchObject({code: 2, out: '', err: 'A pair is asked about with figures kinship.\n'})
    const {code, err} = asked(['24-1', '24-9'])
    expect([code, err]).toEqual([2, 'No bird of the book wears 24-9; write its band as in the records\n'])
    expect(asked(['24-1', '42-2']).err).toContain('did you mean 24-2?')
  })
})
