/** Evidence that the birds are even. */
import type {Requirement, Trait, Wanted} from '../logbook/book.ts'
import {FEWEST_FAMILIES} from '../statistics/family-bootstrap.ts'
import {leastWhole} from '../statistics/least-whole.ts'
import {scoreInterval} from '../statistics/score-interval.ts'
import {studentQuantile} from '../statistics/student-t.ts'
import {insideWanted} from './against-standard.ts'
import {wordOf} from './asked-about.ts'
import type {Interval} from './estimate.ts'
import {evenByFamily} from './even-by-family.ts'
import {judged, type Finding} from './evidence-found.ts'
import type {Sources} from './evidence-shown.ts'
import {onDay} from './next-season.ts'
import type {EvenPart, ShownEven} from './shown-of-breeding.ts'
import {LEAST_IN_CLASS, type SpreadRow} from './spread.ts'
import type {Way} from './ways.ts'
import {measuresAsked, rowsAsked, wantedIn, weighingsBehind, type SexAsked} from './weighings-asked.ts'

const SLACK = 1e-12
const MOST_BIRDS = 10_000
type Even = Extract<Way, {readonly kind: 'more-even'}>

/**
 * Are the birds of the latest step even enough, in every sex asked about? The coefficient of variation is to be no more than `at-most`, the share within a tenth of the mean no less than `at-least`,
 * the share inside the target and its tolerance no less than `inside-at-least`: whichever are asked, of the trait named, of those of the clauses named, or of every measured one.
 *
 * The figure itself decides, or with `judged-on: cautious` the end that speaks against the breed of its interval by sire families, of which five are needed. A sex of which too few were weighed,
 * and a measured trait of which nobody was, leave it untold.
 */
export function evenWeight(requirement: Requirement, from: Sources): Finding {
  const {atMost, atLeast, insideAtLeast, judgedOn} = requirement, decidedBy = judgedOn ?? 'estimate'
  const words = requirement.classes.map(name => ({name, word: wordOf(name)})), unknownClasses = words.filter(({word}) => word === null).map(({name}) => name)
  const sexes = (['male', 'female'] as const).filter(sex => requirement.classes.length === 0 || words.some(({word}) => word !== null && (word === 'cock' || word === 'cockerel') === (sex === 'male')))
  const {measures, untoldClauses} = measuresAsked(requirement, sexes, from)
  const {rows: all, aged, untold} = rowsAsked(requirement, measures, from), {ladder} = from
  const own = all.filter(row => row.sex !== 'all' && sexes.includes(row.sex) && row.step !== 'mixed')
  // steps beside the ladder, such as test matings, are not what is asked about
  const step = (ladder.findLast(each => !each.beside && own.some(row => row.step === each.label && row.spread.kind === 'spread')) ?? ladder.findLast(each => !each.beside && own.some(row => row.step === each.label)))?.label
  if (step === undefined) {
    const [only] = measures
    return judged(null, {kind: 'nothing-recorded', ...(only && {trait: only.trait})}, {aged, ways: measures.length === 0 ? nameOthers(unknownClasses, untoldClauses) : measures.flatMap(({trait, sexes: own}) => own.map((sex): Way => weighing(trait, sex, LEAST_IN_CLASS, null, from)))})
  }
  const rows = own.filter(row => row.step === step)
  const missing = measures.flatMap(({trait, sexes: wanted}) => wanted.filter(sex => !rows.some(row => row.trait === trait && row.sex === sex)).map(sex => ({trait, sex})))
  const inside = insideAtLeast === null ? [] : rows.flatMap(row => (row.sex === 'all' ? [] : [{trait: row.trait, sex: row.sex, share: insideWanted(row.values, wantedIn(measures, row))}]))
  const parts = rows.flatMap(row => partsOf(row, requirement, decidedBy === 'cautious', wantedIn(measures, row)))
  const shown: ShownEven = {kind: 'even-weight', step, decidedBy, rows, inside, parts, missing, unknownClasses, untoldClauses, untold}
  if (atMost === null && atLeast === null && insideAtLeast === null) return judged(null, shown, {behind: weighingsBehind(rows, from), aged, ways: [{kind: 'name-figure', earliest: null}]})
  const verdicts = parts.map(({met}) => met), open = verdicts.includes(null) || missing.length + unknownClasses.length + untoldClauses.length + untold > 0
  return judged(verdicts.includes(false) ? false : open ? null : true, shown, {behind: weighingsBehind(rows, from), aged, ways: waysOf(shown, from)})
}

