import {describe, expect, it} from 'vitest'
import {sectionsOf} from '../../src/logbook/draft-sections.ts'
import {bookOf} from './around.ts'

const BODY = `A word before all.

## General characteristics, male

As seen *standing*.

**Tail.** Of medium length, carried **well** up.

- sickles long

**Comb:** Pea.

### Wattles

Small.

## Faults

**Tail.** Wry.

**Tail.** Squirrel.
`

describe('sections and clauses of a draft', () => {
  const sections = sectionsOf(BODY)
  it('begin with headings and bold run-in heads, and keep the words as they were written', () => {
    expect(sections.map(section => [section.id, section.title, section.lead])).toEqual([
      ['preface', '', 'A word before all.'], ['general-characteristics-male', 'General characteristics, male', 'As seen *standing*.'], ['faults', 'Faults', ''],
    ])
    expect(sections[1]?.clauses.map(clause => [clause.id, clause.title, clause.text])).toEqual([
      ['general-characteristics-male/tail', 'Tail', 'Of medium length, carried **well** up.\n\n- sickles long'],
      ['general-characteristics-male/comb', 'Comb', 'Pea.'], ['general-characteristics-male/wattles', 'Wattles', 'Small.'],
    ])
  })

  it('have names of their own even where two are alike', () => {
    expect(sections[2]?.clauses.map(clause => clause.id)).toEqual(['faults/tail', 'faults/tail-2'])
  })

  it('say nothing of an empty body', () => expect(sectionsOf('')).toEqual([]))

  it('may be measured by a trait, and take reasons for what the draft before still had', () => {
    const draft = (number: number, more: string, body: string) => ({[`standard/${number}.md`]: `---\ndraft: ${number}\non: 2024-0${number}-01\n${more}\n---\n${body}`})
    const book = bookOf({
      ...draft(1, 'egg: tinted', '## Head\n\n**Comb.** Pea.\n\n**Beak.** Horn.\n'),
      ...draft(2, 'clauses: {head/comb: {trait: comb}}\nreasons: {head/beak: Said under colour., egg: As laid.}\nweights: {hen: 5 lb 8 oz}', '## Head\n\n**Comb.** Pea, low.\n'),
    })
    expect(book.drafts.map(each => each.number)).toEqual([1, 2])
    expect(book.drafts[1]?.sections[0]?.clauses[0]?.trait?.id).toBe('comb')
    expect(book.drafts[1]?.weights[0]?.grams).toBeCloseTo(2494.76, 2)
  })
})
