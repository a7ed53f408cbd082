/** One fault, one message: a band that a misplaced or mistyped record withholds is not also missed at each of its uses. */
import {describe, expect, it} from 'vitest'
import {around, codesAt, linkFiles, type Files} from '../around.ts'

const hatch = (...bands: string[]) => `---\npen: 2024-A\nset: 2024-03-02\non: 2024-03-23\nchicks:\n${bands.map(band => `  - {band: ${band}, sex: female}`).join('\n')}\n---\n`
const bird = (band: string) => `---\nband: ${band}\nsex: female\nstrain: holm-white\nhatched: 2022-03-20\ncomb: single\nkeeper: kelpgarth\n---\n`
const USES: Files = {
  'scores/2024.csv': 'band,on,by,comb\n24-031,2024-05-04,inga,pea\n24-031,2024-06-04,inga,pea\n24-032,2024-06-04,inga,pea\n',
  'measures/2024.csv': 'band,on,weight\n24-031,2024-08-10,1480\n',
  'shows/2024-11-02-ternhouse.md': '---\nname: Autumn show\non: 2024-11-02\nentries: [{bird: 24-031, class: pullet, result: 1 of 4}]\n---\n',
}
const problemsWith = (files: Files) => linkFiles(around(files)).problems

describe('a record in the wrong folder', () => {
  it.each([
    ['pens/24-031.md', 'this looks like the record of a bird, which pens/ does not hold', 'move it to birds/24-031.md'],
    ['hatches/24-031.md', 'this looks like the record of a bird, which hatches/ does not hold', 'move it to birds/24-031.md'],
    ['bird/24-031.md', 'this looks like the record of a bird, but no record is looked for here', 'move it to birds/24-031.md'],
    ['24-031.md', 'this looks like the record of a bird, but no record is looked for here', 'move it to birds/24-031.md'],
    ['birds/2024/24-031.md', 'this looks like the record of a bird, but no record is looked for here', 'move it to birds/24-031.md'],
    ['birds/24-031.txt', 'this looks like the record of a bird, but no record is looked for here', 'call it birds/24-031.md'],
    ['birds/24-031.md.txt', 'this looks like the record of a bird, but no record is looked for here', 'call it birds/24-031.md'],
  ])('%s is one error', (file, reason, remedy) => {
    const problems = problemsWith({...USES, 'hatches/2024-01.md': hatch('24-032'), [file]: bird('24-031')})
    expect(problems).toMatchObject([{code: 'misplaced-record', severity: 'error', reason, remedy, place: {file, start: {line: 1, column: 1}}}])
    expect(problems).toHaveLength(1)
  })

  it.each([
    ['hatch/2024-01.md', 'hatches/2024-01.md'], ['pens/2024-01.md', 'hatches/2024-01.md'], ['birds/2024-01.md', 'hatches/2024-01.md'],
  ])('%s with its chicks is one error', (file, right) => {
    expect(problemsWith({...USES, [file]: hatch('24-031', '24-032')})).toMatchObject([{code: 'misplaced-record', remedy: `move it to ${right}`}])
  })

  it.each([
    ['pens/2024-A.md', 'hatches/2024-A.md'], ['pens/2024-A.md', 'pen/2024-A.md'], ['pens/2024-A.md', 'birds/2024-A.md'], ['traits/comb.md', 'trait/comb.md'],
    ['strains/holm-white.md', 'strain/holm-white.md'], ['keepers/kelpgarth.md', 'keeper/kelpgarth.md'], ['project.md', 'Project.md'],
  ])('%s at %s is one error, and nothing that names it is another', (right, wrong) => {
    const whole = around({...USES, 'hatches/2024-01.md': hatch('24-031', '24-032')})
    const text = whole[right] ?? ''
    const {problems} = linkFiles({...Object.fromEntries(Object.entries(whole).filter(([file]) => file !== right)), [wrong]: text})
    expect(codesAt(problems)).toEqual([`${wrong}:1 misplaced-record`])
  })

  it('is not told to write over another', () => {
    expect(problemsWith({'bird/H-1.md': bird('H-1')})).toMatchObject([{code: 'misplaced-record', remedy: 'birds/H-1.md stands there already: bring the two together in it'}])
  })

  it('a bird’s record that cannot be read lends its band too', () => {
    expect(codesAt(problemsWith({...USES, 'hatches/2024-01.md': hatch('24-032'), 'birds/24-031.md': bird('24-031').replace('sex: female', 'sex female')}))).toEqual(['birds/24-031.md:3 unreadable-front-matter'])
  })

  it('a record with a mistyped key stays where it is', () => {
    expect(codesAt(problemsWith({'diary/1.md': '---\non: 2024-10-01\ntitel: Rain\n---\n'}))).toEqual(['diary/1.md:3 unknown-key'])
    expect(codesAt(problemsWith({'birds/H-9.md': '---\nsex: male\nstrain: holm-white\npen: 2024-A\nhatched: 2024-01\n---\n'}))).toEqual(['birds/H-9.md:1 missing-key'])
  })

  it('a file that is no record is left out with a warning', () => {
    expect(codesAt(problemsWith({'README.md': 'About these records.\n', 'notes/list.md': '---\ntags: [a]\n---\n'}))).toEqual(['README.md:1 unplaced-file', 'notes/list.md:1 unplaced-file'])
  })
})

