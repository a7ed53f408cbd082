/** The small invented book with shows, drafts of the standard, requirements, keepers, care and diary. */
import type {CareEntry, DiaryEntry, Keeper, Logbook, Requirement, Show, ShowEntry} from '../../src/logbook/book.ts'
import {at, comb, date, smallBook} from './small-logbook.ts'
import {plainClause, plainDraft, plainPaper, plainRequirement} from '../paper-parts.ts'

export const keeper = (id: string, name: string, more: Partial<Keeper> = {}): Keeper =>
  ({at, body: '', id, name, consents: true, since: null, region: null, ...more})

export const clause = plainClause

export const draft = plainDraft

export const entry = (of: ShowEntry['bird'], more: Partial<ShowEntry> = {}): ShowEntry =>
  ({bird: of, class: null, judge: null, place: null, shared: false, of: null, award: null, points: null, grade: null, remark: null, about: [], disqualified: false, draft: null, at, ...more})

export const show = (id: string, name: string, on: string, more: Partial<Show> = {}): Show =>
  ({at, body: '', id, name, on: date(on), place: null, cancelled: null, entries: [], ...more})

export const care = (id: string, kind: CareEntry['care'], on: string, more: Partial<CareEntry> = {}): CareEntry => ({
  at, body: '', id, care: kind, on: date(on), to: null, pens: [], birds: [], hatches: [], with: null, eggsWithheldUntil: null, meatWithheldUntil: null, ...more,
})

export const diaryEntry = (id: string, title: string, on: string, more: Partial<DiaryEntry> = {}): DiaryEntry =>
  ({at, body: '', id, title, on: date(on), photos: [], ...more})

export const requirement = (kind: Requirement['kind'], title: string, asked: string, more: Partial<Requirement> = {}): Requirement => plainRequirement(kind, {title, asked, ...more})

const first = draft(1, '2024-11-02', {
  origin: 'Bred from 2024 for the holm farms.', egg: 'tinted, 50 g or more',
  sections: [
    {id: 'general-characteristics-male', title: 'General characteristics, male', kind: 'male', lead: '', clauses: [
      clause('general-characteristics-male/tail', 'Tail', 'Of medium length. Carried well up. Sickles curved.'),
      clause('general-characteristics-male/comb', 'Comb', 'Small and low.', {trait: comb}),
      clause('general-characteristics-male/crest', 'Crest', 'None.'),
    ]},
    {id: 'general-characteristics-female', title: 'General characteristics, female', kind: 'female', lead: 'As the male.', clauses: [
      clause('general-characteristics-female/tail', 'Tail', 'Moderately spread.'),
    ]},
    {id: 'faults', title: 'Faults', kind: 'faults', lead: '', clauses: [clause('faults/minor', 'Minor', 'Light eye.')]},
  ],
  weights: [{class: 'cock', grams: 3200, high: null}, {class: 'pullet', grams: 2200, high: null}], points: [{name: 'Type and carriage', points: 60}, {name: 'Colour', points: 40}],
})

const second = draft(2, '2025-10-14', {
  ...first, number: 2, on: date('2025-10-14'),
  sections: [
    {...first.sections[0]!, clauses: [
      clause('general-characteristics-male/tail', 'Tail', 'Of medium length. Carried at 45 degrees. Sickles curved.'),
      clause('general-characteristics-male/comb', 'Comb', 'Three low ridges.', {trait: comb}),
    ]},
    first.sections[1]!,
    {id: 'faults', title: 'Faults', kind: 'faults', lead: '', clauses: [clause('faults/minor', 'Minor', 'Light eye.'), clause('faults/serious', 'Serious', 'Coarse comb.')]},
  ],
  weights: [{class: 'cock', grams: 3200, high: null}, {class: 'pullet', grams: 2100, high: null}],
  reasons: new Map([['general-characteristics-male/comb', 'From the judge’s remarks.'], ['weights/pullet', 'The mean of two seasons.']]),
})

/** Everything the shown side of a project has: two drafts, two shows of which one was cancelled, three requirements, two keepers. */
export function shownBook(more: Partial<Logbook> = {}): Logbook {
  const book = smallBook()
  const [cockerel, pullet] = [book.birds.find(each => each.id === '24-001')!, book.birds.find(each => each.id === '24-003')!]
  const hatch = book.hatches[0]!, pen = book.pens[0]!
  return {
    ...book,
    keepers: [keeper('inga', 'Inga', {region: 'the outer isles', since: date('2024')}), keeper('keeper-a', 'keeper A', {consents: false})],
    shows: [
      show('2024-09-28-ternhouse', 'Autumn show', '2024-09-28', {place: 'Ternhouse', entries: [
        entry(pullet, {class: 'pullet', judge: 'judge 1', place: 1, of: 7, remark: 'Good <head>.', draft: 1, points: 93.5, award: 'best pullet'}),
        entry(cockerel, {class: 'cockerel', judge: 'judge 2', disqualified: true, remark: 'Comb not pea.'}),
        entry(book.birds.find(each => each.id === '24-004')!, {class: 'pullet', judge: 'judge 1', place: 4, of: 7}),
      ]}),
      show('2025-02-08-kelpgarth', 'Winter show', '2025-02-08', {cancelled: 'All gatherings of poultry were forbidden.'}),
    ],
    drafts: [first, second],
    requirements: {
      at, body: '', association: 'the national association',
      items: [
        requirement('years-bred', 'Years bred', 'At least 5 years', {atLeast: 5}),
        requirement('true-to-type', 'True to type', 'Half of all chicks reared', {atLeast: 0.5}),
        requirement('consecutive-shows', 'Shown in consecutive years', 'No season missed', {waived: {because: 'All gatherings were forbidden.', by: 'the association', on: null, until: null}}),
      ],
      papers: [plainPaper('veterinary', '2024-08-12', '2025-08-12', {title: 'Veterinary statement'})],
      distinctness: {breeds: ['Skerry Fowl', 'Holm White'], rows: [{character: 'Comb', values: ['pea', 'single'], at}]},
    },
    care: [
      care('2024-05-02-worming', 'treatment', '2024-05-02', {to: date('2024-05-07'), pens: [pen], with: 'as the label says', eggsWithheldUntil: date('2024-05-21')}),
      care('2025-10-20-shell-grit', 'feed', '2025-10-20', {hatches: [hatch], birds: [pullet], eggsWithheldUntil: date('2025-11-05')}),
    ],
    diary: [diaryEntry('2024-11-02-first-draft', 'The first draft', '2024-11-02', {body: 'Written on a *wet* evening.'}), diaryEntry('2025-03-22-chicks', 'Six chicks', '2025-03-22')],
    ...more,
  }
}
