import {describe, expect, it} from 'vitest'
import {spreadOfSteps} from '../../src/statistics/relative-deviations.ts'
import {birdsToTellSpread} from '../../src/statistics/spread-to-tell.ts'
import {chanceOf} from '../bench/chance.ts'

describe('birdsToTellSpread(ratio)', () => {
  it('is the formula, worked by hand', () => {
    // z 1.95996 and 0.84162; ln 0.8 = −0.223144: (2.80158 / 0.223144)² = 157.63; ln ½ = −0.693147: 16.34
    expect(birdsToTellSpread(0.8)).toBe(158)
    expect(birdsToTellSpread(0.5)).toBe(17)
    // 90 times in a hundred: z 1.28155, (3.24152 / 0.223144)² = 211.02
    expect(birdsToTellSpread(0.8, {power: 0.9})).toBe(212)
  })

  it('asks as many of a ratio as of its inverse, and more the nearer it is to 1', () => {
    expect(birdsToTellSpread(1.25)).toBe(birdsToTellSpread(0.8))
    expect(birdsToTellSpread(0.9)).toBeGreaterThan(birdsToTellSpread(0.8))
  })

  it('is as many as let the test of our verdicts tell about three times in four: it asks for a little more than four in five', () => {
    const {normal} = chanceOf(20), birds = birdsToTellSpread(0.8) + 1, times = 400
    let told = 0
    for (let time = 0; time < times; time += 1) {
      const group = (cv: number) => [Array.from({length: birds}, () => 2000 * (1 + cv * normal()))]
      const found = spreadOfSteps([group(0.08), group(0.1)])
      if (found.kind === 'compared' && found.p <= 0.05) told += 1
    }
    // measured: 0.72 to 0.75 over five seeds of a thousand each
    expect(told / times).toBeGreaterThan(0.68)
    expect(told / times).toBeLessThan(0.84)
  })

  it('refuses what is no ratio', () => {
    for (const ratio of [0, 1, -0.5, NaN, Infinity]) expect(() => birdsToTellSpread(ratio)).toThrow(RangeError)
    expect(() => birdsToTellSpread(0.8, {power: 0.4})).toThrow(RangeError)
  })
})
