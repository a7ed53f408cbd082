/** `figures lay`, as a reader and as a program gets it. */
import {describe, expect, it} from 'vitest'
import {figures, type FiguresOptions} from '../../src/commands/figures.ts'
import {figuresHelp} from '../../src/commands/figures-help.ts'
import {listeningWorld} from '../folders/listening-world.ts'

function asked(more: Partial<FiguresOptions> = {}) {
  const world = listeningWorld()
  const code = figures({question: 'lay', folder: 'content', format: 'table', asOf: undefined, quiet: true, ...more}, world)
  return {code, out: world.said.out, err: world.said.err}
}

describe('figures lay', () => {
  it('says of the demo how eggs hatched, chicks lived and hens laid, and warns of groups that were not kept alike', () => {
    const {code, out} = asked()
    expect(code).toBe(0)
    // counted apart from the hatch records: 32 of 45 in 2020; 98 eggs of five hens in 29 days and 131 of five others in 42
    expect(out).toMatch(/hatch of set +2020 +32 of 45 +71\.1%/)
    expect(out).toMatch(/hen-day rate +BC3 +229 in 355 hen-days +64\.5%/)
    expect(out).toContain('By the records none of these were kept alike')
    expect(out).toContain('Lay: No difference is shown: the limits leave room for none. By the records the two groups were not kept alike')
  })
  it('gives every row as JSON, with method, counts and whether the groups were kept alike', () => {
    const rows = JSON.parse(asked({format: 'json'}).out) as {what: string; against: string | null; kept_alike: string | null}[]
    expect(Object.keys(rows[0] ?? {}).join()).toBe('what,of,name,against,sex,age,value,low,high,unit,count,total,left_out,groups,missing_days,speaks_of,verdict,kept_alike,unlike,method')
    expect(rows.filter(({against}) => against !== null).every(({kept_alike}) => kept_alike !== null)).toBe(true)
    expect(new Set(rows.map(({what}) => what))).toContain('feed for an egg')
  })
  it('says why there are no rows of a book before its first egg', () => {
    expect(asked({asOf: 17000}).out).toContain('no egg has been set or counted by that day')
  })
  it('has an example and its columns in the help', () => {
    expect(figuresHelp(['figures', 'lay', '--help'])).toContain('pinfeather figures lay content\n')
    expect(figuresHelp(['figures', 'lay', '--help'])).toContain('kept_alike')
  })
})
