/**
 * The true genes of the demo's birds, and how they pass on. Three loci and four measured characters; nothing here is ever written into a
 * record, only what a keeper would have seen of it (`looks.ts`).
 *
 * Inheritance: P pea comb (incompletely dominant), W yellow skin (w recessive), S silver on the Z, so that a hen has one copy and gives it to
 * her sons alone. Measured characters: many unlinked loci with small effects, some fixed apart between the strains, some still mixed within each.
 */
import type {Chance} from '../bench/chance.ts'

export type Sex = 'male' | 'female'

/** One gamete's effects, a number for each locus. */
type Gamete = readonly number[]

export const CHARACTERS = {
  // shares of a Holm White's weight; a pure Fell Buff is 30% lighter
  weight: {apart: [-0.06, -0.06, -0.06, -0.06, -0.06, 0.05, 0.05, 0.05], within: Array<number>(10).fill(0.014)},
  // degrees above a Holm White's tail
  tail: {apart: [2.4, 2.4, 2, 2, 1.2], within: Array<number>(6).fill(1.3)},
  // steps of the shell card below a Holm White's
  shell: {apart: [-0.25, -0.25, -0.2, 0.1], within: Array<number>(4).fill(0.2)},
  // points of type below a Holm White's
  type: {apart: [-0.5, -0.5, -0.4, -0.4, -0.3, 0.2], within: Array<number>(8).fill(0.25)},
} as const
export type Character = keyof typeof CHARACTERS
const CHARACTER_NAMES = Object.keys(CHARACTERS) as Character[]

export interface Genes {
  readonly P: readonly ['P' | 'p+', 'P' | 'p+']
  readonly W: readonly ['W+' | 'w', 'W+' | 'w']
  /** two in males, one in females */
  readonly S: readonly ('S' | 's+')[]
  readonly characters: Readonly<Record<Character, readonly [Gamete, Gamete]>>
}

/** What a founding strain breeds true for; `apart` says whose side of the fixed differences it stands on. */
export interface StrainGenes {
  readonly P: 'P' | 'p+'
  readonly W: 'W+' | 'w'
  readonly S: 'S' | 's+'
  readonly apart: 'holm' | 'fell'
  /** added to the shell card's reading */
  readonly darker?: number
}

function founderGamete(character: Character, strain: StrainGenes, chance: Chance): Gamete {
  const {apart, within} = CHARACTERS[character]
  const darker = character === 'shell' ? (strain.darker ?? 0) / 2 : 0
  return [...apart.map(effect => (strain.apart === 'fell' ? effect : 0)), ...within.map(effect => (chance.happens(0.5) ? effect : -effect)), darker]
}

export function founder(strain: StrainGenes, sex: Sex, chance: Chance): Genes {
  return {
    P: [strain.P, strain.P], W: [strain.W, strain.W], S: sex === 'male' ? [strain.S, strain.S] : [strain.S],
    characters: record(character => [founderGamete(character, strain, chance), founderGamete(character, strain, chance)]),
  }
}

function passOn(pair: readonly [Gamete, Gamete], chance: Chance): Gamete {
  return pair[0].map((effect, locus) => (chance.happens(0.5) ? effect : pair[1][locus] ?? 0))
}

export function chickOf(sire: Genes, dam: Genes, sex: Sex, chance: Chance): Genes {
  const [ofSire, ofDam] = [chance.oneOf(sire.S), dam.S[0] ?? 's+']
  return {
    P: [chance.oneOf(sire.P), chance.oneOf(dam.P)],
    W: [chance.oneOf(sire.W), chance.oneOf(dam.W)],
    S: sex === 'male' ? [ofSire, ofDam] : [ofSire],
    characters: record(character => [passOn(sire.characters[character], chance), passOn(dam.characters[character], chance)]),
  }
}

/** The sum of all effects. */
export function worth(genes: Genes, character: Character): number {
  return genes.characters[character].reduce((sum, gamete) => gamete.reduce((part, effect) => part + effect, sum), 0)
}

/** Share of the fixed differences that stand heterozygous: what vigour of the cross follows. */
export function crossedness(genes: Genes): number {
  let [apart, loci] = [0, 0]
  for (const character of CHARACTER_NAMES) {
    const [one, other] = genes.characters[character]
    CHARACTERS[character].apart.forEach((_, locus) => {
      loci++
      if (one[locus] !== other[locus]) apart++
    })
  }
  return apart / loci
}

/** As breeders write it: `P/p+ W+/w S/-`. */
export function genotype(genes: Genes): string {
  const [one, other = '-'] = genes.S
  return `${[...genes.P].sort().join('/')} ${[...genes.W].sort().join('/')} ${[one, other].sort((a = '', b = '') => (a === '-' ? 1 : b === '-' ? -1 : a < b ? -1 : 1)).join('/')}`
}

function record<T>(make: (character: Character) => T): Record<Character, T> {
  return Object.fromEntries(CHARACTER_NAMES.map(character => [character, make(character)])) as Record<Character, T>
}
