import {describe, expect, it} from 'vitest'
import {testMatingPlan, type TestMatingAsked, type TestMatingPlan} from '../../src/findings/test-mating-plan.ts'
import {COMB, GROUND, heredityBook, type HeredityBook} from './heredity-book.ts'

function plan({book, findings, bird}: HeredityBook, band: string, mate: string | TestMatingAsked['mate'], more: Partial<TestMatingAsked> & {symbol?: string} = {}): TestMatingPlan {
  const locus = book.loci.get(more.symbol ?? 'P')?.locus ?? expect.fail('no locus')
  const found = testMatingPlan({bird: bird(band), locus, allele: 1, mate: typeof mate === 'string' ? bird(mate) : mate, among: 'all', limit: 0.01, ...more}, findings.heredity, findings.pedigree)
  return found ?? expect.fail('no plan')
}
const CARRIER_TWO_TO_ONE = ['A male - - tested={P:~P/p+}', 'B female - - tested={P:~P/p+}', 'X male A B comb=pea']

describe('testMatingPlan(asked, heredity, pedigree)', () => {
  it('halves the odds with each clean chick of a single mate: 2/(2 + 2^n)', () => {
    const {chicks, course, exact} = plan(heredityBook(CARRIER_TWO_TO_ONE), 'X', [[1, 1]])
    expect(exact).toBe(true)
    for (const {chicks: n, carrier, missed} of course) {
      expect(carrier).toBeCloseTo(2 / (2 + 2 ** n), 12)
      expect(missed).toBeCloseTo(0.5 ** n, 12)
    }
    // 2/(2 + 2^n) ≤ 1/100 from n = 8 on
    expect([chicks, course.length]).toEqual([8, 9])
  })

  it('needs three of a known carrier where a single mate needs one: carrier 27/59 after three', () => {
    const {course} = plan(heredityBook(CARRIER_TWO_TO_ONE), 'X', [[0, 1]])
    // exact fractions by Bayes' rule: ⅔(¾)³ / (⅔(¾)³ + ⅓)
    expect(course[1]?.carrier).toBeCloseTo(3 / 5, 12)
    expect(course[3]?.carrier).toBeCloseTo(27 / 59, 12)
  })

  it('is what adding so many clean chicks to the book gives, of kin and with misscoring', () => {
    const files = {'traits/comb.md': COMB.replace('required: yes', 'required: yes\nmisscoring: 2%')}
    const birds = ['A male - - comb=pea', 'B female - - comb=pea', 'C female - - comb=single', 'X male A B comb=pea', 'Y female A C comb=pea', 'Z female A B comb=pea']
    const before = heredityBook(birds, undefined, files)
    for (const mate of ['Y', 'Z', 'C']) {
      const {course} = plan(before, 'X', mate, {limit: 0.4})
      for (const n of [0, 1, 4]) {
        const after = heredityBook([...birds, ...Array.from({length: n}, (_, index) => `N${index} female X ${mate} comb=pea`)], undefined, files)
        const found = plan(before, 'X', mate, {limit: 1e-3}).course[n] ?? course[n]
        expect(found?.carrier).toBeCloseTo(after.chance('X', 'P', 'P/p+') + after.chance('X', 'P', 'p+/p+'), 9)
      }
    }
  })

  it('is not reached where the mate can show nothing', () => {
    const {chicks, course} = plan(heredityBook(CARRIER_TWO_TO_ONE), 'X', [[0, 0]])
    expect([chicks, course.length]).toEqual([null, 21])
    expect(course[20]?.carrier).toBeCloseTo(2 / 3, 12)
  })

  it('takes a cock’s daughters of any hen for a test of his Z', () => {
    const book = heredityBook(['A male - - tested={S:~S/s+}', 'B female - - tested={S:~S/-}', 'X male A B'], '{S: {S: 50%, s+: 50%}}', {'traits/ground.md': GROUND})
    const of = (among: TestMatingAsked['among']) => plan(book, 'X', [[0, null]], {symbol: 'S', among}).course.slice(0, 4).map(({carrier}) => carrier)
    // 1/(1 + 2^n) by daughters, 1/(1 + (4/3)^n) by all, sons show nothing
    expect(of('daughters')).toEqual([0, 1, 2, 3].map(n => expect.closeTo(1 / (1 + 2 ** n), 12) as number))
    expect(of('all')).toEqual([0, 1, 2, 3].map(n => expect.closeTo(1 / (1 + (4 / 3) ** n), 12) as number))
  })

  it('has nothing to do where the bird is clean already', () => {
    const {chicks, course} = plan(heredityBook(['A male - - tested={P:~P/P}']), 'A', [[1, 1]])
    expect([chicks, course]).toEqual([0, [{chicks: 0, carrier: 0, missed: null}]])
  })
})
