/** Every weighed bird of a step as a mark, males and females apart, against the standard; with the class means as its table. */
import {hasRows} from '../charts/chart-spec.ts'
import {weightsAsBars, weightsByClass} from '../charts/weights-by-class.ts'
import type {Spread, SpreadRow} from '../findings/spread.ts'
import type {Verdict} from '../findings/verdict.ts'
import type {Chick} from '../findings/ladder-chicks.ts'
import type {Project, Trait, Wanted} from '../logbook/book.ts'
import {fileName} from '../records/file-name.ts'
import {amountPlain, shownIn} from './amounts.ts'
import type {Shown} from './amounts.ts'
import {cannotSayShort} from './estimate-words.ts'
import {listWords, NOTHING, ofWords, percent, sentence} from './numbers.ts'
import type {Cell, Figure} from './page.ts'
import {flockWord} from './sex-words.ts'

function standardOf(wanted: Wanted | null, {factor}: Shown): {mark: number | null; low: number | null; high: number | null} | null {
  if (wanted === null || wanted.kind === 'states') return null
  switch (wanted.kind) {
    case 'about': {
      const mark = wanted.value * factor, reach = wanted.tolerance === null ? null : mark * wanted.tolerance
      return {mark, low: reach === null ? null : mark - reach, high: reach === null ? null : mark + reach}
    }
    case 'between': return {mark: null, low: wanted.low * factor, high: wanted.high * factor}
    case 'at-least': return {mark: wanted.value * factor, low: wanted.value * factor, high: null}
    case 'at-most': return {mark: wanted.value * factor, low: null, high: wanted.value * factor}
  }
}

/** `mean 2.36 kg, CV 8.6%` */
function spreadInWords(spread: Spread, shown: Shown): string {
  return `average ${amountPlain(spread.mean, shown)}${shown.unit === '' ? '' : ` ${shown.unit}`}, coefficient of variation ${percent(spread.cv)} per cent`
}

const isRight = (verdict: Verdict | undefined): boolean | null => (verdict?.is === 'right' ? true : verdict?.is === 'off' ? false : null)

type RowOfSex = SpreadRow & {readonly sex: 'male' | 'female'}
const ofOneSex = (row: SpreadRow): row is RowOfSex => row.sex !== 'all'

/** @param all  rows of one step and trait, a row a sex; null when nothing was weighed */
export function weightsFigure(step: string, trait: Trait, all: readonly SpreadRow[], verdicts: ReadonlyMap<Chick, Verdict>, project: Project, head: string): Figure | null {
  const rows = all.filter(ofOneSex)
  const shown = shownIn(trait, project.units), unit = shown.unit === '' ? '' : `, ${shown.unit}`
  const classes = rows.flatMap(({sex, values}) => {
    const birds = values.map(({bird, value}) => ({value: value * shown.factor, right: isRight(bird ? verdicts.get(bird) : undefined)}))
    const word = sentence(flockWord(sex, project.species, trait.atAge))
    return hasRows(birds) ? [{sex, title: `${word}, ${birds.length}`, standard: standardOf(trait.wanted[sex], shown), birds}] : []
  })
  if (!hasRows(classes)) return null
  const marks = weightsAsBars(classes) ? 'Columns are as high as the birds are many; outlined parts' : 'Squares are males, circles females; open marks'
  const zone = classes.some(({standard}) => standard?.low !== null && standard?.low !== undefined) ? ' The shaded band is what is allowed.' : ''
  const line = classes.some(({standard}) => standard?.mark !== null && standard?.mark !== undefined) ? ' The dotted line is the mark aimed at.' : ''
  const said = rows.map(({sex, values, spread}) => `${values.length} ${flockWord(sex, project.species, trait.atAge)}${spread.kind === 'spread' ? `: ${spreadInWords(spread, shown)}${spread.n === values.length ? '' : ` of ${spread.n} in classes large enough to compare`}` : ''}`)
  return {
    kind: 'figure', id: `weights-${fileName(trait.id)}`, name: `${fileName(trait.id)}-${fileName(step)}`, head, title: `${trait.name}, ${step}`,
    caption: `${trait.name}${unit}. ${marks} fail a required trait, speckled ones are not fully scored.${line}${zone}`, description: `${sentence(listWords(said))}.`,
    spec: weightsByClass(classes),
    table: {
      columns: [{head: 'Sex'}, {head: 'Birds', number: true}, {head: `Mean${unit}`, number: true}, {head: 'CV, %', number: true}],
      rows: rows.map(({sex, values, spread}): readonly Cell[] => {
        const word = sentence(flockWord(sex, project.species, trait.atAge))
        if (spread.kind === 'cannot-say') return [word, String(values.length), cannotSayShort(spread), NOTHING]
        return [word, ofWords(spread.n, values.length), amountPlain(spread.mean, shown), percent(spread.cv)]
      }),
    },
  }
}
