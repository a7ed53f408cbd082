/** What people who keep records in a barn get wrong: each slip is one clear problem at the line to mend, with its remedy, or is understood. */
import {describe, expect, it} from 'vitest'
import {front, readFiles} from './reading.ts'

/** `4:17 wrong-unit: remedy` of each problem. */
const told = (files: Readonly<Record<string, string>>) => readFiles(files).problems.map(({place: {start}, code, remedy}) => `${start.line}:${start.column} ${code}: ${remedy}`)
const bird = (...lines: string[]) => told({'birds/1.md': front(['band: 24-031', ...lines].join('\n'))})
const hatch = (...lines: string[]) => told({'hatches/1.md': front(['pen: 2024-A', ...lines].join('\n'))})
const draft = (...lines: string[]) => told({'standard/1.md': front(['draft: 1', 'on: 2024-10-01', ...lines].join('\n'))})
const weighDay = (text: string) => told({'measures/1.csv': text})

describe('a comma inside braces', () => {
  it('is one problem, and the whole text is said', () => {
    expect(hatch('chicks: [{band: 1, left: 2024-06-30 culled, off type, small}]')).toEqual(['3:45 comma-in-braces: put the whole text in quotes: "2024-06-30 culled, off type, small"'])
    expect(hatch('chicks: [{band: 1, sex: ?, off type}]')).toHaveLength(1)
  })

  it('of a decimal is told as such', () => {
    expect(draft('weights: {cock: 3,2 kg, hen: 2,5 kg}')).toEqual(['4:19 comma-in-braces: write 3.2 kg, or "3,2 kg" in quotes', '4:32 comma-in-braces: write 2.5 kg, or "2,5 kg" in quotes'])
    expect(told({'strains/a.md': front('name: A\nrole: donor\nalleles: {S: {S: 10,5%, s+: 89.5%}}')})).toEqual(['4:21 comma-in-braces: write 10.5%, or "10,5%" in quotes'])
  })

  it('is no matter outside of braces', () => {
    expect(draft('weights:', '  cock: 3,2 kg', '  hen: 2,5 kg')).toEqual([])
  })
})

describe('quotation marks', () => {
  it.each([
    ['sex: “male”', '3:6 curly-quotes: write "male" with straight quotes, or no quotes at all'],
    ['keeper: ‘kelpgarth’', '3:9 curly-quotes: write "kelpgarth" with straight quotes, or no quotes at all'],
    ['left: “2024-06-30 culled, off type”', '3:7 curly-quotes: write "2024-06-30 culled, off type" with straight quotes'],
    ['photos: [{file: a.jpg, on: „2024-06-30“}]', '3:28 curly-quotes: write "2024-06-30" with straight quotes, or no quotes at all'],
    ['left: “2024-06-30 culled', '3:7 curly-quotes: write "2024-06-30 culled" with straight quotes, or no quotes at all'],
  ])('curly: %s', (line, problem) => expect(bird(line)).toEqual([problem]))

  it('curly, around a text that a comma cut', () => {
    expect(hatch('chicks: [{band: 1, left: “2024-06-30 culled, off type”, sex: male}]')).toEqual(['3:26 curly-quotes: write "2024-06-30 culled, off type" with straight quotes'])
  })

  it('curly, in a sentence, are the keeper’s own', () => {
    expect(told({'shows/1.md': front('name: Show\non: 2024-10-01\nentries: [{bird: 1, remark: “Good head.”}]')})).toEqual([])
  })

  it('in a table’s cell are curly too', () => {
    expect(weighDay('band,on,weight\n“24-031”,2024-08-10,1480\n')).toEqual(['2:1 curly-quotes: write "24-031" with straight quotes, or no quotes at all'])
  })

  it.each([
    [['left: "2024-06-30 culled, off type', 'keeper: kelpgarth'], '3:7'], [['left: "2024-06-30 culled', 'keeper: "kelpgarth"', 'sex: male'], '3:7'],
    [['sex: male', 'keeper: \'kelpgarth', 'strain: holm-white'], '4:9'], [['sex: male', 'keeper: "kelpgarth'], '4:9'],
    [['photos: [{file: "a.jpg, view: left}]', 'sex: male'], '3:17'],
  ])('not closed: %j is placed where it opens', (lines, place) => {
    expect(bird(...lines)).toEqual([`${place} unreadable-front-matter: close it in the same line, or take it out`])
  })

  it('a quoted text of several lines is none', () => {
    expect(bird('left: "2024-06-30 culled,', '  off type"', 'sex male')).toEqual(['5:1 unreadable-front-matter: write sex: male'])
  })

  it('an apostrophe in single ones', () => {
    expect(bird('observations: [{on: 2024, note: \'It\'s lame\'}]')).toEqual(['3:37 unreadable-front-matter: put the whole text in "…" instead'])
  })
})

