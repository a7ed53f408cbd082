/** Pictures that a record names in its own words are looked for like those in its front matter, with their line. */
import {describe, expect, it} from 'vitest'
import {around, linkFiles} from './around.ts'

const BIRD = '---\nband: H-9\nsex: male\nstrain: holm-white\n---\n'

/** `line:column-column code: remedy` of what is said of a bird's own words. */
function said(words: string, photos: readonly string[] = ['24-031.jpg']): string[] {
  const files = {'birds/H-9.md': BIRD + words, ...Object.fromEntries(photos.map(photo => [`photos/${photo}`, '']))}
  return linkFiles(around(files)).problems.map(({place: {file, start, end}, code, remedy}) => {
    expect(file).toBe('birds/H-9.md')
    return `${start.line}:${start.column}-${end.column} ${code}: ${remedy}`
  })
}

describe('a picture in a body', () => {
  it('that is there, with words, is no problem', () => {
    expect(said('![A hen](photos/24-031.jpg) ![A hen][h] <img src="photos/24-031.jpg" alt="A hen">\n\n[h]: ../photos/24-031.jpg\n')).toEqual([])
  })

  it('that is not there is missed where it stands', () => {
    expect(said('Seen in May.\n\nShe: ![a hen](photos/none.jpg).\n')).toEqual(['8:6-31 unknown-photo: put the photograph at photos/none.jpg, or mend its name'])
  })

  it('is offered near names', () => {
    expect(said('![a hen](photos/24-013.jpg)')).toEqual(['6:1-28 unknown-photo: did you mean 24-031.jpg (photos/24-031.jpg)?'])
  })

  it('outside photos/ is told its place', () => {
    expect(said('![a hen](24-031.jpg)')).toEqual(['6:1-21 unknown-photo: write photos/24-031.jpg'])
    expect(said('![a hen](pictures/x.jpg)')).toEqual(['6:1-25 unknown-photo: put the photograph at photos/x.jpg, and write photos/x.jpg'])
    expect(said('![a hen](photos/../project.md)')[0]).toContain('6:1-31 unknown-photo')
  })

  it('elsewhere on the web is a link, and not looked for', () => {
    expect(said('![a hen](https://example.org/hen.jpg)')).toEqual([])
  })

  it('without words is warned of', () => {
    expect(said('![](photos/24-031.jpg)')).toEqual(['6:1-23 photo-without-words: write what a judge would see between the square brackets'])
    expect(said('<img src="photos/24-031.jpg">')).toEqual(['6:1-30 photo-without-words: add alt="…" with what a judge would see'])
  })

  it('behind comments is found on its line', () => {
    expect(said('<!-- ![no](photos/no.jpg) -->\nSeen <!-- by me\n--> and ![a hen](photos/none.jpg)\n')).toEqual([expect.stringMatching(/^8:9-34 unknown-photo/)])
  })

  it('by reference, and as a tag, is missed too', () => {
    expect(said('![a hen][h]\n\n[h]: photos/none.jpg\n')).toEqual([expect.stringMatching(/^6:1-12 unknown-photo/)])
    expect(said('<p>\n<img alt="a hen" src="photos/none.jpg">\n</p>\n')).toEqual([expect.stringMatching(/^7:1-40 unknown-photo/)])
  })

  it('that is only shown as code is none', () => {
    expect(said('`![a hen](photos/none.jpg)` and `<img src="photos/none.jpg">`')).toEqual([])
  })

  it('is looked for in every kind of record, and in the origin of a draft', () => {
    const draft = (origin: string, body: string) => ({'standard/1.md': `---\ndraft: 1\non: 2024-01-01\norigin: ${origin}\n---\n${body}\n`})
    const codes = (files: Readonly<Record<string, string>>) => linkFiles(around(files)).problems.filter(({code}) => code.includes('photo')).map(({place}) => `${place.file}:${place.start.line}`)
    expect(codes(draft('A cross.', '# Head\n\n![a hen](photos/none.jpg)'))).toEqual(['standard/1.md:8'])
    expect(codes(draft('"![a hen](photos/none.jpg)"', ''))).toEqual(['standard/1.md:4'])
    expect(codes({'project.md': '---\nname: Skerry Fowl\naim: A fowl.\n---\n![a hen](photos/none.jpg)\n'})).toContain('project.md:5')
  })
})
