import type {Clause, Draft, Logbook} from '../logbook/book.ts'

/** What changed from one draft of the standard to the next. */
export interface StandardChanges {
  readonly from: Draft
  readonly to: Draft
  readonly clauses: readonly ClauseChange[]
  readonly weights: readonly AmountChange[]
  readonly points: readonly AmountChange[]
}

export interface ClauseChange {
  readonly id: string
  readonly title: string
  /** moved: the same words at another place, whether in its section or another; a reworded clause may have moved too */
  readonly is: 'added' | 'dropped' | 'reworded' | 'moved'
  /** null for what was added, or dropped */
  readonly before: Clause | null
  readonly after: Clause | null
  readonly why: string | null
}

export interface AmountChange {
  readonly name: string
  /** grams or points; null: not in that draft */
  readonly before: number | null
  readonly after: number | null
}

const plain = (text: string): string => text.trim().replace(/\s+/g, ' ')
const clausesOf = (draft: Draft): Clause[] => draft.sections.flatMap(section => section.clauses)

/** The members of the longest run of rising numbers: clauses that kept their order among themselves. */
function rising(places: readonly number[]): ReadonlySet<number> {
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

function amounts(before: ReadonlyMap<string, number>, after: ReadonlyMap<string, number>): AmountChange[] {
  return [...new Set([...after.keys(), ...before.keys()])].flatMap(name => {
    const was = before.get(name) ?? null, is = after.get(name) ?? null
    return was === is ? [] : [{name, before: was, after: is}]
  })
}

/** What changed between two drafts, in the order of the newer one, dropped clauses last. */
export function changesBetween(from: Draft, to: Draft): StandardChanges {
  const old = clausesOf(from), fresh = clausesOf(to)
  const oldById = new Map(old.map((clause, place) => [clause.id, {clause, place}] as const))
  const freshIds = new Set(fresh.map(clause => clause.id))
  const gone = new Map(old.filter(clause => !freshIds.has(clause.id)).map(clause => [`${clause.title}\n${plain(clause.text)}`, clause] as const))
  const shared = fresh.filter(clause => oldById.has(clause.id))
  const steady = rising(shared.map(clause => oldById.get(clause.id)?.place ?? 0))
  const inPlace = new Set(shared.filter((_, index) => steady.has(index)))
  const changes: ClauseChange[] = []
  const resettled = new Set<Clause>()
  for (const after of fresh) {
    const why = to.reasons.get(after.id) ?? null
    const before = oldById.get(after.id)?.clause
    const elsewhere = before ? undefined : gone.get(`${after.title}\n${plain(after.text)}`)
    const {id, title} = after
    if (before && (plain(before.text) !== plain(after.text) || before.title !== title)) changes.push({id, title, is: 'reworded', before, after, why})
    else if (before && !inPlace.has(after)) changes.push({id, title, is: 'moved', before, after, why})
    else if (elsewhere && !resettled.has(elsewhere)) {
      resettled.add(elsewhere)
      changes.push({id, title, is: 'moved', before: elsewhere, after, why})
    } else if (!before) changes.push({id, title, is: 'added', before: null, after, why})
  }
  for (const before of old) {
    if (freshIds.has(before.id) || resettled.has(before)) continue
    changes.push({id: before.id, title: before.title, is: 'dropped', before, after: null, why: to.reasons.get(before.id) ?? null})
  }
  const weights = (draft: Draft): Map<string, number> => new Map(draft.weights.map(weight => [weight.class, weight.grams]))
  const points = (draft: Draft): Map<string, number> => new Map(draft.points.map(point => [point.name, point.points]))
  return {from, to, clauses: changes, weights: amounts(weights(from), weights(to)), points: amounts(points(from), points(to))}
}

/**
 * What did each draft of the standard change, and why? One entry for each draft after the first, oldest first. Clauses are
 * matched by their ids; one that left its section with the same title and words has moved. White space is no change.
 */
export function standardChanges(book: Logbook): readonly StandardChanges[] {
  return book.drafts.flatMap((to, index) => {
    const from = book.drafts[index - 1]
    return from ? [changesBetween(from, to)] : []
  })
}
