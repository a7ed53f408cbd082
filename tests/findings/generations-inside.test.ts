import {describe, expect, it} from 'vitest'
import * as fc from 'fast-check'
import {generationsInside} from '../../src/findings/generations-inside.ts'
import type {Bird, Logbook} from '../../src/logbook/book.ts'
import {bird, F1, F2, fell, holm, parents, strainStep} from '../pages/small-logbook.ts'
import '../seeded.ts'
import {bookOf} from '../logbook/around.ts'

const own = (id: string, sire: Bird | null, dam: Bird | null, chance = 1): Bird => bird(id, 'male', {step: F2, strain: null, parentage: sire ? parents([[sire, chance]], dam) : {kind: 'uncertain', pairs: [{sire, dam, chance: 1}], sires: [], dams: []}})
const H = bird('H', 'male', {step: strainStep(holm)}), B = bird('B', 'female', {step: strainStep(fell), strain: fell})
const of = (birds: readonly Bird[], id: string) => {
  const found = [...generationsInside({birds})].find(([each]) => each.id === id)?.[1]
  return found && {least: found.least, most: found.most, chain: found.chain.map(each => each.id)}
}

describe('generationsInside(book)', () => {
  const f1 = bird('f1', 'male', {step: F1, strain: null, parentage: parents([[H, 1]], B)}), f2 = own('f2', f1, f1), f3 = own('f3', f2, f2)

  it('has none behind a cross, and one more a generation', () => {
    expect(of([H, B, f1, f2, f3], 'f1')).toEqual({least: 0, most: 0, chain: ['f1', 'H']})
    expect(of([H, B, f1, f2, f3], 'f3')).toEqual({least: 2, most: 2, chain: ['f3', 'f2', 'f1', 'H']})
    expect(of([H, B, f1], 'H')).toBeUndefined()
  })

  it('goes by the parent with fewer, and to none where one is from outside or not in the book', () => {
    const late = own('late', f3, f1), back = own('back', H, f3), lost = own('lost', null, f3)
    expect(of([H, B, f1, f2, f3, late], 'late')).toEqual({least: 1, most: 1, chain: ['late', 'f1', 'H']})
    expect(of([H, B, f1, f2, f3, back], 'back')).toEqual({least: 0, most: 0, chain: ['back', 'H']})
    expect(of([H, B, f1, f2, f3, lost], 'lost')).toEqual({least: 0, most: 0, chain: ['lost']})
  })

  it('has the fewest and the most of the parents that may be', () => {
    const doubt = bird('doubt', 'male', {step: F2, strain: null, parentage: parents([[f1, 0.5], [f3, 0.5]], f3)})
    expect(of([H, B, f1, f2, f3, doubt], 'doubt')).toEqual({least: 1, most: 3, chain: ['doubt', 'f1', 'H']})
  })

  it('counts as the steps do where a line stands by itself', () => {
    const line = (band: string, sire: string, dam: string, year: number) => [`birds/${band}.md`, `---\nband: ${band}\nsex: ${band.endsWith('m') ? 'male' : 'female'}\nsire: ${sire}\ndam: ${dam}\nhatched: ${year}-04-01\n---\n`] as const
    const book = bookOf(Object.fromEntries([line('1m', 'H-1', 'B-1', 2023), line('1f', 'H-1', 'B-1', 2023), line('2m', 'H-2', '1f', 2024), line('2f', 'H-2', '1f', 2024), line('3m', '2m', '2f', 2025), line('3f', '2m', '2f', 2025), line('4m', '3m', '3f', 2026)]))
    const inside = generationsInside(book)
    for (const each of book.birds.filter(({step}) => step.kind !== 'strain')) expect([each.band, inside.get(each)?.least]).toEqual([each.band, each.step.interSe])
  })

  it('is the length of the shortest of all ways back, walked one by one', () => {
    const ways = (one: Bird | null): number => (one === null || one.step.kind === 'strain' ? -1 : 1 + Math.min(...one.parentage.pairs.flatMap(({sire, dam}) => [ways(sire), ways(dam)])))
    fc.assert(fc.property(fc.array(fc.tuple(fc.nat(), fc.nat()), {minLength: 1, maxLength: 9}), drawn => {
      const birds: Bird[] = [H, B]
      drawn.forEach(([s, d], index) => birds.push(own(`x${index}`, birds[s % birds.length] ?? null, birds[d % birds.length] ?? null)))
      const inside = generationsInside({birds} as Pick<Logbook, 'birds'>)
      for (const each of birds.slice(2)) expect(inside.get(each)?.least).toBe(ways(each))
    }), {numRuns: 60})
  })
})
