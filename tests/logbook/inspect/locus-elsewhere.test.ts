import {describe, expect, it} from 'vitest'
import {around, inspectFiles, type Files} from '../around.ts'

const ground = (loci: string) => `---\nname: Ground\nstates: [silver, gold]\nloci: ${loci}\nshows:\n  - {S: S/_, is: silver}\n  - {S: _/_, is: gold}\n---\n`
const found = (files: Files) => inspectFiles(around(files)).problems.map(({code, place, reason}) => `${place.file}:${place.start.line} ${code}: ${reason}`)
const SAYS = 'S is said to lie on an autosome, and by the reference it lies on the Z'

describe('a locus on another place than the reference has it', () => {
  it('is named in the trait', () => expect(found({'traits/ground.md': ground('{S: {on: autosome}}')})).toEqual([`traits/ground.md:4 locus-elsewhere: ${SAYS}`]))
  it('is named in the project’s own record', () => expect(found({'traits/ground.md': ground('[S]'), 'loci/S.md': '---\nname: Silver\non: autosome\nalleles: [S, s+]\n---\n'})).toEqual([`loci/S.md:3 locus-elsewhere: ${SAYS}`]))
  it('is nothing where they agree, or the reference has no such locus', () => expect(found({'traits/ground.md': ground('{S: {on: Z}}'), 'traits/skin.md': '---\nname: Skin\nstates: [white, yellow]\nloci:\n  Qx: {on: Z, alleles: [Q, q]}\nshows:\n  - {Qx: Q/_, is: white}\n  - {Qx: _/_, is: yellow}\n---\n'})).toEqual([]))
})
