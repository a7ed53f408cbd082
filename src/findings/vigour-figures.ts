import type {Depression} from './depression.ts'
import type {JudgedEffect} from './depression-verdicts.ts'
import type {FigureColumn, FiguresTable} from './figures.ts'
import type {Term, TermEffect} from './inbreeding-model.ts'
import type {KeptMeasure, KeptState} from './kept-against-all.ts'
import type {Line} from './crosses.ts'
import type {DifferentialOfSex, SelectionOfTrait} from './selection.ts'
import type {Findings} from './study.ts'

/** The questions of `pinfeather figures` about vigour and choosing. */
export const VIGOUR_QUESTIONS = ['depression', 'selection', 'crosses'] as const
export type VigourQuestion = (typeof VIGOUR_QUESTIONS)[number]

type Row = (string | number | null)[]
const columns = (as: FigureColumn['as'], ...names: string[]): FigureColumn[] => names.map(name => ({name, as}))

export const TERM_WORDS: Readonly<Record<Term, string>> = {chickF: 'F of the chick', damF: 'F of the dam', chickH: 'heterozygosity of the chick', damH: 'heterozygosity of the dam'}
/** harm with the number of tests taken in, or what is left of it */
export const VERDICTS: Readonly<Record<JudgedEffect['verdict'], string>> = {harm: 'harm', 'may-be-chance': 'may be chance: the records cannot tell', 'cannot-tell': 'the records cannot tell', little: 'less than others found', 'no-harm': 'no harm'}
const WANTING = {alike: 'hardly differs', tied: 'not to be told from season, hatch or the lines above', 'too-few': 'too few to say', unsettled: 'no fit was found'} as const
const HOW = {plain: 'binomial regression, φ between hatches or pairs', penalised: 'binomial regression, penalised, φ between hatches or pairs', 'least-squares': 'least squares within contemporaries, family means, errors by pairs'} as const
const SEASONS = {held: 'held', 'not-held': 'not held', one: 'one'} as const

function depressionRow(of: Depression, effect: TermEffect, judged: JudgedEffect | null, tests: number): Row {
  const {outcome, trait, unit, n, count, groups, pairs, mean, leftOut, seasons, extra, how, published} = of, found = effect.kind === 'effect' ? effect : null
  const theirs = effect.term === 'chickF' ? published : null
  return [
    outcome, trait?.id ?? null, TERM_WORDS[effect.term], effect.term === 'chickF' || effect.term === 'damF' ? '10 points more' : '10 points less',
    found?.change ?? null, found?.interval?.low ?? null, found?.interval?.high ?? null, unit, judged && VERDICTS[judged.verdict], effect.kind === 'effect' ? null : WANTING[effect.why],
    found?.p ?? null, judged?.corrected ?? null, tests, count, n, groups, pairs, mean, leftOut, SEASONS[seasons], extra, how && HOW[how], theirs?.low ?? null, theirs?.high ?? null, theirs?.source ?? null,
  ]
}

const UNIT = 7
/** a share in points, or a measure in its unit */
const inUnit = (name: string): FigureColumn => ({name, as: 'measure', asIn: row => (row[UNIT] === 'points' ? 'share' : 'measure')})

/** One row an outcome and what may bear on it; outcomes of which nothing is on record are left away. */
function depression({depression: found, depressionVerdicts: {judged, tests}}: Findings): FiguresTable {
  const effects = found.filter(({n, leftOut}) => n + leftOut > 0).flatMap(of => of.effects.map(effect => ({of, effect}))), by = new Map<TermEffect, JudgedEffect>(judged.map(each => [each.effect, each]))
  return {
    columns: [
      ...columns('text', 'outcome', 'trait', 'effect_of', 'with'), inUnit('change'), inUnit('low'), inUnit('high'), ...columns('text', 'unit', 'verdict', 'why'), ...columns('share', 'p', 'p_corrected'),
      ...columns('count', 'tests', 'count', 'n', 'groups', 'pairs'), inUnit('mean'), ...columns('count', 'left_out'), ...columns('text', 'seasons'), ...columns('measure', 'extra_spread'), ...columns('text', 'method'),
      inUnit('published_low'), inUnit('published_high'), ...columns('text', 'published'),
    ],
    rows: effects.map(({of, effect}) => depressionRow(of, effect, by.get(effect) ?? null, tests)),
  }
}

