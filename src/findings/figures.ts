import type {Bird, Parent} from '../logbook/book.ts'
import type {CannotSay, Share} from './estimate.ts'
import {pairKinship} from './pair-kinship.ts'
import type {Findings} from './study.ts'

/** The questions that `pinfeather figures` answers. */
export const FIGURE_QUESTIONS = ['birds', 'shares', 'spread', 'hatches', 'strains', 'true-bred', 'kinship', 'founders', 'inbreeding', 'clans'] as const
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
  /** where it is not the same in every row */
  readonly asIn?: (row: FiguresTable['rows'][number]) => FigureColumn['as']
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
  const {f, onZ, equivalent, atLeast} = findings.kinship.of(bird)
  return [
    bird.band, bird.sex, bird.step.label, hatched?.text ?? null, parentText(parentage.sires), parentText(parentage.dams),
    f.mean, f.low, f.high, onZ?.mean ?? null, equivalent, bird.id, bird.hatch?.id ?? null,
    bird.strain?.id ?? null, recurrent ? bird.shares.get(recurrent) ?? 0 : null, left?.on?.text ?? null, left?.how ?? null, atLeast ? 'yes' : null,
  ]
}

/** One row a bird, founders too. */
function birds(findings: Findings): FiguresTable {
  return {
    columns: [
      ...columns('text', 'band', 'sex', 'step', 'hatched'), ...columns('parents', 'sire', 'dam'), ...columns('share', 'F', 'F_low', 'F_high', 'F_z'), ...columns('measure', 'equivalent_generations'),
      ...columns('text', 'id', 'hatch', 'strain'), ...columns('share', 'recurrent_share'), ...columns('text', 'left', 'left_how', 'at_least'),
    ],
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
      ...limitColumns('fertility', 'hatch_of_fertile', 'hatch_of_set'), ...columns('text', 'season', 'how', 'set_aside'),
    ],
    rows: hatchResults.hatches.map(({hatch, eggs, fertile, hatched, fertility, hatchOfFertile, hatchOfSet, season, how}) => [
      hatch.id, hatch.pens.map(({pen}) => pen.id).join('+') || null, hatch.step.label, eggs, fertile, hatched,
      ...withLimits(fertility), ...withLimits(hatchOfFertile), ...withLimits(hatchOfSet), season === null ? null : String(season), how, hatch.setAside,
    ]),
  }
}

/**
 * One row a bird, then one row a step: the mean over its chicks, with no band. Shares are of the autosomes; of the Z and of the mother's line
 * they stand behind, for birds alone, with the spread of the true share of the recurrent strain.
 */
