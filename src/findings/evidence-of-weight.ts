/** Evidence that the birds are even. */
import type {Bird, Requirement, Trait, Wanted} from '../logbook/book.ts'
import {coefficientOfVariationInterval} from '../statistics/coefficient-of-variation.ts'
import {leastWhole} from '../statistics/least-whole.ts'
import {scoreInterval} from '../statistics/score-interval.ts'
import {insideWanted} from './against-standard.ts'
import {isAbout, wordOf} from './asked-about.ts'
import {looksAsked} from './clauses-asked.ts'
import {behind, judged, type Behind, type Finding} from './evidence-found.ts'
import type {Sources} from './evidence-shown.ts'
import {siftByDay} from './evidence-window.ts'
import {onDay} from './next-season.ts'
import {showAge} from './show-age.ts'
import type {EvenPart, ShownEven} from './shown-of-breeding.ts'
import {LEAST_IN_CLASS, spreadIn, type Measured, type RowOf, type SpreadRow} from './spread.ts'
import type {Way} from './ways.ts'

const SLACK = 1e-12
const MOST_BIRDS = 10_000
type Even = Extract<Way, {readonly kind: 'more-even'}>
type SexAsked = 'male' | 'female'
interface Measure {
  readonly trait: Trait
  readonly wanted: Trait['wanted']
}

/**
 * Are the birds of the latest step even enough, in every sex asked about? The coefficient of variation is to be no more than `at-most`, the share within a tenth of the mean no less than `at-least`,
 * the share inside the target and its tolerance no less than `inside-at-least`: whichever are asked, of the trait named, of those of the clauses named, or of every measured one.
 *
 * The figure itself decides, or with `judged-on: cautious` the end of its interval that speaks against the breed. A sex of which too few were weighed leaves it untold.
 */
export function evenWeight(requirement: Requirement, from: Sources): Finding {
  const {atMost, atLeast, insideAtLeast, judgedOn} = requirement, {measures, untoldClauses} = measuresAsked(requirement, from), decidedBy = judgedOn ?? 'estimate'
  const words = requirement.classes.map(name => ({name, word: wordOf(name)})), unknownClasses = words.filter(({word}) => word === null).map(({name}) => name)
  const sexes = (['male', 'female'] as const).filter(sex => requirement.classes.length === 0 || words.some(({word}) => word !== null && (word === 'cock' || word === 'cockerel') === (sex === 'male')))
  const {rows: all, aged, untold} = rowsAsked(requirement, measures, from), {ladder} = from
  const own = all.filter(row => row.sex !== 'all' && sexes.includes(row.sex) && row.step !== 'mixed')
  // steps beside the ladder, such as test matings, are not what is asked about
  const step = (ladder.findLast(each => !each.beside && own.some(row => row.step === each.label && row.spread.kind === 'spread')) ?? ladder.findLast(each => !each.beside && own.some(row => row.step === each.label)))?.label
  if (step === undefined) {
    const [only] = measures
    return judged(null, {kind: 'nothing-recorded', ...(only && {trait: only.trait})}, {aged, ways: measures.length === 0 ? nameOthers(unknownClasses, untoldClauses) : measures.flatMap(({trait}) => sexes.map((sex): Way => weighing(trait, sex, LEAST_IN_CLASS, null, from)))})
  }
  const rows = own.filter(row => row.step === step), here = measures.filter(({trait}) => requirement.trait !== null || requirement.clauses.length > 0 || rows.some(row => row.trait === trait))
  const missing = here.flatMap(({trait}) => sexes.filter(sex => !rows.some(row => row.trait === trait && row.sex === sex)).map(sex => ({trait, sex})))
  const inside = insideAtLeast === null ? [] : rows.flatMap(row => (row.sex === 'all' ? [] : [{trait: row.trait, sex: row.sex, share: insideWanted(row.values, wantedIn(here, row))}]))
  const parts = rows.flatMap(row => partsOf(row, requirement, decidedBy === 'cautious', wantedIn(here, row)))
  const shown: ShownEven = {kind: 'even-weight', step, decidedBy, rows, inside, parts, missing, unknownClasses, untoldClauses, untold}
  if (atMost === null && atLeast === null && insideAtLeast === null) return judged(null, shown, {behind: behindOf(rows, from), aged, ways: [{kind: 'name-figure', earliest: null}]})
  const verdicts = parts.map(({met}) => met), open = verdicts.includes(null) || missing.length + unknownClasses.length + untoldClauses.length + untold > 0
  return judged(verdicts.includes(false) ? false : open ? null : true, shown, {behind: behindOf(rows, from), aged, ways: waysOf(shown, from)})
}

