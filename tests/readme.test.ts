/** The README's first project is run as written: a reader who types it in sees no problem. */
import {readFileSync} from 'node:fs'
import {describe, expect, it} from 'vitest'
import {link} from '../src/logbook/link.ts'
import {folderInMemory} from '../src/records/folder.ts'
import {readRecords} from '../src/records/read.ts'

const readme = readFileSync(new URL('../README.md', import.meta.url), 'utf8')
const files = Object.fromEntries([...readme.matchAll(/`my-fowl\/([\w/.-]+)`:\n\n```markdown\n([\s\S]*?)```/g)].map(([, path = '', text = '']) => [path, text]))

describe('the README', () => {
  it('shows a project of five files that reads without a fault', () => {
    expect(Object.keys(files)).toEqual(['project.md', 'strains/my-white.md', 'strains/my-buff.md', 'traits/comb.md', 'birds/22-004.md'])
    const reading = readRecords(folderInMemory(files))
    const {book, slips} = link(reading, {})
    expect([...reading.slips, ...slips]).toEqual([])
    expect(book?.birds.map(bird => bird.band)).toEqual(['22-004'])
  })
})
