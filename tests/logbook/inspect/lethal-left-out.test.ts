import {describe, expect, it} from 'vitest'
import {around, inspectFiles, type Files} from '../around.ts'

const legs = (loci: string, ...rules: readonly string[]) => ['---', 'name: Legs', 'states: [short, long]', `loci: ${loci}`, ...(rules.length > 0 ? ['shows:', ...rules.map(rule => `  - {${rule}}`)] : []), '---', ''].join('\n')
const OWN = ['Cp: Cp/cp+, is: short', 'Cp: _/_, is: long'], LETHAL = 'Cp: Cp/Cp, is: lethal'
const found = (files: Files) => inspectFiles(around(files)).problems.filter(({code}) => code === 'lethal-left-out').map(({place, reason, remedy}) => [place.file, place.start.line, reason, remedy])

describe('a lethal genotype of the reference that no rule speaks of', () => {
  it('is named at the rules, with the line to add', () => expect(found({'traits/legs.md': legs('[Cp]', ...OWN)})).toEqual([
    ['traits/legs.md', 5, 'by the reference no chick of Cp/Cp hatches, and the rules of legs do not say so, so that eggs lost to it are not foretold', 'add {Cp: Cp/Cp, is: lethal} to the rules'],
  ]))
  it('is none where the rules have it, those of the reference hold, or another trait says so', () => {
    expect(found({'traits/legs.md': legs('[Cp]', ...OWN, LETHAL)})).toEqual([])
    expect(found({'traits/legs.md': legs('[Cp]')})).toEqual([])
    expect(found({'traits/legs.md': legs('[Cp]', ...OWN), 'traits/gait.md': legs('[Cp]', LETHAL, ...OWN)})).toEqual([])
  })
  it('is none where the alleles of the locus are others', () => expect(found({'traits/legs.md': legs('{Cp: {on: autosome, alleles: [L, l+]}}', 'Cp: L/_, is: short', 'Cp: _/_, is: long')})).toEqual([]))
  it('is none where the project’s own record of the locus says otherwise', () => {
    const record = '---\nname: Creeper\non: autosome\nalleles: [Cp, cp+]\nlooks:\n  - shows:\n      - {Cp: Cp/_, is: short}\n      - {Cp: cp+/cp+, is: long}\n---\n'
    expect(found({'traits/legs.md': legs('[Cp]', ...OWN), 'loci/Cp.md': record})).toEqual([])
  })
})
