/** In which order the pieces of a draft stand, and under which names: as its manner has it; without one, as the keeper wrote them, tables before the faults. */
import type {Draft, Section, SectionKind} from '../logbook/book.ts'
import {MANNERS_OF_STANDARD, type WeightsShown} from '../logbook/manners.ts'
import {isOfFaults, tellsOrigin} from '../logbook/parts-of-standard.ts'

/** What stands in the front matter, told in a line each. */
export const BRIEF = ['classification', 'egg', 'rings'] as const
export type BriefKind = (typeof BRIEF)[number]

export type StandardPiece =
  | {readonly is: 'section'; readonly section: Section; readonly title: string}
  | {readonly is: 'origin' | 'weights' | 'points' | BriefKind}

const TABLES: ReadonlySet<SectionKind> = new Set<SectionKind>(['weights', 'points', ...BRIEF])
const isTable = (kind: SectionKind): kind is 'weights' | 'points' | BriefKind => TABLES.has(kind)

/** A heading that begins as the manner's does, and says more, stays: `Origin and purpose`. So do the headings of two sections about one thing. */
function nameIn(name: string, section: Section, alone: boolean): string {
  return !alone || section.title.toLowerCase().startsWith(name.toLowerCase()) ? section.title : name
}

/** Sections of the keeper's own follow the section that they followed. */
function followed(sections: readonly Section[]): readonly (readonly Section[])[] {
  const runs: Section[][] = []
  for (const section of sections) {
    const last = runs.at(-1)
    if (section.kind === null && last) last.push(section)
    else runs.push([section])
  }
  return runs
}

export function standardOrder(draft: Draft): readonly StandardPiece[] {
  const sections = draft.sections.filter(({title}) => title !== '')
  const plain = (section: Section): StandardPiece => ({is: 'section', section, title: section.title})
  const origin: readonly StandardPiece[] = tellsOrigin(draft) ? [] : [{is: 'origin'}]
  if (draft.manner === null) {
    // without a section on the origin that opens it, one of ours tells it, or holds the facts in brief
    const [opening, ...rest] = sections.filter(section => !isOfFaults(section)), first = opening?.kind === 'origin' ? [plain(opening)] : [{is: 'origin'} as const, ...(opening ? [plain(opening)] : [])]
    return [
      ...first.slice(0, 1), ...BRIEF.map(kind => ({is: kind})), ...first.slice(1), ...rest.map(plain), {is: 'weights'}, {is: 'points'}, ...sections.filter(isOfFaults).map(plain),
    ]
  }
  const runs = followed(sections), alone = (kind: SectionKind): boolean => sections.filter(section => section.kind === kind).length === 1
  const before = runs.filter(([first]) => first?.kind === null).flat().map(plain)
  const parts = MANNERS_OF_STANDARD[draft.manner].parts.flatMap(({kind, name}): StandardPiece[] => [
    ...runs.filter(([first]) => first?.kind === kind).flatMap(run => run.map((section, place): StandardPiece => (place > 0 ? plain(section) : {is: 'section', section, title: nameIn(name, section, alone(kind))}))),
    ...(kind === 'origin' ? origin : isTable(kind) ? [{is: kind}] : []),
  ])
  return [...before, ...parts]
}

/** The name of a table or line, in the draft's manner. */
export const pieceName = (draft: Draft, kind: SectionKind, otherwise: string): string =>
  (draft.manner === null ? otherwise : MANNERS_OF_STANDARD[draft.manner].parts.find(part => part.kind === kind)?.name ?? otherwise)

export const weightsShown = ({manner}: Draft): WeightsShown => (manner === null ? 'kg-then-lb' : MANNERS_OF_STANDARD[manner].weights)
