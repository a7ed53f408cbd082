import type {Clause, Draft, SectionKind, Sex} from '../logbook/book.ts'
import {PARTS_OF_FOWL, type PartOfFowl} from './parts-of-fowl.ts'

/** Sections whose clauses describe a bird; those of faults, origin, weights and the like are meant only where the keeper says so. */
const DESCRIBES: ReadonlySet<SectionKind | null> = new Set(['impression', 'male', 'female', 'colour', 'down', 'temperament', 'utility', null])
/** Words of titles that say of whom a clause speaks and not of what. */
const NO_MATTER = new Set(['and', 'the', 'of', 'in', 'both', 'sex', 'sexes', 'male', 'males', 'female', 'females', 'cock', 'cockerel', 'hen', 'pullet', 'general', 'other', 'all', 'as', 'with'])

const PARTS = new Map(PARTS_OF_FOWL.map(part => [part.id, part]))

const wordsOf = (text: string): string[] => text.toLowerCase().split(/[^\p{L}]+/u).filter(word => word !== '')
/** Of one thing or several. */
const plain = (word: string): string => word.replace(/ies$/, 'y').replace(/s$/, '')
const titleWords = ({title}: Clause): string[] => wordsOf(title).filter(word => word.length > 2 && !NO_MATTER.has(word))

/**
 * Which clauses of a draft does a remark on a bird speak of, by its words? Those in whose title a word of the remark stands, in the singular or the plural; those that are headed by a part of the fowl that
 * the remark names, else by the wider part it belongs to, else those in whose text it stands. Only clauses that describe birds of its sex; where a hen has none, since hens are described by how they
 * differ, that of the male. Common practice, no source.
 *
 * @returns ids, in the order of the draft; none where no word fits
 */
export function clausesMeant(remark: string, sex: Sex, draft: Draft): readonly string[] {
  const said = new Set(wordsOf(remark)), saidPlain = new Set([...said].map(plain))
  const clauses = draft.sections.flatMap(section => (DESCRIBES.has(section.kind) ? section.clauses.map(clause => ({clause, kind: section.kind})) : []))
  const found = new Set<string>()
  const add = (all: readonly Placed[]): boolean => {
    const own = ofSex(all, sex)
    for (const {clause} of own) found.add(clause.id)
    return own.length > 0
  }
  const byTitle = new Map<string, Placed[]>()
  for (const placed of clauses) for (const word of titleWords(placed.clause)) if (saidPlain.has(plain(word))) byTitle.set(plain(word), [...(byTitle.get(plain(word)) ?? []), placed])
  for (const all of byTitle.values()) add(all)
  for (const part of PARTS_OF_FOWL) if (part.words.some(word => said.has(word))) {
    const headed = chainOf(part).some(each => add(clauses.filter(({clause, kind}) => titleWords(clause).some(word => each.words.includes(word)) || (each.id === 'colour' && kind === 'colour' && titleWords(clause).length === 0))))
    if (!headed) add(clauses.filter(({clause}) => wordsOf(clause.text).some(word => part.words.includes(word))))
  }
  return clauses.map(({clause}) => clause.id).filter(id => found.has(id))
}

interface Placed {
  readonly clause: Clause
  readonly kind: SectionKind | null
}

/** Of its sex or of both; where a hen has none, the male's. A bird of unknown sex may be meant by either. */
function ofSex(all: readonly Placed[], sex: Sex): readonly Placed[] {
  const fit = all.filter(({clause}) => sex === 'unknown' || clause.sex === null || clause.sex === sex)
  return fit.length === 0 && sex === 'female' ? all : fit
}

function chainOf(part: PartOfFowl): PartOfFowl[] {
  const wider = part.within === null ? undefined : PARTS.get(part.within)
  return wider ? [part, ...chainOf(wider)] : [part]
}
