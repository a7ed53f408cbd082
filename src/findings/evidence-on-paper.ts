/** Evidence that lies in writing: the standard, papers, statements, pictures, and the records themselves. */
import type {Paper, Requirement} from '../logbook/book.ts'
import {isWhole} from '../records/dates.ts'
import {countBySex} from './census.ts'
import {judged, nothing, reaches, type Finding} from './evidence-found.ts'
import type {Sources} from './evidence-shown.ts'
import {bothParentsCertain} from './records-audit.ts'

function papersFor({kind}: Requirement, {book}: Sources): {readonly papers: readonly Paper[]; readonly valid: readonly Paper[]} {
  const papers = (book.requirements?.papers ?? []).filter(paper => paper.proves === kind).sort((a, b) => a.on.first - b.on.first)
  return {papers, valid: papers.filter(paper => paper.on.first <= book.asOf && (paper.until === null || paper.until.last >= book.asOf))}
}

/** Met by a paper that holds on the book's day, or by the keeper's own statement; nobody else can say. */
export function paperOrWord(requirement: Requirement, from: Sources): Finding {
  const {papers, valid} = papersFor(requirement, from)
  if (valid.length > 0) return judged(true, {kind: 'papers', papers, valid})
  if (requirement.stated !== null) return judged(true, {kind: 'stated', stated: requirement.stated})
  return papers.length > 0 ? judged(false, {kind: 'papers', papers, valid}) : nothing
}

export function statementPapers(requirement: Requirement, from: Sources): Finding {
  const {papers, valid} = papersFor(requirement, from)
  return judged(valid.length >= (requirement.atLeast ?? 1), {kind: 'papers', papers, valid})
}

/** A paper of a veterinarian that holds on the book's day; without an end it holds. */
export function veterinaryPaper(requirement: Requirement, from: Sources): Finding {
  const {papers, valid} = papersFor(requirement, from)
  return judged(valid.length >= (requirement.atLeast ?? 1), {kind: 'papers', papers, valid})
}

/** The latest draft: every section with a clause or a lead, no clause empty, and points, where there are any, that add up to 100. */
export function writtenStandard(_: Requirement, {book}: Sources): Finding {
  const draft = book.drafts.at(-1)
  if (!draft) return judged(false, {kind: 'nothing-recorded'})
  const emptySections = draft.sections.filter(({clauses, lead}) => (clauses.length === 0 && lead.trim() === '') || clauses.some(clause => clause.text.trim() === ''))
    .map(section => section.title)
  const points = draft.points.reduce((sum, {points: each}) => sum + each, 0)
  const clauses = draft.sections.reduce((sum, section) => sum + section.clauses.length, 0)
  const whole = draft.sections.length > 0 && emptySections.length === 0 && (draft.points.length === 0 || Math.abs(points - 100) < 1e-9)
  return judged(whole, {kind: 'written-standard', draft: draft.number, clauses, emptySections, points})
}

const same = (a: string, b: string): boolean => a.trim().toLowerCase() === b.trim().toLowerCase()

/** Characters in which the new breed, named first, differs from each neighbour; the nearest neighbour decides. An empty cell tells no difference. */
export function distinctness({atLeast}: Requirement, {book}: Sources): Finding {
  const table = book.requirements?.distinctness
  if (!table || table.breeds.length < 2) return nothing
  const breeds = table.breeds.slice(1).map((breed, index) => ({
    breed, differing: table.rows.filter(({values}) => {
      const [own = '', other = ''] = [values[0], values[index + 1]]
      return own.trim() !== '' && other.trim() !== '' && !same(own, other)
    }).map(row => row.character),
  }))
  return judged(reaches(Math.min(...breeds.map(({differing}) => differing.length)), atLeast), {kind: 'distinct', breeds})
}

/** The history of creation is written as far as the records hold founders and at least one step. */
export function history(_: Requirement, {book, ladder}: Sources): Finding {
  const founders = book.strains.map(strain => ({strain, birds: book.birds.filter(bird => bird.parentage.kind === 'founder' && bird.strain === strain).length}))
    .filter(({birds}) => birds > 0)
  const reached = ladder.filter(step => step.kind === 'reached')
  const shown = {kind: 'history', founders, steps: reached.length, hatched: reached.reduce((sum, step) => sum + step.chicks.hatched, 0)} as const
  return judged(founders.length > 0 && reached.length > 0, shown)
}

/** Birds of the breed with a picture, by sex: one of each unless the requirement says how many. */
export function photographs({males, females, atLeast}: Requirement, {book}: Sources): Finding {
  const pictured = book.birds.filter(bird => bird.step.kind !== 'strain' && bird.photos.length > 0)
  const all = pictured.flatMap(bird => bird.photos)
  const birds = countBySex(pictured)
  const met = birds.male >= (males ?? 1) && birds.female >= (females ?? 1) && all.length >= (atLeast ?? 0)
  return judged(met, {kind: 'photographs', birds, photos: all.length, dated: all.filter(photo => photo.on !== null && isWhole(photo.on)).length})
}

/** Of the living birds of the breed, the share banded and the share with both parents certain; both must reach what is asked. */
export function identity({atLeast}: Requirement, {audit, census}: Sources): Finding {
  const {livingBanded: banded, livingBothParentsKnown: bothParents} = audit
  const uncertain = census.alive.filter(bird => bird.step.kind !== 'strain' && !bothParentsCertain(bird))
  const shown = {kind: 'identity', banded, bothParents, uncertain} as const
  if (banded.kind === 'cannot-say' || bothParents.kind === 'cannot-say') return judged(null, shown)
  return judged(atLeast === null ? null : banded.value >= atLeast && bothParents.value >= atLeast, shown)
}
