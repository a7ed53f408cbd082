/** Small flocks for the twin: loops, doubtful sires and dams, families of one unknown hen, birds without a band, unknown sexes, tests, scores that are wrong now and then. */
import fc from 'fast-check'
import type {Flock, Reading} from '../../src/heredity/flock.ts'
import type {GenotypePattern} from '../../src/heredity/genotype-notation.ts'
import type {Linkage, Locus} from '../../src/heredity/locus.ts'
import type {LookRule, LookRules} from '../../src/heredity/look-rules.ts'
import type {Animal, Mating} from '../../src/pedigree/pedigree.ts'

export interface Genetics {
  readonly loci: readonly Locus[]
  readonly linkages?: readonly Linkage[]
  readonly looks: readonly LookRules[]
}

const rule = (is: number | 'lethal', ...patterns: readonly (GenotypePattern | null)[]): LookRule => ({patterns, is, sex: null, penetrance: 1})
const locus = (symbol: string, on: Locus['on'] = 'autosome', alleles: readonly string[] = [symbol, `${symbol.toLowerCase()}+`]): Locus => ({symbol, on, alleles})

/** what the flocks are drawn of: one locus of each kind, two in one look, two linked, a lethal */
export const KINDS: Readonly<Record<string, Genetics>> = {
  'an autosomal dominant': {loci: [locus('P')], looks: [{loci: [0], states: ['pea', 'single'], seenIn: null, rules: [rule(0, [0, 'any']), rule(1, [1, 'any'])]}]},
  'an incomplete dominant of three alleles': {
    loci: [locus('A', 'autosome', ['A', 'B', 'C'])],
    looks: [{loci: [0], states: ['a', 'ab', 'other'], seenIn: null, rules: [rule(0, [0, 0]), rule(1, [0, 1]), rule(2, null)]}],
  },
  'a Z-linked dominant': {loci: [locus('S', 'Z')], looks: [{loci: [0], states: ['silver', 'gold'], seenIn: null, rules: [rule(0, [0, 'any']), rule(1, [1, 'any'])]}]},
  'a dominant seen in hens': {loci: [locus('O')], looks: [{loci: [0], states: ['blue', 'plain'], seenIn: 'female', rules: [rule(0, [0, 'any']), rule(1, null)]}]},
  'extra toes of four in five': {
    loci: [locus('Po')], looks: [{loci: [0], states: ['five', 'four'], seenIn: null, rules: [{...rule(0, [0, 'any']), penetrance: 0.8}, rule(1, null)]}],
  },
  'a lethal double dominant': {
    loci: [locus('Cp')], looks: [{loci: [0], states: ['short', 'long'], seenIn: null, rules: [rule('lethal', [0, 0]), rule(0, [0, 1]), rule(1, [1, 1])]}],
  },
  'walnut': {
    loci: [locus('R'), locus('P')],
    looks: [{loci: [0, 1], states: ['walnut', 'rose', 'pea', 'single'], seenIn: null, rules: [rule(0, [0, 'any'], [0, 'any']), rule(1, [0, 'any'], null), rule(2, null, [0, 'any']), rule(3, null, null)]}],
  },
  'two lethals of one look, not linked': {
    loci: [locus('Cp'), locus('Et')],
    looks: [{loci: [0, 1], states: ['short', 'tufted', 'plain'], seenIn: null, rules: [rule(0, [0, 1], null), rule('lethal', [0, 0], null), rule(1, [1, 1], [0, 1]), {...rule('lethal', null, [0, 0]), penetrance: 0.8}, rule(2, [1, 1], null)]}],
  },
  'two linked loci': {
    loci: [locus('O'), locus('P')], linkages: [{loci: [0, 1], recombination: 0.1}],
    looks: [
      {loci: [0], states: ['blue', 'plain'], seenIn: null, rules: [rule(0, [0, 'any']), rule(1, null)]},
      {loci: [1], states: ['pea', 'single'], seenIn: null, rules: [rule(0, [0, 'any']), rule(1, null)]},
    ],
  },
  'two loci of the Z': {
    loci: [locus('S', 'Z'), locus('K', 'Z')],
    looks: [
      {loci: [0], states: ['silver', 'gold'], seenIn: null, rules: [rule(0, [0, 'any']), rule(1, null)]},
      {loci: [1], states: ['slow', 'fast'], seenIn: null, rules: [rule(0, [0, 'any']), rule(1, null)]},
    ],
  },
}

