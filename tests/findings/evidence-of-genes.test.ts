import {describe, expect, it} from 'vitest'
import type {Evidence} from '../../src/findings/evidence.ts'
import {AROUND} from '../logbook/around.ts'
import {GROUND, heredityBook} from './heredity-book.ts'

const PEN = (males: string, females: string) => ({'pens/2027-A.md': `---\nseason: 2027\nmales: [${males}]\nfemales: [${females}]\nfrom: 2027-02-10\n---\n`})
const LATER = {'project.md': (AROUND['project.md'] ?? '').replace('aim:', 'as-of: 2027-06-01\naim:')}
const PURE = {'birds/A.md': '---\nband: A\nsex: male\nstrain: fell-buff\ntested: {P: P/P}\n---\n'}
const CARRIER = {'birds/A.md': '---\nband: A\nsex: male\nstrain: fell-buff\ntested: {P: P/p+}\n---\n'}

function asked(requirement: string, lines: readonly string[], files: Readonly<Record<string, string>>): Evidence {
  const {findings} = heredityBook(lines, undefined, {...LATER, ...files, 'requirements.md': `---\nrequirements:\n  - {title: t, asked: a, ${requirement}}\n---\n`})
  return findings.evidence.items[0] ?? expect.fail('no evidence')
}

describe('fixed(requirement, from)', () => {
  const of = (requirement: string, files: Readonly<Record<string, string>>, look = 'comb=pea') =>
    asked(requirement, ['A male - -', 'B female - - tested={P:~P/P}', `x male A B ${look}`, `y female A B ${look}`], {...PEN('x', 'y'), ...files})

  it('is met where not one breeder can carry what is not wanted, and all were scored', () => {
    expect(of('kind: fixed, trait: comb', PURE)).toMatchObject({state: 'met', shown: {asked: 0.95, birds: 2, loci: [{scored: 2, unscored: [], fixation: {clean: 1}}]}})
    expect(of('kind: fixed', PURE)).toMatchObject({state: 'met', shown: {trait: null}})
    expect(of('kind: fixed, trait: comb, at-least: 100%', PURE).state).toBe('met')
  })

  it('holds the joint chance against the share asked, and names who is in the way', () => {
    // by hand: each a carrier or not with ½, on its own, as the sire has one dose and the dam none: ¼ that neither is
    const found = of('kind: fixed, trait: comb', CARRIER)
    expect(found).toMatchObject({state: 'not-yet', shown: {loci: [{fixation: {clean: expect.closeTo(0.25, 6) as number}}]}})
    expect(found.shown.kind === 'fixed' && found.shown.loci[0]?.fixation.inTheWay.map(({bird}) => bird.band).sort()).toEqual(['x', 'y'])
    expect(of('kind: fixed, trait: comb, at-least: 20%', CARRIER).state).toBe('met')
    expect(of('kind: fixed, trait: comb, at-least: 26%', CARRIER).state).toBe('not-yet')
  })

  it('is not yet where a breeder carries it for certain, whatever share is asked', () => {
    expect(of('kind: fixed, trait: comb, at-least: 0%', CARRIER, 'tested={P:~P/p+}').state).toBe('not-yet')
  })

  it('is never met by what was not scored', () => {
    expect(of('kind: fixed, trait: comb', PURE, '')).toMatchObject({state: 'cannot-tell', shown: {loci: [{scored: 0, unscored: [{band: 'x'}, {band: 'y'}]}]}})
    expect(of('kind: fixed, trait: comb', CARRIER, '').state).toBe('cannot-tell')
    const one = asked('kind: fixed, trait: comb', ['A male - -', 'B female - - tested={P:~P/P}', 'x male A B', 'y female A B comb=pea'], {...PEN('x', 'y'), ...PURE})
    expect(one).toMatchObject({state: 'cannot-tell', shown: {loci: [{scored: 1, unscored: [{band: 'x'}]}]}})
  })

  it('asks no score of a sex that cannot show it', () => {
    const hens = {'traits/comb.md': '---\nname: Comb\nstates: [pea, single]\ntarget: pea\nrequired: yes\nseen-in: female\nloci:\n  P: {on: autosome, alleles: [P, p+]}\nshows:\n  - {P: P/_, is: pea}\n  - {P: _/_, is: single}\n---\n'}
    expect(asked('kind: fixed, trait: comb', ['A male - -', 'B female - - tested={P:~P/P}', 'x male A B', 'y female A B comb=pea'], {...PEN('x', 'y'), ...PURE, ...hens}).state).toBe('met')
  })

  it('cannot be told where no rule says what it comes of, or nothing breeds', () => {
    expect(of('kind: fixed, trait: weight-20', PURE)).toMatchObject({state: 'cannot-tell', shown: {loci: []}})
    expect(asked('kind: fixed, trait: comb', [], {})).toMatchObject({state: 'cannot-tell', shown: {birds: 0}})
  })

  it('takes the traits of the clauses that it names, and cannot tell of a clause without one', () => {
    const standard = {'standard/1.md': '---\ndraft: 1\non: 2024-01-01\ntitle: t\nclauses:\n  male/comb: {trait: comb}\n---\n## Male\n\n**Comb.** Pea.\n\n**Gait.** Free.\n'}
    expect(of('kind: fixed, clauses: [male/comb]', {...PURE, ...standard})).toMatchObject({state: 'met', shown: {trait: {id: 'comb'}, untoldClauses: []}})
    expect(of('kind: fixed, clauses: [male/comb, male/gait]', {...PURE, ...standard})).toMatchObject({state: 'cannot-tell', shown: {untoldClauses: ['male/gait']}, ways: [{kind: 'hold-clauses'}]})
  })

  it('asks for what the clause allows, and not for the target of its trait', () => {
    const traits = {'traits/comb.md': '---\nname: Comb\nstates: [pea, single]\ntarget: single\nrequired: yes\nloci:\n  P: {on: autosome, alleles: [P, p+]}\nshows:\n  - {P: P/_, is: pea}\n  - {P: _/_, is: single}\n---\n'}
    const standard = (allows: string) => ({'standard/1.md': `---\ndraft: 1\non: 2024-01-01\ntitle: t\nclauses:\n  male/comb: {trait: comb, allows: ${allows}}\n---\n## Male\n\n**Comb.** So.\n`})
    const files = {...traits, 'birds/A.md': '---\nband: A\nsex: male\nstrain: fell-buff\ntested: {P: p+/p+}\n---\n', ...PEN('x', 'y')}, lines = ['A male - -', 'B female - - tested={P:~p+/p+}', 'x male A B comb=single', 'y female A B comb=single']
    expect(asked('kind: fixed, trait: comb', lines, files).state).toBe('met')
    expect(asked('kind: fixed, clauses: [male/comb]', lines, {...files, ...standard('single')}).state).toBe('met')
    expect(asked('kind: fixed, clauses: [male/comb]', lines, {...files, ...standard('pea')})).toMatchObject({state: 'not-yet', shown: {trait: {id: 'comb'}, loci: [{fixation: {unwanted: [1]}, scored: 2}]}})
  })

  it('asks a clause of a colour variety of breeders of that variety only', () => {
    const standard = (variety: string) => ({'traits/ground.md': GROUND, 'standard/1.md': `---\ndraft: 1\non: 2024-01-01\ntitle: t\nvarieties: {Light: {ground: silver}, Dark: {ground: gold}}\nclauses:\n  male/comb: {trait: comb${variety}}\n---\n## Male\n\n**Comb.** Pea.\n`})
    const of = (variety: string, z: string) => asked('kind: fixed, clauses: [male/comb]', ['A male - -', 'B female - - tested={P:~P/P}', 'C female - - tested={P:~p+/p+}', 'x male A B comb=pea ground=silver', 'y female A B comb=pea ground=silver', `z female A C comb=pea${z}`], {...PURE, ...PEN('x', 'y, z'), ...standard(variety)})
    expect(of('', ' ground=gold').state).toBe('not-yet')
    expect(of(', variety: Light', ' ground=gold')).toMatchObject({state: 'met', shown: {birds: 3, loci: [{fixation: {birds: 2}, variety: 'Light'}]}})
    expect(of(', variety: Dark', ' ground=gold').state).toBe('not-yet')
    // one that was not scored may be of it
    expect(of(', variety: Light', '')).toMatchObject({state: 'cannot-tell', shown: {untold: [{band: 'z'}]}})
    expect(of(', variety: Dark', ' ground=silver')).toMatchObject({state: 'cannot-tell', ways: [{kind: 'keep-breeders'}]})
  })

  it('works a trait that is not required for the asking', () => {
    const loose = {'traits/comb.md': '---\nname: Comb\nstates: [pea, single]\ntarget: pea\nloci:\n  P: {on: autosome, alleles: [P, p+]}\nshows:\n  - {P: P/_, is: pea}\n  - {P: _/_, is: single}\n---\n'}
    expect(of('kind: fixed, trait: comb', {...CARRIER, ...loose})).toMatchObject({state: 'not-yet', shown: {loci: [{fixation: {clean: expect.closeTo(0.25, 6) as number}}]}})
    expect(of('kind: fixed', {...CARRIER, ...loose})).toMatchObject({state: 'cannot-tell', shown: {loci: []}})
  })
})

