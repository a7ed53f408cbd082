/** The figures of heredity as the command line asks for them. */
import {mkdirSync, writeFileSync} from 'node:fs'
import {dirname, join} from 'node:path'
import {describe, expect, it} from 'vitest'
import {figures, type FiguresOptions} from '../../src/commands/figures.ts'
import {figuresHelp} from '../../src/commands/figures-help.ts'
import type {HeredityAsked} from '../../src/commands/heredity-figures.ts'
import {HEREDITY_QUESTIONS} from '../../src/findings/heredity-figures.ts'
import {COMB, GROUND, LEGS} from '../findings/heredity-book.ts'
import {listeningWorld} from '../folders/listening-world.ts'
import {temporaryFolder} from '../folders/temporary-folder.ts'
import {AROUND} from '../logbook/around.ts'

const founder = (band: string, sex: string, rest = '') => `---\nband: ${band}\nsex: ${sex}\nstrain: holm-white\n${rest}---\n`
function written(name: string, files: Readonly<Record<string, string>>): string {
  const folder = temporaryFolder(name)
  for (const [file, text] of Object.entries({...AROUND, ...files})) {
    mkdirSync(dirname(join(folder, file)), {recursive: true})
    writeFileSync(join(folder, file), text)
  }
  return folder
}
const STRAINS = {
  'strains/holm-white.md': '---\nname: Holm White\nrole: recurrent\nalleles: {P: {P: 50%, p+: 50%}, S: {S: 50%, s+: 50%}, Cp: {Cp: 10%, cp+: 90%}}\n---\n', 'strains/fell-buff.md': '---\nname: Fell Buff\nrole: donor\ntrue-for: {comb: pea}\n---\n',
}
const BIRDS = {
  'birds/A.md': founder('A', 'male', 'tested: {P: P/p+}\nlegs: creeper\n'), 'birds/B.md': founder('B', 'female', 'tested: {P: P/p+}\nlegs: creeper\n'), 'birds/C.md': founder('C', 'male', 'comb: pea\n'),
}
const many = written('heredity-figures', {...STRAINS, ...BIRDS, 'traits/comb.md': COMB, 'traits/ground.md': GROUND, 'traits/legs.md': LEGS})
const one = written('heredity-figures-one', {...STRAINS, 'traits/comb.md': COMB, 'birds/A.md': founder('A', 'male', 'comb: single\n'), 'birds/B.md': founder('B', 'female', 'comb: single\n'),
  'birds/X.md': '---\nband: X\nsex: male\nsire: A\ndam: B\nhatched: 2023-04-01\ncomb: pea\n---\n'})
const bare = written('heredity-figures-bare', {})

function ask(question: string, asked: HeredityAsked, more: Partial<FiguresOptions> = {}) {
  const world = listeningWorld()
  const code = figures({question, folder: many, format: 'csv', asOf: undefined, quiet: true, asked, ...more}, world)
  return {code, err: world.said.err, lines: world.said.out.trimEnd().split('\n')}
}

describe('figures genotypes', () => {
  it('gives every genotype above nought, a bird’s likeliest first', () => {
    const {code, lines, err} = ask('genotypes', {locus: 'P'})
    expect([code, err, lines[0]]).toEqual([0, '', 'band,genotype,probability,how'])
    expect(lines.filter(line => line.startsWith('A,'))).toEqual(['A,P/p+,1,exact'])
    expect(lines.filter(line => line.startsWith('C,')).map(line => line.split(',')[1])).toEqual(['P/p+', 'P/P'])
  })

  it('takes the only locus there is, and asks where there are several', () => {
    expect(ask('genotypes', {}, {folder: one}).code).toBe(0)
    expect(ask('genotypes', {})).toMatchObject({code: 2, err: expect.stringMatching(/^Say with --locus which one: /) as string})
    expect(ask('genotypes', {locus: 'Q'})).toMatchObject({code: 2, err: expect.stringContaining('the locus Q') as string})
    expect(ask('genotypes', {}, {folder: bare})).toMatchObject({code: 2, err: 'No trait of the records names a locus.\n'})
  })

  it('answers where the records contradict themselves, and says so', () => {
    // two singles cannot have a pea chick
    const {code, err, lines} = ask('genotypes', {locus: 'P'}, {folder: one})
    expect([code, err]).toEqual([0, 'The looks on record contradict each other at P: one score in a thousand is taken to be wrong.\n'])
    expect(lines.length).toBeGreaterThan(3)
  })
})

