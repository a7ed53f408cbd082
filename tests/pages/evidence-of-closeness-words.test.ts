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
    // F2 ¼ each, F3 ⅜ each: (⅜ − ¼)/(1 − ¼) = 1/6; kinship of two: F2 ⅜/3, F3 ½, (½ − ⅛)/(⅞) = 42.9%; since F1 1/12 to ½: 1 − √(6/11) = 26.1%, Ne 1.9, by hand
    expect(shown).toMatch(/F rises by 16\.7% in a generation, from F2 to F3, and mean kinship of two birds rises by 42\.9%, from 12\.5 to 50\.0%; the rise of kinship decides, and 1\.0% will do\. By the rise of mean kinship over the two generations since F1 the birds of F3 come to an effective size of 1\.9, where 50 is asked\. By the count of cocks and hens bred from, were they no kin, it is 2\.0\. Descent is known for 3\.0 generations on average\.$/)
    expect(way).toBe('Shortest way: mate birds that are less akin, each hen with the male least akin to her (chicks of 50.0% on average), to bring the rise of mean kinship in a generation from 42.9% to 1.0%; more hens bred from, for no number of males is enough with so few, in 2027 at the earliest.')
    expect(said('rate-at-most: 1%').way).toMatch(/to bring the rise of mean kinship in a generation from 42\.9% to 1\.0%, in 2027 at the earliest\.$/)
  })

  it('says by how many sire families the end of an interval is read, or why there is none', () => {
    expect(said('rate-at-most: 50%, judged-on: cautious')).toMatchObject({
      shown: expect.stringMatching(/and 50\.0% will do\. The end of its interval cannot be told: the birds come of one sire family, and five are needed\. Descent/) as string, way: 'Shortest way: chicks of four more sires in a generation, before the families tell how far off a figure may be, in 2027 at the earliest.',
    })
  })

  it('tells the lines of males, and who could bring in another', () => {
    const {shown, way} = said('male-lines: 2')
    expect(shown).toMatch(/One line of males, back to A \(1 male\), where two are asked\. Descent is known/)
    expect(way).toBe('Shortest way: one more line of males bred from, such as by p.')
    expect(said('male-lines: 3').way).toBe('Shortest way: two more lines of males bred from, such as by p.')
  })
})
