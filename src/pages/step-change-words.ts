/** What changed from one step to another, in plain words: truer or not, more even or not, better graded or not, how far to believe it, and everything that was compared in a table. */
import {spreadsCompared, type ChangeOfSpread} from '../findings/spread-change.ts'
import type {ScorersInDoubt} from '../findings/scorers-in-doubt.ts'
import type {ChangeOfMarks, ChangeOfShare, StepChange} from '../findings/step-change.ts'
import type {Trait} from '../logbook/book.ts'
import {FEWEST_FAMILIES} from '../statistics/family-bootstrap.ts'
import {pWords} from './chance-words.ts'
import {traitPath} from './links.ts'
import {counted, figured, countWord, listWords, NOTHING, ofWords, percent, percentSign, rounded, sentence, signed, sizeRange} from './numbers.ts'
import {mainMeasure} from './main-measure.ts'
import type {Cell, Table} from './page.ts'
import {SEX_ROWS} from './sex-words.ts'

/** One question answered: the verdict, and the figures behind it. */
export interface Said {
  readonly head: string
  readonly words: string
}

export interface StepChangeView {
  /** `Truer and more even than BC3F2?`; where shares go by plan `More even than BC3?` */
  readonly title: string
  /** truer; more even; better graded, where grades were given */
  readonly said: readonly Said[]
  /** how far to believe it, plain sentences */
  readonly believe: readonly string[]
  /** all that was compared, a row each */
  readonly table: Table | null
  /** what could not be compared, and why; empty where all could */
  readonly left: string
}

/** `more even`, `cannot be told` */
export const EVEN_VERDICT: Readonly<Record<ChangeOfSpread['verdict'], string>> = {'more-even': 'more even', 'less-even': 'less even', 'cannot-tell': 'cannot be told'}

type Read = {readonly difference: number; readonly low: number; readonly high: number} | null

/** The difference that speaks, and its interval. */
export const readOf = ({plain, byFamilies, speaksOf}: ChangeOfShare): Read => (speaksOf === 'families' ? byFamilies : plain)

/** `+27.1 points (13.4 to 39.9)` */
export const pointsWords = (read: NonNullable<Read>): string => `${signed(percent(read.difference))} points (${sizeRange(percent(read.low), percent(read.high))})`

const rateOf = ({count: {k, n}}: ChangeOfShare['from']): string => `${ofWords(k, n)} (${percentSign(k / n)})`
const trueBredOf = ({shares}: StepChange): ChangeOfShare | undefined => shares.find(({by}) => by === 'true-bred')

/** Of a measured trait the row that compares like with like. */
export const spreadsToTell = ({spreads}: StepChange): readonly ChangeOfSpread[] => spreadsCompared(spreads)

/** Of a graded trait the row of both sexes, where both steps were graded. */
export const marksToTell = ({marks}: StepChange): readonly ChangeOfMarks[] => marks.filter(({sex, test}) => sex === 'all' && test.kind !== 'few')

/** What is said holds for these chicks only; empty where families are drawn. */
const theseOnly = (families: boolean): string => (families ? '' : ', as far as these chicks go')
const enough = (...rows: readonly {readonly from: {readonly families: number}; readonly to: {readonly families: number}}[]): boolean => rows.every(({from, to}) => Math.min(from.families, to.families) >= FEWEST_FAMILIES)

function truer(change: StepChange): Said {
  const {from, to, outside} = change, found = trueBredOf(change), read = found ? readOf(found) : null
  if (!found || !read) return {head: 'Truer? Nothing to compare.', words: `No chick of ${found && found.from.count.n > 0 ? to : from} was scored for all it could show of what is required.`}
  const rates = `Right in all they could show were ${rateOf(found.to)} of ${to} and ${rateOf(found.from)} of ${from}`
  if (outside.length > 0) return {head: 'Truer? Not asked of a cross.', words: `${rates}; as ${listWords(outside)} ${outside.length === 1 ? 'was' : 'were'} not mated inside the line, that follows the plan.`}
  const families = found.speaksOf === 'families', figures = `${rates}: ${pointsWords(read)}${families ? ', by sire families' : ''}.`
  if (found.verdict === 'truer' || found.verdict === 'less-true') return {head: `${found.verdict === 'truer' ? 'Truer' : 'Less true'}${theseOnly(families)}.`, words: figures}
  const alone = families && found.plain !== null && (found.plain.low > 0 || found.plain.high < 0) ? ` Chick by chick it would be told (${sizeRange(percent(found.plain.low), percent(found.plain.high))}), but families differ by as much.` : ''
  return {head: 'Truer? That cannot be told.', words: figures + alone}
}

