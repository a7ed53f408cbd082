import {near, orNear} from '../../records/near.ts'
import type {Slip, Spot} from '../../records/problem.ts'
import type {Trait} from '../book.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

export const entry: ManualEntry = {
  code: 'unknown-state', severity: 'error', title: 'A look that the trait does not have',
  cause: 'A bird was scored, or a rule speaks, with a word that is not among the trait’s states, or with a mark that is not on its scale.',
  remedy: 'Write one of the trait’s states or a mark on its scale; leave the key out where the trait was not seen.',
  wrong: {'birds/H-9.md': '---\nband: H-9\nsex: male\nstrain: holm-white\ncomb: singel\n---\n'},
  right: {'birds/H-9.md': '---\nband: H-9\nsex: male\nstrain: holm-white\ncomb: single\n---\n'},
}

/** @param besides what else could stand there, such as `lethal` in a rule */
export function unknownState(trait: Trait, word: string, at: Spot, besides: readonly string[] = []): Slip {
  const madeAt = at.file === trait.at.file ? [] : [{at: trait.at, note: 'the trait is described here'}]
  if (trait.kind === 'graded') {
    const marks = trait.scale ? `${trait.scale.from} to ${trait.scale.to}` : 'its scale'
    return slipOf(entry, at, `“${word}” is no mark of ${trait.id}; its scale is ${marks}`, `write a mark from ${marks}, or leave it out where it was not scored`, ...madeAt)
  }
  if (trait.kind === 'measured') {
    return slipOf(entry, at, `“${word}” is no amount of ${trait.id}, which is measured in ${trait.unit ?? 'its unit'}`, `write an amount such as 12 ${trait.unit ?? ''}`.trimEnd(), ...madeAt)
  }
  const states = trait.states.join(', '), words = [...trait.states, ...besides]
  return slipOf(entry, at, `${trait.id} has no state “${word}”; it has ${states}`, orNear(near(word, words), besides.length > 0 ? `write one of ${words.join(', ')}, or add it to the states of ${trait.id}` : `write one of ${states}, or leave it out where it was not seen`), ...madeAt)
}
