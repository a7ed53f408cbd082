import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import {bookOf, type Files} from '../logbook/around.ts'

const chick = (band: string, sex: string, hatched: string, sire: string, dam: string) => `---\nband: ${band}\nsex: ${sex}\nhatched: ${hatched}\nsire: ${sire}\ndam: ${dam}\n---\n`
/** brother with sister for three generations after one cross */
const sibs: Files = {
  'birds/22-1.md': chick('22-1', 'male', '2023-04-01', 'H-1', 'B-1'), 'birds/22-2.md': chick('22-2', 'female', '2023-04-01', 'H-1', 'B-1'),
  'birds/23-1.md': chick('23-1', 'male', '2024-04-01', '22-1', '22-2'), 'birds/23-2.md': chick('23-2', 'female', '2024-04-01', '22-1', '22-2'),
  'birds/24-1.md': chick('24-1', 'male', '2025-04-01', '23-1', '23-2'), 'birds/24-2.md': chick('24-2', 'female', '2025-04-01', '23-1', '23-2'),
}
const closenessOf = (files: Files) => new Map(study(bookOf(files)).closeness.map(step => [step.step, step]))

describe('closeness(ladder, pedigree, kinship, heterozygosity)', () => {
  const steps = closenessOf(sibs)

  it('has every step of the new breed with its mean F, by hand', () => {
    // Wright 1921: brother with sister 0, ¼, ⅜
    expect([...steps.values()].map(({step, birds, mean, generations}) => [step, birds, mean, generations])).toEqual([['F1', 2, 0, 1], ['F2', 2, 0.25, 2], ['F3', 2, 0.375, 3]])
  })

  it('takes the rate from one closed step to the next only', () => {
    expect(steps.get('F1')?.rate).toBeNull()
    expect(steps.get('F2')?.rate).toBeNull()
    // (⅜ − ¼) / ¾
    expect(steps.get('F3')?.rate).toEqual({since: 'F2', value: 1 / 6})
    expect(steps.get('F1')?.realised).toBeNull()
    // 1 − (1 − ⅜)^½
    expect(steps.get('F3')?.realised).toMatchObject({count: 2, rate: 1 - Math.sqrt(0.625)})
  })

  it('counts a bird’s own rate from the closing of the line, not from the first cross', () => {
    // F1, two backcrosses to cocks that are no kin, then brother with sister: ¼ in one generation, by hand, though 2.75 generations are known
    const back = closenessOf({
      'birds/H-4.md': '---\nband: H-4\nsex: male\nstrain: holm-white\n---\n', 'birds/22-1.md': chick('22-1', 'female', '2023-04-01', 'H-1', 'B-1'), 'birds/23-1.md': chick('23-1', 'female', '2024-04-01', 'H-2', '22-1'),
      'birds/24-1.md': chick('24-1', 'male', '2025-04-01', 'H-4', '23-1'), 'birds/24-2.md': chick('24-2', 'female', '2025-04-01', 'H-4', '23-1'), 'birds/25-1.md': chick('25-1', 'male', '2026-04-01', '24-1', '24-2'),
    }).get('BC2F2')
    expect(back).toMatchObject({generations: 2.75, mean: 0.25, realised: {rate: expect.closeTo(0.25, 12) as number, size: expect.closeTo(2, 12) as number}})
  })

  it('has mean kinship, each bird with itself included, the Z of cocks and strain heterozygosity', () => {
    // F1 full sibs ¼, selves ½; F2 sibs of F 0 parents with kinship ¼: ⅜ and ⅝
    expect(steps.get('F1')?.kinship).toBe(0.375)
    expect(steps.get('F2')?.kinship).toBe(0.5)
    expect(steps.get('F1')?.heterozygosity).toBe(1)
    expect(steps.get('F2')?.heterozygosity).toBe(0.5)
    expect(steps.get('F2')?.onZ).toEqual({mean: 0.25, cocks: 1})
  })

  it('names the bird that may be highest, at the upper end of its range', () => {
    const doubtful = closenessOf({...sibs, 'birds/H-4.md': '---\nband: H-4\nsex: male\nstrain: holm-white\n---\n', 'birds/24-3.md': chick('24-3', 'female', '2025-04-01', '{23-1: 50%, unknown: 50%}', '23-2')})
    const mixed = doubtful.get('mixed') ?? doubtful.get('F3')
    expect(mixed?.most.f).toBe(0.375)
    expect([...doubtful.values()].reduce((sum, {doubtful: count}) => sum + count, 0)).toBe(1)
  })
})
