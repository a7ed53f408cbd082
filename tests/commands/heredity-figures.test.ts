/** The figures of heredity as the command line asks for them. */
import {mkdirSync, writeFileSync} from 'node:fs'
import {dirname, join} from 'node:path'
import {describe, expect, it} from 'vitest'
import {figures, type FiguresOptions} from '../../src/commands/figures.ts'
import {figuresHelp} from '../../src/commands/figures-help.ts'
import type {HeredityAsked} from '../../src/commands/heredity-figures.ts'
import {HEREDITY_QUESTIONS} from '../../src/findings/heredity-figures.ts'
import {COMB, GROUND, LEGS, SHELL, TOES, WALNUT} from '../findings/heredity-book.ts'
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
const doubtful = written('heredity-figures-doubtful', {...STRAINS, 'traits/comb.md': COMB, 'birds/C.md': founder('C', 'male', 'comb: pea\n'), 'birds/D.md': founder('D', 'female', 'comb: pea\n')})
const short = written('heredity-figures-short', {...STRAINS, 'traits/legs.md': LEGS.replace('loci:', 'target: long\nloci:'), 'birds/A.md': founder('A', 'male', 'tested: {Cp: Cp/cp+}\n'), 'birds/B.md': founder('B', 'female', 'tested: {Cp: cp+/cp+}\n'),
  'birds/X.md': '---\nband: X\nsex: male\nsire: A\ndam: B\nhatched: 2023-04-01\n---\n'})
const burdened = written('heredity-figures-burdened', {...STRAINS, 'traits/comb.md': COMB, 'traits/legs.md': LEGS.replace('loci:', 'target: long\nloci:'), 'birds/A.md': founder('A', 'male', 'tested: {Cp: Cp/cp+, P: P/p+}\n'), 'birds/B.md': founder('B', 'female', 'tested: {Cp: cp+/cp+, P: P/P}\n'),
  'birds/X.md': '---\nband: X\nsex: male\nsire: A\ndam: B\nhatched: 2023-04-01\nlegs: creeper\n---\n', 'birds/Y.md': '---\nband: Y\nsex: male\nsire: A\ndam: B\nhatched: 2023-04-01\nlegs: long\n---\n'})
const one = written('heredity-figures-one', {...STRAINS, 'traits/comb.md': COMB, 'birds/A.md': founder('A', 'male', 'comb: single\n'), 'birds/B.md': founder('B', 'female', 'comb: single\n'),
  'birds/X.md': '---\nband: X\nsex: male\nsire: A\ndam: B\nhatched: 2023-04-01\ncomb: pea\n---\n'})