function measuresAsked(requirement: Requirement, {book}: Sources): {readonly measures: readonly Measure[]; readonly untoldClauses: readonly string[]} {
  if (requirement.clauses.length > 0) {
    const {looks, untold} = looksAsked(requirement, book), traits = [...new Set(looks.map(({scored}) => scored))].filter(({kind}) => kind === 'measured')
    // of two clauses for one sex the first holds
    const first = (trait: Trait, sex: SexAsked): Wanted | null => looks.find(look => look.scored === trait && look.trait.wanted[sex] !== null)?.trait.wanted[sex] ?? null
    const others = looks.flatMap(({clause, scored}) => (clause && scored.kind !== 'measured' ? [clause.id] : []))
    return {measures: traits.map(trait => ({trait, wanted: {male: first(trait, 'male'), female: first(trait, 'female')}})), untoldClauses: [...untold, ...others]}
  }
  return {measures: (requirement.trait ? [requirement.trait] : book.traits.filter(({kind}) => kind === 'measured')).map(trait => ({trait, wanted: trait.wanted})), untoldClauses: []}
}

const wantedIn = (measures: readonly Measure[], {trait, sex}: SpreadRow): Wanted | null => (sex === 'all' ? null : measures.find(each => each.trait === trait)?.wanted[sex] ?? null)

/** The rows of the spread; where classes, ages, varieties or days are named, worked anew from the birds that these leave. */
function rowsAsked(requirement: Requirement, measures: readonly Measure[], {book, ladder, spread}: Sources): {readonly rows: readonly SpreadRow[]; readonly aged: Finding['aged']; readonly untold: number} {
  const {classes, ages, varieties} = requirement, all = spread.rows.filter(({trait}) => measures.some(each => each.trait === trait))
  const due = ({bird, hatch}: Pick<Measured, 'bird' | 'hatch'>, {atAge}: Trait) => {
    const born = bird ? bird.hatched : hatch?.on ?? null
    return born && {text: born.text, first: born.first + (atAge ?? 0), last: born.last + (atAge ?? 0)}
  }
  const weighed = all.filter(({sex}) => sex !== 'all').flatMap(({trait, values}) => values.map(value => ({trait, value})))
  const {counted, aged} = siftByDay(weighed, ({trait, value}) => due(value, trait), ({value: {bird, hatch}}) => bird?.at ?? hatch?.at ?? book.project.at, requirement, book.asOf)
  if (counted.length === weighed.length && classes.length === 0 && ages.length === 0 && varieties.length === 0) return {rows: all, aged, untold: 0}
  const labels = ladder.flatMap(step => (step.kind === 'reached' ? [step.label] : [])), wordAges = new Set(classes.map(name => (/^(?:cockerel|pullet)$/.test(wordOf(name) ?? '') ? 'young' : 'grown')))
  const rows = measures.flatMap(({trait}) => {
    const birds = new Set(counted.filter(each => each.trait === trait).map(({value}) => value.bird ?? value.hatch))
    const rowOf: RowOf = of => {
      const isBird = 'kind' in of, on = due(isBird ? {bird: of.kind === 'bird' ? of : null, hatch: null} : {bird: null, hatch: of}, trait)
      if (isBird ? of.kind !== 'bird' || !birds.has(of) : !birds.has(of)) return undefined
      if (on === null) return undefined
      if (isBird) return of.kind === 'bird' && isAbout(requirement, of, on.first, book) === true ? of.step.label : undefined
      // weighed without a band: only its hatch is known
      const age = showAge({hatched: of.on}, on.first), asked = ages.length > 0 ? new Set(ages) : wordAges
      return varieties.length > 0 || age === null || asked.size > 1 || (asked.size === 1 && !asked.has(age)) ? undefined : of.step.label
    }
    return spreadIn({...book, traits: [trait]}, labels, rowOf).rows
  })
  const doubtful = new Set(counted.flatMap(({trait, value: {bird}}) => (bird && isAbout(requirement, bird, due({bird, hatch: null}, trait)?.first ?? book.asOf, book) === null ? [bird] : [])))
  return {rows, aged, untold: doubtful.size}
}

