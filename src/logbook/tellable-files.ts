/** Which of the records' files may be named on the site. A file's name is a keeper's own words, and may hold the name of somebody who has not agreed to be named. */
import type {Bench} from './bench.ts'

/** Files whose names hold nobody who goes unnamed. `strangers`: what keepers without a record of their own are called. */
export function tellableFiles({files, records}: Pick<Bench, 'files' | 'records'>, strangers: readonly string[]): ReadonlySet<string> {
  const keepers = records.keeper.filter(({data}) => !(data.consent?.given ?? false)).flatMap(({id, data}) => [id, data.name, ...(data['signs-as'] ?? [])])
  const judges = records.show.flatMap(({data}) => (data.judges ?? []).flatMap(({key, value}) => (value.consent === true ? [] : [key, value.name])))
  const names = [...keepers, ...judges, ...strangers]
  const words = new Set(names.flatMap(wordsOf))
  const partly = [...words, ...names.map(name => wordsOf(name).join(''))].filter(part => part.length > SHORT)
  return new Set(files.filter(file => {
    const own = wordsOf(file.slice(file.indexOf('/') + 1).replace(/\.\w+$/, '')), together = own.join('')
    return !file.includes('/') || !(own.some(word => words.has(word)) || partly.some(part => together.includes(part)))
  }))
}

/** A name this short hides a file only as a word by itself. */
const SHORT = 3

const wordsOf = (text: string): string[] => text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase().split(/[^\p{L}\p{N}]+/u).filter(word => word !== '')