export interface FlockShape {
  /** chicks with parents of their own, each any birds before it */
  readonly chicks?: number
  /** `family`: after them two chicks of one unknown hen, a single one where there are two loci; `found`: a cock without a band that is one of two, or neither, and a chick of his;
   *  `pen`: a third hen, or one outside, and two chicks of whichever hen, one of whom has a chick of his own */
  readonly and?: 'family' | 'found' | 'pen' | null
  /** birds are tested now and then; such records may contradict each other */
  readonly tests?: boolean
}

/** A founder cock and a hen, another hen where there is one locus of two alleles; any bird may have any before it as parents. */
export function randomFlock({loci, linkages = [], looks}: Genetics, {chicks = 3, and = null, tests = false}: FlockShape = {}): fc.Arbitrary<Flock> {
  const share = fc.integer({min: 1, max: 9}), birds = chicks + 6
  return fc.record({
    shares: fc.array(fc.tuple(...loci.map(({alleles}) => fc.tuple(...alleles.map(() => share)))), {minLength: 2, maxLength: 2}),
    inbreeding: loci.length === 1 ? fc.constantFrom(0, 0.25) : fc.constant(0),
    wrong: fc.constantFrom(0, 0.05),
    sexes: fc.array(fc.constantFrom<Animal['sex']>('male', 'female', 'male', 'female', 'unknown'), {minLength: chicks, maxLength: chicks}),
    parents: fc.array(fc.array(fc.record({sire: fc.nat(), dam: fc.nat(), weight: fc.integer({min: 1, max: 3})}), {minLength: 1, maxLength: 2}), {minLength: chicks + 2, maxLength: chicks + 2}),
    plain: fc.array(fc.boolean(), {minLength: chicks, maxLength: chicks}),
    neither: fc.constantFrom(0, 0.2),
    seen: fc.array(fc.tuple(...looks.map(({states}) => fc.array(fc.nat(states.length - 1), {maxLength: 2}))), {minLength: birds, maxLength: birds}),
    unseen: fc.array(fc.boolean(), {minLength: birds, maxLength: birds}),
    tested: fc.array(tests ? fc.option(fc.tuple(...loci.map(each => fc.option(somePattern(each)))), {freq: 2}) : fc.constant(null), {minLength: birds, maxLength: birds}),
  }).map(({shares, inbreeding, wrong, sexes, parents, plain, neither, seen, unseen, tested}): Flock => {
    const few = loci.length > 1 || loci.some(({alleles}) => alleles.length > 2)
    const animals: Animal[] = [{sex: 'male', matings: [], base: 0}, {sex: 'female', matings: [], base: 1}, ...(and === null && few ? [] : [{sex: and === 'found' ? 'male' : 'female', matings: [], base: null} as const])]
    const cocks = () => animals.flatMap((animal, number) => (animal.sex === 'male' ? [number] : [])), hens = () => animals.flatMap((animal, number) => (animal.sex === 'female' ? [number] : []))
    const pick = (list: readonly number[], at: number): number | null => (at % 11 === 10 ? null : list[at % list.length] ?? null)
    sexes.forEach((sex, index) => {
      const drawn = (parents[index] ?? []).slice(0, plain[index] ? 1 : 2)
      animals.push({sex, matings: together(drawn.map(({sire, dam, weight}) => ({sire: pick(cocks(), sire), dam: pick(hens(), dam), chance: weight}))), base: null})
    })
    if (and === 'family') {
      const candidates = hens().slice(-2), chance = (1 - neither) / candidates.length, hen = animals.length, males = cocks()
      animals.push({sex: 'female', matings: [], base: 1, oneOf: candidates.map(animal => ({animal, chance}))})
      const dams = [...candidates.map(dam => ({dam, chance})), ...(neither > 0 ? [{dam: null, chance: neither}] : [])]
      for (const drawn of parents.slice(loci.length > 1 ? -1 : -2)) {
        animals.push({sex: 'female', base: null, damStandIn: hen, matings: together(drawn.flatMap(({sire, weight}) => dams.map(({dam, chance: of}) => ({sire: males[sire % males.length] ?? 0, dam, chance: weight * of}))))})
      }
    }
    if (and === 'found') {
      const candidates = cocks().slice(-2), hen = hens().at(-1) ?? null, cock = animals.length
      animals.push({sex: 'male', matings: [], base: 0, oneOf: candidates.map(animal => ({animal, chance: (1 - neither) / candidates.length}))})
      animals.push({sex: 'female', base: null, matings: together([{sire: cock, dam: hen, chance: 2}, ...(plain[0] ? [] : [{sire: 0, dam: hen, chance: 1}])])})
    }
    if (and === 'pen') {
      animals.push({sex: 'female', matings: [], base: 1})
      const all = parents.flat(), weighed = (birds: readonly (number | null)[], from: number) => {
        const weights = birds.map((_, place) => (plain[0] ? 1 : all[from + place]?.weight ?? 1)), sum = weights.reduce((total, weight) => total + weight, 0)
        return birds.map((bird, place) => [bird, (weights[place] ?? 1) / sum] as const)
      }
      const sires = weighed(cocks().slice(0, 2), 0), dams = weighed([...hens().slice(0, 3), ...(neither > 0 ? [null] : [])], 2)
      const matings = sires.flatMap(([sire, of]) => dams.map(([dam, chance]) => ({sire, dam, chance: of * chance})))
      for (const sex of ['male', 'female'] as const) animals.push({sex, matings, base: null})
      animals.push({sex: 'unknown', matings: [{sire: animals.length - 2, dam: 1, chance: 1}], base: null})
    }
    const wholes = shares.map(byLocus => byLocus.map(list => {
      const sum = list.reduce((all, each) => all + each, 0)
      return list.map(each => each / sum)
    }))
    const traits = looks.map(look => ({look, misscoring: look.states.map((_, state) => look.states.map((_other, scored) => (scored === state ? 1 - wrong : wrong / (look.states.length - 1))))}))
    return {
      pedigree: {animals, bases: [{inbreeding, kinship: 0, within: null}, {inbreeding: 0, kinship: 0, within: null}], kin: []},
      loci, linkages, traits,
      shares: base => wholes[base ?? 1] ?? [],
      readings: animal => (unseen[animal] ? [] : (seen[animal] ?? []).flatMap((scored, trait): Reading[] => {
        const only = looks[trait]?.seenIn
        return scored.length === 0 || (only && animals[animal]?.sex !== only) ? [] : [{trait, scored}]
      })),
      tested: animal => tested[animal] ?? null,
    }
  })
}

/** like pairs summed, all made to sum to 1 */
function together(matings: readonly Mating[]): readonly Mating[] {
  const sum = matings.reduce((all, {chance}) => all + chance, 0), pairs = new Map<string, Mating>()
  for (const {sire, dam, chance} of matings) {
    const key = `${sire} ${dam}`
    pairs.set(key, {sire, dam, chance: (pairs.get(key)?.chance ?? 0) + chance / sum})
  }
  return [...pairs.values()]
}

const somePattern = ({alleles, on}: Locus): fc.Arbitrary<GenotypePattern> =>
  fc.tuple(fc.nat(alleles.length - 1), fc.oneof(fc.constant('any' as const), fc.nat(alleles.length - 1), ...(on === 'Z' ? [fc.constant('none' as const)] : [])))
    .map(([one, other]): GenotypePattern => (typeof other === 'number' && other < one ? [other, one] : [one, other]))
