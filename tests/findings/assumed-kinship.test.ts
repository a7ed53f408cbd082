import {describe, expect, it} from 'vitest'
import {assumedKinship} from '../../src/findings/assumed-kinship.ts'
import {pedigreeOfBook} from '../../src/findings/pedigree-of-book.ts'
import {bird, holm, logbook, project} from '../pages/small-logbook.ts'
import {expectClose} from '../expect-close.ts'
import {chick} from './kin-book.ts'

describe('assumedKinship(book, birds)', () => {
  const old = {...holm, inbreeding: 0.04, kinship: 0.03}
  const cock = bird('1', 'male', {strain: old}), hen = bird('2', 'female', {strain: old}), flocked = bird('3', 'female', {strain: old, flock: {name: 'one', kinship: 0.06}}), with_ = bird('4', 'male', {strain: old, flock: {name: 'one', kinship: 0.06}})
  const young = chick('5', 'male', [[cock, hen]]), kin = chick('6', 'male', [[with_, flocked]])
  const book = logbook('2025-10-30', {strains: [old], birds: [cock, hen, flocked, with_, young, kin], project: {...project, recurrent: old, donors: []}})
  const pedigree = pedigreeOfBook(book)

  it('a chick of two founders has what is assumed of them', () => {
    expect(assumedKinship(book, [young], pedigree)?.at.map(({kinship, stated}) => [kinship, stated])).toEqual([[0, false], [0.03, true], [0.05, false], [0.1, false]])
    for (const {kinship, mean} of assumedKinship(book, [young], pedigree)?.at ?? []) expectClose(mean, kinship, 1e-12)
  })

  it('leaves a flock the kinship that it states itself, where it is more', () => {
    expect(assumedKinship(book, [kin], pedigree)?.at.map(({mean}) => Math.round(mean * 1e9) / 1e9)).toEqual([0.06, 0.06, 0.06, 0.1])
  })

  it('leaves out what kinships stated of single birds leave no room for', () => {
    // by hand: 0.52 − 2 · 0.37²/0.52 is below 0, and with 0.03 in common to all 0.49 − 2 · 0.34²/0.49 is above
    const first = bird('9', 'male', {strain: old}), near = bird('7', 'male', {strain: old}), third = bird('8', 'male', {strain: old}), kin = [{with: third, kinship: 0.37}]
    for (const each of [first, near]) Object.assign(each, {kin})
    const tight = logbook('2025-10-30', {strains: [old], birds: [first, near, third, young, cock, hen], project: {...project, recurrent: old}})
    expect(assumedKinship(tight, [young], pedigreeOfBook(tight))?.at.map(({kinship}) => kinship)).toEqual([0.03, 0.05, 0.1])
  })

  it('throws what is a slip of ours: kinship stated of a bird that has parents', () => {
    const claimed = bird('9', 'male', {strain: old}), his = chick('5', 'male', [[claimed, hen]])
    Object.assign(claimed, {kin: [{with: his, kinship: 0.1}]})
    const wrong = logbook('2025-10-30', {strains: [old], birds: [claimed, hen, his], project: {...project, recurrent: old}})
    expect(() => assumedKinship(wrong, [hen], pedigreeOfBook(wrong))).toThrow('not both founders')
  })

  it('has nothing to say without a strain or birds', () => {
    expect(assumedKinship(book, [], pedigree)).toBe(null)
    expect(assumedKinship({...book, project: {...project, recurrent: null}}, [young], pedigree)).toBe(null)
  })
})
