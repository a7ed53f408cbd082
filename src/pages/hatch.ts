/** One hatch: what became of the eggs, its chicks banded and not, who may be their parents, how they were reared. */
import {countedValue} from '../findings/counted-value.ts'
import {isUnfinished} from '../findings/hatch-results.ts'
import type {HatchResult} from '../findings/hatch-results.ts'
import type {Findings} from '../findings/study.ts'
import type {Bird, Hatch, Logbook, Tally, Trait} from '../logbook/book.ts'
import {amount, shownIn} from './amounts.ts'
import {fact} from './bird-lead.ts'
import type {Fact} from './bird-lead.ts'
import {birdTable, symbolNote} from './bird-rows.ts'
import type {BirdTable} from './bird-rows.ts'
import {careCaution, careList} from './care-words.ts'
import type {CareWords} from './care-words.ts'
import {dateWords, daySpan} from './dates.ts'
import {cannotSay, leftOutSentence, shareCandle, shareWords} from './estimate-words.ts'
import type {NamedCandle} from './estimate-words.ts'
import {growthWords} from './growth-words.ts'
import {feedWords} from './lay-rows.ts'
import {leftWords} from './life-words.ts'
import {birdPath, hatchPath, penPath, stepPath, strainPath} from './links.ts'
import {livedWords} from './livability-rows.ts'
import {mixedWhy} from './mixed-words.ts'
import {counted, figured, listWords, NOTHING, percent, percentSign, sentence} from './numbers.ts'
import type {Cell, Page, Table} from './page.ts'
import {plates, type Plate} from './plates.ts'
import {stepWords} from './step-words.ts'

export interface Stat {
  readonly title: string
  readonly value: string
  readonly unit: string
  readonly candle: NamedCandle | null
  readonly words: string
}

export interface HatchView {
  readonly id: string
  readonly facts: readonly Fact[]
  readonly lead: string
  readonly plates: readonly Plate[]
  readonly stats: readonly Stat[]
  readonly counts: Table | null
  readonly notes: readonly string[]
  readonly eggsByDam: Table | null
  readonly parents: readonly {readonly side: string; readonly birds: readonly {readonly band: string; readonly link: string; readonly chance: string}[]; readonly outside: string}[]
  readonly chicks: BirdTable | null
  readonly symbolNote: string
  readonly tallies: Table | null
  readonly loose: Table | null
  /** how its chicks lived and what they ate */
  readonly lived: readonly string[]
  readonly care: readonly CareWords[]
  readonly caution: string | null
  readonly body: string
}

function stats(result: HatchResult): readonly Stat[] {
  const scale = {from: 0, to: 1}
  const rows = [['Fertility', result.fertility, 'egg'], ['Hatch of fertile', result.hatchOfFertile, 'fertile egg'], ['Hatch of set', result.hatchOfSet, 'egg']] as const
  return rows.map(([title, share, thing]) => share.kind === 'cannot-say'
    ? {title, value: NOTHING, unit: '', candle: null, words: sentence(cannotSay(share))}
    : {title, value: percent(share.value), unit: '%', candle: shareCandle(share, scale), words: shareWords(share, thing)})
}

function countsTable(hatch: Hatch): Table | null {
  const rows = ([
    ['Eggs set', hatch.eggs], ['Clear at candling', hatch.clear], ['Dead in germ', hatch.deadInGerm], ['Dead in shell', hatch.deadInShell], ['Bad or broken', hatch.bad], ['Hatched', hatch.hatched],
  ] as const).flatMap(([label, count]): readonly (readonly Cell[])[] => (count === null ? [] : [[label, String(count)]]))
  return rows.length === 0 ? null : {columns: [{head: 'Stage'}, {head: 'Count', number: true}], rows}
}