const cvOf = ({spread}: ChangeOfSpread['from']): string => (spread?.kind === 'spread' ? percentSign(spread.cv) : NOTHING)
const ofSex = ({sex, trait}: {readonly sex: keyof typeof SEX_ROWS; readonly trait: Trait}): string => (sex === 'all' || trait.seenIn !== null ? '' : ` of ${SEX_ROWS[sex]}`)
/** `0.97 times (0.61 to 1.42)` */
export const timesWords = ({variations}: ChangeOfSpread): string => (variations ? `${rounded(variations.ratio, 2)} times (${rounded(variations.interval.low, 2)} to ${rounded(variations.interval.high, 2)})` : NOTHING)
/** `P 0.33 by families`; empty where nothing strays */
export const evenP = ({correctedP, speaksOf}: ChangeOfSpread): string => (correctedP === null ? '' : `${pWords(correctedP)}${speaksOf === 'families' ? ' by families' : ''}`)
const spreadP = (row: ChangeOfSpread): string => (evenP(row) === '' ? '' : `, ${evenP(row)}`)
/** The interval of the CVs tells a change and the test none: one odd bird sways the one and not the other, or families differ by as much. */
const oddBird = ({variations, verdict}: ChangeOfSpread): boolean => verdict === 'cannot-tell' && variations !== null && (variations.interval.low > 1 || variations.interval.high < 1)
/** Measures of which nothing is told are in the table alone beyond so many. */
const MOST_SAID = 2

function moreEven(change: StepChange): Said {
  const rows = spreadsToTell(change), of = (verdict: ChangeOfSpread['verdict']) => rows.filter(row => row.verdict === verdict)
  const more = of('more-even'), less = of('less-even'), told = [...more, ...less], {from, to} = change, [first] = rows
  if (!first) return {head: 'More even? Nothing to compare.', words: 'No measure has five birds of one sex reared alike in both steps.'}
  const head = told.length === 0 ? 'More even? That cannot be told.' : `${less.length === 0 ? 'More even' : more.length === 0 ? 'Less even' : 'More even in part, less even in part'}${theseOnly(enough(...told))}.`
  const cvs = (row: ChangeOfSpread): string => (row.from.spread?.kind === 'spread' && row.to.spread?.kind === 'spread' && row.from.spread.cv + row.to.spread.cv === 0
    ? 'no bird of either differs from its mates' : `coefficient of variation ${cvOf(row.to)} in ${to}, ${cvOf(row.from)} in ${from}${row.variations ? `, ${timesWords(row)}` : ''}${spreadP(row)}`)
  const one = (row: ChangeOfSpread): string => `${row.trait.name}${ofSex(row)}${told.length === 0 ? ':' : `, ${EVEN_VERDICT[row.verdict]}:`} ${cvs(row)}.${oddBird(row) ? ' The CVs alone would tell a change, but a bird unlike its mates may make it, or the families.' : ''}`
  const main = mainMeasure(rows.map(({trait}) => trait)), rest = of('cannot-tell').toSorted((a, b) => Number(b.trait === main) - Number(a.trait === main))
  const shown = [...told, ...rest].slice(0, Math.max(MOST_SAID, told.length)), room = told.length === 0 && rest[0]?.variations && !shown.some(oddBird) ? ' Anything between the limits in brackets fits the records.' : ''
  return {head, words: shown.map(one).join(' ') + room}
}

/** Is a higher grade what the standard wants? Null where it wants the middle, or nothing. */
function higherIsBetter({wanted: {male, female}, states}: Trait): boolean | null {
  const wanted = female ?? male
  if (wanted === null) return null
  if (wanted.kind !== 'states') return wanted.kind === 'at-least' ? true : wanted.kind === 'at-most' ? false : null
  const [least, most] = [wanted.states.includes(states[0] ?? ''), wanted.states.includes(states.at(-1) ?? '')]
  return least === most ? null : most
}

