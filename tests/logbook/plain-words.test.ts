import fc from 'fast-check'
import '../seeded.ts'
import {describe, expect, it} from 'vitest'
import {plainWords} from '../../src/logbook/plain-words.ts'

describe('plainWords(Markdown)', () => {
  it.each([
    ['Carried **well** up, *never* high.', 'Carried well up, never high.'], ['See [the rule](https://example.org/x).', 'See the rule.'], ['One.\n\nTwo,\nthree.', 'One. Two, three.'],
    ['- sickles long\n- well curved', 'sickles long well curved'], ['| a | b |\n|---|---|\n| 1 | 2 |', 'a b 1 2'], ['at 45  \ndegrees', 'at 45 degrees'], ['so\\\nlong', 'so long'], ['  ', ''], ['2. second', 'second'], ['a <b>bold</b> word', 'a bold word'],
  ])('%j reads %j', (text, words) => expect(plainWords(text)).toBe(words))

  it('leaves plain sentences as they are, but for white space', () => {
    const word = fc.constantFrom('tail', 'low,', 'carried', 'at', '45', 'degrees.', 'ear-lobes', '“red”', 'hens’', 'well;')
    fc.assert(fc.property(fc.array(word, {minLength: 1, maxLength: 12}), words => { expect(plainWords(` ${words.join('  ')}\n`)).toBe(words.join(' ')) }))
  })
})
