import {describe, expect, it} from 'vitest'
import {writePattern} from '../../src/heredity/genotype-notation.ts'
import {lookOf} from '../../src/heredity/look-rules.ts'
import type {Logbook, Trait} from '../../src/logbook/book.ts'
import {lookRulesOf} from '../../src/logbook/look-rules-of.ts'
import {folderInMemory} from '../../src/records/folder.ts'
import {link} from '../../src/logbook/link.ts'
import {readRecords} from '../../src/records/read.ts'
import {SHIPPED_LOCI} from '../../src/records/shipped-loci.ts'
import {around, bookOf, codesAt, linkFiles, type Files} from './around.ts'

const trait = (states: string, ...lines: string[]) => `${['---', 'name: X', `states: [${states}]`, ...lines, '---'].join('\n')}\n`
const problems = (files: Files) => codesAt(linkFiles(around(files)).problems)
const named = (book: Logbook, id: string): Trait => {
  const found = book.traits.find(one => one.id === id)
  if (!found) throw new Error(id)
  return found
}
const rulesOf = ({shows}: Trait) => shows.map(({patterns, is}) => `${[...patterns].map(([locus, pattern]) => `${locus.symbol} ${writePattern(pattern, locus)}`).join(' ')} ${is}`)

describe('a locus that a trait names', () => {
  it('comes from the reference, with its rules, where the states are named alike', () => {
    const book = bookOf({'traits/head.md': trait('walnut, rose, pea, single', 'loci: [R, P]')})
    expect([...book.loci.values()].map(({locus, known}) => [locus.symbol, locus.on, locus.alleles.join(' '), known?.name, known?.from])).toEqual([
      ['R', 'autosome', 'R r+', 'Rose comb', 'reference'], ['P', 'autosome', 'P p+', 'Pea comb', 'reference'],
    ])
    expect(rulesOf(named(book, 'head'))).toEqual(['R R/_ P P/_ walnut', 'R R/_ P p+/p+ rose', 'R r+/r+ P P/_ pea', 'R r+/r+ P p+/p+ single'])
    expect(named(book, 'head').loci[1]).toBe(book.loci.get('P')?.locus)
  })

  it('takes of several ways to score it the one that has most of the trait’s states', () => {
    const read = (states: string) => rulesOf(named(bookOf({'traits/blue.md': trait(states, 'loci: P')}), 'blue')).length
    expect([read('pea, single'), read('single, neat pea, coarse pea')]).toEqual([2, 3])
  })

  it('may be written out, and keeps what the reference knows of it', () => {
    const book = bookOf({'traits/head.md': trait('pea, single', 'loci: {P: {on: autosome, alleles: [P, P1, p]}}', 'shows:', '  - {P: p/p, is: single}', '  - {P: _/_, is: pea}')})
    expect(book.loci.get('P')).toMatchObject({locus: {alleles: ['P', 'P1', 'p']}, known: {name: 'Pea comb'}})
  })

  it('may be written out in part, the rest from the reference', () => {
    const book = bookOf({'traits/head.md': trait('pea, single', 'loci: {P: {linked: {O: 7%}}}'), 'traits/egg.md': trait('blue, not blue', 'loci: [O]', 'seen-in: female from first egg')})
    expect(book.loci.get('P')?.locus.alleles).toEqual(['P', 'p+'])
    expect(book.linkages.map(({loci, recombination, from}) => [...loci.map(locus => locus.symbol), recombination, from])).toEqual([['P', 'O', 0.07, 'project']])
  })

  it('has the neighbours that the reference knows, with their doubts, as soon as both are named', () => {
    const pea = {'traits/head.md': trait('pea, single', 'loci: [P]')}
    expect(bookOf(pea).linkages).toEqual([])
    const [linkage] = bookOf({...pea, 'traits/egg.md': trait('blue, not blue', 'loci: [O]', 'seen-in: female')}).linkages
    expect(linkage).toMatchObject({recombination: 0.043, from: 'reference'})
    expect(linkage?.doubt).toContain('hobbyists')
  })

  it('reads otherwise where the project has a record of its own in loci/', () => {
    const book = bookOf({
      'loci/P.md': '---\nname: Our pea\non: autosome\nalleles: [P, p]\nlooks:\n  - shows: [{P: P/_, is: pea}, {P: p/p, is: single}]\n---\nAs we have it.\n',
      'loci/Wi.md': '---\nname: Wisp\non: Z\nalleles: [Wi, wi+]\n---\n',
      'traits/head.md': trait('pea, single', 'loci: [P]'), 'traits/wisp.md': trait('wisp, none', 'loci: [Wi]', 'shows: [{Wi: Wi/_, is: wisp}, {Wi: wi+/_, is: none}]'),
    })
    expect(book.loci.get('P')).toMatchObject({locus: {alleles: ['P', 'p']}, known: {name: 'Our pea', body: 'As we have it.\n', from: 'project'}})
    expect(book.loci.get('Wi')?.locus.on).toBe('Z')
    expect(rulesOf(named(book, 'head'))).toEqual(['P P/_ pea', 'P p/p single'])
  })

  it('has the alleles that the reference calls rare only where a record names one', () => {
    const ground = {'traits/ground.md': trait('silver, gold', 'loci: [S]')}, alleles = (files: Files) => bookOf(files).loci.get('S')?.locus.alleles.join(' ')
    expect(alleles(ground)).toBe('S s+')
    expect(alleles({'traits/ground.md': trait('silver, gold, pale', 'loci: [S]', 'shows: [{S: s^al/s^al, is: pale}, {S: S/_, is: silver}, {S: _/_, is: gold}]')})).toBe('S s+ s^al')
    expect(alleles({...ground, 'strains/fell-buff.md': '---\nname: Fell Buff\nrole: donor\nalleles: {S: {s+: 90%, s^al: 10%}}\n---\n'})).toBe('S s+ s^al')
    expect(alleles({'traits/ground.md': trait('silver, gold', 'loci: {S: {alleles: [S, s+, s^al]}}')})).toBe('S s+ s^al')
    expect(problems({...ground, 'loci/Wi.md': '---\nname: Wisp\non: Z\nalleles: [Wi, wi+]\nrare: [wi]\n---\n'})).toEqual(['loci/Wi.md:5 unknown-allele'])
  })

  it('is a slip where nothing describes it, once', () => {
    const {problems: found} = linkFiles(around({'traits/head.md': trait('pea, single', 'loci: [p]'), 'traits/other.md': trait('a, b', 'loci: [Qq]', 'shows: [{Qq: Q/Q, is: a}]')}))
    expect(codesAt(found)).toEqual(['traits/head.md:4 unknown-locus', 'traits/other.md:4 unknown-locus'])
    expect(found[0]?.remedy).toContain('did you mean P')
  })

  it('is said where it is named, and not again by strains, tests and rules that use it, nor as looks without a genotype', () => {
    const {problems: found} = linkFiles(around({
      'traits/comb.md': trait('walnut, rose, pea, single', 'loci: [R, Pq]'), 'strains/fell-buff.md': '---\nname: Fell Buff\nrole: donor\nalleles: {P: {P: 100%}}\n---\n',
      'birds/B-9.md': '---\nband: B-9\nsex: female\nstrain: fell-buff\ntested: {Pq: P/P}\n---\n', 'strains/holm-white.md': '---\nname: Holm White\nrole: recurrent\n---\n',
    }))
    expect(codesAt(found)).toEqual(['traits/comb.md:4 unknown-locus'])
    expect(found[0]?.remedy).toBe('did you mean P?')
  })

  it('is no second slip where its own record cannot be read', () => {
    expect(problems({'loci/Qq.md': '---\nname: Qq\non: autosome\n---\n', 'traits/other.md': trait('a, b', 'loci: [Qq]')})).toEqual(['loci/Qq.md:1 missing-key'])
  })

  it('belongs to a trait whose rules name it, whichever trait describes it', () => {
    const book = bookOf({
      'traits/head.md': trait('pea, single', 'loci: [P]'),
      'traits/neat.md': trait('neat, coarse', 'shows:', '  - {P: P/P, is: neat}', '  - {P: P/p+, is: coarse}'),
    })
    expect(named(book, 'neat').loci).toEqual([book.loci.get('P')?.locus])
  })
})

