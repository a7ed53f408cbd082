import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {sectionsOf} from '../../src/logbook/draft-sections.ts'
import {anchorOf} from '../../src/pages/clause-view.ts'
import {around, bookOf, linkFiles} from './around.ts'

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

  it('have no id that the front matter takes, nor two that make one anchor', () => {
    const ids = (head: string, body: string) => bookOf({'standard/1.md': `---\ndraft: 1\non: 2024-10-01\n${head}\n---\n${body}`}).drafts[0]!.sections.flatMap(section => [section.id, ...section.clauses.map(({id}) => id)])
    expect(ids('weights: {cock: 3 kg}\negg: tinted', '## Weights\n\n**Cock.** Three kilograms.\n\n## Egg\n\n**Shell.** Tinted.\n')).toEqual(['weights-2', 'weights-2/cock', 'egg-2', 'egg-2/shell'])
    expect(ids('', '## Weights\n\n**Cock.** Three kilograms.\n\n## Egg\n\n**Shell.** Tinted.\n')).toEqual(['weights', 'weights/cock', 'egg', 'egg/shell'])
    expect(ids('', '## Colour, light\n\n**Male.** White.\n\n## Colour\n\n### Light\n\n**Male.** White.\n')).toEqual(['colour-light', 'colour-light/male', 'colour', 'colour/light-2/male'])
    expect(ids('', '## Colour\n\n### Light\n\nWhite.\n\n**Male.** White.\n\n## Colour light\n\nNone.\n')).toEqual(['colour', 'colour/light', 'colour/light/male', 'colour-light-2'])
  })

  it('are of a variety under its heading, be they headed themselves', () => {
    const clauses = (body: string) => sectionsOf(body, heading => heading === 'Colour').flatMap(section => section.clauses.map(({id, variety}) => [id, variety]))
    expect(clauses('## Colour\n\n### Male\n\nWhite.\n\n### In both sexes\n\nWhite.\n')).toEqual([['colour/male', null], ['colour/in-both-sexes', null]])
    expect(clauses('## Colour\n\n### Light\n\n#### Male\n\nWhite.\n\n#### Of the eye\n\nRed.\n\n### Day-old down\n\nCream.\n\n### Dark\n\nBlack.\n')).toEqual(
      [['colour/light/male', 'Light'], ['colour/light/of-the-eye', 'Light'], ['colour/light/day-old-down', 'Light'], ['colour/dark', 'Dark']])
  })

  it('have each an id, and an anchor, of its own, whatever stands in the body', () => {
    const title = fc.constantFrom('Colour', 'Colour, light', 'Light', 'Male', 'Light male', 'Weights', 'Cock', 'Egg', 'Colour light 2', '2')
    const piece = fc.tuple(fc.constantFrom('## ', '### ', '**', ''), title).map(([mark, name]) => (mark === '**' ? `**${name}.** Words.` : `${mark}${name}`))
    fc.assert(fc.property(fc.array(piece, {maxLength: 14}), pieces => {
      const sections = sectionsOf(pieces.join('\n\n'), heading => heading.startsWith('Colour'), ['weights', 'weights/cock', 'egg'])
      const ids = ['weights', 'weights/cock', 'egg', ...sections.flatMap(section => [section.id, ...section.clauses.map(({id}) => id)])]
      expect(new Set(ids.map(anchorOf)).size).toBe(ids.length)
    }), {numRuns: 300})
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

describe('what is more to say of clauses', () => {
  const written = (head: string, body: string) => ({'standard/1.md': `---\ndraft: 1\non: 2024-10-01\n${head}\n---\n${body}`})
  const BODY_OF_TWO = '## Male\n\n**Comb.** Pea.\n\n**Size.** Large.\n\n## Female\n\n**Size.** Less.\n\n## Colour\n\n**In both sexes.** White.\n\n### Light\n\n**Male.** Striped.\n\n### Buff\n\nAll over.\n'
  const drafted = (head: string, body = BODY_OF_TWO) => bookOf(written(head, body)).drafts[0]!
  const clausesOf = (draft: ReturnType<typeof drafted>) => new Map(draft.sections.flatMap(section => section.clauses.map(clause => [clause.id, clause] as const)))

  it('is of the sex of its section, with what that sex may show', () => {
    const clauses = clausesOf(drafted('clauses: {male/size: {trait: weight-20, allows: 2.3 to 2.5 kg, mandatory: yes, if-missed: serious}, female/size: {trait: weight-20}}'))
    expect(clauses.get('male/size')).toMatchObject({sex: 'male', ownRange: true, mandatory: true, ifMissed: 'serious', allows: {male: {kind: 'between', low: 2300, high: 2500}, female: null}})
    expect(clauses.get('female/size')).toMatchObject({sex: 'female', ownRange: false, mandatory: false, ifMissed: null, allows: {male: null, female: {kind: 'about', value: 1900, tolerance: 0.1}}})
  })

  it('may be said for each sex, and accepted until a season', () => {
    const clauses = clausesOf(drafted('clauses:\n  colour/in-both-sexes:\n    trait: weight-20\n    allows: {male: at least 2 kg, female: at most 2 kg}\n    accepted: {what: Lighter birds, looks: at least 1 kg, until: 2026, then: minor}'))
    expect(clauses.get('colour/in-both-sexes')).toMatchObject({
      sex: null, allows: {male: {kind: 'at-least', value: 2000}, female: {kind: 'at-most', value: 2000}}, accepted: {what: 'Lighter birds', until: 2026, then: 'minor', looks: {male: {kind: 'at-least', value: 1000}, female: {kind: 'at-least', value: 1000}}},
    })
  })

  it('names the varieties that have a heading, and those that looks tell', () => {
    const draft = drafted('varieties: {Light: {comb: pea}, Red: {comb: single}}')
    expect([...clausesOf(draft)].filter(([id]) => id.startsWith('colour')).map(([id, {variety}]) => [id, variety])).toEqual([['colour/in-both-sexes', null], ['colour/light/male', 'Light'], ['colour/buff', 'Buff']])
    expect(draft.varieties.map(({name, looks}) => [name, [...looks].map(([trait, wanted]) => [trait.id, wanted])])).toEqual(
      [['Light', [['comb', {kind: 'states', states: ['pea']}]]], ['Buff', []], ['Red', [['comb', {kind: 'states', states: ['single']}]]]])
  })

  it('holds the weight of a class, and the egg, against a trait', () => {
    const {rows, weights, egg, eggAtLeast} = drafted('weights: {cock: 2.4 kg, hen: 4 lb to 4 lb 8 oz}\negg: {shell: tinted, at-least: 55 g}\nclauses: {weights/cock: {trait: weight-20}, weights/hen: {trait: weight-20}}')
    expect(rows.map(({id, sex, allows}) => [id, sex, allows[sex ?? 'male']])).toEqual([
      ['weights/cock', 'male', {kind: 'about', value: 2400, tolerance: 0.1}], ['weights/hen', 'female', {kind: 'between', low: expect.closeTo(1814.369, 2), high: expect.closeTo(2041.166, 2)}],
    ])
    expect(weights.map(({high}) => high === null)).toEqual([true, false])
    expect([egg, eggAtLeast]).toEqual(['tinted', 55])
  })

  it('says where a trait is unknown, or a range cannot be read', () => {
    const codes = (head: string) => linkFiles(around(written(head, BODY_OF_TWO))).problems.filter(({severity}) => severity === 'error').map(({code, place, remedy}) => [code, place.start.line, remedy])
    expect(codes('clauses: {male/comb: {trait: comd}}')).toEqual([['unknown-trait', 4, 'did you mean comb (traits/comb.md)?']])
    expect(codes('clauses: {male/size: {trait: weight-20, allows: 2.5 to 2.3 kg}}')).toEqual([['unreadable-value', 4, expect.stringContaining('40 to 45')]])
    expect(codes('weights: {cock: 2.7 to 2.3 kg}')).toEqual([['unreadable-value', 4, 'put the lighter weight first, such as 2.3 to 2.7 kg']])
  })
})
