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
  return suspectedStrains(findings, 0.5).map(({strain, trait, chicks}) => `${strain.id} ${trait.id} ${chicks.length}`)
}

describe('suspectedStrains(findings, from)', () => {
  it('finds the strain of which no chick can come, and leaves the one whose own birds were scored', () => expect(suspected({...WRONG, ...CHICKS})).toEqual(['fell-buff comb 3']))
  it('finds it by the weight of several chicks, though another fits', () => expect(suspected({...WRONG, ...CHICKS, ...chick('24-4', 'B-1', 'single')})).toEqual(['fell-buff comb 3']))
  it('holds to the strain where one chick alone does not fit', () => {
    expect(suspected({...WRONG, ...chick('24-1', 'B-1', 'pea')})).toEqual([])
    expect(suspected({...WRONG, ...chick('24-1', 'B-1', 'pea'), ...chick('24-4', 'B-1', 'single')})).toEqual([])
  })
  it('holds to it where its own birds were scored as it is said to be, for other alleles of theirs explain nothing', () => {
    const hen = (band: string) => ({[`birds/${band}.md`]: `---\nband: ${band}\nsex: female\nstrain: fell-buff\nhatched: 2022-03-20\ncomb: single\n---\n`})
    expect(suspected({...WRONG, ...hen('B-1'), ...hen('B-2'), ...CHICKS})).toEqual([])
  })
  it('finds it where one founder of several is like it, and blames no chick', () => {
    const founder = (band: string, comb: string) => ({[`birds/${band}.md`]: `---\nband: ${band}\nsex: female\nstrain: fell-buff\nhatched: 2022-03-20\ncomb: ${comb}\n---\n`})
    const files = {...WRONG, ...founder('B-1', 'pea'), ...founder('B-2', 'pea'), ...founder('B-3', 'single'), ...chick('24-1', 'B-1', 'pea'), ...chick('24-2', 'B-2', 'pea')}
    const {problems} = inspectFiles(around(files))
    expect(codesAt(problems)).toEqual(['strains/fell-buff.md:4 true-for-contradicted'])
    expect(problems[0]?.reason).toBe('fell-buff is said to breed true for Comb single, and 4 birds that come of it were scored as they then cannot look')
  })
  it('names the other strains that would explain it as well', () => {
    const skin = {'traits/skin.md': '---\nname: Skin\nstates: [white, yellow]\nloci: [W]\n---\n', 'strains/holm-white.md': '---\nname: Holm White\nrole: recurrent\ntrue-for: {skin: white}\n---\n', 'strains/fell-buff.md': '---\nname: Fell Buff\nrole: donor\ntrue-for: {skin: white}\n---\n'}
    const bird = (band: string, sex: string, sire: string, dam: string, look: string, year: number) => ({[`birds/${band}.md`]: `---\nband: ${band}\nsex: ${sex}\nhatched: ${year}-05-01\nsire: ${sire}\ndam: ${dam}\nskin: ${look}\n---\n`})
    const files = {...skin, ...bird('23-1', 'male', 'H-1', 'B-1', 'white', 2023), ...bird('23-2', 'female', 'H-1', 'B-1', 'white', 2023), ...bird('24-1', 'male', '23-1', '23-2', 'yellow', 2024), ...bird('24-2', 'male', '23-1', '23-2', 'yellow', 2024), ...bird('24-3', 'male', '23-1', '23-2', 'yellow', 2024)}
    const {problems} = inspectFiles(around(files))
    expect(problems.map(({place, reason}) => `${place.file}: ${reason}`)).toEqual(['strains/fell-buff.md: fell-buff is said to breed true for Skin white, and 3 birds that come of it were scored as they then cannot look; that holm-white is not true for it would explain it as well'])
    expect(problems[0]?.related?.at(-1)).toMatchObject({note: 'what holm-white is true for stands here', place: {file: 'strains/holm-white.md'}})
  })
  it('is warned of once, at the strain, and named beside the figures', () => {
    const {problems} = inspectFiles(around({...WRONG, ...CHICKS}))
    expect(codesAt(problems)).toEqual(['strains/fell-buff.md:4 true-for-contradicted'])
    expect(problems[0]?.reason).toBe('fell-buff is said to breed true for Comb single, and none of the 3 chicks of its birds that were scored can be of such parents')
    const findings = study(bookOf({...WRONG, ...CHICKS}))
    expect(findings.heredity.groups.flatMap(group => contradictionsAt(findings, group))).toEqual(['the strain fell-buff, true for Comb single'])
  })
})
