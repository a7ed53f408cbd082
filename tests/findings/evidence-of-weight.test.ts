import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import type {Evidence} from '../../src/findings/evidence.ts'
import type {ShownEven} from '../../src/findings/shown-of-breeding.ts'
import {study} from '../../src/findings/study.ts'
import type {Bird, Logbook, Requirement, Sex, Trait} from '../../src/logbook/book.ts'
import {familyShare} from '../../src/statistics/family-bootstrap.ts'
import {familyVariation} from '../../src/statistics/family-variation.ts'
import {plainClause, plainDraft, plainRequirement, plainSection} from '../paper-parts.ts'
import {at, bird, comb, date, F2, hatch, logbook, looks, parents, project, score, weight} from '../pages/small-logbook.ts'
import '../seeded.ts'

/** Birds of one hatch and sex, weighed at twenty weeks. */
function bookOf(grams: Readonly<Partial<Record<Sex, readonly number[]>>>, {on = '2024-03-23', ...more}: {on?: string} & Partial<Logbook> = {}): Logbook {
  const cock = bird('C', 'male'), from = hatch('2024-01', {on: date(on), step: F2}), due = date(on).first + 140
  const birds = (['male', 'female'] as const).flatMap(sex => (grams[sex] ?? []).map((value, index): Bird => bird(`${sex}${index}`, sex, {
    hatched: date(on), hatch: from, step: F2, strain: null, parentage: parents([[cock, 1]], null), weighings: [{measure: 'weight', value, on: {text: '', first: due, last: due}, at}],
  })))
  Object.assign(from, {chicks: birds, hatched: birds.length})
  return logbook('2025-10-30', {traits: [weight], birds: [cock, ...birds], hatches: [from], project: {...project, ladder: ['F1', 'F2']}, ...more})
}
function evidenceOf(book: Logbook, more: Partial<Requirement>): Evidence {
  const [item] = study({...book, requirements: {at, body: '', association: null, papers: [], distinctness: null, items: [plainRequirement('even-weight', more)]}}).evidence.items
  return item ?? expect.fail('no evidence')
}
function found(book: Logbook, more: Partial<Requirement>): Evidence & {readonly shown: ShownEven} {
  const item = evidenceOf(book, more)
  if (item.shown.kind !== 'even-weight') throw new Error(`no spread: ${item.shown.kind}`)
  return {...item, shown: item.shown}
}
/** Five cocks with three sons each, reared together. */
const FIVE = [2300, 2350, 2400, 2450, 2500].map(grams => [grams - 10, grams, grams + 10])
function bookOfSires(families: readonly (readonly number[])[]): Logbook {
  const book = bookOf({male: families.flat()}), cocks = families.map((_, place) => bird(`K${place}`, 'male')), of = families.flatMap((own, place) => own.map(() => cocks[place]))
  for (const each of book.birds) {
    const sire = each.id.startsWith('male') ? of[Number(each.id.slice(4))] : undefined
    if (sire) Object.assign(each, {parentage: parents([[sire, 1]], null)})
  }
  return {...book, birds: [...cocks, ...book.birds]}
}
/** By hand: squares off 2400 make 25,000, off 1900 400,000; SD 79.06 and 316.2, CV 3.29% and 16.64%. */
const MALES = [2300, 2350, 2400, 2450, 2500], FEMALES = [1500, 1700, 1900, 2100, 2300]
const CV_MALES = Math.sqrt(25_000 / 4) / 2400, CV_FEMALES = Math.sqrt(400_000 / 4) / 1900

