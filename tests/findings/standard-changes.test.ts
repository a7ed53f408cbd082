import {describe, expect, it} from 'vitest'
import {changesBetween, changesOfBook, standardChanges} from '../../src/findings/standard-changes.ts'
import type {Clause, Draft, Tolerance} from '../../src/logbook/book.ts'
import {plainClause, plainDraft, plainSection} from '../paper-parts.ts'
import {comb as combTrait} from '../pages/small-logbook.ts'

const clause = (id: string, text: string): Clause => plainClause(id, id.split('/')[1] ?? id, text)
const draft = (number: number, sections: Record<string, Clause[]>, more: Partial<Draft> = {}): Draft =>
  plainDraft(number, '2024-01-01', {sections: Object.entries(sections).map(([id, clauses]) => plainSection(id, clauses)), ...more})
const [comb, tail, back] = [clause('head/comb', 'Pea, low.'), clause('body/tail', 'Carried low.'), clause('body/back', 'Broad.')]
const told = (from: Draft, to: Draft): string[] => changesBetween(from, to).clauses.map(({id, is}) => `${is} ${id}`)

describe('changesBetween(one draft, the next)', () => {
  const one = draft(1, {head: [comb], body: [tail, back]})
  it('finds nothing between equal drafts, whatever their white space', () => {
    expect(told(one, draft(2, {head: [{...comb, text: ' Pea,\n low. '}], body: [tail, back]}))).toEqual([])
  })
  it('finds what was added, reworded and dropped, with the reason', () => {
    const two = draft(2, {head: [{...comb, text: 'Pea, three ridges.'}, clause('head/eye', 'Red.')], body: [back]}, {reasons: new Map([['head/comb', 'the judge asked']])})
    expect(told(one, two)).toEqual(['reworded head/comb', 'added head/eye', 'dropped body/tail'])
    expect(changesBetween(one, two).clauses[0]).toMatchObject({why: 'the judge asked', before: {text: 'Pea, low.'}, after: {text: 'Pea, three ridges.'}})
  })
  it('finds one clause moved, not all that stood behind it', () => {
    const many = [tail, back, clause('body/breast', 'Deep.'), clause('body/wings', 'Close.')]
    expect(told(draft(1, {body: many}), draft(2, {body: [...many.slice(1), tail]}))).toEqual(['moved body/tail'])
  })
  it('knows a clause again that went to another section with its words', () => {
    expect(told(one, draft(2, {head: [comb, {...tail, id: 'head/tail'}], body: [back]}))).toEqual(['moved head/tail'])
  })
  it('finds weights and points that changed, came or went', () => {
    const before = draft(1, {}, {weights: [{class: 'cock', grams: 2700, high: null}, {class: 'hen', grams: 2200, high: null}], points: [{name: 'Type', points: 30}]})
    const after = draft(2, {}, {weights: [{class: 'cock', grams: 2700, high: null}, {class: 'pullet', grams: 1800, high: null}], points: [{name: 'Type', points: 35}]})
    const {weights, points} = changesBetween(before, after)
    expect(weights.map(change => [change.class, change.is, change.before?.grams, change.after?.grams])).toEqual([['pullet', 'given', undefined, 1800], ['hen', 'gone', 2200, undefined]])
    expect(points).toEqual([{name: 'Type', before: 30, after: 35, why: null}])
  })

  it('tells a range of weights wider, narrower or shifted', () => {
    const weighing = (low: number, high: number | null) => draft(1, {}, {weights: [{class: 'cock', grams: low, high}]})
    const told = (from: Draft, to: Draft) => changesBetween(from, to).weights.map(({is}) => is)
    expect(told(weighing(2700, null), weighing(2600, 2800))).toEqual(['wider'])
    expect(told(weighing(2600, 2800), weighing(2650, 2800))).toEqual(['narrower'])
    expect(told(weighing(2600, 2800), weighing(2700, 2900))).toEqual(['up'])
    expect(told(weighing(2700, null), weighing(2600, null))).toEqual(['down'])
    expect(told(weighing(2700, null), weighing(2700, 2700))).toEqual([])
  })

  it('takes marks of Markdown for no change of words', () => {
    expect(told(one, draft(2, {head: [{...comb, text: '*Pea*, **low**.'}], body: [tail, back]}))).toEqual([])
  })

  it('knows the clauses of a section again that was given another name', () => {
    const renamed = plainDraft(2, '2024-02-01', {sections: [plainSection('head', [comb]), {...plainSection('trunk', [{...tail, id: 'trunk/tail'}, {...back, id: 'trunk/back'}]), title: 'Trunk'}]})
    const {sections, clauses} = changesBetween(one, renamed)
    expect(clauses).toEqual([])
    expect(sections.map(({id, retitled, moved}) => [id, retitled, moved])).toEqual([['trunk', true, false]])
  })

  it('tells a section that moved once, and its clauses not at all', () => {
    const {sections, clauses} = changesBetween(one, draft(2, {body: [tail, back], head: [comb]}))
    expect(sections.filter(({moved}) => moved)).toHaveLength(1)
    expect(clauses).toEqual([])
  })

  it('knows a clause again under the heading of a variety, reworded or not', () => {
    const male = plainClause('colour/male', 'Male', 'White, the hackle striped.'), down = plainClause('colour/down', 'Down', 'Cream.')
    const under = [plainClause('colour/light/male', 'Male', 'White, the hackle striped with black.', {variety: 'Light'}), plainClause('colour/light/down', 'Down', 'Cream.', {variety: 'Light'})]
    const {clauses} = changesBetween(draft(1, {colour: [male, down]}), draft(2, {colour: under}))
    expect(clauses.map(({id, is, moved}) => [id, is, moved])).toEqual([['colour/light/male', 'reworded', true], ['colour/light/down', 'moved', true]])
  })

  it('tells a clause that only got another name by its words, unless they are few', () => {
    const called = (title: string, text: string) => draft(1, {body: [plainClause(`body/${title.toLowerCase()}`, title, text)]})
    expect(told(called('Breast', 'Broad and full, well forward.'), called('Chest', 'Broad and full, well forward.'))).toEqual(['retitled body/chest'])
    expect(told(called('Breast', 'Broad.'), called('Chest', 'Broad.'))).toEqual(['added body/chest', 'dropped body/breast'])
  })
})

