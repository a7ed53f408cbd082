/** Inbreeding, choosing and crosses as a reader on a terminal wants them: what was found in a table, what may be made of it in words beneath. The other formats have all of it. */
import type {CrossOfLines, Line} from '../findings/crosses.ts'
import type {Depression} from '../findings/depression.ts'
import type {JudgedEffect} from '../findings/depression-verdicts.ts'
import type {Interval} from '../findings/estimate.ts'
import type {FiguresTable} from '../findings/figures.ts'
import type {TermEffect} from '../findings/inbreeding-model.ts'
import type {KeptMeasure, KeptState} from '../findings/kept-against-all.ts'
import type {SelectionOfTrait} from '../findings/selection.ts'
import type {Findings} from '../findings/study.ts'
import {keptVerdict, TERM_WORDS, VERDICTS, vigourTable, type VigourQuestion} from '../findings/vigour-figures.ts'
import {comparedWords} from '../pages/choosing-figures.ts'
import {figured, listWords, ofWords, percent, percentSign, rounded, signed} from '../pages/numbers.ts'
import type {ToRead} from './forecast-to-read.ts'

const text = (names: readonly string[], rows: readonly (readonly (string | null)[])[]): FiguresTable => ({columns: names.map(name => ({name, as: 'text'})), rows})
const minus = (words: string): string => words.replaceAll('-', '−')
const range = (interval: Interval | null, write: (value: number) => string): string | null => interval && minus(`${write(interval.low)} to ${write(interval.high)}`)
const measure = (unit: string | null) => (value: number): string => `${rounded(value, Math.abs(value) < 10 ? 2 : 0)}${unit === null ? '' : ` ${unit}`}`
const pWords = (p: number | null): string | null => (p === null ? null : p < 0.001 ? 'under 0.001' : rounded(p, 3))

/** What a reader on a terminal gets in place of the table of the other formats. */
export function vigourToRead(question: VigourQuestion, findings: Findings): ToRead {
  return question === 'depression' ? depressionToRead(findings) : question === 'selection' ? selectionToRead(findings) : crossesToRead(findings.crosses)
}

const about = ({outcome, trait}: Depression): string => trait?.id ?? outcome

function depressionToRead(findings: Findings): ToRead {
  const found = findings.depression.filter(({n, leftOut}) => n + leftOut > 0), {columns, rows} = vigourTable('depression', findings)
  const cell = (row: FiguresTable['rows'][number], name: string) => row[columns.findIndex(column => column.name === name)] ?? null
  const corrected = rows.map(row => cell(row, 'p_corrected')).filter(p => typeof p === 'number')
  const judged = new Map<TermEffect, JudgedEffect>(findings.depressionVerdicts.judged.map(each => [each.effect, each]))
  const told = found.flatMap(of => of.effects.map(effect => {
    const write = of.unit === 'points' ? percent : (value: number) => rounded(value, Math.abs(value) < 10 ? 1 : 0), unit = of.unit === 'eggs in 100 days' ? 'eggs' : of.unit
    const what = `${TERM_WORDS[effect.term]}, 10 points ${effect.term === 'chickF' || effect.term === 'damF' ? 'more' : 'less'}`
    if (effect.kind === 'cannot-say') {
      const why = {alike: 'hardly differs', tied: 'goes with season, hatch or the lines above', 'too-few': 'too few to say', unsettled: 'no fit was found'}[effect.why]
      return [about(of), what, null, null, why]
    }
    return [about(of), what, `${signed(write(effect.change))} ${unit}`, range(effect.interval, write), VERDICTS[judged.get(effect)?.verdict ?? effect.verdict]]
  }))
  const harm = found.some(({effects}) => effects.some(effect => effect.kind === 'effect' && effect.verdict === 'harm'))
  const tests = corrected.length > 1 ? `These are ${figured(corrected.length, 'test')}; with no harm at all one in forty would still be called harm. With that taken in (Holm) ${!harm ? 'none shows any' : corrected.some(p => p <= 0.05) ? 'some effect is left' : 'none is left, so wait for more hatches'}.\n` : ''
  return {
    above: '', table: text(['of', 'with', 'change', '95%', 'verdict'], told),
    beneath: rows.length === 0 ? '' : `\n${found.map(countsWords).join('\n')}\n\nWhere the records cannot tell, the lower limit is the largest loss that they do not exclude.\n${tests}${[...new Set(found.flatMap(({published}) => (published ? [`Published for 10 % more F: ${published.source}.`] : [])))].join('\n')}\nLines differ: no published figure is a law.\n`,
  }
}

