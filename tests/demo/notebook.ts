/**
 * What the keepers noted by hand beside the drawn facts: bands lost and changed, sexes put right, reasons, dated remarks. Keyed by band or
 * by the name of the pen or hatch; `line` goes into the chick's line of its hatch, `record` into the bird's own file.
 */
import type {Entries} from './front-matter-text.ts'

export interface Notes {
  readonly line?: Entries
  readonly record?: Entries
}

export const BIRDS: Readonly<Record<string, Notes>> = {}

/** More front matter for pens. */
export const PENS: Readonly<Record<string, Entries>> = {}

/** More front matter for hatches; a key here takes the place of the drawn one. */
export const HATCHES: Readonly<Record<string, Entries>> = {
  '2020-03': {set: '2020-05', on: '2020-05'},
}

/** Unbanded chicks that were banded after all: the drawn chick's name and its band. */
export const BANDED_LATER: Readonly<Record<string, string>> = {}