describe('what is asked beside the words', () => {
  const trait = {...combTrait, kind: 'measured' as const, states: [], unit: 'degrees'}
  const range = (low: number, high: number): Partial<Clause> => ({trait, ownRange: true, allows: {male: {kind: 'between', low, high}, female: {kind: 'between', low, high}}})
  const asked = (before: Partial<Clause>, after: Partial<Clause>) =>
    changesBetween(draft(1, {body: [{...tail, ...before}]}), draft(2, {body: [{...tail, ...after}]})).clauses.flatMap(({is, asks}) => [is, ...asks.map(ask => ('is' in ask ? `${ask.what} ${ask.is}` : ask.what))])
  const until = (year: number, what = 'A high tail'): Tolerance => ({what, looks: {male: null, female: null}, until: year, then: 'serious'})

  it.each([
    ['a wider range', range(40, 50), range(35, 50), ['asked', 'range wider']],
    ['a narrower one', range(40, 50), range(42, 48), ['asked', 'range narrower']],
    ['a range that only follows the target of the trait', {...range(40, 50), ownRange: false}, {...range(35, 50), ownRange: false}, []],
    ['a range now named', {trait}, range(40, 50), ['asked', 'range given']],
    ['a trait that was not named before', {}, {trait}, []],
    ['mandatory', {}, {mandatory: true}, ['asked', 'mandatory']],
    ['a severity', {ifMissed: 'minor'}, {ifMissed: 'serious'}, ['asked', 'if-missed']],
    ['a tolerance', {}, {accepted: until(2026)}, ['asked', 'tolerance added']],
    ['one that lasts longer', {accepted: until(2026)}, {accepted: until(2027)}, ['asked', 'tolerance longer']],
    ['one of other things', {accepted: until(2026)}, {accepted: until(2027, 'A low tail')}, ['asked', 'tolerance otherwise']],
    ['one that ended', {accepted: until(2026)}, {}, ['asked', 'tolerance dropped']],
  ] as const)('%s', (_, before, after, told) => expect(asked(before as Partial<Clause>, after as Partial<Clause>)).toEqual(told))

  it('tells the sexes apart where one range changed', () => {
    const of = (female: number) => ({trait, ownRange: true, allows: {male: {kind: 'between', low: 40, high: 50}, female: {kind: 'between', low: female, high: 50}}} as const)
    const {clauses} = changesBetween(draft(1, {body: [{...tail, ...of(40)}]}), draft(2, {body: [{...tail, ...of(35)}]}))
    expect(clauses[0]?.asks).toMatchObject([{what: 'range', sex: 'female', is: 'wider'}])
  })
})

describe('over several drafts', () => {
  const drafts = [draft(1, {head: [comb]}), draft(2, {head: [{...comb, text: 'Pea.'}]}, {reasons: new Map([['head/comb', 'Shorter.']])}), draft(3, {head: [{...comb, text: 'Pea, even.'}]}, {reasons: new Map([['head/comb', 'Asked by a judge.']])})]
  const [first, second, third] = drafts as [Draft, Draft, Draft]
  it('gathers the reasons of those between, oldest first', () => {
    expect(changesOfBook({drafts}, first, third).clauses[0]?.why).toBe('Shorter. Asked by a judge.')
    expect(changesOfBook({drafts}, second, third).clauses[0]?.why).toBe('Asked by a judge.')
  })
  it('tells each draft after the first', () => expect(standardChanges({drafts}).map(({from, to}) => [from.number, to.number])).toEqual([[1, 2], [2, 3]]))
})
