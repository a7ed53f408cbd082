import {describe, expect, it} from 'vitest'
import {riseInside, type RiseInside} from '../../src/findings/rise-inside.ts'
import type {Findings} from '../../src/findings/study.ts'
import {heredityBook} from './heredity-book.ts'

const FILES = {'birds/A.md': '---\nband: A\nsex: male\nstrain: fell-buff\n---\n'}
const START = ['A male - -', 'B female - -', 'h male - -', 'i male - -']
const riseOf = ({ladder, kinship, pedigree}: Findings): RiseInside | null => riseInside(ladder, kinship, pedigree)
const rise = (...lines: readonly string[]): RiseInside | null => riseOf(heredityBook([...START, ...lines], undefined, FILES).findings)
const near = (value: number): number => expect.closeTo(value, 9) as number
/** F1, two backcrosses to cocks that are no kin, and brother with sister twice. */
const CLOSED = ['f female A B', 'g female h f', 'x male i g', 'y female i g', 'q male x y', 'r female x y', 's male q r', 't female q r']

describe('riseInside(ladder, kinship, pedigree)', () => {
  it('counts the latest rise from the step before, and the average from the closing of the line', () => {
    // by hand (Wright 1921, brother with sister): F 0, ¼, ⅜; kinship of two ¼, ⅜, ½
    expect(rise(...CLOSED)).toMatchObject({
      step: 'BC2F3', since: 'BC2F2', closing: 'BC2', generations: 2, birds: 2, families: 1, atLeast: 0,
      inbreeding: {before: 0.25, now: 0.375, latest: {value: near(1 / 6), interval: null}, average: {value: near(1 - Math.sqrt(5 / 8)), interval: null}},
      kinship: {before: 0.375, now: 0.5, latest: {value: near(1 / 5)}, average: {value: near(1 - Math.sqrt((1 / 2) / (3 / 4)))}},
    })
  })

  it('takes the first generation inside from the closing itself', () => {
    expect(rise(...CLOSED.slice(0, 6))).toMatchObject({since: 'BC2', closing: 'BC2', generations: 1, inbreeding: {latest: {value: near(1 / 4)}, average: {value: near(1 / 4)}}})
  })

  it('counts from the F that birds had when the line was closed', () => {
    // by hand: y again to his own sire i: F of BC3 ¼ (kinship of i with his daughter); brother with sister of i × y: (½ + 2·¼ + ½)/4 = ⅜
    const found = rise('f female A B', 'g female h f', 'y female i g', 'x male i y', 'z female i y', 'q male x z')
    expect(found).toMatchObject({closing: 'BC3', generations: 1, inbreeding: {before: near(1 / 4), now: near(3 / 8), latest: {value: near(1 / 6)}, average: {value: near(1 / 6)}}})
  })

  it('knows no kinship of two where there is one, and nothing before a mating inside', () => {
    expect(rise(...CLOSED.slice(0, 5))?.kinship).toBeNull()
    expect(rise(...CLOSED.slice(0, 4))).toBeNull()
    expect(rise()).toBeNull()
  })

  it('gives the latest of five families or more its interval, about the figure', () => {
    const found = rise('f female A B', 'g female h f', ...[1, 2, 3, 4, 5].flatMap(place => [`x${place} male i g`, `y${place} female i g`]), 'z1 female h f', 'z2 male i z1', 'z3 female i z1',
      ...[['x1', 'y1'], ['x2', 'y2'], ['x3', 'y3'], ['x4', 'z3'], ['x5', 'z3']].flatMap(([sire = '', dam = '']) => [`${sire}a male ${sire} ${dam}`, `${sire}b female ${sire} ${dam}`]))
    for (const each of [found?.inbreeding.latest, found?.inbreeding.average, found?.kinship?.latest, found?.kinship?.average]) {
      expect(each?.interval?.low).toBeLessThan(each?.value ?? NaN)
      expect(each?.interval?.high).toBeGreaterThan(each?.value ?? NaN)
    }
  })
})
