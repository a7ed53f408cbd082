import {mkdirSync, writeFileSync} from 'node:fs'
import {dirname, join} from 'node:path'
import {describe, expect, it} from 'vitest'
import {figures} from '../../src/commands/figures.ts'
import {inspect} from '../../src/commands/inspect.ts'
import {publish} from '../../src/commands/publish.ts'
import {folderRefusal} from '../../src/commands/records-folder.ts'
import {listeningWorld} from '../folders/listening-world.ts'
import {temporaryFolder} from '../folders/temporary-folder.ts'

const PROJECT = '---\nname: Skerry Fowl\naim: A fowl that stands wind and wet.\n---\n'

const folder = temporaryFolder('records-folder')
let made = 0

function folderWith(files: readonly string[]): string {
  const root = join(folder, String(++made))
  mkdirSync(root)
  for (const file of files) {
    mkdirSync(dirname(join(root, file)), {recursive: true})
    writeFileSync(join(root, file), file.endsWith('project.md') ? PROJECT : '')
  }
  return root
}

/** What is said of a path in a folder with these files; the folder itself is called R. */
function said(files: readonly string[], path = ''): string | null {
  const root = folderWith(files)
  return folderRefusal(join(root, path))?.replaceAll(root, 'R') ?? null
}

describe('the folder of records', () => {
  it('is taken when it holds a record, at fault or not', () => {
    expect(said(['project.md'])).toBeNull()
    expect(said(['birds/24-031.md'])).toBeNull()
    expect(said(['measures/2024.csv'])).toBeNull()
  })

  it('that is not there, or a file, is refused with what is wanted', () => {
    expect(said([], 'none')).toBe('There is no folder R/none. Name the folder that holds project.md.')
    expect(said(['project.md'], 'project.md')).toBe('R/project.md is a file. Name the folder that holds the records: R')
    expect(said(['project.md', 'birds/1.md'], 'birds/1.md')).toBe('R/birds/1.md is a file. Name the folder that holds the records: R')
    expect(said(['notes.txt'], 'notes.txt')).toBe('R/notes.txt is a file. Name the folder that holds project.md.')
  })

  it('without a record says where they were looked for, and how to begin', () => {
    const words = said(['notes.txt', 'photos/a.jpg'])
    expect(words).toContain('No record was found in R: project.md is not there, nor any file in strains/, traits/, loci/, keepers/, birds/, pens/, hatches/')
    expect(words).toContain('To begin, write R/project.md:')
    expect(words).toContain('---\n')
  })

  it('above the records is told the right one', () => {
    expect(said(['README.md', 'content/project.md', 'content/birds/1.md'])).toBe('No record was found in R itself; they seem to lie in R/content. Name that folder.')
  })

  it('is wrong use for every command, and nothing is printed on the output', async () => {
    const root = folderWith([])
    const common = {folder: root, asOf: undefined, quiet: true}
    const [one, two, three] = [listeningWorld(), listeningWorld(), listeningWorld()]
    expect(inspect({...common, format: 'json'}, one)).toBe(2)
    expect(await publish({...common, to: join(folder, 'site')}, two)).toBe(2)
    expect(figures({...common, question: 'birds', format: 'csv'}, three)).toBe(2)
    for (const world of [one, two, three]) {
      expect(world.said.out).toBe('')
      expect(world.said.err).toContain('No record was found in')
    }
  })
})
