/** `figures clauses`, as a reader and as a program gets it. */
import {readFileSync} from 'node:fs'
import {describe, expect, it} from 'vitest'
import {clausesToRead} from '../../src/commands/clauses-to-read.ts'
import {figures, type FiguresOptions} from '../../src/commands/figures.ts'
import {figuresHelp} from '../../src/commands/figures-help.ts'
import {study} from '../../src/findings/study.ts'
import {plainClause, plainDraft, plainSection} from '../paper-parts.ts'
import {bird, comb, date, F2, logbook, looks, score} from '../pages/small-logbook.ts'
import {listeningWorld} from '../folders/listening-world.ts'

function asked(more: Partial<FiguresOptions> = {}) {
  const world = listeningWorld()
  const code = figures({question: 'clauses', folder: 'content', format: 'table', asOf: undefined, quiet: true, ...more}, world)
  return {code, out: world.said.out, err: world.said.err}
}

interface Row {
  readonly clause: string
  readonly step: string | null
  readonly sex: string | null
  readonly words: string
  readonly count: number
  readonly total: number
  readonly share: number | null
  readonly birds: string | null
  readonly records: string | null
  readonly under_draft: string | null
}

describe('clausesToRead(findings)', () => {
  it('gives the share of those that meet a clause outright, and beside it who is accepted all the same', () => {
    const pea = {kind: 'states', states: ['pea']} as const, accepted = {what: 'Single combs', looks: {male: {kind: 'states', states: ['single']}, female: null}, until: 2025, then: null} as const
    const draft = plainDraft(1, '2022-01-10', {sections: [plainSection('male', [plainClause('male/comb', 'Comb', 'Pea.', {trait: comb, allows: {male: pea, female: null}, accepted})])]})
    const birds = ['pea', 'single'].map((is, place) => bird(`c-${place}`, 'male', {hatched: date('2024-04-01'), step: F2, strain: null, looks: looks(score(comb, is, {on: date('2025-02-01')}))}))
    expect(clausesToRead(study(logbook('2025-06-01', {traits: [comb], drafts: [draft], birds}))).table.rows[0]?.slice(2, 7)).toEqual(['male', '1 of 2, 1 more accepted', '50.0%', '9.5–90.5', '1 of 2, 1 more accepted'])
  })
})

describe('figures clauses', () => {
  it('says of the demo which clause has the lowest share so far, and which nobody scores', () => {
    const {code, out} = asked()
    expect(code).toBe(0)
    // counted apart in the scoring days of 2025: of 23 pullets of BC3F3 the last neatness is neat in 12, the females with a pea comb
    expect(out).toMatch(/comb-and-wattles +\w* +female +12 of 23 +52\.2% +33\.0–70\.8/)
    expect(out).toMatch(/Words alone, no trait shows them: .*general-characteristics-male\/wings/)
    expect(out.indexOf('12 of 23')).toBeLessThan(out.indexOf('100.0%'))
  })

  it('gives every row as JSON, the worst first, with the birds that missed it and where their scores stand', () => {
    const rows = JSON.parse(asked({format: 'json'}).out) as Row[]
    expect(Object.keys(rows[0] ?? {}).join()).toBe('clause,section,trait,mandatory,if_missed,step,sex,words,count,total,share,low,high,family_low,family_high,accepted,unscored,sex_unknown,variety_unknown,other_words,under_draft,birds,records')
    const whole = rows.filter(({step, sex, words, share}) => step === 'BC3F3' && sex === 'all' && words === 'as now' && share !== null).map(({share}) => share ?? 0)
    expect(whole).toEqual([...whole].sort((a, b) => a - b))
    for (const {count, total, birds, words} of rows) if (total > 0 && words === 'as now') expect((birds ?? '').split(' ').filter(band => band !== '').length).toBeLessThanOrEqual(total - count)
    const [worst] = rows
    // every bird that is named missed it: its row is there, in the place that is told
    for (const place of (worst?.records ?? '').split(' ').filter(each => each.includes('.csv:'))) {
      const [file = '', line = ''] = place.split(':')
      expect(readFileSync(`content/${file}`, 'utf8').split('\n')[Number(line) - 1]).toMatch(/^2\d-\d+,/)
    }
    expect(worst?.birds?.split(' ')).toHaveLength(11)
  })

  it('says why there are no rows before the first draft', () => expect(asked({asOf: 17000}).out).toContain('the standard has not been drafted by that day'))
  it('tells its columns', () => expect(figuresHelp(['clauses'])).toMatch(/under_draft +drafts that the birds counted were scored under/))
})
