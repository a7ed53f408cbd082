/** Hand-made logbooks for the pages: a project one week old, and a small invented one with a bit of everything. */
import type {
  Bird, Hatch, Locus, Logbook, Look, Parentage, Pen, Project, Rule, Score, Sex, Stay, Step, Strain, Tally, Trait,
} from '../../src/logbook/book.ts'
import {readGenotype} from '../../src/heredity/genotype-notation.ts'
import {looksOf} from '../../src/logbook/looks.ts'
import {looseWeighings} from '../../src/logbook/weighings.ts'
import {parseDate} from '../../src/records/dates.ts'
import type {PartialDate} from '../../src/records/dates.ts'
import type {Spot} from '../../src/records/problem.ts'

/** A type's fields, open to change while a book is put together. */
type Open<T> = {-readonly [K in keyof T]: T[K]}

export const at: Spot = {file: 'made-by-hand.md', path: []}

export function date(text: string): PartialDate {
  const read = parseDate(text)
  if (!read) throw new Error(`no date: ${text}`)
  return read
}

export const strain = (id: string, name: string, more: Partial<Strain> = {}): Strain =>
  ({at, body: '', id, name, role: 'other', trueFor: new Map(), alleles: new Map(), inbreeding: 0, kinship: 0, ...more})

export const trait = (id: string, name: string, more: Partial<Trait> = {}): Trait => ({
  at, body: '', id, name, kind: 'states', states: [], scale: null, unit: null, measure: null, atAge: null, window: null, wanted: {male: null, female: null},
  required: false, seenIn: null, scoredFrom: 0, fromFirstEgg: false, loci: [], shows: [], misscoring: new Map(), ...more,
})

export const holm = strain('holm-white', 'Holm White', {role: 'recurrent', body: 'White birds of the holm.'})
export const fell = strain('fell-buff', 'Fell Buff', {role: 'donor'})

/** A rule of a trait's inheritance: `rule({P: 'P/_'}, 'pea', loci)`. */
export function rule(genotypes: Readonly<Record<string, string>>, is: string, loci: readonly Locus[], more: Partial<Rule> = {}): Rule {
  const patterns = loci.flatMap(locus => {
    const text = genotypes[locus.symbol]
    const read = text === undefined ? null : readGenotype(text, locus)
    if (read && read.kind !== 'read') throw new Error(`no genotype: ${text}`)
    return read ? [[locus, read.pattern] as const] : []
  })
  return {patterns: new Map(patterns), is, sex: null, penetrance: 1, from: 'project', ...more}
}

const P: Locus = {symbol: 'P', on: 'autosome', alleles: ['P', 'p+']}
const pea = {kind: 'states', states: ['pea']} as const
export const comb = trait('comb', 'Comb', {
  body: 'Scored in hand, from *above*.', states: ['pea', 'single'], wanted: {male: pea, female: pea}, required: true, scoredFrom: 42,
  loci: [P],
  shows: [rule({P: 'P/_'}, 'pea', [P]), rule({P: 'p+/p+'}, 'single', [P])],
})
export const weight = trait('weight-20', 'Weight at 20 weeks', {
  kind: 'measured', unit: 'g', measure: 'weight', atAge: 140, window: 10,
  wanted: {male: {kind: 'about', value: 2400, tolerance: 0.1}, female: {kind: 'about', value: 1900, tolerance: 0.1}},
})

export const strainStep = (of: Strain): Step => ({label: 'strain', kind: 'strain', to: null, strains: [of], backcrosses: 0, interSe: 0, depth: 0})
export const F1: Step = {label: 'F1', kind: 'filial', to: null, strains: [holm, fell], backcrosses: 0, interSe: 0, depth: 1}
export const F2: Step = {label: 'F2', kind: 'filial', to: null, strains: [holm, fell], backcrosses: 0, interSe: 1, depth: 2}
export const founder: Parentage = {kind: 'founder', pairs: [], sires: [], dams: []}

/** Parents with a chance each; one sire and one dam make a known pair. */
export function parents(sires: readonly (readonly [Bird, number])[], dam: Bird | null): Parentage {
  const pairs = sires.map(([sire, chance]) => ({sire, dam, chance}))
  return {
    kind: pairs.length === 1 && dam ? 'known' : 'uncertain', pairs,
    sires: sires.map(([bird, chance]) => ({bird, chance})), dams: dam ? [{bird: dam, chance: 1}] : [],
  }
}

