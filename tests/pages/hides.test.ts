import {describe, expect, it} from 'vitest'
import {birdHides} from '../../src/pages/bird-hides.ts'
import {GROUND, heredityBook} from '../findings/heredity-book.ts'

const SKIN = '---\nname: Skin\nstates: [white, yellow]\ntarget: white\nrequired: yes\nloci:\n  W: {on: autosome, alleles: [W+, w]}\nshows:\n  - {W: W+/_, is: white}\n  - {W: _/_, is: yellow}\n---\n'

/** What the page says of one bird at the comb alone. */
function hides(band: string, lines: readonly string[], alleles?: string, files = {}) {
  const {findings, bird} = heredityBook(lines, alleles, files), found = birdHides(bird(band), findings)
  return found && [...found.lines.map(({head, chances, why}) => `${head} ${chances}: ${why}`), ...(found.certain === '' ? [] : [`nothing at ${found.certain}`]), found.how]
}

describe('birdHides(bird, findings)', () => {
  it('gives every genotype with its chance, and clean chicks of a mate that would tell as the reason', () => {
    // by hand: ⅔ before; five clean chicks by a single-combed cock leave 2/(2 + 2⁵) = 1/17
    const chicks = [1, 2, 3, 4, 5].map(number => `c${number} male S h comb=pea`)
    expect(hides('h', ['A male - - tested={P:~P/p+}', 'B female - - tested={P:~P/p+}', 'S male - - comb=single', 'h female A B comb=pea', ...chicks]))
      .toEqual(['Comb P/P 94.1%, P/p+ 5.9%: none of 5 chicks by single S showed p+.', 'Worked exactly'])
  })

  it('names the chick that gave her away', () => {
    expect(hides('h', ['A male - - comb=pea', 'h female - - comb=pea', 'c male A h comb=single'])).toEqual(['Comb P/p+ 100%: her chick c is single.', 'Worked exactly'])
  })

  it('says what her parents may have handed on, where nothing else is known', () => {
    expect(hides('h', ['A male - - tested={P:~P/p+}', 'B female - - tested={P:~P/P}', 'h female A B comb=pea'])).toEqual(['Comb P/P 50.0%, P/p+ 50.0%: her sire A carries p+, her dam B is without it.', 'Worked exactly'])
  })

  it('names a parent that has nothing else to give', () => {
    expect(hides('h', ['A male - - comb=single', 'B female - - comb=pea', 'h male A B comb=pea'])).toEqual(['Comb P/p+ 100%: his sire A has only p+ to give.', 'Worked exactly'])
  })

  it('is short where nothing is hidden', () => {
    expect(hides('h', ['h female - - comb=single'])).toEqual(['nothing at p+/p+', 'Worked exactly'])
    // a hen hides nothing on the Z once she was seen
    expect(hides('h', ['A male - - tested={S:~S/s+}', 'B female - -', 'h female A B ground=gold comb=single'], '{P: {P: 50%, p+: 50%}, S: {S: 50%, s+: 50%}}', {'traits/ground.md': GROUND}))
      .toEqual(['nothing at p+/p+ and s+/-', 'Worked exactly'])
  })

  it('names the locus too where a trait rests on several', () => {
    const walnut = '---\nname: Comb\nstates: [walnut, rose, pea, single]\ntarget: walnut\nloci: [R, P]\n---\n'
    const found = hides('h', ['A male - - tested={R:~R/r+,~P:~P/P}', 'B female - - tested={R:~R/r+,~P:~P/P}', 'h female A B comb=walnut'], undefined, {'traits/comb.md': walnut})
    // by hand: walnut of R/r+ × R/r+ is R/R with ⅓
    expect(found).toEqual(['Comb, R R/r+ 66.7%, R/R 33.3%: her sire A carries r+, her dam B carries it.', 'nothing at P/P', 'Worked exactly'])
  })

  it('says what a strain is, and that nothing is known of one', () => {
    expect(hides('h', ['h female - - comb=pea'], '{P: {P: 90%, p+: 10%}}')?.[0]).toBe('Comb P/P 81.8%, P/p+ 18.2%: of Holm White’s copies 10.0% are p+.')
    expect(hides('h', ['h female - - comb=single'], '{P: {P: 50%, p+: 50%}}', {'traits/skin.md': SKIN})?.[0]).toBe('Skin W+/w 50.0%, W+/W+ 25.0%, w/w 25.0%: nothing is known of Holm White here, so every allele is taken alike.')
  })
})
