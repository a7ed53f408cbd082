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

  it('holds the rise in a generation, and the size it comes to, against what is asked', () => {
    // by hand: F2 mean F of x ¼, y ¼, z 0, w ¼: 3/16; F3 of two chicks of full sibs of full sibs: ⅜. Kinship of two: F2 (⅜ + 3·3/16)/6 = 5/32, F3 ½
    const {shown, state, ways} = found('rate-at-most: 5%', PEN('q', 'r'))
    expect(shown.rise).toMatchObject({step: 'F3', since: 'F2', closing: 'F1', generations: 2, birds: 2, families: 1, inbreeding: {latest: {value: expect.closeTo((3 / 8 - 3 / 16) / (1 - 3 / 16), 9) as number, interval: null}}})
    expect(shown.parts).toMatchObject([{of: 'rate', by: 'kinship', have: expect.closeTo((1 / 2 - 5 / 32) / (1 - 5 / 32), 9) as number, met: false}])
    expect([state, ways[0]]).toMatchObject(['not-yet', {kind: 'mate-wider', figures: [{of: 'kinship'}]}])
    expect(found('rate-at-most: 45%', PEN('q', 'r')).state).toBe('met')
    // by hand: kinship of two F1 1/12, so 1 − √(½/(11/12)) a generation: Ne 1.91
    const size = found('size-at-least: 50', PEN('q', 'r')), each = 1 - Math.sqrt(6 / 11)
    expect(size.shown.parts).toMatchObject([{of: 'size', by: 'kinship', have: expect.closeTo(1 / (2 * each), 9) as number, met: false}])
    // one cock and one hen count for two; with one hen alone no number of cocks counts for four
    expect(size).toMatchObject({shown: {census: 2}, ways: [{kind: 'more-males', more: null}]})
    expect(found('size-at-least: 1', PEN('q', 'r')).state).toBe('met')
  })

  it('counts the males wanting only where their count is too low, and never as of today', () => {
    // 4·M·3/(M + 3) ≥ 6 at M = 3 by hand; p, w and q are there
    expect(found('size-at-least: 6', PEN('x', 'y, z, n')).ways).toMatchObject([{kind: 'more-males', more: 2, earliest: {kind: 'season', season: 2028}}])
    expect(found('size-at-least: 3', PEN('x', 'y, z, n'))).toMatchObject({state: 'not-yet', shown: {census: 3}, ways: [{kind: 'mate-wider', figures: [{of: 'size', mark: 3}], earliest: {kind: 'season', season: 2027}}]})
  })

  it('counts generations from the closing of the line: backcrosses thin no rate', () => {
    const back = ['A male - -', 'B female - -', 'h male - -', 'i male - -', 'j male - -', 'f female A B', 'g female h f', 'k female i g', 'x male j k', 'y female j k', 'q male x y', 'r female x y']
    // by hand: F ¼ in the one generation inside: Ne 2; with 2.875 generations known it would be 14.2% and 3.5
    const {shown, state} = found('rate-at-most: 15%, size-at-least: 3', PEN('q', 'r'), back)
    expect(shown.rise).toMatchObject({step: 'BC3F2', closing: 'BC3', generations: 1})
    expect([state, ...shown.parts.map(({have, met}) => [have, met])]).toEqual(['not-yet', [expect.closeTo(0.25, 12), false], [expect.closeTo(2, 12), false]])
  })

  it('takes no fall of F for a rate where two lines were crossed and kinship rose', () => {
    const crossed = [...LINES.slice(0, 8), ...['x', 'x2', 'x3', 'x4'].map((band, place) => `${band} ${place === 0 ? 'male' : 'female'} m n`), ...['w', 'y', 'w3', 'w4'].map(band => `${band} female p o`), 'q male x y', 'r female x y', 's female x y', 't female x y']
    const {shown, state} = found('rate-at-most: 15%', PEN('q', 'r'), crossed)
    // by hand: F ¼ to 0; of two birds 12·⅜/28 to 5/16 (each with itself included .219 to .359)
    expect(shown.rise).toMatchObject({inbreeding: {latest: {value: expect.closeTo(-1 / 3, 12) as number}}, kinship: {before: expect.closeTo(4.5 / 28, 12) as number, now: expect.closeTo(5 / 16, 12) as number}})
    expect([state, shown.parts]).toMatchObject(['not-yet', [{by: 'kinship', have: expect.closeTo((5 / 16 - 4.5 / 28) / (1 - 4.5 / 28), 9) as number}]])
    expect(found('rate-at-most: 20%', PEN('q', 'r'), crossed).state).toBe('met')
  })

  it('reads rate and size at the end by sire families where that is asked, and cannot under five', () => {
    const sibs = [...LINES.slice(0, 6), ...Array.from({length: 20}, (_, place) => `x${place} ${place === 0 ? 'male' : 'female'} m n`)], twenty = found('rate-at-most: 30%, size-at-least: 1, judged-on: cautious', PEN('x0', 'x1'), sibs)
    expect(twenty).toMatchObject({state: 'cannot-tell', shown: {rise: {families: 1, inbreeding: {latest: {interval: null}}}}, ways: [{kind: 'more-sires', more: 4}]})
    const five = [...LINES.slice(0, 4), ...[1, 2, 3, 4, 5].flatMap(place => [`m${place} male A B`, `n${place} female A B`]), 'o1 female D C', 'o2 female D C',
      ...[['m1', 'n1'], ['m2', 'n2'], ['m3', 'n3'], ['m4', 'o1'], ['m5', 'o2']].flatMap(([sire = '', dam = '']) => [`${sire}x male ${sire} ${dam}`, `${sire}y female ${sire} ${dam}`])]
    const of = (requirement: string) => found(requirement, PEN('m1x', 'm4y'), five), {shown} = of('rate-at-most: 20%')
    // by hand: families of F ¼ ¼ ¼ 0 0, mean 0.15, SD 0.1369, t of 4 degrees 2.7764: 0.15 ± 0.1700
    expect(shown.parts).toMatchObject([{by: 'inbreeding', have: expect.closeTo(0.15, 12) as number, high: expect.closeTo(0.32, 4) as number, low: expect.closeTo(-0.02, 4) as number, met: true}])
    expect(['rate-at-most: 20%, judged-on: cautious', 'rate-at-most: 33%, judged-on: cautious', 'size-at-least: 2, judged-on: cautious', 'size-at-least: 2'].map(each => of(each).state)).toEqual(['not-yet', 'met', 'not-yet', 'met'])
  })

  it('cannot tell a rate before a generation was mated inside, nor one of birds whose descent is not known', () => {
    expect(found('rate-at-most: 5%', PEN('m', 'n'), LINES.slice(0, 8))).toMatchObject({state: 'cannot-tell', shown: {rise: null}, ways: [{kind: 'breed-on'}]})
    const {findings} = heredityBook(LINES, undefined, {...FILES, ...PEN('q', 'r')}), asked = plainRequirement('inbreeding', {rateAtMost: 0.45, sizeAtLeast: 1}), {kinship} = findings
    const states = [false, true].map(atLeast => inbreeding(asked, {...findings, kinship: {...kinship, of: bird => ({...kinship.of(bird), atLeast})}}).state)
    expect(states).toEqual(['met', 'cannot-tell'])
  })

  it('wants every part, and says of descent how far it is known', () => {
    const {state, shown} = found('at-most: 50%, rate-at-most: 45%, male-lines: 2', PEN('q', 'r'))
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
