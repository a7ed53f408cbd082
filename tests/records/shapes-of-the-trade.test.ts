/** What barns really produce: every form of the record formats, read as it is written. */
import {describe, expect, it} from 'vitest'
import {dayOf} from '../../src/records/dates.ts'
import {front, readFiles} from './reading.ts'

const clean = (file: string, text: string) => {
  const {records, problems} = readFiles({[file]: text})
  expect(problems).toEqual([])
  return records
}
const hatch = (text: string) => clean('hatches/2024-03.md', front(text)).hatch[0]?.data
const bird = (text: string) => clean('birds/22-004.md', front(`band: 22-004\n${text}`)).bird[0]?.data
const trait = (text: string) => clean('traits/comb.md', front(text)).trait[0]?.data
const pen = (text: string) => clean('pens/2024-A.md', front(`season: 2024\n${text}`)).pen[0]?.data

describe('the project', () => {
  it('reads every key of the first record', () => {
    const data = clean('project.md', front(`
name: Skerry Fowl
species: chicken                 # incubation days and sex chromosomes follow
aim: A small-combed, white-skinned dual-purpose fowl that stands wind and wet.
begun: 2019-02
strains: {recurrent: holm-white, donors: [fell-buff]}
ladder: [F1, BC1, BC2, BC3, BC3F2, BC3F3]
units: metric
limits: {mating-inbreeding: 12.5%, inbreeding-per-generation: 1%}`)).project[0]?.data
    expect(data).toMatchObject({
      name: 'Skerry Fowl', species: 'chicken', begun: {text: '2019-02'}, units: 'metric', ladder: ['F1', 'BC1', 'BC2', 'BC3', 'BC3F2', 'BC3F3'],
      strains: {recurrent: {text: 'holm-white'}, donors: [{text: 'fell-buff'}]},
      limits: {'mating-inbreeding': 0.125, 'inbreeding-per-generation': 0.01},
    })
  })
})

describe('a strain', () => {
  it('breeds true, or has stated shares of alleles', () => {
    const data = clean('strains/fell-buff.md', front(`
name: Fell Buff
role: donor
true-for: {comb: pea, skin: yellow}
alleles: {S: {S: 10%, s+: 90%}}
inbreeding: 5%
kinship: 4%`)).strain[0]?.data
    expect(data?.['true-for']?.map(({key, value}) => [key, value])).toEqual([['comb', 'pea'], ['skin', 'yellow']])
    expect(data?.alleles?.map(({key, value}) => [key, value.map(allele => [allele.key, allele.value])])).toEqual([['S', [['S', 0.1], ['s+', 0.9]]]])
    expect(data).toMatchObject({inbreeding: 0.05, kinship: 0.04})
  })
})

describe('a bird', () => {
  it('reads the founder with a story', () => {
    const data = bird(`
sex: male
strain: holm-white
hatched: 2022-03-14
keeper: kelpgarth
bands: [{band: Y-118, from: 2022-03, to: 2022-05}, {band: 22-004, from: 2022-05}]
comb: single
skin: white
observations:
  - {on: 2022-09-01, temperament: calm, vigour: 4 of 5, note: Carries his tail low.}
  - {on: 2023-02-11, health: "frostbite on two points, healed"}
left: 2025-08-01 sold`)
    expect(data?.others.map(({key, value}) => [key, value])).toEqual([['comb', 'single'], ['skin', 'white']])
    expect(data?.bands?.map(({band, to}) => [band.text, to?.on.text])).toEqual([['Y-118', '2022-05'], ['22-004', undefined]])
    expect(data?.observations?.map(({others}) => others.map(({key, value}) => `${key}: ${value}`))).toEqual([
      ['temperament: calm', 'vigour: 4 of 5', 'note: Carries his tail low.'], ['health: frostbite on two points, healed'],
    ])
    expect(data?.left).toMatchObject({on: {text: '2025-08-01'}, how: 'sold', why: null})
  })

  it.each([
    ['out-of: {hatch: 2024-03, mark: basket 2}', {'out-of': {hatch: {text: '2024-03'}, mark: 'basket 2'}}],
    ['family: basket-2', {family: 'basket-2'}],
    ['sex: [{is: male, on: 2024-06}, {is: female, on: 2024-09-12, because: laid}]', {sex: [{is: 'male'}, {is: 'female', on: {text: '2024-09-12'}, because: 'laid'}]}],
    ['bands: [{band: 24-031, to: 2024-06 lost}, {band: Y-7, from: 2024-06}]', {bands: [{to: {on: {text: '2024-06'}, lost: true}}, {band: {text: 'Y-7'}, from: {text: '2024-06'}}]}],
    ['same-as: 24-044', {'same-as': {text: '24-044'}}],
    ['maybe: [24-031, 24-044]', {maybe: [{text: '24-031'}, {text: '24-044'}]}],
    ['kept-at: [{keeper: kelpgarth, to: 2025-10-25}, {keeper: ternhouse, from: 2025-10-25}]', {'kept-at': [{keeper: {text: 'kelpgarth'}}, {keeper: {text: 'ternhouse'}}]}],
    ['kept: 2024-10-01 for breeding, best keel of her hatch', {kept: {on: {text: '2024-10-01'}, words: 'for breeding, best keel of her hatch'}}],
    ['kin: [{with: H21-02, kinship: 25%}]', {kin: [{with: {text: 'H21-02'}, kinship: 0.25}]}],
    ['photos: [{file: a.jpg, on: 2025-09-03, view: left}]', {photos: [{file: 'a.jpg', view: 'left'}]}],
    ['flock: {name: breeder-7, kinship: 25%}', {flock: {name: 'breeder-7', kinship: 0.25}}],
    ['sire: {22-004: 50%, 22-009: 50%}', {sire: {kind: 'birds', birds: [{band: {text: '22-004'}, chance: 0.5}, {band: {text: '22-009'}, chance: 0.5}]}}],
    ['sire: [22-004, 22-009]', {sire: {kind: 'birds', birds: [{chance: null}, {chance: null}]}}],
    ['dam: unknown', {dam: {kind: 'outside', strain: null}}],
    ['sire: {strain: holm-white}', {sire: {kind: 'outside', strain: {text: 'holm-white'}}}],
    ['left: died', {left: {on: null, how: 'died', why: null}}],
    ['private: {vet: "called twice", costs: [12, 30]}', {}],
    ['private:', {}],
    ['observations: [{on: 2022-09-01, temperament: calm, private: SECRET}]', {observations: [{others: [{key: 'temperament', value: 'calm'}]}]}],
    ['photos: [{file: a.jpg, private: [one, two]}]', {photos: [{file: 'a.jpg'}]}],
  ])('says %s', (line, expected) => {
    expect(bird(line)).toMatchObject(expected)
  })
})

