/** Charts with the ladder's steps as rows, each with its caption, words and table: true-bred chicks, looks of a trait, spread of a measure. */
import {hasRows} from '../charts/chart-spec.ts'
import {shareByStep} from '../charts/share-by-step.ts'
import {spreadByStep} from '../charts/spread-by-step.ts'
import {statesByStep} from '../charts/states-by-step.ts'
import type {ExpectedLooks, ExpectedOfAll} from '../findings/expected-looks.ts'
import type {SexRow, TraitShares} from '../findings/shares.ts'
import type {SpreadRow} from '../findings/spread.ts'
import type {StepTrueBred} from '../findings/true-bred.ts'
import {wantedOf} from '../findings/wanted-look.ts'
import type {Trait} from '../logbook/book.ts'
import {fileName} from '../records/file-name.ts'
import {cannotSayShort, shareCells} from './estimate-words.ts'
import {limits, listWords, NOTHING, ofWords, percent, rounded} from './numbers.ts'
import type {Cell, Figure} from './page.ts'
import {SEX_ROWS} from './sex-words.ts'
import {ALL_THEY_COULD} from './true-bred-words.ts'

/** How many chicks of each step show every required trait; null while none was scored. */
export function trueBredFigure(steps: readonly StepTrueBred[], head: string): Figure | null {
  const rows = steps.flatMap(step => (step.rate.kind === 'share' ? [{label: step.step, count: step.rate.count, total: step.rate.total}] : []))
  if (!hasRows(rows)) return null
  const fewer = steps.some(step => step.passesOnFewer > 0)
  return {
    kind: 'figure', id: 'true-bred', name: 'true-bred-by-step', head, title: 'Chicks that show every required trait they could',
    caption: `Chicks that showed ${ALL_THEY_COULD}, solid, and chicks failing one or more, barred. Crosses and backcrosses cannot breed true; read them as a count of what was there to choose from.${fewer ? ' “On fewer” counts those of the first column that were too young, or not of the sex, to show every required trait.' : ''}`,
    description: `${listWords(rows.map(({label, count, total}) => `${ofWords(count, total)} in ${label}`))}.`,
    spec: shareByStep(rows),
    table: {
      columns: [{head: 'Step'}, {head: 'All they could', number: true}, {head: '%', number: true}, {head: 'Interval', number: true}, ...(fewer ? [{head: 'On fewer', number: true}] : [])],
      rows: steps.map((step): readonly Cell[] => [step.step, ...shareCells(step.rate), ...(fewer ? [step.rate.kind === 'share' ? String(step.passesOnFewer) : NOTHING] : [])]),
    },
  }
}

const sexNote = (sex: SexRow): string => (sex === 'all' ? '' : ` ${SEX_ROWS[sex].charAt(0).toUpperCase()}${SEX_ROWS[sex].slice(1)} only.`)

/** `19.5 of 27`, or where nothing is to be expected a dash */
const expectedCell = (row: ExpectedLooks | undefined, states: readonly string[]): string => (row ? `${rounded(expectedOf(row, states), 1)} of ${row.chicks}` : NOTHING)

const expectedOf = (row: ExpectedLooks, states: readonly string[]): number => row.states.reduce((sum, {state, expected}) => sum + (states.includes(state) ? expected : 0), 0)

