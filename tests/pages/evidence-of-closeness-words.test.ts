import {describe, expect, it} from 'vitest'
import {shownWords} from '../../src/pages/evidence-words.ts'
import {waySentence} from '../../src/pages/way-words.ts'
import {heredityBook} from '../findings/heredity-book.ts'
import {AROUND} from '../logbook/around.ts'

const FILES = {
  'project.md': (AROUND['project.md'] ?? '').replace('aim:', 'as-of: 2027-06-01\naim:'), 'birds/A.md': '---\nband: A\nsex: male\nstrain: fell-buff\n---\n', 'birds/D.md': '---\nband: D\nsex: male\nstrain: fell-buff\n---\n',
  'pens/2027-A.md': '---\nseason: 2027\nmales: [q]\nfemales: [r]\nfrom: 2027-02-10\n---\n',
}
const LINES = ['A male - -', 'B female - -', 'C female - -', 'D male - -', 'm male A B', 'n female A B', 'o female D C', 'p male D C', 'x male m n', 'y female m n', 'w male p o', 'q male x y', 'r female x y']
function said(requirement: string) {
  const {findings, book} = heredityBook(LINES, undefined, {...FILES, 'requirements.md': `---\nrequirements:\n  - {title: t, asked: a, kind: inbreeding, ${requirement}}\n---\n`}), [item] = findings.evidence.items
  return item ? {shown: shownWords(item, book), way: waySentence(item, book.asOf)} : expect.fail('no evidence')
}

describe('inbreedingWords(shown): its parts', () => {
  it('tells the rise of F and the size that it comes to, with what they rest on', () => {
    const {shown, way} = said('rate-at-most: 1%, size-at-least: 50')
    // F2: ¼ each, F3 ⅜ each: (⅜ − ¼)/(1 − ¼) = 1/6; own rates 1 − √⅝ = 20.9%, Ne 2.4, by hand
    expect(shown).toMatch(/F rises by 16\.7% in a generation, from F2 to F3; by the birds of F3 each by itself 20\.9 to 20\.9; 1\.0% will do\. The birds of F3 come to an effective size of 2\.4 \(2\.4 to 2\.4\), where 50 is asked\. By the count of cocks and hens bred from it is 2\.0\. Descent is known for 3\.0 generations on average\.$/)
    expect(way).toBe('Shortest way: mate birds that are less akin, each hen with the male least akin to her (chicks of 50.0% on average), to bring the rise of F in a generation from 16.7% to 1.0%, in 2027 at the earliest; more hens bred from, for no number of males is enough with so few.')
  })

  it('tells the lines of males, and who could bring in another', () => {
    const {shown, way} = said('male-lines: 2')
    expect(shown).toMatch(/One line of males, back to A \(1 male\), where two are asked\. Descent is known/)
    expect(way).toBe('Shortest way: one more line of males bred from, such as by p.')
    expect(said('male-lines: 3').way).toBe('Shortest way: two more lines of males bred from, such as by p.')
  })
})
