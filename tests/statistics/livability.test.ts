import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {chanceOf} from '../../src/statistics/chance.ts'
import {livability, type Watched} from '../../src/statistics/livability.ts'
import {wilsonInterval} from '../../src/statistics/wilson-interval.ts'
import {expectClose} from '../expect-close.ts'

/** Freireich et al. 1963, Blood 21:699, weeks in remission under treatment; those still in remission marked by a minus. */
const REMISSION: Watched[] = [6, 6, 6, -6, 7, -9, 10, -10, -11, 13, 16, -17, -19, -20, 22, 23, -25, -32, -32, -34, -35].map(weeks => ({age: Math.abs(weeks), died: weeks > 0}))

function live(...args: Parameters<typeof livability>) {
  const got = livability(...args)
  if (!got) throw new Error('nothing is known')
  return got
}
const bird = fc.record({age: fc.integer({min: 0, max: 30}), died: fc.boolean()})

describe('livability(birds, age)', () => {
  // the product-limit table of these data in any textbook, e.g. Collett, Modelling Survival Data in Medical Research, or Kleinbaum & Klein, Survival Analysis, ch. 2 (from memory)
  it.each([[6, 0.857, 0.0764], [7, 0.807, 0.0869], [10, 0.753, 0.0963], [13, 0.69, 0.1068], [16, 0.627, 0.1141], [22, 0.538, 0.1282], [23, 0.448, 0.1346]])(
    'has the printed share and error at %i weeks', (age, share, error) => {
      const got = live(REMISSION, age)
      expectClose(got.share, share, 0.0005)
      expectClose(Math.sqrt((got.share * (1 - got.share)) / got.effective), error, 0.00005)
    })

  it('is the plain share with Wilson’s interval where no bird left', () => {
    fc.assert(fc.property(fc.array(fc.integer({min: 1, max: 30}), {minLength: 1, maxLength: 30}), ages => {
      // whoever lives beyond day 20 is watched to the end
      const birds = ages.map(age => (age <= 20 ? {age, died: true} : {age: 40, died: false}))
      const alive = ages.filter(age => age > 20).length, got = live(birds, 20), {low, high} = wilsonInterval(alive, ages.length)
      expectClose(got.share, alive / ages.length, 1e-12)
      expectClose(got.low, low, 1e-9)
      expectClose(got.high, high, 1e-9)
      expectClose(got.effective, ages.length, 1e-7)
    }))
  })

  it('hands the chance of birds that left to those that stayed', () => {
    // Efron 1967, the same estimate by another route: each bird begins with 1/n; one that leaves gives its own to all that are there longer, in equal parts
    fc.assert(fc.property(fc.array(bird, {minLength: 1, maxLength: 15}), birds => {
      const got = livability(birds, 25)
      if (!got) return
      const order = [...birds].sort((a, b) => a.age - b.age || Number(b.died) - Number(a.died)).map(each => ({...each, weight: 1 / birds.length}))
      order.forEach((each, place) => {
        if (each.died || each.age >= 25) return
        const later = order.slice(place + 1)
        for (const other of later) other.weight += each.weight / later.length
        each.weight = 0
      })
      expectClose(got.share, 1 - order.filter(each => each.died && each.age <= 25).reduce((sum, {weight}) => sum + weight, 0), 1e-9, birds)
    }))
  })

  it('falls with age, holds its share, and stays between 0 and 1', () => {
    fc.assert(fc.property(fc.array(bird, {maxLength: 12}), birds => {
      const young = livability(birds, 10), old = livability(birds, 20)
      if (young && old) expect(old.share).toBeLessThanOrEqual(young.share)
      for (const got of [young, old]) {
        if (!got) continue
        expect(Number.isFinite(got.effective)).toBe(true)
        expect(got.low).toBeGreaterThanOrEqual(0)
        expect(got.low).toBeLessThanOrEqual(got.share + 1e-12)
        expect(got.high).toBeGreaterThanOrEqual(got.share - 1e-12)
        expect(got.high).toBeLessThanOrEqual(1)
      }
    }))
  })

  it('covers the truth about 95 times in a hundred in a hatch of 30 of which a third is sold', () => {
    const chance = chanceOf(60), share = () => chance.next() / 2 ** 32
    let held = 0
    for (let run = 0; run < 3000; run++) {
      // three in ten die at an even rate to day 140; one in three is sold somewhere on the way
      const birds = Array.from({length: 30}, () => {
        const death = share() < 0.3 ? 140 * share() : Infinity, sold = share() < 1 / 3 ? 140 * share() : 140
        return {age: Math.min(death, sold), died: death < sold}
      })
      const got = livability(birds, 140)
      if (got && got.low <= 0.7 && 0.7 <= got.high) held += 1
    }
    // standard error 0.004
    expectClose(held / 3000, 0.95, 0.015)
  })

  it('says nothing beyond the last bird watched, unless all are dead', () => {
    expect(livability([], 10)).toBeNull()
    expect(livability([{age: 5, died: false}], 10)).toBeNull()
    expect(livability([{age: 5, died: true}, {age: 7, died: false}], 10)).toBeNull()
    expect(live([{age: 5, died: true}], 10)).toMatchObject({share: 0, low: 0, effective: 1})
    expect(live([{age: 12, died: false}], 10)).toMatchObject({share: 1, high: 1, effective: 1})
  })
  it('gives the value of its example', () => {
    expect(live([{age: 20, died: true}, {age: 30, died: false}, {age: 140, died: false}, {age: 140, died: false}], 140)).toMatchObject({share: 0.75, n: 4, deaths: 1, left: 1})
  })
  it.each([0, -1, NaN])('refuses the age %f', age => expect(() => livability([], age)).toThrow(RangeError))
  it('refuses a bird of no age', () => expect(() => livability([{age: NaN, died: true}], 10)).toThrow(RangeError))
})
