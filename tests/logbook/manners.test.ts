import {describe, expect, it} from 'vitest'
import {MANNERS_OF_STANDARD, neededIn} from '../../src/logbook/manners.ts'
import {hasPart, partsWanting} from '../../src/logbook/parts-of-standard.ts'
import {sectionKindOf} from '../../src/logbook/section-kinds.ts'
import {MANNERS, SECTION_KINDS} from '../../src/records/schema/draft.ts'
import {plainClause, plainDraft, plainSection} from '../paper-parts.ts'

describe.each(MANNERS)('the %s manner', manner => {
  const {parts} = MANNERS_OF_STANDARD[manner]
  it('has a place and a name for every kind of section, once', () => {
    expect(parts.map(({kind}) => kind).sort()).toEqual([...SECTION_KINDS].sort())
    expect(new Set(parts.map(({name}) => name)).size).toBe(parts.length)
  })
  it('knows each of its names again as a heading', () => {
    for (const {kind, name} of parts) expect([name, sectionKindOf(name)]).toEqual([name, kind])
  })
  it('needs both sexes, colour and weights', () => expect(neededIn(manner)).toEqual(expect.arrayContaining(['male', 'female', 'colour', 'weights'])))
})

describe('where disqualifications stand', () => {
  const place = (manner: (typeof MANNERS)[number], kind: string): number => MANNERS_OF_STANDARD[manner].parts.findIndex(part => part.kind === kind)
  it('is last in the commonwealth, before the weights in north america, after serious faults and before the weights on the continent', () => {
    expect(place('commonwealth', 'disqualifications')).toBe(SECTION_KINDS.length - 1)
    for (const manner of ['north-american', 'continental'] as const) expect(place(manner, 'disqualifications')).toBeLessThan(place(manner, 'weights'))
  })
})

describe('which parts a draft has', () => {
  const clause = (id: string, title: string) => plainClause(id, title, 'Words.')
  const faults = plainSection('faults', [clause('faults/serious', 'Serious'), clause('faults/disqualifications', 'Disqualifications')], {kind: 'faults'})
  const whole = plainDraft(1, '2024-01-01', {
    weights: [{class: 'cock', grams: 3200, high: null}], points: [{name: 'Type', points: 100}],
    sections: [plainSection('male', [clause('male/tail', 'Tail')], {kind: 'male'}), plainSection('female', [], {kind: 'female', lead: 'As the male.'}), plainSection('colour', [clause('colour/male', 'Male')], {kind: 'colour'}), faults],
  })
  it('is told by sections, by clauses headed so and by the front matter', () => {
    expect(partsWanting(whole)).toEqual([])
    expect(hasPart(whole, 'serious-faults')).toBe(true)
    expect(hasPart(whole, 'disqualifications')).toBe(true)
    expect(hasPart(whole, 'egg')).toBe(false)
    expect(hasPart({...whole, egg: 'tinted'}, 'egg')).toBe(true)
  })
  it('is more in some manners', () => {
    expect(partsWanting({...whole, manner: 'commonwealth'})).toEqual(['origin', 'classification'])
    expect(partsWanting({...whole, manner: 'continental'})).toEqual(['origin', 'impression', 'egg', 'rings'])
    expect(partsWanting({...whole, manner: 'north-american', origin: 'Bred here.'})).toEqual(['utility'])
  })
  it('takes no clause on one sex of another section for a section on it', () => {
    expect(hasPart({...whole, sections: whole.sections.filter(({kind}) => kind === 'colour')}, 'male')).toBe(false)
  })
  it('counts no heading without words', () => {
    expect(partsWanting({...whole, points: [], sections: whole.sections.map(section => (section.kind === 'female' ? {...section, lead: ' '} : section))})).toEqual(['female', 'points'])
  })
})
