/** A bird's file is named after any of its bands, or a band and a year. */
import {describe, expect, it} from 'vitest'
import {around, codesAt, linkFiles, type Files} from '../around.ts'

const codes = (files: Files) => codesAt(linkFiles(around(files)).problems)
const bird = (lines: string) => `---\nsex: male\nstrain: holm-white\nhatched: 2022-03-20\n${lines}\n---\n`

describe('file-misnamed', () => {
  it.each([
    ['birds/X-7.md', 'band: X-7'], ['birds/x-7.md', 'band: X-7'], ['birds/X-7-2022.md', 'band: X-7'], ['birds/A-1.md', 'band: X-7\nbands: [{band: A-1, to: 2022-09}, {band: X-7, from: 2022-09}]'],
    ['birds/24-031.md', 'band: 24/031'], ['birds/0031.md', 'band: 0031'],
  ])('%s may be the file of %s', (file, lines) => expect(codes({[file]: bird(lines)})).toEqual([]))

  it.each([['birds/X-8.md', 'band: X-7'], ['birds/X-7-2021.md', 'band: X-7']])('%s is not the file of %s', (file, lines) => {
    expect(codes({[file]: bird(lines)})).toEqual([`${file}:5 file-misnamed`])
  })

  it('takes the bands of its line in a hatch too', () => {
    const hatch = '---\npen: 2024-A\nset: 2024-03-02\non: 2024-03-23\nchicks:\n  - {band: 24-901, sex: male}\n---\n'
    expect(codes({'hatches/2024-09.md': hatch, 'birds/24-901.md': '---\nband: Y-7\nbands: [{band: 24-901, to: 2024-09}, {band: Y-7, from: 2024-09}]\n---\n'})).toEqual([])
  })

  it('names the file it should have', () => {
    expect(linkFiles(around({'birds/X-8.md': bird('band: X-7')})).problems[0]).toMatchObject({severity: 'warning', remedy: 'name it birds/X-7.md, or mend the band'})
  })

  it('is silent where another record names the bird as the file does: the band that nobody wears is the fault', () => {
    const pen = '---\nseason: 2024\nmales: [X-8]\nfemales: [B-2]\n---\n'
    expect(codes({'birds/X-8.md': bird('band: X-7'), 'pens/2024-B.md': pen})).toEqual(['pens/2024-B.md:3 unknown-band'])
  })

  it.each([['X-8-2022', 'X-8'], ['x-8', 'X-8'], ['24-031', '24/031']])('is as silent where the file %s is called after the band %s in another way', (file, band) => {
    const pen = `---\nseason: 2024\nmales: [${band}]\nfemales: [B-2]\n---\n`
    const {problems} = linkFiles(around({[`birds/${file}.md`]: bird('band: Y-70'), 'pens/2024-B.md': pen}))
    expect(codesAt(problems)).toEqual(['pens/2024-B.md:3 unknown-band'])
    expect(problems[0]?.remedy).toBe(`birds/${file}.md gives its bird the band Y-70: mend whichever is wrong`)
  })
})
