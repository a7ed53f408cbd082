/** Pieces that several kinds of record share: photographs, bands in turn, stays, ways of leaving, sexes. */
import {chance, count, date, datedWords, reference, text, type Ref} from '../scalars.ts'
import type {PartialDate} from '../dates.ts'
import {nearWords, orNear} from '../near.ts'
import {isMap} from '../raw.ts'
import {anything, byForm, listOf, mapOf, object, oneOf, optional, refuse, required, scalar, turned, type Shape} from '../shape.ts'

export const SEX_WORDS = ['male', 'female', 'unknown'] as const
export type SexWord = (typeof SEX_WORDS)[number]

/** A sex; to the words of the yard the right one is named. */
export const sexWord = oneOf(SEX_WORDS, {
  m: 'male', '♂': 'male', cock: 'male', cockerel: 'male', rooster: 'male', drake: 'male', f: 'female', '♀': 'female', hen: 'female', pullet: 'female', duck: 'female', '?': 'unknown',
})

/** What a keeper keeps for themselves: taken in any form, published never. */
export const privateNotes = optional(anything, 'Notes for yourself. They never reach a page, a data file or a picture.')

export const photos = optional(
  listOf(object('a photograph', {
    file: required(text('a file in photos/, such as 24-031.jpg'), 'The file in `content/photos/`.'),
    on: optional(date, 'When it was taken.'),
    view: optional(text('a view such as left, head or comb'), 'What side or part is seen.'),
    alt: optional(text('a sentence'), 'What a judge would see, for readers who cannot see the picture.'),
    caption: optional(text('a sentence'), 'Printed beneath.'),
  })),
  'Photographs. They are made smaller and stripped of position and camera before they are published.',
)

/** `male`, or the sexings in turn: `[{is: male, on: 2024-06}, {is: female, on: 2024-09-12, because: laid}]`. */
export const sex = turned(
  byForm({
    text: sexWord,
    list: listOf(object('a sexing', {
      is: required(sexWord, 'What the bird was taken for.'),
      on: optional(date, 'When.'),
      because: optional(text('a reason such as laid'), 'How it showed.'),
    })),
  }),
  (value, at) => (typeof value === 'string' ? [{is: value, on: undefined, because: undefined, at}] : value),
)

const band = reference('a band such as 22-004')

interface BandEnd {
  readonly on: PartialDate
  readonly lost: boolean
}

const bandEnd: Shape<BandEnd> = scalar('a date, and the word lost where the band was lost: 2024-06 lost', words => {
  const told = datedWords(words)
  if (told === undefined || 'refused' in told) return told
  if (told.on === null) return undefined
  return told.words === '' || told.words === 'lost' ? {on: told.on, lost: told.words === 'lost'} : undefined
})

/** Bands in turn: `[{band: Y-118, from: 2022-03, to: 2022-05}, 22-004]`. */
export const bands = listOf(turned(
  byForm({
    text: band,
    map: object('a band and when it was worn', {
      band: required(band, 'What stands on the band.'),
      from: optional(date, 'From when it was worn.'),
      to: optional(bandEnd, 'Until when; `2024-06 lost` where it was lost.'),
    }),
  }),
  (value, at) => ('text' in value ? {band: value, from: undefined, to: undefined, at} : value),
))

/** A bird in a pen, for all of the season or part of it. */
export interface StayRead {
  readonly band: Ref
  readonly from: PartialDate | undefined
  readonly to: PartialDate | undefined
  readonly chance: number | undefined
}

const stayList: Shape<readonly StayRead[]> = listOf(turned(
  byForm({
    text: band,
    map: object('a bird and its time in the pen', {
      band: required(band, 'The bird.'),
      from: optional(date, 'From when it was in the pen.'),
      to: optional(date, 'Until when.'),
      chance: optional(chance, 'Its share of the chicks, where that is known.'),
    }),
  }),
  value => ('text' in value
    ? {band: value, from: undefined, to: undefined, chance: undefined}
    : {band: value.band, from: value.from, to: value.to, chance: value.chance}),
))

/** `[22-017, 22-021]`, `[{band: 22-004, to: 2024-03-15}, …]` or `{22-004: 70%, 22-009: 30%}`. */
export const stays: Shape<readonly StayRead[]> = byForm({
  text: stayList,
  list: stayList,
  map: turned(
    mapOf('bands with their share of the chicks, such as {22-004: 70%, 22-009: 30%}', chance),
    entries => entries.map(({key, value, keyAt}) => ({band: {text: key, at: keyAt}, from: undefined, to: undefined, chance: value})),
  ),
})

/** Who a parent is: one bird, several with their chances, any that a keeper had then, a bird of a strain from outside the book, or nobody knows. */
export type ParentRead =
  | {readonly kind: 'birds'; readonly birds: readonly {readonly band: Ref; readonly chance: number | null}[]}
  | {readonly kind: 'outside'; readonly strain: Ref | null}
  | {readonly kind: 'keeper'; readonly keeper: Ref}

const parentForms: Shape<ParentRead> = byForm({
  text: turned(
    reference('a band such as 22-004, or unknown'),
    (value): ParentRead => (value.text === 'unknown' ? {kind: 'outside', strain: null} : {kind: 'birds', birds: [{band: value, chance: null}]}),
  ),
  list: turned(listOf(band), (birds): ParentRead => ({kind: 'birds', birds: birds.map(bird => ({band: bird, chance: null}))})),
  map: turned(
    mapOf('bands with their chances, such as {22-004: 50%, 22-009: 50%}', chance),
    (entries): ParentRead => ({kind: 'birds', birds: entries.map(({key, value, keyAt}) => ({band: {text: key, at: keyAt}, chance: value}))}),
  ),
})

