/**
 * The slow, obvious twin of `genotypeProbabilities`: lays out every history of a small flock one by one (which parents, which strands, which alleles), weighs each
 * by its chance and by what was seen, and counts. Shares no code with the engine beyond reading a rule (`lookOf`).
 */
import type {Flock} from '../../src/heredity/flock.ts'
import {matches} from '../../src/heredity/genotype-notation.ts'
import type {Alleles} from '../../src/heredity/locus.ts'
import {lookOf} from '../../src/heredity/look-rules.ts'

/** by locus: from the sire, from the dam; null for a Z that a hen has not */
type Strands = readonly (readonly [number, number | null])[]
interface Born {
  readonly strands: Strands
  readonly sire: number | null
  readonly dam: number | null
  readonly is: number | null
}

export interface Enumerated {
  readonly total: number
  /** animal → locus → `a/b` → probability */
  at(animal: number, locus: number): ReadonlyMap<string, number>
  sires(animal: number): ReadonlyMap<number | null, number>
  dams(animal: number): ReadonlyMap<number | null, number>
  together(animal: number): ReadonlyMap<string, number>
}

export const keyOf = ([a, b]: readonly [number, number | null]): string => (b === null ? `${a}/-` : a <= b ? `${a}/${b}` : `${b}/${a}`)

/**
 * @param order parents before chicks
 * @param slack share of scores that may be any state alike, and of tests that may say anything
 */
