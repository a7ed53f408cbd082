/** `pinfeather inspect`: only checks. */
import type {Day} from '../records/dates.ts'
import {inspectJson, inspectReport} from './inspect-report.ts'
import {openBook} from './open-book.ts'
import {progressIn} from './progress.ts'
import {folderRefusal} from './records-folder.ts'
import type {ExitCode, World} from './world.ts'

export interface InspectOptions {
  readonly folder: string
  readonly format: 'text' | 'json'
  readonly asOf: Day | undefined
  readonly quiet: boolean
}

/** Reads and links the folder and reports every problem: on the output, since the problems are what was asked for. */
export function inspect(options: InspectOptions, world: World): ExitCode {
  const {folder, format, quiet} = options
  const refused = folderRefusal(folder)
  if (refused !== null) {
    world.err(`${refused}\n`)
    return 2
  }
  const progress = progressIn(world, quiet)
  const {allProblems, files, atFault} = openBook(folder, options.asOf, progress)
  const problems = allProblems()
  progress.end()
  if (format === 'json') world.out(inspectJson(problems, folder))
  else if (!quiet || problems.length > 0) world.out(inspectReport(problems, {folder, files, colour: world.colour.out}))
  return atFault ? 1 : 0
}
