import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import type {Evidence} from '../../src/findings/evidence.ts'
import type {ShownWelfare} from '../../src/findings/shown-of-breeding.ts'
import {study} from '../../src/findings/study.ts'
import type {Bird, Logbook, Paper, Requirement} from '../../src/logbook/book.ts'
import {plainPaper, plainRequirement} from '../paper-parts.ts'
import {bookOf as linked} from '../logbook/around.ts'
import {at, bird, comb, date, F1, F2, hatch, logbook, project} from '../pages/small-logbook.ts'
import '../seeded.ts'
import {LEGS} from './heredity-book.ts'

function found(book: Logbook, more: Partial<Requirement>, papers: readonly Paper[] = []): Evidence & {readonly shown: ShownWelfare} {
  const [item] = study({...book, requirements: {at, body: '', association: null, papers, distinctness: null, items: [plainRequirement('welfare', more)]}}).evidence.items
  if (item?.shown.kind !== 'welfare') throw new Error('no evidence of welfare')
  return {...item, shown: item.shown}
}
interface Left {
  readonly how: 'culled' | 'taken' | 'lost' | 'sold'
  readonly age: number
}
/** Ages at which chicks of one hatch died, or left alive; null: alive, and seen a year on; silent: alive, for all that is written. */
type Life = number | null | 'silent' | Left
function bookOf(lives: readonly Life[], {unlisted = 0, on = '2024-03-23', step = F2} = {}): Logbook {
  const from = hatch('2024-01', {on: date(on), step, unlisted, hatched: lives.length + unlisted}), first = date(on).first, day = (age: number) => ({text: '', first: first + age, last: first + age})
  const birds = lives.map((life, index): Bird => bird(`c${index}`, 'unknown', {
    hatched: from.on, hatch: from, step, strain: null, left: life === null || life === 'silent' ? null : typeof life === 'number' ? {on: day(life), how: 'died', why: null} : {on: day(life.age), how: life.how, why: null},
    observations: life === null ? [{on: day(365), by: null, notes: []}] : [],
  }))
  Object.assign(from, {chicks: birds})
  return logbook('2025-10-30', {traits: [comb], birds, hatches: [from], project: {...project, ladder: ['F1', 'F2']}})
}
const alive = (count: number): readonly null[] => Array.from({length: count}, () => null)
const SAID = {stated: 'Nothing in it harms a bird.'}
const legs = (target: string): Logbook => linked({'traits/legs.md': LEGS.replace('loci: [Cp]\n', `target: ${target}\nrequired: yes\nloci: [Cp]\n`)})
const frizzle = linked({'traits/feather.md': '---\nname: Feather\nstates: [bare frizzle, frizzle, smooth]\ntarget: frizzle\nrequired: yes\nloci: [F]\n---\n'})

