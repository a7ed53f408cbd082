import fc from 'fast-check'
import '../seeded.ts'
import {describe, expect, it} from 'vitest'
import {wordChanges} from '../../src/findings/word-changes.ts'
import {reworded} from '../../src/pages/marked-words.ts'

const shown = (before: string, after: string): string => {
  const {marked, was, now} = reworded(wordChanges(before, after))
  return marked.length > 0 ? marked.map(({out, in: put, text}) => (out ? `<${text}>` : put ? `{${text}}` : text)).join('') : `was ${was ?? '–'} now ${now ?? '–'}`
}

describe('reworded(runs)', () => {
  it.each([
    ['Broad. Carried well up. Curved.', 'Broad. Carried at 45 degrees. Curved.', 'Carried <well up> {at 45 degrees}.'],
    ['Of medium length, well up; sickles long.', 'Of medium length, carried at 45 degrees; sickles long.', 'Of medium length, <well up> {carried at 45 degrees} …'],
    ['Broad. Deep.', 'Broad. Long. Deep.', 'was – now Long.'],
    ['Broad. Long. Deep.', 'Broad. Deep.', 'was Long. now –'],
    ['Small and low.', 'Three even ridges, set close.', 'was Small and low. now Three even ridges, set close.'],
    ['Very small.', 'Very small; no more than three rows of beading.', 'Very small{; no more than three rows of beading}.'],
    ['', 'White.', 'was – now White.'],
  ])('%j → %j', (before, after, told) => expect(shown(before, after)).toBe(told))

  it('leaves out the middle of a long stretch that stayed', () => {
    const long = Array.from({length: 40}, (_, index) => `word${index}`).join(' ')
    expect(shown(`Broad ${long} low`, `Long ${long} high`)).toBe('<Broad> {Long} word0 word1 word2 word3 word4 word5 … word34 word35 word36 word37 word38 word39 <low> {high}')
  })

  it('says something whenever words differ, and never marks a space', () => {
    const text = fc.array(fc.constantFrom('broad', 'deep.', 'tail', 'low;', 'high', 'and', 'well.'), {maxLength: 12}).map(words => words.join(' '))
    fc.assert(fc.property(text, text, (before, after) => {
      const {marked, was, now} = reworded(wordChanges(before, after))
      if (before !== after) expect(marked.length > 0 || was !== null || now !== null).toBe(true)
      for (const {out, in: put, text: words} of marked) if (out || put) expect(words).toBe(words.trimStart())
    }))
  })
})
