/** A table of matings and the step each gives, and the expected strain shares. */
import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import type {Bird, Logbook} from '../../src/logbook/book.ts'
import {parseStepName, sameStep, stepLabel} from '../../src/logbook/step-names.ts'
import {around, linkFiles, type Files} from './around.ts'

/** Birds by name with their sires and dams; h, b and m are founders of the three strains. */
type Flock = Readonly<Record<string, readonly [sires: string, dams: string]>>

const FOUNDERS: Files = {
  'birds/h.md': '---\nband: h\nsex: unknown\nstrain: holm-white\n---\n', 'birds/b.md': '---\nband: b\nsex: unknown\nstrain: fell-buff\n---\n',
  'birds/m.md': '---\nband: m\nsex: unknown\nstrain: moss-grey\n---\n', 'strains/moss-grey.md': '---\nname: Moss Grey\nrole: other\n---\n',
}
const parent = (names: string) => (names.includes(' ') ? `[${names.split(' ').join(', ')}]` : names)

/** The small project with these birds. Founders and crosses stand as sires and dams alike here, which is no matter for their steps. */
function flock(birds: Flock, more: Files = {}): Map<string, Bird> {
  const files = Object.fromEntries(Object.entries(birds).map(([band, [sires, dams]]) =>
    [`birds/${band}.md`, `---\nband: ${band}\nsex: unknown\nsire: ${parent(sires)}\ndam: ${parent(dams)}\n---\n`]))
  const {book} = linkFiles(around({...FOUNDERS, ...files, ...more}))
  return new Map((book as Logbook).birds.map(bird => [bird.band, bird]))
}

const LADDER: Flock = {
  hh: ['h', 'h'], f1: ['h', 'b'], f1b: ['b', 'h'], f2: ['f1', 'f1b'], f3: ['f2', 'f2'], f2x: ['f3', 'f1'], bc1: ['f1', 'h'], bc1f: ['f2', 'h'],
  bc2: ['bc1', 'h'], bc2d: ['hh', 'bc1'], bc3: ['h', 'bc2'], bc3f2: ['bc3', 'bc3'], bc3f3: ['bc3f2', 'bc3f2'], bc3f2y: ['bc3f3', 'bc3'], bc4: ['bc3f3', 'h'],
  toDonor: ['f1', 'b'], third: ['bc2', 'm'], cross: ['bc1', 'bc2'], back: ['bc2', 'b'], mf: ['h', 'm'], unsure: ['f1 bc1', 'h'], sure: ['f1 f1b', 'h'], half: ['h', 'unknown'],
}

describe('steps by descent', () => {
  const birds = flock(LADDER)
  it.each([
    ['h', 'strain', 0, 0], ['hh', 'strain', 0, 1], ['f1', 'F1', 0, 1], ['f1b', 'F1', 0, 1], ['f2', 'F2', 1, 2], ['f3', 'F3', 2, 3], ['f2x', 'F2', 1, 4],
    ['bc1', 'BC1', 0, 2], ['bc1f', 'BC1', 0, 3], ['bc2', 'BC2', 0, 3], ['bc2d', 'BC2', 0, 3], ['bc3', 'BC3', 0, 4], ['bc3f2', 'BC3F2', 1, 5], ['bc3f3', 'BC3F3', 2, 6],
    ['bc3f2y', 'BC3F2', 1, 7], ['bc4', 'BC4', 0, 7], ['toDonor', 'BC1 to fell-buff', 0, 2], ['third', 'mixed', 0, 4], ['cross', 'mixed', 0, 4], ['back', 'mixed', 0, 4],
    ['mf', 'F1-moss-grey', 0, 1], ['unsure', 'mixed', 0, 3], ['sure', 'BC1', 0, 2], ['half', 'mixed', 0, 1],
  ] as const)('%s is %s, %i inter se, %i generations deep', (band, label, interSe, depth) => {
    const step = birds.get(band)?.step
    expect([step?.label, step?.interSe, step?.depth]).toEqual([label, interSe, depth])
  })

  it('counts backcrosses and names the strain crossed back to', () => {
    expect(birds.get('bc3f3')?.step).toMatchObject({kind: 'backcross', backcrosses: 3})
    expect(birds.get('bc3f3')?.step.to?.id).toBe('holm-white')
    expect(birds.get('bc3f3')?.step.strains.map(strain => strain.id)).toEqual(['holm-white', 'fell-buff'])
  })

  it('carries the donor where the project has several, and joins ladders in a step of the keeper’s own', () => {
    const joined = flock({
      pf: ['h', 'b'], pb: ['pf', 'h'], mf: ['h', 'm'], mb: ['mf', 'h'], sy: ['pb', 'mb'], sy2: ['sy', 'sy'], sy3: ['sy2', 'sy2'], syh: ['sy', 'h'],
    }, {
      'project.md': '---\nname: Skerry Fowl\naim: Stands wind.\nstrains: {recurrent: holm-white, donors: [fell-buff, moss-grey]}\n---\n',
      'steps/SY1.md': '---\nname: SY1\njoins: [BC1-fell-buff, BC1-moss-grey]\ninter-se-from: 1\n---\nBoth lines met here.\n',
    })
    const label = (band: string) => joined.get(band)?.step.label
    expect(['pf', 'pb', 'mb', 'sy', 'sy2', 'sy3', 'syh'].map(label)).toEqual(['F1-fell-buff', 'BC1-fell-buff', 'BC1-moss-grey', 'SY1', 'SY1F2', 'SY1F3', 'mixed'])
    expect(['sy', 'sy2', 'sy3'].map(band => joined.get(band)?.step.interSe)).toEqual([1, 2, 3])
    expect(joined.get('sy2')?.step.kind).toBe('named')
  })

  it('takes a strain in late by a step that joins it', () => {
    const joined = flock({f1: ['h', 'b'], bc1: ['f1', 'h'], late: ['bc1', 'm']}, {'steps/SK1.md': '---\njoins: [BC1, moss-grey]\n---\n'})
    expect(joined.get('late')?.step.label).toBe('SK1')
  })
})

