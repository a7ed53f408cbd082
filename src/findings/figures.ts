import type {Bird, Parent} from '../logbook/book.ts'
import type {CannotSay, Share} from './estimate.ts'
import type {Findings} from './study.ts'

/** The questions that `pinfeather figures` answers. */
export const FIGURE_QUESTIONS = ['birds', 'shares', 'spread', 'hatches', 'strains', 'true-bred'] as const
export type FigureQuestion = (typeof FIGURE_QUESTIONS)[number]

/** A finding as a plain table: full precision, shares as fractions, null where nothing can be said. */
export interface FiguresTable {
  readonly columns: readonly FigureColumn[]
  readonly rows: readonly (readonly (string | number | null)[])[]
}

export interface FigureColumn {
  readonly name: string
  /** how a rounded table prints it; a measure is in its trait's unit, parents are bands, each with its chance where uncertain */
  readonly as: 'text' | 'parents' | 'count' | 'share' | 'measure'
}

type Row = (string | number | null)[]
const columns = (as: FigureColumn['as'], ...names: string[]): FigureColumn[] => names.map(name => ({name, as}))

/** value, low, high */
const withLimits = (share: Share | CannotSay): Row => (share.kind === 'share' ? [share.value, share.interval.low, share.interval.high] : [null, null, null])
const limitColumns = (...names: string[]): FigureColumn[] => names.flatMap(name => columns('share', name, `${name}_low`, `${name}_high`))

/** The band of a certain parent; of an uncertain one every candidate with its chance; null when none is in the book. */
function parentText(parents: readonly Parent[]): string | null {
  const [first] = parents
  if (!first) return null
  if (parents.length === 1 && first.chance >= 1 - 1e-12) return first.bird.band
  return parents.map(({bird, chance}) => `${bird.band}:${chance}`).join(' ')
}

function birdRow(bird: Bird, findings: Findings): Row {
  const {recurrent} = findings.book.project
  const {hatched, left, parentage} = bird
  return [
    bird.band, bird.sex, bird.step.label, hatched?.text ?? null, parentText(parentage.sires), parentText(parentage.dams), bird.id, bird.hatch?.id ?? null,
    bird.strain?.id ?? null, recurrent ? bird.shares.get(recurrent) ?? 0 : null, left?.on?.text ?? null, left?.how ?? null,
  ]
}

/** One row a bird, founders too. */
function birds(findings: Findings): FiguresTable {
  return {
    columns: [...columns('text', 'band', 'sex', 'step', 'hatched'), ...columns('parents', 'sire', 'dam'), ...columns('text', 'id', 'hatch', 'strain'), ...columns('share', 'recurrent_share'), ...columns('text', 'left', 'left_how')],
    rows: findings.book.birds.map(bird => birdRow(bird, findings)),
  }
}

function shares({shares: found}: Findings): FiguresTable {
  return {
    columns: [...columns('text', 'step', 'trait', 'state', 'sex'), ...columns('count', 'count', 'total'), ...columns('share', 'share', 'low', 'high')],
    rows: found.flatMap(({step, trait, sex, states}) => states.map(({state, count, share}) => [step, trait.id, state, sex, count, share.total, ...withLimits(share)])),
  }
}

/** One row a step, trait and sex with at least one class large enough to say anything. */
function spread({spread: {rows}}: Findings): FiguresTable {
  return {
    columns: [
      ...columns('text', 'step', 'trait', 'sex'), ...columns('count', 'n'), ...columns('measure', 'mean', 'sd'),
      ...columns('share', 'cv', 'within10', 'cv_low', 'cv_high'), ...columns('count', 'classes', 'left_out'),
    ],
    rows: rows.flatMap(({step, trait, sex, spread: found}) => {
      if (found.kind === 'cannot-say') return []
      const {n, mean, sd, cv, within10, cvInterval, classes, leftOut} = found
      // measured and set aside; birds that nobody measured are counted on the pages
      const aside = leftOut.reduce((sum, {why, count}) => sum + (why === 'small-class' || why === 'sex-unknown' || why === 'outside-window' ? count : 0), 0)
      return [[step, trait.id, sex, n, mean, sd, cv, within10.value, cvInterval?.low ?? null, cvInterval?.high ?? null, classes.length, aside]]
    }),
  }
}

function hatches({hatchResults}: Findings): FiguresTable {
  return {
    columns: [
      ...columns('text', 'hatch', 'pen', 'step'), ...columns('count', 'eggs', 'fertile', 'hatched'),
      ...limitColumns('fertility', 'hatch_of_fertile', 'hatch_of_set'), ...columns('text', 'season', 'how'),
    ],
    rows: hatchResults.hatches.map(({hatch, eggs, fertile, hatched, fertility, hatchOfFertile, hatchOfSet, season, how}) => [
      hatch.id, hatch.pens.map(({pen}) => pen.id).join('+') || null, hatch.step.label, eggs, fertile, hatched,
      ...withLimits(fertility), ...withLimits(hatchOfFertile), ...withLimits(hatchOfSet), season === null ? null : String(season), how,
    ]),
  }
}

/** One row a bird, then one row a step: the mean over its chicks, with no band. */
function strains({book, strainShares}: Findings): FiguresTable {
  return {
    columns: [...columns('text', 'band'), ...columns('share', ...book.strains.map(strain => strain.id), 'unknown'), ...columns('text', 'id', 'step')],
    rows: [
      ...[...strainShares.birds].map(([bird, {shares: found, unknown}]): Row => [bird.band, ...found.values(), unknown, bird.id, bird.step.label]),
      ...strainShares.steps.map(({step, shares: found, unknown}): Row => [null, ...found.values(), unknown, null, step]),
    ],
  }
}

function trueBred({trueBred: {steps}}: Findings): FiguresTable {
  return {
    columns: [
      ...columns('text', 'step', 'inter_se'), ...columns('count', 'passes', 'fails', 'part_scored', 'lost', 'too_young', 'unlisted'),
      ...columns('share', 'rate', 'low', 'high', 'if_all_fail', 'if_all_pass'), ...columns('count', 'sires'),
    ],
    rows: steps.map(({step, interSe, passes, fails, partScored, lost, tooYoung, unlisted, rate, ifAllFail, ifAllPass, sires}) => [
      step, interSe ? 'yes' : 'no', passes, fails, partScored, lost, tooYoung, unlisted, ...withLimits(rate),
      ifAllFail.kind === 'share' ? ifAllFail.value : null, ifAllPass.kind === 'share' ? ifAllPass.value : null, sires,
    ]),
  }
}

const TABLES: Readonly<Record<FigureQuestion, (findings: Findings) => FiguresTable>> = {birds, shares, spread, hatches, strains, 'true-bred': trueBred}

/** The answer to a question as columns and rows, in a steady order. What each figure means stands in the file of its finding. */
export function figuresTable(question: FigureQuestion, findings: Findings): FiguresTable {
  return TABLES[question](findings)
}
