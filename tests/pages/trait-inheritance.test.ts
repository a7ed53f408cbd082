import {describe, expect, it} from 'vitest'
import {inheritanceOf, type Inheritance} from '../../src/pages/trait-inheritance.ts'
import {bookOf, type Files} from '../logbook/around.ts'
import {comb, logbook, trait} from './small-logbook.ts'

const record = (states: string, ...lines: string[]) => `${['---', 'name: X', `states: [${states}]`, ...lines, '---'].join('\n')}\n`

function shown(id: string, files: Files): Inheritance {
  const book = bookOf(files)
  const found = book.traits.find(one => one.id === id)
  if (!found) throw new Error(id)
  return inheritanceOf(found, book)
}

describe('how a trait is inherited', () => {
  it('is told as the keeper records it, and no more where nothing more is known', () => {
    expect(inheritanceOf(comb, logbook('2025-10-30'))).toEqual({
      words: ['One locus on record: P, on an ordinary chromosome, the same in both sexes; alleles P and p+.', 'Read from above, the first line that fits holds; _ stands for any allele.'],
      shows: {caption: 'What each genotype shows', columns: [{head: 'P'}, {head: 'Shows'}], rows: [['P/_', 'pea'], ['p+/p+', 'single']]}, misscoring: null, known: [],
    })
    expect(inheritanceOf(trait('vigour', 'Vigour'), logbook('2025-10-30')).words).toEqual(['No locus is recorded for it: what is inherited and how is left open here.'])
  })

  it('says whose the rules are, what never hatches, and which sex and share a line is for', () => {
    const legs = shown('legs', {'traits/legs.md': record('short, long', 'loci: [Cp]')})
    expect([legs.words.at(-1), legs.shows?.rows[0]]).toEqual(['Read from above, the first line that fits holds; _ stands for any allele. The lines are those of the reference of chicken loci.', ['Cp/Cp', 'never hatches']])
    const ground = shown('ground', {'traits/ground.md': record('silver, brassy, gold', 'loci: [S]', 'shows:', '  - {S: S/s+, sex: male, is: brassy, penetrance: 60%}', '  - {S: S/_, is: silver}', '  - {S: s+/_, is: gold}')})
    expect(ground.shows?.rows[0]).toEqual(['S/s+ (males)', 'brassy', '60.0%'])
    expect(ground.words.at(-1)).toBe('Read from above, the first line that fits holds; _ stands for any allele, and for the one that a hen does not have. A share at the end of a line says how many of such birds show it; of the rest the next line that fits holds.')
  })

  it('warns of the gravest first, corrects what is often heard, and keeps the doubts and sources', () => {
    const [creeper] = shown('legs', {'traits/legs.md': record('short, long', 'loci: [Cp]')}).known
    expect(creeper?.head).toBe('Cp, creeper, short legs')
    expect(creeper?.cautions.map(({head}) => head)).toEqual(['Chicks that never hatch', 'The bird’s good'])
    expect(creeper?.beliefs.map(({heard}) => heard)).toEqual(['Short-legged birds can be bred pure.'])
    const [lavender] = shown('grey', {'traits/grey.md': record('lavender, not lavender', 'loci: [Lav]')}).known
    expect([lavender?.doubts.length, lavender?.words]).toEqual([1, ['Dominance: recessive.', 'Chromosome 7: MLPH, one letter changed.', 'Told by Vaez and others 2008.', 'In the catalogue of inherited traits of animals: OMIA 001445-9031.', 'From the reference of chicken loci that comes with these pages.']])
    const [tardy] = shown('back', {'traits/back.md': record('feathered, bare-backed', 'loci: [T]')}).known
    expect(tardy?.words).toContain('Told by no source at hand (from memory).')
  })

  it('says once what holds of two of its loci', () => {
    const {known} = shown('head', {'traits/head.md': record('walnut, rose, pea, single', 'loci: [R, P]')})
    const heard = known.flatMap(({beliefs}) => beliefs.map(belief => belief.heard))
    expect([known.length, new Set(heard).size]).toEqual([2, heard.length])
  })

  it('tells how near its loci lie to others, and what is doubtful in that', () => {
    const {words} = shown('head', {'traits/head.md': record('pea, single', 'loci: [P]'), 'traits/egg.md': record('blue, not blue', 'loci: [O]', 'seen-in: female')})
    expect(words[1]).toMatch(/^P and O lie near each other: 4\.3% of gametes cross over between them\. About 4 to 5% in a table kept by hobbyists;/)
    const z = shown('ground', {'traits/ground.md': record('silver, gold', 'loci: [S]'), 'traits/wing.md': record('fast, late', 'loci: [K]')})
    expect(z.words[1]).toBe('S and K lie near each other: 2.4% of a cock’s gametes cross over between them, and none of a hen’s, who hands on her Z as it is.')
  })
})
