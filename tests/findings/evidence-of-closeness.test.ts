import {describe, expect, it} from 'vitest'
import {inbreeding} from '../../src/findings/evidence-of-closeness.ts'
import type {Evidence} from '../../src/findings/evidence.ts'
import type {ShownInbreeding} from '../../src/findings/shown-of-breeding.ts'
import {AROUND, type Files} from '../logbook/around.ts'
import {plainRequirement} from '../paper-parts.ts'
import {heredityBook} from './heredity-book.ts'

const PEN = (males: string, females: string): Files => ({'pens/2027-A.md': `---\nseason: 2027\nmales: [${males}]\nfemales: [${females}]\nfrom: 2027-02-10\n---\n`})
const FILES = {
  'project.md': (AROUND['project.md'] ?? '').replace('aim:', 'as-of: 2027-06-01\naim:'), 'birds/A.md': '---\nband: A\nsex: male\nstrain: fell-buff\n---\n', 'birds/D.md': '---\nband: D\nsex: male\nstrain: fell-buff\n---\n',
}
/** F1 by two cocks, F2 and F3 inside: x and y of full sibs (F ¼), z of half unrelated parents. */
const LINES = ['A male - -', 'B female - -', 'C female - -', 'D male - -', 'm male A B', 'n female A B', 'o female D C', 'p male D C', 'x male m n', 'y female m n', 'z female m o', 'w male p o', 'q male x y', 'r female x y']

function found(requirement: string, pen = PEN('x', 'y, z'), lines = LINES): Evidence & {readonly shown: ShownInbreeding} {
  const {findings} = heredityBook(lines, undefined, {...FILES, ...pen, 'requirements.md': `---\nrequirements:\n  - {title: t, asked: a, kind: inbreeding, ${requirement}}\n---\n`})
  const item = findings.evidence.items[0] ?? expect.fail('no evidence')
  return item.shown.kind === 'inbreeding' ? {...item, shown: item.shown} : expect.fail('not of this kind')
}

describe('inbreeding(requirement, from): its parts', () => {
  it('counts lines of breeding males, and names living males of others', () => {
    expect(found('male-lines: 1')).toMatchObject({state: 'met', shown: {parts: [{of: 'male-lines', have: 1, met: true}], lines: [{founder: {band: 'A'}, males: [{band: 'x'}]}]}})
    // p, w and their like go back to D
    expect(found('male-lines: 2')).toMatchObject({state: 'not-yet', ways: [{kind: 'more-lines', more: 1, males: [{band: 'p'}], earliest: {kind: 'day'}}]})
    expect(found('male-lines: 3').ways).toMatchObject([{kind: 'more-lines', more: 2, earliest: null}])
    expect(found('male-lines: 2', PEN('x, w', 'y')).state).toBe('met')
  })

  it('holds the rise of F in a generation, and the size it comes to, against what is asked', () => {
    // by hand: F2 mean F of ¼, ¼, ⅛·0 …: x ¼, y ¼, z 0, w ¼: 3/16; F3 of two chicks of full sibs of full sibs: ⅜
    const {shown, state, ways} = found('rate-at-most: 5%', PEN('q', 'r'))
    expect(shown.parts).toMatchObject([{of: 'rate', have: expect.closeTo((3 / 8 - 3 / 16) / (1 - 3 / 16), 9) as number, met: false}])
    expect(shown.step).toMatchObject({label: 'F3', since: 'F2', birds: 2})
    expect([state, ways[0]?.kind]).toEqual(['not-yet', 'mate-wider'])
    expect(found('rate-at-most: 30%', PEN('q', 'r')).state).toBe('met')
    // by hand: ΔF of each is 1 − (⅝)^(1/2), at three known generations: Ne 1/(2ΔF) = 2.39
    const size = found('size-at-least: 50', PEN('q', 'r')), each = 1 - Math.sqrt(5 / 8)
    expect(size.shown.parts).toMatchObject([{of: 'size', have: expect.closeTo(1 / (2 * each), 9) as number, met: false}])
    // one cock and one hen count for two; with one hen alone no number of cocks counts for four
    expect(size).toMatchObject({shown: {census: 2}, ways: [{kind: 'more-males', more: null}]})
    expect(found('size-at-least: 2', PEN('q', 'r')).state).toBe('met')
    // 4·M·3/(M + 3) ≥ 6 at M = 3 by hand
    expect(found('size-at-least: 6', PEN('x', 'y, z, n')).ways).toMatchObject([{kind: 'more-males', more: 2}])
  })

  it('reads rate and size at the cautious end where that is asked, and cannot where one rate alone is known', () => {
    const {shown} = found('rate-at-most: 30%, size-at-least: 2, judged-on: cautious', PEN('q', 'r'))
    // both birds have the same rate: no spread, and the end is the figure itself
    expect(shown.parts).toMatchObject([{met: true, high: expect.closeTo(1 - Math.sqrt(5 / 8), 9) as number}, {met: true}])
    expect(found('rate-at-most: 30%, judged-on: cautious', PEN('q', 'y'), LINES.slice(0, -1)).state).toBe('cannot-tell')
  })

  it('cannot tell a rate before two generations, nor one of birds whose descent is not known', () => {
    expect(found('rate-at-most: 5%', PEN('m', 'n'), LINES.slice(0, 8))).toMatchObject({state: 'cannot-tell', shown: {step: null}, ways: [{kind: 'breed-on'}]})
    const {findings} = heredityBook(LINES, undefined, {...FILES, ...PEN('q', 'r')}), asked = plainRequirement('inbreeding', {rateAtMost: 0.3, sizeAtLeast: 2})
    const states = [0, 1].map(atLeast => inbreeding(asked, {...findings, closeness: findings.closeness.map(step => ({...step, atLeast}))}).state)
    expect(states).toEqual(['met', 'cannot-tell'])
  })

  it('wants every part, and says of descent how far it is known', () => {
    const {state, shown} = found('at-most: 50%, rate-at-most: 30%, male-lines: 2', PEN('q', 'r'))
    expect([state, ...shown.parts.map(({met}) => met)]).toEqual(['not-yet', true, true, false])
    // q and r: three generations, all known
    expect(shown.of?.generations).toBe(3)
    expect(found('').ways).toEqual([{kind: 'name-figure', earliest: null}])
  })
})

