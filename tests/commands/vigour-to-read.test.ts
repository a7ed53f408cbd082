/** `figures depression`, `selection` and `crosses`, as a reader and as a program gets them. */
import {describe, expect, it} from 'vitest'
import {figures, type FiguresOptions} from '../../src/commands/figures.ts'
import {figuresHelp} from '../../src/commands/figures-help.ts'
import {VIGOUR_QUESTIONS} from '../../src/findings/vigour-figures.ts'
import {listeningWorld} from '../folders/listening-world.ts'

function asked(question: string, folder: string, more: Partial<FiguresOptions> = {}) {
  const world = listeningWorld()
  const code = figures({question, folder, format: 'table', asOf: undefined, quiet: true, ...more}, world)
  return {code, out: world.said.out, err: world.said.err}
}

describe('figures depression', () => {
  it('says of the demo what can be told, with counts, and what others found', () => {
    const {code, out} = asked('depression', 'content')
    expect(code).toBe(0)
    expect(out).toContain('the records cannot tell')
    expect(out).toMatch(/hatch of fertile: 429 of \d+ in \d+ hatches of \d+ pairs, \d+ left out/)
    expect(out).toMatch(/With that taken in \(Holm\) (none shows any|none is left)/)
    expect(out).toContain('Lines differ: no published figure is a law.')
  })
})

describe('figures selection', () => {
  it('says of the demo what was chosen for, meant and unmeant, and that season stands in the way', () => {
    const {code, out} = asked('selection', 'content')
    expect(code).toBe(0)
    expect(out).toContain('Chosen for as the targets ask: comb and type.')
    expect(out).toContain('Chosen for though no target asks for it: nothing that shows.')
    expect(out).toContain('season and selection cannot be told apart: hatch some chicks of the old step')
    expect(out).toContain('Recovery of type is told in 0 of 16 cases')
  })
})

describe('figures of vigour', () => {
  it('have an example and their columns in the help', () => {
    for (const question of VIGOUR_QUESTIONS) expect(figuresHelp(['figures', question, '--help'])).toContain(`pinfeather figures ${question} content\n`)
    expect(figuresHelp([])).toContain('whether inbreeding is costing chicks, growth or eggs')
  })

  it('are lists for programs, also of small books', () => {
    for (const question of VIGOUR_QUESTIONS) {
      const {code, out} = asked(question, 'tests/folders/week-old/records', {format: 'json'})
      expect([code, Array.isArray(JSON.parse(out))]).toEqual([0, true])
    }
    expect(asked('crosses', 'tests/folders/week-old/records').out).toContain('(no rows: no chick of two lines has been measured)')
    expect(asked('crosses', 'tests/folders/week-old/records', {asOf: 19000}).out).toContain('measured by that day)')
  })
})
