import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {testMatingPlan, type TestMatingAsked, type TestMatingPlan} from '../../src/findings/test-mating-plan.ts'
import {COMB, GROUND, heredityBook, HIDING, LEGS, SHELL, TOES, type HeredityBook} from './heredity-book.ts'

function planOrNone({book, findings, bird}: HeredityBook, band: string, mate: string | TestMatingAsked['mate'], more: Partial<TestMatingAsked> & {symbol?: string} = {}): TestMatingPlan | null {
  const locus = book.loci.get(more.symbol ?? 'P')?.locus ?? expect.fail('no locus')
  return testMatingPlan({bird: bird(band), locus, alleles: [1], mate: typeof mate === 'string' ? bird(mate) : mate, among: 'all', limit: 0.01, ...more}, findings.heredity, findings.pedigree)
}
const plan = (...asked: Parameters<typeof planOrNone>): TestMatingPlan => planOrNone(...asked) ?? expect.fail('no plan')
const HALF = '{P: {P: 50%, p+: 50%}, Q: {Q: 50%, q+: 50%}, Po: {Po: 50%, po+: 50%}}'
const DOMINANT = (symbol: string) => [`A male - - tested={${symbol}:~${symbol}/${symbol.toLowerCase()}+}`, `B female - - tested={${symbol}:~${symbol.toLowerCase()}+/${symbol.toLowerCase()}+}`, 'X male A B', 'M female - -']
const toes = (penetrance: string) => heredityBook([...DOMINANT('Po').map(line => (line.startsWith('X') ? `${line} toes=four` : line)), 'Y male A B'], HALF, {'traits/toes.md': TOES.replace('60%', penetrance)})
const shell = () => heredityBook(DOMINANT('Q'), HALF, {'traits/shell.md': SHELL})
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

  it('is none where the mate hides it, or the chicks looked at cannot show it', () => {
    expect(planOrNone(heredityBook(CARRIER_TWO_TO_ONE), 'X', [[0, 0]])).toBeNull()
    expect(planOrNone(toes('100%'), 'Y', [[0, 0]], {symbol: 'Po', alleles: [0]})).toBeNull()
    expect(planOrNone(shell(), 'X', [[1, 1]], {symbol: 'Q', alleles: [0], among: 'sons'})).toBeNull()
  })

  it('takes a mate free of it for a dominant allele that three in five show: 0.4 · 0.7ⁿ to one', () => {
    // by hand: Po/po+ or po+/po+ half and half, four toes seen: 0.4 to 1; half of a carrier's chicks have it and 0.6 of those show it
    const {chicks, course, shows} = plan(toes('60%'), 'X', [[1, 1]], {symbol: 'Po', alleles: [0]})
    for (const {chicks: n, carrier, missed} of course) {
      expect(carrier).toBeCloseTo((0.4 * 0.7 ** n) / (0.4 * 0.7 ** n + 1), 12)
      expect(missed).toBeCloseTo(0.7 ** n, 12)
    }
    expect([chicks, shows]).toEqual([11, ['five']])
  })

  it('counts daughters alone where hens alone show it, of a cock as of a hen', () => {
    // by hand: Q/q+ or q+/q+ half and half for the cock; 1/(1 + 2ⁿ) ≤ 1/100 from 7 on
    const {chicks, sexes, shows, course} = plan(shell(), 'X', [[1, 1]], {symbol: 'Q', alleles: [0]})
    expect([chicks, sexes, shows]).toEqual([7, ['female'], ['blue']])
    expect(course[3]?.carrier).toBeCloseTo(1 / 9, 12)
  })

  it('is what adding so many clean chicks to the book gives, dominant, seldom shown, misscored and shown by hens alone', () => {
    const misread = (text: string) => text.replace('required: true', 'required: true\nmisscoring: 3%')
    for (const [files, symbol, clean] of [[{'traits/toes.md': misread(TOES)}, 'Po', 'toes=four'], [{'traits/shell.md': misread(SHELL)}, 'Q', 'shell=white']] as const) {
      const before = heredityBook(DOMINANT(symbol), HALF, files), {course} = plan(before, 'X', 'M', {symbol, alleles: [0], limit: 0.02})
      for (const n of [1, 3]) {
        const after = heredityBook([...DOMINANT(symbol), ...Array.from({length: n}, (_, index) => `N${index} female X M ${clean}`)], HALF, files)
        expect(course[n]?.carrier).toBeCloseTo(1 - after.chance('X', symbol, `${symbol.toLowerCase()}+/${symbol.toLowerCase()}+`), 9)
      }
    }
  })

  it('never takes fewer chicks where fewer carriers show it', () => {
    fc.assert(fc.property(fc.integer({min: 20, max: 99}), percent => {
      const of = (share: number) => plan(toes(`${share}%`), 'Y', [[1, 1]], {symbol: 'Po', alleles: [0]}).chicks ?? Infinity
      expect(of(percent)).toBeGreaterThanOrEqual(of(percent + 1))
    }), {numRuns: 8})
  })

  it('never clears a bird that carries it for certain', () => {
    const {chicks, course} = plan(heredityBook(['A male - - tested={P:~P/p+}']), 'A', [[1, 1]])
    expect([chicks, course.length, course[20]?.carrier]).toEqual([null, 21, 1])
  })

  it('tells the course to 40 chicks, and the number itself', () => {
    // (¾)ⁿ ≤ 1/1000 000 first at 49; the bird two to one a carrier
    const {chicks, course} = plan(heredityBook(CARRIER_TWO_TO_ONE), 'X', [[0, 1]], {limit: 1e-6})
    expect([course.length, course.at(-1)?.chicks]).toEqual([42, chicks])
  })

  it('tells what is lost of the eggs', () => {
    const book = heredityBook(['A male - - tested={Cp:~Cp/cp+}', 'B female - - tested={Cp:~cp+/cp+}', 'X male A B'], '{Cp: {Cp: 50%, cp+: 50%}}', {'traits/legs.md': LEGS})
    // by hand: half carriers, a quarter of the eggs of such by a short hen
    expect(plan(book, 'X', [[0, 1]], {symbol: 'Cp', alleles: [0]}).lost).toBeCloseTo(1 / 8, 12)
    expect(plan(book, 'X', [[1, 1]], {symbol: 'Cp', alleles: [0]}).lost).toBe(0)
  })

  it('tests for one allele of three', () => {
    const three = GROUND.replace('[S, s+]', '[S, s+, s^al]').replace('S: _/_, is: gold', 'S: s+/_, is: gold')
    const book = heredityBook(['A male - - tested={S:~S/s+}', 'B female - - tested={S:~S/-}', 'X male A B'], '{S: {S: 40%, s+: 40%, s^al: 20%}}', {'traits/ground.md': three})
    expect(plan(book, 'X', [[0, null]], {symbol: 'S', among: 'daughters'}).course[3]?.carrier).toBeCloseTo(1 / 9, 12)
    expect(planOrNone(book, 'X', [[0, null]], {symbol: 'S', among: 'sons'})).toBeNull()
  })

  it('takes a cock’s daughters of any hen for a test of his Z', () => {
    const book = heredityBook(['A male - - tested={S:~S/s+}', 'B female - - tested={S:~S/-}', 'X male A B'], '{S: {S: 50%, s+: 50%}}', {'traits/ground.md': GROUND})
    const of = (among: TestMatingAsked['among']) => plan(book, 'X', [[0, null]], {symbol: 'S', among}).course.slice(0, 4).map(({carrier}) => carrier)
    // 1/(1 + 2^n) by daughters, 1/(1 + (4/3)^n) by all, sons show nothing
    expect(of('daughters')).toEqual([0, 1, 2, 3].map(n => expect.closeTo(1 / (1 + 2 ** n), 12) as number))
    expect(of('all')).toEqual([0, 1, 2, 3].map(n => expect.closeTo(1 / (1 + (4 / 3) ** n), 12) as number))
  })

  it('takes alleles that no rule tells apart for one: three recessives as two', () => {
    const many = COMB.replace('[P, p+]', '[P, p+, p^x, p^y]'), birds = ['A male - -', 'B female - -', 'X male A B comb=pea']
    const book = heredityBook(birds, '{P: {P: 40%, p+: 30%, p^x: 20%, p^y: 10%}}', {'traits/comb.md': many}), two = heredityBook(birds, '{P: {P: 40%, p+: 60%}}')
    const course = (asked: HeredityBook, alleles: readonly number[]) => plan(asked, 'X', [[1, 1]], {alleles}).course.map(({carrier}) => carrier)
    expect(course(book, [1, 2, 3])).toEqual(course(two, [1]).map(carrier => expect.closeTo(carrier, 12) as number))
    // by hand for p+ alone: of the pea birds P/p+ 0.24, P/P 0.16, P/p^x and P/p^y 0.24, whose chicks by a p+/p+ hen are single as often
    const half = 0.5 ** 3
    expect(course(book, [1])[3]).toBeCloseTo((0.24 * half) / (0.24 * half + 0.16 + 0.24 * half), 12)
  })

  it('has nothing to do where the bird is clean already', () => {
    const {chicks, course} = plan(heredityBook(['A male - - tested={P:~P/P}']), 'A', [[1, 1]])
    expect([chicks, course]).toEqual([0, [{chicks: 0, carrier: 0, missed: null}]])
  })
})