describe('evenWeight(requirement, from)', () => {
  it('holds the coefficient of variation of each sex against the most asked', () => {
    const book = bookOf({male: MALES, female: FEMALES}), cv = (atMost: number) => found(book, {trait: weight, atMost})
    expect(cv(0.17).state).toBe('met')
    const {state, shown, ways, behind} = cv(0.1)
    expect(state).toBe('not-yet')
    expect(shown.parts).toMatchObject([{of: 'cv', sex: 'male', met: true, n: 5}, {of: 'cv', sex: 'female', met: false, n: 5}])
    expect(shown.parts.map(({have}) => have)).toEqual([expect.closeTo(CV_MALES, 12), expect.closeTo(CV_FEMALES, 12)])
    expect(ways).toMatchObject([{kind: 'more-even', of: 'cv', sex: 'female', mark: 0.1, birds: null}])
    expect(behind.birds).toHaveLength(10)
    expect(behind.on).toBe(date('2024-03-23').first + 140)
  })

  it('holds the shares within a tenth and inside the target against the least asked', () => {
    const book = bookOf({male: MALES, female: FEMALES})
    // by hand: all males lie within a tenth of 2400 and inside 2160 to 2640; of the females 1900 alone within 1710 to 2090, of both
    expect(found(book, {trait: weight, atLeast: 0.2}).state).toBe('met')
    expect(found(book, {trait: weight, atLeast: 0.7}).shown.parts).toMatchObject([{of: 'within-tenth', have: 1, met: true}, {have: 0.2, met: false}])
    expect(found(book, {trait: weight, insideAtLeast: 0.7}).shown.parts).toMatchObject([{of: 'inside', have: 1, met: true}, {of: 'inside', have: 0.2, n: 5, met: false}])
    expect(found(book, {trait: weight, atMost: 0.5, atLeast: 0.1, insideAtLeast: 0.1}).shown.parts).toHaveLength(6)
  })

  it('reads every figure at its cautious end by sire families where that is asked', () => {
    const requirement = {trait: weight, atMost: 0.08, atLeast: 0.5, insideAtLeast: 0.5, classes: ['cockerel'], judgedOn: 'cautious'} as const, {shown, state, ways} = found(bookOfSires(FIVE), requirement)
    // five cocks of three sons each, 50 g apart: the end of each by the numerics, whose witnesses are their own tests
    const high = familyVariation([FIVE.flatMap((own, family) => own.map(value => ({family, value})))])?.high ?? NaN, share = familyShare(FIVE.map(({length: n}) => ({k: n, n})), {seed: 1})?.low ?? NaN
    expect(shown.parts.map(({judged}) => judged)).toEqual([high, share, share].map(each => expect.closeTo(each, 9) as unknown))
    expect(shown.parts[0]?.families).toEqual({count: 5, effective: null})
    expect(state).toBe('not-yet')
    const [more] = ways
    if (more?.kind !== 'more-even' || more.birds === null) throw new Error('no birds asked for')
    // the slow twin: one by one
    let birds = 15
    const cv = shown.parts[0]?.have ?? NaN
    while (cv * (high / cv) ** Math.sqrt(15 / birds) > 0.08) birds += 1
    expect(more).toMatchObject({of: 'cv', birds, sires: 0})
    expect(ways).toHaveLength(1)
  })

  it('cannot tell the cautious end of sons of one cock, though the figure itself is met', () => {
    const one = bookOf({male: [...MALES, ...MALES, ...MALES, ...MALES, ...MALES]}), requirement = {trait: weight, atMost: 0.1, atLeast: 0.5, insideAtLeast: 0.5, classes: ['cockerel']} as const
    expect(found(one, requirement).state).toBe('met')
    expect(found(one, {...requirement, judgedOn: 'cautious'})).toMatchObject({state: 'cannot-tell', shown: {parts: [{judged: null, families: {count: 1}}, {judged: null}, {judged: null}]}, ways: [{kind: 'more-even', sires: 4, birds: null}]})
    // the figure itself not met is not met by any end
    expect(found(one, {...requirement, atMost: 0.01, judgedOn: 'cautious'}).state).toBe('not-yet')
  })

  it('names every measured trait of which nobody was measured, where all are asked', () => {
    const young: Trait = {...weight, id: 'weight-8', name: 'Weight at 8 weeks', measure: 'young weight', atAge: 56}, shank: Trait = {...weight, id: 'shank', name: 'Shank', measure: 'shank', wanted: {male: weight.wanted.male, female: null}}
    const book = bookOf({male: MALES, female: MALES}, {traits: [weight, young, shank]})
    // the shank is asked of males alone, for whom there is a target
    expect(found(book, {atMost: 0.1})).toMatchObject({state: 'cannot-tell', shown: {missing: [{trait: young, sex: 'male'}, {trait: young, sex: 'female'}, {trait: shank, sex: 'male'}]}, ways: [{kind: 'weigh', trait: young}, {kind: 'weigh', trait: young}, {kind: 'weigh', trait: shank}]})
    expect(found(book, {trait: weight, atMost: 0.1}).state).toBe('met')
  })

  it('cannot tell of a sex of which nobody, or too few, were weighed', () => {
    expect(found(bookOf({male: MALES}), {trait: weight, atMost: 0.1})).toMatchObject({state: 'cannot-tell', shown: {missing: [{sex: 'female'}]}, ways: [{kind: 'weigh', sex: 'female', more: 5}]})
    expect(found(bookOf({male: MALES, female: [1900, 1910]}), {trait: weight, atMost: 0.1})).toMatchObject({state: 'cannot-tell', shown: {missing: []}, ways: [{kind: 'weigh', sex: 'female', more: 3}]})
    expect(evidenceOf(bookOf({}), {trait: weight, atMost: 0.1})).toMatchObject({state: 'cannot-tell', shown: {kind: 'nothing-recorded', trait: weight}, ways: [{kind: 'weigh', sex: 'male'}, {sex: 'female'}]})
    expect(found(bookOf({male: MALES, female: MALES}), {trait: weight})).toMatchObject({state: 'cannot-tell', ways: [{kind: 'name-figure'}]})
  })

  it('is about the classes named: their sex, and their age as shows have it', () => {
    const book = bookOf({male: MALES, female: FEMALES}), late = bookOf({male: MALES, female: FEMALES}, {on: '2024-11-02'})
    expect(found(book, {trait: weight, atMost: 0.1, classes: ['Cockerels']})).toMatchObject({state: 'met', shown: {rows: [{sex: 'male'}]}})
    expect(found(book, {trait: weight, atMost: 0.1, classes: ['cockerel', 'pullet']}).state).toBe('not-yet')
    // weighed in the year of hatching, so none of them is a cock
    expect(evidenceOf(book, {trait: weight, atMost: 0.1, classes: ['cock']}).state).toBe('cannot-tell')
    expect(found(late, {trait: weight, atMost: 0.1, classes: ['cock']}).state).toBe('met')
    expect(found(late, {trait: weight, atMost: 0.1, ages: ['grown']}).state).toBe('not-yet')
    expect(found(book, {trait: weight, atMost: 0.5, classes: ['cockerel', 'the tall ones']})).toMatchObject({state: 'cannot-tell', shown: {unknownClasses: ['the tall ones']}, ways: [{kind: 'name-classes'}]})
  })

  it('takes the limits of a clause that it names', () => {
    const narrow = {male: {kind: 'between', low: 2390, high: 2410} as const, female: null}
    const book = bookOf({male: MALES}, {drafts: [plainDraft(1, '2024-01-01', {sections: [plainSection('male', [plainClause('male/size', 'Size', '', {trait: weight, allows: narrow})])]})]})
    expect(found(book, {clauses: ['male/size'], classes: ['cockerel'], insideAtLeast: 0.2})).toMatchObject({state: 'met', shown: {parts: [{have: 0.2, n: 5}]}})
    expect(found(book, {clauses: ['male/size'], classes: ['cockerel'], insideAtLeast: 0.3}).state).toBe('not-yet')
  })

  it('cannot tell of a clause that nothing measured stands behind, nor of birds of which the variety is not known', () => {
    const clauses = [plainClause('male/size', 'Size', '', {trait: weight, allows: weight.wanted}), plainClause('male/comb', 'Comb', '', {trait: comb, allows: comb.wanted})]
    const light = {name: 'Light', looks: new Map([[comb, {kind: 'states', states: ['pea']} as const]])}
    const book = bookOf({male: MALES, female: MALES}, {traits: [weight, comb], drafts: [plainDraft(1, '2024-01-01', {sections: [plainSection('male', clauses)], varieties: [light]})]})
    expect(found(book, {clauses: ['male/size'], atMost: 0.1}).state).toBe('met')
    expect(found(book, {clauses: ['male/size', 'male/comb', 'male/gone'], atMost: 0.1})).toMatchObject({state: 'cannot-tell', shown: {untoldClauses: ['male/gone', 'male/comb']}, ways: [{kind: 'hold-clauses'}]})
    expect(evidenceOf(book, {clauses: ['male/gone'], atMost: 0.1})).toMatchObject({state: 'cannot-tell', ways: [{kind: 'hold-clauses', clauses: ['male/gone']}]})
    const scored = {...book, birds: book.birds.map((each, index) => (index < 11 ? {...each, looks: new Map([...each.looks, ...looks(score(comb, 'pea'))])} : each))}
    expect(found(scored, {trait: weight, atMost: 0.1, varieties: ['light']})).toMatchObject({state: 'met', shown: {untold: 0}})
    const part = {...book, birds: book.birds.map((each, index) => (index < 4 ? {...each, looks: new Map([...each.looks, ...looks(score(comb, 'pea'))])} : each))}
    expect(found(part, {trait: weight, atMost: 0.1, varieties: ['light'], classes: ['cockerel']})).toMatchObject({state: 'cannot-tell', shown: {untold: 2}})
  })

  it('leaves out birds of other days, and counts them', () => {
    expect(evidenceOf(bookOf({male: MALES, female: FEMALES}), {trait: weight, atMost: 0.2, within: 365})).toMatchObject({state: 'cannot-tell', aged: {older: 10}})
    expect(found(bookOf({male: MALES, female: FEMALES}), {trait: weight, atMost: 0.2, within: 600})).toMatchObject({state: 'met', aged: {older: 0}})
  })

  it('is never met by weighing nobody of a sex, nor by the cautious end where the figure itself is not', () => {
    const grams = fc.array(fc.integer({min: 1200, max: 3200}), {maxLength: 9})
    fc.assert(fc.property(grams, grams, fc.double({min: 0.01, max: 0.5, noNaN: true}), fc.double({min: 0, max: 1, noNaN: true}), (male, female, atMost, insideAtLeast) => {
      const book = bookOf({male, female}), of = (more: Partial<Requirement>, from = book) => evidenceOf(from, {trait: weight, atMost, insideAtLeast, ...more}).state
      const plain = of({}), cautious = of({judgedOn: 'cautious'})
      if (male.length < 5 || female.length < 5) expect(plain).not.toBe('met')
      if (cautious === 'met') expect(plain).toBe('met')
      if (plain === 'not-yet') expect(cautious).toBe('not-yet')
      expect(of({}, bookOf({male}))).not.toBe('met')
    }), {numRuns: 60})
  })
})