const SELECTION = ['what', 'step', 'to', 'trait', 'state', 'sex', 'value', 'low', 'high', 'expected', 'unit', 'count', 'total', 'all', 'p', 'p_corrected', 'tests', 'left_out', 'families', 'speaks_of', 'verdict', 'method', 'birds'] as const
type SelectionRow = Partial<Record<(typeof SELECTION)[number], string | number | null>>
/** what is a share of one or, of heritability and recovery, of the whole way */
const SHARES = new Set(['kept', 'realised heritability', 'heritability', 'recovery'])
const asShare = (name: string): FigureColumn => ({name, as: 'measure', asIn: row => (SHARES.has(String(row[0])) && row[SELECTION.indexOf('unit')] === null ? 'share' : 'measure')})

export function keptVerdict({differ, meant, p}: KeptState | KeptMeasure): string {
  if (!differ) return p === null ? 'nothing to tell' : 'no difference told'
  return meant === null ? 'differ, and no target asks for it' : meant ? 'differ, as the target asks' : 'differ, against the target'
}

function keptRow(row: KeptState | KeptMeasure): SelectionRow {
  const {step, trait, kept, all, leftOut, p, corrected, tests} = row
  const common = {what: 'kept', step, trait: trait.id, sex: 'within hatch, step and sex', total: kept, all, p, p_corrected: corrected, tests, left_out: leftOut, verdict: keptVerdict(row)}
  if (row.kind === 'measure') return {...common, value: row.difference, low: row.interval?.low ?? null, high: row.interval?.high ?? null, unit: trait.unit ?? 'marks', count: kept, method: 'kept less the rest, least squares; Holm'}
  const share = row.share.kind === 'share' ? row.share : null
  return {...common, state: row.state, value: share?.value ?? null, low: share?.interval.low ?? null, high: share?.interval.high ?? null, expected: row.expected, count: share?.count ?? 0, method: 'exact, of a blind choice; Wilson score interval; Holm'}
}

function differentialRow(of: SelectionOfTrait, sex: 'male' | 'female', {found, leftOut}: DifferentialOfSex): SelectionRow {
  return {
    ...passageOf(of), what: 'differential', sex, value: found?.differential ?? null, count: found?.bred ?? 0, all: found?.measured ?? 0, left_out: leftOut,
    verdict: found ? null : 'no bird bred from was measured among mates', method: 'weighted by scored chicks',
  }
}

const passageOf = ({passage, trait}: SelectionOfTrait): SelectionRow => ({step: passage.from, to: passage.to, trait: trait.id, unit: trait.unit})

function selectionRows(of: SelectionOfTrait): readonly SelectionRow[] {
  const {passage, male, female, differential, response, birds, families, move, moved, expected} = of, {back} = passage, counted = `${birds.from} ${passage.from}, ${birds.to} ${passage.to}`
  const bred = (sex: string) => [...passage.chicks.keys()].some(bird => bird.sex === sex)
  return [
    ...(bred('male') ? [differentialRow(of, 'male', male)] : []), ...(bred('female') ? [differentialRow(of, 'female', female)] : []),
    {...passageOf(of), what: 'differential', sex: 'both', value: differential, count: (male.found?.bred ?? 0) + (female.found?.bred ?? 0), all: (male.found?.measured ?? 0) + (female.found?.measured ?? 0), method: back ? 'half of the step’s own parents’' : 'mean of the sexes', verdict: differential === null ? 'not known in every sex bred from' : null},
    {
      ...passageOf(of), what: 'response', value: response?.value ?? null, low: response?.interval.low ?? null, high: response?.interval.high ?? null, p: response?.p ?? null, count: birds.to, all: birds.from, families: families?.families ?? null, speaks_of: families?.speaksOf ?? null,
      verdict: response ? null : 'season and selection cannot be told apart', method: back ? `against half way to ${back.id}; Satterthwaite` : 'Welch', birds: counted,
    },
    {...passageOf(of), what: 'move', value: move, expected, count: moved.to, all: moved.from, method: 'means as they stand, the sexes alike', verdict: move === null ? 'a sex of either was not measured' : response ? null : 'season, rearing and choosing in one'},
  ]
}

