import {founderInbreeding, isContradicted} from './founder-flow.ts'
import {geneFlow, selfKinship, selfRule, type GeneFlow, type SelfRule} from './gene-flow.ts'
import {isFounder, type Animal, type Pedigree, type Transmission} from './pedigree.ts'
import {sharesFrom} from './shares-from.ts'
import {walksOf, type Walks} from './walks.ts'

/** F of one bird: its mean over the matings it may come from, and the least and most that one of them gives. */
export interface Inbreeding {
  readonly mean: number
  readonly low: number
  readonly high: number
  /** from the likeliest of its matings */
  readonly likeliest: number
}

export interface Coancestry {
  readonly flow: GeneFlow
  /** by animal. On the Z it is a cock's; a hen has one copy, so what stands there is what a brother of hers has */
  readonly inbreeding: readonly Inbreeding[]
  /** kinship of an animal with itself */
  self(animal: number): number
  /** kinship of any two; of an animal with itself as `self` */
  between(a: number, b: number): number
  /** kinship of `a` with each of these, in one walk */
  withEach(a: number, others: readonly number[]): Float64Array
  /** row by row, the kinship of each with each */
  among(animals: readonly number[]): readonly Float64Array[]
  /** the same of nodes of the flow: base populations too, of which parents outside the pedigree are drawn */
  amongNodes(nodes: readonly number[]): readonly Float64Array[]
  /** mean kinship of each with the whole group, itself included, and of the group with itself; one walk however many they are */
  meansAmong(animals: readonly number[]): {readonly each: Float64Array; readonly group: number}
}

/**
 * How closely bred is every bird, and how closely related are any two?
 *
 *     K(i, j) = Σ w(i, p) K(p, j)        over the parents p of the younger, w as in `geneFlow`
 *     F(i)    = Σ p(s, d) K(s, d)        over the matings it may come from
 *     K(i, i) = ½ (1 + F(i))             for a bird with two copies; 1 with one
 *
 * K is never written out. It is T·D·T′ with T the gene flow and D diagonal, d(i) = K(i, i) − w′Kw, so that a row of K is one walk up the ancestors
 * of a bird and one down again. Birds are worked level by level, a level's matings gathered by sire: a sire's walk serves all his hens.
 * Time is about (sires per level) × (ancestors), memory proportional to birds and parents.
 *
 * Uncertain parents are averaged (each bird's doubt is taken as its own; a dam that is one hen for several chicks is a stand-in shared by them).
 * A sire who himself descends from that one unknown hen h meets no other hen than his own dam, whichever of them she is:
 *
 *     F(i) = Σ p(s, d) (K(s, d) + T(s, h) (K(d, d) − K(h, d)))      T(s, h) the share of his genes that came down from her
 *
 * which is K(s, h) where sire and dam are doubtful apart from each other.
 *
 * @param pedigree chances of a bird's matings sum to 1; what is wanting to 1 counts as birds unrelated to any
 * @param selfOf another kinship of an animal with itself than by its F; asked of parents before their chicks
 * @returns F and kinship, 0 to 1
 * @throws RangeError as `geneFlow`; when stated kinships of founders contradict each other (a bird more like others than like itself)
 * @see Henderson 1976, Biometrics 32:69; Colleau 2002, Genet. Sel. Evol. 34:409 (the walks); Henderson 1988, J. Anim. Sci. 66:1614 (averaged parents);
 *   Fernando & Grossman 1990, Theor. Appl. Genet. 80:75 (the sex chromosome). All from memory.
 */
