/** Held against a folder, a checksum says whether the records are those that a paper was made from. */
import {execFileSync} from 'node:child_process'
import {once} from 'node:events'
import {cpSync, mkdirSync, rmSync, writeFileSync} from 'node:fs'
import {createServer} from 'node:net'
import {join} from 'node:path'
import {describe, expect, it} from 'vitest'
import {checksum} from '../../src/commands/checksum.ts'
import {openBook} from '../../src/commands/open-book.ts'
import {progressIn} from '../../src/commands/progress.ts'
import {sumOf} from '../../src/records/checksum.ts'
import {listeningWorld} from '../folders/listening-world.ts'
import {temporaryFolder} from '../folders/temporary-folder.ts'
import {layDown} from '../bench/draw-book.ts'
import {AROUND} from '../logbook/around.ts'

const root = temporaryFolder('checksum-command')
const records = join(root, 'records')
layDown(records, new Map(Object.entries(AROUND)))

function told(more: {readonly is?: string; readonly list?: boolean; readonly folder?: string} = {}) {
  const world = listeningWorld(), {is, list = false, folder = records} = more
  return {code: checksum({folder, is, list}, world), out: world.said.out.replaceAll(root, 'R'), err: world.said.err.replaceAll(root, 'R')}
}
const [short = '', whole = ''] = told().out.split('\n')

describe('pinfeather checksum', () => {
  it('tells the short form, the whole, and of what', () => {
    expect(short).toMatch(/^(?:[\da-f]{4} ){3}[\da-f]{4}$/)
    expect(whole).toMatch(/^[\da-f]{64}$/)
    expect(whole.startsWith(short.replaceAll(' ', ''))).toBe(true)
    expect(told().out.split('\n')[2]).toBe(`Of ${Object.keys(AROUND).length} record files in R/records; photographs and papers are not counted in.`)
  })

  it('is the one that the book has, of whatever day', () => {
    for (const asOf of [undefined, 19_500]) expect(openBook(records, asOf, progressIn(listeningWorld(), true)).book?.checksum).toBe(whole)
  })

  it('lists a line a file, of which it is the sum', () => {
    const {out} = told({list: true})
    expect(sumOf(out)).toBe(whole)
    expect(out.split('\n')).toHaveLength(Object.keys(AROUND).length + 1)
    if (hasSums) execFileSync('sha256sum', ['--check', '--quiet'], {cwd: records, input: out})
  })

  it.each(['short', 'whole', 'as read out', 'as copied from the dossier', 'in groups of eight'])('knows the same records by the %s', how => {
    const is = {short, whole, 'as read out': short.toUpperCase().replaceAll(' ', '  '), 'as copied from the dossier': short.replaceAll(' ', '\u00a0'), 'in groups of eight': whole.replace(/(.{8})/g, '$1 ').trim()}[how]
    expect(told({is})).toMatchObject({code: 0, out: expect.stringContaining(`The same records: ${Object.keys(AROUND).length} record files in R/records give ${short}.`) as string})
  })

  it('tells others, with both sums', () => {
    const changed = join(root, 'changed')
    cpSync(records, changed, {recursive: true})
    writeFileSync(join(changed, 'pens', '2024-A.md'), AROUND['pens/2024-A.md']?.replace('kelpgarth', 'kelpgarth ') ?? '')
    const {code, out} = told({is: short, folder: changed})
    expect([code, /^Other records: \d+ record files in R\/changed give [\da-f ]{19}, not /.test(out), out.includes(`not ${short}.`)]).toEqual([1, true, true])
  })

  it.each(['', 'ab12', 'content', `${'ab12'.repeat(16)}0`, 'ab12-cd34-ef56-7890'])('refuses %j, which is none', is => {
    expect(told({is})).toMatchObject({code: 2, out: '', err: expect.stringMatching(/is no checksum: write its first 16 digits or all 64/) as string})
  })

  it('refuses a folder that is none of records', () => {
    expect(told({folder: join(root, 'nowhere')})).toMatchObject({code: 2, err: 'There is no folder R/nowhere. Name the folder that holds project.md.\n'})
  })

  it('has none of records of which one cannot be opened', async () => {
    const shut = join(root, 'shut')
    cpSync(records, shut, {recursive: true})
    rmSync(join(shut, 'pens'), {recursive: true})
    mkdirSync(join(shut, 'pens'))
    const socket = createServer().listen(join(shut, 'pens', '2024-A.md')) // there, but no file that can be read
    await once(socket, 'listening')
    const {code, err} = told({folder: shut})
    socket.close()
    expect([code, err]).toEqual([2, 'R/shut/pens/2024-A.md cannot be opened, so these records have no checksum; look whether you may read it.\n'])
  })
})

const hasSums = (() => {
  try {
    return execFileSync('sha256sum', {input: ''}).length > 0
  } catch {
    return false
  }
})()
