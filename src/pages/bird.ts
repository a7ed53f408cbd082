/** A bird's page: who it is, where it comes from, how it looks and weighs, where it lived, what came of it. */
import {countedValue} from '../findings/counted-value.ts'
import type {Findings} from '../findings/study.ts'
import {looksRight} from '../findings/wanted-look.ts'
import type {Bird, Logbook, Trait} from '../logbook/book.ts'
import {birdDescent, type BirdDescent} from './bird-descent.ts'
import type {Fact} from './bird-lead.ts'
import {birdHides} from './bird-hides.ts'
import type {BirdHides} from './bird-hides.ts'
import {birdFacts, birdLead} from './bird-lead.ts'
import {birdLooks} from './bird-looks.ts'
import type {Looks} from './bird-looks.ts'
import {measureRows, weighingsTable} from './bird-measures.ts'
import type {MeasureRow} from './bird-measures.ts'
import {livingChicks, matesOfHatch, offspringTable} from './bird-offspring.ts'
import type {PartialDate} from '../records/dates.ts'
import {careCaution, careList} from './care-words.ts'
import type {CareWords} from './care-words.ts'
import {dateWords, hatchYear, stayWords} from './dates.ts'
import {bandHistory, LEFT, sexHistory, wasMissexed} from './life-words.ts'
import type {Dated} from './life-words.ts'
import {birdPath, penPath, showPath} from './links.ts'
import {listWords} from './numbers.ts'
import type {Page, Table} from './page.ts'
import {candidatesNotDrawn, known, legend, pedigree} from './pedigree.ts'
import type {Ancestor, Mark} from './pedigree.ts'
import {plates} from './plates.ts'
import type {Plate} from './plates.ts'
import type {RecordsOfBird} from './records-by-bird.ts'
import {sheetsOfBird} from './score-sheets.ts'
import type {ScoreSheetView} from './score-sheets.ts'
import {birdWord, pronoun} from './sex-words.ts'
import {quoted, resultWords} from './show-words.ts'
import {stepWords} from './step-words.ts'

export interface BirdView {
  readonly band: string
  readonly pronoun: string
  readonly facts: readonly Fact[]
  readonly lead: string
  readonly plates: readonly Plate[]
  /** plain sentences that must not be overlooked */
  readonly notices: readonly {readonly head: string; readonly text: string}[]
  readonly bands: readonly {readonly band: string; readonly text: string}[]
  readonly sexings: readonly Dated[]
  readonly pedigree: {readonly tree: Ancestor; readonly note: string; readonly words: string; readonly candidates: ReturnType<typeof candidatesNotDrawn>}
  readonly descent: BirdDescent
  readonly hides: BirdHides | null
  readonly measures: readonly MeasureRow[]
  readonly weighings: Table | null
  readonly looks: Looks
  readonly life: readonly Dated[]
  readonly offspring: Table | null
  readonly chicks: readonly {readonly band: string; readonly link: string; readonly may: boolean}[]
  readonly offspringWords: string
  readonly mates: ReturnType<typeof matesOfHatch>
  readonly shows: readonly {readonly when: string; readonly title: string; readonly link: string; readonly text: string}[]
  readonly sheets: readonly ScoreSheetView[]
  readonly notes: readonly Dated[]
  readonly care: readonly CareWords[]
  readonly caution: string | null
  readonly body: string
}

/** The trait whose looks fill the symbols of a pedigree: the first required one with states. */
export const markedTrait = (traits: readonly Trait[]): Trait | null =>
  traits.find(trait => trait.required && trait.kind === 'states') ?? traits.find(trait => trait.kind === 'states' && trait.wanted.female !== null) ?? null

/** Solid when the look that counts is the wanted one, open when not, speckled when none counts. */
export function markOf(trait: Trait | null): (bird: Bird) => Mark {
  return bird => {
    if (trait === null) return {fill: 'open', words: 'no trait marked'}
    const value = countedValue(bird, trait), right = value === null ? null : looksRight(trait, bird.sex, value)
    if (value === null || right === null) return {fill: 'speckled', words: `${trait.name.toLowerCase()} not scored`}
    return {fill: right ? 'solid' : 'open', words: `${trait.name.toLowerCase()} ${value}`}
  }
}

function pedigreeView(bird: Bird, trait: Trait | null): BirdView['pedigree'] {
  const tree = pedigree(bird, markOf(trait))
  return {tree, candidates: candidatesNotDrawn(bird), note: legend(tree, trait?.name.toLowerCase() ?? null), words: knownWords(tree)}
}

/** How much of the drawing is certain. */
function knownWords(tree: Ancestor): string {
  const {one, several, none} = known(tree), places = one + several + none
  if (places === 0) return 'No parents are on record: the pedigree begins here.'
  if (one === places) return places === 2 ? 'Both parents are known.' : `All ${places} places drawn are known.`
  const parts = [
    ...(one > 0 ? [`${one} known`] : []), ...(several > 0 ? [`${several} uncertain, one of several birds`] : []), ...(none > 0 ? [`${none} not recorded`] : []),
  ]
  return `Of the ${places} places drawn: ${listWords(parts)}.`
}