export function coancestry(pedigree: Pedigree, transmission: Transmission = 'autosome', selfOf: SelfRule = selfRule(pedigree, transmission)): Coancestry {
  const flow = geneFlow(pedigree, transmission, selfOf)
  const walks = walksOf(flow), shareFrom = sharesFrom(flow)
  const {bases, founderOwn} = flow
  const {own} = walks
  const {animals} = pedigree
  const selves = new Float64Array(flow.nodes)
  const inbreeding: Inbreeding[] = []

  const settle = (index: number, kinship: Kinships): void => {
    const node = bases + index
    const self = selfOf(index, inbreeding[index]?.mean ?? 0)
    selves[node] = self
    own[node] = self - ofBlend(flow, node, (a, b) => (a === b ? selves[a] ?? 0 : kinship(a, b)))
  }
  const found = (index: number): void => {
    const f = founderInbreeding(pedigree, index)
    inbreeding[index] = {mean: f, low: f, high: f, likeliest: f}
    const free = founderOwn[bases + index] ?? NaN
    if (isContradicted(free)) throw new RangeError(`the kinships stated of founder ${index} contradict each other`)
    selves[bases + index] = selfOf(index, f)
    own[bases + index] = free
  }
  const standIn = (index: number, {oneOf = [], sex}: Animal): void => {
    const each = oneOf.map(({animal, chance}) => ({chance, of: inbreeding[animal] ?? NONE, self: selves[bases + animal] ?? 0}))
    const known = each.reduce((sum, {chance}) => sum + chance, 0)
    inbreeding[index] = summary(each.map(({chance, of}) => ({chance, f: of.mean})))
    selves[bases + index] = each.reduce((sum, {chance, self}) => sum + chance * self, Math.max(0, 1 - known) * selfKinship(0, sex, transmission))
    own[bases + index] = (selves[bases + index] ?? 0) - ofBlend(flow, bases + index, (a, b) => (a === b ? selves[a] ?? 0 : walks.row(a, [b])[0] ?? 0))
  }

  const ofPair = ({sire, dam, bredBack}: Pair, hen: number | null, kinship: Kinships): number => {
    if (sire === null) return 0
    if (dam === null) return bredBack * selfKinship(0, 'female', transmission)
    const apart = kinship(sire, dam)
    return bredBack === 0 || hen === null ? apart : apart + bredBack * ((selves[dam] ?? 0) - kinship(hen, dam))
  }

  pedigree.bases.forEach(({kinship}, base) => {
    selves[base] = kinship
    own[base] = founderOwn[base] ?? 0
  })
  for (const level of levelsOf(flow)) {
    const families = new Families(flow, shareFrom)
    for (const index of level) {
      const animal = animals[index]
      if (!animal) continue
      if (animal.oneOf) standIn(index, animal)
      else if (isFounder(animal)) found(index)
      else families.add(index, animal)
    }
    const kinship = families.kinships(walks)
    for (const {matings, hen, members} of families.all) {
      const f = summary(matings.map(({chance, ...pair}) => ({chance, f: nothingLess(ofPair(pair, hen, kinship))})))
      for (const index of members) {
        inbreeding[index] = f
        settle(index, kinship)
      }
    }
  }

  const nodesOf = (list: readonly number[]) => list.map(animal => bases + animal)
  return {
    flow, inbreeding,
    self: animal => selves[bases + animal] ?? NaN,
    between: (a, b) => walks.row(bases + a, [bases + b])[0] ?? NaN,
    withEach: (a, others) => walks.row(bases + a, nodesOf(others)),
    among: list => walks.rows(nodesOf(list)),
    amongNodes: walks.rows,
    meansAmong: list => walks.means(nodesOf(list)),
  }
}

/** Sums that should come to nothing may end a hair below it. */
const nothingLess = (kinship: number): number => Math.max(0, kinship)

const NONE: Inbreeding = {mean: 0, low: 0, high: 0, likeliest: 0}

/** Mean, range and the likeliest (the first of equals) of what each possibility gives; chances that want something to 1 leave it at 0. */
function summary(each: readonly {readonly chance: number; readonly f: number}[]): Inbreeding {
  const [only] = each
  if (!only) return NONE
  let mean = 0, low = Infinity, high = -Infinity, known = 0, likeliest = only
  for (const here of each) {
    mean += here.chance * here.f
    known += here.chance
    low = Math.min(low, here.f)
    high = Math.max(high, here.f)
    if (here.chance > likeliest.chance + 1e-12) likeliest = here
  }
  return {mean, low: known < 1 - 1e-9 ? Math.min(low, 0) : low, high, likeliest: likeliest.f}
}

/** Animals of one level, at which no one is another's ancestor. */
function levelsOf({level, order, bases}: GeneFlow): readonly (readonly number[])[] {
  const levels: number[][] = []
  for (const node of order) if (node >= bases) (levels[level[node] ?? 0] ??= []).push(node - bases)
  return Array.from(levels, each => each ?? [])
}

type Kinships = (a: number, b: number) => number

