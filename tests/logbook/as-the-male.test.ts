import {describe, expect, it} from 'vitest'
import {alsoOfTheFemale} from '../../src/logbook/as-the-male.ts'
import {bookOf} from './around.ts'

const clause = (id: string, title: string, trait: string | null = null) => ({id, title, trait})
const male = {kind: 'male' as const, lead: '', clauses: [clause('m/comb', 'Comb', 'comb'), clause('m/tail', 'Tail', 'tail'), clause('m/back', 'Back'), clause('m/head', 'Head', 'eye')]}

describe('alsoOfTheFemale(sections)', () => {
  it('takes all of the male’s clauses over, but those that the female has her own of, by title or by trait', () => {
    const female = {kind: 'female' as const, lead: 'As the male, allowing for the differences of sex.', clauses: [clause('f/tail', 'Tail', 'tail-angle'), clause('f/face', 'Face', 'eye')]}
    expect([...alsoOfTheFemale([male, female])]).toEqual(['m/comb', 'm/back'])
  })
  it('takes none over where the female is described for herself', () => {
    expect(alsoOfTheFemale([male, {kind: 'female', lead: 'Lower in the body than the male.', clauses: []}]).size).toBe(0)
    expect(alsoOfTheFemale([male]).size).toBe(0)
  })
  it('makes the clause speak of both, and ask of both', () => {
    const book = bookOf({'standard/1.md': '---\ndraft: 1\non: 2024-01-01\nclauses: {male/comb: {trait: comb, mandatory: yes}}\n---\n## Male\n\n**Comb.** Pea.\n\n**Tail.** High.\n\n## Female\n\nAs the male.\n\n**Tail.** Low.\n'})
    const [comb, tail] = book.drafts[0]?.sections[0]?.clauses ?? []
    expect([comb?.sex, tail?.sex]).toEqual([null, 'male'])
    expect(comb?.allows.female).toEqual(comb?.allows.male)
  })
})
