import {describe, expect, it} from 'vitest'
import {trueForBehind} from '../../src/findings/true-for-behind.ts'
import {heredityBook} from './heredity-book.ts'

const strain = (name: string, more: string) => ({[`strains/${name}.md`]: `---\nname: ${name}\nrole: donor\n${more}\n---\n`})

function behind(scored: string, files: Readonly<Record<string, string>>) {
  const {book, bird} = heredityBook(['B female - -', 'c male A B'], undefined, {'birds/A.md': '---\nband: A\nsex: male\nstrain: fell-buff\n---\n', ...files}), trait = book.traits.find(({id}) => id === 'comb') ?? expect.fail('no comb')
  return trueForBehind(bird('c'), trait, scored).map(({strain: {name}, state}) => `${name} ${state}`)
}

describe('trueForBehind(chick, trait, scored)', () => {
  it('names the strain that is said to be without what the look needs', () => {
    expect(behind('single', strain('fell-buff', 'true-for: {comb: pea}'))).toEqual(['fell-buff pea'])
    expect(behind('pea', strain('fell-buff', 'true-for: {comb: single}'))).toEqual(['fell-buff single'])
  })

  it('is silent where the alleles are stated, or the strain breeds true for the look itself', () => {
    expect(behind('single', strain('fell-buff', 'true-for: {comb: pea}\nalleles: {P: {P: 100%}}'))).toEqual([])
    expect(behind('pea', strain('fell-buff', 'true-for: {comb: pea}'))).toEqual([])
  })
})
