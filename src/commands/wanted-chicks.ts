/** `comb pea, skin white, female`: the chicks that are wanted, in words. */
import type {WantedChicks} from '../findings/hatch-plan.ts'
import type {Trait} from '../logbook/book.ts'
import {near, orNear} from '../records/near.ts'
import {Refusal} from './refusal.ts'

const SEXES = {male: 'males', female: 'females', unknown: 'neither sex'} as const

/**
 * @param traits those whose rules are known
 * @throws {Refusal} where a trait or its state is none of these, or the sex that is asked for cannot show it
 */
export function wantedChicks(text: string, traits: readonly Trait[]): WantedChicks {
  const looks: {trait: Trait; state: string}[] = []
  let sex: WantedChicks['sex'] = null
  for (const part of text.split(',').map(each => each.trim()).filter(each => each !== '')) {
    if (part === 'male' || part === 'female') {
      if (sex !== null && sex !== part) throw new Refusal('A chick is male or female: name one of them.')
      sex = part
      continue
    }
    const [trait] = traits.filter(({id, name}) => part.startsWith(`${id} `) || part.startsWith(`${name} `)).sort((a, b) => b.id.length - a.id.length)
    if (!trait) throw new Refusal(`“${part}” begins with no trait whose inheritance is known; ${orNear(near(part.split(' ')[0] ?? '', traits.map(({id}) => id)), traits.length === 0 ? 'no trait names a locus' : `these are known: ${traits.map(({id}) => id).join(', ')}`)}`)
    const state = part.slice((part.startsWith(`${trait.id} `) ? trait.id : trait.name).length).trim()
    if (!trait.states.includes(state)) throw new Refusal(`“${state}” is no state of ${trait.id}; ${orNear(near(state, trait.states), `write one of ${trait.states.join(', ')}`)}`)
    looks.push({trait, state})
  }
  for (const {trait, state} of looks) {
    const {seenIn} = trait
    if (seenIn !== null && sex !== null && seenIn !== sex) throw new Refusal(`${trait.name} is seen in ${SEXES[seenIn]} only, so no ${sex} can be picked for ${state}; ask for ${seenIn} chicks, or for ${sex} ones without it.`)
    const other = looks.find(each => each.trait.seenIn !== null && seenIn !== null && each.trait.seenIn !== seenIn)
    if (other) throw new Refusal(`${trait.name} is seen in one sex only and ${other.trait.name} in the other, so no chick can be picked for both.`)
  }
  if (looks.length === 0 && sex === null) throw new Refusal('Say what the chicks must be, such as "comb pea, female".')
  return {looks, sex}
}
