import type {Slip, Spot} from '../../records/problem.ts'
import type {Trait} from '../book.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const trait = (states: string) => `---\nname: Skin\nstates: [${states}]\nloci: [W]\n---\n`

export const entry: ManualEntry = {
  code: 'rules-wanting', severity: 'warning', title: 'Loci, and no rule of what they look like',
  cause: 'A trait names loci but has no rules of its own, and the reference has none for exactly these loci and states. Nothing can be told of what its birds carry.',
  remedy: 'Name the states as the reference does, or write the rules under shows.',
  wrong: {'traits/skin.md': trait('pale, golden')},
  right: {'traits/skin.md': trait('white, yellow')},
}

/** @param offered the states of each set of rules that the reference has for exactly these loci */
export function rulesWanting({id, loci}: Trait, offered: readonly (readonly string[])[], at: Spot): Slip {
  const [one] = loci, symbols = loci.map(locus => locus.symbol).join(' and ')
  const example = one ? ` such as {${one.symbol}: ${one.alleles[0] ?? ''}/_, is: …}` : ''
  const [first, ...more] = offered.map(states => `[${states.join(', ')}]`)
  return slipOf(entry, at, `${id} names ${symbols} but has no rules of what ${loci.length === 1 ? 'it looks' : 'they look'} like`,
    first === undefined ? `write the rules under shows,${example}` : `name the states as the reference does, ${[first, ...more].join(' or ')}; or write rules of your own under shows,${example}`)
}
