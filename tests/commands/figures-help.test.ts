import {describe, expect, it} from 'vitest'
import {figuresHelp} from '../../src/commands/figures-help.ts'
import {FIGURE_QUESTIONS} from '../../src/findings/figures.ts'

describe('figuresHelp(words)', () => {
  it('gives an example for every question', () => {
    for (const question of FIGURE_QUESTIONS) expect(figuresHelp(['--help'])).toContain(`pinfeather figures ${question} content`)
  })
  it('tells the columns of the one asked about', () => {
    expect(figuresHelp(['kinship', '--help'])).toMatch(/\n\nColumns of kinship:\n {2}a {9}band\n/)
    expect(figuresHelp(['strains', '--help'])).toContain('dam line <strain>')
  })
})