const outsideParent: Shape<ParentRead> = turned(
  object('a bird from outside the book', {strain: required(reference('a strain'), 'Its strain.')}),
  (value): ParentRead => ({kind: 'outside', strain: value.strain}),
)

const keepersParent: Shape<ParentRead> = turned(
  object('a bird of the flock', {keeper: required(reference('a keeper'), 'Who kept it when the egg was laid.')}),
  (value): ParentRead => ({kind: 'keeper', keeper: value.keeper}),
)

/** `22-004`, `unknown`, `[22-004, 22-009]`, `{22-004: 50%, 22-009: 50%}`, `{keeper: kelpgarth}` or `{strain: holm-white}`. */
export const parent: Shape<ParentRead> = {
  ...parentForms,
  says: `${parentForms.says}, or {keeper: kelpgarth} for any that this keeper had then, or {strain: holm-white} for one from outside the book`,
  read: (raw, at, note) => (isMap(raw) && 'strain' in raw ? outsideParent : isMap(raw) && 'keeper' in raw ? keepersParent : parentForms).read(raw, at, note),
}

export const WAYS_OF_LEAVING = ['died', 'culled', 'sold', 'given', 'lent', 'lost', 'taken'] as const
export interface LeavingRead {
  readonly on: PartialDate | null
  readonly how: (typeof WAYS_OF_LEAVING)[number]
  readonly why: string | null
}

/** `2024-06-30 culled`, `2025-08-01 sold`, `"2024-03-24 culled, off type"`, `died`. */
export const left: Shape<LeavingRead> = scalar(`a date and one of ${WAYS_OF_LEAVING.join(', ')}, such as 2024-06-30 sold`, words => {
  const told = datedWords(words)
  if (told === undefined || 'refused' in told) return told
  const [, how = '', , why = ''] = /^(\S*?)([,;:]?)(?:\s+(.*))?$/s.exec(told.words)?.map(part => part ?? '') ?? []
  const way = WAYS_OF_LEAVING.find(known => known === how)
  if (way === undefined) {
    const says = `write one of ${WAYS_OF_LEAVING.join(', ')} after the date`
    return refuse('unreadable-value', `“${words}” does not say how the bird left`, orNear(nearWords(how, WAYS_OF_LEAVING), says))
  }
  return {on: told.on, how: way, why: why.trim() === '' ? null : why.trim()}
})

/** `2024-10-01 for breeding, best keel of her hatch`. */
export const kept = scalar('a date and the reason, such as 2024-10-01 for breeding, best keel of her hatch', datedWords)

export const flock = object('the flock it was bought from', {
  name: required(text('a name such as breeder-7'), 'A name for the flock, so that birds of one flock are known to be kin.'),
  kinship: optional(chance, 'How closely its birds are related to one another.'),
})

/** What stands in a chick’s line and in a bird’s own record alike. */
export const BIRD_FIELDS = {
  sex: optional(sex, 'The sex, or the sexings in turn where it was mistaken at first.'),
  sire: optional(parent, 'The father, where he is known better than from the pen. Chances that make less than 100% leave the rest to a bird from outside the book; {keeper: kelpgarth} is any male that this keeper had when the egg was laid.'),
  dam: optional(parent, 'The mother, where she is known; in the same forms as the father. Where a pen is known, unknown is any of its hens.'),
  pen: optional(reference('a pen such as 2024-A'), 'The pen its egg came from, where a setting held eggs of several.'),
  family: optional(text('a name such as basket-2'), 'Chicks that share one unknown dam carry the same name.'),
  bands: optional(bands, 'The bands it wore, in turn.'),
  keeper: optional(reference('a keeper'), 'Who keeps it.'),
  'out-of': optional(object('the tally it was banded from', {
    hatch: required(reference('a hatch such as 2024-03'), 'The hatch.'),
    mark: optional(text('a mark such as basket 2'), 'The tally’s mark.'),
  }), 'The unbanded tally this bird was banded from later.'),
  'same-as': optional(band, 'Another bird’s band that proved to be this bird.'),
  maybe: optional(listOf(band), 'Birds this one may be, its band gone.'),
  'kept-at': optional(listOf(object('a time with a keeper', {
    keeper: required(reference('a keeper'), 'Who kept it.'),
    from: optional(date, 'From when.'),
    to: optional(date, 'Until when.'),
  })), 'Where it was kept, in turn.'),
  kin: optional(listOf(object('a relation between founders', {
    with: required(band, 'The other founder.'),
    kinship: required(chance, 'The kinship of the two.'),
  })), 'For founders: others it is known to be related to.'),
  kept: optional(kept, 'The decision to keep it, with its reason; a reason that says “breeding” makes it one of the breeders even while it stands in no pen.'),
  left: optional(left, 'When and how it left the flock, and why.'),
  step: optional(text('a step such as BC2'), 'The step you take it to be; compared with its descent.'),
  'first-egg': optional(date, 'When she first laid.'),
  tested: optional(mapOf('loci with the genotype that a test found, such as {P: P/p+}', text('a genotype such as P/p+, P/_ or S/-')), 'What a DNA test found: taken as certain, unless the bird’s strain, look or parents leave no room for it, which is said as a problem.'),
  observations: optional(listOf(object('an observation', {
    on: optional(date, 'When.'),
    by: optional(reference('a keeper'), 'By whom.'),
    draft: optional(count, 'The draft of the standard that the traits were scored by; else the one in force on the day.'),
  }, {others: 'a trait’s id with what was seen, or a word of your own with a note'})), 'Dated notes and scores.'),
  photos,
} as const
