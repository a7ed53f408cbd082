import {describe, expect, it} from 'vitest'
import {requiredGenes} from '../../src/findings/required-genes.ts'
import type {Requirement} from '../../src/logbook/book.ts'
import {bookOf} from '../logbook/around.ts'
import {LEGS} from './heredity-book.ts'

const NONE: Pick<Requirement, 'clauses' | 'varieties'> = {clauses: [], varieties: []}
const legs = (target: string) => LEGS.replace('loci: [Cp]\n', `target: ${target}\nrequired: yes\nloci: [Cp]\n`)
const CRINKLED = (target: string) => `---\nname: Feather\nstates: [bare frizzle, frizzle, smooth]\ntarget: ${target}\nrequired: yes\nloci: [F]\n---\n`
const of = (files: Readonly<Record<string, string>>, asked = NONE) => {
  const {harms, ...rest} = requiredGenes(asked, bookOf(files))
  return {...rest, withoutGenes: rest.withoutGenes.map(({id}) => id), harms: harms.map(({trait, sex, locus, allele, harm}) => `${trait.id} ${sex} ${locus.alleles[allele]} ${harm}`)}
}

describe('requiredGenes(requirement, book)', () => {
  it('finds a look that cannot be had without an allele that kills in two doses', () => {
    expect(of({'traits/legs.md': legs('creeper')}).harms).toEqual(['legs male Cp lethal', 'legs female Cp lethal'])
    expect(of({'traits/legs.md': legs('long')}).harms).toEqual([])
  })

  it('does not take for required what is merely allowed', () => {
    expect(of({'traits/legs.md': legs('[creeper, long]')}).harms).toEqual([])
    expect(of({'traits/legs.md': legs('{male: creeper, female: long}')}).harms).toEqual(['legs male Cp lethal'])
  })

  it('finds by the cautions of the reference what harms, with its words', () => {
    expect(of({'traits/feather.md': CRINKLED('frizzle')}).harms).toEqual(['feather male F welfare', 'feather female F welfare'])
    expect(requiredGenes(NONE, bookOf({'traits/feather.md': CRINKLED('frizzle')})).harms[0]?.says).toMatch(/brittle feathers/)
    expect(of({'traits/feather.md': CRINKLED('smooth')}).harms).toEqual([])
  })

  it('goes by mandatory clauses as well as by required traits, and by those named', () => {
    const loose = legs('long').replace('required: yes\n', ''), files = {'traits/legs.md': loose, 'standard/1.md': '---\ndraft: 1\non: 2024-01-01\ntitle: t\nclauses:\n  male/legs: {trait: legs, allows: creeper, mandatory: yes}\n---\n## Male\n\n**Legs.** Short.\n'}
    expect(of(files)).toMatchObject({looks: 2, harms: ['legs male Cp lethal']})
    expect(of({...files, 'standard/1.md': files['standard/1.md'].replace(', mandatory: yes', '')})).toMatchObject({looks: 1, harms: []})
    expect(of({...files, 'standard/1.md': files['standard/1.md'].replace(', mandatory: yes', '')}, {clauses: ['male/legs'], varieties: []}).harms).toEqual(['legs male Cp lethal'])
  })

  it('takes for required what it is serious or disqualifying to miss, though it is not marked mandatory', () => {
    const files = (missed: string) => ({'traits/legs.md': legs('long').replace('required: yes\n', ''), 'standard/1.md': `---\ndraft: 1\non: 2024-01-01\ntitle: t\nclauses:\n  male/legs: {trait: legs, allows: creeper${missed}}\n---\n## Male\n\n**Legs.** Short.\n`})
    expect(['', ', if-missed: minor', ', if-missed: serious', ', if-missed: disqualifying'].map(missed => of(files(missed)).harms.length)).toEqual([0, 0, 1, 1])
    // the clause named is counted once
    expect(of(files(', if-missed: serious'), {clauses: ['male/legs'], varieties: []})).toMatchObject({looks: 2, harms: ['legs male Cp lethal']})
  })

  it('counts looks of which no rule says what they come of', () => {
    // the comb of this book has no rules
    expect(of({})).toEqual({looks: 1, withoutGenes: ['comb'], untoldClauses: [], harms: []})
  })
})
