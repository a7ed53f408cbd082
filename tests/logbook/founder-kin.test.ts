/** Kinships stated of founders, of flocks and of strains: what is taken, and what cannot be. */
import {describe, expect, it} from 'vitest'
import {kinshipOfBook} from '../../src/findings/inbreeding.ts'
import {pedigreeOfBook} from '../../src/findings/pedigree-of-book.ts'
import {around, codesAt, linkFiles, type Files} from './around.ts'

const hen = (band: string, more = '', strain = 'holm-white') => `---\nband: ${band}\nsex: female\nstrain: ${strain}\nhatched: 2022-03-20\n${more}---\n`
const kin = (...pairs: readonly (readonly [string, string])[]) => `kin: [${pairs.map(([band, kinship]) => `{with: ${band}, kinship: ${kinship}}`).join(', ')}]\n`
const strain = (lines: string) => `---\nname: Holm White\nrole: recurrent\n${lines}\n---\n`

function tried(files: Files) {
  const {book, problems} = linkFiles(around(files))
  if (!book) throw new Error('no book')
  const pedigree = pedigreeOfBook(book)
  const kinship = kinshipOfBook(pedigree)
  const find = (band: string) => {
    const bird = book.birds.find(each => each.band === band)
    if (!bird) throw new Error(`no ${band}`)
    return bird
  }
  return {problems, codes: codesAt(problems), between: (a: string, b: string) => Number(kinship.between(find(a), find(b)).toFixed(9))}
}

describe('kinship of two founders', () => {
  it('is as either of them says', () => {
    const {codes, between} = tried({'birds/H-4.md': hen('H-4', kin(['H-3', '25%']))})
    expect(codes).toEqual([])
    expect(between('H-3', 'H-4')).toBe(0.25)
  })

  it('is at most that of a bird with itself: 50 %, more in an inbred strain', () => {
    const high = {'birds/H-4.md': hen('H-4', kin(['H-3', '55%']))}
    const {codes, between, problems} = tried(high)
    expect(codes).toEqual(['birds/H-4.md:6 kinship-too-high'])
    expect(problems[0]?.reason).toContain('H-4 and H-3 are stated to have a kinship of 55%, more than a bird has with itself, 50%')
    expect(between('H-3', 'H-4')).toBe(0)
    expect(tried({...high, 'strains/holm-white.md': strain('inbreeding: 20%\nkinship: 10%')}).between('H-3', 'H-4')).toBe(0.55)
    // of two strains the less inbred one sets the limit
    expect(tried({...high, 'birds/H-4.md': hen('H-4', kin(['B-1', '55%'])), 'strains/holm-white.md': strain('inbreeding: 20%')}).codes).toEqual(['birds/H-4.md:6 kinship-too-high'])
  })

  it('is refused of a bird with itself, and where two say otherwise; said twice alike it is fine', () => {
    expect(tried({'birds/H-4.md': hen('H-4', kin(['H-4', '25%']))}).codes).toEqual(['birds/H-4.md:6 kinship-contradicts'])
    const two = (other: string) => tried({'birds/H-4.md': hen('H-4', kin(['H-5', '25%'])), 'birds/H-5.md': hen('H-5', kin(['H-4', other]))})
    expect(two('25%').codes).toEqual([])
    expect(two('10%').codes).toEqual(['birds/H-5.md:6 kinship-contradicts'])
  })

  it('of three that exclude each other is refused whole, with every place, and coancestry is left something it can work', () => {
    const {codes, problems, between} = tried({
      'birds/H-4.md': hen('H-4', kin(['H-3', '45%'], ['H-5', '45%'])), 'birds/H-5.md': hen('H-5'), 'birds/H-6.md': hen('H-6', kin(['B-3', '10%'])), 'birds/24-901.md': '---\nband: 24-901\nsire: H-1\ndam: B-9\n---\n',
    })
    // 0.45² + 0.45² > 0.5²: H-3 and H-5 cannot be kin to nothing of each other
    expect(codes).toEqual(['birds/24-901.md:4 unknown-band', 'birds/H-4.md:6 kinship-contradicts'])
    const found = problems.find(({code}) => code === 'kinship-contradicts')
    expect(found?.reason).toContain('H-4 and H-3 45%, H-4 and H-5 45%')
    expect(found?.related).toHaveLength(1)
    expect(between('H-4', 'H-5')).toBe(0)
    expect(between('H-6', 'B-3')).toBe(0.1)
  })

  it('is not used of a bird that has parents, or that may be one of several', () => {
    const parents = tried({'birds/24-901.md': `---\nband: 24-901\nsire: H-1\ndam: B-2\n${kin(['H-3', '20%'])}---\n`})
    expect(parents.codes).toEqual(['birds/24-901.md:5 kinship-follows'])
    expect(parents.problems[0]?.severity).toBe('warning')
    expect(parents.between('24-901', 'H-3')).toBe(0)
    const found = tried({'birds/X-1.md': hen('X-1', `maybe: [H-3, B-1]\n${kin(['B-2', '20%'])}`)})
    expect(found.codes).toEqual(['birds/X-1.md:7 kinship-follows'])
    expect(found.between('X-1', 'B-2')).toBe(0)
  })
})

describe('kinship in a flock and in a strain', () => {
  it('is the most that any bird of the flock says, and no less than its strain’s', () => {
    const flock = (kinship: string) => `flock: {name: breeder-7${kinship}}\n`
    const files = {'birds/H-4.md': hen('H-4', flock('')), 'birds/H-5.md': hen('H-5', flock(', kinship: 12.5%')), 'strains/holm-white.md': strain('inbreeding: 6%\nkinship: 5%')}
    const {between} = tried(files)
    expect([between('H-4', 'H-5'), between('H-4', 'H-3')]).toEqual([0.125, 0.05])
    expect(tried({...files, 'birds/H-5.md': hen('H-5', flock(', kinship: 1%'))}).between('H-4', 'H-5')).toBe(0.05)
  })

  it('of a flock is held against its strain’s inbreeding, of birds and of bought eggs', () => {
    expect(tried({'birds/H-4.md': hen('H-4', 'flock: {name: breeder-7, kinship: 60%}\n')}).codes).toEqual(['birds/H-4.md:6 kinship-too-high'])
    expect(tried({'hatches/2024-09.md': '---\nstrain: holm-white\nflock: {name: breeder-7, kinship: 60%}\nset: 2024-03-02\nchicks:\n  - {band: 24-901}\n  - {band: 24-902}\n---\n'}).codes)
      .toEqual(['hatches/2024-09.md:3 kinship-too-high'])
  })

  it('of a strain is held against its inbreeding, and taken as high as it can be', () => {
    const {codes, between} = tried({'strains/holm-white.md': strain('inbreeding: 10%\nkinship: 60%')})
    expect(codes).toEqual(['strains/holm-white.md:5 kinship-too-high'])
    expect(between('H-1', 'H-3')).toBe(0.55)
  })
})