describe('a band that no bird wears', () => {
  it('is said once, with all its places', () => {
    const problems = problemsWith({...USES, 'hatches/2024-01.md': hatch('24-032')})
    expect(codesAt(problems)).toEqual(['measures/2024.csv:2 unknown-band'])
    expect(problems[0]?.reason).toBe('no bird wears band 24-031, which is named in 4 places')
    expect(problems[0]?.related?.map(({place, note}) => `${note} ${place.file}:${place.start.line}`)).toEqual(['also at scores/2024.csv:2', 'also at scores/2024.csv:3', 'also at shows/2024-11-02-ternhouse.md:4'])
  })

  it('is said at the chick’s line, where that one is mistyped and nobody uses it', () => {
    const problems = problemsWith({...USES, 'hatches/2024-01.md': hatch('24-301', '24-032')})
    expect(codesAt(problems)).toEqual(['hatches/2024-01.md:6 unknown-band'])
    expect(problems[0]).toMatchObject({
      reason: 'nothing else names 24-301, while 4 places name 24-031, which no bird wears',
      remedy: 'if this chick wears 24-031, write that here; if not, record 24-031 or mend those places',
    })
    expect(problems[0]?.related).toHaveLength(4)
  })

  it('is said at its uses where several chicks’ lines are as near', () => {
    expect(codesAt(problemsWith({...USES, 'hatches/2024-01.md': hatch('24-032', '24-033', '24-034')}))).toEqual(['measures/2024.csv:2 unknown-band'])
  })

  it('is said at its use where only one place names it', () => {
    expect(codesAt(problemsWith({'hatches/2024-01.md': hatch('24-301'), 'measures/2024.csv': 'band,on,weight\n24-031,2024-08-10,1480\n'}))).toEqual(['measures/2024.csv:2 unknown-band'])
  })

  it('is said at its uses where the near chick is used by its own band', () => {
    const used = {...USES, 'measures/2023.csv': 'band,on,weight\n24-301,2024-08-09,1480\n'}
    expect(codesAt(problemsWith({...used, 'hatches/2024-01.md': hatch('24-301', '24-032')}))).toEqual(['measures/2024.csv:2 unknown-band'])
  })

  it('a sire is sought among males, a dam among females', () => {
    const remedies = (files: Files) => problemsWith(files).map(({remedy}) => remedy)
    const pen = (males: string, females: string) => ({'pens/2024-B.md': `---\nseason: 2024\nmales: [${males}]\nfemales: [${females}]\n---\n`})
    expect(remedies(pen('H-4', 'H-5'))).toEqual(['did you mean H-1 (birds/H-1.md) or H-2 (birds/H-2.md)?', 'did you mean H-3 (birds/H-3.md)?'])
    expect(remedies(pen('B-4', 'B-5'))).toEqual(['mend the band, or add birds/B-4.md for a founder', 'did you mean B-1 (birds/B-1.md) or B-2 (birds/B-2.md) or B-3 (birds/B-3.md)?'])
    const line = '---\npen: 2024-A\nset: 2024-03-02\non: 2024-03-23\neggs: {B-7: 3}\nchicks:\n  - {band: 24-031, sex: female, sire: H-4, dam: H-5}\n---\n'
    expect(remedies({'hatches/2024-01.md': line})).toEqual([
      'did you mean B-1 (birds/B-1.md) or B-2 (birds/B-2.md) or B-3 (birds/B-3.md)?', 'did you mean H-1 (birds/H-1.md) or H-2 (birds/H-2.md)?', 'did you mean H-3 (birds/H-3.md)?',
    ])
  })

  it('two figures that changed places are nearest, and a band that differs only in its signs stands alone', () => {
    const of = (word: string) => problemsWith({'hatches/2024-01.md': hatch('24-301', '24-032', '24-033'), 'measures/2024.csv': `band,on,weight\n${word},2024-08-10,1480\n24-032,2024-08-10,1480\n24-033,2024-08-10,1480\n`})[0]?.remedy
    expect(of('24-031')).toBe('did you mean 24-301 (hatches/2024-01.md) or 24-032 (hatches/2024-01.md) or 24-033 (hatches/2024-01.md)?')
    expect(of('24 032')).toBe('did you mean 24-032 (hatches/2024-01.md)?')
    expect(of('24032')).toBe('did you mean 24-032 (hatches/2024-01.md)?')
  })

  it('that only a file’s name gives: the file’s own band is named', () => {
    const pen = '---\nseason: 2024\nmales: [H-9]\nfemales: [B-2]\n---\n'
    expect(problemsWith({'birds/H-9.md': bird('K-7').replace('female', 'male'), 'pens/2024-B.md': pen}).filter(({severity}) => severity === 'error')).toMatchObject([
      {code: 'unknown-band', remedy: 'birds/H-9.md gives its bird the band K-7: mend whichever is wrong'},
    ])
  })

  it('that are several in one text: the brackets are named', () => {
    const pen = '---\nseason: 2024\nmales: [H-1]\nfemales: B-1 B-2\n---\n'
    expect(problemsWith({'pens/2024-B.md': pen})).toMatchObject([{code: 'unknown-band', remedy: 'for several birds write [B-1, B-2]'}])
  })
})