function partsOf(row: SpreadRow, {atMost, atLeast, insideAtLeast}: Requirement, cautious: boolean, wanted: Wanted | null): readonly EvenPart[] {
  const {trait, sex, spread: found, values} = row
  if (sex === 'all') return []
  const part = (of: EvenPart['of'], mark: number, have: number | null, end: number | null, n: number, isWithin: (value: number) => boolean): EvenPart => {
    const held = cautious ? end : have
    // no end of an interval is better than the figure itself
    return {of, trait, sex, mark, have, judged: held, n, met: have !== null && !isWithin(have) ? false : held === null ? null : isWithin(held)}
  }
  const told = found.kind === 'spread' ? found : null, inside = insideWanted(values, wanted), share = inside.kind === 'share' ? inside : null
  return [
    ...(atMost === null ? [] : [part('cv', atMost, told?.cv ?? null, told?.cvInterval?.high ?? null, told?.n ?? values.length, value => value <= atMost + SLACK)]),
    ...(atLeast === null ? [] : [part('within-tenth', atLeast, told?.within10.value ?? null, told?.within10.interval.low ?? null, told?.n ?? values.length, value => value >= atLeast - SLACK)]),
    ...(insideAtLeast === null ? [] : [part('inside', insideAtLeast, share?.value ?? null, share?.interval.low ?? null, share?.total ?? 0, value => value >= insideAtLeast - SLACK)]),
  ]
}

/** Classes and clauses that nobody can be found by. */
const nameOthers = (classes: readonly string[], clauses: readonly string[]): readonly Way[] => [
  ...(classes.length > 0 ? [{kind: 'name-classes', classes, earliest: null} as const] : []), ...(clauses.length > 0 ? [{kind: 'hold-clauses', clauses, earliest: null} as const] : []),
]

function waysOf({parts, missing, unknownClasses, untoldClauses, rows}: ShownEven, from: Sources): readonly Way[] {
  const few = parts.filter(({have, of}) => have === null && of !== 'inside'), once = new Set(few.map(({trait, sex}) => `${trait.id} ${sex}`))
  return [
    ...nameOthers(unknownClasses, untoldClauses),
    ...mostBirds(parts.flatMap(({of, trait, sex, have, mark, n, met}): readonly Even[] => (met === true || have === null ? [] : [{kind: 'more-even', of, trait, sex, have, mark, n, birds: birdsToSettle(of, have, mark, n), sires: 0, earliest: null}]))),
    ...missing.map(({trait, sex}) => weighing(trait, sex, LEAST_IN_CLASS, null, from)),
    ...[...once].flatMap(key => rows.filter(row => `${row.trait.id} ${row.sex}` === key)).map(row =>
      weighing(row.trait, row.sex === 'male' ? 'male' : 'female', row.spread.kind === 'cannot-say' ? Math.max(1, row.spread.need - row.spread.have) : 1, row.step, from)),
    ...parts.filter(({of, have}) => of === 'inside' && have === null).map(({trait, sex}): Way => ({kind: 'give-target', trait, sex, earliest: null})),
  ]
}

/** What more birds would settle is said once a sex: of the most that it takes. */
const mostBirds = (ways: readonly Even[]): readonly Even[] => ways.filter(way => way.birds === null || !ways.some(other => other !== way && other.trait === way.trait && other.sex === way.sex && other.birds !== null
  && (other.birds > (way.birds ?? 0) || (other.birds === way.birds && ways.indexOf(other) < ways.indexOf(way)))))

/** So many of one class in all, as even as these, and the interval would lie on the right side of the mark; null where the figure does not. */
function birdsToSettle(of: EvenPart['of'], have: number, mark: number, n: number): number | null {
  if (of === 'cv' ? have >= mark : have <= mark) return null
  return leastWhole(Math.max(2, n), MOST_BIRDS, birds => (of === 'cv' ? (coefficientOfVariationInterval(have, birds - 1)?.high ?? Infinity) <= mark : scoreInterval(have, birds).low >= mark))
}

/** The first day on which a living bird that was not weighed yet will be of the age. */
function weighing(trait: Trait, sex: SexAsked, more: number, step: string | null, {book, census}: Sources): Way {
  const days = census.alive.filter(bird => bird.sex === sex && bird.step.kind !== 'strain' && (step === null || bird.step.label === step)).flatMap(({hatched}) => (hatched === null ? [] : [hatched.last + (trait.atAge ?? 0)])).filter(day => day > book.asOf)
  return {kind: 'weigh', trait, sex, more, earliest: days.length === 0 ? null : onDay(Math.min(...days))}
}

function behindOf(rows: readonly SpreadRow[], {book}: Sources): Behind {
  const birds: Bird[] = [], files = new Set<string>(), days: number[] = []
  for (const {trait, sex, values} of rows) for (const {bird, hatch} of values) {
    const scores = bird ? [bird.looks.get(trait)?.counted ?? null] : book.looseWeighings.filter(each => each.hatch === hatch && each.sex === sex && each.countsFor.includes(trait))
    if (bird) birds.push(bird)
    for (const score of scores) {
      if (!score) continue
      files.add(score.at.file)
      if (score.on) days.push(score.on.last)
    }
  }
  return behind(birds, [...files].map(file => ({at: {file, path: []}})), days)
}
