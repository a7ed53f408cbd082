import {describe, expect, it} from 'vitest'
import type {Locus} from '../../src/heredity/locus.ts'
import {locusGroups} from '../../src/findings/locus-groups.ts'
import type {BookLinkage} from '../../src/logbook/book.ts'
import {rule, trait} from '../pages/small-logbook.ts'

const locus = (symbol: string): Locus => ({symbol, on: 'autosome', alleles: [symbol, `${symbol.toLowerCase()}+`]})
const [R, P, W, O, Na] = ['R', 'P', 'W', 'O', 'Na'].map(locus) as [Locus, Locus, Locus, Locus, Locus]
const comb = trait('comb', 'Comb', {states: ['walnut', 'rose', 'pea', 'single'], loci: [R, P], shows: [rule({R: 'R/_', P: 'P/_'}, 'walnut', [R, P])]})
const skin = trait('skin', 'Skin', {states: ['white', 'yellow'], loci: [W], shows: [rule({W: 'W/_'}, 'white', [W])]})
const shell = trait('shell', 'Shell', {states: ['blue', 'white'], loci: [O], shows: [rule({O: 'O/_'}, 'blue', [O])]})
const neck = trait('neck', 'Neck', {states: ['bare', 'feathered'], loci: [Na]})
const linkage = (loci: readonly [Locus, Locus], recombination: number): BookLinkage => ({loci, recombination, doubt: null, from: 'project'})
const loci = (...all: Locus[]) => new Map(all.map(each => [each.symbol, {locus: each, known: null}] as const))

const groupsOf = (linkages: readonly BookLinkage[]) => locusGroups({traits: [comb, skin, shell, neck], loci: loci(R, P, W, O, Na), linkages})
  .map(group => ({loci: group.loci.map(({symbol}) => symbol).join(' '), traits: group.traits.map(({id}) => id).join(' '), linkages: group.linkages}))

describe('locusGroups(book)', () => {
  it('works together the loci that one trait rests on; a trait without rules tells of nothing', () => {
    expect(groupsOf([])).toEqual([
      {loci: 'R P', traits: 'comb', linkages: []}, {loci: 'W', traits: 'skin', linkages: []}, {loci: 'O', traits: 'shell', linkages: []}, {loci: 'Na', traits: '', linkages: []},
    ])
  })
  it('and those that lie near each other, the linkage by their places in the group', () => {
    expect(groupsOf([linkage([O, P], 0.04)])[0]).toEqual({loci: 'R P O', traits: 'comb shell', linkages: [{loci: [2, 1], recombination: 0.04}]})
  })
  it('a half of crossing over is none', () => expect(groupsOf([linkage([O, P], 0.5)])).toEqual(groupsOf([])))
  it('of a book without loci are none', () => expect(locusGroups({traits: [], loci: new Map(), linkages: []})).toEqual([]))
})
