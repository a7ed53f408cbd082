import fc from 'fast-check'
import {describe, it} from 'vitest'
import {coancestry} from '../../src/pedigree/coancestry.ts'
import type {Pedigree} from '../../src/pedigree/pedigree.ts'
import {expectClose} from '../expect-close.ts'
import {geneDrop} from './gene-drop.ts'
import {anyPedigree, written} from './pedigrees.ts'

const DROPS = 20_000

/** No bases and no stated kin: those are not let fall. */
const alone = ({animals}: Pedigree): Pedigree => ({animals: animals.map(animal => ({...animal, base: null, outside: {sire: null, dam: null}})), bases: [], kin: []})

/** Five standard errors of a share of 20,000 drops: binomial, or less where a drop counts in quarters. A share of 0 or 1 must be met exactly. */
const tolerance = (share: number): number => 5 * Math.sqrt(Math.max(0, share * (1 - share)) / DROPS) + 1e-12

const pedigrees: Readonly<Record<string, Pedigree>> = {
  // source: Falconer & Mackay 1996, p. 84, Fig. 5.1
  'eighteen animals': written('A - -\nB - -\nC - -\nG - -\nH - -\nI - -\nO - -\nD A B\nE A B\nF C B\nJ E F\nK G F\nL H D\nM I J\nN K J\nP L M\nQ N O\nX P Q').pedigree,
  'two sexes': written('1♀ - -\n2♂ - -\n3♀ 2 1\n4♂ 2 1\n5♂ - -\n6♀ - -\n7♂ 5 3\n8♀ 4 6\n10♂ 7 8').pedigree,
  ...Object.fromEntries(fc.sample(anyPedigree(14), {seed: 4, numRuns: 6}).map((pedigree, index) => [`any flock ${index + 1}`, alone(pedigree)])),
}

describe('coancestry(pedigree): genes let fall 20,000 times', () => {
  it.each(Object.keys(pedigrees).flatMap(name => [[name, 'autosome'], [name, 'Z']] as const))('%s, %s', (name, transmission) => {
    const pedigree = pedigrees[name] ?? {animals: [], bases: [], kin: []}
    const dropped = geneDrop(pedigree, {transmission, drops: DROPS, seed: 20})
    const {inbreeding, between, self} = coancestry(pedigree, transmission)
    for (let a = 0; a < pedigree.animals.length; a++) {
      const f = inbreeding[a]?.mean ?? NaN
      expectClose(dropped.inbreeding(a), f, tolerance(f), `F of ${a}`)
      // what a bird's draw with itself gives lies between ½ and 1 in every drop
      expectClose(dropped.kinship(a, a), self(a), tolerance(self(a)), `${a} with itself`)
      for (let b = 0; b < a; b++) expectClose(dropped.kinship(a, b), between(a, b), tolerance(between(a, b)), `${a} with ${b}`)
    }
  })
})