describe('a trait', () => {
  it('reads states with their loci', () => {
    const data = trait(`
name: Comb
states: [pea, single]
target: pea                      # required in the standard
required: true
scored-from: 6 weeks
loci:
  P: {on: autosome, alleles: [P, p+]}
shows:                           # first match wins
  - {P: P/_, is: pea}
  - {P: p+/_, is: single}
misscoring: 1%`)
    expect(data).toMatchObject({states: ['pea', 'single'], target: {text: 'pea'}, required: true, 'scored-from': 42, misscoring: 0.01})
    expect(data?.shows?.map(rule => [rule.is, rule.others.map(({key, value}) => `${key} ${value}`)])).toEqual([['pea', ['P P/_']], ['single', ['P p+/_']]])
  })

  it('reads a measured trait, whose age is called at', () => {
    expect(trait(`
name: Weight at 20 weeks
measure: weight
unit: g
at: 20 weeks
window: 10 days
target: {male: 2.4 kg, female: 1.9 kg}
tolerance: 10%`)).toMatchObject({measure: 'weight', unit: 'g', at: 140, window: 10, tolerance: 0.1})
  })

  it.each([
    ['scale: 1 to 10\ntarget: at least 7', {scale: {from: 1, to: 10}, target: {text: 'at least 7'}}],
    ['order: [clear, tinted, dark]', {order: ['clear', 'tinted', 'dark']}],
    ['states: [a, b]\nseen-in: female from first egg', {'seen-in': {sex: 'female', fromFirstEgg: true}}],
    ['states: [a, b]\nseen-in: male', {'seen-in': {sex: 'male', fromFirstEgg: false}}],
  ])('says %s', (lines, expected) => {
    expect(trait(`name: A trait\n${lines}`)).toMatchObject(expected)
  })

  it('is mistaken in one direction', () => {
    const {misscoring} = trait('name: Comb\nstates: [neat, coarse, single]\nmisscoring: {coarse: {neat: 15%}, single: {coarse: 2%}}') ?? {}
    expect(typeof misscoring === 'object' && misscoring.map(({key, value}) => [key, value.map(look => [look.key, look.value])])).toEqual([
      ['coarse', [['neat', 0.15]]], ['single', [['coarse', 0.02]]],
    ])
  })
})

describe('a pen', () => {
  it.each([
    ['males: [22-004]', [{band: {text: '22-004'}, chance: undefined}]],
    ['males: 22-004', [{band: {text: '22-004'}}]],
    ['males: [{band: 22-004, to: 2024-03-15}, {band: 22-009, from: 2024-03-16}]', [{to: {text: '2024-03-15'}}, {from: {text: '2024-03-16'}}]],
    ['males: {22-004: 70%, 22-009: 30%}', [{band: {text: '22-004'}, chance: 0.7}, {band: {text: '22-009'}, chance: 0.3}]],
  ])('says %s', (line, males) => {
    expect(pen(`${line}\nfemales: [22-017, 22-021, 22-030]\nfrom: 2024-02-10\nto: 2024-05-01\nkeeper: kelpgarth\nintends: BC2`)?.males).toMatchObject(males)
  })
})

