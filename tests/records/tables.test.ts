import {describe, expect, it} from 'vitest'
import {delimiterOf} from '../../src/records/tables.ts'
import {problemsOf, readFiles, short} from './reading.ts'

const measures = (text: string) => readFiles({'measures/a.csv': text})
const scores = (text: string) => readFiles({'scores/a.csv': text})
const weights = (text: string) => {
  const {records, problems} = measures(text)
  expect(problems).toEqual([])
  return records.weighings.map(({of, on, values}) => [
    'band' in of ? of.band.text : `${of.hatch.text} ${of.sex}`, on.text, ...values.map(({measure, quantity: {parts}}) => `${measure} ${parts.map(({amount, unit}) => `${amount} ${unit ?? '?'}`).join(' ')}`),
  ])
}

describe('a weigh day', () => {
  it('reads the band as it is written, and leaves what was not measured out', () => {
    expect(weights('band,on,weight,shank\n0031,2024-08-10,1480,\n24-032,2024-08,1.62 kg,92 mm\n1.10,2024,,\n')).toEqual([
      ['0031', '2024-08-10', 'weight 1480 ?'], ['24-032', '2024-08', 'weight 1.62 kg', 'shank 92 mm'], ['1.10', '2024'],
    ])
  })

  it.each([
    ['semicolons and decimal commas', 'band;on;weight (kg)\n24-031;2024-08-10;1,48\n'], ['tabs', 'band\ton\tweight kg\n24-031\t2024-08-10\t1,48\n'],
    ['quotes', '"band","on","weight [kg]"\n"24-031","2024-08-10","1,48"\n'], ['capitals and blanks', ' Band , On , weight (KG) \n 24-031 , 2024-08-10 , 1.48 \n'.replace('KG', 'kilo')],
    ['a byte-order mark and CRLF', '\uFEFFband,on,weight (kg)\r\n24-031,2024-08-10,1.48\r\n'], ['empty rows and columns', 'band,on,weight (kg),,\n\n24-031,2024-08-10,1.48,,\n,,,,\n'],
    ['a cell’s own unit', 'band,on,weight (g)\n24-031,2024-08-10,1.48 kg'],
  ])('understands %s', (_, text) => {
    expect(weights(text)).toEqual([['24-031', '2024-08-10', 'weight 1.48 kg']])
  })

  it('goes without bands', () => {
    expect(weights('hatch,on,sex,weight\n2024-03,2024-04-20,female,312\n2024-03,2024-04-20,,298\n')).toEqual([
      ['2024-03 female', '2024-04-20', 'weight 312 ?'], ['2024-03 unknown', '2024-04-20', 'weight 298 ?'],
    ])
  })

  it('keeps the spelling of a measure', () => {
    expect(weights('band,on,Shank-length\n24-031,2024-08-10,92')).toEqual([['24-031', '2024-08-10', 'Shank-length 92 ?']])
  })

  it.each([
    ['24-031,2024-02-30,1480', '2:8-2:18 impossible-date'], ['24-031,10.8.2024,1480', '2:8-2:17 unreadable-value'], ['24-031,2024-08-10,heavy', '2:19-2:24 unreadable-value'],
    ['24-031,2024-08-10,1480 stones', '2:19-2:30 wrong-unit'], ['24-031,2024-08-10,"1,480 g"', '2:19-2:28 unreadable-value'], [',2024-08-10,1480', '2:1-2:1 no-value'],
    ['24-031,,1480', '2:8-2:8 no-value'], ['24-031,2024-08-10,1,48', '2:21-2:23 unreadable-table'],
  ])('%s: %s, and the next row is read', (row, problem) => {
    const {records, problems} = measures(`band,on,weight\n${row}\n24-032,2024-08-10,1500\n`)
    expect(problems.map(short)).toEqual([`measures/a.csv ${problem}`])
    expect(records.weighings.at(-1)?.values).toHaveLength(1)
  })

  it('a cell behind a quoted one of two lines keeps its place', () => {
    expect(problemsOf({'measures/a.csv': 'band,on,weight\n"24\n-031",2024-13,1\n\n\n  24-032  , 2024-14 ,1\n'})).toEqual([
      'measures/a.csv 3:7-3:14 impossible-date', 'measures/a.csv 6:13-6:20 impossible-date',
    ])
  })

  it.each([
    ['bnd,on,weight\n24-031,2024-08-10,1480', '1:1-1:4 missing-column', 'is “bnd” meant for it? write band'], ['band,on\n24-031,2024-08-10', '1:1-1:5 missing-column', 'write weight into the first line, which has band, on'],
    ['band,on,weight,weight\n24-031,2024-08-10,1,2', '1:16-1:22 repeated-key', 'keep one of the two'], ['band,on,weight,\n24-031,2024-08-10,1,2', '2:21-2:22 unreadable-table', 'write one in the first line'],
    ['band,on,weight,note\n24-031,2024-08-10,1,thin\n24-032,2024-08-10,1,fat', '1:16-1:20 unknown-column', 'take the column out; what was seen by eye goes into scores/, notes into the bird’s own record'],
    ['band,on,"weight\n24-031,2024-08-10,1', '1:1-1:16 unreadable-table', 'put quotation marks around whole cells only, and write a quotation mark inside such a cell twice'],
    ['', '1:1-1:1 unreadable-table', 'write a line of headings, such as band,on,weight, and the rows below it'],
  ])('%j: %s', (text, problem, remedy) => {
    const {problems} = measures(text)
    expect(problems.map(short)).toEqual([`measures/a.csv ${problem}`])
    expect(problems[0]?.remedy).toBe(remedy)
  })
})

