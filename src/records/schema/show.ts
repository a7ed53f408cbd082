import type {PartialDate} from '../dates.ts'
import {count, date, number, reference, text, yesNo} from '../scalars.ts'
import {byForm, listOf, mapOf, object, optional, refuse, required, scalar, turned} from '../shape.ts'
import {kind} from './kind.ts'
import {photos, privateNotes} from './parts.ts'

const result = scalar('a placing such as 1 of 7, or 2= of 7 where a place was shared', words => {
  const match = /^(\d+)(=)?(?:\s+of\s+(\d+))?$/.exec(words.trim())
  if (!match) return undefined
  const [place, shared, of] = [Number(match[1]), match[2] !== undefined, match[3] === undefined ? null : Number(match[3])]
  return of === null || place <= of ? {place, shared, of} : refuse('unreadable-value', `“${words}” is a place beyond the last`, `write the place first and then how many were shown: ${of} of ${place}`)
})

const cancelled = byForm({
  text: turned(text('a reason'), because => ({because, by: undefined as string | undefined, on: undefined as PartialDate | undefined})),
  map: turned(object('a cancellation', {
    because: required(text('a reason'), 'The reason.'),
    by: optional(text('an office'), 'Who ordered it.'),
    on: optional(date, 'The day of the order, or of the paper that shows it.'),
  }), order => order),
})

const judge = byForm({
  text: turned(text('a name'), name => ({name, consent: false as boolean | undefined, 'consent-committee': undefined as boolean | undefined})),
  map: turned(object('a judge', {
    name: required(text('a name'), 'The name. It is published only with consent.'),
    consent: optional(yesNo, 'Whether the judge has agreed to be named.'),
    'consent-committee': optional(yesNo, 'Whether the judge has agreed to be named to the committee, in a dossier that is not published.'),
  }), judge => judge),
})

const band = reference('a band such as 25-036')

const show = object('a show', {
  name: required(text('a name'), 'The show’s name.'),
  on: required(date, 'The day.'),
  place: optional(text('a place'), 'Where, as widely as you like.'),
  cancelled: optional(cancelled, 'The reason, when it was officially cancelled; or because, by and on, where there is a paper.'),
  judges: optional(mapOf('short names with judges', judge), 'The judges by a short name.'),
  entries: optional(listOf(object('an entry', {
    bird: required(band, 'The bird.'),
    class: optional(text('a class such as pullet'), 'The class.'),
    judge: optional(reference('a judge’s short name'), 'Who judged it.'),
    result: optional(result, 'The placing: 1 of 7; 2= of 7 where two shared the place.'),
    award: optional(text('an award'), 'An award.'),
    grade: optional(text('a grade such as very good'), 'The grade, where the judge gives one, in the judge’s word.'),
    points: optional(number, 'Points given.'),
    disqualified: optional(yesNo, 'Whether it was disqualified.'),
    draft: optional(count, 'The draft of the standard it was judged by.'),
    remark: optional(text('a remark'), 'What the judge said.'),
    about: optional(listOf(reference('a clause such as general-characteristics-male/tail')), 'The clauses of that draft (section/clause) that the remark is about.'),
  })), 'The birds shown.'),
  scores: optional(listOf(object('a score sheet', {
    bird: required(band, 'The bird.'),
    by: optional(reference('a keeper or judge'), 'Who scored.'),
    draft: optional(count, 'The draft it was scored under.'),
  }, {others: 'a heading of the scale with its points, such as 28 of 30'})), 'Score sheets.'),
  photos,
  private: privateNotes,
})

export const showKind = kind({
  id: 'show', files: 'shows/<date>-<place>.md', title: 'A show', shape: show,
  purpose: 'A show: entries, placings and what the judges said.',
  example: `---
name: Autumn show
on: 2025-09-27
judges: {j2: {name: A judge, consent: no}}
entries:
  - {bird: 25-036, class: pullet, judge: j2, result: 1 of 7, grade: very good, remark: Good head., about: general-characteristics-male/head}
---
`,
})
