/** Which clause of one draft of the standard is which of another, and what stands at another place. */
import type {Clause, Draft, Section} from '../logbook/book.ts'
import {plainWords} from '../logbook/plain-words.ts'

export interface MatchedPiece<Piece> {
  /** null: it is new, or was dropped */
  readonly before: Piece | null
  readonly after: Piece | null
  /** at another place among those that stayed, in another section, or of another variety */
  readonly moved: boolean
}

export interface MatchedDrafts {
  /** in the order of the newer draft, what was dropped last */
  readonly sections: readonly MatchedPiece<Section>[]
  readonly clauses: readonly MatchedPiece<Clause>[]
}

/** The members of the longest run of rising numbers: pieces that kept their order among themselves. */
export function rising(places: readonly number[]): ReadonlySet<number> {
  const length: number[] = [], before: (number | null)[] = []
  places.forEach((place, index) => {
    length[index] = 1
    before[index] = null
    for (let earlier = 0; earlier < index; earlier++) {
      if ((places[earlier] ?? 0) < place && (length[earlier] ?? 0) + 1 > (length[index] ?? 0)) {
        length[index] = (length[earlier] ?? 0) + 1
        before[index] = earlier
      }
    }
  })
  let at: number | null = length.length === 0 ? null : length.indexOf(length.reduce((most, each) => Math.max(most, each)))
  const kept = new Set<number>()
  while (at !== null) {
    kept.add(at)
    at = before[at] ?? null
  }
  return kept
}

/** Pairs what is left of both by a key that each side has once. */
function pairOnce<Piece>(old: readonly Piece[], fresh: readonly Piece[], pairs: Map<Piece, Piece>, keyOf: (piece: Piece, isOld: boolean) => string | null): void {
  const taken = new Set(pairs.values())
  const byKey = (pieces: readonly Piece[], isOld: boolean): Map<string, Piece[]> => {
    const keyed = new Map<string, Piece[]>()
    for (const piece of pieces) {
      const key = keyOf(piece, isOld)
      if (key !== null) keyed.set(key, [...(keyed.get(key) ?? []), piece])
    }
    return keyed
  }
  const olds = byKey(old.filter(piece => !taken.has(piece)), true)
  for (const [key, [after, ...more]] of byKey(fresh.filter(piece => !pairs.has(piece)), false)) {
    const [before, ...others] = olds.get(key) ?? []
    if (after && before && more.length === 0 && others.length === 0) pairs.set(after, before)
  }
}

/** Newer section → older one: by its id; else one that is about the same, or whose clauses mostly have the same names. */
function pairedSections(from: Draft, to: Draft): ReadonlyMap<Section, Section> {
  const pairs = new Map<Section, Section>(), old = from.sections.filter(({title}) => title !== ''), fresh = to.sections.filter(({title}) => title !== '')
  pairOnce(old, fresh, pairs, ({id}) => id)
  pairOnce(old, fresh, pairs, ({kind}) => kind)
  const taken = new Set(pairs.values())
  for (const after of fresh.filter(section => !pairs.has(section))) {
    const titles = new Set(after.clauses.map(({title}) => title))
    const before = old.find(section => !taken.has(section) && titles.size > 0 && 2 * section.clauses.filter(({title}) => titles.has(title)).length >= Math.max(titles.size, section.clauses.length))
    if (!before) continue
    pairs.set(after, before)
    taken.add(before)
  }
  return pairs
}

const sectionOf = (draft: Draft): ReadonlyMap<Clause, Section> => new Map(draft.sections.flatMap(section => section.clauses.map(clause => [clause, section] as const)))

/** So many words make a clause known again under another name: `As the male.` does not. */
const TELLING_WORDS = 4

/**
 * Clauses are known again by their ids, through a section's new name; then by name and words wherever they went; then by name in their own section, as when
 * a variety's heading was put above them; then by their words under another name in their section.
 */
export function matchedDrafts(from: Draft, to: Draft): MatchedDrafts {
  const sections = pairedSections(from, to), newName = new Map([...sections].map(([after, before]) => [before.id, after.id]))
  const oldHome = sectionOf(from), freshHome = sectionOf(to), old = [...oldHome.keys()], fresh = [...freshHome.keys()]
  const pairs = new Map<Clause, Clause>()
  const home = (clause: Clause, isOld: boolean): string => {
    const id = (isOld ? oldHome : freshHome).get(clause)?.id ?? ''
    return isOld ? newName.get(id) ?? `gone ${id}` : id
  }
  const words = new Map([...old, ...fresh].map(clause => [clause, plainWords(clause.text)]))
  const wordsOf = (clause: Clause): string => words.get(clause) ?? ''
  pairOnce(old, fresh, pairs, (clause, isOld) => `${home(clause, isOld)}${clause.id.slice((isOld ? oldHome : freshHome).get(clause)?.id.length ?? 0)}`)
  pairOnce(old, fresh, pairs, clause => `${clause.title}\n${wordsOf(clause)}`)
  pairOnce(old, fresh, pairs, (clause, isOld) => `${home(clause, isOld)}\n${clause.title.toLowerCase()}`)
  pairOnce(old, fresh, pairs, (clause, isOld) => (wordsOf(clause).split(' ').length < TELLING_WORDS ? null : `${home(clause, isOld)}\n${wordsOf(clause)}`))

  const elsewhere = (before: Clause, after: Clause): boolean => home(before, true) !== home(after, false) || before.variety !== after.variety
  const movedClauses = outOfPlace(fresh, old, pairs, (after, before) => (elsewhere(before, after) ? null : home(after, false)))
  const movedSections = outOfPlace([...to.sections], [...from.sections], sections, () => '')
  return {
    sections: told([...from.sections], [...to.sections], sections, movedSections).filter(({before, after}) => (after ?? before)?.title !== ''),
    clauses: told(old, fresh, pairs, movedClauses),
  }
}

/** What stands out of order in its group, or has none: null. */
function outOfPlace<Piece>(fresh: readonly Piece[], old: readonly Piece[], pairs: ReadonlyMap<Piece, Piece>, groupOf: (after: Piece, before: Piece) => string | null): ReadonlySet<Piece> {
  const places = new Map(old.map((piece, place) => [piece, place])), moved = new Set<Piece>(), groups = new Map<string, {readonly piece: Piece; readonly place: number}[]>()
  for (const after of fresh) {
    const before = pairs.get(after)
    if (before === undefined) continue
    const group = groupOf(after, before)
    if (group === null) moved.add(after)
    else groups.set(group, [...(groups.get(group) ?? []), {piece: after, place: places.get(before) ?? 0}])
  }
  for (const members of groups.values()) {
    const steady = rising(members.map(({place}) => place))
    members.forEach(({piece}, index) => { if (!steady.has(index)) moved.add(piece) })
  }
  return moved
}

function told<Piece>(old: readonly Piece[], fresh: readonly Piece[], pairs: ReadonlyMap<Piece, Piece>, moved: ReadonlySet<Piece>): readonly MatchedPiece<Piece>[] {
  const taken = new Set(pairs.values())
  return [
    ...fresh.map(after => ({before: pairs.get(after) ?? null, after, moved: moved.has(after)})),
    ...old.filter(piece => !taken.has(piece)).map(before => ({before, after: null, moved: false})),
  ]
}
