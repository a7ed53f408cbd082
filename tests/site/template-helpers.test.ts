import {describe, expect, it} from 'vitest'
import {valueHelpers} from '../../src/site/template-helpers.ts'

describe('whole(text)', () => {
  const bands = (text: string): readonly string[] => valueHelpers.whole(text).filter(({band}) => band).map(piece => piece.text)
  it('finds bands and ranges, and leaves words with a hyphen alone', () => {
    expect(bands('H22-05 and 24-031, great-grandsire of pen 2025-A: 13.9–14.4%')).toEqual(['H22-05', '24-031', '13.9–14.4'])
  })
  it('loses nothing', () => {
    for (const text of ['', 'no band', '24-031', 'a 24-031.', '24-031/B-2 x']) expect(valueHelpers.whole(text).map(piece => piece.text).join('')).toBe(text)
  })
})
