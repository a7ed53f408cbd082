import {describe, expect, it} from 'vitest'
import {bookOf, type Files} from './around.ts'

const WEIGHED = 'band,on,weight\nH-1,2024-08-10,2400\n'
const tellable = (files: Files, name: string): boolean => bookOf({...files, [`measures/${name}.csv`]: WEIGHED}).tellableFiles.has(`measures/${name}.csv`)

describe('the files that may be named on the site', () => {
  const keeper = (consent: string) => ({'keepers/ness.md': `---\nname: Olsen Strand\nsigns-as: [olly, os]\nconsent: ${consent}\n---\n`})

  it.each(['2024-ness', '2024_NESS', 'weights-ness-1', '2024-olsen-strand', 'olsenstrand', '2024 Strand', '2024-olly', '2024-os', '2024-ôlly'])('are not those that hold a keeper who has not agreed: %s', name => {
    expect(tellable(keeper('no'), name)).toBe(false)
    expect(tellable(keeper('yes'), name)).toBe(true)
  })

  it('are those that only hold the letters of a short name', () => {
    expect(tellable(keeper('no'), '2024-ostrich')).toBe(true)
  })

  it('are not those that hold a judge who has not agreed, or somebody without a record', () => {
    const show = (consent: string) => ({'shows/2024-11-02-hall.md': `---\nname: Show\non: 2024-11-02\njudges: {j1: {name: Mabel Thorn, consent: ${consent}}}\n---\n`})
    expect([tellable(show('no'), 'show-thorn'), tellable(show('yes'), 'show-thorn')]).toEqual([false, true])
    expect(tellable({'scores/a.csv': 'band,on,by,comb\nH-1,2024-08-10,fenwick,single\n'}, '2024-fenwick')).toBe(false)
    expect(tellable({}, '2024-fenwick')).toBe(true)
  })
})
