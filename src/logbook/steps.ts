/**
 * Which step of the ladder a mating gives, by descent alone.
 *
 *     strain A × strain A  → strain        strain A × strain B → F1
 *     Fx × Fy, same strains → F(1 + min)   Fx × strain         → BC1 to that strain
 *     BCnFm × that strain  → BC(n + 1)     BCnFm × BCnFk       → BCnF(1 + min)
 *
 * Two steps that a step of the keeper's own joins give that one, then its F2, F3 …; everything else is mixed. Where several pairs are
 * possible the step is told only when all of them agree.
 */
import type {RecordOf} from '../records/records.ts'
import type {Bird, Pair, Parentage, Project, Step, Strain} from './book.ts'
import {stepLabel} from './step-names.ts'

/** A step not yet worked out; no bird keeps it. */
export const UNPLACED: Step = {label: 'mixed', kind: 'mixed', to: null, strains: [], backcrosses: 0, interSe: 0, depth: 0}

/** A step with what telling the next one needs: its base name (`F1`, `BC2`, `SY1`) and the generation on it. */
interface Rung extends Step {
  readonly base: string
  readonly round: number
}

interface Join {
  readonly name: string
  readonly joins: readonly string[]
  readonly interSeFrom: number
}

export interface Steps {
  ofStrain(strain: Strain): Step
  /** the step of chicks with such parents; the parents' own steps are known already */
  of(parentage: Parentage): Step
  /** the names of the keeper's own steps */
  readonly ownNames: readonly string[]
}

export function stepsOf(project: Pick<Project, 'recurrent' | 'donors'>, strains: readonly Strain[], records: readonly RecordOf<'step'>[]): Steps {
  const joins: Join[] = records.flatMap(({id, data}) =>
    data.joins ? [{name: data.name ?? id, joins: data.joins, interSeFrom: data['inter-se-from'] ?? 0}] : [])
  const rungs = new Map<string, Rung>()
  const known = new WeakMap<Parentage, Step>()
  const place = new Map(strains.map((strain, index) => [strain, index]))
  const order = (found: Iterable<Strain>): readonly Strain[] => [...new Set(found)].sort((a, b) =>
    Number(b === project.recurrent) - Number(a === project.recurrent) || (place.get(a) ?? 0) - (place.get(b) ?? 0))

  /** the donors that the label must name: all but the project's only one */
  function donorOf(joined: readonly Strain[]): string | null {
    const [sole, second] = project.donors.length > 0 ? project.donors : strains.filter(strain => strain !== project.recurrent)
    const others = joined.filter(strain => strain !== project.recurrent)
    const plain = joined.length === 2 && others.length === 1 && sole !== undefined && !second && others[0] === sole
    const pairOfAll = project.recurrent === null && strains.length <= 2
    return plain || pairOfAll ? null : others.map(strain => strain.id).join('-')
  }

  function rung(kind: Step['kind'], base: string, round: number, joined: readonly Strain[], depth: number, more: {to?: Strain | null; backcrosses?: number; from?: number} = {}): Rung {
    const {to = null, backcrosses = 0, from = 0} = more
    const crossed = kind === 'filial' || kind === 'backcross'
    const label = kind === 'strain' || kind === 'mixed' ? kind : stepLabel({
      base, round, donor: crossed ? donorOf(joined) : null, to: kind === 'backcross' && to !== project.recurrent ? to?.id ?? null : null,
    })
    const key = `${label}\n${depth}\n${joined.map(strain => strain.id).join('\n')}`
    const made: Rung = rungs.get(key) ?? {label, kind, to, strains: joined, backcrosses, interSe: from + round - 1, depth, base, round}
    rungs.set(key, made)
    return made
  }

  const mixed = (joined: readonly Strain[], depth: number) => rung('mixed', 'mixed', 1, joined, depth)
  const ofStrain = (strain: Strain, depth = 0) => rung('strain', strain.id, 1, [strain], depth)
  const nameOf = (step: Rung) => (step.kind === 'strain' ? step.base : step.label)

  function cross(a: Rung, b: Rung): Rung {
    const depth = 1 + Math.max(a.depth, b.depth)
    const joined = order([...a.strains, ...b.strains])
    const join = nameOf(a) === nameOf(b) ? undefined : joins.find(each => each.joins.includes(nameOf(a)) && each.joins.includes(nameOf(b)))
    if (join) return rung('named', join.name, 1, joined, depth, {from: join.interSeFrom})
    if (a.kind === 'strain' && b.kind === 'strain') return a.base === b.base ? ofStrain(a.strains[0] as Strain, depth) : rung('filial', 'F1', 1, joined, depth)
    const sameLine = a.kind === b.kind && a.base === b.base && a.to === b.to && a.strains.length === joined.length && b.strains.length === joined.length
    if (sameLine && a.kind !== 'mixed') {
      const round = 1 + Math.min(a.round, b.round)
      return rung(a.kind, a.base, round, joined, depth, {to: a.to, backcrosses: a.backcrosses, from: a.interSe - a.round + 1})
    }
    const [strain, crossed] = a.kind === 'strain' ? [a.strains[0], b] : b.kind === 'strain' ? [b.strains[0], a] : []
    if (strain && crossed && crossed.strains.includes(strain)) {
      if (crossed.kind === 'filial') return rung('backcross', 'BC1', 1, joined, depth, {to: strain, backcrosses: 1})
      if (crossed.kind === 'backcross' && crossed.to === strain) {
        const times = crossed.backcrosses + 1
        return rung('backcross', `BC${times}`, 1, joined, depth, {to: strain, backcrosses: times})
      }
    }
    return mixed(joined, depth)
  }

  /** a parent's step; of a bird outside the book its strain's, if that is stated */
  const rungOf = (bird: Bird | null, outside: Strain | null | undefined): Rung | null => {
    if (!bird) return outside ? ofStrain(outside) : null
    const {step} = bird
    return 'base' in step ? step as Rung : mixed(step.strains, step.depth)
  }

  function ofPair({sire, dam}: Pair, outside: Parentage['outside']): Rung {
    const his = rungOf(sire, outside?.sire), hers = rungOf(dam, outside?.dam)
    if (his && hers) return cross(his, hers)
    return mixed(order([...his?.strains ?? [], ...hers?.strains ?? []]), 1 + Math.max(his?.depth ?? 0, hers?.depth ?? 0))
  }

  function tell(parentage: Parentage): Step {
    const found = parentage.pairs.map(pair => ofPair(pair, parentage.outside))
    const [first] = found
    if (!first) return mixed([], 0)
    const depth = found.reduce((most, step) => Math.max(most, step.depth), 0)
    const agree = found.every(step => step.label === first.label && step.strains.every(strain => first.strains.includes(strain)))
    if (!agree) return mixed(order(found.flatMap(step => step.strains)), depth)
    return found.find(step => step.depth === depth) ?? first
  }

  return {
    ofStrain: strain => ofStrain(strain),
    of(parentage) {
      const step = known.get(parentage) ?? tell(parentage)
      known.set(parentage, step)
      return step
    },
    ownNames: joins.map(join => join.name),
  }
}