/** Kept against all, all steps together and then each; by trait and step differential, response and move; then heritability and recovery of type. */
function selection({keptAgainstAll, selection: {passages, realised}, likeness, recovery}: Findings): FiguresTable {
  const rows: readonly SelectionRow[] = [
    ...keptAgainstAll.map(keptRow), ...passages.flatMap(selectionRows),
    ...realised.map(({trait, found}): SelectionRow => ({
      what: 'realised heritability', trait: trait.id, ...(found.kind === 'estimated' ? {value: found.value, low: found.interval?.low ?? null, high: found.interval?.high ?? null} : {verdict: 'nothing was chosen'}), count: found.steps, method: 'cumulated R on cumulated S',
    })),
    ...likeness.map(({trait, parents, found, families, chicks, males, females, leftOut}): SelectionRow => ({
      what: 'heritability', trait: trait.id, sex: parents === 'both' ? 'both parents' : parents, count: families, all: chicks, left_out: leftOut, method: parents === 'both' ? 'pair on both parents, each once' : 'twice parent’s chicks on parent, each once',
      ...(parents === 'both' ? {birds: `${males} cocks, ${females} hens`} : {}),
      ...(found.kind === 'estimated' ? {value: found.heritability.value, low: found.heritability.interval.low, high: found.heritability.interval.high, p: found.slope.p} : {verdict: found.kind === 'few' ? 'too few to say' : 'the parents are alike'}),
    })),
    ...recovery.map(({step, trait, donor, found, expected, birds, together}): SelectionRow => ({
      what: 'recovery', step, trait: trait.id, value: found?.recovery ?? null, low: found?.interval?.low ?? null, high: found?.interval?.high ?? null, expected, count: birds.step, families: together?.families ?? null, speaks_of: together?.speaksOf ?? null, method: 'Fieller',
      birds: `${birds.step} ${step}, ${birds.donor} ${donor.id}, ${birds.recurrent} of the strain crossed back to`,
      verdict: found ? (found.interval ? null : 'the two strains do not differ clearly') : together ? 'too few of one of them, or they have one mean' : 'not reared together',
    })),
  ]
  return {
    columns: [
      ...columns('text', 'what', 'step', 'to', 'trait', 'state', 'sex'), asShare('value'), asShare('low'), asShare('high'), asShare('expected'), ...columns('text', 'unit'), ...columns('count', 'count', 'total', 'all'),
      ...columns('share', 'p', 'p_corrected'), ...columns('count', 'tests', 'left_out', 'families'), ...columns('text', 'speaks_of', 'verdict', 'method', 'birds'),
    ],
    rows: rows.map(row => SELECTION.map(name => row[name] ?? null)),
  }
}

const lineName = ({strain, step}: Line): string => strain?.id ?? step ?? ''

/** One row a cross and measured trait. */
function crosses({crosses: found}: Findings): FiguresTable {
  return {
    columns: [
      ...columns('text', 'one', 'other', 'trait'), ...columns('share', 'heterosis', 'low', 'high', 'p'), ...columns('measure', 'difference', 'mid_parent'), ...columns('text', 'unit'),
      ...columns('count', 'cross_birds', 'one_birds', 'other_birds', 'classes', 'families'), ...columns('text', 'speaks_of', 'method', 'why'),
    ],
    rows: found.map(({lines: [one, other], trait, found: it, birds, classes, families}) => [
      lineName(one), lineName(other), trait.id, it?.heterosis ?? null, it?.interval.low ?? null, it?.interval.high ?? null, it?.p ?? null, it?.difference ?? null, it?.midParent ?? null, trait.unit,
      birds.cross, birds.one, birds.other, classes, families?.families ?? null, families?.speaksOf ?? null, 'delta method, contemporaries only', it ? null : classes === 0 ? 'not reared together' : 'too few of one of them, or all alike',
    ]),
  }
}

const TABLES: Readonly<Record<VigourQuestion, (findings: Findings) => FiguresTable>> = {depression, selection, crosses}

export const vigourTable = (question: VigourQuestion, findings: Findings): FiguresTable => TABLES[question](findings)
