/** The manual's entry for every problem found while reading one file by itself. Its examples are run as tests: wrong gives exactly that code, right gives none. */
import type {ProblemCode, ReadingCode} from './problem-codes.ts'
import type {Severity} from './problem.ts'

/** Files of an example by their path. */
export type ExampleFiles = {readonly [file: string]: string}

export interface ManualEntry {
  readonly code: ProblemCode
  readonly severity: Severity
  readonly title: string
  /** how it comes about */
  readonly cause: string
  /** how it is mended */
  readonly remedy: string
  readonly wrong: ExampleFiles
  readonly right: ExampleFiles
}

export interface ReadingEntry extends ManualEntry {
  readonly code: ReadingCode
  /** where the wrong example's problem stands: line and column from 1 */
  readonly at: {readonly file: string; readonly line: number; readonly column: number}
}

interface Example {
  readonly file: string
  readonly wrong: string
  readonly right: string
  /** where the right text belongs, when in another file */
  readonly rightFile?: string
  /** line and column of the fault */
  readonly at: readonly [number, number]
}

const entry = (
  code: ReadingCode, severity: Severity, title: string, cause: string, remedy: string, {file, wrong, right, rightFile = file, at: [line, column]}: Example,
): ReadingEntry => ({code, severity, title, cause, remedy, wrong: {[file]: wrong}, right: {[rightFile]: right}, at: {file, line, column}})

const front = (...lines: string[]) => ['---', ...lines, '---', ''].join('\n')
const table = (...lines: string[]) => [...lines, ''].join('\n')

