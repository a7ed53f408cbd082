/** A PDF that says the day of the records, and nothing of the machine, byte for byte as long as before. */
import {describe, expect, it} from 'vitest'
import {dayOf} from '../../src/records/dates.ts'
import {settledPdf} from '../../src/site/settled-pdf.ts'

const on = dayOf(2025, 10, 30) ?? 0
const settled = (text: string) => Buffer.from(settledPdf(Buffer.from(text, 'latin1'), on)).toString('latin1')

describe('settledPdf(pdf, on)', () => {
  it('puts the day in the place of both moments', () => {
    expect(settled("/CreationDate (D:20261126164639+00'00')\n/ModDate (D:20261126164639+00'00')")).toBe("/CreationDate (D:20251030000000+00'00')\n/ModDate (D:20251030000000+00'00')")
  })

  it('takes a moment in another zone, or without one', () => {
    expect(settled("/ModDate (D:20261126164639-05'30')/CreationDate (D:20261126164639)")).toBe("/ModDate (D:20251030000000+00'00')/CreationDate (D:20251030000000)")
  })

  it('names itself instead of the machine, and moves nothing', () => {
    const before = '<</Creator (Mozilla/5.0 \\(X11; Linux x86_64\\) HeadlessChrome/150.0.0.0)\n/Producer (Skia/PDF)>>'
    const after = settled(before)
    expect(after).toMatch(/^<<\/Creator \(Pinfeather\) +\n\/Producer \(Skia\/PDF\)>>$/)
    expect(after).toHaveLength(before.length)
  })

  it('numbers elements from one in the order they had', () => {
    expect(settled('/ID (node00000067) /Names [(node00000009) 4 0 R (node00000067) 5 0 R (node00000123) 6 0 R]'))
      .toBe('/ID (node00000002) /Names [(node00000001) 4 0 R (node00000002) 5 0 R (node00000003) 6 0 R]')
  })

  it('leaves a name too short to hold its own, and every byte of what is no text', () => {
    expect(settled('/Creator (X)')).toBe('/Creator (X)')
    const bytes = Uint8Array.from({length: 256}, (_, byte) => byte)
    expect([...settledPdf(bytes, on)]).toEqual([...bytes])
  })
})
