/** Measured traits: mean, spread and the standard in a table, and the main measure bird by bird beside the one before. */
import {dotScale, dotStrip, type DotStrip} from '../charts/dot-strip.ts'
import {againstStandard, limitsOf, type AgainstStandard} from '../findings/against-standard.ts'
import type {FlockSummary} from '../findings/flock-summary.ts'
import type {SpreadRow} from '../findings/spread.ts'
import type {Findings} from '../findings/study.ts'
import type {Trait} from '../logbook/book.ts'
import {amount, amountPlain, shownIn, wantedWords} from './amounts.ts'
import {cannotSayShort} from './estimate-words.ts'
import {mainMeasure} from './main-measure.ts'
import {figured, limitsShort, NOTHING, ofWords, percent, sentence} from './numbers.ts'
import type {Cell, Table} from './page.ts'
import {flockWord, SEX_ROWS} from './sex-words.ts'
import {shareShort} from './summary-hatched.ts'

export interface SummaryMeasured {
  readonly table: Table | null
  readonly strips: {readonly caption: string; readonly rows: readonly {readonly head: string; readonly strip: DotStrip & {readonly label: string; readonly square: boolean}}[]} | null
  /** said in place of both */
  readonly none: string
}

type Strips = NonNullable<SummaryMeasured['strips']>

const ofOneSex = (rows: readonly SpreadRow[], trait: Trait, sex: 'male' | 'female'): SpreadRow | undefined => rows.find(row => row.trait === trait && row.sex === sex)

function measureRow(row: SpreadRow, found: AgainstStandard | undefined, units: Findings['book']['project']['units']): readonly Cell[] {
  const {trait, sex, spread, values} = row, shown = shownIn(trait, units), head = trait.seenIn === null ? `${trait.name}, ${SEX_ROWS[sex]}` : trait.name
  const against = found ? `${shareShort(found.inside)} inside ${wantedWords(found.wanted, shown)}` : NOTHING
  if (spread.kind === 'cannot-say') return [head, `${figured(values.length, 'bird')}${found ? `, ${amount(found.mean, shown)}` : ''}`, cannotSayShort(spread), against]
  return [head, `${spread.n === values.length ? figured(spread.n, 'bird') : `${ofWords(spread.n, values.length)} birds`}, ${amount(spread.mean, shown)}`, `${percent(spread.cv)}${spread.cvInterval ? ` (${limitsShort(spread.cvInterval)})` : ''}`, against]
}

function stripsOf({name, before, spread}: FlockSummary, {book: {traits, project}, trueBred: {verdicts}}: Findings): Strips | null {
  const measured = new Set(spread.filter(({sex}) => sex !== 'all').map(({trait}) => trait)), trait = mainMeasure(traits.filter(each => measured.has(each)))
  if (!trait) return null
  const shown = shownIn(trait, project.units), groups = (['male', 'female'] as const).flatMap(sex => [{name, rows: spread}, ...(before ? [{name: before.name, rows: before.spread}] : [])].flatMap(each => {
    const row = ofOneSex(each.rows, trait, sex)
    return row ? [{...each, sex, row}] : []
  }))
  const limitsIn = (sex: 'male' | 'female') => { const wanted = trait.wanted[sex]; return wanted === null ? null : limitsOf(wanted) }
  const markOf = (sex: 'male' | 'female') => { const wanted = trait.wanted[sex]; return wanted?.kind === 'about' ? wanted.value : null }
  const scale = dotScale(groups.flatMap(({sex, row}) => [...row.values.map(({value}) => value), ...[limitsIn(sex)?.low, limitsIn(sex)?.high, markOf(sex)].filter(each => typeof each === 'number')]))
  const zones = groups.some(({sex}) => limitsIn(sex) !== null), marks = groups.some(({sex}) => markOf(sex) !== null)
  const rows = groups.map(({name: group, sex, row}) => {
    const birds = row.values.map(({bird, value}) => ({value, off: (bird ? verdicts.get(bird) : undefined)?.is === 'off'})), word = flockWord(sex, project.species, trait.atAge), values = birds.map(({value}) => value)
    return {
      head: `${birds.length} ${birds.length === 1 ? word.replace(/s$/, '') : word}, ${group}`,
      strip: {...dotStrip(birds, scale, limitsIn(sex), markOf(sex)), square: sex === 'male', label: `${sentence(word)} of ${group}: ${birds.length}, from ${amount(Math.min(...values), shown)} to ${amount(Math.max(...values), shown)}`},
    }
  })
  return {
    rows, caption: `${trait.name}, every bird a mark, males square; a cross fails something required. The strips run from ${amountPlain(scale.from, shown)} to ${amount(scale.to, shown)}${zones ? '; shaded is what the standard allows' : ''}${marks ? ', dotted its mark' : ''}.`,
  }
}

export function summaryMeasured(summary: FlockSummary, findings: Findings): SummaryMeasured {
  const rows = summary.spread.filter(({sex}) => sex !== 'all'), standard = againstStandard({rows: summary.spread, unsexed: []})
  if (rows.length === 0) return {table: null, strips: null, none: `Nobody of ${summary.name} has been weighed or measured at the age that counts.`}
  return {
    table: {
      columns: [{head: 'Measure'}, {head: 'Birds and mean'}, {head: 'CV, %'}, {head: 'Inside what is wanted'}],
      rows: rows.map(row => measureRow(row, standard.find(each => each.trait === row.trait && each.sex === row.sex), findings.book.project.units)),
    },
    strips: stripsOf(summary, findings), none: '',
  }
}
