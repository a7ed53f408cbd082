import {SPECIES_NAMES} from '../species.ts'
import {age, chance, date, reference, text, wholeDate} from '../scalars.ts'
import {listOf, object, oneOf, optional, required} from '../shape.ts'
import {kind} from './kind.ts'
import {privateNotes} from './parts.ts'

const project = object('the project', {
  name: required(text('a name such as Skerry Fowl'), 'The breed’s name.'),
  species: optional(oneOf(SPECIES_NAMES), 'Days of incubation follow from it; chicken when not given.'),
  aim: required(text('a sentence'), 'What the breed is to be, in one sentence.'),
  begun: optional(date, 'When the work began.'),
  'as-of': optional(wholeDate, 'The day the figures are true on; else the latest date in the records.'),
  strains: optional(object('the founding strains', {
    recurrent: required(reference('a strain such as holm-white'), 'The strain crossed back to.'),
    donors: optional(listOf(reference('a strain such as fell-buff')), 'The strains that give a trait.'),
  }), 'Which strain is crossed back to, and which give a trait.'),
  ladder: optional(listOf(text('a step such as BC2')), 'The steps planned, in order.'),
  units: optional(oneOf(['metric', 'imperial']), 'How weights and lengths are shown; metric when not given.'),
  paper: optional(oneOf(['a4', 'letter']), 'The sheet that PDFs are set on; a4 when not given, letter where units are imperial.'),
  limits: optional(object('the project’s own limits', {
    'mating-inbreeding': optional(chance, 'The most inbreeding a planned mating may give its chicks.'),
    'inbreeding-per-generation': optional(chance, 'The most the inbreeding may rise in a generation.'),
  }), 'The project’s own limits, drawn in its charts.'),
  'sperm-store': optional(age, 'How long a removed male stays possible as a sire; 21 days when not given.'),
  site: optional(object('where the site will stand', {
    url: optional(text('an address such as https://example.org/fowl/'), 'The address, for the feed.'),
    language: optional(text('a language code such as en'), 'The language of your words; en when not given.'),
  }), 'Where the site will stand.'),
  private: privateNotes,
})

export const projectKind = kind({
  id: 'project', files: 'project.md', title: 'The project', shape: project,
  purpose: 'One file that says what is being bred, from which strains, by which steps.',
  example: `---
name: Skerry Fowl
species: chicken
aim: A small-combed, white-skinned dual-purpose fowl that stands wind and wet.
begun: 2019-02
strains: {recurrent: holm-white, donors: [fell-buff]}
ladder: [F1, BC1, BC2, BC3, BC3F2, BC3F3]
units: metric
limits: {mating-inbreeding: 12.5%, inbreeding-per-generation: 1%}
---
`,
})