describe('brackets', () => {
  it.each([
    [['kin: [{with: 1, kinship: 5%}', 'sex: male'], '3:6 unreadable-front-matter: close it with ]'], [['photos: [{file: a.jpg]', 'sex: male'], '3:10 unreadable-front-matter: close it with }'],
    [['observations:', '  - {on: 2024, note: Lame', '  - {on: 2025, note: Well}'], '4:5 unreadable-front-matter: close it with }'],
    [['maybe: [1, 2'], '3:8 unreadable-front-matter: close it with ]'],
  ])('not closed: %j is placed where it opens', (lines, problem) => expect(bird(...lines)).toEqual([problem]))

  it('left out around several words', () => {
    expect(told({'pens/1.md': front('season: 2024\nmales: H-1, H-2\nfemales: [B-1]')})).toEqual(['3:8 wrong-form: for several write [H-1, H-2]; for one with a comma in it ["H-1, H-2"]'])
    expect(told({'traits/1.md': front('name: Comb\nstates: pea, single')})).toEqual(['3:9 wrong-form: for several write [pea, single]; for one with a comma in it ["pea, single"]'])
  })
})

describe('keys', () => {
  it.each([
    ['sex male', '3:1 unreadable-front-matter: write sex: male'], ['sex:male', '3:1 unreadable-front-matter: write sex: male'], ['sex', '3:1 unreadable-front-matter: write a key, a colon, a space and the value'],
    ['sex: ?', '3:6 unreadable-front-matter: put it in quotes, or write the word (unknown)'],
    ['sex: male\nsex: male', '4:1 repeated-key: keep one of the two'],
    ['\tsex: male', '3:1 unreadable-front-matter: use spaces'],
  ])('%j', (line, problem) => {
    expect(bird(line)).toEqual([problem])
    expect(bird(line, 'strain: holm-white')).toEqual([problem])
  })

  it('a mistyped key that the record needs is not missed as well', () => {
    expect(told({'birds/1.md': front('bnad: 24-031\nsex: male')})).toEqual(['2:1 unknown-key: did you mean band?'])
    expect(told({'birds/1.md': front('Band: 24-031\nSex: male\nStrain: holm-white')})).toEqual(['2:1 unknown-key: did you mean band?', '3:1 unknown-key: did you mean sex?', '4:1 unknown-key: did you mean strain?'])
    expect(told({'pens/1.md': front('seson: 2024\nmales: [1]\nfemales: [2]')})).toEqual(['2:1 unknown-key: did you mean season?'])
  })

  it('a hard space is a space', () => {
    const {records, problems} = readFiles({'birds/1.md': '---\nband:\u00A0H\u00A09\nsex: femal\n---\nAs\u00A0written.\n'})
    expect(problems.map(({place}) => place.start)).toEqual([{line: 3, column: 6}])
    expect(readFiles({'birds/1.md': '---\nband:\u00A0H\u00A09\n---\nAs\u00A0written.\n'}).records.bird).toMatchObject([{data: {band: {text: 'H 9'}}, body: 'As\u00A0written.\n'}])
    expect(records.bird).toHaveLength(1)
  })
})

