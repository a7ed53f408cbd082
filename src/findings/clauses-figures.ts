import type {Clause, Section} from '../logbook/book.ts'
import type {ClauseShare} from './clause-counts.ts'
import type {ClauseBeside} from './clauses.ts'
import type {FigureColumn, FiguresTable} from './figures.ts'
import {recordPlaces} from './record-places.ts'
import type {Findings} from './study.ts'

type Cell = string | number | null
const columns = (as: FigureColumn['as'], ...names: string[]): FigureColumn[] => names.map(name => ({name, as}))

const COLUMNS = [
  ...columns('text', 'clause', 'section', 'trait', 'mandatory', 'if_missed', 'step', 'sex', 'words'), ...columns('count', 'count', 'total'), ...columns('share', 'share', 'low', 'high', 'family_low', 'family_high'),
  ...columns('count', 'accepted', 'unscored', 'sex_unknown', 'variety_unknown', 'other_words'), ...columns('text', 'under_draft', 'birds', 'records'),
]

/**
 * One row a clause, step and sex, the worst clause first, and of each the latest step before the earlier ones and all steps together; then those scored under other words of it; then the clauses that nobody
 * scored, with nothing counted. `birds` are the bands of those that missed it.
 */
export function clausesTable({clauses: {scored, unscored, steps}, book}: Findings): FiguresTable {
  const places = (row: ClauseShare): string | null => recordPlaces(row.behind(), book.tellableFiles)
  const order = [...steps].reverse(), placeOf = ({step}: ClauseShare): number => (step === null ? order.length : order.indexOf(step))
  const inOrder = (one: ClauseBeside): readonly ClauseShare[] => [...one.rows].sort((a, b) => placeOf(a) - placeOf(b))
  const rowsOf = (one: ClauseBeside): Cell[][] => [
    ...inOrder(one).map(row => cells(one, row, 'as now', row.sex === 'all' && row.step === one.latest.step ? one.families : null)),
    ...one.otherWords.map(({clause, all}) => cells(one, all, clause ? 'as they were' : 'none', null)),
  ]
  function cells({clause, section}: {readonly clause: Clause; readonly section: Section | null}, row: ClauseShare, words: string, families: ClauseBeside['families']): Cell[] {
    const {share} = row
    return [
      ...nameOf(clause, section), row.step ?? 'all', row.sex, words, share.kind === 'share' ? share.count : 0, share.kind === 'share' ? share.total : 0,
      ...(share.kind === 'share' ? [share.value, share.interval.low, share.interval.high] : [null, null, null]), ...(families?.kind === 'families' ? [families.low, families.high] : [null, null]),
      row.accepted, share.leftOut.reduce((sum, {count}) => sum + count, 0), row.sexUnknown, row.varietyUnknown, row.otherWords, row.drafts.join(' ') || null,
      row.missed.flatMap(chick => (chick.kind === 'bird' ? [chick.band] : [])).join(' ') || null, places(row),
    ]
  }
  return {
    columns: COLUMNS,
    rows: [
      ...scored.flatMap(rowsOf),
      ...unscored.flatMap(one => [
        [...nameOf(one.clause, one.section), null, null, one.why.replaceAll('-', ' '), 0, 0, ...Array.from<null>({length: COLUMNS.length - 10}).fill(null)],
        ...one.otherWords.map(({clause, all}) => cells(one, all, clause ? 'as they were' : 'none', null)),
      ]),
    ],
  }
}

const nameOf = (clause: Clause, section: Section | null): Cell[] => [clause.id, section?.title ?? null, clause.trait?.id ?? null, clause.mandatory ? 'yes' : 'no', clause.ifMissed]

