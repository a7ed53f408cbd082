import {inside, type Slip} from '../../records/problem.ts'
import type {Strain, Trait} from '../book.ts'
import {contradictedStrains} from '../contradicted-strains.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const strain = (comb: string) => `---\nname: Fell Buff\nrole: donor\ntrue-for: {comb: ${comb}}\n---\n`
const HEN = '---\nband: B-9\nsex: female\nstrain: fell-buff\ncomb: pea\n---\n'

export const entry: ManualEntry = {
  code: 'true-for-contradicted', severity: 'warning', title: 'A strain true for a look that none of its founders has',
  cause: 'A strain is said to breed true for a look, and every bird of it that was scored looks otherwise; or several birds that come of it look as they then cannot. The strain is then likelier to be wrong than all its birds. What their chicks look like is not held against these until it is mended.',
  remedy: 'Mend true-for; or, where the strain is right, see whether the birds are of another strain, or were scored wrongly.',
  wrong: {'strains/fell-buff.md': strain('single'), 'birds/B-9.md': HEN},
  right: {'strains/fell-buff.md': strain('pea'), 'birds/B-9.md': HEN},
}

/** So many founders are listed. */
const LISTED = 5

export function check({bench, book}: Linked): void {
  for (const {strain: {id, at}, trait, state, founders} of contradictedStrains(book)) {
    const looks = [...new Set(founders.map(({score}) => String(score.value)))].join(' or '), [only] = founders
    bench.noteAbout(trait)(slipOf(entry, inside(at, 'true-for', trait.id),
      `${id} is said to breed true for ${trait.name} ${state}, and ${founders.length === 1 ? `${only?.bird.band ?? ''}, the only bird of it that was scored, is` : `all ${founders.length} birds of it that were scored are`} ${looks}`,
      `write ${trait.id}: ${looks.includes(' or ') ? '… as the strain is, or take it out' : looks}; if the strain is right, see whether ${founders.length === 1 ? 'the bird is' : 'these birds are'} of it, and how ${founders.length === 1 ? 'it was' : 'they were'} scored`,
      ...founders.slice(0, LISTED).map(({bird, score}) => ({at: score.at, note: `${bird.band}, ${score.value}, stands here`}))))
  }
}

/**
 * Where several birds that come of it look as they then cannot.
 *
 * @param all they are every scored chick of its birds, of whom none was scored
 * @param orElse other strains of which the same would explain it as well
 */
export function chicksContradict({id, at}: Strain, trait: Trait, state: string, {count, all, orElse}: {readonly count: number; readonly all: boolean; readonly orElse: readonly string[]}, related: NonNullable<Slip['related']>): Slip {
  const these = all ? `none of the ${count} chicks of its birds that were scored can be of such parents` : `${count} birds that come of it were scored as they then cannot look`
  return slipOf(entry, inside(at, 'true-for', trait.id), `${id} is said to breed true for ${trait.name} ${state}, and ${these}${orElse.length > 0 ? `; that ${orElse.join(' or ')} is not true for it would explain it as well` : ''}`,
    all ? `mend what it is true for, or score its birds; if ${id} is right, see whether the parents of these chicks are, and how they were scored`
      : `mend what it is true for, or state its alleles at ${trait.loci.map(({symbol}) => symbol).join(' and ')}; if ${[id, ...orElse].join(' and ')} ${orElse.length > 0 ? 'are' : 'is'} right, see whether the parents of these birds are, and how they were scored`, ...related)
}
