import {describe, expect, it} from 'vitest'
import {heredityWarnings} from '../../src/findings/heredity-warnings.ts'
import {codesAt, inspectFiles, around} from '../logbook/around.ts'
import {COMB, GROUND, heredityBook} from './heredity-book.ts'

const withError = (trait: string) => trait.replace('required: yes', 'required: yes\nmisscoring: 1%')
const ALLELES = '{P: {P: 50%, p+: 50%}, S: {S: 50%, s+: 50%}}'
const PEN = {'pens/2023-A.md': '---\nseason: 2023\nmales: [A, D]\nfemales: [B]\nfrom: 2023-01-10\nkeeper: kelpgarth\n---\n'}
const FOUNDERS = ['A male - - tested={P:~p+/p+,S:~s+/s+} hatched=2021-04-01', 'B female - - tested={P:~p+/p+,S:~s+/-} hatched=2021-04-01', 'D male - - tested={P:~P/P,S:~S/S} hatched=2021-04-01']
const warningsOf = (chicks: readonly string[]) => heredityWarnings(heredityBook([...FOUNDERS, ...chicks], ALLELES, {...PEN, 'traits/comb.md': withError(COMB), 'traits/ground.md': withError(GROUND)}).findings)

describe('heredityWarnings(findings)', () => {
  it('names a likely mis-scored chick and one of another male, each at its own line, and no keeper', () => {
    const warnings = warningsOf(['c female A B comb=single ground=gold', 'wrong female A B comb=pea ground=gold', 'his female A B comb=pea ground=silver'])
    expect(warnings.map(({code, severity, at}) => [code, severity, at.file])).toEqual([['likely-wrong-parent', 'warning', 'birds/his.md'], ['impossible-family', 'warning', 'birds/wrong.md']])
    const [parent, look] = warnings.map(({reason, remedy}) => ({reason, remedy}))
    expect(look?.reason).toBe('wrong was scored pea in Comb, which its family cannot give; it must be single, if its parents are as written')
    expect(parent?.reason).toBe('his (Comb pea, Ground silver) hardly comes of the parents written: with D as its sire all that was seen is more than a thousand times likelier than as written')
    expect(parent?.remedy).toBe('see whether D may be the sire; if not, look again at the chick')
    expect(JSON.stringify(warnings)).not.toMatch(/kelpgarth/i)
  })
  it('says of whom the chick hardly is, where the records gave him nearly all the chances', () => {
    const [only, ...more] = warningsOf(['d female {A:~90%,D:~10%} B comb=pea ground=silver'])
    expect(more).toEqual([])
    expect(only).toMatchObject({code: 'likely-wrong-parent', reason: 'A is written as the sire of d with 90%; by the looks of them all it is less than 1%, and the likeliest is D'})
  })
  it('names the looks of which one must be wrong, once, where none is likelier wrong than right', () => {
    const {findings} = heredityBook(['A male - - comb=single', 'B female - - comb=single', 'c male A B comb=pea'])
    const [only, ...more] = heredityWarnings(findings)
    expect(more).toEqual([])
    expect(only).toMatchObject({code: 'impossible-family', severity: 'warning', at: {file: 'birds/A.md', path: ['comb']}})
    expect(only?.reason).toMatch(/^the looks on record contradict each other at P, though no score is allowed to be wrong; likeliest to be so are A, scored single in Comb \(wrong with \d+%\); B, scored single in Comb \(wrong with \d+%\); c, scored pea in Comb \(wrong with \d+%\)$/)
  })
  it('names the test of a parent beside a chick that its parents cannot have', () => {
    const {findings} = heredityBook(['A male - - tested={P:~p+/p+}', 'B female - - comb=single', 'c male A B comb=single', 'd male A B comb=single', 'x male A B comb=pea'], undefined, {'traits/comb.md': withError(COMB)})
    const [only, ...more] = heredityWarnings(findings)
    expect(more).toEqual([])
    expect(only?.related?.map(({note}) => note)).toEqual(['A, its sire, tested P p+/p+, stands here', 'B, its dam, stands here'])
    expect(only?.remedy).toBe('look again at the bird and strike the score if it is wrong; else see whether the sample was of A; else see who was in the pen; else mend the rule of the trait or what is said of the strains')
  })
  it('asks nobody to look again at a bird that is dead', () => {
    const remedy = (left: string) => warningsOf(['c female A B comb=single ground=gold', `wrong female A B comb=pea ground=gold left=${left}`]).map(each => each.remedy.split(';')[0])
    expect(remedy('2024-06-01~culled')).toEqual(['see photographs or notes of the bird, and strike the score if it was wrong'])
    expect(remedy('2024-06-01~sold')).toEqual(['look again at the bird and strike the score if it is wrong'])
  })
  it('names a wrong sex where that explains what was seen', () => {
    // a cockerel of a silver sire has his silver; a gold pullet of one that hides gold is nothing odd
    const {findings} = heredityBook(['A male - - tested={S:~S/s+}', 'B female - - tested={S:~S/-}', 'x male A B ground=gold'], '{S: {S: 50%, s+: 50%}}', {'traits/ground.md': withError(GROUND)})
    const [only, ...more] = heredityWarnings(findings)
    expect(more).toEqual([])
    expect([only?.code, only?.at.file]).toEqual(['impossible-family', 'birds/x.md'])
    expect(only?.reason).toMatch(/; as a female all that was seen is \d+ times likelier$/)
  })
  it('is silent on a book that fits', () => expect(warningsOf(['c female A B comb=single ground=gold', 'd male D B comb=pea ground=silver'])).toEqual([]))
  it('counts the chicks of a tally', () => {
    const {problems} = inspectFiles(around({
      'traits/comb.md': withError(COMB), 'pens/2024-H.md': '---\nseason: 2024\nmales: [H-2]\nfemales: [H-3]\nfrom: 2024-02-10\nto: 2024-06-01\nkeeper: kelpgarth\n---\n',
      'hatches/2024-01.md': '---\npen: 2024-H\nset: 2024-04-01\non: 2024-04-22\ntallies:\n  - {chicks: 1, comb: pea}\n  - {chicks: 9, comb: single}\n---\n',
    }))
    expect(codesAt(problems)).toEqual(['hatches/2024-01.md:6 impossible-family'])
    expect(problems[0]?.reason).toContain('a chick of hatch 2024-01 was scored pea')
  })
})
