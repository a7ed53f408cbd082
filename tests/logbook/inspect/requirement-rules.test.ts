/** What is asked for and cannot be meant as it is written: classes, grades, papers and the table of distinctness. */
import {describe, expect, it} from 'vitest'
import {around, linkFiles, type Files} from '../around.ts'

const found = (code: string, requirement: string, more = '', files: Files = {}) =>
  linkFiles(around({'requirements.md': `---\nrequirements:\n  - {title: t, asked: a, ${requirement}}\n${more}---\n`, ...files})).problems.filter(problem => problem.code === code || problem.severity === 'error')
const show = (entry: string): Files => ({'shows/2024-11-02.md': `---\nname: Autumn show\non: 2024-11-02\nentries:\n  - {bird: H-1, ${entry}}\n---\n`})

describe('class-unknown', () => {
  const of = (classes: string, files: Files = {}) => found('class-unknown', `kind: shown-per-class, per-class: 2, classes: ${classes}`, '', files)
  it('tells of a class that is none, at its place', () => {
    expect(of('[cock, pulet]')).toMatchObject([{severity: 'warning', place: {file: 'requirements.md', start: {line: 3, column: 79}}, reason: 'no bird can stand in a class pulet', remedy: 'did you mean pullet?'}])
    expect(of('[bantam]')).toMatchObject([{remedy: 'write cock, cockerel, hen or pullet, or a class as the shows name it'}])
  })
  it('knows those of the shows and of the standard, and the four in any words', () => {
    expect([of('[Young hens, "pullets, light"]'), of('[bantam]', show('class: Bantams of either sex')), of('[veteran]', {'standard/1.md': '---\ndraft: 1\non: 2024-10-01\nweights: {veteran: 2.3 kg}\n---\n## Male\n\n**Comb.** Pea.\n'})]).toEqual([[], [], []])
  })
  it('leaves the words of other fowl alone before the first show', () => {
    const duck = {'project.md': '---\nname: Skerry Fowl\nspecies: duck\naim: A fowl that stands wind and wet.\nstrains: {recurrent: holm-white, donors: [fell-buff]}\n---\n'}
    expect([of('[drake]', duck), of('[pulet]', duck).length]).toEqual([[], 1])
  })
})

describe('grade-unknown', () => {
  const of = (grades: string, files: Files = {}) => found('grade-unknown', `kind: show-result, ${grades}`, '', files)
  it('tells of a least grade that is not in the row', () => {
    expect(of('grades: [fair, good], least-grade: god')).toMatchObject([{severity: 'warning', place: {file: 'requirements.md'}, reason: 'the least grade god is not among the grades: fair, good', remedy: 'did you mean good?'}])
    expect(of('least-grade: good')).toMatchObject([{reason: 'which grades there are beside good is not said'}])
    expect(of('grades: [fair, good], least-grade: Good')).toEqual([])
  })
  it('tells of a show’s grade that no requirement lists, where the show stands', () => {
    expect(of('grades: [fair, good], least-grade: good', show('grade: excelent'))).toMatchObject([{place: {file: 'shows/2024-11-02.md', start: {line: 5}}, reason: 'no requirement lists the grade excelent', related: [{place: {file: 'requirements.md'}}]}])
    expect([of('grades: [fair, good], least-grade: good', show('grade: Fair')), of('at-least: 90', show('grade: excelent'))]).toEqual([[], []])
  })
})

describe('paper-unknown', () => {
  it('tells of a waiver whose paper is not among the papers', () => {
    const of = (file: string) => found('paper-unknown', `kind: history, waived: {because: Grown old., paper: ${file}}`, 'papers: [{file: letter.pdf, on: 2022-12-03, proves: history}]\n')
    expect(of('leter.pdf')).toMatchObject([{severity: 'warning', place: {start: {line: 3}}, reason: 'no paper has the file leter.pdf', remedy: 'did you mean letter.pdf?'}])
    expect(of('letter.pdf')).toEqual([])
  })
})

describe('distinctness-odd', () => {
  const of = (...rows: string[]) => found('distinctness-odd', 'kind: distinct, at-least: 1', `distinctness:\n${rows.map(row => `  - {${row}}\n`).join('')}`).map(({reason, remedy, place}) => [place.start.line, reason, remedy])
  it('wants the breed itself first', () => {
    expect(of('character: Comb, Holm White: single, Skerry Fowl: pea')).toEqual([[5, 'Holm White stands first, and is taken for the new breed, which is called Skerry Fowl', 'write Skerry Fowl before it']])
    expect(of('character: Comb, Skery Fowl: pea, Holm White: single')).toEqual([[5, 'Skery Fowl stands first, and is taken for the new breed, which is called Skerry Fowl', 'did you mean Skerry Fowl?']])
  })
  it('takes no slip of the breed’s name for a neighbour', () => {
    expect(of('character: Comb, Skerry Fowl: pea, Holm White: single', 'character: Skin, Skery Fowl: white, Holm White: white')).toEqual([[6, 'Skery Fowl is nearly the breed’s own name, and is taken for another breed', 'did you mean Skerry Fowl?']])
  })
  it('tells of a character that stands twice', () => {
    expect(of('character: Comb, Skerry Fowl: pea, Holm White: single', 'character: "comb ", Skerry Fowl: pea, Holm White: single')).toEqual([[6, 'the character comb stands twice, and counts once', 'put the two rows into one, or name what parts them']])
  })
})
