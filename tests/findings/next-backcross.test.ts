import {describe, expect, it} from 'vitest'
import type {nextBackcross, NextBackcross} from '../../src/findings/next-backcross.ts'
import {study} from '../../src/findings/study.ts'
import type {Logbook} from '../../src/logbook/book.ts'
import {expectClose} from '../expect-close.ts'
import {bird, comb, F1, F2, fell, holm, logbook, looks, project, score, smallBook, weekOld} from '../pages/small-logbook.ts'
import {BC1, buff, chick} from './kin-book.ts'

const asked = (book: Logbook): ReturnType<typeof nextBackcross> => study(book).nextBackcross
function told(book: Logbook): NextBackcross {
  const found = asked(book)
  if (found.kind !== 'prospects') throw new Error(found.why)
  return found
}

/** H-1 × B-1 → F1; H-1 and H-3 are of the strain. BC1 of H-3: a cock with the comb and a hen without. */
function backcrossed(): Logbook {
  const cock = bird('H-1', 'male'), second = bird('H-3', 'male'), hen = buff('B-1', 'female')
  const daughter = chick('D', 'female', [[cock, hen]], {step: F1})
  const pea = looks(score(comb, 'pea')), single = looks(score(comb, 'single'))
  const one = chick('K', 'male', [[second, daughter]], {step: BC1, looks: pea}), two = chick('L', 'female', [[second, daughter]], {step: BC1, looks: single})
  return logbook('2025-01-01', {project: {...project, ladder: ['F1', 'BC1']}, birds: [cock, second, hen, daughter, one, two]})
}

describe('nextBackcross(book)', () => {
  it('gives share, F and H of a further backcross and of an inter se mating (BC2 87.5 %, H ¼; full sibs F ¼, share as it is)', () => {
    const {now, interSe, backcross, step, of, birds} = told(backcrossed())
    expect([step, of, birds.map(each => each.id)]).toEqual(['BC1', 'living', ['K', 'L']])
    expectClose(now.share, 0.75, 1e-12)
    expectClose(backcross.share, 0.875, 1e-12)
    expectClose(interSe?.share ?? NaN, 0.75, 1e-12)
    expectClose(backcross.heterozygosity, 0.25, 1e-12)
    expectClose(backcross.f, 0, 1e-12)
    expectClose(interSe?.f ?? NaN, 0.25, 1e-12)
    expect(backcross.spread).toBeGreaterThan(0)
  })
  it('counts the strain’s birds that live here: H-3 with his own daughter gives ¼, H-1 with his granddaughter ⅛', () => {
    const {withLiving} = told(backcrossed())
    expect(withLiving?.birds).toBe(2)
    expectClose(withLiving?.f ?? NaN, (0.25 + 0.125) / 2, 1e-12)
  })
  it('sets the look now beside the latest backcross', () => {
    expect(told(backcrossed()).looks).toMatchObject([{trait: comb, now: {count: 1, total: 2}, atBackcross: {step: 'BC1', share: {count: 1, total: 2}}, ofStrain: null}])
    const noBackcross = told(smallBook()).looks[0]
    expect(noBackcross?.atBackcross).toBeNull()
    expect(noBackcross?.now).toMatchObject({kind: 'share', total: 6})
  })
  it('gives what is left around a donor gene: (1 − e^(−½n))/n on either side (Hanson 1959; 2 × 0.3935 after one, 2 × 0.3161 after two)', () => {
    const {segment} = told(backcrossed())
    expectClose(segment?.now ?? NaN, 0.786939, 1e-6)
    expectClose(segment?.next ?? NaN, 0.632121, 1e-6)
    expect(told(smallBook()).segment).toMatchObject({backcrosses: 0, now: 1})
  })
  it('says why it cannot be told', () => {
    expect(asked(weekOld())).toEqual({kind: 'cannot-say', why: 'no-step'})
    const book = backcrossed()
    expect(asked({...book, project: {...book.project, recurrent: null}})).toEqual({kind: 'cannot-say', why: 'no-recurrent-strain'})
    const gone = book.birds.map(each => (each.step === BC1 ? {...each, left: {on: null, how: 'sold', why: null} as const} : each))
    expect(asked({...book, birds: gone})).toEqual({kind: 'cannot-say', why: 'no-birds'})
    const cocks = logbook('2025-01-01', {birds: [bird('H-1', 'male'), buff('B-1', 'female')].flatMap((each, index, [a, b]) => (index === 0 ? [each] : [each, chick('C', 'male', [[a ?? null, b ?? null]], {step: F2})]))})
    expect(told(cocks).interSe).toBeNull()
    expect([holm.id, fell.id]).toContain(told(cocks).to.id)
  })
})