export function enumerate(flock: Flock, order: readonly number[], slack = 0): Enumerated {
  const {animals, bases} = flock.pedigree
  const {loci} = flock
  const tallies = new Map<string, number>()
  const add = (key: string, weight: number): void => void tallies.set(key, (tallies.get(key) ?? 0) + weight)
  const likelihoods = new Map<string, number>()
  const born: Born[] = []

  /** the weight of all histories that begin like this */
  const visit = (step: number, weight: number): number => {
    const index = order[step]
    if (index === undefined) return weight
    let sum = 0
    for (const {bird, chance} of histories(index)) {
      if (chance === 0) continue
      born[index] = bird
      const seen = likelihood(index, bird.strands)
      const found = seen === 0 ? 0 : visit(step + 1, weight * chance * seen)
      if (found === 0) continue
      bird.strands.forEach((pair, locus) => add(`at ${index} ${locus} ${keyOf(pair)}`, found))
      add(`together ${index} ${bird.strands.map(keyOf).join(' ')}`, found)
      add(`sire ${index} ${bird.sire}`, found)
      add(`dam ${index} ${bird.dam}`, found)
      sum += found
    }
    return sum
  }
  const total = visit(0, 1)

  const read = <Key>(prefix: string, parse: (text: string) => Key): ReadonlyMap<Key, number> =>
    new Map([...tallies].filter(([key]) => key.startsWith(prefix)).map(([key, weight]) => [parse(key.slice(prefix.length)), weight / total]))
  const number = (text: string): number | null => (text === 'null' ? null : Number(text))
  return {
    total,
    at: (animal, locus) => read(`at ${animal} ${locus} `, text => text),
    together: animal => read(`together ${animal} `, text => text),
    sires: animal => read(`sire ${animal} `, number),
    dams: animal => read(`dam ${animal} `, number),
  }

  /** every way a bird can be, with its chance; sexes of unknown birds are told by a Z locus, and without one do not matter */
  function histories(index: number): readonly {readonly bird: Born; readonly chance: number}[] {
    const animal = animals[index]!
    const sexes = animal.sex !== 'unknown' ? [[animal.sex, 1] as const] : [['male', 0.5] as const, ['female', 0.5] as const]
    if (animal.oneOf) {
      const rest = 1 - animal.oneOf.reduce((sum, {chance}) => sum + chance, 0)
      return [
        ...animal.oneOf.map(({animal: other, chance}) => ({bird: {...born[other]!, sire: null, dam: null, is: other}, chance})),
        ...(rest > 1e-12 ? sexes.flatMap(([sex, half]) => founders(animal.base, sex).map(({strands, chance}) => ({bird: {strands, sire: null, dam: null, is: null}, chance: chance * half * rest}))) : []),
      ]
    }
    if (animal.matings.length === 0) {
      return sexes.flatMap(([sex, half]) => founders(animal.base, sex).map(({strands, chance}) => ({bird: {strands, sire: null, dam: null, is: null}, chance: chance * half})))
    }
    const standIn = animal.damStandIn === undefined ? null : born[animal.damStandIn]!
    const matings = standIn ? animal.matings.filter(({dam}) => dam === standIn.is) : animal.matings
    const sum = matings.reduce((all, {chance}) => all + chance, 0)
    return matings.flatMap(({sire, dam, chance}) => {
      const left = sire === null ? gametesOutside(animal.outside?.sire ?? null) : gametes(born[sire]!.strands)
      const mother = standIn ?? (dam === null ? null : born[dam]!)
      const right = mother === null ? gametesOutside(animal.outside?.dam ?? null) : gametes(mother.strands)
      const chicks = sexes.flatMap(([sex, half]) => left.flatMap(one => right.map(other => {
        const strands: Strands = loci.map(({on}, locus) => [one.alleles[locus]!, on === 'Z' && sex === 'female' ? null : other.alleles[locus]!] as const)
        return {strands, chance: half * one.chance * other.chance * hatching(strands, sex)}
      })))
      const hatched = chicks.reduce((all, each) => all + each.chance, 0)
      return hatched === 0 ? [] : chicks.map(each => ({bird: {strands: each.strands, sire, dam, is: null}, chance: (chance / (standIn ? sum : 1)) * each.chance / hatched}))
    })
  }

  function founders(base: number | null, sex: 'male' | 'female'): readonly {readonly strands: Strands; readonly chance: number}[] {
    const f = base === null ? 0 : bases[base]!.inbreeding
    const shares = flock.shares(base)
    let all: {strands: (readonly [number, number | null])[]; chance: number}[] = [{strands: [], chance: 1}]
    loci.forEach(({on, alleles}, locus) => {
      const p = Array.from(shares[locus]!)
      all = all.flatMap(({strands, chance}) => alleles.flatMap((_, a) => {
        if (on === 'Z' && sex === 'female') return [{strands: [...strands, [a, null] as const], chance: chance * p[a]!}]
        return alleles.map((_allele, b) => ({strands: [...strands, [a, b] as const], chance: chance * ((1 - f) * p[a]! * p[b]! + (a === b ? f * p[a]! : 0))}))
      }))
    })
    const hatched = all.map(each => ({...each, chance: each.chance * hatching(each.strands, sex)})).filter(({chance}) => chance > 0)
    const sum = hatched.reduce((whole, {chance}) => whole + chance, 0)
    return hatched.map(each => ({...each, chance: each.chance / sum}))
  }

  /** strand by strand along the loci in their order; loci that no record links cross over freely, but a hen hands on all of her Z */
  function gametes(strands: Strands): readonly {readonly alleles: readonly number[]; readonly chance: number}[] {
    let ways: {alleles: number[]; strand: number[]; chance: number}[] = [{alleles: [], strand: [], chance: 1}]
    strands.forEach(([a, b], locus) => {
      ways = ways.flatMap(({alleles, strand, chance}) => {
        if (b === null) return [{alleles: [...alleles, a], strand: [...strand, 0], chance}]
        const link = flock.linkages.find(({loci: [x, y]}) => Math.max(x, y) === locus)
        const before = link ? strand[Math.min(...link.loci)] : undefined
        return [0, 1].map(next => ({
          alleles: [...alleles, next === 0 ? a : b], strand: [...strand, next],
          chance: chance * (before === undefined ? 0.5 : next === before ? 1 - link!.recombination : link!.recombination),
        }))
      })
    })
    return ways
  }

  function gametesOutside(base: number | null): readonly {readonly alleles: readonly number[]; readonly chance: number}[] {
    const shares = flock.shares(base)
    return loci.reduce<{alleles: number[]; chance: number}[]>((ways, {alleles: names}, locus) =>
      ways.flatMap(({alleles, chance}) => names.map((_, allele) => ({alleles: [...alleles, allele], chance: chance * shares[locus]![allele]!}))).filter(({chance}) => chance > 0), [{alleles: [], chance: 1}])
  }

  function hatching(strands: Strands, sex: 'male' | 'female'): number {
    return flock.traits.reduce((product, {look}) => product * (1 - lookOf(look, strands.map(sorted), sex).lethal), 1)
  }

  function likelihood(index: number, strands: Strands): number {
    const key = `${index} ${strands.map(keyOf).join(' ')}`
    const known = likelihoods.get(key) ?? likelihoodOf(index, strands)
    likelihoods.set(key, known)
    return known
  }

  function likelihoodOf(index: number, strands: Strands): number {
    const alleles = strands.map(sorted), onZ = loci.findIndex(({on}) => on === 'Z')
    const {sex} = animals[index]!
    const told = sex !== 'unknown' ? sex : onZ >= 0 ? (alleles[onZ]![1] === null ? 'female' : 'male') : null
    let product = 1
    for (const {trait, scored} of flock.readings(index)) {
      const {look, misscoring} = flock.traits[trait]!
      const of = (each: 'male' | 'female'): number => {
        const {states, unsaid, lethal} = lookOf(look, alleles, each)
        const seen = Array.from(states).reduce((sum, chance, state) => sum + chance * scored.reduce((all, score) => all * ((1 - slack) * misscoring[state]![score]! + slack / look.states.length), 1), 0)
        return (seen + unsaid * look.states.length ** -scored.length) / (1 - lethal)
      }
      const only = told ?? look.seenIn
      product *= only ? of(only) : (of('male') + of('female')) / 2
    }
    // loci of one block are tested together: those linked, and all of the Z
    const tested = flock.tested(index), missed = new Set<string>()
    tested?.forEach((pattern, locus) => {
      if (pattern && !matches(pattern, alleles[locus]!)) missed.add(loci[locus]!.on === 'Z' ? 'Z' : String(flock.linkages.find(({loci: pair}) => pair.includes(locus))?.loci.join() ?? locus))
    })
    return product * slack ** missed.size
  }
}

const sorted = ([a, b]: readonly [number, number | null]): Alleles => (b === null || a <= b ? [a, b] : [b, a])
