import {describe, expect, it} from 'vitest'
import type {Evidence} from '../../src/findings/evidence.ts'
import {AROUND} from '../logbook/around.ts'
import {heredityBook} from './heredity-book.ts'

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

  it('works a trait that is not required for the asking', () => {
    const loose = {'traits/comb.md': '---\nname: Comb\nstates: [pea, single]\ntarget: pea\nloci:\n  P: {on: autosome, alleles: [P, p+]}\nshows:\n  - {P: P/_, is: pea}\n  - {P: _/_, is: single}\n---\n'}
    expect(of('kind: fixed, trait: comb', {...CARRIER, ...loose})).toMatchObject({state: 'not-yet', shown: {loci: [{fixation: {clean: expect.closeTo(0.25, 6) as number}}]}})
    expect(of('kind: fixed', {...CARRIER, ...loose})).toMatchObject({state: 'cannot-tell', shown: {loci: []}})
  })
})

describe('inbreeding(requirement, from)', () => {
  /** Brother and sister, and their chicks: F ¼ by hand; a brother of other parents has none. */
  const LINES = ['A male - -', 'B female - -', 'C female - -', 'D male - -', 'm male A B', 'n female A B', 'o female D C', 'x male m n', 'y female m n', 'z female m o']
  const of = (requirement: string, lines = LINES, pen = PEN('x', 'y, z')) => asked(requirement, lines, {...pen, ...Object.fromEntries(['A', 'D'].map(band => [`birds/${band}.md`, `---\nband: ${band}\nsex: male\nstrain: fell-buff\n---\n`]))})

  it('holds the mean F of the breeders against the most asked', () => {
    // by hand: (¼ + ¼ + 0) / 3
    expect(of('kind: inbreeding, at-most: 10%')).toMatchObject({state: 'not-yet', shown: {of: {birds: 3, mean: expect.closeTo(1 / 6, 12) as number, byF: [{bird: {band: 'x'}, f: 0.25}, {bird: {band: 'y'}}, {bird: {band: 'z'}, f: 0}], atLeast: []}}})
    expect(of('kind: inbreeding, at-most: 17%').state).toBe('met')
    expect(of('kind: inbreeding').state).toBe('cannot-tell')
  })

  it('cannot be told where an ancestor nearer than the third generation is not in the book', () => {
    expect(of('kind: inbreeding, at-most: 17%', LINES, PEN('m', 'n'))).toMatchObject({state: 'cannot-tell', shown: {of: {mean: 0, atLeast: [{band: 'm'}, {band: 'n'}]}}})
  })

  it('cannot be told where the parents that may be could take it past the limit', () => {
    const lines = [...LINES.slice(0, 7), 'x male m {n:~50%,~o:~50%}', 'y female m o']
    // by hand: x ⅛ in the mean, between 0 and ¼; y none
    expect(of('kind: inbreeding, at-most: 10%', lines, PEN('x', 'y'))).toMatchObject({state: 'cannot-tell', shown: {of: {mean: expect.closeTo(1 / 16, 12) as number, low: 0, high: expect.closeTo(1 / 8, 12) as number}}})
    expect(of('kind: inbreeding, at-most: 13%', lines, PEN('x', 'y')).state).toBe('met')
    expect(of('kind: inbreeding, at-most: 5%', lines, PEN('x', 'y')).state).toBe('not-yet')
  })

  it('cannot be told where nothing breeds', () => {
    expect(asked('kind: inbreeding, at-most: 10%', [], {})).toMatchObject({state: 'cannot-tell', shown: {of: null}})
  })
})
