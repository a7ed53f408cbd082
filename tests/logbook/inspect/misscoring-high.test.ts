import {describe, expect, it} from 'vitest'
import {around, inspectFiles} from '../around.ts'

const found = (misscoring: string) => inspectFiles(around({'traits/comb.md': `---\nname: Comb\nstates: [rose, pea, single]\nmisscoring: ${misscoring}\n---\n`, 'strains/holm-white.md': '---\nname: Holm White\nrole: recurrent\n---\n', 'strains/fell-buff.md': '---\nname: Fell Buff\nrole: donor\n---\n'}))
  .problems.map(({code, place, reason}) => `${place.start.line} ${code}: ${reason}`)

describe('misscoring of half or more', () => {
  it('is warned of at the look that it is stated of', () => expect(found('{rose: {pea: 30%, single: 20%}, pea: {rose: 49%}}')).toEqual(['4 misscoring-high: rose is scored as another look in 50% of birds, and rightly in no more than 50%']))
  it('is warned of once where one rate is stated for all looks', () => expect(found('80%')).toEqual(['4 misscoring-high: every look of comb is scored as another in 80% of birds, and rightly in no more than 20%']))
  it('is an error over the whole, and no warning besides', () => expect(found('{rose: {pea: 60%, single: 60%}}')).toEqual(['4 misscoring-over-whole: rose is taken for other looks in 120% of birds, which is more than all of them']))
  it('is nothing below', () => expect(found('49%')).toEqual([]))
})