function strains({book, strainShares, lineage, closeness}: Findings): FiguresTable {
  const ids = book.strains.map(strain => strain.id), none: Row = ids.flatMap(() => [null, null])
  return {
    columns: [
      ...columns('text', 'band'), ...columns('share', ...ids, 'unknown'), ...columns('text', 'id', 'step'),
      ...columns('share', ...ids.map(id => `Z ${id}`), ...ids.map(id => `dam line ${id}`), 'strain_heterozygosity', 'recurrent_spread'),
    ],
    rows: [
      ...[...strainShares.birds].map(([bird, {shares: found, unknown}]): Row => {
        const {z, damLine, heterozygosity, spread: about} = lineage.of(bird)
        return [bird.band, ...found.values(), unknown, bird.id, bird.step.label, ...z.values(), ...damLine.values(), heterozygosity, about]
      }),
      ...strainShares.steps.map(({step, shares: found, unknown}): Row =>
        [null, ...found.values(), unknown, null, step, ...none, closeness.find(each => each.step === step)?.heterozygosity ?? null, null]),
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

/** the column that the table of kinship is sorted by */
const KINSHIP = 4

/** Every two of these birds once, the closest kin first; the range is over the parents that either may have. */
function kinship({kinship: kin, pedigree, census}: Findings, among: readonly Bird[] = census.alive): FiguresTable {
  const of = pairKinship(pedigree, kin, among)
  return {
    columns: [...columns('text', 'a', 'b', 'sex_a', 'sex_b'), ...columns('share', 'kinship', 'low', 'high'), ...columns('text', 'id_a', 'id_b', 'at_least')],
    rows: among.flatMap((a, index) => among.slice(index + 1).map((b): Row => {
      const {mean, low, high} = of(a, b)
      return [a.band, b.band, a.sex, b.sex, mean, low, high, a.id, b.id, kin.atLeast(a, b) ? 'yes' : null]
    })).sort((one, other) => Number(other[KINSHIP]) - Number(one[KINSHIP])),
  }
}

/** One row a founder, then one row a figure of them all, and one a strain. */
function foundersTable({founders}: Findings): FiguresTable {
  const figure = (name: string, value: number, strain: string | null = null): Row => [name, null, strain, null, null, null, null, value, null]
  return {
    columns: [...columns('text', 'figure', 'band', 'strain'), ...columns('share', 'share'), ...columns('count', 'cocks', 'hens', 'unsexed'), {name: 'value', as: 'measure', asIn: ([figure]) => (figure === 'mean kinship' ? 'share' : 'measure')}, ...columns('text', 'id')],
    rows: founders === null ? [] : [
      ...founders.founders.map(({bird, strain, share, cocks, hens, unsexed}): Row => ['founder', bird.band, strain?.id ?? null, share, cocks, hens, unsexed, null, bird.id]),
      ...(founders.unknown.count > 0 ? [['unknown parents', null, null, founders.unknown.share, null, null, null, founders.unknown.count, null]] : []),
      figure('effective founders', founders.effectiveFounders), figure('effective ancestors, low', founders.effectiveAncestors.low),
      figure('effective ancestors, high', founders.effectiveAncestors.high), figure('founder genomes', founders.founderGenomes), figure('mean kinship', founders.meanKinship),
      ...founders.strains.map(({strain, effectiveFounders}) => figure('effective founders', effectiveFounders, strain.id)),
    ],
  }
}

function inbreeding({closeness}: Findings): FiguresTable {
  return {
    columns: [
      ...columns('text', 'step', 'inter_se'), ...columns('count', 'birds', 'doubtful', 'at_least'), ...columns('share', 'F', 'F_low', 'F_high', 'highest_F'),
      ...columns('text', 'highest'), ...columns('share', 'kinship', 'F_z', 'strain_heterozygosity'), ...columns('measure', 'equivalent_generations'), ...columns('text', 'rate_since'),
      ...columns('share', 'rate', 'own_rate'), ...columns('measure', 'realised_size', 'realised_size_se'),
    ],
    rows: closeness.map(({step, interSe, birds: count, doubtful, atLeast, mean, meanLow, meanHigh, most, kinship: kin, onZ, heterozygosity, generations, rate, realised}) => [
      step, interSe > 0 ? 'yes' : 'no', count, doubtful, atLeast, mean, meanLow, meanHigh, most.f, most.bird.band, kin, onZ?.mean ?? null, heterozygosity, generations,
      rate?.since ?? null, rate?.value ?? null, realised && realised.count > 0 ? realised.rate : null,
      realised && typeof realised.size === 'number' ? realised.size : null, realised?.standardError ?? null,
    ]),
  }
}

/** One row a way of mating and generation (in rolling pens a year), in the order of the systems, with the year of its chicks. */
function clans({rotation}: Findings): FiguresTable {
  return {
    columns: [...columns('text', 'system'), ...columns('count', 'generation'), ...columns('share', 'F', 'kinship', 'rate'), ...columns('text', 'year', 'passes_limit')],
    rows: (rotation?.systems ?? []).flatMap(({system, course, passes}) => course.map(({season, inbreeding: f, kinship: kin, rate}): Row =>
      [system, season, f, kin, rate, String((rotation?.season ?? 0) + season), passes === null ? null : String(passes)])),
  }
}

const TABLES: Readonly<Record<FigureQuestion, (findings: Findings) => FiguresTable>> = {birds, shares, spread, hatches, strains, 'true-bred': trueBred, kinship, founders: foundersTable, inbreeding, clans}

/** The answer to a question as columns and rows, in a steady order. What each figure means stands in the file of its finding. */
export function figuresTable(question: FigureQuestion, findings: Findings): FiguresTable {
  return TABLES[question](findings)
}

/** The kinship of two birds alone, living or not, as `kinship` gives it. */
export const pairTable = (findings: Findings, a: Bird, b: Bird): FiguresTable => kinship(findings, [a, b])
