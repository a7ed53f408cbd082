import {readFileSync} from 'node:fs'
import {describe, expect, it} from 'vitest'
import {doubtsPage, hasDoubts, type DoubtsView} from '../../src/pages/doubts.ts'
import {siteFrame} from '../../src/pages/site-frame.ts'
import {traitSegregation, wrongRuleWords} from '../../src/pages/trait-segregation.ts'
import {COMB, GROUND, heredityBook} from '../findings/heredity-book.ts'

const withError = (trait: string) => trait.replace('required: yes\n', 'required: yes\nmisscoring: 1%\n')
const ALLELES = '{P: {P: 50%, p+: 50%}, S: {S: 50%, s+: 50%}}'

function viewOf(lines: readonly string[], files: Readonly<Record<string, string>> = {}): DoubtsView {
  return doubtsPage(heredityBook(lines, ALLELES, {'traits/comb.md': withError(COMB), ...files}).findings).view as DoubtsView
}
const grown = (line: string) => `${line} hatched=2021-04-01`
const pen = (name: string, male: string, female: string) => ({[`pens/2023-${name}.md`]: `---\nseason: 2023\nmales: [${male}]\nfemales: [${female}]\nfrom: 2023-01-10\nkeeper: kelpgarth\n---\n`})

describe('doubtsPage(findings)', () => {
  it('lists a chick whose look its parents can hardly give, with the parents, and names no keeper', () => {
    const {chicks: [only, ...more]} = viewOf(['A male - - comb=single', 'B female - - comb=single', 'x male A B comb=pea', ...[1, 2, 3, 4].map(number => `c${number} male A B comb=single`)])
    expect(more).toEqual([])
    expect(only?.says).toMatch(/^By A out of B, as written\. Comb scored pea, as .* of its family would be; if its parents are as written, the score is wrong with a chance of .*, and it is single\.$/)
    expect(only?.explanations).toBe('No other parent that stood near, no egg of another pen and no wrong sex would explain it, so look at the bird again.')
  })

  it('offers an egg of another pen, both parents changed, and no hen that never met the sire', () => {
    const lines = ['A male - - tested={P:~p+/p+}', 'B female - - tested={P:~p+/p+}', 'D male - - tested={P:~P/P}', 'E female - - tested={P:~P/P}'].map(grown)
    const {chicks: [only]} = viewOf([...lines, ...[1, 2, 3, 4].map(number => `c${number} female A B comb=single`), 'x female A B comb=pea'], {...pen('A', 'A', 'B'), ...pen('B', 'D', 'E')})
    expect(only?.explanations).toMatch(/D its sire, and not A, \d/)
    expect(only?.explanations).toMatch(/an egg of pen 2023-B \(D × E likeliest\), \d+\.\d%, all that was seen being 99 times as likely/)
    expect(only?.explanations).not.toMatch(/E its dam/)
  })

  it('offers a pullet that was taken for a cockerel, where she has bred nothing yet', () => {
    const lines = ['A male - - tested={S:~S/s+}', 'B female - - tested={S:~S/-}', 'x male A B ground=gold'], files = {'traits/ground.md': withError(GROUND)}
    expect(viewOf(lines, files).chicks[0]?.explanations).toMatch(/sexed wrongly, and a pullet, 9\d\.\d%/)
    expect(viewOf([...lines, 'F female - - tested={S:~S/-}', 'y female x F'], files).chicks.find(({name}) => name === 'x')?.explanations).not.toMatch(/sexed wrongly/)
  })

  it('says what its two chances are, and from where a look is listed and inspect warns', () => {
    const {note} = viewOf(['A male - - comb=single', 'B female - - comb=single', 'x male A B comb=pea'])
    expect(note).toMatch(/they answer two questions/)
    const from = /WARNED_FROM = (0\.\d+)/.exec(readFileSync(new URL('../../src/findings/heredity-warnings.ts', import.meta.url), 'utf8'))?.[1]
    expect(note).toContain(`wrong with 20% or more and that 5% of its family at most would be scored so; the check of the records (inspect) warns of it from ${Number(from) * 100}% on`)
  })

  it('sends to photographs and notes where the bird has left', () => {
    const lines = ['A male - - comb=single', 'B female - - comb=single', ...[1, 2, 3, 4].map(number => `c${number} male A B comb=single`), 'x male A B comb=pea left=2023-12-01~culled']
    expect(viewOf(lines).chicks[0]?.explanations).toMatch(/so look at its photographs and notes\.$/)
  })

  it('names the strain whose true-breeding look makes a score impossible', () => {
    const files = {'strains/holm-white.md': '---\nname: Holm White\nrole: recurrent\ntrue-for: {comb: single}\n---\n'}
    expect(viewOf(['A male - -', 'B female - -', 'x male A B comb=pea'], {...files, 'traits/comb.md': COMB}).chicks[0]?.says).toMatch(/a chance of (100|over 99\.9)%, and it is single, which rests on Holm White being true for single\.$/)
  })

  it('says of the rule what the page of the trait says', () => {
    const bred = (sire: string, dam: string, looks: readonly string[]) => looks.map((look, number) => `${sire}${dam}${number} male ${sire} ${dam} comb=${look}`), single = ['single', 'single', 'single', 'single', 'single']
    const {findings} = heredityBook([...['A male', 'B female'].map(bird => `${bird} - - tested={P:~p+/p+}`),
      ...bred('A', 'B', ['pea', 'pea', ...single])], ALLELES, {'traits/comb.md': withError(COMB)})
    const [trait] = findings.book.traits, {chicks} = doubtsPage(findings).view as DoubtsView
    const third = trait && traitSegregation(trait, findings)?.questions[0]?.asks[2]
    expect(third).toBe('Third, a wrong rule? There is no other mating of this cross to tell by.')
    expect(chicks[0]?.more).toMatch(/ Its family strays from the ratio in comb; there is no other mating of this cross to tell by\.$/)
    const asked = (straying: number) => wrongRuleWords({rule: {otherMatings: 5, straying}})
    expect([0, 1, 3].map(asked)).toEqual(['of five other matings of this cross none strays, so the rule stands', 'of five other matings of this cross one strays', 'of five other matings of this cross three stray: look at the rule'])
  })

  it('stands in the list of all pages', () => {
    const {findings} = heredityBook(['A male - - comb=single', 'B female - - comb=single', 'x male A B comb=pea'], ALLELES, {'traits/comb.md': withError(COMB)})
    expect(siteFrame(findings, [doubtsPage(findings)]).contents).toEqual([{section: null, title: 'Chicks in doubt', path: 'doubts.html', note: 'looks and parents that hardly fit'}])
  })

  it('is not made where nothing is in doubt', () => expect(hasDoubts(heredityBook(['A male - - comb=pea']).findings)).toBe(false))
})