describe('words and figures', () => {
  it.each([
    ['sex: cock', '3:6 unreadable-value: did you mean male?'], ['sex: Hen', '3:6 unreadable-value: did you mean female?'], ['sex: m', '3:6 unreadable-value: did you mean male?'],
    ['sex: Female', '3:6 unreadable-value: did you mean female?'], ['sex: "?"', '3:6 unreadable-value: did you mean unknown?'],
    ['hatched: 31/03/2024', '3:10 unreadable-value: write 2024-03-31'], ['hatched: 2024-3-5', '3:10 unreadable-value: write 2024-03-05'], ['hatched: 2024/3/5', '3:10 unreadable-value: write 2024-03-05'],
    ['hatched: 2024.03.05', '3:10 unreadable-value: write 2024-03-05'], ['hatched: 20240305', '3:10 unreadable-value: write 2024-03-05'], ['left: 2024/03/05 sold', '3:7 unreadable-value: write 2024-03-05'],
  ])('%s', (line, problem) => expect(bird(line)).toEqual([problem]))

  it('a season is a year', () => {
    const pen = (season: string) => told({'pens/1.md': front(`season: ${season}\nmales: [1]\nfemales: [2]`)})
    expect(pen('spring 2024')).toEqual(['2:9 unreadable-value: write a year such as 2024'])
    expect(pen('24')).toEqual(['2:9 unreadable-value: write all four figures, such as 2024'])
  })
})

describe('the lines of dashes', () => {
  it.each([
    ['', '1:1 no-front-matter: begin with a line of ---, then key: value lines, then another line of ---'],
    ['—-\nband: 1\n—-\n', '1:1 no-front-matter: write three plain dashes, ---; a phone likes to join two of them'],
    ['---\nband: 1\nsex: male\n\nA quiet bird.\n', '1:1 unreadable-front-matter: put a line of --- below line 3'],
    ['---\nband: 1\n  ---\nWords\n', '3:1 unreadable-front-matter: let the closing line be --- and nothing else'],
    ['---\nband: 1\n...\nWords\n', '3:1 unreadable-front-matter: let the closing line be --- and nothing else'],
    ['---\nband: 1\n—-\nWords\n', '3:1 unreadable-front-matter: let the closing line be --- and nothing else'],
  ])('%j', (text, problem) => expect(told({'birds/1.md': text})).toEqual([problem]))

  it('an empty file is said to be empty', () => {
    expect(readFiles({'birds/1.md': '\n'}).problems[0]?.reason).toBe('the file is empty')
  })
})

describe('tables', () => {
  it.each([
    ['24-031,2024-08-10,1480\n24-032,2024-08-10,1490\n', '1:1 missing-column: put a line of headings above it, such as band,on,weight'],
    ['Ring,Date,Weight\n24-031,2024-08-10,1480\n', '1:1 missing-column: write band and on into the first line, which has Ring, Date, Weight'],
    ['band,weight\n24-031,1480\n', '1:1 missing-column: write on into the first line, which has band, weight'],
    ['bird,on,weight\n24-031,2024-08-10,1480\n', '1:1 missing-column: is “bird” meant for it? write band'],
    ['band;on;weight\n24-031,2024-08-10,1480\n24-032,2024-08-10,1490\n', '2:1 unreadable-table: part the cells of all lines with the same sign'],
    ['band,on,weight\n24-031;2024-08-10;1480,5\n24-032;2024-08-10;1490\n', '2:1 unreadable-table: part the cells of all lines with the same sign'],
  ])('%j', (text, problem) => expect(weighDay(text)).toEqual([problem]))

  it('dates that are all written in another way are one slip', () => {
    const {problems} = readFiles({'measures/1.csv': 'band,on,weight\n1,10/08/2024,1480\n2,10/08/2024,1480\n3,2024-08-10,1\n4,31/08/2024,1490\n'})
    expect(problems).toMatchObject([{
      place: {start: {line: 2, column: 3}}, reason: '“10/08/2024” does not begin with the year; so it is in 2 further rows', remedy: 'write 2024-08-10 or 2024-10-08',
      related: [{note: 'also at', place: {start: {line: 3}}}, {note: 'also at', place: {start: {line: 5}}}],
    }])
    expect(told({'scores/1.csv': 'band,on,comb\n1,10.8.2024,pea\n2,2024-02-30,pea\n3,2024-03-00,pea\n'})).toHaveLength(3)
  })

  it.each(['band;on;weight\n24-031;2024-08-10;1480,5\n', '\uFEFFband,on,weight\r\n24-031,2024-08-10,1480\r\n', 'band\ton\tweight\n24-031\t2024-08-10\t1480\n', 'Band,On,weight\n24-031,2024-08-10,1480\n'])('%j is understood', text => {
    expect(weighDay(text)).toEqual([])
  })
})

