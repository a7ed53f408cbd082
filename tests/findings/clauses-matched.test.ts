import fc from 'fast-check'
import '../seeded.ts'
import {describe, expect, it} from 'vitest'
import {matchedDrafts, rising} from '../../src/findings/clauses-matched.ts'
import {changesBetween} from '../../src/findings/standard-changes.ts'
import {plainClause, plainDraft, plainSection} from '../paper-parts.ts'

/** Drafts of few sections with few names and words, so that clauses move, change names and are reworded often. */
const anyDraft = fc.uniqueArray(fc.record({
  id: fc.constantFrom('male', 'female', 'colour', 'faults'), kind: fc.constantFrom('male', 'colour', null),
  clauses: fc.uniqueArray(fc.record({name: fc.constantFrom('tail', 'comb', 'back', 'down'), text: fc.constantFrom('Low.', 'Broad and deep, well carried.', 'White all over, without straw.'), variety: fc.constantFrom(null, 'Light')}), {selector: ({name, variety}) => `${name} ${variety ?? ''}`, maxLength: 4}),
} as const), {selector: ({id}) => id, maxLength: 4}).map(sections => plainDraft(1, '2024-01-01', {
  sections: sections.map(({id, kind, clauses}) => plainSection(id, clauses.map(({name, text, variety}) => plainClause(`${id}/${variety === null ? '' : 'light/'}${name}`, name, text, {variety})), {kind})),
}))

describe('matchedDrafts(from, to)', () => {
  it('finds every clause and section of both, each once', () => {
    fc.assert(fc.property(anyDraft, anyDraft, (from, to) => {
      const {clauses, sections} = matchedDrafts(from, to), all = (of: typeof from) => of.sections.flatMap(section => section.clauses)
      const whole = <Piece>(pieces: readonly {readonly before: Piece | null; readonly after: Piece | null}[], old: readonly Piece[], fresh: readonly Piece[]) => {
        const before = pieces.flatMap(piece => piece.before ?? []), after = pieces.flatMap(piece => piece.after ?? [])
        expect([before.length, after.length]).toEqual([old.length, fresh.length])
        expect([new Set<unknown>(before), new Set<unknown>(after)]).toEqual([new Set<unknown>(old), new Set<unknown>(fresh)])
      }
      whole(clauses, all(from), all(to))
      whole(sections, from.sections, to.sections)
    }))
  })

  it('finds nothing between a draft and itself', () => {
    fc.assert(fc.property(anyDraft, draft => {
      const {head, sections, clauses, rows, weights, points, varieties} = changesBetween(draft, {...draft, number: 2})
      expect([head, sections, clauses, rows, weights, points, varieties].flat()).toEqual([])
    }))
  })

  it('finds nothing but moves where sections only changed places', () => {
    fc.assert(fc.property(anyDraft, draft => {
      const {sections, clauses} = changesBetween(draft, {...draft, number: 2, sections: [...draft.sections].reverse()})
      expect(clauses).toEqual([])
      expect(sections.every(({moved, retitled, words}) => moved && !retitled && words === null)).toBe(true)
      expect(sections).toHaveLength(Math.max(0, draft.sections.length - 1))
    }))
  })
})

/** The longest rising run, by trying every choice. */
function slowLongest(places: readonly number[], above = -1): number {
  const [first, ...rest] = places
  if (first === undefined) return 0
  const without = slowLongest(rest, above)
  return first > above ? Math.max(without, 1 + slowLongest(rest, first)) : without
}

describe('rising(places)', () => {
  it('is a longest run of rising places', () => {
    fc.assert(fc.property(fc.uniqueArray(fc.integer({min: 0, max: 30}), {maxLength: 11}), places => {
      const kept = [...rising(places)].sort((a, b) => a - b).map(index => places[index]!)
      expect(kept.every((place, index) => index === 0 || place > kept[index - 1]!)).toBe(true)
      expect(kept).toHaveLength(slowLongest(places))
    }))
  })
})
