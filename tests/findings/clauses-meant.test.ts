import {describe, expect, it} from 'vitest'
import {clausesMeant} from '../../src/findings/clauses-meant.ts'
import {PARTS_OF_FOWL} from '../../src/findings/parts-of-fowl.ts'
import {plainClause, plainDraft, plainSection} from '../paper-parts.ts'

const male = (name: string, title: string, text = '') => plainClause(`male/${name}`, title, text, {sex: 'male'})
const female = (name: string, title: string, text = '') => plainClause(`female/${name}`, title, text, {sex: 'female'})
const draft = plainDraft(1, '2025-01-01', {sections: [
  plainSection('male', [male('type', 'Type and carriage'), male('body', 'Body', 'Deep. Shoulders and saddle wide.'), male('tail', 'Tail'), male('head', 'Head', 'Beak stout.'), male('comb', 'Comb'), male('wattles', 'Wattles and ear-lobes'), male('legs', 'Legs and feet'), male('plumage', 'Plumage', 'Back and saddle shed water.')], {kind: 'male'}),
  plainSection('female', [female('tail', 'Tail'), female('comb', 'Comb and wattles')], {kind: 'female'}),
  plainSection('colour', [plainClause('colour/male', 'Male', 'Hackle white.', {sex: 'male'}), plainClause('colour/both', 'In both sexes', 'Eyes red.')], {kind: 'colour'}),
  plainSection('faults', [plainClause('faults/serious', 'Serious', 'Comb coarse. Squirrel tail.')], {kind: 'faults'}),
]})

describe('clausesMeant(remark, sex, draft)', () => {
  it.each([
    ['Comb coarse.', 'male', ['male/comb']], ['Comb coarse.', 'female', ['female/comb']],
    // several at once
    ['Good head, tail not yet furnished.', 'female', ['male/head', 'female/tail']],
    // plural for singular and the other way round
    ['Both wattles torn.', 'male', ['male/wattles']], ['One wattle torn.', 'female', ['female/comb']], ['Types well.', 'male', ['male/type']],
    // the wider part: a saddle belongs to the back, a back to the body
    ['Narrow behind the saddle.', 'male', ['male/body']], ['Toes crooked.', 'male', ['male/legs']], ['Eye pale.', 'male', ['male/head']],
    // no clause is headed by it or by a wider part: those that name it in their text
    ['Smoky in the hackle.', 'male', ['colour/male']],
    // the colour as a whole
    ['Colour good.', 'male', ['colour/male', 'colour/both']],
    ['Neat all over.', 'female', []], ['', 'male', []], ['More of these males, please.', 'male', []],
  ] as const)('%s of a %s', (remark, sex, ids) => expect(clausesMeant(remark, sex, draft)).toEqual(ids))

  it('takes a bird of unknown sex for either', () => expect(clausesMeant('Tail high.', 'unknown', draft)).toEqual(['male/tail', 'female/tail']))
  it('never takes a fault for what is described', () => expect(clausesMeant('A serious squirrel', 'male', draft)).toEqual([]))
  it('knows titles in any language by their own words', () => {
    const other = plainDraft(1, '2025-01-01', {sections: [plainSection('hahn', [plainClause('hahn/schwanz', 'Schwanz', '')])]})
    expect(clausesMeant('Schwanz zu hoch', 'male', other)).toEqual(['hahn/schwanz'])
  })
})

describe('PARTS_OF_FOWL', () => {
  it('have each word once, and a wider part that exists, without a ring', () => {
    const words = PARTS_OF_FOWL.flatMap(part => part.words), ids = PARTS_OF_FOWL.map(({id}) => id)
    expect(new Set(words).size).toBe(words.length)
    for (const {within} of PARTS_OF_FOWL) if (within !== null) expect(ids).toContain(within)
    for (const part of PARTS_OF_FOWL) {
      let wider = part.within, steps = 0
      while (wider !== null && steps < 9) {
        const up: string = wider
        wider = PARTS_OF_FOWL.find(({id}) => id === up)?.within ?? null
        steps += 1
      }
      expect(steps).toBeLessThan(5)
    }
  })
})
