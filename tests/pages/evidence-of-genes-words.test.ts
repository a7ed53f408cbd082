import {describe, expect, it} from 'vitest'
import {shownWords, whereShown} from '../../src/pages/evidence-words.ts'
import {fixedLines} from '../../src/pages/evidence-of-genes-words.ts'
import {GROUND, heredityBook} from '../findings/heredity-book.ts'
import {AROUND} from '../logbook/around.ts'

const FILES = {
  'project.md': (AROUND['project.md'] ?? '').replace('aim:', 'as-of: 2027-06-01\naim:'), 'birds/A.md': '---\nband: A\nsex: male\nstrain: fell-buff\ntested: {P: P/p+}\n---\n',
  'pens/2027-A.md': '---\nseason: 2027\nmales: [x]\nfemales: [y]\nfrom: 2027-02-10\n---\n',
}

function words(requirement: string, lines: readonly string[]) {
  const {findings, book} = heredityBook(lines, undefined, {...FILES, 'requirements.md': `---\nrequirements:\n  - {title: t, asked: a, ${requirement}}\n---\n`}), [item] = findings.evidence.items
  if (!item) throw new Error('no evidence')
  return {text: shownWords(item, book), where: whereShown(item.shown)}
}

describe('fixedWords(shown)', () => {
  it('gives the chance, who is in the way, what it rests on and the mark', () => {
    expect(words('kind: fixed, trait: comb', ['A male - -', 'B female - - tested={P:~P/P}', 'x male A B', 'y female A B comb=pea'])).toEqual({
      text: 'The chance that none of the 2 living breeders carries p+ is 25.0%, all taken together; about 1.0 of them is to be expected to carry it. In the way, with the chance to carry it: x 50.0% and y 50.0%. Scored or tested: 1 of 2. Neither: x. It counts as fixed from 95% on.',
      where: {text: 'Comb', link: 'traits/comb.html#may-hide'},
    })
  })

  it('gives several traits in lines, and says above how to read them', () => {
    const {findings, book} = heredityBook(['A male - -', 'B female - - tested={P:~P/P,S:~S/-}', 'x male A B comb=pea', 'y female A B comb=pea'], '{P: {P: 50%, p+: 50%}, S: {S: 50%, s+: 50%}}',
      {...FILES, 'birds/A.md': '---\nband: A\nsex: male\nstrain: fell-buff\ntested: {P: P/p+, S: S/S}\n---\n', 'traits/ground.md': GROUND, 'requirements.md': '---\nrequirements:\n  - {title: t, asked: a, kind: fixed}\n---\n'})
    const [item] = findings.evidence.items, shown = item?.shown.kind === 'fixed' ? item.shown : expect.fail('not of this kind')
    expect(fixedLines(shown)).toEqual(['Comb: none carries p+ with 25.0%; in the way x 50.0% and y 50.0%; scored or tested 2 of 2', 'Ground: none carries s+ with 100%; scored or tested 0 of 2, neither x and y'])
    expect(item && shownWords(item, book)).toBe('Each allele that is not wanted, with the chance that none of the 2 living breeders carries it, and of those in the way the chance of each to do so. It counts as fixed from 95% on.')
  })

  it('says what is wanting where nothing can be worked', () => {
    const lines = ['A male - -', 'B female - -', 'x male A B', 'y female A B']
    expect(words('kind: fixed, trait: weight-20', lines)).toEqual({text: 'Nothing on record says which genes weight at 20 weeks comes of, or which of them are not wanted.', where: {text: 'Weight at 20 weeks', link: 'traits/weight-20.html'}})
    expect(words('kind: fixed', ['A male - -', 'x male - -', 'y female - -']).text).toBe('No living breeder of the breed is on record.')
  })
})

describe('inbreedingWords(shown)', () => {
  it('gives the mean, the highest, the kinship, and the birds in the way', () => {
    // by hand: two full sibs of full sibs: F ¼ each; between them 3/8, with themselves 5/8: ½
    expect(words('kind: inbreeding, at-most: 10%', ['A male - -', 'B female - -', 'm male A B', 'n female A B', 'x male m n', 'y female m n'])).toEqual({
      text: 'Mean F of 2 living breeders 25.0%; the highest 25.0%, x; mean kinship among them 50.0%. Above 10.0%: x 25.0% and y 25.0%. Descent is known for 2.0 generations on average.', where: {text: 'Birds', link: 'birds.html'},
    })
  })

  it('says of whom too little is known', () => {
    expect(words('kind: inbreeding, at-most: 10%', ['A male - -', 'B female - -', 'x male A B', 'y female A B']).text)
      .toBe('Mean F of 2 living breeders 0.0%; the highest 0.0%, x; mean kinship among them 37.5%. F is at least so much for x and y, of whom a grandparent or nearer is not in the book. Descent is known for 1.0 generations on average.')
  })

  it('does not say of as many as it names for certain that they are to be expected', () => {
    const sure = ['A male - -', 'B female - - tested={P:~P/P}', 'x male A B comb=pea tested={P:~P/p+}', 'y female A B comb=pea tested={P:~P/P}']
    expect(words('kind: fixed, trait: comb', sure).text).toMatch(/^x of the 2 living breeders carries p\+ for certain\. In the way/)
    expect(words('kind: fixed, trait: comb', sure.map(line => line.replace(' tested={P:~P/P}', line.startsWith('y') ? '' : ' tested={P:~P/P}'))).text).toMatch(/^x of the 2 living breeders carries p\+ for certain; about 1\.5 of them are to be expected/)
  })
})