describe('rules', () => {
  it('hold for one sex, in part, or let no chick hatch', () => {
    const book = bookOf({'traits/legs.md': trait('short, long', 'loci: [Cp]'), 'traits/ground.md': trait('silver, brassy, gold', 'loci: [S]', 'shows:', '  - {S: S/s+, sex: male, is: brassy, penetrance: 60%}', '  - {S: S/_, is: silver}', '  - {S: s+/_, is: gold}')})
    const legs = lookRulesOf(named(book, 'legs')), ground = lookRulesOf(named(book, 'ground'))
    expect(legs && [[0, 0], [0, 1], [1, 1]].map(([one = 0, other = 0]) => lookOf(legs, [[one, other]], 'male'))).toEqual([
      {states: new Float64Array([0, 0]), lethal: 1, unsaid: 0}, {states: new Float64Array([1, 0]), lethal: 0, unsaid: 0}, {states: new Float64Array([0, 1]), lethal: 0, unsaid: 0},
    ])
    expect(ground && [...lookOf(ground, [[0, 1]], 'male').states]).toEqual([0.4, 0.6, 0])
    expect(ground && [...lookOf(ground, [[0, null]], 'female').states]).toEqual([1, 0, 0])
  })

  it('count their loci by places in a longer list, which must hold them', () => {
    const book = bookOf({'traits/head.md': trait('walnut, rose, pea, single', 'loci: [R, P]')})
    const head = named(book, 'head'), [R, P] = head.loci
    expect(R && P && lookRulesOf(head, [P, R])?.loci).toEqual([1, 0])
    expect(() => lookRulesOf(head, R ? [R] : [])).toThrow(RangeError)
    expect(lookRulesOf(named(book, 'comb'))).toBeNull()
  })

  it('are none where one of them cannot be read, so that no other is blamed', () => {
    expect(problems({'traits/head.md': trait('pea, single', 'loci: [P]', 'shows:', '  - {P: P/_, is: pea}', '  - {P: pp, is: single}')})).toEqual(['traits/head.md:7 unreadable-genotype'])
  })

  it('of one locus may hide another without a word', () => {
    expect(problems({
      'traits/colour.md': trait('white, splash, blue, black', 'loci: [C, Bl]', 'shows:', '  - {C: c/c, is: white}', '  - {Bl: Bl/Bl, is: splash}', '  - {Bl: Bl/_, is: blue}', '  - {Bl: bl+/bl+, is: black}'),
      'strains/holm-white.md': '---\nname: Holm White\nrole: recurrent\ntrue-for: {comb: single, colour: white}\n---\n',
    })).toEqual([])
  })

  it('of the reference are reached, give every state and fix nothing they should not: each way to score, as a trait', () => {
    const shipped = readRecords(SHIPPED_LOCI).records.locus
    const ways = shipped.flatMap(({data}) => (data.looks ?? []).map(({shows}) => ({
      states: [...new Set(shows.map(rule => rule.is))].filter(is => is !== 'lethal'), loci: [...new Set(shows.flatMap(rule => rule.others.map(({key}) => key)))],
    })))
    const files = Object.fromEntries(ways.map(({states, loci}, index) => [`traits/way-${index}.md`, trait(states.join(', '), `loci: [${loci.join(', ')}]`)]))
    expect(problems(files)).toEqual([])
  })
})

