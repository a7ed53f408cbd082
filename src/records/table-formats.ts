/** The tables of `measures/` and `scores/` for the reference page: their columns and an example that the tests read. */

export interface TableFormat {
  readonly id: string
  /** where its files lie in the folder of records */
  readonly files: string
  readonly title: string
  readonly purpose: string
  readonly columns: readonly {readonly name: string; readonly required: boolean; readonly help: string}[]
  /** a whole file that reads without a fault */
  readonly example: string
}

const required = (name: string, help: string) => ({name, required: true, help})
const optional = (name: string, help: string) => ({name, required: false, help})

/** What holds for all of them, in sentences for the reader. */
export const TABLE_RULES = [
  'The first line holds the headings. Commas, semicolons or tabs part the cells; a cell with such a sign in it goes in quotes.',
  'An empty cell means that nothing was measured or seen.',
  'Numbers may have a decimal comma. A heading may name the unit of its column, such as weight (g); a cell may bring its own, such as 2.4 kg.',
] as const

export const TABLE_FORMATS: readonly TableFormat[] = [
  {
    id: 'weigh-day', files: 'measures/<name>.csv', title: 'A weigh day',
    purpose: 'Weights and other measures of banded birds. Each further column is a measure that a trait is taken from.',
    columns: [required('band', 'The bird.'), required('on', 'The day.'), required('<measure>', 'One column or more: the amount, in the trait’s unit where none is named.')],
    example: 'band,on,weight\n24-031,2024-08-10,1480\n24-032,2024-08-10,1.62 kg\n',
  },
  {
    id: 'weigh-day-without-bands', files: 'measures/<name>.csv', title: 'A weigh day without bands',
    purpose: 'Birds weighed before they were banded: one row a bird, known by hatch and sex.',
    columns: [required('hatch', 'The hatch.'), required('on', 'The day.'), required('sex', 'male, female or unknown; empty means unknown.'), required('<measure>', 'The amount.')],
    example: 'hatch;on;sex;weight (g)\n2024-03;2024-04-20;unknown;312,5\n2024-03;2024-04-20;unknown;298\n',
  },
  {
    id: 'egg-record', files: 'measures/<name>.csv', title: 'An egg record',
    purpose: 'Eggs of a pen, or of one hen, up to a day. Write a row with 0 for a day without an egg; a day without a row is taken as not counted.',
    columns: [required('pen', 'The pen; or band for one hen.'), required('on', 'The day.'), required('eggs', 'How many eggs.'), optional('hens', 'How many hens there were, layers or not; else those of the pen’s record.'), optional('days', 'Over how many days they were gathered, where it was not one day or the sheet’s usual number.'), optional('weight', 'What they weighed together, with its unit in the heading or the cell.'), optional('weighed', 'How many of them were on the scales, where not all.')],
    example: 'pen,on,eggs,hens,days,weighed,weight (g)\n2024-A,2024-03-01,5,7,,5,271\n2024-A,2024-03-02,6,7,,,\n2024-A,2024-03-05,17,7,3,6,330\n',
  },
  {
    id: 'feed-record', files: 'measures/<name>.csv', title: 'A feed record',
    purpose: 'Feed given to a pen or a hatch.',
    columns: [required('pen', 'The pen; or hatch.'), required('on', 'The day.'), required('feed', 'How much, with its unit in the heading or the cell.'), optional('left', 'How much of the feed before was still there, weighed before this was given.')],
    example: 'pen,on,feed (kg),left (kg)\n2024-A,2024-03-01,12.5,\n2024-A,2024-03-08,12.0,1.5\n',
  },
  {
    id: 'scoring-day', files: 'scores/<name>.csv', title: 'A scoring day',
    purpose: 'What was seen by eye. Each further column is a trait, or a heading of the scale of points; a row that no longer counts says why under struck and stays in the book.',
    columns: [
      required('band', 'The bird.'), required('on', 'The day.'), optional('by', 'Who scored: a keeper’s id or short name.'),
      optional('draft', 'The number of the draft of the standard that was scored by; else the one that was in force on the day.'),
      required('<trait>', 'One column or more, headed with the trait’s id: what was seen.'), optional('<heading>', 'Headed as in that draft’s scale of points, such as Type and carriage: the points given, 26 or 26 of 30.'), optional('struck', 'Why the row no longer counts.'),
    ],
    example: 'band,on,by,comb,struck\n24-031,2024-05-04,inga,pea,\n24-031,2024-04-10,inga,single,too early\n',
  },
]
