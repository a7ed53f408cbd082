import {describe, expect, it} from 'vitest'
import {contradictionsAt} from '../../src/findings/contradictions.ts'
import {suspectedStrains} from '../../src/findings/suspected-strains.ts'
import {study} from '../../src/findings/study.ts'
import {around, bookOf, codesAt, inspectFiles, type Files} from '../logbook/around.ts'
import {COMB} from './heredity-book.ts'

const chick = (band: string, dam: string, comb: string) => ({[`birds/${band}.md`]: `---\nband: ${band}\nsex: male\nhatched: 2024-05-01\nsire: H-1\ndam: ${dam}\ncomb: ${comb}\n---\n`})
const WRONG = {'traits/comb.md': COMB, 'strains/fell-buff.md': '---\nname: Fell Buff\nrole: donor\ntrue-for: {comb: single}\n---\n', 'birds/H-1.md': '---\nband: H-1\nsex: male\nstrain: holm-white\nhatched: 2022-03-20\ncomb: single\n---\n'}
const CHICKS = {...chick('24-1', 'B-1', 'pea'), ...chick('24-2', 'B-2', 'pea'), ...chick('24-3', 'B-2', 'pea')}
const suspected = (files: Files) => {
  const findings = study(bookOf(files))
  return suspectedStrains(findings.book, findings.impossibleFamilies, 0.5).map(({strain, trait, chicks}) => `${strain.id} ${trait.id} ${chicks.length}`)
}

describe('suspectedStrains(book, doubted, from)', () => {
  it('finds the strain of which no chick can come, and leaves the one whose own birds were scored', () => expect(suspected({...WRONG, ...CHICKS})).toEqual(['fell-buff comb 3']))
  it('holds to the strain where one of its chicks fits, or one alone does not', () => {
    expect(suspected({...WRONG, ...CHICKS, ...chick('24-4', 'B-1', 'single')})).toEqual([])
    expect(suspected({...WRONG, ...chick('24-1', 'B-1', 'pea')})).toEqual([])
  })
  it('is warned of once, at the strain, and named beside the figures', () => {
    const {problems} = inspectFiles(around({...WRONG, ...CHICKS}))
    expect(codesAt(problems)).toEqual(['strains/fell-buff.md:4 true-for-contradicted'])
    expect(problems[0]?.reason).toBe('fell-buff is said to breed true for Comb single, and none of the 3 chicks of its birds that were scored can be of such parents')
    const findings = study(bookOf({...WRONG, ...CHICKS}))
    expect(findings.heredity.groups.flatMap(group => contradictionsAt(findings, group))).toEqual(['the strain fell-buff, true for Comb single'])
  })
})