function facts(hatch: Hatch): readonly Fact[] {
  const [pen] = hatch.pens
  return [
    hatch.pens.length === 1 && pen ? fact('From pen', pen.pen.id, penPath(pen.pen))
      : hatch.pens.length > 1 ? fact('From pens', hatch.pens.map(({pen: each, eggs}) => (eggs === null ? each.id : `${each.id}, ${figured(eggs, 'egg')}`)).join('; '))
        : hatch.strain ? fact('Bought eggs', hatch.strain.name, strainPath(hatch.strain)) : fact('From', 'not recorded'),
    hatch.step.kind === 'strain' ? fact('Strain', stepWords({step: hatch.step, strain: hatch.strain})) : fact('Step', hatch.step.label, stepPath(hatch.step.label)),
    ...(hatch.laid ? [fact('Laid', daySpan(hatch.laid.from, hatch.laid.to))] : []), ...(hatch.set ? [fact('Set', dateWords(hatch.set))] : []),
    fact('Hatched', hatch.on ? dateWords(hatch.on) : 'not yet, or not written'),
    ...(hatch.machine === null ? [] : [fact('In machine', hatch.machine)]), ...(hatch.broody ? [fact('Under', hatch.broody.band, birdPath(hatch.broody))] : []),
    ...(hatch.keeper ? [fact('Kept by', hatch.keeper.name)] : []), ...(hatch.setAside === null ? [] : [fact('Set aside', hatch.setAside)]),
  ]
}

function lead(hatch: Hatch): string {
  const from = hatch.strain && hatch.pens.length === 0 ? `Bought eggs of ${hatch.strain.name}${hatch.flock ? `, flock ${hatch.flock.name}` : ''}` : `A ${stepWords({step: hatch.step, strain: hatch.strain})} hatch`.replace('A F', 'An F')
  const came = isUnfinished(hatch) ? 'not hatched, or not written down yet' : hatch.hatched === null ? 'how many hatched is not written' : hatch.eggs === null ? `${counted(hatch.hatched, 'chick')} out` : `${hatch.hatched} of ${figured(hatch.eggs, 'egg')} out`
  return `${from}: ${came}.`
}

/** Why its chicks have no step; those whose own line names their parents may have one all the same. */
function mixedNote(hatch: Hatch): readonly string[] {
  const why = mixedWhy(hatch), placed = hatch.chicks.filter(chick => chick.step.kind !== 'mixed').length
  return why === null ? [] : [`Mixed, of a chick whose own line says no more: ${why}.${placed === 0 ? '' : ` ${placed} of the ${hatch.chicks.length} banded ${placed === 1 ? 'has' : 'have'} a step, for parents of ${placed === 1 ? 'its' : 'their'} own are written.`}`]
}

function notes(hatch: Hatch): readonly string[] {
  const tallied = hatch.tallies.reduce((sum, tally) => sum + tally.count, 0)
  return [
    ...(hatch.hatched === null ? [] : [`Of ${figured(hatch.hatched, 'chick')} hatched, ${hatch.chicks.length === 0 ? 'none is' : `${hatch.chicks.length} ${hatch.chicks.length === 1 ? 'is' : 'are'}`} banded, ${tallied === 0 ? 'none' : tallied} listed without a band${hatch.unlisted > 0 ? `, and of ${hatch.unlisted} nothing is written` : ''}.`]),
    ...(hatch.setAside === null ? [] : ['Set aside by its keeper: what is told here enters no share of its pen, step or season, and no comparison.']),
    ...mixedNote(hatch),
    ...(hatch.pens.length > 1 ? ['Eggs of several pens shared this setting, so a chick may be of either unless its own line says which.'] : []),
    ...(hatch.flock ? [`Birds of flock ${hatch.flock.name} are taken to be kin at ${percentSign(hatch.flock.kinship)}.`] : []),
    ...(hatch.broody || hatch.machine !== null ? [`Reared ${hatch.broody ? 'under a hen' : 'from the machine'}: weights are compared only with birds reared alike.`] : ['How it was reared is not written, so its weights are compared inside this hatch only.']),
  ]
}

function parentsOf(hatch: Hatch): HatchView['parents'] {
  if (hatch.parentage.kind === 'founder') return []
  return ([['Sires', hatch.parentage.sires], ['Dams', hatch.parentage.dams]] as const).map(([side, candidates]) => {
    const outside = 1 - candidates.reduce((sum, {chance}) => sum + chance, 0)
    return {
      side, birds: candidates.map(({bird, chance}) => ({band: bird.band, link: birdPath(bird), chance: chance > 0.9995 ? '' : percentSign(chance)})),
      outside: candidates.length === 0 ? 'not recorded' : outside > 0.0005 ? `a bird not recorded, ${percentSign(outside)}` : '',
    }
  })
}

