/** Progress on a terminal for what takes longer than a moment; nothing at all when piped or asked to be quiet. */
import type {World} from './world.ts'

export interface Progress {
  /** names the phase that begins; a phase's time is kept for `timings` */
  phase(name: string): void
  /** how far a long phase has come */
  at(done: number, total: number): void
  end(): void
  readonly timings: ReadonlyMap<string, number>
}

const PATIENCE = 1000

export function progressIn(world: World, quiet: boolean): Progress {
  const begun = world.clock()
  const timings = new Map<string, number>()
  let name = ''
  let since = begun
  let drawn = 0
  let shown = false
  const draw = (text: string) => {
    world.err(`\r\u001b[2K${text}`)
    shown = text !== ''
  }
  const close = () => {
    if (name !== '') timings.set(name, world.clock() - since)
  }
  const speak = (text: string) => {
    const now = world.clock()
    if (quiet || !world.watched || now - begun < PATIENCE || now - drawn < 100) return
    drawn = now
    draw(text)
  }
  return {
    timings,
    phase(next) {
      close()
      name = next
      since = world.clock()
      speak(`${next} …`)
    },
    at(done, total) {
      speak(`${name} ${done} of ${total}`)
    },
    end() {
      close()
      name = ''
      if (shown) draw('')
    },
  }
}
