/** A PDF as Chromium writes it, taken apart without a library: its objects, and the words on each sheet. ISO 32000-1, 7.3.10 (objects) and 9.10.3 (ToUnicode). */
import {inflateSync} from 'node:zlib'

const textOf = (pdf: Uint8Array): string => Buffer.from(pdf).toString('latin1')

/** Each object by its number; of one with a stream its dictionary alone. */
export function objectsOf(pdf: Uint8Array): ReadonlyMap<number, string> {
  const text = textOf(pdf)
  return new Map([...text.matchAll(/(?<=\n)(\d+) 0 obj\n([\s\S]*?)(?:\nendobj|stream\n)/g)].map(([, number, object = '']) => [Number(number), object]))
}

/** The stream of an object, unpacked. */
function streamOf(pdf: Uint8Array, number: number): string {
  const text = textOf(pdf), at = text.indexOf('stream\n', text.indexOf(`\n${number} 0 obj\n`)) + 'stream\n'.length
  return inflateSync(Buffer.from(pdf).subarray(at, text.indexOf('endstream', at))).toString('latin1')
}

const unicode = (hex: string): string => Buffer.from(hex, 'hex').swap16().toString('utf16le')

/** What letters the glyphs of a typeface stand for. */
function lettersOf(map: string): ReadonlyMap<string, string> {
  const letters = new Map<string, string>()
  for (const [, first = '', last = '', from = ''] of map.matchAll(/<(\w{2,4})> <(\w{2,4})> <(\w{4})>/g)) {
    for (let at = parseInt(first, 16); at <= parseInt(last, 16); at += 1) {
      letters.set(at.toString(16).toUpperCase().padStart(first.length, '0'), String.fromCharCode(parseInt(from, 16) + at - parseInt(first, 16)))
    }
  }
  for (const [, glyph = '', to = ''] of map.matchAll(/^<(\w{2,4})> <((?:\w{4})+)>$/gm)) letters.set(glyph, unicode(to))
  return letters
}

/** The words on each sheet in the order they are drawn, the edges of the sheet first. */
export function sheetsOf(pdf: Uint8Array): readonly string[] {
  const objects = objectsOf(pdf)
  const letters = new Map<number, ReadonlyMap<string, string>>()
  const lettersFor = (face: number): ReadonlyMap<string, string> => {
    const known = letters.get(face) ?? lettersOf(streamOf(pdf, Number(/\/ToUnicode (\d+) 0 R/.exec(objects.get(face) ?? '')?.[1])))
    letters.set(face, known)
    return known
  }
  return [...objects.values()].filter(object => /\/Type \/Page\n/.test(object)).map(page => {
    const faces = new Map([...page.matchAll(/\/F(\d+) (\d+) 0 R/g)].map(([, name = '', number]) => [name, Number(number)]))
    let face = 0, words = ''
    for (const [, name, glyphs] of streamOf(pdf, Number(/\/Contents (\d+) 0 R/.exec(page)?.[1])).matchAll(/\/F(\d+) [\d.]+ Tf|<([\dA-F]+)>(?= Tj| -?[\d.]+ <|<|\] TJ)/g)) {
      if (name !== undefined) face = faces.get(name) ?? 0
      else {
        const known = lettersFor(face), digits = [...known.keys()][0]?.length ?? 4
        for (let at = 0; at < (glyphs ?? '').length; at += digits) words += known.get((glyphs ?? '').slice(at, at + digits)) ?? '?'
      }
    }
    return words
  })
}