describe('a linkage', () => {
  const head = (linked: string) => trait('pea, single', `loci: {P: {linked: ${linked}}}`)

  it.each([['{P: 10%}', 'itself'], ['{Qx: 10%}', 'nothing describes'], ['{O: 60%}', 'more than half'], ['{S: 10%}', 'on the Z']])('%s is a slip: %s', (linked, says) => {
    const {problems: found} = linkFiles(around({'traits/head.md': head(linked), 'traits/ground.md': trait('silver, gold', 'loci: [S]')}))
    expect(found.map(({code, reason}) => [code, reason.includes(says)])).toEqual([['linkage-impossible', true]])
  })

  it('told in two ways is a slip, and told twice alike is none', () => {
    const two = (share: string) => problems({'traits/head.md': head('{O: 4%}'), 'traits/egg.md': trait('blue, not blue', `loci: {O: {linked: {P: ${share}}}}`)})
    expect([two('4%'), two('5%')]).toEqual([[], ['traits/head.md:4 locus-described-twice']])
  })
})

describe('a test', () => {
  const files = (genotype: string, sex: string): Files => ({'traits/ground.md': trait('silver, gold', 'loci: [S]'), 'birds/H-9.md': `---\nband: H-9\nsex: ${sex}\nstrain: holm-white\ntested: {S: ${genotype}}\n---\n`})

  it.each([['S/s+', 'male'], ['S/_', 'male'], ['S/-', 'female'], ['S/_', 'female'], ['_/-', 'female'], ['S/s+', 'unknown']])('%s of a %s stands', (genotype, sex) => {
    const bird = bookOf(files(genotype, sex)).birds.find(({band}) => band === 'H-9')
    expect([...bird?.tested ?? []].map(([locus, pattern]) => writePattern(pattern, locus))).toEqual([genotype])
  })

  it.each([['S/s+', 'female'], ['S/-', 'male']])('%s of a %s cannot be', (genotype, sex) => {
    expect(problems(files(genotype, sex))).toEqual(['birds/H-9.md:5 tested-impossible'])
  })

  it('names an allele and a locus that are there', () => {
    expect(problems(files('S/s', 'male'))).toEqual(['birds/H-9.md:5 unknown-allele'])
    expect(problems({...files('S/S', 'male'), 'traits/ground.md': trait('silver, gold')})).toEqual(['birds/H-9.md:5 unknown-locus'])
  })

  it('told by the hatch and by the bird’s own file is one, unless they disagree', () => {
    const both = (own: string): Files => ({
      'traits/head.md': trait('pea, single', 'loci: [P]'), 'hatches/2024-09.md': '---\npen: 2024-A\nset: 2024-03-02\non: 2024-03-23\nchicks:\n  - {band: 24-901, sex: female, tested: {P: P/p+}}\n---\n',
      'birds/24-901.md': `---\nband: 24-901\ntested: {P: ${own}}\n---\n`,
    })
    expect([problems(both('p+/P')), problems(both('P/P'))]).toEqual([[], ['birds/24-901.md:3 records-disagree']])
  })
})

it('a reference of a test’s own may stand in the place of ours', () => {
  const reading = readRecords(folderInMemory(around({'traits/q.md': trait('a, b', 'loci: [Q]')})), folderInMemory({'loci/Q.md': '---\nname: Q\non: Z\nalleles: [Q, q]\nlooks:\n  - shows: [{Q: Q/_, is: a}, {Q: q/_, is: b}]\n---\n'}))
  expect([link(reading).slips, link(reading).book?.loci.get('Q')?.locus.on]).toEqual([[], 'Z'])
})