describe('fixed(requirement, from): the way', () => {
  const LINES = ['A male - -', 'B female - - tested={P:~P/P}', 'x male A B comb=pea', 'y female A B comb=pea', 'z female A B']
  const ways = (requirement: string, lines = LINES, pen = PEN('x', 'y, z'), files = CARRIER) => asked(requirement, lines, {...pen, ...files}).ways

  it('names who is to be tested first with the clean chicks it takes, and who is to be scored', () => {
    // (½)^7 leaves one chance in a hundred of ½: seven clean chicks of a single-combed mate
    expect(ways('kind: fixed, trait: comb')).toMatchObject([
      {kind: 'test-mate', trait: {id: 'comb'}, locus: {symbol: 'P'}, others: 0, birds: [{carries: expect.closeTo(0.5, 6) as number, chicks: 7}, {chicks: 7}, {chicks: 7}], earliest: {kind: 'season', season: 2027}},
      {kind: 'score-breeders', birds: [{band: 'z'}]},
    ])
  })

  it('leaves out who carries it for certain, and one alone in the way where that is enough', () => {
    const of = (x: string) => ['A male - -', 'B female - - tested={P:~P/P}', `x male A B comb=pea${x}`, 'w male A B comb=pea tested={P:~P/P}', 'y female A B comb=pea tested={P:~P/P}', 'z female A B comb=pea tested={P:~P/P}'], pen = PEN('x, w', 'y, z')
    expect(ways('kind: fixed, trait: comb', of(' tested={P:~P/p+}'), pen)).toMatchObject([{kind: 'leave-out', birds: [{band: 'x'}], clean: 1}])
    expect(ways('kind: fixed, trait: comb', of(''), pen)).toMatchObject([{kind: 'leave-out', birds: [{band: 'x'}], clean: 1}, {kind: 'test-mate', birds: [{bird: {band: 'x'}}]}])
  })

  it('empties no pen: where no breeder of a sex would be left it names living birds for its place, the likeliest to be clean first', () => {
    const of = (...more: readonly string[]) => ['A male - -', 'B female - - tested={P:~P/P}', 'x male A B comb=pea tested={P:~P/p+}', 'y female A B comb=pea tested={P:~P/P}', 'z female A B comb=pea tested={P:~P/P}', ...more]
    // u may carry it with ½, v not at all, w does for certain; y and z stay
    expect(ways('kind: fixed, trait: comb', of('u male A B comb=pea', 'v male A B comb=pea tested={P:~P/P}', 'w male A B comb=pea tested={P:~P/p+}', 's female A B comb=pea'))).toMatchObject([
      {kind: 'put-others', birds: [{band: 'x'}], sexes: ['male'], choices: [{bird: {band: 'v'}, carries: 0}, {bird: {band: 'u'}, carries: expect.closeTo(0.5, 6) as number, chicks: 7}], earliest: {kind: 'season', season: 2027}},
    ])
    expect(ways('kind: fixed, trait: comb', of())).toMatchObject([{kind: 'put-others', choices: []}])
    // the only male in the way alone, and not for certain, is to be tested, not left out
    expect(ways('kind: fixed, trait: comb', of().map(line => line.replace(' tested={P:~P/p+}', '')))).toMatchObject([{kind: 'test-mate', birds: [{bird: {band: 'x'}}]}])
  })

  it('asks for rules where none say which genes it comes of, and for breeders where there are none', () => {
    expect(ways('kind: fixed, trait: weight-20')).toMatchObject([{kind: 'say-genes', traits: [{id: 'weight-20'}]}])
    expect(asked('kind: fixed, trait: comb', [], {}).ways).toEqual([{kind: 'keep-breeders', earliest: null}])
    expect(asked('kind: fixed, trait: comb', [...LINES.slice(0, 4), 'z female A B comb=pea'], {...PEN('x', 'y, z'), ...PURE}).ways).toEqual([])
  })
})