/** `graded higher, for the better`, `cannot be told`, `too few sire families` */
export function gradeVerdict({trait, verdict}: ChangeOfMarks): string {
  if (verdict === 'cannot-tell') return 'cannot be told'
  if (verdict === 'too-few-families') return 'cannot be told of so few sire families'
  const better = higherIsBetter(trait)
  return `graded ${verdict}${better === null ? '' : better === (verdict === 'higher') ? ', for the better' : ', for the worse'}`
}

const middleOf = ({middle}: ChangeOfMarks['from']): string => (middle ? middle.is.join(' to ') : NOTHING)
/** `P 0.12 by families`; empty where all are alike or families are too few */
export const gradeP = ({correctedP}: ChangeOfMarks): string => (correctedP === null ? '' : `${pWords(correctedP)} by families`)
const oftenWords = (row: ChangeOfMarks): string => (row.test.kind === 'compared' ? `${percentSign(row.test.superiority)}${gradeP(row) === '' ? '' : `, ${gradeP(row)}`}` : 'all alike')

export type Doubts = ReadonlyMap<Trait, ScorersInDoubt>
/** `Who grade neatness agree poorly (kappa 0.19; 46 of 76 repeated scorings differ), …` */
function doubtWords(rows: readonly ChangeOfMarks[], doubts: Doubts): readonly string[] {
  return rows.flatMap(({trait}) => {
    const doubt = doubts.get(trait)
    if (!doubt) return []
    const why = [...(doubt.kappa === null ? [] : [`kappa ${rounded(doubt.kappa, 2).replace('-', '−')}`]), ...(doubt.differing ? [`${ofWords(doubt.differing.count, doubt.differing.total)} repeated scorings differ`] : [])]
    return [`Those who grade ${trait.name.toLowerCase()} agree poorly (${why.join('; ')}): a change may be one of eyes.`]
  })
}

/** `higher in type (63.0% above)` */
const lieWords = (row: ChangeOfMarks): string => {
  const share = row.test.kind === 'compared' ? row.test.superiority : 0.5, name = row.trait.name.toLowerCase()
  return share === 0.5 ? `alike in ${name}` : `${share > 0.5 ? 'higher' : 'lower'} in ${name} (${percentSign(Math.max(share, 1 - share))} ${share > 0.5 ? 'above' : 'below'})`
}

function better(change: StepChange, doubts: Doubts): readonly Said[] {
  const rows = marksToTell(change), told = rows.filter(({verdict}) => verdict === 'higher' || verdict === 'lower'), {from, to} = change
  if (rows.length === 0) return []
  const names = (verdict: ChangeOfMarks['verdict']): string => listWords(rows.filter(row => row.verdict === verdict).map(({trait}) => trait.name.toLowerCase()))
  const few = rows.filter(({verdict}) => verdict === 'too-few-families').toSorted((a, b) => awayFromHalf(b) - awayFromHalf(a)), open = names('cannot-tell')
  const untold = [
    ...(open === '' ? [] : [`${sentence(open)} cannot be told apart.`]),
    ...(few.length === 0 ? [] : [`Against those of ${from} these chicks of ${to} lie ${listWords(few.slice(0, MOST_SAID).map(lieWords))}, ties half; of few cocks that may be their doing alone.`]),
  ]
  const doubt = doubtWords(told.length > 0 ? told : few.slice(0, MOST_SAID), doubts)
  if (told.length === 0) return [{head: `Better graded? ${few.length > 0 && open === '' ? 'That cannot be told of so few sire families.' : 'That cannot be told.'}`, words: [...untold, ...doubt].join(' ')}]
  const good = told.map(({trait, verdict}) => { const up = higherIsBetter(trait); return up === null ? null : up === (verdict === 'higher') })
  const head = `${good.every(each => each === true) ? 'Better graded' : good.every(each => each === false) ? 'Worse graded' : 'Graded otherwise'}${told.every(({trait}) => doubts.has(trait)) ? ', if those who grade can be believed' : ''}.`
  const said = told.map(row => `${row.trait.name}: ${gradeVerdict(row)}, the middle one ${middleOf(row.to)} in ${to}, ${middleOf(row.from)} in ${from} (a chick of ${to} above one of its sex of ${from} in ${oftenWords(row)}).`)
  return [{head, words: [...said, ...doubt, ...untold].join(' ')}]
}