describe('welfare(requirement, from)', () => {
  it('is not met by a standard that asks for what kills, whoever says otherwise', () => {
    expect(found(legs('creeper'), SAID, [plainPaper('welfare', '2022-01-01')])).toMatchObject({state: 'not-yet', shown: {met: {genes: false, word: true}}, ways: [{kind: 'ask-otherwise', harms: [{allele: 0, harm: 'lethal'}, {}]}]})
    expect(found(legs('long'), SAID, [plainPaper('welfare', '2022-01-01')])).toMatchObject({state: 'met', ways: []})
  })

  it('cannot be told of what a caution says harms, until a paper proves that it is borne', () => {
    expect(found(frizzle, SAID)).toMatchObject({state: 'cannot-tell', shown: {met: {genes: null}}, ways: [{kind: 'veterinary-word'}]})
    expect(found(frizzle, {}, [plainPaper('welfare', '2022-01-01')]).state).toBe('met')
  })

  it('cannot be told by the keeper’s word alone of a look of which no rule says its genes', () => {
    // the comb of this book has no rules
    expect(found(legs('long'), SAID)).toMatchObject({state: 'cannot-tell', shown: {met: {genes: null}, withoutGenes: [{id: 'comb'}]}, ways: [{kind: 'veterinary-word', harms: [], traits: [{id: 'comb'}]}]})
  })

  it('cannot be told of a clause named that has no trait', () => {
    expect(found(bookOf(alive(4)), {...SAID, clauses: ['male/gait']})).toMatchObject({state: 'cannot-tell', shown: {untoldClauses: ['male/gait']}, ways: [{kind: 'hold-clauses'}]})
  })

  it('needs a paper that holds, or the keeper’s own word', () => {
    const book = bookOf(alive(4))
    expect(found(book, {})).toMatchObject({state: 'cannot-tell', ways: [{kind: 'statement'}]})
    expect(found(book, {}, [plainPaper('welfare', '2024-01-01', '2025-01-01')]).state).toBe('not-yet')
    expect(found(book, {}, [plainPaper('welfare', '2024-01-01')])).toMatchObject({state: 'met', behind: {records: [{}]}})
  })

  it('holds the share that lives to the age against the floor', () => {
    // by hand: 17 of 20 live eight weeks, 18 four; the death at 100 days comes after both
    const book = bookOf([...alive(16), 100, 20, 20, 40]), of = (more: Partial<Requirement>) => found(book, {...SAID, ...more})
    expect(of({atLeast: 0.85})).toMatchObject({state: 'met', shown: {life: {age: 56, of: 'F2', found: {share: expect.closeTo(0.85, 12) as number, n: 20}}}})
    expect(of({atLeast: 0.86})).toMatchObject({state: 'not-yet', ways: [{kind: 'chicks-live', more: 2, age: 56}]})
    expect(of({atLeast: 0.9, toAge: 28}).state).toBe('met')
    // Wilson’s lower limit of 17 of 20 is 64.0% (from memory)
    expect([0.63, 0.65].map(atLeast => of({atLeast, judgedOn: 'cautious'}).state)).toEqual(['met', 'not-yet'])
    expect(of({atLeast: 0.5}).behind.birds).toHaveLength(20)
  })

  it('takes nobody for living of whom nothing is written', () => {
    const book = bookOf([...alive(17), 20, 20, 20], {unlisted: 5}), of = (atLeast: number) => found(book, {...SAID, atLeast})
    // by hand: between 17 and 22 of 25
    expect([0.68, 0.69, 0.88, 0.89].map(atLeast => of(atLeast).state)).toEqual(['met', 'cannot-tell', 'cannot-tell', 'not-yet'])
    expect(of(0.8).ways).toMatchObject([{kind: 'follow-chicks', chicks: 5}])
    expect(found(bookOf([]), {...SAID, atLeast: 0.5}).state).toBe('cannot-tell')
  })

  it('is about the latest step, or the last seasons where they are named, and the days that count', () => {
    const old = bookOf([10, 10], {on: '2023-03-01', step: F1}), made = bookOf(alive(4)), book = {...made, birds: [...old.birds, ...made.birds], hatches: [...old.hatches.map(each => ({...each, id: '2023-01'})), ...made.hatches]}
    expect(found(book, {...SAID, atLeast: 0.9}).shown.life).toMatchObject({of: 'F2', found: {share: 1, n: 4}})
    expect(found(book, {...SAID, atLeast: 0.9, seasons: 2})).toMatchObject({state: 'not-yet', shown: {life: {of: '2023 to 2024', found: {n: 6}}}})
    expect(found(book, {...SAID, atLeast: 0.9, seasons: 2, from: date('2024-01-01')})).toMatchObject({state: 'met', aged: {earlier: 1}})
  })

  it('takes culls, losses and chicks that nobody wrote of again for dead before the floor is met, and for living before it is missed', () => {
    const of = (lives: readonly Life[], atLeast: number, more: Partial<Requirement> = {}) => found(bookOf(lives), {...SAID, atLeast, ...more}), doubt = [{how: 'culled', age: 30}, {how: 'taken', age: 40}, {how: 'lost', age: 50}, 'silent'] as const
    // by hand: 14 of 20 live for sure, two died, and four are in doubt: between 70% and 90%
    const lives = [...alive(14), 20, 20, ...doubt]
    expect([0.7, 0.71, 0.9, 0.91].map(atLeast => of(lives, atLeast).state)).toEqual(['met', 'cannot-tell', 'cannot-tell', 'not-yet'])
    expect(of(lives, 0.8)).toMatchObject({shown: {life: {culled: 1, taken: 1, lost: 1, silent: 1}}, ways: [{kind: 'follow-chicks', chicks: 1}]})
    // one sold counts for as long as it was there, and one culled after the age lived to it
    expect(of([...alive(9), {how: 'sold', age: 30}], 1)).toMatchObject({state: 'met', shown: {life: {culled: 0}}})
    expect(of([...alive(9), {how: 'culled', age: 60}], 1)).toMatchObject({state: 'met', shown: {life: {culled: 0}}})
    expect(of([...alive(9), {how: 'culled', age: 60}], 1, {toAge: 84})).toMatchObject({state: 'cannot-tell', shown: {life: {culled: 1}}})
    // (9 + m)/(10 + m) ≥ 0.95 at m = 10, were the cull dead
    expect(of([...alive(9), {how: 'culled', age: 30}], 0.95)).toMatchObject({state: 'cannot-tell', ways: [{kind: 'chicks-live', more: 10}]})
  })

  it('is told by its slow twin, and never met by leaving chicks unlisted, culling them or not writing of them', () => {
    const life: fc.Arbitrary<Life> = fc.oneof({weight: 3, arbitrary: fc.constant(null)}, fc.integer({min: 0, max: 120}), fc.constant('silent' as const), fc.record({how: fc.constantFrom('culled', 'taken', 'lost'), age: fc.integer({min: 0, max: 120})}))
    fc.assert(fc.property(fc.array(life, {minLength: 1, maxLength: 30}), fc.nat(6), fc.constantFrom(0.5, 0.8, 0.95), (lives, unlisted, atLeast) => {
      const {state} = found(bookOf(lives, {unlisted}), {...SAID, atLeast}), all = lives.length + unlisted
      // nobody was sold or is too young, so that plain counting will do
      const dead = lives.filter(each => typeof each === 'number' && each <= 56).length, doubtful = lives.filter(each => each === 'silent' || (each !== null && typeof each === 'object' && each.age < 56)).length
      const known = lives.some(each => each !== 'silent' && (each === null || (typeof each === 'number' ? each > 56 : each.age >= 56))) || lives.includes('silent') || dead === lives.length
      if (known) expect(state).toBe((lives.length - dead - doubtful) / all >= atLeast - 1e-12 ? 'met' : (all - dead) / all < atLeast - 1e-12 ? 'not-yet' : 'cannot-tell')
      else expect(state).not.toBe('met')
      const [first, ...rest] = lives
      for (const worse of [found(bookOf(rest, {unlisted: unlisted + 1}), {...SAID, atLeast}), ...(typeof first === 'number' && first < 56 ? [found(bookOf([{how: 'culled', age: first}, ...rest], {unlisted}), {...SAID, atLeast})] : [])]) if (worse.state === 'met') expect(state).toBe('met')
    }), {numRuns: 40})
  })
})