describe('figures forecast', () => {
  it('begins with what is lost and what to beware of', () => {
    const {code, lines} = ask('forecast', {sire: 'A', dam: 'B'})
    expect([code, lines[0]]).toEqual([0, 'what,of,sex,is,share,how'])
    expect(lines[1]).toMatch(/^never hatches,Cp,,,0\.25\d*,exact$/)
    expect(lines[2]).toMatch(/^beware: lethal,Cp,/)
    expect(lines).toContain('look,comb,male,single,0.25,exact')
  })

  it('refuses in words what is no pair', () => {
    expect(ask('forecast', {sire: 'A'}).err).toBe('Say with --dam which bird, by its band.\n')
    expect(ask('forecast', {sire: 'B', dam: 'A'}).err).toBe('B is no male; the sire stands after --sire.\n')
    expect(ask('forecast', {sire: 'A', dam: 'zz-99'})).toMatchObject({code: 2, err: expect.stringContaining('No bird of the book wears zz-99') as string})
  })
})

describe('figures test-mating', () => {
  it('tells the chicks that clear the bird, one row a chick', () => {
    // ⅔ before; 2/(2 + 2^n) ≤ 1/20 from n = 6 on
    const {code, lines} = ask('test-mating', {bird: 'C', mateGenotype: 'p+/p+', locus: 'P', error: 0.05})
    expect([code, lines.length, lines.at(-1)?.split(',')[3], lines.at(-2)?.split(',')[3]]).toEqual([0, 8, 'yes', 'no'])
  })

  it('says beneath the table where nothing clears it', () => {
    expect(ask('test-mating', {bird: 'C', mateGenotype: 'P/P', locus: 'P'}, {format: 'table'}).lines.at(-1)).toBe('No number of clean chicks of this mate brings the chance that C carries p+ down to 1%.')
  })

  it('refuses in words', () => {
    expect(ask('test-mating', {bird: 'C'}).err).toMatch(/^Say with --mate/)
    expect(ask('test-mating', {bird: 'C', mate: 'A'}).err).toBe('C and A are not known to be male and female.\n')
    expect(ask('test-mating', {bird: 'C', mateGenotype: 'x/x', locus: 'P'}).err).toBe('“x/x” is no genotype at P (P, p+).\n')
    expect(ask('test-mating', {bird: 'C', mateGenotype: 'p+/_', locus: 'P'}).err).toMatch(/leaves an allele open/)
    expect(ask('test-mating', {bird: 'C', mateGenotype: 's+/s+', locus: 'S'}).err).toBe('A hen has one allele at S: write s+/-.\n')
  })
})

describe('figures hatch-size', () => {
  it('tells chicks, and says that eggs cannot be told where nothing was counted', () => {
    const {code, lines} = ask('hatch-size', {wanted: 'comb single', atLeast: 3, sire: 'A', dam: 'B'}, {format: 'table'})
    expect(code).toBe(0)
    expect(lines[1]).toMatch(/^ +3 +95\.0% +25\.0% +23 /)
    expect(lines.at(-1)).toMatch(/^The eggs cannot be told/)
  })

  it('refuses in words', () => {
    const wanted = (text: string) => ask('hatch-size', {wanted: text, atLeast: 1, sire: 'A', dam: 'B'}).err
    expect(wanted('comb blue')).toMatch(/^“blue” is no state of comb/)
    expect(wanted('shank blue')).toMatch(/^“shank blue” begins with no trait/)
    expect(wanted('male, female')).toBe('A chick is male or female: name one of them.\n')
    expect(ask('hatch-size', {sire: 'A', dam: 'B'}).err).toMatch(/^Say with --wanted/)
  })
})

describe('options of heredity', () => {
  it('go with their own questions', () => {
    expect(ask('kinship', {sire: 'A'})).toMatchObject({code: 2, err: '--sire is for figures forecast and hatch-size.\n'})
    expect(ask('genotypes', {wanted: 'comb pea'})).toMatchObject({code: 2, err: '--wanted is for figures hatch-size.\n'})
  })

  it('are shown by an example in the help of each', () => {
    for (const question of HEREDITY_QUESTIONS) expect(figuresHelp(['figures', question, '--help'])).toContain(`pinfeather figures ${question} content --`)
  })
})
