import fc from 'fast-check'
import '../seeded.ts'
import {describe, expect, it} from 'vitest'
import {shareKept, wordChanges, type WordRun} from '../../src/findings/word-changes.ts'

const marked = (before: string, after: string): string =>
  wordChanges(before, after).map(({is, text}) => (is === 'same' ? text : is === 'out' ? `<${text}>` : `{${text}}`)).join('')
const without = (left: WordRun['is'], runs: readonly WordRun[]): string => runs.filter(({is}) => is !== left).map(({text}) => text).join('')

describe('wordChanges(before, after)', () => {
  it.each([
    ['Carried well up.', 'Carried well up.', 'Carried well up.'],
    ['Of medium length, well up; sickles curved.', 'Of medium length, carried at 45 degrees; sickles curved.', 'Of medium length,< well up>{ carried at 45 degrees}; sickles curved.'],
    ['Pea, small and low.', 'Pea, small and low, free of points.', 'Pea, small and low{, free of points}.'],
    ['A high tail. Brassiness.', 'A high tail. Narrow saddle. Brassiness.', 'A high tail.{ Narrow saddle.} Brassiness.'],
    ['', 'White.', '{White.}'],
    ['White.', '', '<White.>'],
  ])('%s → %s', (before, after, told) => expect(marked(before, after)).toBe(told))

  it('tells changes with a single word between them as one', () => {
    expect(marked('broad, and deep', 'long, and low')).toBe('<broad, and deep>{long, and low}')
  })

  it('takes a number with its point, and a word with its hyphen, as one', () => {
    expect(marked('about 2.5 kg and well-rounded', 'about 2.6 kg and well-filled')).toBe('about< 2.5>{ 2.6} kg and< well-rounded>{ well-filled}')
  })
})

const sentence = fc.array(fc.constantFrom('broad', 'deep', 'and', 'the', 'tail', 'comb,', 'low.', 'at 45', '(not', 'so)', '“red”'), {maxLength: 14}).map(words => words.join(' '))
const anyText = fc.oneof(sentence, fc.string({maxLength: 30}))

/** The same question asked of every way to lay two rows along each other, by recursion: how long is the longest common run? */
function slowLongest(a: readonly string[], b: readonly string[]): number {
  const [first, ...rest] = a
  if (first === undefined || b.length === 0) return 0
  const at = b.indexOf(first), without = slowLongest(rest, b)
  return at === -1 ? without : Math.max(without, 1 + slowLongest(rest, b.slice(at + 1)))
}

describe('laws', () => {
  it('without what was put in stands the old text, without what was taken out the new one', () => {
    fc.assert(fc.property(anyText, anyText, (before, after) => {
      const runs = wordChanges(before, after)
      expect(without('in', runs)).toBe(before)
      expect(without('out', runs)).toBe(after)
    }))
  })

  it('marks nothing in equal texts, and no two neighbours of one sort', () => {
    fc.assert(fc.property(anyText, anyText, (before, after) => {
      expect(wordChanges(before, before).every(({is}) => is === 'same')).toBe(true)
      const runs = wordChanges(before, after)
      expect(runs.every(({is}, index) => is !== runs[index + 1]?.is)).toBe(true)
    }))
  })

  it('keeps no more than the longest common run, and but for islands no less', () => {
    const word = fc.array(fc.constantFrom('a', 'b', 'c', 'd'), {maxLength: 9})
    fc.assert(fc.property(word, word, (before, after) => {
      const spaced = (words: readonly string[]) => words.map(each => ` ${each}`)
      const runs = wordChanges(spaced(before).join(''), spaced(after).join('')), keptWords = runs.filter(({is}) => is === 'same').map(({text}) => text.trim().split(' ')).flat().filter(each => each !== '').length
      const longest = slowLongest(before, after)
      expect(keptWords).toBeLessThanOrEqual(longest)
      // an island stands between two changes, and there is one change more than islands at most
      const changed = before.length + after.length - 2 * longest
      expect(longest - keptWords).toBeLessThanOrEqual(Math.max(0, changed - 1))
    }))
  })

  it('says how much stayed, from nothing to all', () => {
    fc.assert(fc.property(anyText, anyText, (before, after) => {
      const share = shareKept(wordChanges(before, after))
      expect(share).toBeGreaterThanOrEqual(0)
      expect(share).toBeLessThanOrEqual(1)
      expect(share === 1).toBe(before === after)
    }))
  })
})
