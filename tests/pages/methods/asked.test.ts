import {describe, expect, it} from 'vitest'
import {QUESTIONS} from '../../../src/commands/figures.ts'
import {METHODS} from '../../../src/pages/methods.ts'
import {METHODS_OF_QUESTION} from '../../../src/pages/methods/asked.ts'

const ids = METHODS.map(({id}) => id)

describe('where each question of figures is explained', () => {
  it.each(QUESTIONS)('%s has an entry, and every one named is there', question => {
    const named = METHODS_OF_QUESTION[question] ?? []
    expect(named.length).toBeGreaterThan(0)
    expect(named.filter(id => !ids.includes(id))).toEqual([])
    expect(new Set(named).size).toBe(named.length)
  })

  it('names no question that is not asked', () => expect(Object.keys(METHODS_OF_QUESTION).sort()).toEqual([...QUESTIONS].sort()))
})

describe('every entry', () => {
  it.each(METHODS.map(method => [method.id, method] as const))('%s has a question, what it is, its edges, its source and a worked example', (_, {question, definition, formula, letters, edges, source, example}) => {
    expect(question).toMatch(/\?$/)
    expect(definition.length).toBeGreaterThan(40)
    // letters are of a formula
    if (letters.length > 0) expect(formula).not.toBeNull()
    expect(edges).toMatch(/^- /)
    expect(source).toMatch(/\.$/)
    expect(example.given.length).toBeGreaterThan(5)
    // made by the figure's own code, and of it: a number or a judgement
    expect(example.gives()).not.toMatch(/NaN|undefined|Infinity|–\./)
    expect(example.gives().length).toBeGreaterThan(3)
  })
})
