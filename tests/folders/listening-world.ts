/** A world that only listens: what a command says is kept, nobody watches, and no colour is wanted. */
import type {World} from '../../src/commands/world.ts'

export interface ListeningWorld extends World {
  readonly said: {out: string; err: string}
}

export function listeningWorld(): ListeningWorld {
  const said = {out: '', err: ''}
  return {
    said,
    out(text) {
      said.out += text
    },
    err(text) {
      said.err += text
    },
    watched: false,
    colour: {out: false, err: false},
    clock: () => 0,
  }
}
