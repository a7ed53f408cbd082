import {describe, expect, it} from 'vitest'
import type {ScoreDoubt} from '../../src/findings/score-doubt.ts'
import {slipsAsked} from '../../src/findings/slips-asked.ts'
import {expectClose} from '../expect-close.ts'
import {COMB, GROUND, heredityBook} from './heredity-book.ts'

const withError = (trait: string) => trait.replace('required: yes', 'required: yes\nmisscoring: 1%')
const grown = (line: string) => `${line} hatched=2021-04-01`
const pen = (name: string, male: string, females: string) => ({[`pens/2023-${name}.md`]: `---\nseason: 2023\nmales: [${male}]\nfemales: [${females}]\nfrom: 2023-01-10\nkeeper: kelpgarth\n---\n`})

/** How many times likelier each slip makes one chick, by its kind and birds. */
function asked(band: string, lines: readonly string[], files = {}) {
  const {findings, book, bird} = heredityBook(lines, '{P: {P: 50%, p+: 50%}, S: {S: 50%, s+: 50%}}', {'traits/comb.md': withError(COMB), 'traits/ground.md': withError(GROUND), ...files})
  const chick = bird(band), doubted = findings.impossibleFamilies.find(each => each.chick === chick) ?? expect.fail('not in doubt')
  const in_ = new Map(findings.heredity.groups.map(group => [group, doubted.doubts.filter(({trait}) => group.traits.includes(trait)) as readonly ScoreDoubt[]]))
  return new Map((slipsAsked(book, findings.pedigree, findings.heredity, in_).get(chick) ?? []).map(slip => [slip.kind === 'egg' ? `egg ${slip.sires.map(each => each.band).join()} × ${slip.dam.band}` : slip.kind === 'sex' ? slip.is : `${slip.kind} ${slip.bird.band}`, slip.times ?? Infinity]))
}
const PENS = {...pen('A', 'A', 'B'), ...pen('B', 'D', 'E, F')}
const BIRDS = ['A male - - tested={P:~p+/p+,S:~s+/s+}', 'B female - - tested={P:~p+/p+,S:~s+/-}', 'D male - - tested={P:~P/P,S:~S/S}', 'E female - - tested={P:~P/P}', 'F female - - tested={P:~p+/p+}'].map(grown)

describe('slipsAsked(book, pedigree, heredity, doubtedIn)', () => {
  it('takes an egg of another pen with any of its pairs, and no hen of it with the sire on record', () => {
    const found = asked('x', [...BIRDS, 'x female A B comb=pea'], PENS)
    expect([...found.keys()]).toEqual(['sire D', 'egg D × E', 'female'].filter(key => found.has(key)))
    // pea of D whichever hen: 0.99 against 0.01
    expectClose(found.get('sire D') ?? NaN, 99, 1e-6, {})
    expectClose(found.get('egg D × E') ?? NaN, 99, 1e-6, {})
  })

  it('multiplies what the other loci say of a slip that explains it', () => {
    // gold, as A would give and D would not: once in a hundred each
    const found = asked('x', [...BIRDS, 'x female A B comb=pea ground=gold'], PENS)
    expectClose(found.get('sire D') ?? NaN, 1, 1e-6, {})
    expectClose(asked('y', [...BIRDS, 'y female A B comb=pea ground=silver'], PENS).get('egg D × E') ?? NaN, 99 ** 2, 1e-2, {})
  })

  it('asks about the sex at loci of the Z, of birds that have not bred', () => {
    const lines = ['A male - - tested={S:~S/s+}', 'B female - - tested={S:~S/-}', 'x male A B ground=gold']
    // a daughter is gold with ½, a son scored so once in a hundred
    expectClose(asked('x', lines).get('female') ?? NaN, 0.5 / 0.01, 1e-6, {})
    expect(asked('x', [...lines, 'F female - - tested={S:~S/-}', 'y female x F']).has('female')).toBe(false)
  })
})
