import {describe, expect, it} from 'vitest'
import type {KinReason} from '../../src/findings/kin-reason.ts'
import {study} from '../../src/findings/study.ts'
import {kinReasonWords} from '../../src/pages/kin-reason-words.ts'
import {halfSibs} from '../findings/kin-book.ts'
import {bird} from './small-logbook.ts'

const sire = bird('24-003', 'male'), dam = bird('24-017', 'female'), cock = bird('22-005', 'male'), hen = bird('22-008', 'female')
const reason = (more: Partial<KinReason>): KinReason => ({kind: 'pair', sire, dam, chance: 1, pairs: 1, alike: 1, f: 0.125, parts: [], others: {count: 0, share: 0}, fromStrains: 0, founders: null, ...more})
const part = (of: typeof cock | null, share: number, fromSire: number, fromDam: number): KinReason['parts'][number] => ({bird: of, share, up: {fromSire, fromDam}})
const said = (more: Partial<KinReason>, sex: 'male' | 'female' | 'unknown' = 'male'): string => kinReasonWords({sex}, reason(more))

describe('kinReasonWords(bird, reason)', () => {
  it('names the shared parent and what it alone gives, and what gives the rest', () => {
    expect(said({f: 0.14, parts: [part(cock, 0.125, 1, 1), part(hen, 0.01, 2, 2)], fromStrains: 0.005})).toBe(
      'His sire 24-003 and his dam 24-017 are both chicks of 22-005: that alone gives 12.5 of the 14.0%; the rest comes by 22-008, granddam of both (1.0) and the kinship stated of the founders (0.5).')
  })
  it('tells both parents of full sibs together', () => {
    expect(said({f: 0.25, parts: [part(cock, 0.125, 1, 1), part(hen, 0.125, 1, 1)]}, 'female')).toBe('Her sire 24-003 and her dam 24-017 are both chicks of 22-005 and 22-008: that gives all of the 25.0%.')
  })
  it('tells of a parent that is an ancestor of the other', () => {
    expect(said({f: 0.25, parts: [part(sire, 0.25, 0, 1)]})).toBe('His sire 24-003 is also sire of his dam 24-017: that gives all of the 25.0%.')
    expect(said({parts: [part(dam, 0.125, 2, 0)]}, 'unknown')).toBe('Its dam 24-017 is also granddam of its sire 24-003: that gives all of the 12.5%.')
  })
  it('tells how far up an ancestor stands on either side', () => {
    expect(said({f: 0.0625, parts: [part(cock, 0.0625, 1, 3)]})).toBe('22-005 is sire of his sire 24-003 and great-grandsire of his dam 24-017: that gives all of the 6.3%.')
    expect(said({f: 0.02, parts: [part(null, 0.02, 5, 2)]})).toBe('A hen not recorded is ancestor in generation 5 of his sire 24-003 and granddam of his dam 24-017: that gives all of the 2.0%.')
  })
  it('tells of the likeliest pair where parents are in doubt', () => {
    expect(said({pairs: 6, chance: 0.4, parts: [part(cock, 0.1, 2, 1)], others: {count: 3, share: 0.025}})).toBe(
      'If his sire is 24-003 and his dam 24-017, the likeliest of 6 pairs (40.0%), 22-005 is grandsire of the sire and sire of the dam: that alone gives 10.0 of the 12.5%; the rest comes by three more ancestors (2.5).')
  })
  it('calls no pair the likeliest where several are alike', () => {
    expect(said({pairs: 6, alike: 6, chance: 1 / 6, parts: [part(cock, 0.125, 2, 1)]})).toMatch(/^If his sire is 24-003 and his dam 24-017, one of 6 pairs alike \(16\.7% each\), 22-005 is/)
    expect(said({pairs: 3, alike: 2, chance: 0.4, parts: [part(cock, 0.125, 2, 1)]})).toContain('one of the 2 likeliest of 3 pairs (40.0% each)')
    expect(said({pairs: 2, alike: 2, chance: 0.5, f: 0})).toBe('24-003 and 24-017, one of 2 pairs alike (50.0% each), share no ancestor in the book.')
  })
  it('names the founders who are kin where their kinship gives most', () => {
    const founders = {birds: [bird('H22-05', 'male'), bird('H22-08', 'female')], kinship: 0.25, flock: 'east-shore', part: 0.8} as const
    expect(said({f: 0.097, fromStrains: 0.082, founders, parts: [part(cock, 0.015, 2, 2)]})).toBe(
      '8.2 of the 9.7% is the kinship stated of the founders: most of it H22-05 and H22-08, both of the flock east-shore, kinship 25.0%. 22-005 is grandsire of both his sire 24-003 and his dam 24-017 (1.5).')
    expect(said({f: 0.25, fromStrains: 0.25, founders: {...founders, part: 1, flock: null}})).toMatch(/; the 25\.0% is the kinship stated of the founders: H22-05 and H22-08, kinship 25\.0%\.$/)
  })
  it('says when nothing is shared, and what the strains give', () => {
    expect(said({f: 0})).toBe('His sire 24-003 and his dam 24-017 share no ancestor in the book.')
    expect(said({f: 0.03, fromStrains: 0.03})).toBe('His sire 24-003 and his dam 24-017 share no ancestor in the book; the 3.0% is the kinship stated of the founders.')
  })
  it('has nothing to tell of founders, and says what cannot be named', () => {
    const book = halfSibs(), {kinReason} = study(book)
    const words = (id: string): string => kinReasonWords(book.named(id), kinReason(book.named(id)))
    expect([words('22-005'), words('24-004')]).toEqual(['', 'A parent is not in the book, so no ancestor that sire and dam share can be named.'])
    expect(words('24-003')).toBe('Its sire 22-005 is also sire of its dam 23-017: that gives all of the 25.0%.')
  })
})