function notices(bird: Bird): BirdView['notices'] {
  return [
    ...(wasMissexed(bird) ? [{head: 'Sexed wrongly at first.', text: 'Figures use the sex it is known to be now; the history stands below.'}] : []),
    ...(bird.maybe.length > 0 ? [{head: 'Band gone.', text: `This bird was found without its band and may be ${bird.maybe.map(each => each.band).join(' or ')}.`}] : []),
    ...(bird.outOf ? [{head: 'Banded late.', text: `It ran unbanded with others of its hatch${bird.outOf.mark === null ? '' : `, marked ${bird.outOf.mark}`}, and takes over what was scored on them.`}] : []),
    ...(bird.stepWritten !== null && bird.stepWritten !== bird.step.label ? [{head: 'Step.', text: `The keeper wrote ${bird.stepWritten}; descent makes it ${stepWords(bird)}.`}] : []),
  ]
}

/** Kept, moved, left: in the order it happened as far as days are known; what has no day stands last. */
function life(bird: Bird, records: RecordsOfBird): readonly Dated[] {
  const entry = (on: PartialDate | null, when: string | null, text: string): Dated & {on: number} => ({on: on?.first ?? Infinity, when: when ?? (on ? dateWords(on) : 'day not recorded'), text})
  const entries = [
    ...(bird.mark === null ? [] : [entry(bird.hatched, null, `Hatched, marked ${bird.mark}.`)]),
    ...bird.keptAt.map(({keeper, from, to}) => ({...entry(from ?? bird.hatched, stayWords(from, to) ?? 'days not recorded', `With ${keeper.name}.`)})),
    ...records.stays.map(({pen, stay}) => entry(stay.from ?? pen.from, stayWords(stay.from ?? pen.from, stay.to ?? pen.to) ?? `season ${pen.season}`, `In pen ${pen.id}.`)),
    ...(bird.firstEgg ? [entry(bird.firstEgg, null, 'First egg seen.')] : []),
    ...(bird.kept ? [entry(bird.kept.on, null, `Kept: ${bird.kept.why}.`)] : []),
  ].sort((a, b) => (a.on === b.on ? 0 : a.on - b.on))
  return [...entries.map(({when, text}) => ({when, text})), ...(bird.left ? [{when: bird.left.on ? dateWords(bird.left.on) : 'day not recorded', text: `${leftHead(bird)}.`}] : [])]
}

const leftHead = (bird: Bird): string => (bird.left ? `Left: ${bird.left.how}${bird.left.why === null ? ', no reason written' : `, ${bird.left.why}`}` : '')

function observationNotes(bird: Bird): readonly Dated[] {
  return bird.observations.map(({on, by, notes}) => ({
    when: on ? dateWords(on) : 'day not recorded',
    text: `${notes.map(([what, words]) => (what === 'note' ? words : `${what}: ${words}`)).join('; ')}${by ? `. ${by.name}` : ''}`,
  }))
}

/** What tells a bird from its namesake in a list of what was found: `BC3F2 hen, hatched 2024, sold`. */
function foundAs(bird: Bird, book: Logbook, breeding: boolean): string {
  const year = bird.hatched === null ? '' : `, hatched ${hatchYear(bird.hatched)}`
  return `${stepWords(bird)} ${birdWord(bird, book.project.species, bird.left?.on?.last ?? book.asOf)}${year}, ${bird.left ? LEFT[bird.left.how] : breeding ? 'breeding' : 'living'}`
}

/** @param breeding is it a breeder on the book's day */
export function birdPage(bird: Bird, findings: Findings, records: RecordsOfBird, breeding: boolean): Page {
  return {
    path: birdPath(bird), template: 'bird', title: `${bird.sex === 'unknown' ? 'Bird' : bird.sex === 'male' ? 'Male' : 'Female'} ${bird.band}`, section: 'birds', fleeting: true,
    get view() { return birdView(bird, findings, records, breeding) },
    search: {kind: foundAs(bird, findings.book, breeding), words: `bird ${bird.bands.map(each => each.band).join(' ')} ${bird.sex}`},
  }
}

function birdView(bird: Bird, findings: Findings, records: RecordsOfBird, breeding: boolean): BirdView {
  const {book} = findings, {units} = book.project
  const standsIn = records.stays.filter(({pen, stay}) => (stay.to ?? pen.to) === null || (stay.to ?? pen.to ?? {last: 0}).last >= book.asOf).at(-1)?.pen ?? null
  const offspring = offspringTable(bird, records.offspring)
  return {
    band: bird.band, pronoun: pronoun(bird.sex), facts: birdFacts(bird, breeding, standsIn ? {id: standsIn.id, path: penPath(standsIn)} : null), lead: birdLead(bird, book),
    plates: plates(bird.photos, `${bird.band}, ${bird.sex === 'unknown' ? 'sex unknown' : bird.sex}`, false), notices: notices(bird), bands: bandHistory(bird),
    sexings: sexHistory(bird), pedigree: pedigreeView(bird, markedTrait(book.traits)), descent: birdDescent(bird, findings), hides: birdHides(bird, findings),
    measures: measureRows(bird, book.traits, units), weighings: weighingsTable(bird, book.traits, units), looks: birdLooks(bird, book.traits, units),
    life: life(bird, records), offspring, chicks: livingChicks(records.offspring),
    offspringWords: offspring === null ? (records.stays.length > 0 ? 'No chicks listed yet.' : '') : '', mates: matesOfHatch(bird),
    shows: records.shows.map(({show, entry}) => ({
      when: dateWords(show.on), title: `${show.name}:`, link: showPath(show),
      text: `${resultWords(entry)}.${entry.remark === null ? '' : ` “${quoted(entry.remark)}”`}`,
    })),
    sheets: sheetsOfBird(records.sheets, records.ownSheets, book),
    notes: observationNotes(bird), care: careList(records.care, book.asOf), caution: careCaution(records.care), body: bird.body,
  }
}
