/** What the rules of the standard leave alone: a false alarm is worse than none. Their own examples stand with them. */
import {describe, expect, it} from 'vitest'
import {around, codesAt, linkFiles, type Files} from '../around.ts'

const BODY = '## General characteristics, male\n\n**Comb.** Pea.\n\n## General characteristics, female\n\n**Comb.** Pea.\n'
const draft = (head: string, body = BODY, number = 1, on = '2024-10-01'): Files => ({[`standard/${number}.md`]: `---\ndraft: ${number}\non: ${on}\n${head}\n---\n${body}`})
const found = (files: Files) => codesAt(linkFiles(around(files)).problems)
const words = (files: Files) => linkFiles(around(files)).problems.map(({reason}) => reason)
const MALE = 'general-characteristics-male/comb'

describe('section-missing', () => {
  it('asks nothing of a draft that names no manner and is not asked for', () => expect(found(draft(''))).toEqual([]))
  it('asks for the core where a requirement asks for the written standard', () => {
    const asked = {...draft('weights: {cock: 3 kg}'), 'requirements.md': '---\nassociation: the association\nrequirements:\n  - {kind: written-standard, title: Written standard, asked: Complete.}\n---\n'}
    expect(words(asked)).toEqual(['draft 1 says nothing under: colour; a scale of points; faults'])
  })
  it('looks at the latest draft only', () => {
    expect(found({...draft('manner: continental', BODY, 1, '2023-10-01'), ...draft('', BODY, 2)})).toEqual([])
  })
  it('takes a section of another heading for what the draft says it is', () => {
    const [reason] = words(draft('manner: north-american\nsections: {what-it-is-for: utility}\norigin: Bred here.\nweights: {cock: 3 kg}', `## What it is for\n\nEggs.\n\n${BODY}\n## Colour\n\n**Male.** White.\n`))
    expect(reason).toBe('draft 1 says nothing under: Disqualifications. The north-american manner needs it')
  })
})

describe('target-outside-clause', () => {
  const weight = (allows: string, id = MALE) => draft(`clauses: {${id}: {trait: weight-20, allows: ${allows}}}`)
  it.each(['2.4 kg', '2.3 to 2.5 kg', 'at least 2.4 kg', 'at most 2.4 kg', '2.4 to 2.6 kg'])('lets a target of 2.4 kg stand with %s', allows => expect(found(weight(allows))).toEqual([]))
  it.each(['2.5 to 2.7 kg', 'at least 2.5 kg', 'at most 2.3 kg'])('does not with %s', allows => expect(found(weight(allows))).toEqual(['standard/1.md:4 target-outside-clause']))
  it('says both, and where the other stands', () => {
    const [problem] = linkFiles(around(weight('2.5 to 2.7 kg'))).problems
    expect(problem?.reason).toBe(`${MALE} allows 2500 to 2700 g, while the target of weight-20 for males is 2400 g`)
    expect(problem?.related?.map(({place}) => place.file)).toEqual(['traits/weight-20.md'])
  })
  it('holds a clause of females against the target of females', () => expect(found(weight('1.8 to 2 kg', 'general-characteristics-female/comb'))).toEqual([]))
  it('holds the weight of a class against it too', () => {
    expect(found(draft('weights: {cock: 2.4 kg}\nclauses: {weights/cock: {trait: weight-20}}'))).toEqual([])
    expect(found(draft('weights: {cock: 3.4 kg}\nclauses: {weights/cock: {trait: weight-20}}'))).toEqual(['standard/1.md:5 target-outside-clause'])
  })
  it('lets earlier drafts be', () => expect(found({...weight('3 to 4 kg'), ...draft('', BODY, 2, '2024-12-01')})).toEqual([]))
})