function partsOf(row: SpreadRow, {atMost, atLeast, insideAtLeast}: Requirement, cautious: boolean, wanted: Wanted | null): readonly EvenPart[] {
  const {trait, sex, spread: found, values} = row
  if (sex === 'all') return []
  const told = found.kind === 'spread' ? found : null, inside = insideWanted(values, wanted), share = inside.kind === 'share' ? inside : null, families = cautious ? evenByFamily(row, wanted) : null
  const part = (of: EvenPart['of'], mark: number, have: number | null, plain: Interval | null, n: number, isWithin: (value: number) => boolean): EvenPart => {
    const by = families?.[of] ?? null, interval = by ? by.interval : plain, held = have === null || !by ? have : (of === 'cv' ? interval?.high : interval?.low) ?? null
    // no end of an interval is better than the figure itself
    return {of, trait, sex, mark, have, judged: held, interval, n, families: by && {count: by.families, effective: by.effective}, met: have !== null && !isWithin(have) ? false : held === null ? null : isWithin(held)}
  }
  return [
    ...(atMost === null ? [] : [part('cv', atMost, told?.cv ?? null, told?.cvInterval ?? null, told?.n ?? values.length, value => value <= atMost + SLACK)]),
    ...(atLeast === null ? [] : [part('within-tenth', atLeast, told?.within10.value ?? null, told?.within10.interval ?? null, told?.n ?? values.length, value => value >= atLeast - SLACK)]),
    ...(insideAtLeast === null ? [] : [part('inside', insideAtLeast, share?.value ?? null, share?.interval ?? null, share?.total ?? 0, value => value >= insideAtLeast - SLACK)]),
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
    ...mostBirds(parts.flatMap((part): readonly Even[] => {
      const {of, trait, sex, have, mark, n, met, families, interval} = part
      if (met === true || have === null) return []
      return [{kind: 'more-even', of, trait, sex, have, mark, n, birds: birdsToSettle(part, have), sires: met === null && families && interval === null ? Math.max(1, FEWEST_FAMILIES - families.count) : 0, earliest: null}]
    })),
    ...missing.map(({trait, sex}) => weighing(trait, sex, LEAST_IN_CLASS, null, from)),
    ...[...once].flatMap(key => rows.filter(row => `${row.trait.id} ${row.sex}` === key)).map(row =>
      weighing(row.trait, row.sex === 'male' ? 'male' : 'female', row.spread.kind === 'cannot-say' ? Math.max(1, row.spread.need - row.spread.have) : 1, row.step, from)),
    ...parts.filter(({of, have}) => of === 'inside' && have === null).map(({trait, sex}): Way => ({kind: 'give-target', trait, sex, earliest: null})),
  ]
}

/** What more sires or birds would settle is said once a sex: of the most that it takes. */
const mostBirds = (ways: readonly Even[]): readonly Even[] => ways.filter((way, place) => (way.birds === null && way.sires === 0) || !ways.some((other, at) => other.trait === way.trait && other.sex === way.sex
  && (other.sires > way.sires || (other.sires === way.sires && ((other.birds ?? 0) > (way.birds ?? 0) || ((other.birds ?? 0) === (way.birds ?? 0) && at < place && (other.birds !== null || other.sires > 0)))))))

/** So many of one class in all, as even as these and of as many more sires, and the end by families would lie on the right side of the mark; null where the figure does not, or there is no end. */
function birdsToSettle({of, mark, n, interval, families}: EvenPart, have: number): number | null {
  if (interval === null || !families || (of === 'cv' ? have >= mark : have <= mark)) return null
  const {count, effective} = families, off = Math.log(interval.high / have), t = studentQuantile(0.95, Math.max(FEWEST_FAMILIES, count) - 1)
  return leastWhole(Math.max(2, n), MOST_BIRDS, birds => (of === 'cv' ? have * Math.exp(off * Math.sqrt(n / birds)) <= mark : scoreInterval(have, Math.max(1, (birds * (effective ?? n)) / n), t).low >= mark))
}

/** The first day on which a living bird that was not weighed yet will be of the age. */
function weighing(trait: Trait, sex: SexAsked, more: number, step: string | null, {book, census}: Sources): Way {
  const days = census.alive.filter(bird => bird.sex === sex && bird.step.kind !== 'strain' && (step === null || bird.step.label === step)).flatMap(({hatched}) => (hatched === null ? [] : [hatched.last + (trait.atAge ?? 0)])).filter(day => day > book.asOf)
  return {kind: 'weigh', trait, sex, more, earliest: days.length === 0 ? null : onDay(Math.min(...days))}
}