export function score(of: Trait, value: string | number, more: Partial<Score> = {}): Score {
  return {trait: of, value, on: null, by: null, struck: null, outside: false, at, ...more}
}

export function looks(...scores: readonly Score[]): Map<Trait, Look> {
  const found = new Map<Trait, Look>()
  for (const one of scores) {
    const all = [...(found.get(one.trait)?.scores ?? []), one]
    found.set(one.trait, {scores: all, counted: all.filter(each => each.struck === null && !each.outside).at(-1) ?? null})
  }
  return found
}

export const bird = (id: string, sex: Sex, more: Partial<Bird> = {}): Open<Bird> => ({
  kind: 'bird', count: 1, at, body: '', id, band: id, sex, hatched: null, hatch: null, parentage: founder, step: strainStep(holm), shares: new Map([[holm, 1]]),
  looks: new Map(), left: null, bands: [{band: id, from: null, to: null, lost: false}], sexings: [], strain: holm, stepWritten: null, keptAt: [], kept: null,
  family: null, mark: null, outOf: null, maybe: [], kin: [], flock: null, weighings: [], observations: [], photos: [], firstEgg: null, tested: new Map(), ...more,
})

export const stay = (of: Bird, more: Partial<Stay> = {}): Stay => ({bird: of, from: null, to: null, chance: null, at, ...more})

export const pen = (id: string, season: number, more: Partial<Pen> = {}): Open<Pen> =>
  ({at, body: '', id, season, males: [], females: [], from: null, to: null, keeper: null, intends: null, hatches: [], ...more})

export const hatch = (id: string, more: Partial<Hatch> = {}): Open<Hatch> => ({
  at, body: '', id, pens: [], strain: null, flock: null, set: null, laid: null, on: null, eggs: null, eggsByDam: [], clear: null, deadInGerm: null,
  deadInShell: null, bad: null, hatched: null, setAside: null, machine: null, broody: null, rearing: id, chicks: [], tallies: [], unlisted: 0, parentage: founder, step: F1,
  shares: new Map(), keeper: null, ...more,
})

export const tally = (of: Hatch, count: number, more: Partial<Tally> = {}): Open<Tally> => ({
  kind: 'tally', count, written: count, mark: null, at, sex: 'unknown', hatched: of.on, hatch: of, parentage: of.parentage, step: of.step, shares: of.shares,
  looks: new Map(), left: null, sexings: [], ...more,
})

export const project: Project = {
  at, body: '', name: 'Skerry Fowl', species: 'chicken', aim: 'A small-combed fowl that stands wind and wet.', begun: date('2024-02'), recurrent: holm,
  donors: [fell], ladder: ['F1', 'F2', 'F3'], units: 'metric', paper: 'a4', limits: {matingInbreeding: 0.125, inbreedingPerGeneration: 0.01}, spermStoreDays: 21,
  incubationDays: 21, site: {url: null, language: 'en'},
}

/** A bird with what linking makes of its weighings and of the tally it was banded from, besides the scores it was given. */
export function withLooks(one: Open<Bird>, traits: readonly Trait[]): Bird {
  if (one.weighings.length > 0 || one.outOf) one.looks = looksOf(one, new Map([...one.looks].map(([of, {scores}]) => [of, scores])), traits)
  return one
}

export function logbook(asOf: string, {looseWeighings: loose = [], ...more}: Partial<Logbook> = {}): Logbook {
  const book: Logbook = {
    project, asOf: date(asOf).first, strains: [holm, fell], traits: [comb, weight], loci: new Map([[P.symbol, {locus: P, known: null}]]), linkages: [], keepers: [], birds: [], pens: [], hatches: [], looseWeighings: [],
    eggCounts: [], feedings: [], shows: [], sheets: [], drafts: [], requirements: null, care: [], diary: [], stepNotes: new Map(), tellableFiles: new Set(), later: 0, checksum: 'ab12cd34ef567890'.repeat(4), ...more,
  }
  for (const one of book.birds) withLooks(one, book.traits)
  return {...book, looseWeighings: looseWeighings(loose, book.traits)}
}

/** Four birds and no hatch: what a project has after a week. */
export function weekOld(): Logbook {
  const buff = {strain: fell, step: strainStep(fell), shares: new Map([[fell, 1]])}
  return logbook('2024-02-12', {birds: [bird('H-1', 'male'), bird('H-2', 'female'), bird('B-1', 'female', buff), bird('B-2', 'female', buff)]})
}