const awayFromHalf = ({test}: ChangeOfMarks): number => (test.kind === 'compared' ? Math.abs(test.superiority - 0.5) : 0)

function believe(change: StepChange): readonly string[] {
  const {from, to, outside, siresOfBoth} = change, found = trueBredOf(change), even = spreadsToTell(change), marks = marksToTell(change)
  const judged = outside.length === 0 ? change.shares.filter(({plain}) => plain !== null) : [], compared = judged.length + even.length + marks.length
  if (compared === 0) return []
  const sires = (count: number): string => counted(count, 'sire family', 'sire families')
  const come = !found ? '' : found.from.families === found.to.families ? `each comes of ${sires(found.to.families)}` : `${from} comes of ${sires(found.from.families)} and ${to} of ${sires(found.to.families)}`
  const families = !found || judged.length === 0 ? [] : found.speaksOf === 'families' ? [`A committee may read the trueness as said of birds bred like these: ${come}, and the interval is drawn by families.`]
    : [`A committee should read the trueness as said of these chicks only: ${come}, and under ${countWord(FEWEST_FAMILIES)} in either nothing can be said of birds bred like these.`]
  const both = siresOfBoth === 0 || judged.length === 0 ? [] : [`${sentence(counted(siresOfBoth, 'sire'))} may have chicks in both, so that the families are not wholly apart.`]
  const birds = [
    ...(even.some(({speaksOf, p}) => speaksOf === 'these-chicks' && p !== null) ? ['Measures of few sires are taken bird by bird, and err up to twice as often as P says where sibs are much alike.'] : []),
    ...(even.length === 0 ? [] : ['Each bird is held against hatch mates of its sex, so that a good season alone makes none more even; one odd bird may sway the times, which are of CVs, and hardly P, which is of how far birds stray.']),
    ...(marks.length === 0 ? [] : ['Grades are held against those of the same sex, and may move with the season and with who gave them.']),
  ]
  const several = [...(even.filter(({correctedP}) => correctedP !== null).length > 1 ? ['measures'] : []), ...(marks.filter(({correctedP}) => correctedP !== null).length > 1 ? ['grades'] : [])], plain = judged.length === 0 ? '' : judged.length === 1 ? ' of the share' : ' of a share'
  return [...families, ...both, ...birds, `${sentence(counted(compared, 'thing was', 'things were'))} compared${several.length === 0 ? '' : `, P of ${listWords(several)} corrected for their number`}: where nothing has changed, one ${several.length === 0 || plain === '' ? 'such verdict' : `verdict${plain}`} in twenty errs.`]
}

const link = (trait: Trait, more: string): Cell => ({text: `${trait.name}${more}`, link: traitPath(trait)})
const shareCell = ({count: {k, n}}: ChangeOfShare['from']): string => (n === 0 ? NOTHING : `${ofWords(k, n)}, ${percentSign(k / n)}`)

const SHARE_VERDICT: Readonly<Record<ChangeOfShare['verdict'], string>> = {truer: 'truer', 'less-true': 'less true', 'cannot-tell': 'cannot be told', 'by-plan': 'by plan'}

function tableOf(change: StepChange, doubts: Doubts): Table | null {
  const {from, to, outside} = change
  const rows: readonly (readonly Cell[])[] = [
    ...change.shares.flatMap((row): readonly (readonly Cell[])[] => {
      const read = outside.length > 0 ? null : readOf(row)
      return read === null ? [] : [[row.by === 'true-bred' ? 'Everything required' : link(row.by, ''), shareCell(row.from), shareCell(row.to), `${pointsWords(read)}: ${SHARE_VERDICT[row.verdict]}`]]
    }),
    ...spreadsToTell(change).map((row): readonly Cell[] => [link(row.trait, `${ofSex(row)}, CV`), birdsCell(row.from), birdsCell(row.to), `${row.variations ? timesWords(row) : 'no spread to compare'}${spreadP(row)}: ${EVEN_VERDICT[row.verdict]}`]),
    ...marksToTell(change).map((row): readonly Cell[] => [link(row.trait, ', middle grade'), `${middleOf(row.from)}, ${row.from.scored} graded`, `${middleOf(row.to)}, ${row.to.scored} graded`, `higher in ${oftenWords(row)}: ${gradeVerdict(row)}${doubts.has(row.trait) ? '; scorers agree poorly' : ''}`]),
  ]
  return rows.length === 0 ? null : {columns: [{head: 'Compared'}, {head: from}, {head: to}, {head: 'Change, with its 95% interval'}], rows}
}