describe('an egg record', () => {
  it('is of a pen or of a hen; a row without a count says nothing', () => {
    const {records, problems} = readFiles({
      'measures/a.csv': 'pen,on,eggs,hens\n2024-A,2024-03-01,5,7\n2024-A,2024-03-02,,7\n2024-A,2024-03-03,0,\n', 'measures/b.csv': 'band,on,eggs\n22-017,2024-03-01,1\n',
    })
    expect(problems).toEqual([])
    expect(records.eggCounts.map(({of, eggs, hens}) => ['pen' in of ? of.pen.text : of.band.text, eggs, hens])).toEqual([['2024-A', 5, 7], ['2024-A', 0, null], ['22-017', 1, null]])
  })

  it('names the right heading for a wrong one, and needs whole eggs', () => {
    expect(measures('pen,on,eggs,hen\n2024-A,2024-03-01,5.5,7\n').problems).toMatchObject([
      {code: 'unknown-column', remedy: 'did you mean hens or pen?'}, {code: 'unreadable-value', place: {start: {line: 2, column: 19}}},
    ])
  })
})

describe('a feed record', () => {
  it('is kept in grams', () => {
    const {records, problems} = readFiles({'measures/a.csv': 'pen;on;feed (kg)\n2024-A;2024-03-01;12,5\n2024-A;2024-03-02;\n', 'measures/b.csv': 'hatch,on,feed\n2024-03,2024-04-01,2 lb\n'})
    expect(problems).toEqual([])
    // 1 lb = 453.59237 g, international yard and pound agreement of 1959
    expect(records.feedings.map(({feed}) => feed)).toEqual([12500, 907.18474])
  })

  it.each([['feed', '12'], ['feed', '12 mm'], ['feed (mm)', '12']])('%s, %s is no mass', (heading, cell) => {
    expect(problemsOf({'measures/a.csv': `pen,on,${heading}\n2024-A,2024-03-01,${cell}\n`})).toEqual([`measures/a.csv 2:19-2:${19 + cell.length} wrong-unit`])
  })
})

describe('a scoring day', () => {
  it('keeps what was struck, with its reason', () => {
    const {records, problems} = scores('band,on,by,comb,struck\n24-031,2024-05-04,inga,pea,\n24-031,2024-04-10,inga,single,too early\n24-032,,,,')
    expect(problems).toEqual([])
    expect(records.scorings.map(({band, on, by, looks, struck}) => [band.text, on?.text ?? null, by?.text ?? null, looks.map(({key, value}) => `${key} ${value}`), struck])).toEqual([
      ['24-031', '2024-05-04', 'inga', ['comb pea'], null], ['24-031', '2024-04-10', 'inga', ['comb single'], 'too early'], ['24-032', null, null, [], null],
    ])
    expect(records.scorings[0]?.looks[0]).toMatchObject({at: {line: 2, column: 24, width: 3}, keyAt: {line: 1, column: 12, width: 4}})
  })

  it('takes the draft that was scored by, and headings of the scale beside traits', () => {
    const {records, problems} = scores('band,on,by,Draft,comb,Type and carriage\n24-031,2024-05-04,inga,5,pea,26 of 30\n24-032,2024-05-04,inga,,,24')
    expect(problems).toEqual([])
    expect(records.scorings.map(({draft, looks}) => [draft?.number ?? null, looks.map(({key, value}) => `${key}: ${value}`)])).toEqual([[5, ['comb: pea', 'Type and carriage: 26 of 30']], [null, ['Type and carriage: 24']]])
    expect(records.scorings[0]?.draft?.at).toMatchObject({line: 2, column: 24})
    expect(scores('band,on,draft,comb\n24-031,2024-05-04,fifth,pea').problems.map(({code, place}) => `${place.start.line}:${place.start.column} ${code}`)).toEqual(['2:19 unreadable-value'])
  })

  it('a heading’s unit goes with its bare numbers', () => {
    expect(scores('band,on,shank (mm)\n24-031,2024-05-04,92').records.scorings[0]?.looks).toMatchObject([{key: 'shank', value: '92 mm'}])
  })

  it.each([['on,by,comb', 'missing-column'], ['band,comb', 'missing-column'], ['band,on,by,struck', 'missing-column']])('%s lacks a column', (heading, code) => {
    expect(scores(`${heading}\na,b,c,d`.slice(0, heading.length + 8)).problems.map(problem => problem.code)).toContain(code)
  })
})

it.each([['band,on,weight', ','], ['band;on;"a,b,c,d"', ';'], ['band\ton', '\t'], ['eggs', ','], ['a,b;c', ',']])('%s is parted by %j', (heading, delimiter) => {
  expect(delimiterOf(heading)).toBe(delimiter)
})
