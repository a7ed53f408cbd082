import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {looksAsked} from '../../src/findings/clauses-asked.ts'
import {ladderOf} from '../../src/findings/ladder.ts'
import {trueBred, trueBredAmong, trueBredOf} from '../../src/findings/true-bred.ts'
import {isAskedOf, typeOfChicks} from '../../src/findings/type-of-chicks.ts'
import type {Logbook, Requirement, Trait} from '../../src/logbook/book.ts'
import {plainClause, plainDraft, plainRequirement, plainSection} from '../paper-parts.ts'
import {bird, comb, looks, score, trait} from '../pages/small-logbook.ts'
import '../seeded.ts'
import {skin} from './drawn-book.ts'
import {bookOfFamilies, evenBook} from './evenness-book.ts'

const typeOf = (book: Logbook, more: Partial<Requirement> = {}, seasons = 9) => {
  const asked = plainRequirement('true-to-type', more)
  return typeOfChicks(book, looksAsked(asked, book), asked, seasons)
}
const held = (of: Trait, more: Parameters<typeof plainClause>[3] = {}) => plainClause(`general/${of.id}`, of.name, of.name, {trait: of, allows: of.wanted, mandatory: true, ...more})

describe('typeOfChicks(book, asked, requirement, seasons)', () => {
  it('goes by required traits where no clause is asked for: as on the ladder, but for chicks that were not of an age for all of them', () => {
    fc.assert(fc.property(evenBook, fc.integer({min: 1, max: 3}), (book, seasons) => {
      const type = typeOf(book, {}, seasons), known = trueBred(book, ladderOf(book)), here = trueBredAmong(type, type.hatches), there = trueBredOf(book, known, type.seasons)
      expect(type.seasons).toEqual(known.interSeSeasons.map(({season}) => season).slice(-seasons))
      expect([here.passes, here.passesOnFewer, here.unlisted]).toEqual([there.passes - there.passesOnFewer, 0, there.unlisted])
      expect(here.fails).toBeLessThanOrEqual(there.fails)
      for (const [chick, {is}] of type.verdicts) if (is === 'right') expect(known.verdicts.get(chick)?.is).toBe('right')
      for (const chick of type.culledEarly) expect([type.verdicts.get(chick)?.is, chick.left?.how]).toEqual(['lost', 'culled'])
    }), {numRuns: 60})
  })

  it('never finds more true against clauses than against required traits of the same looks, for it asks a full age', () => {
    fc.assert(fc.property(evenBook, book => {
      const drafts = [plainDraft(1, '2021-01-01', {sections: [plainSection('general', [held(comb), held(skin)])]})]
      const required = typeOf(book), clauses = typeOf({...book, drafts}), rate = trueBredAmong(clauses, clauses.hatches)
      expect(rate.passes).toBeLessThanOrEqual(trueBredAmong(required, required.hatches).passes)
      expect(rate.passesOnFewer).toBe(0)
      expect(rate.passes + rate.fails + rate.partScored + rate.lost + rate.tooYoung).toBe([...clauses.verdicts.keys()].reduce((sum, {count}) => sum + count, 0))
    }), {numRuns: 60})
  })

  it('does not tell the variety of a chick where no draft has any', () => {
    const type = typeOf(bookOfFamilies([{step: {label: 'F2', kind: 'filial', to: null, strains: [], backcrosses: 0, interSe: 1, depth: 2}, pea: 3, single: 1}]), {varieties: ['light']})
    expect([...type.verdicts.values()].map(({is}) => is)).toEqual(['part-scored', 'part-scored', 'part-scored', 'off'])
  })
})

describe('isAskedOf(look, chick)', () => {
  const spurs = trait('spurs', 'Spurs', {states: ['long', 'short'], seenIn: 'male', wanted: {male: {kind: 'states', states: ['long']}, female: null}}), tail = trait('tail', 'Tail', {kind: 'measured', wanted: {male: {kind: 'about', value: 45, tolerance: null}, female: {kind: 'at-most', value: 50}}})
  const asked = (of: Trait, sex: 'male' | 'female' | 'unknown') => isAskedOf({clause: null, trait: of, scored: of}, bird('x', sex, {looks: looks(score(comb, 'pea'))}))

  it('leaves out a sex that cannot show it, of which nothing is wanted, or only a mark without limits', () => {
    expect((['male', 'female', 'unknown'] as const).map(sex => [asked(spurs, sex), asked(tail, sex), asked(comb, sex)])).toEqual([[true, false, true], [false, true, true], [false, true, true]])
  })
})
