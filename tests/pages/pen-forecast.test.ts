import {describe, expect, it} from 'vitest'
import {penForecast} from '../../src/pages/pen-forecast.ts'
import type {Table} from '../../src/pages/page.ts'
import {heredityBook, LEGS} from '../findings/heredity-book.ts'

const PEN = {'pens/2024-A.md': '---\nseason: 2024\nfrom: 2024-02-01\nmales: [x]\nfemales: [y]\n---\n'}
const fell = (tested: string) => ({'birds/A.md': `---\nband: A\nsex: male\nstrain: fell-buff\ntested: ${tested}\n---\n`})
const rowsOf = (table: Table | null | undefined) => table?.rows.map(row => row.map(cell => (typeof cell === 'string' ? cell : cell.text)).join(' | '))

function forecast(lines: readonly string[], files: Readonly<Record<string, string>>) {
  const {book, findings} = heredityBook(lines, undefined, {...PEN, ...files}), [pen] = book.pens
  return penForecast(pen ?? expect.fail('no pen'), findings)
}

describe('penForecast(pen, findings)', () => {
  it('gives the shares of looks of each pair', () => {
    // by hand: both ⅔ carriers, ⅔ · ⅔ · ¼
    const found = forecast(['A male - -', 'B female - - tested={P:~P/p+}', 'x male A B comb=pea', 'y female A B comb=pea'], fell('{P: P/p+}'))
    expect(rowsOf(found?.pairs)).toEqual(['y | x | pea 88.9%, single 11.1%'])
    expect(found).toMatchObject({cautions: [], came: null, how: 'Worked exactly'})
  })

  it('is silent on germs where no parent has the gene', () => {
    const found = forecast(['A male - -', 'B female - -', 'x male A B legs=long', 'y female A B legs=long'], {...fell('{Cp: Cp/cp+}'), 'traits/legs.md': LEGS})
    expect(found?.cautions).toEqual([])
  })

  it('names the birds of the pen that stand in no pair', () => {
    const lines = ['A male - -', 'B female - - tested={P:~P/p+}', 'x male A B comb=pea', 'y female A B comb=pea', 'z female A B comb=pea left=2025-01-02~died']
    const files = {...fell('{P: P/p+}'), 'pens/2024-A.md': '---\nseason: 2024\nfrom: 2024-02-01\nmales: [x]\nfemales: [y, z, B]\n---\n'}
    expect(forecast(lines, files)?.leftOut).toBe('In none of these pairs: z, no longer here; B, of a pure strain.')
    expect(forecast(lines.slice(0, 4), fell('{P: P/p+}'))?.leftOut).toBe('')
  })

  it('warns of a creeper whose score its kin make doubtful, by a creeper', () => {
    const lines = ['A male - - legs=long', 'B female - - tested={Cp:~Cp/cp+}', 'C female - - legs=long', 'x male A C legs=creeper', 'y female A B legs=creeper']
    const found = forecast(lines, {...fell('{Cp: cp+/cp+}'), 'traits/legs.md': LEGS.replace('loci:', 'misscoring: 1%\nloci:')})
    expect(found?.cautions.find(({head}) => head === 'A score in doubt that may be right.')?.text)
      .toMatch(/^x was scored creeper, which its kin make doubtful; if that is right and y carries Cp too \(\d+\.\d%\), 25\.0% of the germs die\. With a mate free of the gene none need die/)
  })

  it('says first what will die in the egg, and defers to the law and a veterinarian', () => {
    const found = forecast(['A male - -', 'B female - -', 'x male A B legs=creeper', 'y female A B legs=creeper'], {...fell('{Cp: Cp/cp+}'), 'traits/legs.md': LEGS})
    expect(found?.cautions[0]?.head).toBe('Germs that will die in the egg.')
    expect(found?.cautions[0]?.text).toMatch(/^x × y, 25\.0% by Cp\. With a mate free of the gene none need die; .*law.*veterinarian/)
    expect(found?.cautions[1]?.head).toBe('Chicks that never hatch.')
    expect(found?.cautions[1]?.text).toMatch(/\(Cp, in 66\.7% of the chicks\.\)$/)
    expect(rowsOf(found?.pairs)?.[0]).toContain('creeper 66.7%, long 33.3%')
  })
})
