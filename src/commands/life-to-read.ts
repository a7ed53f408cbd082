/** Hatch, life and lay as a reader on a terminal wants them: the groups in a table, what differs in words beneath. The other formats have all of it. */
import type {FiguresTable} from '../findings/figures.ts'
import type {LifeQuestion} from '../findings/life-figures.ts'
import {WHAT_HATCHED} from '../findings/life-figures.ts'
import type {Findings} from '../findings/study.ts'
import {alikeCaution} from '../pages/alike-words.ts'
import {ageWords} from '../pages/dates.ts'
import {EGGS_SPEAK_OF, groupName, hatchesToldApart} from '../pages/hatch-compared.ts'
import {HENS_SPEAK_OF, layToldApart} from '../pages/lay-rows.ts'
import {CHICKS_SPEAK_OF, livesToldApart} from '../pages/livability-rows.ts'
import {mass} from '../pages/mass-words.ts'
import {figured, limits, ofWords, percentSign, rounded} from '../pages/numbers.ts'
import {setAsideWords} from '../pages/set-aside-words.ts'
import {toldApartWords} from '../pages/told-apart-words.ts'
import type {ToRead} from './forecast-to-read.ts'

const text = (names: readonly string[], rows: readonly (readonly (string | null)[])[]): FiguresTable => ({columns: names.map(name => ({name, as: 'text'})), rows})

/** @param question there is one so far */
export function lifeToRead(question: LifeQuestion, findings: Findings): ToRead {
  return {above: '', table: text([question === 'lay' ? 'what' : question, 'of', 'counted', 'value', '95%', 'speaks of'], rowsOf(findings)), beneath: beneath(findings)}
}

function rowsOf({life, book}: Findings): readonly (readonly (string | null)[])[] {
  const {units} = book.project
  return [
    ...life.hatching.filter(({group}) => group.by !== 'pen').flatMap(({group, shares}) => shares.flatMap(({what, share, drawn, speaksOf}) =>
      (share.kind === 'cannot-say' || what !== 'hatchOfSet' ? [] : [[WHAT_HATCHED[what], groupName(group), ofWords(share.count, share.total), percentSign(share.value), limits(drawn ?? share.interval), EGGS_SPEAK_OF[speaksOf]]]))),
    ...life.livability.groups.filter(({group}) => group.by !== 'pen').flatMap(({group, ages}) => ages.slice(0, 1).flatMap(({age, found}) => (found ? [[`lived to ${ageWords(age)}`, groupName(group), figured(found.n, 'chick'), percentSign(found.share), limits(found), CHICKS_SPEAK_OF[found.kind]]] : []))),
    ...life.lay.groups.flatMap(group => [group, ...group.kinds].map(({name, of, eggs, henDays, henDay, speaksOf}, place) => ['hen-day rate', place === 0 ? name : `${name}, ${of}`, `${eggs} in ${figured(henDays, 'hen-day')}`, percentSign(henDay.ratio), henDay.interval && limits(henDay.interval), henDay.interval && HENS_SPEAK_OF[speaksOf]])),
    ...life.lay.groups.flatMap(({name, eggWeight}) => (eggWeight ? [['egg weight', name, figured(eggWeight.eggs, 'egg'), mass(eggWeight.ratio, units), null, null]] : [])),
    ...life.firstEggs.filter(({by}) => by === 'step').map(({name, hens, mean, interval}) => ['age at first egg', name, figured(hens, 'hen'), figured(Math.round(mean), 'day'), interval && `${rounded(interval.low, 0)} to ${rounded(interval.high, 0)}`, null]),
    ...life.feed.flatMap(({pen, hatch, birdDays, perBirdDay}) => (perBirdDay === null ? [] : [['feed of a bird a day', pen?.id ?? hatch?.id ?? '', figured(birdDays, 'bird-day'), mass(perBirdDay, units), null, null]])),
  ]
}

function beneath({life, book}: Findings): string {
  const told = ([
    ['Hatch', toldApartWords(hatchesToldApart(life.hatchComparisons), 'eggs'), life.hatchComparisons], ['Life', toldApartWords(livesToldApart(life.livability.comparisons), 'chicks'), life.livability.comparisons],
    ['Lay', toldApartWords(layToldApart(life.lay.comparisons), 'hens'), life.lay.comparisons],
  ] as const).flatMap(([what, words, compared]) => (words === '' ? [] : [`${what}: ${words} ${alikeCaution(compared.map(({alike}) => alike))}`.trim()]))
  return told.length === 0 ? '' : `\n${[...told, ...setAsideWords(book.hatches)].join('\n')}\nEach comparison, hatch, pen and hen with --format csv or json.\n`
}