/** Two seasons with uncertain sires, a tally, a struck score, a lost bird, a bird sexed twice. */
export function smallBook(): Logbook {
  const buff = {strain: fell, step: strainStep(fell), shares: new Map([[fell, 1]]), looks: looks(score(comb, 'pea'))}
  const cock = bird('H-1', 'male', {looks: looks(score(comb, 'single'))}), second = bird('H-3', 'male')
  const hen = bird('B-1', 'female', buff), sister = bird('B-2', 'female', {...buff, left: {on: date('2025-03'), how: 'died', why: 'found dead'}})
  const penA = pen('2024-A', 2024, {
    males: [stay(cock, {to: date('2024-03-15')}), stay(second, {from: date('2024-03-16')})], females: [stay(hen), stay(sister)], from: date('2024-02-10'),
    to: date('2024-05-01'), intends: 'F1',
  })
  const half = new Map([[holm, 0.5], [fell, 0.5]])
  const one = hatch('2024-01', {
    pens: [{pen: penA, eggs: null}], set: date('2024-03-02'), on: date('2024-03-23'), eggs: 20, clear: 3, deadInGerm: 1, deadInShell: 2, hatched: 14,
    machine: 'I1', parentage: parents([[cock, 0.7], [second, 0.3]], hen), shares: half, unlisted: 2,
  })
  const chick = (id: string, sex: Sex, grams: number | null, more: Partial<Bird> = {}): Bird => bird(id, sex, {
    hatched: date('2024-03-23'), hatch: one, parentage: parents([[cock, 0.7], [second, 0.3]], hen), step: F1, shares: half, strain: null,
    looks: looks(score(comb, 'pea', {on: date('2024-05-04')})),
    weighings: grams === null ? [] : [{measure: 'weight', value: grams, on: date('2024-08-10'), at}], ...more,
  })
  const chicks = [
    chick('24-001', 'male', 2310, {kept: {on: date('2024-10-01'), why: 'for breeding, best of his hatch'}}),
    chick('24-002', 'male', 2455, {left: {on: date('2024-10-01'), how: 'culled', why: 'narrow'}}),
    chick('24-003', 'female', 1840, {kept: {on: date('2024-10-01'), why: 'for breeding'}, body: 'A bold one. <script>alert(1)</script>'}),
    chick('24-004', 'female', 1905), chick('24-005', 'female', 1760), chick('24-006', 'female', 2010), chick('24-007', 'female', 1955),
    chick('24-008', 'female', 1875, {sexings: [{is: 'male', on: date('2024-06'), because: null}, {is: 'female', on: date('2024-09-12'), because: 'laid'}]}),
    chick('24-009', 'unknown', null, {
      looks: looks(score(comb, 'single', {on: date('2024-04-01'), struck: 'too early'})), left: {on: null, how: 'lost', why: null},
    }),
  ]
  const three = tally(one, 3, {looks: looks(score(comb, 'pea')), left: {on: date('2024-04-05'), how: 'sold', why: null}, mark: 'basket 2'})
  Object.assign(one, {chicks, tallies: [three]})
  penA.hatches = [one]
  const penB = pen('2025-A', 2025, {males: [stay(chicks[0]!)], females: [stay(chicks[2]!), stay(chicks[3]!)], from: date('2025-02-10'), intends: 'F2'})
  const two = hatch('2025-01', {
    pens: [{pen: penB, eggs: null}], set: date('2025-03-01'), on: date('2025-03-22'), eggs: 12, hatched: 6, step: F2, shares: half, broody: hen,
    parentage: {kind: 'uncertain', pairs: [chicks[2]!, chicks[3]!].map(dam => ({sire: chicks[0]!, dam, chance: 0.5})), sires: [{bird: chicks[0]!, chance: 1}],
      dams: [chicks[2]!, chicks[3]!].map(each => ({bird: each, chance: 0.5}))},
  })
  const grand = ['25-001', '25-002', '25-003', '25-004', '25-005', '25-006'].map((id, index) => bird(id, index % 2 ? 'female' : 'male', {
    hatched: two.on, hatch: two, parentage: two.parentage, step: F2, shares: half, strain: null,
    looks: looks(score(comb, index === 5 ? 'single' : 'pea', {on: date('2025-05-20')}), ...(index === 1 ? [score(comb, 'single', {on: date('2025-05-22')})] : [])),
  }))
  two.chicks = grand
  penB.hatches = [two]
  return logbook('2025-10-30', {birds: [cock, second, hen, sister, ...chicks, ...grand], pens: [penA, penB], hatches: [one, two]})
}
