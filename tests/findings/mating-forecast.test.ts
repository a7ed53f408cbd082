import {describe, expect, it} from 'vitest'
import type {Logbook} from '../../src/logbook/book.ts'
import type {LocusGroup} from '../../src/findings/locus-groups.ts'
import {matingForecasts, WORTH_A_CAUTION, WORTH_A_LOSS, type ForecastOfSex, type MatingForecast} from '../../src/findings/mating-forecast.ts'
import {GROUND, heredityBook, LEGS, type HeredityBook} from './heredity-book.ts'

function forecast({findings, bird}: HeredityBook, sire: string, dam: string): MatingForecast {
  const [found] = findings.forecasts([{sire: bird(sire), dam: bird(dam)}])
  if (!found) throw new Error('no forecast')
  return found
}
const shareOf = ({traits}: ForecastOfSex, trait: string, state: string) => traits.find(each => each.trait.id === trait)?.states.find(each => each.state === state)?.share ?? 0
const traitOf = ({traits}: Logbook, id: string) => traits.find(each => each.id === id) ?? expect.fail(id)

const ONLY_P = '{P: {P: 100%}}', ONLY_SMALL = '{P: {p+: 100%}}'

describe('matingForecasts(book, heredity, pedigree, pairs)', () => {
  it('gives a quarter of singles where both parents are tested to carry it', () => {
    const {male, female, exact, lost} = forecast(heredityBook(['A male - - tested={P:~P/p+}', 'B female - - tested={P:~P/p+}']), 'A', 'B')
    for (const sex of [male, female]) expect(shareOf(sex, 'comb', 'single')).toBeCloseTo(0.25, 12)
    expect(male.genotypes[0]?.genotypes.map(({written, probability}) => [written, expect.closeTo(probability, 12) as number])).toEqual([['P/p+', 0.5], ['P/P', 0.25], ['p+/p+', 0.25]])
    expect([exact, lost]).toEqual([true, []])
  })

  it('takes what is not certain by its chance: ⅔ × ⅔ × ¼ of two unrelated birds that are two to one carriers', () => {
    // by hand; founders with the alleles alike that are pea: P/P ⅓, P/p+ ⅔
    const {male} = forecast(heredityBook(['A male - - comb=pea', 'B female - - comb=pea']), 'A', 'B')
    expect(shareOf(male, 'comb', 'single')).toBeCloseTo(1 / 9, 12)
  })

  it('does not take kin for strangers: full sibs both carry, or do not, by the same parent', () => {
    // by hand: sire P/P or P/p+ half and half (a pea bird of P/P × P/p+), dam P/P; each sib a carrier with ¼, both with ½·¼, a stranger's product being 1/16
    const kin = heredityBook(['G male - - tested={P:~P/P}', 'H female - - tested={P:~P/p+}', 'E female - - tested={P:~P/P}', 'A male G H', 'X male A E', 'Y female A E'])
    expect(kin.chance('X', 'P', 'P/p+')).toBeCloseTo(0.25, 12)
    expect(shareOf(forecast(kin, 'X', 'Y').male, 'comb', 'single')).toBeCloseTo(0.5 * 0.25 * 0.25, 12)
  })

  it('does not take parents of common chicks for strangers', () => {
    // by hand: a single chick between them makes both carriers, a pea one leaves either to be free of it
    const book = heredityBook(['A male - - comb=pea', 'B female - - comb=pea', 'C female A B comb=pea'])
    // pairs 0-0 1/9, 0-1 and 1-0 2/9 each, 1-1 4/9 · ¾ = 3/9 → 1-1 has 3 of 8
    expect(shareOf(forecast(book, 'A', 'B').female, 'comb', 'single')).toBeCloseTo((3 / 8) * 0.25, 12)
  })

  it('tells what is lost and what to beware of, gravest first, by both parents together', () => {
    const book = heredityBook(['A male - - legs=creeper', 'B female - - legs=creeper', 'C female - - legs=long'], '{Cp: {Cp: 10%, cp+: 90%}}', {'traits/legs.md': LEGS})
    const {lost, male, cautions} = forecast(book, 'A', 'B')
    expect(lost.map(({share}) => share)).toEqual([expect.closeTo(0.25, 12)])
    expect(shareOf(male, 'legs', 'creeper')).toBeCloseTo(2 / 3, 12)
    expect(cautions[0]).toMatchObject({about: 'lethal', chance: expect.closeTo(2 / 3, 12) as number})
    expect(forecast(book, 'A', 'C')).toMatchObject({lost: []})
  })

  it('credits what is lost to the loci that the lethal rule names, whatever else is worked along with them', () => {
    const legs = LEGS.replace('loci: [Cp]', 'loci: {Cp: {alleles: [Cp, cp+], linked: {P: 10%}}}')
    const book = heredityBook(['A male - - legs=creeper comb=pea', 'B female - - legs=creeper comb=pea', 'C female - - legs=long comb=pea'], '{P: {P: 50%, p+: 50%}, Cp: {Cp: 10%, cp+: 90%}}', {'traits/legs.md': legs})
    expect(book.findings.heredity.groups.map(({loci}) => loci.length)).toEqual([2])
    expect(forecast(book, 'A', 'B').lost.map(({loci, share}) => [loci.map(({symbol}) => symbol).join(), share])).toEqual([['Cp', expect.closeTo(0.25, 12)]])
    expect(forecast(book, 'A', 'C').lost).toEqual([])
  })

  it('tells two lethal genes apart, each by what it alone would kill', () => {
    // by hand: a quarter each of Cp/Cp and of Et/Et, however near they lie
    const both = LEGS.replace('loci: [Cp]', 'loci: {Cp: {linked: {Et: 10%}}, Et: {}}').replace('  - {Cp: Cp/_, is', '  - {Et: Et/Et, is: lethal}\n  - {Cp: Cp/_, is')
    const book = heredityBook(['A male - - tested={Cp:~Cp/cp+,~Et:~Et/et+}', 'B female - - tested={Cp:~Cp/cp+,~Et:~Et/et+}'], '{Cp: {Cp: 10%, cp+: 90%}, Et: {Et: 10%, et+: 90%}}', {'traits/legs.md': both})
    expect(forecast(book, 'A', 'B').lost.map(({loci, share}) => [loci.map(({symbol}) => symbol).join(), share])).toEqual([['Cp', expect.closeTo(0.25, 12)], ['Et', expect.closeTo(0.25, 12)]])
  })

  it('tells of no loss below one embryo in a thousand', () => {
    // by hand: long by long with 1 in 100 misscored among 1 in 1000 of allele Cp: a carrier with about 2e-5, both with far less
    const legs = LEGS.replace('shows:', 'misscoring: 1%\nshows:')
    expect(forecast(heredityBook(['A male - - legs=long', 'B female - - legs=long'], '{Cp: {Cp: 0.1%, cp+: 99.9%}}', {'traits/legs.md': legs}), 'A', 'B')).toMatchObject({lost: [], cautions: []})
    expect(WORTH_A_LOSS).toBe(0.001)
  })

  it('gives a caution only where so many chicks have an allele that it speaks of', () => {
    // by hand: one in a hundred of an allele of a founder beside a bird without makes one chick in a hundred
    const of = (share: string) => forecast(heredityBook(['A male - -', 'B female - - tested={Cp:~cp+/cp+}'], `{Cp: {Cp: ${share}, cp+: rest}}`.replace('rest', `${100 - Number(share.replace('%', ''))}%`), {'traits/legs.md': LEGS.replace('  - {Cp: Cp/Cp, is: lethal}\n', '')}), 'A', 'B').cautions
    expect(of('2%').map(({about, alleles, chance}) => [about, alleles.join(), chance])).toEqual([['lethal', 'Cp', expect.closeTo(0.02, 12)], ['welfare', 'Cp', expect.closeTo(0.02, 12)]])
    expect(of('0.5%')).toEqual([])
    expect(WORTH_A_CAUTION).toBe(0.01)
  })

  it('says nothing of an allele that a caution names and no parent has', () => {
    const three = (tested: string) => forecast(heredityBook([`A male - - tested={S:~${tested}}`, 'B female - - tested={S:~S/-}'], '{S: {S: 40%, s+: 40%, s^al: 20%}}', {'traits/ground.md': GROUND.replace('loci:\n  S: {on: Z, alleles: [S, s+]}', 'loci: [S]')}), 'A', 'B').cautions
    expect(three('S/s+')).toEqual([])
    // by hand: half of the sons and half of the daughters have it of him
    expect(three('S/s^al').map(({about, alleles, chance}) => [about, alleles.join(), chance])).toEqual([['welfare', 's^al', expect.closeTo(0.5, 12)]])
  })

  it('is not called exact where what a parent carries is not', () => {
    const {book, findings: {heredity, pedigree}, bird} = heredityBook(['A male - - comb=pea', 'B female - - comb=pea']), pairs = [{sire: bird('A'), dam: bird('B')}]
    const loose = (of: string) => ({...heredity, worked: (group: LocusGroup) => {
      const base = heredity.worked(group)
      return {...base, found: {...base.found, isExact: (animal: number, locus: number) => animal !== pedigree.numberOf(bird(of)) && base.found.isExact(animal, locus)}}
    }})
    expect([heredity, loose('A'), loose('B')].map(each => matingForecasts(book, each, pedigree, pairs)[0]?.exact)).toEqual([true, false, false])
  })

  it('joins traits on one chick, sex by sex', () => {
    const book = heredityBook(['A male - - tested={P:~P/p+,~S:~S/s+}', 'B female - - tested={P:~p+/p+,~S:~s+/-}'], '{P: {P: 50%, p+: 50%}, S: {S: 50%, s+: 50%}}', {'traits/ground.md': GROUND})
    const traits = [traitOf(book.book, 'ground'), traitOf(book.book, 'comb')], {female} = forecast(book, 'A', 'B')
    const found = female.together(traits)
    expect(found.map(({looks}) => looks.join(' ')).sort()).toEqual(['gold pea', 'gold single', 'silver pea', 'silver single'])
    for (const {share} of found) expect(share).toBeCloseTo(0.25, 12)
    expect(female.together([traits[0] ?? expect.fail()]).reduce((sum, {share}) => sum + share, 0)).toBeCloseTo(1, 12)
  })

  it('sums to 1 in each sex and is the same asked together or one by one', () => {
    const book = heredityBook(['A male - - comb=pea', 'B female - - comb=pea', 'D female - - comb=single', 'C female A B comb=pea', 'E male A D', 'F female A D comb=pea'])
    const pairs = [['A', 'C'], ['E', 'F'], ['E', 'C']] as const
    const all = book.findings.forecasts(pairs.map(([sire, dam]) => ({sire: book.bird(sire), dam: book.bird(dam)})))
    all.forEach(({male, female}, index) => {
      const alone = forecast(book, pairs[index]?.[0] ?? '', pairs[index]?.[1] ?? '')
      for (const [sex, own] of [[male, alone.male], [female, alone.female]] as const) {
        expect(sex.traits[0]?.states.reduce((sum, {share}) => sum + share, sex.traits[0].unsaid)).toBeCloseTo(1, 12)
        expect(shareOf(sex, 'comb', 'pea')).toBeCloseTo(shareOf(own, 'comb', 'pea'), 12)
      }
    })
  })

  it('has nothing in it of birds that are all one', () => {
    expect(shareOf(forecast(heredityBook(['A male - -', 'B female - -'], ONLY_P), 'A', 'B').male, 'comb', 'pea')).toBe(1)
    expect(shareOf(forecast(heredityBook(['A male - -', 'B female - -'], ONLY_SMALL), 'A', 'B').male, 'comb', 'single')).toBe(1)
  })
})

