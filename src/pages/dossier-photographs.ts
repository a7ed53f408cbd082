/** Photographs for the dossier, by sex, age and colour variety, with their dates; what is wanting stands in the same table. */
import {showAgeWithin} from '../findings/show-age.ts'
import {varietyOf} from '../findings/variety-of.ts'
import type {Findings} from '../findings/study.ts'
import type {Bird, Logbook, Photo} from '../logbook/book.ts'
import {dateWords} from './dates.ts'
import type {NumberedTable, References} from './dossier-behind.ts'
import {figured, NOTHING} from './numbers.ts'
import type {Cell} from './page.ts'
import {plates, type Plate} from './plates.ts'
import {birdWord} from './sex-words.ts'

/** Pictures in one dossier at most, so that the file stays small enough to be sent. */
const MOST_PICTURES = 8

interface Pictured {
  readonly bird: Bird
  readonly photo: Photo
}

export interface PhotographsView {
  readonly words: string
  readonly table: NumberedTable | null
  readonly plates: readonly Plate[]
}

const GROUPS = [
  {sex: 'male', age: 'grown', name: 'Males, grown'}, {sex: 'male', age: 'young', name: 'Males, young'},
  {sex: 'female', age: 'grown', name: 'Females, grown'}, {sex: 'female', age: 'young', name: 'Females, young'},
] as const

export function photographsView({book}: Findings, refs: References): PhotographsView {
  const all = [...book.birds].reverse().filter(({step}) => step.kind !== 'strain').flatMap(bird => bird.photos.map(photo => ({bird, photo})))
  if (all.length === 0) return {words: 'No photograph of a bird of the breed is on record.', table: null, plates: []}
  const draft = book.drafts.at(-1), varieties = draft && draft.varieties.length > 1 ? draft.varieties : [null]
  const groups = varieties.flatMap(variety => GROUPS.map(group => ({
    name: variety === null ? group.name : `${variety.name}: ${group.name.toLowerCase()}`,
    pictures: all.filter(({bird, photo}) => bird.sex === group.sex && showAgeWithin(bird, photo.on) === group.age && (variety === null || (draft && varietyOf(bird, draft)?.name === variety.name))),
  })))
  const placed = new Set(groups.flatMap(({pictures}) => pictures)), others = all.filter(picture => !placed.has(picture))
  const named = [...groups, ...(others.length === 0 ? [] : [{name: 'Day, sex or variety not known', pictures: others}])]
  const shown = inTurn(named.map(({pictures}) => pictures)).slice(0, MOST_PICTURES)
  return {
    words: `${figured(all.length, 'photograph')} of birds of the breed${shown.length < all.length ? `, of which ${shown.length} stand here; the others are on the birds’ pages` : ''}. Young: in the year it hatched.`,
    table: tableOf(named, refs), plates: plates(shown.map(picture => captioned(picture, book)), book.project.name, false),
  }
}

/** The first of every group, then the second of each, and so on. */
function inTurn(groups: readonly (readonly Pictured[])[]): readonly Pictured[] {
  const longest = groups.reduce((most, {length}) => Math.max(most, length), 0)
  return Array.from({length: longest}, (_, place) => groups.flatMap(group => group[place] ?? [])).flat()
}

function captioned({bird, photo}: Pictured, {project, asOf}: Logbook): Photo {
  const who = `${bird.band}, ${birdWord(bird, project.species, photo.on?.first ?? asOf)}`
  const words = photo.caption?.startsWith(`${bird.band} `) ? photo.caption.slice(bird.band.length + 1) : photo.caption
  return {...photo, alt: photo.alt ?? who, caption: words === null ? who : `${who}: ${words.charAt(0).toLowerCase()}${words.slice(1)}`}
}

function tableOf(groups: readonly {readonly name: string; readonly pictures: readonly Pictured[]}[], refs: References): NumberedTable {
  const {name: title, ...head} = refs.table('photographs by sex and age')
  return {
    ...head, columns: [{head: 'Birds'}, {head: 'Photographs', number: true}, {head: 'Taken'}, {head: 'Behind it'}],
    rows: groups.map(({name, pictures}): readonly Cell[] => {
      const days = [...new Set(pictures.flatMap(({photo}) => photo.on ?? []))].sort((a, b) => a.first - b.first).map(dateWords)
      const undated = pictures.filter(({photo}) => photo.on === null).length
      return pictures.length === 0 ? [name, '0', 'none yet', NOTHING] : [
        name, String(pictures.length), [...new Set(days), ...(undated === 0 ? [] : [`${undated} undated`])].join(', '),
        refs.to({of: `${title}, ${name.toLowerCase()}`, birds: pictures.map(({bird}) => bird), records: pictures.map(({bird}) => bird.at)}),
      ]
    }),
  }
}
