import {describe, expect, it} from 'vitest'
import {homeFixation} from '../../src/pages/home-fixation.ts'
import {heredityBook} from '../findings/heredity-book.ts'

const PEN = {'pens/2024-A.md': '---\nseason: 2024\nfrom: 2024-02-01\nmales: [x]\nfemales: [y]\n---\n'}
const fell = (tested: string) => ({'birds/A.md': `---\nband: A\nsex: male\nstrain: fell-buff\ntested: ${tested}\n---\n`})

describe('homeFixation(findings)', () => {
  it('gives the joint chance, the birds in the way and what will throw back', () => {
    const {findings} = heredityBook(['A male - -', 'B female - - tested={P:~P/p+}', 'x male A B comb=pea', 'y female A B comb=pea'], undefined, {...PEN, ...fell('{P: P/p+}')})
    const found = homeFixation(findings)
    // by hand: ⅓ · ⅓; without one of them ⅓; ⅔ · ⅔ · ¼
    expect(found?.words).toBe('Not fixed yet in the one required trait whose genes are known, by what 2 living breeders may carry between them.')
    expect(found?.table.rows[0]?.slice(1)).toEqual(['11.1%', '1.3'])
    expect(found?.inTheWay[0]?.birds.map(({text, says}) => `${text} ${says}`)).toEqual(['x 66.7%, 8 test chicks; without it 33.3%', 'y 66.7%, 8 test chicks; without it 33.3%'])
    expect(found?.inTheWay[0]?.head).toBe('Comb, p+')
    expect(found?.warning).toBe('From the pens as they stand, 11.1% of the chicks will not be as wanted in comb.')
    expect(found?.doubts).toBeNull()
  })

  it('is not there where nothing breeds', () => expect(homeFixation(heredityBook(['A male - -']).findings)).toBeNull())
})