function countsWords(of: Depression): string {
  const {count, n, groups, pairs, leftOut, seasons, extra} = of
  const held = count === null ? `${figured(n, of.outcome === 'eggs' ? 'hen' : 'bird')} of ${figured(pairs, 'pair')} beside contemporaries` : `${ofWords(count, n)} in ${figured(groups, 'hatch', 'hatches')} of ${figured(pairs, 'pair')}`
  const season = count === null || seasons === 'one' ? '' : seasons === 'held' ? '; each season by itself' : '; too few hatches to take the seasons apart, so a good year may pass for good blood'
  return `${about(of)}: ${held}, ${leftOut} left out${season}${extra === null ? '' : `; hatches or pairs spread ${rounded(extra, 1)} times as chance would`}.`
}

function keptLine(row: KeptState | KeptMeasure): readonly (string | null)[] {
  const {trait, step, kept, all, corrected} = row, birds = `${kept} kept of ${all}`, verdict = keptVerdict(row), p = pWords(corrected)
  if (row.kind === 'measure') {
    const unit = trait.unit ?? 'marks', write = measure(unit)
    return ['kept', `${trait.id}`, step ?? 'all', row.difference === null ? null : signed(write(row.difference)), range(row.interval, value => measure(null)(value)), null, birds, p, verdict]
  }
  const share = row.share.kind === 'share' ? row.share : null
  return ['kept', `${trait.id} ${row.state}`, step ?? 'all', share && percentSign(share.value), share && range(share.interval, percent), row.expected === null ? null : `blind ${percentSign(row.expected)}`, birds, p, verdict]
}

function passageLines({passage: {from, to, back}, trait, male, female, differential, response, birds, families, move, moved, expected}: SelectionOfTrait): readonly (readonly (string | null)[])[] {
  const way = `${from} to ${to}`, write = measure(trait.unit), plain = measure(null), bred = (male.found?.bred ?? 0) + (female.found?.bred ?? 0), mates = (male.found?.measured ?? 0) + (female.found?.measured ?? 0)
  return [
    ...(bred === 0 ? [] : [['chosen', trait.id, way, differential === null ? null : signed(write(differential)), null, null, `${bred} bred from of ${mates}`, null, differential === null ? 'not known in every sex bred from' : null]]),
    ...(response === null ? [] : [['response', trait.id, way, signed(write(response.value)), range(response.interval, plain), null, `${birds.from} and ${birds.to} together`, pWords(response.p), families?.speaksOf ?? null]]),
    ...(move === null ? [] : [['move', trait.id, way, signed(write(move)), null, back ? (expected === null ? `${back.id} not measured` : `by blood ${signed(write(expected))}`) : null, `${moved.from} and ${moved.to}`, null, response ? null : 'season, rearing and choosing in one']]),
  ]
}

function selectionToRead({keptAgainstAll, selection: {passages, realised}, likeness, recovery}: Findings): ToRead {
  const whole = keptAgainstAll.filter(({step}) => step === null), steps = keptAgainstAll.filter(({step}) => step !== null), shown = [...whole.filter(({kept}) => kept > 0), ...steps.filter(({differ}) => differ)]
  const back = recovery.filter(({found}) => found !== null)
  const rows = [
    ...shown.map(keptLine), ...passages.flatMap(passageLines),
    ...realised.map(({trait, found}) => ['realised h²', trait.id, 'all', found.kind === 'estimated' ? rounded(found.value, 2) : null, found.kind === 'estimated' ? range(found.interval, value => rounded(value, 2)) : null, null, figured(found.steps, 'step'), null, found.kind === 'estimated' ? null : 'nothing was chosen']),
    ...likeness.map(of => ({...of, of: comparedWords(of)})).map(({trait, parents, found, of}) => [
      'h²', trait.id, parents === 'both' ? 'both parents' : `by ${parents}`, found.kind === 'estimated' ? rounded(found.heritability.value, 2) : null, found.kind === 'estimated' ? range(found.heritability.interval, value => rounded(value, 2)) : null, null,
      of, found.kind === 'estimated' ? pWords(found.slope.p) : null, found.kind === 'estimated' ? null : found.kind === 'few' ? 'too few to say' : 'the parents are alike',
    ]),
    ...back.map(({step, trait, found, expected, birds, together}) => ['recovery', trait.id, step, found && percentSign(found.recovery), found && range(found.interval, percent), expected === null ? null : `by blood ${percentSign(expected)}`, `${birds.step}, ${birds.donor}, ${birds.recurrent}`, null, found?.interval ? together?.speaksOf ?? null : 'the two strains do not differ clearly']),
  ]
  return {above: '', table: text(['what', 'of', 'step', 'found', '95%', 'beside it', 'birds', 'P', 'verdict'], rows), beneath: rows.length === 0 ? '' : `\n${[...choiceWords(whole, steps), ...apartWords(passages), ...recoveryWords(recovery.length, back.length)].join('\n')}\n`}
}

