/** What a command is told of a folder: problems of reading and linking at once, those of heredity when they are asked for. */
import {mkdirSync, writeFileSync} from 'node:fs'
import {dirname, join} from 'node:path'
import {describe, expect, it} from 'vitest'
import {inspect} from '../../src/commands/inspect.ts'
import {openBook} from '../../src/commands/open-book.ts'
import {progressIn} from '../../src/commands/progress.ts'
import {entry} from '../../src/logbook/inspect/impossible-family.ts'
import {listeningWorld} from '../folders/listening-world.ts'
import {temporaryFolder} from '../folders/temporary-folder.ts'
import {around, type Files} from '../logbook/around.ts'

function laidDown(name: string, files: Files): string {
  const folder = temporaryFolder(name)
  for (const [file, text] of Object.entries(around(files))) {
    mkdirSync(dirname(join(folder, file)), {recursive: true})
    writeFileSync(join(folder, file), text)
  }
  return folder
}
const opened = (folder: string) => openBook(folder, undefined, progressIn(listeningWorld(), true))
const codes = (problems: readonly {readonly code: string}[]) => problems.map(({code}) => code)

describe('openBook(folder)', () => {
  it('finds a look that the parents cannot give only when all problems are asked for', () => {
    const {problems, allProblems, atFault, findings} = opened(laidDown('doubted', entry.wrong))
    expect([codes(problems), atFault, findings !== null]).toEqual([[], false, true])
    expect(codes(allProblems())).toEqual(['impossible-family'])
  })
  it('works nothing of a book at fault', () => {
    const {problems, allProblems, findings} = opened(laidDown('at-fault', {...entry.wrong, 'birds/24-902.md': '---\nband: 24-902\nsex: male\nhatched: 2024-05-01\nsire: nobody\n---\n'}))
    expect(findings).toBeNull()
    expect(allProblems()).toBe(problems)
    expect(codes(problems)).toContain('unknown-band')
  })
  it('so inspect names it, as a warning, and the records are fit to publish', () => {
    const world = listeningWorld()
    expect(inspect({folder: laidDown('inspected', entry.wrong), format: 'text', asOf: undefined, quiet: false}, world)).toBe(0)
    expect(world.said.out).toContain('24-901 was scored pea in Comb, which its family cannot give; it must be single, if its parents are as written')
    expect(world.said.out).toContain('1 warning')
  })
})
