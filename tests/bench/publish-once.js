/**
 * One cold publishing in a process of its own: `node publish-once.js <records> <site>`. Plain JavaScript, so that what is measured is the
 * tool as it is built and no translator beside it. Prints a line of JSON, a `Measured` of bench.ts.
 */
import process from 'node:process'
import {performance} from 'node:perf_hooks'
import {publish} from '../../.build/commands/publish.js'

const [, , records, site] = process.argv

/**
 * Progress names each phase on a terminal once a second has passed. This world is watched, and its clock runs far ahead at every look,
 * so that each phase is named the moment it begins; the times taken are of the true clock.
 */
let looks = 0
let said = ''
const phases = [['start', 0]]
const world = {
  out: () => undefined,
  err(text) {
    said += text
    const name = /2K(\w[\w ]*?) …/.exec(text)?.[1]
    if (name !== undefined && phases.at(-1)[0] !== name) phases.push([name, performance.now()])
  },
  watched: true,
  colour: {out: false, err: false},
  clock: () => performance.now() + 10_000 * looks++,
}

const code = await publish({folder: records, to: site, asOf: undefined, quiet: false}, world)
const end = performance.now()
if (code !== 0) throw new Error(`the drawn book could not be published:\n${said.slice(-4000)}`)
const {userCPUTime, systemCPUTime, maxRSS} = process.resourceUsage()
process.stdout.write(`${JSON.stringify({
  phases: phases.map(([name, begun], n) => [name, (phases[n + 1]?.[1] ?? end) - begun]),
  processor: (userCPUTime + systemCPUTime) / 1000,
  peakMemory: maxRSS * 1024,
})}\n`)