describe('a hatch', () => {
  it('reads the printed hatch, chick by chick', () => {
    const data = hatch(`
pen: 2024-A
set: 2024-03-02
eggs: 48
clear: 5
dead-in-germ: 2
dead-in-shell: 4
hatched: 37
on: 2024-03-23
chicks:
  - {band: 24-031, sex: female, dam: 22-017, comb: pea, skin: white, chick-down: buff}
  - {band: 24-032, sex: male, comb: single, left: 2024-06-30 culled}`)
    expect(data).toMatchObject({eggs: {total: 48, byDam: []}, clear: 5, 'dead-in-germ': 2, 'dead-in-shell': 4, hatched: 37, pen: [{pen: {text: '2024-A'}, eggs: null}]})
    expect(data?.chicks?.map(chick => [chick.band.text, chick.others.length])).toEqual([['24-031', 3], ['24-032', 1]])
  })

  it('counts chicks that never wore a band', () => {
    expect(hatch(`
tallies:
  - {chicks: 12, mark: basket 2, dam: 22-017, comb: pea, skin: white, left: 2024-04-05 sold}
  - {chicks: 3, comb: single, left: "2024-03-24 culled, off type"}
  - {chicks: 2, left: 2024-03-29 died}           # never scored: counted as unscored`)?.tallies).toMatchObject([
      {chicks: 12, mark: 'basket 2', others: [{key: 'comb', value: 'pea'}, {key: 'skin', value: 'white'}], left: {how: 'sold'}},
      {chicks: 3, left: {how: 'culled', why: 'off type'}},
      {chicks: 2, others: [], left: {how: 'died', on: {text: '2024-03-29'}}},
    ])
  })

  it.each([
    ['pen: {2024-A: 30 eggs, 2024-B: 18 eggs}', {pen: [{pen: {text: '2024-A'}, eggs: 30}, {pen: {text: '2024-B'}, eggs: 18}]}],
    ['strain: holm-white\nflock: {name: breeder-7, kinship: 25%}', {strain: {text: 'holm-white'}, flock: {name: 'breeder-7', kinship: 0.25}}],
    ['machine: I3', {machine: 'I3'}],
    ['broody: 22-030', {broody: {text: '22-030'}}],
    ['laid: 2024-02-20..2024-03-01', {laid: {from: dayOf(2024, 2, 20), to: dayOf(2024, 3, 1)}}],
    ['eggs: {22-017: 14, 22-021: 20, unknown: 14}', {eggs: {total: 48, byDam: [{dam: {text: '22-017'}, eggs: 14}, {dam: {text: '22-021'}, eggs: 20}]}}],
    ['chicks: [{band: 24-040, pen: 2024-B, family: basket-2, maybe: [24-031]}]', {chicks: [{pen: {text: '2024-B'}, family: 'basket-2'}]}],
  ])('says %s', (lines, expected) => {
    expect(hatch(lines)).toMatchObject(expected)
  })
})

describe('shows, papers, care and steps', () => {
  it('reads entries and score sheets', () => {
    const data = clean('shows/2025-09-27-wadderness.md', front(`
name: Autumn show
on: 2025-09-27
entries: [{bird: 25-036, class: pullet, judge: j2, result: 1 of 7, remark: Good head.}]
scores: [{bird: 24-031, by: inga, draft: 5, type: 28 of 30}]`)).show[0]?.data
    expect(data).toMatchObject({entries: [{result: {place: 1, of: 7}, remark: 'Good head.'}], scores: [{draft: 5, others: [{key: 'type', value: '28 of 30'}]}]})
  })

  it('reads papers and waivers', () => {
    const data = clean('requirements.md', front(`
requirements:
  - {kind: shows-and-judges, title: Shows, asked: Three shows, waived: {because: All gatherings were forbidden., by: association, paper: w1.pdf}}
papers: [{file: vet.pdf, on: 2024-08-12, until: 2025-08-12, proves: veterinary, private: true}]`)).requirements[0]?.data
    expect(data).toMatchObject({papers: [{proves: 'veterinary', private: 'true'}], requirements: [{waived: {because: 'All gatherings were forbidden.'}}]})
  })

  it('reads care written in braces', () => {
    expect(clean('care/2024-05-02-worms.md', front(
      '{on: 2024-05-02, to: 2024-05-07, pens: [2024-A], care: treatment, with: as the label says, eggs-withheld-until: 2024-05-21}',
    )).care[0]?.data).toMatchObject({care: 'treatment', pens: [{text: '2024-A'}], 'eggs-withheld-until': {text: '2024-05-21'}})
  })

  it('reads a step that joins ladders', () => {
    expect(clean('steps/SY1.md', front('{name: SY1, joins: [BC2-pea, BC2-blue], inter-se-from: 0}')).step[0]?.data)
      .toMatchObject({name: 'SY1', joins: ['BC2-pea', 'BC2-blue'], 'inter-se-from': 0})
  })
})

describe('text stays as it was written', () => {
  it.each(['0031', '24:15', '1.10', 'no', '2024-04', 'null', '~', 'true', '1e3', '0x1F', '.5', '12_000', '=', '<<'])('%s', word => {
    expect(hatch(`machine: ${word}\nchicks: [{band: ${word}, comb: ${word}}]`)).toMatchObject({machine: word, chicks: [{band: {text: word}, others: [{value: word}]}]})
  })
})