describe('inbreeding(requirement, from): the mean', () => {
  /** Brother and sister, and their chicks: F ¼ by hand; a brother of other parents has none. */
  const OWN = ['A male - -', 'B female - -', 'C female - -', 'D male - -', 'm male A B', 'n female A B', 'o female D C', 'x male m n', 'y female m n', 'z female m o']
  const of = (requirement: string, lines = OWN, pen = PEN('x', 'y, z')) => found(requirement, pen, lines)

  it('holds the mean F of the breeders against the most asked', () => {
    // by hand: (¼ + ¼ + 0) / 3
    expect(of('at-most: 10%')).toMatchObject({state: 'not-yet', shown: {of: {birds: 3, mean: expect.closeTo(1 / 6, 12) as number, byF: [{bird: {band: 'x'}, f: 0.25}, {bird: {band: 'y'}}, {bird: {band: 'z'}, f: 0}], atLeast: []}}})
    expect(of('at-most: 17%').state).toBe('met')
    expect(of('').state).toBe('cannot-tell')
  })

  it('forecasts what the least akin pairs of the breeders would give', () => {
    // by hand: kinship of x with y ⅜, with z 3/16: each hen once, 9/32
    expect(of('at-most: 10%').ways).toMatchObject([{kind: 'mate-wider', figures: [{of: 'mean', mark: 0.1}], least: expect.closeTo(9 / 32, 12) as number, earliest: null}])
    // x with o, who is no kin: chicks of 2027, bred from in 2028
    expect(of('at-most: 10%', OWN, PEN('x', 'o')).ways).toMatchObject([{kind: 'mate-wider', least: 0, earliest: {kind: 'season', season: 2028}}])
    expect(of('at-most: 10%', OWN, PEN('x', '')).ways).toMatchObject([{kind: 'mate-wider', least: null, earliest: null}])
  })

  it('cannot be told where an ancestor nearer than the third generation is not in the book', () => {
    expect(of('at-most: 17%', OWN, PEN('m', 'n'))).toMatchObject({state: 'cannot-tell', shown: {of: {mean: 0, atLeast: [{band: 'm'}, {band: 'n'}]}}})
  })

  it('cannot be told where the parents that may be could take it past the limit', () => {
    const lines = [...OWN.slice(0, 7), 'x male m {n:~50%,~o:~50%}', 'y female m o']
    // by hand: x ⅛ in the mean, between 0 and ¼; y none
    expect(of('at-most: 10%', lines, PEN('x', 'y'))).toMatchObject({state: 'cannot-tell', shown: {of: {mean: expect.closeTo(1 / 16, 12) as number, low: 0, high: expect.closeTo(1 / 8, 12) as number}}})
    expect(of('at-most: 13%', lines, PEN('x', 'y')).state).toBe('met')
    expect(of('at-most: 5%', lines, PEN('x', 'y')).state).toBe('not-yet')
  })

  it('cannot be told where nothing breeds', () => {
    expect(found('at-most: 10%', {}, [])).toMatchObject({state: 'cannot-tell', shown: {of: null}})
  })
})
