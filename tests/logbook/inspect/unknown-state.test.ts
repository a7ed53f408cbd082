import {describe, expect, it} from 'vitest'
import {around, linkFiles} from '../around.ts'

const skin = (is: string) => `---\nname: Skin\nstates: [white, yellow]\nloci:\n  W: {on: autosome, alleles: [W+, w]}\nshows:\n  - {W: w/w, is: ${is}}\n  - {W: _/_, is: white}\n---\n`
const told = (is: string) => linkFiles(around({'traits/skin.md': skin(is)})).problems.map(({reason, remedy, related}) => [reason, remedy, related ?? []])

describe('a look that the trait does not have', () => {
  it('in a rule may be a mistyped lethal, and is not told where its own trait stands', () => {
    expect(told('lethall')).toEqual([['skin has no state “lethall”; it has white, yellow', 'did you mean lethal?', []]])
    expect(told('golden')).toEqual([['skin has no state “golden”; it has white, yellow', 'write one of white, yellow, lethal, or add it to the states of skin', []]])
  })
  it('of a bird is told with the file of the trait', () => {
    const [only] = linkFiles(around({'birds/H-9.md': '---\nband: H-9\nsex: male\nstrain: holm-white\ncomb: singel\n---\n'})).problems
    expect(only?.related?.map(({place, note}) => `${place.file} ${note}`)).toEqual(['traits/comb.md the trait is described here'])
  })
})
