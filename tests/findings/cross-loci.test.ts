import {describe, expect, it} from 'vitest'
import {crossLoci} from '../../src/findings/cross-loci.ts'
import type {LocusGroup} from '../../src/findings/locus-groups.ts'
import type {Locus} from '../../src/heredity/locus.ts'
import {rule, trait} from '../pages/small-logbook.ts'

const locus = (symbol: string): Locus => ({symbol, on: 'autosome', alleles: [symbol, `${symbol.toLowerCase()}+`]})
const [A, B, C, D] = [locus('A'), locus('B'), locus('C'), locus('D')] as const
const look = (id: string, of: Locus) => trait(id, id, {states: ['x', 'y'], loci: [of], shows: [rule({[of.symbol]: `${of.symbol}/_`}, 'x', [of]), rule({}, 'y', [of])]})
const deadly = (id: string, kills: Readonly<Record<string, string>>, ...of: Locus[]) => trait(id, id, {states: ['x', 'y'], loci: of, shows: [rule(kills, 'lethal', of), rule({}, 'x', of)]})
const a = look('a', A)
const told = (group: LocusGroup) => crossLoci(a, group).loci.slice(0, crossLoci(a, group).told).map(({symbol}) => symbol).join(' ')

describe('crossLoci(trait, group)', () => {
  it('is the trait’s own loci where nothing kills', () => {
    expect(crossLoci(a, {traits: [a, look('b', B)], loci: [B, A], linkages: [{loci: [0, 1], recombination: 0.1}]})).toEqual({loci: [A], told: 1, linkages: [], lethal: []})
  })
  it('takes in what kills when it is linked to them, and nothing that goes its own way', () => {
    const traits = [a, deadly('c', {C: 'C/C'}, C)]
    expect(told({traits, loci: [A, C], linkages: []})).toBe('A')
    expect(told({traits, loci: [A, C], linkages: [{loci: [0, 1], recombination: 0.2}]})).toBe('A C')
  })
  it('takes of a lethal rule the loci it asks of, and not those its trait names besides', () => {
    const {loci, lethal} = crossLoci(a, {traits: [a, deadly('ab', {A: 'A/A'}, A, B)], loci: [A, B], linkages: []})
    expect(loci).toEqual([A])
    expect(lethal).toMatchObject([{loci: [0], rules: [{is: 'lethal'}]}])
  })
  it('goes on from what kills to what is tied to that', () => {
    expect(told({traits: [a, deadly('ab', {A: 'A/A', B: 'B/B'}, A, B), deadly('bd', {B: 'B/_', D: 'D/D'}, B, D)], loci: [A, B, D], linkages: []})).toBe('A B D')
  })
  it('keeps a locus that lies between, for the distance alone', () => {
    const group: LocusGroup = {traits: [a, deadly('c', {C: 'C/C'}, C)], loci: [A, B, C], linkages: [{loci: [0, 1], recombination: 0.1}, {loci: [1, 2], recombination: 0.2}]}
    const {loci, told: count, linkages} = crossLoci(a, group)
    expect([loci.map(({symbol}) => symbol), count]).toEqual([['A', 'C', 'B'], 2])
    expect(linkages).toEqual([{loci: [0, 2], recombination: 0.1}, {loci: [2, 1], recombination: 0.2}])
  })
})
