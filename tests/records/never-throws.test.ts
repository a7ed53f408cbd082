/** Whatever a file holds, reading gives records and problems; no text makes it fall over, and every problem lies inside its file. */
import fc from 'fast-check'
import {expect, it} from 'vitest'
import {KINDS, type KindId} from '../../src/records/kinds.ts'
import {TABLE_FORMATS} from '../../src/records/table-formats.ts'
import {readFiles} from './reading.ts'

const EXAMPLES = [
  ...(Object.keys(KINDS) as KindId[]).map(kind => [KINDS[kind].files.replace(/<[^>]*>/g, 'example'), KINDS[kind].example] as const),
  ...TABLE_FORMATS.map(({files, example}) => [files.replace('<name>', 'example'), example] as const),
]
const SCRAPS = fc.oneof(fc.constantFrom('"', '\'', ':', ': ', ',', '{', '}', '[', ']', '-', '---', '\n', '\t', '&a', '*a', '!x', '#', '%', '@', '|', '>', '<!--', '-->', '31', 'on', '\r\n', ';', '\uFFFD', '?'), fc.string({maxLength: 4, unit: 'binary'}))

function check(file: string, text: string): void {
  const {problems, records, texts} = readFiles({[file]: text})
  const lines = (texts.get(file) ?? text.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n')).split('\n')
  for (const {place, reason, remedy} of problems) {
    expect(place.start.line).toBeGreaterThanOrEqual(1)
    expect(place.start.line).toBeLessThanOrEqual(lines.length)
    expect(place.end.line).toBe(place.start.line)
    expect(place.start.column).toBeGreaterThanOrEqual(1)
    expect(place.end.column).toBeGreaterThanOrEqual(place.start.column)
    expect(place.end.column).toBeLessThanOrEqual((lines[place.start.line - 1]?.length ?? 0) + 1)
    expect(`${reason} ${remedy}`).not.toMatch(/undefined|NaN|\[object/)
  }
  expect(JSON.stringify(records)).not.toMatch(/NaN|Infinity/)
}

it('an example with a scrap put in somewhere', () => {
  fc.assert(fc.property(fc.constantFrom(...EXAMPLES), fc.array(fc.tuple(fc.nat(2000), fc.nat(6), SCRAPS), {minLength: 1, maxLength: 3}), ([file, example], edits) => {
    let text: string = example
    for (const [where, taken, scrap] of edits) {
      const at = where % (text.length + 1)
      text = text.slice(0, at) + scrap + text.slice(at + taken)
    }
    check(file, text)
  }), {numRuns: 1500})
})

it('any text at all', () => {
  fc.assert(fc.property(fc.constantFrom(...EXAMPLES.map(([file]) => file), 'x/y.md', 'a.csv'), fc.string({unit: 'binary', maxLength: 80}), fc.boolean(), (file, text, dashes) => {
    check(file, dashes ? `---\n${text}\n---\n` : text)
  }), {numRuns: 500})
})
