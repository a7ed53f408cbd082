import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {chanceOf} from '../../src/statistics/chance.ts'
import {dealtScores} from '../../src/statistics/kendall-deals.ts'
import type {Ordered} from '../../src/statistics/kendall-orders.ts'
import {kendallTau} from '../../src/statistics/kendall-tau.ts'
import {expectClose} from '../expect-close.ts'
import {ordersOf} from './every-order.ts'

const scoreOf = (classes: readonly (readonly Ordered[])[]): number => classes.reduce((all, birds) => all + birds.reduce((sum, [one, other], place) => sum + birds.slice(place + 1).reduce((inner, [a, b]) => inner + Math.sign((one - a) * (other - b)), 0), 0), 0)

/** Every way to hand the marks of birds 0 … n − 1 on among them, each kept through all classes. */
function byEveryDeal(marks: readonly number[], classes: readonly (readonly (readonly [worth: number, bird: number])[])[]): Map<number, number> {
  const found = new Map<number, number>(), orders = ordersOf(marks)
  for (const dealt of orders) {
    const score = scoreOf(classes.map(birds => birds.map(([worth, bird]): Ordered => [worth, dealt[bird] ?? NaN])))
    found.set(score, (found.get(score) ?? 0) + 1 / orders.length)
  }
  return found
}

describe('dealtScores(classes, seed)', () => {
  it('is every deal among the birds, each kept through its classes', () => {
    // three classes that the birds 0, 1 … join: every two classes share bird 0
    const some = fc.uniqueArray(fc.tuple(fc.integer({min: 1, max: 4}), fc.integer({min: 1, max: 4})), {minLength: 1, maxLength: 4, selector: ([, bird]) => bird})
    fc.assert(fc.property(fc.array(fc.integer({min: 1, max: 4}), {minLength: 5, maxLength: 5}), fc.array(fc.tuple(fc.integer({min: 1, max: 4}), some), {minLength: 2, maxLength: 3}), (marks, drawn) => {
      const classes = drawn.map(([worth, others]): [number, number][] => [[worth, 0], ...others])
      const shown = [...new Set(classes.flat().map(([, bird]) => bird))], own = shown.map(bird => marks[bird] ?? NaN)
      const found = dealtScores(classes.map(birds => birds.map(([worth, bird]): Ordered => [worth, marks[bird] ?? NaN, bird])), 1)
      const slow = byEveryDeal(own, classes.map(birds => birds.map(([worth, bird]) => [worth, shown.indexOf(bird)] as const)))
      expect(found.how).toBe('exact')
      expect([...found.scores.keys()].sort((a, b) => a - b)).toEqual([...slow.keys()].sort((a, b) => a - b))
      for (const [score, chance] of found.scores) expectClose(chance, slow.get(score) ?? NaN, 1e-12)
    }), {numRuns: 40})
  })

  it('lets birds that never meet keep their marks, and a bird marked anew hand both on', () => {
    // the same pair twice: agreed both times by half of all chances, not by a quarter
    const pair = (): Ordered[] => [[1, 5, 'a'], [2, 6, 'b']]
    expect([...dealtScores([pair(), pair()], 1).scores].sort(([a], [b]) => a - b)).toEqual([[-2, 0.5], [2, 0.5]])
    expect([...dealtScores([pair(), [[1, 5, 'c'], [2, 6, 'd']]], 1).scores].sort(([a], [b]) => a - b)).toEqual([[-2, 0.25], [0, 0.5], [2, 0.25]])
    // a rose above b between the classes: whoever is dealt those two marks rises
    expect([...dealtScores([[[1, 5, 'a'], [2, 6, 'b']], [[1, 8, 'a'], [2, 6, 'b']]], 1).scores]).toEqual([[0, 1]])
  })

  it('draws where there are too many ways, near what they come to', () => {
    const birds = (n: number): Ordered[] => Array.from({length: n}, (_, place): Ordered => [place, place * place, place])
    const {how, scores} = dealtScores([birds(12), birds(12)], 1), total = [...scores.values()].reduce((sum, each) => sum + each, 0)
    expect([how, total]).toEqual(['drawn', 1999])
    // twice the score of one class of 12, whose variance is 12 · 11 · 29/18
    const variance = [...scores].reduce((sum, [score, often]) => sum + score ** 2 * often, 0) / total
    expect(variance / (4 * 12 * 11 * 29 / 18)).toBeGreaterThan(0.9)
    expect(variance / (4 * 12 * 11 * 29 / 18)).toBeLessThan(1.1)
  })
})

describe('the P of birds that meet again', () => {
  it('errs no oftener than it says, where the judges like the same birds each time and our marks know nothing of it', () => {
    const chance = chanceOf(7), runs = 400
    const rejected = (named: boolean): number => Array.from({length: runs}, () => {
      const marks = Array.from({length: 6}, () => chance.next()), liked = marks.map(() => chance.next())
      const classes = Array.from({length: 4}, () => marks.map((mark, bird): Ordered => [(liked[bird] ?? 0) + chance.next() / 4, mark, named ? bird : undefined]))
      return (kendallTau(classes).p ?? 1) <= 0.05 ? 1 : 0
    }).reduce<number>((sum, each) => sum + each, 0) / runs
    // three standard errors of 5 in 100 over 400 runs
    expect(rejected(true)).toBeLessThan(0.083)
    // as if every class had new birds
    expect(rejected(false)).toBeGreaterThan(0.13)
  })
})
