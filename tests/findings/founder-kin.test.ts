import {describe, expect, it} from 'vitest'
import {founderKin} from '../../src/findings/founder-kin.ts'
import {study} from '../../src/findings/study.ts'
import {buff, chick} from './kin-book.ts'
import {bird, logbook} from '../pages/small-logbook.ts'

const flock = {name: 'east-shore', kinship: 0.25}
const one = bird('H-1', 'male', {flock}), other = bird('H-2', 'male', {flock}), hen = buff('B-1', 'female'), second = buff('B-2', 'female')
const son = chick('23-1', 'male', [[one, hen]]), daughter = chick('23-2', 'female', [[other, second]])
const {pedigree, kinship, kinReason, book} = study(logbook('2025-10-30', {birds: [one, other, hen, second, son, daughter, chick('24-1', 'male', [[son, daughter]])]}))

describe('founderKin(pedigree, kinship)', () => {
  const of = founderKin(pedigree, kinship)
  it('names the two founders that are kin, and their flock', () => expect(of(son, daughter)).toEqual({birds: [one, other], kinship: 0.25, flock: 'east-shore', part: 1}))
  it('is nothing where no founders are kin', () => expect(of(son, second)).toBe(null))
  it('stands in the reason where no ancestor gives more', () => {
    const found = kinReason(book.birds[6] ?? one)
    expect(found.kind === 'pair' ? [found.f, found.fromStrains, found.founders?.birds.map(({band}) => band)] : []).toEqual([0.0625, 0.0625, ['H-1', 'H-2']])
  })
})