function talliesTable(tallies: readonly Tally[], traits: readonly Trait[], units: Logbook['project']['units']): Table | null {
  if (tallies.length === 0) return null
  return {
    caption: 'Chicks without a band',
    columns: [{head: 'Chicks'}, {head: 'Mark'}, {head: 'Sex'}, {head: 'Looks'}, {head: 'Became'}],
    rows: tallies.map((tally): readonly Cell[] => {
      const looks = traits.flatMap(trait => {
        const value = countedValue(tally, trait)
        return value === null ? [] : [`${trait.name.toLowerCase()} ${typeof value === 'number' ? amount(value, shownIn(trait, units)) : value}`]
      })
      const later = tally.written - tally.count
      return [`${tally.count}${later > 0 ? `, ${later} more banded later` : ''}`, tally.mark ?? NOTHING, tally.sex === 'unknown' ? 'not told' : tally.sex, looks.length === 0 ? 'not scored' : looks.join(', '),
        tally.left ? leftWords(tally.left) : 'not written']
    }),
  }
}

function looseTable(hatch: Hatch, book: Logbook): Table | null {
  const own = book.looseWeighings.filter(weighing => weighing.hatch === hatch)
  if (own.length === 0) return null
  const trait = (measure: string): Trait | undefined => book.traits.find(each => each.measure === measure)
  const days = [...new Set(own.map(({on}) => on.text))]
  return {
    caption: 'Weighed without bands',
    columns: [{head: 'Day'}, {head: 'Sex'}, {head: 'Measure'}, {head: 'Birds', number: true}, {head: 'Found'}],
    rows: days.flatMap(day => [...new Set(own.filter(({on}) => on.text === day).map(({sex, measure}) => `${sex}|${measure}`))].map((group): readonly Cell[] => {
      const [sex = '', measure = ''] = group.split('|')
      const birds = own.filter(each => each.on.text === day && each.sex === sex && each.measure === measure), of = trait(measure)
      const on = birds[0]?.on
      return [on ? dateWords(on) : day, sex === 'unknown' ? 'not told' : sex, measure, String(birds.length),
        listWords(birds.map(({value}) => (of ? amount(value, shownIn(of, book.project.units)) : String(value))))]
    })),
  }
}

function livedOf(hatch: Hatch, {life, book}: Findings): readonly string[] {
  const lived = life.livability.hatches.get(hatch), fed = life.feed.find(each => each.hatch === hatch)
  return [...(lived ? livedWords(lived) : []), ...growthWords(life.growth.hatches.get(hatch) ?? [], book.project.units), ...(fed ? feedWords(fed, book.project.units) : [])]
}

export function hatchPage(result: HatchResult, findings: Findings, breeders: ReadonlySet<Bird>): Page {
  const {hatch} = result, {book} = findings
  const care = book.care.filter(entry => entry.hatches.includes(hatch) || entry.birds.some(bird => bird.hatch === hatch))
  const unscored = hatch.chicks.filter(chick => !book.traits.some(trait => chick.looks.get(trait)?.counted)).length
  const view: HatchView = {
    id: hatch.id, facts: facts(hatch), lead: lead(hatch), stats: stats(result), counts: countsTable(hatch),
    notes: [...notes(hatch), ...(unscored > 0 ? [`${sentence(counted(unscored, 'banded chick'))} not scored for any trait.`] : []),
      ...[leftOutSentence(result.hatchOfSet.kind === 'share' ? result.hatchOfSet.leftOut : [])].filter(words => words !== '')],
    eggsByDam: hatch.eggsByDam.length === 0 ? null : {
      caption: 'Eggs by hen, where known', columns: [{head: 'Hen'}, {head: 'Eggs', number: true}],
      rows: hatch.eggsByDam.map(({dam, eggs}): readonly Cell[] => [{text: dam.band, link: birdPath(dam)}, String(eggs)]),
    },
    parents: parentsOf(hatch), chicks: hatch.chicks.length === 0 ? null : birdTable(hatch.chicks, book, breeders, `Chicks of hatch ${hatch.id}`), symbolNote: symbolNote(book.traits),
    tallies: talliesTable(hatch.tallies, book.traits, book.project.units), loose: looseTable(hatch, book),
    lived: livedOf(hatch, findings), care: careList(care, book.asOf), caution: careCaution(care), body: hatch.body, plates: plates(hatch.photos ?? [], `Hatch ${hatch.id}`, false),
  }
  return {path: hatchPath(hatch), template: 'hatch', title: `Hatch ${hatch.id}`, section: 'hatches', view, search: {kind: 'hatch', words: `hatch ${hatch.id} ${hatch.step.label}`}}
}