const ONES = 'alleles: {R: {R: 50%, r+: 50%}, P: {P: 50%, p+: 50%}, Q: {Q: 50%, q+: 50%}, Po: {Po: 50%, po+: 50%}}'
const dominant = written('heredity-figures-dominant', {
  'strains/holm-white.md': `---\nname: Holm White\nrole: recurrent\n${ONES}\n---\n`, 'strains/fell-buff.md': '---\nname: Fell Buff\nrole: donor\n---\n',
  'traits/comb.md': WALNUT, 'traits/shell.md': SHELL, 'traits/toes.md': TOES, 'traits/ground.md': '---\nname: Ground\nstates: [silver, gold]\ntarget: silver\nloci: [S]\n---\n',
  'birds/A.md': founder('A', 'male', 'tested: {Q: Q/q+, Po: Po/po+, R: R/r+, P: P/p+, S: S/s+}\n'), 'birds/B.md': founder('B', 'female', 'tested: {Q: q+/q+, Po: po+/po+, R: R/R, P: P/P, S: S/-}\n'),
  'birds/X.md': '---\nband: X\nsex: male\nsire: A\ndam: B\nhatched: 2023-04-01\ntoes: four\n---\n', 'birds/Y.md': '---\nband: Y\nsex: female\nsire: A\ndam: B\nhatched: 2023-04-01\n---\n',
})
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
    expect(code).toBe(0)
    expect(err).toMatch(/^The records contradict each other at P: A, scored single in Comb \(wrong with \d+%\); B, scored single in Comb \(wrong with \d+%\); X, scored pea in Comb \(wrong with \d+%\)\. Until that is mended one score or test in a thousand is taken to be wrong, which moves the figures of other birds too\.\n$/)
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

  it('says beneath the table where nothing clears it, as with a mate that may itself be free of it', () => {
    const {lines} = ask('test-mating', {bird: 'C', mate: 'D', locus: 'P'}, {format: 'table', folder: doubtful})
    expect(lines.slice(-2)).toEqual([
      'Tested for p+. Looked at: chicks. Against it speaks comb single; misscoring and how often a carrier shows it are in the figures.', 'No number of clean chicks of this mate brings the chance that C carries p+ down to 1%.',
    ])
  })

  it('stops in one sentence before any table where the mate hides it or nothing can be told', () => {
    const asked = (of: HeredityAsked, folder = many) => ask('test-mating', of, {format: 'table', folder})
    expect(asked({bird: 'C', mateGenotype: 'P/P', locus: 'P'})).toMatchObject({code: 2, lines: [''], err: 'This mate would hide p+: none of its chicks could show it. Mate C to a hen that shows single (p+/p+), and look at the chicks.\n'})
    expect(asked({bird: 'A', mateGenotype: 'p+/p+', locus: 'P'})).toMatchObject({code: 2, err: 'A carries p+ for certain: no number of clean chicks clears it.\n'})
    expect(asked({bird: 'B', mateGenotype: 'q+/q+', locus: 'Q'}, dominant)).toMatchObject({code: 2, err: 'B hides nothing at Q that its chicks could show.\n'})
    expect(asked({bird: 'B', mateGenotype: 'q+/q+', allele: 'Q'}, dominant)).toMatchObject({code: 2, err: 'B does not carry Q, as far as the records tell: there is nothing to test.\n'})
    expect(asked({bird: 'X', mateGenotype: 'q+/q+', among: 'sons'}, dominant)).toMatchObject({code: 2, err: 'The sons cannot show Q here; look at the daughters.\n'})
    expect(asked({bird: 'X', mateGenotype: 'po+/po+', allele: 'Pp'}, dominant)).toMatchObject({code: 2, err: expect.stringMatching(/^“Pp” is no allele of Po; did you mean/) as string})
  })

  it('takes the allele that is not wanted, or the one named', () => {
    const asked = (of: HeredityAsked) => ask('test-mating', {bird: 'X', ...of}, {format: 'table', folder: dominant})
    // by hand: 0.4 · 0.7ⁿ ≤ 1/99 first at 11, so 12 rows beneath the head
    expect(asked({mateGenotype: 'po+/po+'})).toMatchObject({code: 0, lines: {length: 14}})
    expect(asked({mateGenotype: 'po+/po+'}).lines.at(-1)).toMatch(/^Tested for Po\. Looked at: chicks\. Against it speaks toes five;/)
    expect(asked({mateGenotype: 'q+/q+'}).lines.at(-1)).toMatch(/^Tested for Q\. Looked at: daughters, for they alone tell it\. Against it speaks shell blue;/)
    expect(asked({mateGenotype: 'po+/po+', allele: 'po+'})).toMatchObject({code: 2, err: 'X carries po+ for certain: no number of clean chicks clears it.\n'})
  })

  it('takes what all strains have or the wild type where the mate’s genotype leaves a locus out, and says so', () => {
    const {code, err, lines} = ask('test-mating', {bird: 'X', mateGenotype: 'r+/r+'}, {folder: dominant})
    // a carrier with ½, halved by each clean chick: 1/(1 + 2ⁿ) ≤ 1/100 at 7
    expect([code, lines.length, err]).toEqual([0, 9, 'Of the mate is taken, since it was not said: p+/p+, the wild type.\n'])
  })

  it('tests a cock’s Z with the series of three alleles that ships', () => {
    const {code, lines} = ask('test-mating', {bird: 'X', mate: 'Y', locus: 'S', among: 'daughters'}, {folder: dominant})
    expect([code, lines.length]).toEqual([0, 9])
  })

  it('warns of a bird that carries what kills, and of nothing where no egg is lost', () => {
    const asked = (bird: string) => ask('test-mating', {bird, mateGenotype: 'p+/p+', locus: 'P'}, {format: 'table', folder: burdened})
    expect(asked('X').err).toMatch(/X carries Cp, and half of its test chicks can be expected to have it too.*Chicks with two doses die/s)
    expect(asked('Y').err).not.toMatch(/never hatch|kill|carries/)
  })

  it('warns where two doses kill', () => {
    const {err, code} = ask('test-mating', {bird: 'X', mateGenotype: 'Cp/cp+'}, {folder: short})
    expect([code, err]).toEqual([0, 'Of the eggs of this pair 12.5% would never hatch, by what is known of it. Mate no bird to find this out, for two doses of such an allele kill the chick: look at the ordinary chicks it has anyway, or have its DNA tested.\n'])
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

  it('says where the mating gives no such chick', () => {
    expect(ask('hatch-size', {wanted: 'comb single', atLeast: 1, sire: 'A', dam: 'B'}, {folder: dominant, format: 'table'}).lines.at(-1)).toBe('This mating gives no such chick.')
  })

  it('refuses in words', () => {
    const wanted = (text: string) => ask('hatch-size', {wanted: text, atLeast: 1, sire: 'A', dam: 'B'}).err
    expect(wanted('comb blue')).toMatch(/^“blue” is no state of comb/)
    expect(wanted('shank blue')).toMatch(/^“shank blue” begins with no trait/)
    expect(ask('hatch-size', {wanted: 'shell white, male', atLeast: 2, sire: 'A', dam: 'B'}, {folder: dominant})).toMatchObject({
      code: 2, err: 'Shell is seen in females only, so no male can be picked for white; ask for female chicks, or for male ones without it.\n',
    })
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