const birdsIn = ({spread}: ChangeOfSpread['from']): number => (spread?.kind === 'spread' ? spread.n : 0)

const birdsCell = (of: ChangeOfSpread['from']): string => `${cvOf(of)}, ${figured(birdsIn(of), 'bird')}`

function leftWords(change: StepChange): string {
  const told = new Set([...spreadsToTell(change), ...marksToTell(change)].map(({trait}) => trait))
  const few = [...new Set(change.spreads.map(({trait}) => trait))].filter(trait => !told.has(trait)), none = [...new Set(change.marks.map(({trait}) => trait))].filter(trait => !told.has(trait))
  const names = (traits: readonly Trait[]): string => listWords(traits.map(({name}) => name.toLowerCase()))
  return [...(few.length === 0 ? [] : [`${names(few)}, for want of five birds of one sex reared alike in both`]), ...(none.length === 0 ? [] : [`${names(none)}, graded in one of the two only`])].join('; ')
}

/** @param doubts  graded traits whose scorers agree poorly, as `scorersInDoubt` gives them */
export function stepChangeView(change: StepChange, doubts: Doubts = new Map()): StepChangeView {
  const left = leftWords(change)
  return {
    title: `${change.outside.length > 0 ? 'More' : 'Truer and more'} even than ${change.from}?`, said: [truer(change), moreEven(change), ...better(change, doubts)], believe: believe(change), table: tableOf(change, doubts),
    left: left === '' ? '' : `Not compared: ${left}.`,
  }
}

/** One sentence: `Against BC3F2, BC3F3 is truer (94.8% after 67.7%), as far as these chicks go; whether it is more even cannot be told.` Evenness of few sire families is no lead. */
export function changeInShort(change: StepChange): string {
  const found = trueBredOf(change), rows = spreadsToTell(change)
  const of = (which: ChangeOfSpread['verdict']): readonly ChangeOfSpread[] => rows.filter(row => row.verdict === which)
  const [more, less] = [of('more-even'), of('less-even')], named = (own: readonly ChangeOfSpread[]): string => listWords(own.map(({trait}) => trait.name.toLowerCase()))
  const even = [...(more.length === 0 ? [] : [`it is more even in ${named(more)}`]), ...(less.length === 0 ? [] : [`${more.length === 0 ? 'it is ' : ''}less even in ${named(less)}`])]
  // what leads a page is of the breed: of few sire families it is no lead
  const said = even.length > 0 && !enough(...more, ...less) ? 'whether it is more even cannot be told of so few sire families' : even.length > 0 ? listWords(even) : rows.length === 0 ? 'nothing measured can be compared' : 'whether it is more even cannot be told'
  return `Against ${change.from}, ${change.to} ${bredInShort(change, found)}; ${said}.`
}

function bredInShort({outside}: StepChange, found: ChangeOfShare | undefined): string {
  if (!found || !readOf(found)) return 'cannot be told to be truer'
  if (outside.length > 0) return `is not asked to be truer, ${outside.length === 1 ? 'one of them being a cross' : 'both being crosses'}`
  const shares = `(${percentSign(found.to.count.k / found.to.count.n)} after ${percentSign(found.from.count.k / found.from.count.n)})`, whose = theseOnly(found.speaksOf === 'families') || ', by sire families too'
  return found.verdict === 'truer' ? `is truer ${shares}${whose}` : found.verdict === 'less-true' ? `is less true ${shares}${whose}` : `cannot be told to be truer ${shares}`
}