/** Looks of one trait step by step, in one sex or all: wanted against the rest for two states, every state otherwise; beside them what was to be expected. */
export function traitFigure(trait: Trait, {shares, expectedLooks}: {readonly shares: readonly TraitShares[]; readonly expectedLooks: ExpectedOfAll}, sex: SexRow, head: string): Figure | null {
  const own = shares.filter(row => row.trait === trait && row.sex === sex)
  const expected = new Map(expectedLooks.steps.filter(row => row.trait === trait && row.sex === sex).map(row => [row.step, row] as const)), some = own.some(({step}) => expected.has(step))
  const wanted = wantedOf(trait, sex === 'all' ? 'unknown' : sex) ?? trait.wanted.female ?? trait.wanted.male
  const isWanted = (state: string): boolean => wanted?.kind === 'states' && wanted.states.includes(state)
  const name = `${fileName(trait.id)}-by-step${sex === 'all' ? '' : `-${sex}`}`
  const wantedStates = trait.states.filter(isWanted)
  const two = wantedStates.length === 1 && trait.states.length === 2
  const shareRows = own.map(row => {
    const looked = expected.get(row.step)
    return {label: row.step, count: row.states.filter(({state}) => isWanted(state)).reduce((sum, {count}) => sum + count, 0), total: row.scored, expected: looked ? expectedOf(looked, wantedStates) / looked.chicks : null}
  })
  const stateRows = own.map(row => ({label: row.step, counts: Object.fromEntries(row.states.map(({state, count}) => [state, count]))}))
  const states = trait.states.map(state => ({name: state, wanted: wanted === null ? null : isWanted(state)}))
  if (!hasRows(shareRows) || !hasRows(stateRows) || !hasRows(states)) return null
  const caption = two ? `Scored chicks with ${wantedStates.join(' or ')}, solid, and without, barred.${some ? ' The tick: what was to be expected of their parents.' : ''}`
    : `Scored chicks by look${wantedStates.length > 0 ? `; wanted: ${listWords(wantedStates, 'or')}, solid` : ''}. Looks not seen in a step${some ? ' and hardly to be expected' : ''} are left out of the table.`
  const told = (row: TraitShares, state: string): boolean => isWanted(state) || (!two && (row.states.find(each => each.state === state)?.count ?? 0) > 0)
    || (!two && (expected.get(row.step)?.states.find(each => each.state === state)?.expected ?? 0) >= 0.05)
  return {
    kind: 'figure', id: `by-step-${sex}`, name, head, title: `${trait.name} by step`, caption: caption + sexNote(sex),
    description: `${own.map(row => `${row.step}: ${listWords(row.states.filter(({count}) => count > 0).map(({state, count}) => `${count} ${state}`))} of ${row.scored}${expected.has(row.step) && wantedStates.length > 0 ? `, expected ${expectedCell(expected.get(row.step), wantedStates)} as wanted` : ''}`).join('; ')}.`,
    spec: two ? shareByStep(shareRows) : statesByStep(stateRows, states),
    table: {
      columns: [{head: two ? 'Step' : 'Step, look'}, {head: two ? `With ${wantedStates.join('')}` : 'Chicks', number: true}, ...(some ? [{head: 'Expected', number: true}] : []), {head: '%', number: true}, {head: 'Interval', number: true}],
      rows: own.flatMap(row => row.states.filter(({state}) => told(row, state)).map(({state, share}): readonly Cell[] => {
        const [count, ...rest] = shareCells(share)
        return [two ? row.step : `${row.step}, ${state}`, count, ...(some ? [expectedCell(expected.get(row.step), [state])] : []), ...rest]
      })),
    },
  }
}

/** Spread of one measure in one sex, step by step. */
export function spreadFigure(trait: Trait, spread: readonly SpreadRow[], sex: 'male' | 'female', mark: number | null, head: string): Figure | null {
  const own = spread.filter(row => row.trait === trait && row.sex === sex)
  const rows = own.map(({step, spread: found}) => ({label: step, cv: found.kind === 'spread' ? found.cv : null, interval: found.kind === 'spread' ? found.cvInterval : null}))
  if (!hasRows(rows) || !rows.some(({cv}) => cv !== null)) return null
  const said = own.flatMap(({step, spread: found}) => (found.kind === 'spread' ? [`${percent(found.cv)} in ${step}`] : []))
  return {
    kind: 'figure', id: `spread-${sex}`, name: `${fileName(trait.id)}-spread-${sex}`, head, title: `Spread of ${trait.name.toLowerCase()} by step, ${SEX_ROWS[sex]}`,
    caption: `Coefficient of variation of ${trait.name.toLowerCase()}, ${SEX_ROWS[sex]}, %, with its 95% interval. Birds are compared with those reared alike only.`,
    description: `Coefficient of variation: ${listWords(said)} per cent.`, spec: spreadByStep(rows, mark),
    table: {
      columns: [{head: 'Step'}, {head: 'Birds', number: true}, {head: 'CV, %', number: true}, {head: 'Interval', number: true}],
      rows: own.map(({step, spread: found}): readonly Cell[] => (found.kind === 'cannot-say' ? [step, cannotSayShort(found), NOTHING, NOTHING]
        : [step, String(found.n), percent(found.cv), found.cvInterval ? limits(found.cvInterval) : NOTHING])),
    },
  }
}

