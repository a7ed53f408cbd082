/** The book as it stood on an earlier day: what came later is left aside and counted. Only for a day asked for on the command line. */
import type {Day} from '../records/dates.ts'
import {bornOn, cutChicks, hatchDay} from './as-of-chicks.ts'
import type {CareEntry, Hatch, Keeper, KeepersSheet, Logbook, Pen, Project, Requirements, Score, Show, Written} from './book.ts'
import {Cut} from './cut.ts'
import type {Open} from './open.ts'
import {penDays} from './pen-days.ts'
import {looseWeighings} from './weighings.ts'

/** Cuts the book back to a day. The things in it are the ones just linked, and are changed in place. */
export function asOfView(book: Logbook, day: Day): Logbook {
  const cut = new Cut(day)
  const {incubationDays} = book.project
  const birds = book.birds.filter(bird => cut.stands(bird, bornOn(bird, incubationDays)))
  const hatches = book.hatches.filter(hatch => cut.stands(hatch, (hatch.set ?? hatch.on)?.first ?? hatch.laid?.from))
  const pens = book.pens.filter(pen => cut.stands(pen, penDays(pen).from))
  const then: Logbook = {
    ...book, asOf: day, birds, hatches, pens, looseWeighings: looseWeighings(book.looseWeighings.filter(({at, on}) => cut.stands(at, on.first)), book.traits),
    eggCounts: cut.keep(book.eggCounts, count => count.on), feedings: cut.keep(book.feedings, feeding => feeding.on), shows: cut.keep(book.shows, show => show.on), sheets: cut.keep(book.sheets, sheet => sheet.on),
    drafts: cut.keep(book.drafts, draft => draft.on), care: cut.keep(book.care, entry => entry.on), diary: cut.keep(book.diary, entry => entry.on),
  }
  const there = new Set<object>([...birds, ...hatches, ...pens])
  for (const hatch of hatches) cutHatch(hatch, hatchDay(hatch, incubationDays), there, cut)
  for (const pen of pens) cutPen(pen, there, cut)
  cutChicks({birds, tallies: hatches.flatMap(hatch => hatch.tallies), pens, traits: book.traits, incubationDays}, cut)
  const later = new Set(book.drafts.filter(draft => !then.drafts.includes(draft)).map(draft => draft.number))
  for (const show of then.shows) cutShow(show, later)
  for (const sheet of then.sheets as readonly Open<KeepersSheet>[]) if (sheet.draft !== null && later.has(sheet.draft)) sheet.draft = null
  if (later.size > 0) for (const thing of [...birds, ...hatches.flatMap(hatch => hatch.tallies)]) for (const {scores} of thing.looks.values()) for (const score of scores) cutScore(score, later)
  for (const entry of then.care) cutCare(entry, there)
  for (const keeper of book.keepers as readonly Open<Keeper>[]) keeper.since = cut.orNull(keeper.since, keeper.since)
  if (then.requirements) cutRequirements(then.requirements, cut)
  const project: Open<Project> = book.project
  project.begun = cut.orNull(project.begun, project.begun)
  cutPhotos(then, cut)
  return {...then, later: cut.count, isEarlier: day < book.asOf}
}

function cutHatch(hatch: Open<Hatch>, day: Day | null, there: ReadonlySet<object>, cut: Cut): void {
  if (cut.stands(hatch, day)) hatch.chicks = hatch.chicks.filter(chick => there.has(chick))
  else Object.assign(hatch, {on: null, hatched: null, clear: null, deadInGerm: null, deadInShell: null, bad: null, setAside: null, chicks: [], tallies: [], unlisted: 0})
}

function cutPen(pen: Open<Pen>, there: ReadonlySet<object>, cut: Cut): void {
  for (const side of ['males', 'females'] as const) pen[side] = cut.keep(pen[side], stay => stay.from).filter(stay => there.has(stay.bird))
  pen.hatches = pen.hatches.filter(hatch => there.has(hatch))
}

/** A draft that was not written yet is none that a show was judged by. */
function cutShow(show: Open<Show>, later: ReadonlySet<number>): void {
  const draftThen = <T extends {readonly draft: number | null}>(one: T): T => (one.draft !== null && later.has(one.draft) ? {...one, draft: null} : one)
  show.entries = show.entries.map(draftThen)
  if (show.scores) show.scores = show.scores.map(draftThen)
}

function cutScore(score: Open<Score>, later: ReadonlySet<number>): void {
  if (score.draft !== undefined && later.has(score.draft)) delete score.draft
}

function cutCare(entry: Open<CareEntry>, there: ReadonlySet<object>): void {
  entry.birds = entry.birds.filter(bird => there.has(bird))
  entry.pens = entry.pens.filter(pen => there.has(pen))
  entry.hatches = entry.hatches.filter(hatch => there.has(hatch))
}

function cutRequirements(requirements: Open<Requirements>, cut: Cut): void {
  requirements.papers = cut.keep(requirements.papers, paper => paper.on)
  requirements.items = requirements.items.map(item => ({...item, waived: cut.orNull(item.waived, item.waived?.on)}))
}

/** Pictures of everything but birds, which have been cut with their lives. */
function cutPhotos({project, strains, traits, keepers, pens, hatches, shows, drafts, care, diary, stepNotes, requirements}: Logbook, cut: Cut): void {
  const things: readonly (Written | null)[] = [project, ...strains, ...traits, ...keepers, ...pens, ...hatches, ...shows, ...drafts, ...care, ...diary, ...stepNotes.values(), requirements]
  for (const thing of things as readonly (Open<Written> | null)[]) if (thing?.photos) thing.photos = cut.keep(thing.photos, photo => photo.on)
}
