import {describe, expect, it} from 'vitest'
import {classOf, isAbout, standsIn} from '../../src/findings/asked-about.ts'
import {bird, comb, date, looks, score} from '../pages/small-logbook.ts'
import {plainDraft, plainRequirement} from '../paper-parts.ts'

const on = date('2025-10-04').first
const hen = bird('h', 'female', {hatched: date('2024-04-01')}), pullet = bird('p', 'female', {hatched: date('2025-04-01')}), unknown = bird('u', 'female')

describe('classOf(bird, on)', () => {
  it('goes by sex and the year of hatching', () => {
    expect([hen, pullet, bird('c', 'male', {hatched: date('2025')}), bird('k', 'male', {hatched: date('2024-12-31')})].map(each => classOf(each, on))).toEqual(['hen', 'pullet', 'cockerel', 'cock'])
    expect([unknown, bird('x', 'unknown', {hatched: date('2025')})].map(each => classOf(each, on))).toEqual([null, null])
  })
})

describe('standsIn(name, written, bird, on)', () => {
  it('takes the class as written, in whatever words', () => {
    expect(standsIn('pullet', 'Pullets, light', hen, on)).toBe(true)
    expect(standsIn('hen', 'Pullets, light', hen, on)).toBe(false)
    expect(standsIn('pullet', 'young hens', hen, on)).toBe(true)
    expect(standsIn('Trio', 'trio', hen, on)).toBe(true)
    expect(standsIn('Trio', 'pullet', hen, on)).toBe(false)
    expect([standsIn('drake', 'Drakes, coloured', hen, on), standsIn('drake', 'Young drakes', hen, on), standsIn('young drake', 'Young drakes', hen, on), standsIn('drake', null, hen, on)]).toEqual([true, false, true, null])
  })
  it('goes by the bird where the class says neither sex nor age', () => {
    expect([standsIn('hen', null, hen, on), standsIn('hen', 'Large fowl', hen, on), standsIn('hen', null, pullet, on), standsIn('hen', null, unknown, on)]).toEqual([true, true, false, null])
  })
})

describe('isAbout(requirement, bird, on, book)', () => {
  const pea = {kind: 'states', states: ['pea']} as const
  const drafts = [plainDraft(1, '2025-01-01', {varieties: [{name: 'Light', looks: new Map([[comb, pea]])}, {name: 'Dark', looks: new Map([[comb, {kind: 'states', states: ['single']}]])}]})]
  const about = (more: Parameters<typeof plainRequirement>[1], of = hen) => isAbout(plainRequirement('show-result', more), of, on, {drafts})
  it('is about every bird where nothing is named', () => expect(about({}, unknown)).toBe(true))
  it('asks for age, class and variety together, and cannot tell where one is not on record', () => {
    expect([about({ages: ['grown']}), about({ages: ['young']}), about({ages: ['young', 'grown']}), about({ages: ['young']}, unknown)]).toEqual([true, false, true, null])
    expect([about({classes: ['hen', 'pullet']}), about({classes: ['pullet'], ages: ['grown']})]).toEqual([true, false])
    const light = bird('l', 'female', {hatched: date('2024'), looks: looks(score(comb, 'pea'))})
    expect([about({varieties: ['light']}, light), about({varieties: ['Dark']}, light), about({varieties: ['Light']}), about({varieties: ['Light'], ages: ['young']})]).toEqual([true, false, null, false])
  })
  it('is not about a bird that was scored and shows none of the varieties', () => {
    const rose = bird('r', 'female', {hatched: date('2024'), looks: looks(score(comb, 'rose'))})
    expect([about({varieties: ['Light', 'Dark']}, rose), about({varieties: ['Light', 'Dark']})]).toEqual([false, null])
  })
})