export const READING_MANUAL: readonly ReadingEntry[] = [
  entry(
    'unreadable-file', 'error', 'The file is not text',
    'The file cannot be opened, or it was saved in another encoding than UTF-8, so that letters such as ö arrive spoiled.',
    'Save it again as UTF-8 text.',
    {file: 'diary/2025-10-14-rain.md', at: [3, 11], wrong: front('on: 2025-10-14', 'title: Caf\uFFFD in the rain'), right: front('on: 2025-10-14', 'title: Café in the rain')},
  ),
  entry(
    'no-front-matter', 'error', 'The file has no front matter',
    'A record begins with a line of three dashes, then its keys, then another such line. Below that stand your own words.',
    'Put the line of dashes at the very top.',
    {file: 'diary/2025-10-14-rain.md', at: [1, 1], wrong: 'on: 2025-10-14\ntitle: Rain\n', right: front('on: 2025-10-14', 'title: Rain')},
  ),
  entry(
    'unreadable-front-matter', 'error', 'The front matter cannot be read',
    'A quotation mark, bracket or brace is not closed, lines are set in unevenly, or a text holds a sign that means something to YAML: a colon and a space, or a first letter such as @, & or *. Nothing but YAML is read, and nothing in a record is ever run.',
    'Mend the line that is named. When in doubt put the whole text in quotes.',
    {file: 'birds/24-031.md', at: [3, 7], wrong: front('band: 24-031', 'left: 2024-06-30 culled: off type'), right: front('band: 24-031', 'left: "2024-06-30 culled: off type"')},
  ),
  entry(
    'repeated-key', 'error', 'A key stands twice',
    'Two lines of one record, or two headings of one table, have the same name, and only one of them could count.',
    'Keep one of the two.',
    {file: 'birds/24-031.md', at: [4, 1], wrong: front('band: 24-031', 'sex: male', 'sex: female'), right: front('band: 24-031', 'sex: [{is: male, on: 2024-06}, {is: female, on: 2024-09-12, because: laid}]')},
  ),
  entry(
    'misplaced-record', 'error', 'A record stands in the wrong folder',
    'A file’s folder says what it is. This one’s keys are those of another kind of record, or its folder is none of those that are looked into, so it cannot be read; what it gives the other records is not missed a second time.',
    'Move it to the place that is named. To keep it out of the book, move it out of the records or into a folder whose name begins with a dot.',
    {file: 'pens/2024-03.md', at: [1, 1], wrong: front('pen: 2024-A', 'eggs: 48'), right: front('pen: 2024-A', 'eggs: 48'), rightFile: 'hatches/2024-03.md'},
  ),
  entry(
    'unplaced-file', 'warning', 'A file stands where nothing is looked for',
    'A file that is no record, or a table or picture outside its folder, is left out.',
    'Move it to the folder that is named, or out of the records.',
    {file: '2024-08-10.csv', at: [1, 1], wrong: table('band,on,weight', '24-031,2024-08-10,1480'), right: table('band,on,weight', '24-031,2024-08-10,1480'), rightFile: 'measures/2024-08-10.csv'},
  ),
  entry(
    'unknown-key', 'error', 'A key is not known',
    'The key is mistyped, or belongs to another kind of record.',
    'Take the key that is named. For words of your own there are the text below the front matter, observations, and private.',
    {file: 'pens/2024-A.md', at: [5, 1], wrong: front('season: 2024', 'males: [22-004]', 'females: [22-017]', 'keper: kelpgarth'), right: front('season: 2024', 'males: [22-004]', 'females: [22-017]', 'keeper: kelpgarth')},
  ),
  entry(
    'missing-key', 'error', 'A key is missing',
    'The record cannot be understood without it.',
    'Add the key.',
    {file: 'diary/2025-10-14-rain.md', at: [1, 1], wrong: front('on: 2025-10-14'), right: front('on: 2025-10-14', 'title: Rain')},
  ),
  entry(
    'no-value', 'error', 'A key has no value',
    'A key, a list entry or a cell that cannot be left out stands empty. An empty value is never taken for a nought.',
    'Write the value, or take the key out.',
    {file: 'hatches/2024-03.md', at: [4, 1], wrong: front('pen: 2024-A', 'eggs: 48', 'clear:'), right: front('pen: 2024-A', 'eggs: 48', 'clear: 5')},
  ),
  entry(
    'comma-in-braces', 'error', 'A comma in braces cut a text in two',
    'Inside braces a comma starts a new key, so what stands behind the comma is read as a key without a value. A colon without a space behind it does the same.',
    'Put the whole text in quotes.',
    {
      file: 'hatches/2024-03.md', at: [4, 45],
      wrong: front('pen: 2024-A', 'chicks:', '  - {band: 24-031, left: 2024-03-24 culled, off type}'),
      right: front('pen: 2024-A', 'chicks:', '  - {band: 24-031, left: "2024-03-24 culled, off type"}'),
    },
  ),
  entry(
    'curly-quotes', 'error', 'Quotation marks are curly',
    'A phone or a word processor has made “ ” or ‘ ’ of straight quotation marks. Those are letters like others and hold no text together.',
    'Write straight ones, or none where the text has neither comma nor colon. In a sentence curly ones may stand.',
    {file: 'birds/24-031.md', at: [3, 7], wrong: front('band: 24-031', 'left: “2024-06-30 culled, off type”'), right: front('band: 24-031', 'left: "2024-06-30 culled, off type"')},
  ),
  entry(
    'wrong-form', 'error', 'A value has the wrong form',
    'A list stands where one text belongs, or a text where keys with values belong.',
    'Write it in the form that is named.',
    {file: 'project.md', at: [4, 10], wrong: front('name: Skerry Fowl', 'aim: A fowl that stands wind and wet.', 'strains: holm-white'), right: front('name: Skerry Fowl', 'aim: A fowl that stands wind and wet.', 'strains: {recurrent: holm-white}')},
  ),
  entry(
    'unreadable-value', 'error', 'A value cannot be read',
    'The text is not what its key takes: a word that is not in the list, a number with letters in it, a date that does not begin with the year.',
    'Write it as is named.',
    {file: 'birds/24-031.md', at: [3, 6], wrong: front('band: 24-031', 'sex: femal'), right: front('band: 24-031', 'sex: female')},
  ),
  entry(
    'impossible-date', 'error', 'A date is not in the calendar',
    'The day or the month does not exist, or a time ends before it begins.',
    'Write a date that exists. A date known only in part may be written so: 2023-02, or 2023.',
    {file: 'birds/24-031.md', at: [3, 10], wrong: front('band: 24-031', 'hatched: 2023-02-29'), right: front('band: 24-031', 'hatched: 2023-02')},
  ),
  entry(
    'wrong-unit', 'error', 'A unit is missing, unknown or of another kind',
    'An amount needs a unit that fits: a weight in mg, g, kg, oz or lb, an age in days, weeks, months or years.',
    'Write the unit too.',
    {file: 'traits/weight-20.md', at: [5, 5], wrong: front('name: Weight at 20 weeks', 'measure: weight', 'unit: g', 'at: 20'), right: front('name: Weight at 20 weeks', 'measure: weight', 'unit: g', 'at: 20 weeks')},
  ),
  entry(
    'wrong-sum', 'error', 'Points do not make 100',
    'The scale of points of a draft is dealt out of a hundred.',
    'Mend the points of one heading.',
    {file: 'standard/1.md', at: [4, 8], wrong: front('draft: 1', 'on: 2023-01-08', 'scale: {Type and carriage: 60, Colour: 30}'), right: front('draft: 1', 'on: 2023-01-08', 'scale: {Type and carriage: 60, Colour: 40}')},
  ),
  entry(
    'unreadable-table', 'error', 'A table cannot be read',
    'A row has more cells than there are headings (often a decimal comma in a table parted by commas), a cell has no heading above it, or a quotation mark is not closed.',
    'Put the cell in quotes, or part the cells with semicolons throughout.',
    {file: 'measures/2024-08-10.csv', at: [2, 21], wrong: table('band,on,weight', '24-031,2024-08-10,1,48'), right: table('band;on;weight', '24-031;2024-08-10;1,48')},
  ),
  entry(
    'unknown-column', 'error', 'A column is not known',
    'The heading is none of the table’s own, or it stands above words where a table of measures holds amounts.',
    'Mend the heading or take the column out. What was seen by eye goes into scores/.',
    {file: 'measures/2024-eggs.csv', at: [1, 13], wrong: table('pen,on,eggs,hen', '2024-A,2024-03-01,5,7'), right: table('pen,on,eggs,hens', '2024-A,2024-03-01,5,7')},
  ),
  entry(
    'missing-column', 'error', 'A column is missing',
    'The table’s first line lacks a heading it cannot do without, or spells it in another way.',
    'Add the heading, or mend the one that is meant.',
    {file: 'measures/2024-08-10.csv', at: [1, 1], wrong: table('bird,on,weight', '24-031,2024-08-10,1480'), right: table('band,on,weight', '24-031,2024-08-10,1480')},
  ),
  entry(
    'unclosed-comment', 'warning', 'A comment is never closed',
    'A comment begins with <!-- and ends with -->. Comments are never published; where the end is missing, all that follows is held back: with a warning in your own words, as an error in front matter or a table.',
    'Close the comment.',
    {file: 'diary/2025-10-14-rain.md', at: [5, 8], wrong: `${front('on: 2025-10-14', 'title: Rain')}Storm. <!-- whose roof?\n\nAll birds are well.\n`, right: `${front('on: 2025-10-14', 'title: Rain')}Storm. <!-- whose roof? -->\n\nAll birds are well.\n`},
  ),
  entry(
    'trait-unfinished', 'error', 'A trait does not say how it is told',
    'A trait is told by exactly one of: states, order, scale, or a unit.',
    'Give one of the four.',
    {file: 'traits/comb.md', at: [1, 1], wrong: front('name: Comb'), right: front('name: Comb', 'states: [pea, single]')},
  ),
]
