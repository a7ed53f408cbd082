import {writePattern} from '../../heredity/genotype-notation.ts'
import {inside, type Slip, type Spot} from '../../records/problem.ts'
import type {Locus} from '../book.ts'
import {contradictedTests, type AgainstTest, type ContradictedTest} from '../contradicted-tests.ts'
import type {Linked} from '../linked.ts'
import {testSpot} from '../test-spot.ts'
import {lethalOf} from './lethal-left-out.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const COMB = '---\nname: Comb\nstates: [pea, single]\nloci:\n  P: {on: autosome, alleles: [P, p+]}\nshows:\n  - {P: P/_, is: pea}\n  - {P: p+/p+, is: single}\n---\n'
const hen = (genotype: string) => `---\nband: H-9\nsex: female\nstrain: holm-white\ncomb: single\ntested: {P: ${genotype}}\n---\n`

export const entry: ManualEntry = {
  code: 'test-contradicted', severity: 'warning', title: 'A DNA test that other records contradict',
  cause: 'A test found what the bird cannot have: its strain has no such allele, no bird of such a genotype looks as it was scored, a parent cannot hand it on, or no such chick hatches. One of the records is wrong, and until it is mended the chances of genotypes are not to be relied on.',
  remedy: 'See whether the sample was of this bird and its band was read rightly, and whether the allele is written as the laboratory means it. Then look again at the bird, and at what is written of its strain and its parents.',
  wrong: {'traits/comb.md': COMB, 'birds/H-9.md': hen('P/p+')},
  right: {'traits/comb.md': COMB, 'birds/H-9.md': hen('p+/p+')},
}

export function check({bench, book, tellings}: Linked): void {
  for (const found of contradictedTests(book)) bench.note(testContradicted(found, testSpot(found.bird, found.locus, tellings.get(found.bird)), lethalOf(found.locus, bench) === null))
}

/** @param ownLethal whether a lethal rule at the locus is the keeper's own; what the reference says of one is not his to mend */
function testContradicted({bird, locus, pattern, against}: ContradictedTest, at: Spot, ownLethal: boolean): Slip {
  const told = against.map(one => wordsOf(one, locus, ownLethal))
  return slipOf(entry, at, `${bird.band} was tested ${locus.symbol} ${writePattern(pattern, locus)}, but ${told.map(({says}) => says).join('; and ')}`,
    [`see whether the sample was of ${bird.band} and the genotype is written right`, ...new Set(told.flatMap(({mend}) => mend ?? []))].join('; else '), ...told.flatMap(({where}) => where ?? []))
}

/** Where the rest of the flock leaves a test hardly a chance, and no single record does. */
export function testUnlikely(at: Spot, band: string, locus: Locus, tested: string, chance: number): Slip {
  return slipOf(entry, at, `${band} was tested ${locus.symbol} ${tested}, but its kin leave that ${chance < 0.005 ? 'less than 1%' : `${Math.round(chance * 100)}%`}`,
    `see whether the sample was of ${band} and the genotype is written right; else see whether its parents and its chicks are`)
}

interface Words {
  readonly says: string
  /** null: nothing else is to be mended */
  readonly mend: string | null
  readonly where?: {readonly at: Spot; readonly note: string}
}

function wordsOf(one: AgainstTest, locus: Locus, ownLethal: boolean): Words {
  switch (one.kind) {
    case 'lethal': return {says: `by the rules of ${one.trait.name} no such chick hatches`, mend: ownLethal ? `see whether the lethal rule in traits/${one.trait.id}.md is right` : null}
    case 'look': return {
      says: `it was scored ${String(one.score.value)} in ${one.trait.name}, which no such bird is`, mend: 'look at the bird again and strike the score',
      where: {at: one.score.at, note: `${one.trait.name} ${String(one.score.value)} stands here`},
    }
    case 'strain': {
      const {strain, lacks, known} = one, {id, at, alleles} = strain
      return {
        says: `its strain ${id} has no ${lacks}${known === 'stated' ? ' by its stated alleles' : ' by what it is true for'}`, mend: `mend what is written of ${id}, or the bird’s strain`,
        where: {at: alleles.has(locus.symbol) ? inside(at, 'alleles', locus.symbol) : inside(at, 'true-for', ...[...strain.trueFor.keys()].filter(({loci}) => loci.includes(locus)).slice(0, 1).map(trait => trait.id)), note: `what ${id} has stands here`},
      }
    }
    case 'parent': {
      const {parent, role, by} = one
      const test = parent.tested.get(locus)
      return {
        says: `its ${role} ${parent.band}, ${by === 'test' && test ? `tested ${writePattern(test, locus)}` : by === 'strain' ? `of ${parent.strain?.id ?? ''}` : 'as it looks'}, cannot hand that on`, mend: `${by === 'test' && test ? `see whether the sample of that test was of ${parent.band}; else ` : ''}see whether ${parent.band} is its ${role}`,
        where: {at: by === 'test' ? inside(parent.at, 'tested', locus.symbol) : parent.at, note: `${parent.band} stands here`},
      }
    }
  }
}
