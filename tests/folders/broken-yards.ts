/** Broken records: the small yard with one fault each. What must be reported is written as `file:line code`; nothing else may be. */

export interface BrokenYard {
  readonly fault: string
  readonly file: string
  /** words of the file and what stands in their place; without words the file is new, or wholly replaced */
  readonly edit: readonly [words: string, instead: string] | {readonly whole: string}
  readonly reported: readonly string[]
  /** a word that the remedy must hold, where the right word can be guessed */
  readonly remedy?: string
}

export const BROKEN_YARDS: readonly BrokenYard[] = [
  {
    fault: 'a mistyped key', file: 'pens/2023-A.md', edit: ['intends: BC1', 'intend: BC1'],
    reported: ['pens/2023-A.md:8 unknown-key'], remedy: 'intends',
  },
  {
    fault: 'a key that is wanting', file: 'strains/fell-buff.md', edit: ['role: donor\n', ''],
    reported: ['strains/fell-buff.md:1 missing-key'], remedy: 'role',
  },
  {
    fault: 'a word that is not on the list', file: 'birds/21-003.md', edit: ['sex: female', 'sex: femal'],
    reported: ['birds/21-003.md:3 unreadable-value'], remedy: 'female',
  },
  {
    fault: 'a day the calendar does not have', file: 'hatches/2023-01.md', edit: ['on: 2023-03-25', 'on: 2023-02-30'],
    reported: ['hatches/2023-01.md:10 impossible-date'],
  },
  {
    fault: 'a unit nobody knows', file: 'traits/weight-20.md', edit: ['unit: g', 'unit: gramm'],
    reported: ['traits/weight-20.md:4 wrong-unit'], remedy: 'g',
  },
  {
    fault: 'a comma inside braces', file: 'hatches/2022-01.md', edit: ['left: 2022-11-02 sold', 'left: 2022-11-02 sold, off type'],
    reported: ['hatches/2022-01.md:14 comma-in-braces'], remedy: 'quotes',
  },
  {
    fault: 'a key written twice', file: 'hatches/2022-01.md', edit: ['clear: 3', 'clear: 3\nclear: 4'],
    reported: ['hatches/2022-01.md:7 repeated-key'],
  },
  {
    fault: 'a bracket that is never closed', file: 'hatches/2023-01.md', edit: ['comb: pea, skin: white, kept: 2023-10-01 for breeding}', 'comb: pea, skin: white, kept: 2023-10-01 for breeding'],
    reported: ['hatches/2023-01.md:14 unreadable-front-matter'],
  },
  {
    fault: 'no front matter', file: 'birds/21-005.md', edit: {whole: 'A hen, white.\n'},
    reported: ['birds/21-005.md:1 no-front-matter'],
  },
  {
    fault: 'a column nobody knows', file: 'measures/weights.csv', edit: ['band,on,weight', 'band,on,wieght'],
    reported: ['measures/weights.csv:1 unknown-trait'], remedy: 'weight',
  },
  {
    fault: 'a column that is wanting', file: 'scores/2023-05.csv', edit: ['band,on,by', 'bird,on,by'],
    reported: ['scores/2023-05.csv:1 missing-column'], remedy: 'band',
  },
  {
    fault: 'points that do not make a hundred', file: 'standard/1.md', edit: ['Colour: 40', 'Colour: 30'],
    reported: ['standard/1.md:6 wrong-sum'],
  },
  {
    fault: 'a band given twice', file: 'hatches/2024-01.md', edit: ['band: 24-005', 'band: 23-009'],
    reported: ['hatches/2024-01.md:14 band-twice'],
  },
  {
    fault: 'a band nobody wears', file: 'pens/2024-A.md', edit: ['females: [21-006, 22-004]', 'females: [21-006, 22-044]'],
    reported: ['pens/2024-A.md:4 unknown-band'], remedy: '22-004',
  },
  {
    fault: 'a hen that was not hatched when the eggs were laid', file: 'birds/21-003.md', edit: ['hatched: 2021-04', 'hatched: 2022-02'],
    reported: ['pens/2022-A.md:4 parent-too-young'],
  },
  {
    fault: 'a cock that was dead before the eggs were laid', file: 'birds/21-001.md', edit: ['left: 2024-03-01 died', 'left: 2021-12-01 died'],
    reported: ['pens/2022-A.md:3 parent-dead'],
  },
  {
    fault: 'a hen among the males', file: 'pens/2022-A.md', edit: ['males: [21-001]', 'males: [21-001, 21-006]'],
    reported: ['pens/2022-A.md:3 wrong-parent-sex'],
  },
  {
    fault: 'eggs set before their pen was put together', file: 'pens/2024-A.md', edit: ['from: 2024-02-12', 'from: 2024-04-12'],
    reported: ['hatches/2024-01.md:3 hatch-before-pen'],
  },
  {
    fault: 'a count that does not add up', file: 'hatches/2022-01.md', edit: ['hatched: 10', 'hatched: 12'],
    reported: ['hatches/2022-01.md:9 hatch-counts'],
  },
  {
    fault: 'more chicks than hatched', file: 'hatches/2024-01.md', edit: ['hatched: 7', 'hatched: 4'],
    reported: ['hatches/2024-01.md:6 too-many-chicks'],
  },
  {
    fault: 'a score from after the day of the figures', file: 'scores/2023-05.csv', edit: ['23-009,2023-10-02', '23-009,2025-10-02'],
    reported: ['scores/2023-05.csv:7 after-as-of'],
  },
  {
    fault: 'a bird among its own ancestors', file: 'birds/22-003.md', edit: ['keeper: kelpgarth', 'keeper: kelpgarth\nsire: 24-002'],
    reported: ['birds/22-003.md:4 loop-in-descent'],
  },
  {
    fault: 'a state the trait does not have', file: 'hatches/2024-01.md', edit: ['band: 24-001, dam: 21-006, sex: female, comb: pea', 'band: 24-001, dam: 21-006, sex: female, comb: pee'],
    reported: ['hatches/2024-01.md:10 unknown-state'], remedy: 'pea',
  },
  {
    fault: 'a step that descent contradicts', file: 'pens/2023-A.md', edit: ['intends: BC1', 'intends: BC2'],
    reported: ['pens/2023-A.md:8 step-contradicted'],
  },
  {
    fault: 'a keeper without a record', file: 'pens/2024-A.md', edit: ['keeper: ternhouse', 'keeper: ternhuose'],
    reported: ['pens/2024-A.md:7 unknown-keeper'], remedy: 'ternhouse',
  },
  {
    fault: 'a pen without a record', file: 'hatches/2024-01.md', edit: ['pen: 2024-A', 'pen: 2024-B'],
    reported: ['hatches/2024-01.md:2 unknown-pen'], remedy: '2024-A',
  },
  {
    fault: 'a strain without a record', file: 'birds/21-006.md', edit: ['strain: holm-white', 'strain: holm-whit'],
    reported: ['birds/21-006.md:4 unknown-strain'], remedy: 'holm-white',
  },
  {
    fault: 'a record in the wrong folder', file: 'hatch/2024-02.md', edit: {whole: '---\npen: 2024-A\nset: 2024-03-02\n---\n'},
    reported: ['hatch/2024-02.md:1 misplaced-record'],
  },
]
