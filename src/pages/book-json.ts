/**
 * The whole book as one JSON document for whoever wants to work on it with other means: public facts only, every reference an id.
 * Keepers and judges without consent stand in it as the letters and numbers they have on the pages.
 */
import type {Bird, CareEntry, Chicks, Clause, Draft, Hatch, KeepersSheet, Logbook, Look, Parentage, Pen, Score, Show, Strain, Tally, Trait} from '../logbook/book.ts'
import {isoDay, type PartialDate} from '../records/dates.ts'

const dateOf = (date: PartialDate | null): string | null => date?.text ?? null

/** Who may be the parents, and the shares of the strains that follow: once for all chicks that have the same, which name it by its number. */
class Parentages {
  readonly #numbers = new Map<Parentage, number>()
  readonly all: object[] = []

  numberOf({parentage, shares}: Pick<Chicks, 'parentage' | 'shares'>): number | null {
    const {kind, pairs} = parentage
    // a founder's strain says it all
    if (kind === 'founder') return null
    const known = this.#numbers.get(parentage)
    if (known !== undefined) return known
    this.all.push({kind, pairs: pairs.map(({sire, dam, chance}) => ({sire: sire?.id ?? null, dam: dam?.id ?? null, chance})), shares: sharesOf(shares)})
    this.#numbers.set(parentage, this.all.length - 1)
    return this.all.length - 1
  }
}

const scoreOf = ({value, on, by, struck, outside, draft}: Score): object => ({value, on: dateOf(on), by: by?.name ?? null, struck, outside, ...(draft === undefined ? {} : {draft})})

/** The score that counts, and every other one. */
const looksOf = (looks: ReadonlyMap<Trait, Look>): object => Object.fromEntries([...looks].map(([trait, {counted, scores}]) => [trait.id, {
  ...(counted ? scoreOf(counted) : {}), others: scores.filter(score => score !== counted).map(scoreOf),
}]))

const sharesOf = (shares: ReadonlyMap<Strain, number>): object => Object.fromEntries([...shares].map(([strain, share]) => [strain.id, share]))

const chicksOf = ({count, sex, hatched, hatch, parentage, step, shares, looks, left}: Chicks, parentages: Parentages): object => ({
  count, sex, hatched: dateOf(hatched), hatch: hatch?.id ?? null, step: step.label, parentage: parentages.numberOf({parentage, shares}), looks: looksOf(looks),
  left: left && {on: dateOf(left.on), how: left.how, why: left.why},
})

const birdOf = (bird: Bird, parentages: Parentages): object => ({
  id: bird.id, band: bird.band, bands: bird.bands.length === 1 ? null : bird.bands.map(({band, from, to, lost}) => ({band, from: dateOf(from), to: dateOf(to), lost})), ...chicksOf(bird, parentages), count: null,
  strain: bird.strain?.id ?? null, kept: bird.kept && {on: dateOf(bird.kept.on), why: bird.kept.why},
  keepers: bird.keptAt.map(({keeper, from, to}) => ({keeper: keeper.name, from: dateOf(from), to: dateOf(to)})),
  family: bird.family, flock: bird.flock, maybe: bird.maybe.map(({id}) => id), kin: bird.kin.map(({with: other, kinship}) => ({with: other.id, kinship})),
  weighings: bird.weighings.map(({measure, value, on}) => ({measure, value, on: on.text})), firstEgg: dateOf(bird.firstEgg),
  observations: bird.observations.map(({on, by, notes}) => ({on: dateOf(on), by: by?.name ?? null, notes: notes.map(([what, words]) => ({what, words}))})),
})

const tallyOf = (tally: Tally, parentages: Parentages): object => ({mark: tally.mark, written: tally.written, ...chicksOf(tally, parentages)})

const penOf = (pen: Pen): object => ({
  id: pen.id, season: pen.season, from: dateOf(pen.from), to: dateOf(pen.to), keeper: pen.keeper?.name ?? null, intends: pen.intends,
  ...Object.fromEntries((['males', 'females'] as const).map(side => [
    side, pen[side].map(({bird, from, to, chance}) => ({bird: bird.id, from: dateOf(from), to: dateOf(to), chance})),
  ])),
})

const hatchOf = (hatch: Hatch, parentages: Parentages): object => ({
  id: hatch.id, pens: hatch.pens.map(({pen, eggs}) => ({pen: pen.id, eggs})), strain: hatch.strain?.id ?? null, set: dateOf(hatch.set), on: dateOf(hatch.on),
  eggs: hatch.eggs, clear: hatch.clear, deadInGerm: hatch.deadInGerm, deadInShell: hatch.deadInShell, bad: hatch.bad, hatched: hatch.hatched, ...(hatch.setAside === null ? {} : {setAside: hatch.setAside}),
  machine: hatch.machine, broody: hatch.broody?.id ?? null, rearing: hatch.rearing, step: hatch.step.label,
  chicks: hatch.chicks.map(({id}) => id), tallies: hatch.tallies.map(tally => tallyOf(tally, parentages)), unlisted: hatch.unlisted,
})

