import {describe, expect, it} from 'vitest'
import {characterName, differ, isFilled} from '../../src/findings/characters-differ.ts'

describe('isFilled(cell)', () => {
  it.each(['', ' ', '?', '-', '–', '—', '...', 'unknown', 'Unknown', 'n/a', 'N/A', 'not known', 'Not known.'])('“%s” says nothing', cell => expect(isFilled(cell)).toBe(false))
  it.each(['none', 'pea', '45°', '0', '白'])('“%s” says something', cell => expect(isFilled(cell)).toBe(true))
})

describe('differ(one, other)', () => {
  it.each([['45°', '45 degrees'], ['45', '45 degrees'], ['2.5 kg', '2500 g'], ['2,5 kg', '2.5 kg'], ['Pea ', 'pea'], ['small  and round', 'small and round.']])('%s is %s', (one, other) => expect(differ(one, other)).toBe(false))
  it.each([['45°', '46°'], ['45 g', '45°'], ['2.5 kg', '2.6 kg'], ['pea', 'rose'], ['45°', 'upright'], ['2 to 3 kg', '2 kg']])('%s is not %s', (one, other) => expect(differ(one, other)).toBe(true))
})

describe('characterName(character)', () => it('is one whatever its capitals and white space', () => expect(characterName(' Tail  of the Male')).toBe(characterName('tail of the male'))))