describe('a mistyped keeper', () => {
  it('is a warning that names the near one', () => {
    const pen = '---\nseason: 2024\nmales: [H-1]\nfemales: [B-2]\nkeeper: kelpgrath\n---\n'
    expect(problemsWith({'pens/2024-B.md': pen, 'scores/2024.csv': 'band,on,by,comb\nH-1,2024-05-04,igna,single\n'})).toMatchObject([
      {code: 'unknown-keeper', severity: 'warning', remedy: 'did you mean kelpgarth (keepers/kelpgarth.md)?'},
      {code: 'unknown-keeper', severity: 'warning', remedy: 'did you mean inga (keepers/kelpgarth.md)?'},
    ])
  })
})

describe('a name that no record bears', () => {
  it('is said once, with the other places that name it', () => {
    const {'strains/holm-white.md': strain = '', ...others} = around({})
    const {problems} = linkFiles({...others, 'strains/holm-whit.md': strain})
    expect(problems).toMatchObject([{code: 'unknown-strain', remedy: 'did you mean holm-whit (strains/holm-whit.md)?', place: {file: 'project.md'}}])
    expect(problems[0]?.related?.map(({place, note}) => `${note} ${place.file}:${place.start.line}`)).toEqual(['also at birds/H-1.md:4', 'also at birds/H-2.md:4', 'also at birds/H-3.md:4'])
  })
})

describe('a letter for a figure in a band', () => {
  it('names the band that is meant first, and says why', () => {
    const pen = '---\nseason: 2024\nmales: [H-1]\nfemales: [23-0l2]\n---\n'
    const problems = problemsWith({'hatches/2024-01.md': hatch('23-010', '23-012', '23-02', '23-022'), 'pens/2024-C.md': pen})
    expect(problems.map(({code, remedy}) => `${code}: ${remedy}`)).toEqual(['unknown-band: did you mean 23-012 (hatches/2024-01.md)? “23-0l2” has the letter l for a one'])
  })
})