/** What did we choose for without meaning to? */
function choiceWords(whole: readonly (KeptState | KeptMeasure)[], steps: readonly (KeptState | KeptMeasure)[]): readonly string[] {
  const [first] = whole
  if (!first) return []
  if (first.tests === 0) return ['What we chose for cannot be told: no hatch has birds of one sex of which some were kept and some not, and which differ.']
  const named = (rows: readonly (KeptState | KeptMeasure)[]) => listWords([...new Set(rows.map(row => (row.step === null ? row.trait.id : `${row.trait.id} in ${row.step}`)))])
  const of = (rows: readonly (KeptState | KeptMeasure)[], meant: boolean | null) => named(rows.filter(row => row.differ && row.meant === meant)), apart = of(steps, null), against = of(whole, false), againstApart = of(steps, false)
  return [
    `Chosen for as the targets ask: ${of(whole, true) || 'nothing that shows'}.`,
    `Chosen for though no target asks for it: ${of(whole, null) || 'nothing that shows'}${apart === '' ? '' : `; step by step ${apart}`}.`,
    ...(against === '' && againstApart === '' ? [] : [`Chosen against the target: ${against || 'nothing in all steps together'}${againstApart === '' ? '' : `; step by step ${againstApart}`}.`]),
    `P is corrected for the number of tests (Holm): ${first.tests} of all steps together${steps[0] ? `, ${steps[0].tests} of single steps` : ''}. Kept and all are compared within hatch, step and sex.`,
  ]
}

function apartWords(passages: readonly SelectionOfTrait[]): readonly string[] {
  const lone = passages.filter(({response}) => response === null)
  return lone.length === 0 ? [] : [`In ${ofWords(lone.length, passages.length)} passages from step to step season and selection cannot be told apart: hatch some chicks of the old step${passages.some(({passage}) => passage.back) ? ', after a backcross of the strain too,' : ''} beside the new.`]
}

function recoveryWords(all: number, told: number): readonly string[] {
  return all === told ? [] : [`Recovery of type is told in ${ofWords(told, all)} cases: the step, the donor and the strain crossed back to must be reared and measured together.`]
}

const lineName = ({strain, step}: Line): string => strain?.id ?? step ?? ''

function crossesToRead(found: readonly CrossOfLines[]): ToRead {
  const rows = found.map(({lines: [one, other], trait, found: it, birds, classes, families}) => [
    `${lineName(one)} × ${lineName(other)}`, trait.id, it && `${signed(percent(it.heterosis))}%`, it && range(it.interval, percent), it && signed(measure(trait.unit)(it.difference)), it && pWords(it.p), `${birds.cross}, ${birds.one}, ${birds.other}`,
    it ? `${it.interval.low > 0 ? 'better than mid-parent' : it.interval.high < 0 ? 'worse than mid-parent' : 'the records cannot tell'}${families ? `; ${families.speaksOf}` : ''}` : classes === 0 ? 'not reared together' : 'too few of one of them, or all alike',
  ])
  return {
    above: '', table: text(['cross', 'trait', 'heterosis', '95%', 'over mid-parent', 'P', 'cross, lines', 'verdict'], rows),
    beneath: rows.length === 0 ? '' : '\nOnly birds of the cross and of both lines that were reared together are compared, sexes apart. Of what a first cross gains,\nhalf is to be expected in the next generation.\n',
  }
}
