/** A bird's step as a reader wants it: the strain's name for birds of a pure strain, else the step's label. */
import type {Strain, Step} from '../logbook/book.ts'
import {countWord, sentence} from './numbers.ts'

/** `Holm White`, `BC2`, `mixed` */
export function stepWords(chick: {readonly step: Step; readonly strain?: Strain | null}): string {
  if (chick.step.kind !== 'strain') return chick.step.label
  return chick.strain?.name ?? chick.step.strains[0]?.name ?? 'strain unknown'
}

/** What a step is, in a sentence: how its chicks came to be. */
export function stepMeaning(step: Step): string {
  const names = step.strains.map(strain => strain.name).join(' and ')
  switch (step.kind) {
    case 'strain': return names === '' ? 'Birds of a pure strain.' : `Birds of the pure strain ${names}.`
    case 'filial': return step.interSe === 0 ? `The first cross of ${names}.` : `Mated inside the line, ${generationWords(step.interSe)} from the cross of ${names}.`
    case 'backcross': {
      const to = step.to?.name ?? 'the recurrent strain'
      const times = step.backcrosses === 1 ? 'One backcross' : step.backcrosses === 2 ? 'Two backcrosses' : `${sentence(countWord(step.backcrosses))} backcrosses`
      return step.interSe === 0 ? `${times} to ${to}.` : `${times} to ${to}, then mated inside the line: ${generationWords(step.interSe)}.`
    }
    case 'named': return step.interSe === 0 ? 'A step with a name of its own: ladders joined, or a strain taken in late.'
      : `A step with a name of its own, then mated inside the line: ${generationWords(step.interSe)}.`
    case 'mixed': return 'Chicks of no step of the ladder, or whose step cannot be told.'
  }
}

const ORDINALS = ['', 'first', 'second', 'third', 'fourth', 'fifth', 'sixth']
const generationWords = (count: number): string => `${ORDINALS[count] ?? `${count}th`} generation`