describe('testMatingPlan(…) where a look is to be expected anyway', () => {
  const SHARES = '{S: {S: 50%, s+: 50%}, C: {C+: 50%, c: 50%}}', files = {'traits/ground.md': HIDING}
  /** a hen as likely s+/- as S/-, whose white hides it, and gold cocks that hide nothing, or may */
  const hidden = heredityBook(['A male - - tested={S:~S/s+,~C:~C+/c}', 'B female - - tested={S:~S/-,~C:~C+/c}', 'X female A B ground=white', 'G male - - tested={S:~s+/s+,~C:~C+/C+}', 'M male - - ground=gold'], SHARES, files)

  it('looks at the sons of a white hen, whose daughters are gold of a gold cock anyway', () => {
    const {sexes, chicks, course} = plan(hidden, 'X', 'G', {symbol: 'S', limit: 0.01})
    // every son of S/- by such a cock is silver, every one of s+/- gold
    expect([sexes, chicks, course.map(({carrier}) => carrier)]).toEqual([['male'], 1, [expect.closeTo(0.5, 12), 0]])
    expect(planOrNone(hidden, 'X', 'G', {symbol: 'S', among: 'daughters'})).toBeNull()
  })

  it('never raises the chance with clean chicks, whatever bird, mate and chicks', () => {
    fc.assert(fc.property(
      fc.constantFrom('C+/C+', 'C+/c', 'c/c', ''), fc.constantFrom('S/s+', 's+/s+', 'S/S'), fc.constantFrom('', 'white'), fc.constantFrom('all', 'sons', 'daughters'), fc.constantFrom('', '2%', '5%'), fc.boolean(),
      (colour, ground, look, among, misscoring, isHen) => {
        const tested = (pair: string) => `tested={S:~${pair}${colour === '' ? '' : `,~C:~${colour}`}}`, sex = isHen ? 'female' : 'male'
        const book = heredityBook([
          'A male - - tested={S:~S/s+,~C:~C+/c}', 'B female - - tested={S:~S/-,~C:~C+/c}', `X ${sex} A B${look === '' ? '' : ` ground=${look}`}`,
          isHen ? `M male - - ${tested(ground)}` : `M female - - ${tested(ground.startsWith('S') ? 'S/-' : 's+/-')}`,
        ], SHARES, {'traits/ground.md': misscoring === '' ? HIDING : HIDING.replace('required: yes', `required: yes\nmisscoring: ${misscoring}`)})
        const course = planOrNone(book, 'X', 'M', {symbol: 'S', among})?.course ?? []
        course.forEach(({carrier}, row) => { expect(carrier).toBeLessThanOrEqual((course[row - 1]?.carrier ?? 1) + 1e-12) })
      },
    ), {numRuns: 60})
  })
})
