/**
 * One cold publishing in a process of its own: `node --import tsx publish-once.ts <records> <site>`.
 * Prints a line of JSON: how long every phase took, and how much memory was held at most.
 */
import {fileURLToPath} from 'node:url'
import type * as publishing from '../../src/commands/publish.ts'
import type {World} from '../../src/commands/world.ts'

export interface Measured {
  /** milliseconds by phase, in order; `start` is from the beginning of the process to the first word of the work */
  readonly phases: readonly (readonly [string, number])[]
  /** milliseconds that processors worked for it, all threads together; what is missing to the time taken was waited */
  readonly processor: number
  /** bytes */
  readonly peakMemory: number
}

const [, , records = '', site = ''] = process.argv
/** What is measured is the tool as it is built, not as a test runner translates it. */
const built = fileURLToPath(new URL('../../.build/commands/publish.js', import.meta.url))
const {publish} = await import(built) as typeof publishing

/**
 * Progress names each phase on a terminal once a second has passed. This world is watched, and its clock runs far ahead at every look,
 * so that each phase is named the moment it begins; the times taken are of the true clock.
 */
let looks = 0
let said = ''
const phases: [name: string, begun: number][] = [['start', 0]]
const world: World = {
  out: () => undefined,
  err(text) {
    said += text
    const name = /2K(\w[\w ]*?) …/.exec(text)?.[1]
    if (name !== undefined && phases.at(-1)?.[0] !== name) phases.push([name, performance.now()])
  },
  watched: true,
  colour: {out: false, err: false},
  clock: () => performance.now() + 10_000 * looks++,
}

const code = await publish({folder: records, to: site, asOf: undefined, quiet: false}, world)
const end = performance.now()
if (code !== 0) throw new Error(`the drawn book could not be published:\n${said.slice(-4000)}`)
const {userCPUTime, systemCPUTime, maxRSS} = process.resourceUsage()
const measured: Measured = {
  phases: phases.map(([name, begun], n) => [name, (phases[n + 1]?.[1] ?? end) - begun]),
  processor: (userCPUTime + systemCPUTime) / 1000,
  peakMemory: maxRSS * 1024,
}
process.stdout.write(`${JSON.stringify(measured)}\n`)
