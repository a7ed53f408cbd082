/** A picture is looked for whichever kind of record names it, and comes to stand with the thing. */
import {describe, expect, it} from 'vitest'
import {around, bookOf, linkFiles, type Files} from './around.ts'

const RECORDS: readonly (readonly [string, string])[] = [
  ['pens/2024-Z.md', 'season: 2024\nmales: [H-2]\nfemales: [B-3]'],
  ['hatches/2024-90.md', 'strain: holm-white'],
  ['shows/2024-11-02-hall.md', 'name: Autumn show\non: 2024-11-02'],
  ['care/2024-05-02-drops.md', 'care: feed\non: 2024-05-02'],
  ['traits/leg.md', 'name: Leg\nstates: [a, b]'],
  ['strains/grey.md', 'name: Grey\nrole: other'],
  ['steps/BC9.md', 'name: BC9'],
  ['diary/2024-05-02-day.md', 'on: 2024-05-02\ntitle: A day'],
]
const files = (file: string, front: string, photo: string): Files => ({[file]: `---\n${front}\nphotos: [${photo}]\n---\n`, 'photos/a.jpg': ''})

describe('a photograph', () => {
  it.each(RECORDS)('named in %s is looked for', (file, front) => {
    const codes = (photo: string) => linkFiles(around(files(file, front, photo))).problems.map(problem => problem.code)
    expect(codes('{file: b.jpg, alt: A bird.}')).toContain('unknown-photo')
    expect(codes('{file: a.jpg}')).toContain('photo-without-words')
    expect(codes('{file: a.jpg, alt: A bird.}').filter(code => code.includes('photo'))).toEqual([])
  })

  it('stands with the thing', () => {
    const [, front] = RECORDS[0] ?? ['', '']
    expect(bookOf(files('pens/2024-Z.md', front, '{file: a.jpg, alt: A bird.}')).pens.find(pen => pen.id === '2024-Z')?.photos).toMatchObject([{file: 'a.jpg', alt: 'A bird.'}])
  })
})