describe('the book, at values worked outside it', () => {
  it('two to one a carrier, and less with each clean chick of a single mate', () => {
    // exact fractions by Bayes' rule: 2/(2 + 2^n)
    for (const n of [0, 1, 3, 5, 7]) {
      const chicks = Array.from({length: n}, (_, index) => `C${index} female X D comb=pea`)
      const book = heredityBook(['A male - - tested={P:~P/p+}', 'B female - - tested={P:~P/p+}', 'D female - - tested={P:~p+/p+}', 'X male A B comb=pea', ...chicks])
      expect(book.chance('X', 'P', 'P/p+')).toBeCloseTo(2 / (2 + 2 ** n), 12)
    }
  })

  it('parents of a population with one in ten recessive alleles, all seen dominant', () => {
    // exact fractions: parent carrier 9/53, chick carrier 26/159
    const book = heredityBook(['A male - - comb=pea', 'B female - - comb=pea', 'X male A B comb=pea', 'Y female A B comb=pea'], '{P: {P: 90%, p+: 10%}}')
    expect(book.chance('A', 'P', 'P/p+')).toBeCloseTo(9 / 53, 12)
    expect(book.chance('X', 'P', 'P/p+')).toBeCloseTo(26 / 159, 12)
  })

  it('full sibs whose chick is single: the loop is taken whole', () => {
    // exact: founders 6/25, 57/100, 19/100 for 0, 1, 2 copies; sib a carrier 7/10, single 3/10
    const book = heredityBook(['F male - -', 'M female - -', 'X male F M', 'Y female F M', 'I female X Y comb=single'], '{P: {P: 80%, p+: 20%}}')
    expect([book.chance('F', 'P', 'P/P'), book.chance('F', 'P', 'P/p+'), book.chance('F', 'P', 'p+/p+')]).toEqual([6 / 25, 57 / 100, 19 / 100].map(each => expect.closeTo(each, 12) as number))
    expect(book.chance('X', 'P', 'P/p+')).toBeCloseTo(0.7, 12)
  })

  it('a cock by a carrier, cleared by his daughters', () => {
    // 1/(1 + 2^n), three daughters 1/9
    const book = heredityBook(
      ['A male - - tested={S:~S/s+}', 'B female - - tested={S:~S/-}', 'D female - - tested={S:~S/-}', 'X male A B', ...[1, 2, 3].map(n => `C${n} female X D ground=silver`)],
      '{S: {S: 50%, s+: 50%}}', {'traits/ground.md': GROUND},
    )
    expect(book.chance('X', 'S', 'S/s+')).toBeCloseTo(1 / 9, 12)
  })
})