const traitOf = ({id, name, kind, states, scale, unit, atAge, window, wanted, required, scoredFrom, loci}: Trait): object =>
  ({id, name, kind, states, scale, unit, atAge, window, wanted, required, scoredFrom, loci})

const showOf = (show: Show): object => ({
  id: show.id, name: show.name, on: show.on.text, place: show.place, cancelled: show.cancelled,
  entries: show.entries.map(({bird, class: of, judge, place, of: outOf, award, points, remark, disqualified, draft}) =>
    ({bird: bird.id, class: of, judge, place, of: outOf, award, points, remark, disqualified, draft})),
})

const sheetOf = ({bird, on, by, draft, struck, headings}: KeepersSheet): object =>
  ({bird: bird.id, on: dateOf(on), by: by === null || typeof by === 'string' ? by : by.name, draft, struck, points: Object.fromEntries(headings.map(({name, points}) => [name, points]))})

/** What is asked beside the words; a key that would say nothing is left out. */
const clauseOf = ({id, title, text, sex, variety, trait, allows, ownRange, mandatory, ifMissed, accepted}: Clause): object => ({
  id, title, text, ...(sex === null ? {} : {sex}), ...(variety === null ? {} : {variety}), ...(trait === null ? {} : {trait: trait.id, allows, ownRange}), ...(mandatory ? {mandatory} : {}),
  ...(ifMissed === null ? {} : {ifMissed}), ...(accepted === null ? {} : {accepted}),
})

const draftOf = (draft: Draft): object => ({
  number: draft.number, on: draft.on.text, manner: draft.manner, classification: draft.classification, origin: draft.origin, egg: draft.egg, eggAtLeast: draft.eggAtLeast, rings: draft.rings,
  sections: draft.sections.map(({id, title, kind, lead, clauses}) => ({id, title, kind, lead, clauses: clauses.map(clauseOf)})),
  weights: draft.weights, rows: draft.rows.map(clauseOf), points: draft.points,
  varieties: draft.varieties.map(({name, looks}) => ({name, looks: Object.fromEntries([...looks].map(([trait, wanted]) => [trait.id, wanted]))})), reasons: Object.fromEntries(draft.reasons),
})

const careOf = (entry: CareEntry): object => ({
  id: entry.id, care: entry.care, on: entry.on.text, to: dateOf(entry.to), with: entry.with, pens: entry.pens.map(({id}) => id), birds: entry.birds.map(({id}) => id),
  hatches: entry.hatches.map(({id}) => id), eggsWithheldUntil: dateOf(entry.eggsWithheldUntil), meatWithheldUntil: dateOf(entry.meatWithheldUntil),
})

/** What a reader may take away of the book; ids are those of the tables. */
export function publicBook(book: Logbook): object {
  const {project} = book
  const parentages = new Parentages()
  return {
    project: {name: project.name, species: project.species, aim: project.aim, begun: dateOf(project.begun), ladder: project.ladder, limits: project.limits},
    asOf: isoDay(book.asOf),
    strains: book.strains.map(({id, name, role, trueFor, inbreeding, kinship}) =>
      ({id, name, role, trueFor: Object.fromEntries([...trueFor].map(([trait, state]) => [trait.id, state])), inbreeding, kinship})),
    traits: book.traits.map(traitOf),
    keepers: book.keepers.map(({id, name, consents, since, region}) => ({id, name, since: consents ? dateOf(since) : null, region})),
    birds: book.birds.map(bird => birdOf(bird, parentages)), pens: book.pens.map(penOf), hatches: book.hatches.map(hatch => hatchOf(hatch, parentages)), shows: book.shows.map(showOf), sheets: book.sheets.map(sheetOf), standard: book.drafts.map(draftOf),
    care: book.care.map(careOf),
    eggs: book.eggCounts.map(({pen, bird, on, eggs, hens, days, weight}) => ({pen: pen?.id ?? null, bird: bird?.id ?? null, on: on.text, eggs, hens, days: days ?? null, weighed: weight?.eggs ?? null, grams: weight?.grams ?? null})),
    feed: book.feedings.map(({pen, hatch, on, feed, left}) => ({pen: pen?.id ?? null, hatch: hatch?.id ?? null, on: on.text, grams: feed, left: left ?? null})),
    parentages: parentages.all,
  }
}
