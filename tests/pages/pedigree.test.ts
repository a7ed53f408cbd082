import {describe, expect, it} from 'vitest'
import {known, legend, pedigree} from '../../src/pages/pedigree.ts'
import {bird, F1, parents, smallBook} from './small-logbook.ts'

const plain = () => ({fill: 'solid', words: 'marked'}) as const
const sire = bird('S', 'male'), dam = bird('D', 'female')

describe('pedigree(bird)', () => {
  it('stands sire above dam, the bird itself without a link', () => {
    const tree = pedigree(bird('C', 'female', {parentage: parents([[sire, 1]], dam), step: F1}), plain)
    expect(tree.names).toEqual([{text: 'C', link: null, chance: null}])
    expect(tree.parents.map(parent => [parent.names[0]?.text, parent.note, parent.symbol, parent.label])).toEqual([['S', 'Holm White', 'm1', 'sire, marked'], ['D', 'Holm White', 'f1', 'dam, marked']])
    expect(tree.label).toBe('female, marked')
    expect(known(tree)).toEqual({one: 2, several: 0, none: 0})
  })
  it('shows candidates with their chances and goes no further behind them', () => {
    const chick = smallBook().birds.find(each => each.id === '24-001')
    const [above] = pedigree(chick ?? sire, plain).parents
    expect(above?.names.map(name => [name.text, name.chance])).toEqual([['H-1', '70.0%'], ['H-3', '30.0%']])
    expect(above?.parents).toEqual([])
    expect(above).toMatchObject({symbol: 'mq', label: 'sire, uncertain', note: 'one of these'})
  })
  it('says so when a sire was never sexed', () => {
    const [above] = pedigree(bird('C', 'male', {parentage: parents([[bird('X', 'unknown'), 1]], dam)}), plain).parents
    expect(above).toMatchObject({symbol: 'u1', label: 'sire, sex unknown, marked'})
  })
  it('says when a parent is not recorded, and leaves founders without parents', () => {
    const tree = pedigree(bird('C', 'male', {parentage: {...parents([], dam), kind: 'uncertain', pairs: [{sire: null, dam, chance: 1}]}}), plain)
    expect(tree.parents[0]).toMatchObject({names: [], label: 'sire', unnamed: 'not recorded', symbol: 'mq'})
    expect(tree.parents[1]?.parents).toEqual([])
    expect(known(tree)).toEqual({one: 1, several: 0, none: 1})
  })
  it('draws four generations above the bird and no more', () => {
    const line = Array.from({length: 6}).reduce<ReturnType<typeof bird>>((child, _, index) => bird(`G${index}`, 'male', {parentage: parents([[child, 1]], dam)}), sire)
    const depth = (tree: ReturnType<typeof pedigree>): number => 1 + Math.max(0, ...tree.parents.map(depth))
    expect(depth(pedigree(line, plain))).toBe(5)
  })
})

describe('legend(tree, marked)', () => {
  const chick = bird('C', 'male', {parentage: parents([[sire, 1]], dam)})

  it('says what the drawing shows, and nothing that it does not', () => {
    expect(legend(pedigree(chick, plain), 'comb')).toBe('Sire above, dam below. Square male, circle female. Solid: the wanted comb.')
    expect(legend(pedigree(chick, () => ({fill: 'open', words: 'single'})), 'comb')).toBe('Sire above, dam below. Square male, circle female. Open: another comb than wanted.')
    expect(legend(pedigree(chick, ({id}) => ({fill: id === 'C' ? 'open' : id === 'S' ? 'solid' : 'speckled', words: ''})), 'comb'))
      .toBe('Sire above, dam below. Square male, circle female. Solid: the wanted comb. Open: another. Speckled: not scored, or not certain.')
  })
  it('does not speak of parents that are not drawn, nor of a trait where none is marked', () => {
    expect(legend(pedigree(bird('X', 'unknown'), plain), 'comb')).toBe('Diamond unknown. Solid: the wanted comb.')
    expect(legend(pedigree(chick, plain), null)).toBe('Sire above, dam below. Square male, circle female.')
  })
})