/** w′Kw: the kinship with itself of the blend of sources that a node is made of. */
function ofBlend({first, source, weight}: GeneFlow, node: number, kinship: Kinships): number {
  let sum = 0
  for (let k = first[node] ?? 0, end = first[node + 1] ?? 0; k < end; k++) {
    const a = source[k] ?? 0, share = weight[k] ?? 0
    sum += share * share * kinship(a, a)
    for (let m = k + 1; m < end; m++) sum += 2 * share * (weight[m] ?? 0) * kinship(a, source[m] ?? 0)
  }
  return sum
}

/** Chicks of one level gathered by the matings they may come from, and the kinships that these need, gathered so that few walks give them all. */
class Families {
  readonly #flow: GeneFlow
  readonly #shareFrom: ReturnType<typeof sharesFrom>
  readonly #byMatings = new Map<Animal['matings'], Map<string, Family>>()
  /** one node → another → their kinship, NaN until it is worked */
  readonly #asked = new Map<number, Map<number, number>>()

  constructor(flow: GeneFlow, shareFrom: ReturnType<typeof sharesFrom>) {
    this.#flow = flow
    this.#shareFrom = shareFrom
  }

  add(index: number, animal: Animal): void {
    const {matings, outside, damStandIn} = animal
    const key = `${outside?.sire ?? ''} ${outside?.dam ?? ''} ${damStandIn ?? ''}`
    const alike = this.#byMatings.get(matings) ?? new Map<string, Family>()
    this.#byMatings.set(matings, alike)
    const family = alike.get(key) ?? this.#family(animal)
    alike.set(key, family)
    family.members.push(index)
    const {first, source, bases} = this.#flow
    const from = first[bases + index] ?? 0, to = first[bases + index + 1] ?? 0
    for (let k = from; k < to; k++) for (let m = k + 1; m < to; m++) this.#ask(source[k] ?? 0, source[m] ?? 0)
  }

  get all(): readonly Family[] {
    return [...this.#byMatings.values()].flatMap(alike => [...alike.values()])
  }

  /** every kinship asked for, worked now */
  kinships(walks: Walks): Kinships {
    for (const [node, others] of this.#asked) {
      const list = [...others.keys()]
      walks.row(node, list).forEach((kinship, place) => others.set(list[place] ?? 0, kinship))
    }
    return (a, b) => {
      const kinship = this.#asked.get(a)?.get(b) ?? this.#asked.get(b)?.get(a)
      if (kinship === undefined) throw new Error(`the kinship of ${a} and ${b} was not asked for`)
      return kinship
    }
  }

  /** a node that others are already asked about keeps the question: one walk more saved */
  #ask(a: number, b: number): void {
    if (this.#asked.get(b)?.has(a)) return
    const [node, other] = this.#asked.has(a) || !this.#asked.has(b) ? [a, b] : [b, a]
    const others = this.#asked.get(node) ?? new Map<number, number>()
    this.#asked.set(node, others.set(other, NaN))
  }

  #family({matings: written, outside, damStandIn}: Animal): Family {
    const {bases, pedigree: {animals}} = this.#flow
    const node = (parent: number | null, beyond: number | null = null) => (parent === null ? beyond : bases + parent)
    const hen = damStandIn === undefined ? null : bases + damStandIn
    // a hen of whom nobody is known that she might be stands in the pedigree herself
    const isHerself = damStandIn !== undefined && isFounder(animals[damStandIn])
    const matings = written.map(({sire: his, dam: hers, chance}): Family['matings'][number] => {
      const sire = node(his, outside?.sire), dam = isHerself ? hen : node(hers, outside?.dam)
      return {sire, dam, chance, bredBack: sire === null || hen === null || isHerself ? 0 : this.#shareFrom(sire, hen)}
    })
    for (const {sire, dam, bredBack} of matings) {
      if (sire !== null && dam !== null) this.#ask(sire, dam)
      if (hen !== null && dam !== null && bredBack !== 0) this.#ask(hen, dam)
    }
    return {matings, hen, members: []}
  }
}

/** One mating, by nodes. */
interface Pair {
  readonly sire: number | null
  readonly dam: number | null
  /** share of the sire's genes that came down from the one unknown hen whom the chicks have for a dam */
  readonly bredBack: number
}

interface Family {
  readonly matings: readonly (Pair & {readonly chance: number})[]
  /** the stand-in for one unknown dam */
  readonly hen: number | null
  readonly members: number[]
}
