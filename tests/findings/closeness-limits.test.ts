import {describe, expect, it} from 'vitest'
import {closenessLimits} from '../../src/findings/closeness-limits.ts'
import type {ClosenessOfStep} from '../../src/findings/closeness.ts'
import {study} from '../../src/findings/study.ts'
import {project} from '../pages/small-logbook.ts'
import {halfSibs} from './kin-book.ts'

describe('closenessLimits(book, ladder, closeness, kin)', () => {
  const book = halfSibs(), findings = study(book)
  const at = (limits: Partial<typeof project.limits>, closeness: readonly ClosenessOfStep[] = findings.closeness) =>
    closenessLimits({...book, project: {...project, limits: {...project.limits, ...limits}}}, findings.ladder, closeness, findings.kinship)

  it('tries every bird at the upper end of its range (half sibs ⅛, full sibs ¼, sire and daughter ¼)', () => {
    const over = at({}).find(({step}) => step === 'F2')?.mating?.over.map(each => each.id)
    expect(over).toEqual(['24-002', '24-003'])
  })
  it('has nothing against a step where the project states no limit', () => {
    expect(at({matingInbreeding: null, inbreedingPerGeneration: null})[0]).toMatchObject({rate: null, allowed: null, mating: null})
  })
  it('says what a closed step might have had (from 10 %, 1 % of what was left: 0.109; what the founders bring along comes on top) and whether the rate is above', () => {
    const [first, second] = findings.closeness
    if (!first || !second) throw new Error('F1 and F2 were reached')
    const steps = [{...first, mean: 0.1, fresh: 0.1}, {...second, mean: 0.12, fresh: 0.12, rate: {since: first.step, value: 0.02}}]
    expect(at({}, steps)[1]?.allowed).toBeCloseTo(0.109, 12)
    // founders kin by a tenth: 1 − 0.9 · 0.891
    expect(at({}, [steps[0] ?? first, {...steps[1] ?? second, mean: 1 - 0.9 * 0.88}])[1]?.allowed).toBeCloseTo(1 - 0.9 * 0.891, 12)
    expect(at({}, steps)[1]?.rate).toMatchObject({limit: 0.01, stepOver: true})
    expect(at({inbreedingPerGeneration: 0.02}, steps)[1]?.rate?.stepOver).toBe(false)
  })
})