describe('allows-without-trait', () => {
  it('finds looks that are accepted of no trait', () => {
    expect(found(draft(`clauses:\n  ${MALE}:\n    accepted: {what: Single, looks: single, until: 2026}`))).toEqual(['standard/1.md:6 allows-without-trait'])
  })
  it('leaves a clause alone that only says how bad it is to miss', () => expect(found(draft(`clauses: {${MALE}: {if-missed: serious, accepted: {what: Uneven, until: 2026}}}`))).toEqual([]))
})

describe('clause-contradicts', () => {
  it.each([
    [`${MALE}: {sex: both}`, 0], [`${MALE}: {sex: male}`, 0], [`${MALE}: {mandatory: no, if-missed: disqualifying}`, 1], [`${MALE}: {mandatory: no, if-missed: serious}`, 0], [`${MALE}: {if-missed: disqualifying}`, 0],
    ['weights/hen: {trait: weight-20, allows: at least 1 kg, sex: male}', 1],
  ])('%s', (entry, count) => expect(found(draft(`weights: {hen: 2 kg}\nclauses: {${entry}}`)).filter(code => code.endsWith('clause-contradicts'))).toHaveLength(count))
})

describe('colour varieties', () => {
  const light = (text: string) => draft('', `${BODY}\n## Colour\n\n### Light\n\n${text}`)
  it.each([
    ['**In both sexes.** White.\n\n**Day-old down.** Cream.', []], ['White all over.', []], ['**Male.** White.\n\n**Female.** White.\n\n**Down.** Cream.', []],
    ['**Male.** White.\n\n**Female.** White.\n\n## Day-old down\n\nCream.', []], ['**Male.** White.\n\n**Female.** White.', ['variety-unfinished']], ['**Female.** White.\n\n**Down.** Cream.', ['variety-unfinished']],
  ])('%j', (text, codes) => expect(found(light(text)).map(code => code.split(' ')[1])).toEqual(codes))
  it('asks nothing of a colour without varieties', () => expect(found(draft('', `${BODY}\n## Colour\n\n**Male.** White.\n`))).toEqual([]))
  it('lets an entry name a variety where the draft has no other', () => expect(found(draft(`clauses: {${MALE}: {variety: Light}}`))).toEqual([]))
  it('finds a requirement that names another', () => {
    const files = {...draft('varieties: {Light: {comb: pea}}'), 'requirements.md': '---\nassociation: the association\nrequirements:\n  - {kind: shown-per-class, title: Shown, asked: Two each., per-class: 2, varieties: [Dark]}\n---\n'}
    expect(linkFiles(around(files)).problems.filter(({code}) => code === 'variety-unknown').map(({place, reason}) => `${place.file} ${reason}`)).toEqual(['requirements.md the latest draft has no variety Dark'])
  })
})

describe('class-weights-odd', () => {
  it.each([['cock: 3 kg, cockerel: 3 kg', 0], ['Cock: 3 kg, Cockerel: 3.1 kg', 1], ['cock: 2.8 to 3.2 kg, cockerel: 2.9 to 3.1 kg', 0], ['hen: 2 kg, pulet: 1.8 kg', 1], ['drake: 3 kg, duck: 2.5 kg', 0], ['young: 3 kg, old: 4 kg', 0]])(
    '%s', (weights, count) => expect(found(draft(`weights: {${weights}}`))).toHaveLength(count))
})

describe('drafts-out-of-order', () => {
  const two = (first: string, second: string) => found({...draft('', BODY, 1, first), ...draft('', BODY, 2, second)})
  it.each([['2024-01-01', '2024-02-01', 0], ['2024', '2024-02-01', 0], ['2024-02', '2024-02-10', 0], ['2024-02', '2024-02', 1], ['2024-03-01', '2024-02', 1]])('%s, then %s', (first, second, count) => expect(two(first, second)).toHaveLength(count))
})

describe('tolerance-over', () => {
  it('lets the season of the draft’s own year stand', () => expect(found(draft(`clauses: {${MALE}: {accepted: {what: Uneven, until: 2024}}}`))).toEqual([]))
})
