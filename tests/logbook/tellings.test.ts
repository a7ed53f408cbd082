/** `same-as` makes birds one, whatever the order of the files and however long the chain. */
import {describe, expect, it} from 'vitest'
import {around, bookOf, codesAt, linkFiles, type Files} from './around.ts'

const bird = (band: string, lines: string) => ({[`birds/${band}.md`]: `---\nband: ${band}\nsex: female\n${lines}\n---\nOf ${band}.\n`})
const founder = (band: string) => bird(band, 'strain: fell-buff\nhatched: 2022-03-20')
/** the birds that wear any of these bands: each with its bands, sorted */
const wearers = (files: Files, start: string) => bookOf(files).birds.map(each => each.bands.map(worn => worn.band)).filter(bands => bands.some(band => band.startsWith(start))).map(bands => bands.sort().join(' '))

describe('same-as', () => {
  it.each([['X-1', 'X-2', 'X-3'], ['X-3', 'X-2', 'X-1'], ['X-2', 'X-1', 'X-3'], ['X-2', 'X-3', 'X-1']])('in a chain %s → %s → %s makes one bird', (last, middle, first) => {
    const files = {...bird(last, `same-as: ${middle}`), ...bird(middle, `same-as: ${first}`), ...founder(first)}
    expect(wearers(files, 'X-')).toEqual(['X-1 X-2 X-3'])
    // the founder's own words first, then of each bird that proved to be it
    expect(bookOf(files).birds.find(each => each.bands.some(worn => worn.band === first))).toMatchObject({id: first, band: last, body: `Of ${first}.\n\nOf ${middle}.\n\nOf ${last}.`})
  })

  it('of two birds that name one, and of two that name each other, makes one', () => {
    expect(wearers({...bird('X-1', 'same-as: X-3'), ...bird('X-2', 'same-as: X-3'), ...founder('X-3')}, 'X-')).toEqual(['X-1 X-2 X-3'])
    expect(wearers({...bird('X-1', 'same-as: X-2\nstrain: fell-buff'), ...bird('X-2', 'same-as: X-1')}, 'X-')).toEqual(['X-1 X-2'])
  })

  it('names a band that two birds wore, who prove to be one further down', () => {
    const wore = (band: string) => ({[`birds/${band}.md`]: `---\nband: ${band}\nbands: [{band: "17", to: 2022-09}, ${band}]\nsex: female\nsame-as: X-3\n---\n`})
    const files = {...wore('Y-1'), ...wore('Z-1'), ...bird('A-1', 'same-as: "17"'), ...founder('X-3')}
    expect(codesAt(linkFiles(around(files)).problems).filter(code => code.endsWith('band-in-doubt'))).toEqual([])
    expect(wearers(files, 'A-')).toEqual(['17 A-1 X-3 Y-1 Z-1'])
  })

  it('that no bird wears is missed, wherever in a chain it stands', () => {
    const {problems} = linkFiles(around({...bird('X-1', 'same-as: X-2'), ...bird('X-2', 'same-as: X-9\nstrain: fell-buff')}))
    expect(codesAt(problems)).toEqual(['birds/X-2.md:4 unknown-band'])
  })

  it('that two birds wear is in doubt, once', () => {
    const line = (day: string) => `---\nstrain: holm-white\non: ${day}\nchicks:\n  - {band: "17", sex: female, left: ${day.slice(0, 4)}-12-01 sold}\n---\n`
    const {problems} = linkFiles(around({'hatches/2022-08.md': line('2022-03-20'), 'hatches/2023-08.md': line('2023-03-20'), ...bird('X-1', 'same-as: "17"')}))
    expect(codesAt(problems)).toEqual(['birds/X-1.md:4 band-in-doubt'])
  })
})
