import {describe, expect, it} from 'vitest'
import {disputedScorings} from '../../src/findings/disputed-scorings.ts'
import {heredityWarnings} from '../../src/findings/heredity-warnings.ts'
import {COMB, heredityBook} from './heredity-book.ts'

const FOUNDERS = ['A male - - comb=single tested={P:~p+/p+}', 'B female - - comb=single tested={P:~p+/p+}', 'C female - - comb=pea tested={P:~P/P}']
const disputed = (birds: readonly string[], ...rows: readonly string[]) => heredityBook([...FOUNDERS, ...birds], '{P: {P: 50%, p+: 50%}}', {
  'traits/comb.md': COMB.replace('required: yes', 'required: yes\nmisscoring: 1%'), 'scores/x.csv': `band,on,by,comb\n${rows.map(row => `${row}\n`).join('')}`,
})
const found = (...given: Parameters<typeof disputed>) => disputedScorings(disputed(...given).findings, 0.5).map(({bird, counted, alone, wrong}) => [bird.band, counted.value, alone?.value ?? null, Math.round(wrong * 100)])

describe('disputedScorings(findings, from)', () => {
  it('finds the score that counts and that the kin make wrong', () => expect(found(['c male A B comb=single'], 'c,2023-09-01,inga,pea')).toEqual([['c', 'pea', null, 100]]))
  it('leaves an earlier score that the kin and a later one mend', () => expect(found(['c male A B comb=pea'], 'c,2023-09-01,inga,single')).toEqual([]))
  it('finds the one that stands alone against two, whether it counts or not', () => {
    expect(found(['c male A B comb=single'], 'c,2023-09-01,inga,single', 'c,2023-09-02,inga,pea')).toEqual([['c', 'pea', 'pea', 100]])
    expect(found(['c male A C comb=pea'], 'c,2023-09-01,inga,single', 'c,2023-09-02,inga,pea')).toEqual([['c', 'pea', 'single', 0]])
  })
  it('is empty where they agree, or where no misscoring allows for it, which linking finds', () => {
    expect(found(['c male A B comb=single'], 'c,2023-09-01,inga,single')).toEqual([])
    const {findings} = heredityBook([...FOUNDERS, 'c male A B comb=single'], undefined, {'scores/x.csv': 'band,on,by,comb\nc,2023-09-01,inga,pea\n'})
    expect(disputedScorings(findings, 0.5)).toEqual([])
  })
  it('is warned of once, at the scoring that stands alone, with the others beside it, and not as a look that its family cannot give', () => {
    const [only, ...more] = heredityWarnings(disputed(['c male A B comb=single'], 'c,2023-09-01,inga,single', 'c,2023-09-02,inga,pea').findings)
    expect(more).toEqual([])
    expect([only?.code, only?.at.file, only?.remedy]).toEqual(['scorings-contradict', 'scores/x.csv', 'look at the bird again and strike what is wrong, or mend it'])
    expect(only?.reason).toMatch(/^c was scored single and pea in Comb; pea, scored by .* on 2023-09-02, stands alone against the others and counts, and by all that was seen of the bird and its kin is wrong with more than 99%$/)
    expect(only?.related?.map(({at, note}) => [at.file, note.replace(/by .* on/, 'by … on')])).toEqual([['birds/c.md', 'single, written with the bird, stands here'], ['scores/x.csv', 'single, scored by … on 2023-09-01, stands here']])
  })
})