describe('strain shares', () => {
  // source: university lesson on backcrossing, donor share (1/2)^(n+1) after n backcrosses; inter se mating does not change it
  const birds = flock({
    ...LADDER, bc5: ['bc4x', 'h'], bc4x: ['bc3', 'h'], bc6: ['bc5', 'h'], bc2f2: ['bc2', 'bc2d'], bc1f1: ['bc1', 'f1'], bc3bc1: ['bc3', 'bc1'],
  })
  const recurrent = (band: string): number => [...birds.get(band)?.shares ?? []].find(([strain]) => strain.id === 'holm-white')?.[1] ?? 0
  it.each([
    ['f1', 0.5], ['bc1', 0.75], ['bc2', 0.875], ['bc3', 0.9375], ['bc4x', 0.96875], ['bc5', 0.984375], ['bc6', 0.9921875],
    ['bc2f2', 0.875], ['bc1f1', 0.625], ['bc3bc1', 0.84375], ['third', 0.4375],
  ])('%s has %d of the recurrent strain, exactly', (band, share) => expect(recurrent(band)).toBe(share))

  it('says nothing of the half that comes from an unknown bird', () => {
    expect([...birds.get('half')?.shares ?? []].reduce((sum, [, share]) => sum + share, 0)).toBe(0.5)
  })

  it('sums to 1 in every flock of known parents, however uncertain', () => {
    const names = ['h', 'b', 'm', ...Array.from({length: 12}, (_, index) => `x${index}`)]
    const random = fc.array(fc.tuple(fc.uniqueArray(fc.nat(40), {minLength: 1, maxLength: 3}), fc.uniqueArray(fc.nat(40), {minLength: 1, maxLength: 3})), {minLength: 12, maxLength: 12})
    fc.assert(fc.property(random, picks => {
      const flockOf: Record<string, [string, string]> = {}
      picks.forEach(([sires, dams], index) => {
        const older = names.slice(0, 3 + index)
        const name = (picked: readonly number[]) => [...new Set(picked.map(pick => older[pick % older.length] ?? 'h'))].join(' ')
        flockOf[`x${index}`] = [name(sires), name(dams)]
      })
      for (const bird of flock(flockOf).values()) {
        const sum = [...bird.shares.values()].reduce((total, share) => total + share, 0)
        expect(Math.abs(sum - 1)).toBeLessThan(1e-12)
        for (const share of bird.shares.values()) expect(share).toBeGreaterThan(0)
      }
    }), {numRuns: 40})
  })
})

describe('names of steps', () => {
  it.each(['F1', 'F3', 'BC2', 'BC3F2', 'BC2-pea', 'BC2F3-pea', 'BC1 to fell-buff', 'SY1', 'SY1F2'])('%s is read and written back', name => {
    const parsed = parseStepName(name, ['SY1'])
    expect(parsed && stepLabel(parsed)).toBe(name)
  })

  it.each(['BC', 'F', 'F0', 'BC0', 'third year', 'BC2F', 'SY2'])('%s is no step', name => expect(parseStepName(name, ['SY1'])).toBeNull())

  it('takes BC2F1 for BC2, and a name without its donor for the one with it', () => {
    expect(sameStep('BC2F1', 'BC2', [])).toBe(true)
    expect(sameStep('BC2', 'BC2-pea', [])).toBe(true)
    expect(sameStep('BC2-blue', 'BC2-pea', [])).toBe(false)
    expect(sameStep('BC2', 'BC3', [])).toBe(false)
  })
})