describe('private', () => {
  it('is taken in any form among the keeper’s own keys, and goes no further', () => {
    const files = {
      'strains/a.md': front('name: A\nrole: donor\ntrue-for: {comb: pea, private: kanarie}\nalleles: {private: kanarie, S: {S: 100%, private: [kanarie]}}'),
      'traits/a.md': front('name: Comb\nstates: [pea, single]\ntarget: {male: pea, private: kanarie}\nloci: {private: {x: kanarie}}\nmisscoring: {pea: {single: 2%, private: kanarie}, private: kanarie}'),
      'standard/1.md': front('draft: 1\non: 2024-10-01\nscale: {Type: 60, Colour: 40, private: kanarie}\nweights: {cock: 3 kg, private: {a: kanarie}}\nclauses: {private: kanarie}\nreasons: {private: kanarie}'),
      'shows/1.md': front('name: Show\non: 2024-11-02\njudges: {j1: A. Judge, private: kanarie}\nentries: [{bird: 1, private: kanarie}]\nscores: [{bird: 1, Type: 50 of 60, private: kanarie}]'),
      'pens/1.md': front('season: 2024\nmales: {1: 70%, 2: 30%, private: kanarie}\nfemales: [{band: 3, private: kanarie}]'),
      'hatches/1.md': front('pen: {2024-A: 30 eggs, private: kanarie}\neggs: {1: 14, private:}\nchicks: [{band: 4, sire: {1: 50%, 2: 50%, private: kanarie}, private}]'),
    }
    const {records, problems} = readFiles(files)
    expect(problems).toEqual([])
    expect(JSON.stringify(records)).not.toContain('kanarie')
    expect(JSON.stringify(records)).not.toContain('private')
  })
})

describe('the remedy is one that helps', () => {
  it.each([
    ['left: 2022-09-10 eaten', 'write one of died, culled, sold, given, lent, lost, taken after the date'], ['left: 2022-09-10 cullled', 'did you mean culled?'],
    ['left: 2022-09-10 sodl', 'did you mean sold?'],
  ])('%s', (line, remedy) => expect(bird(line)[0]).toMatch(new RegExp(`: ${remedy.replaceAll('?', '\\?')}$`)))

  it('a workbook is saved as CSV', () => {
    expect(told({'measures/2024.xlsx': ''})).toEqual(['1:1 unplaced-file: save it as CSV: measures/2024.csv'])
    expect(told({'2024.ods': ''})).toEqual(['1:1 unplaced-file: save it as CSV: measures/2024.csv or scores/2024.csv'])
  })

  it('a trait of a column needs its unit', () => {
    expect(told({'traits/weight.md': front('name: Weight\nmeasure: weight\nat: 20 weeks')})).toEqual(['1:1 trait-unfinished: add unit: g, or the unit its amounts are to be kept in'])
  })

  it('a place beyond the last', () => {
    expect(told({'shows/1.md': front('name: Show\non: 2024-10-01\nentries: [{bird: 1, result: 5 of 2}]')})).toEqual(['4:29 unreadable-value: write the place first and then how many were shown: 2 of 5'])
  })
})
