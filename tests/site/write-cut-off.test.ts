/** The power fails at every step of publishing, again in the run after it; what somebody could see before is never lost, and nothing is half there. */
import type * as FileSystem from 'node:fs'
import {existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {afterEach, beforeEach, describe, expect, it, vi} from 'vitest'
import {MARKER, putBackOld, replaceFolder} from '../../src/site/write.ts'

/** How many more changes to the disk come off; the one after them is not made, or half, and none after it. */
const power = vi.hoisted(() => ({left: Infinity, half: null as 'first' | 'last' | null}))

vi.mock('node:fs', async importOriginal => {
  const disk = await importOriginal<typeof FileSystem>()
  const change = <Words extends unknown[], Result>(made: (...words: Words) => Result, half?: (...words: Words) => void) => (...words: Words): Result => {
    power.left -= 1
    if (power.left === -1) half?.(...words)
    if (power.left < 0) throw new Error('the power failed')
    return made(...words)
  }
  const halfRemoved = (path: unknown): void => {
    const files = power.half !== null && disk.existsSync(String(path)) ? disk.readdirSync(String(path)).sort() : []
    const gone = power.half === 'first' ? files[0] : files.at(-1)
    if (gone !== undefined) disk.rmSync(join(String(path), gone), {recursive: true})
  }
  return {
    ...disk,
    mkdirSync: change(disk.mkdirSync), writeFileSync: change(disk.writeFileSync), renameSync: change(disk.renameSync), rmdirSync: change(disk.rmdirSync),
    rmSync: change(disk.rmSync, (path, options) => (options?.recursive === true ? halfRemoved(path) : undefined)),
  }
})

/** With the power on. */
function safely<Result>(work: () => Result): Result {
  power.left = Infinity
  return work()
}

let folder = '', target = ''
beforeEach(() => {
  safely(() => {
    folder = mkdtempSync(join(tmpdir(), 'cut-off-'))
    target = join(folder, 'site')
  })
})
afterEach(() => safely(() => rmSync(folder, {recursive: true, force: true})))

const SITE = (words: string) => ({'.first.html': words, 'index.html': words})

function site(words: string, place = target): void {
  mkdirSync(place)
  for (const [path, content] of Object.entries(SITE(words))) writeFileSync(join(place, path), content)
  writeFileSync(join(place, MARKER), '')
}

function* faulty(): Generator<readonly [string, string]> {
  yield ['index.html', 'faulty']
  throw new Error('a page that cannot be made')
}

const good = (words: string) => () => void replaceFolder(target, Object.entries(SITE(words)), {content: join(folder, 'content')})
/** A run whose records are at fault never comes to writing. */
const faultyRecords = () => void putBackOld(target)
const faultyMaking = () => {
  putBackOld(target)
  replaceFolder(target, faulty(), {content: join(folder, 'content')})
}

/** What is on the disk, but for pages of a new site that is not whole yet. */
const laidOut = () => readdirSync(folder, {recursive: true}).map(String).filter(path => !path.includes('pinfeather-new/') || path.endsWith(MARKER)).sort().join(' ')

/** Runs with so many changes to the disk before the power fails; true when it failed. */
function cutAfter(changes: number, half: typeof power.half, run: () => void): boolean {
  Object.assign(power, {left: changes, half})
  try {
    run()
  } catch {
    // cut off, or a fault of its own
  }
  const failed = power.left < 0
  power.left = Infinity
  return failed
}

/** What a visitor finds: `none`, `empty`, or the words that every page of the site has, and `half` of anything else. */
function seen(): string {
  if (!existsSync(target)) return 'none'
  const files = readdirSync(target).sort()
  if (files.length === 0) return 'empty'
  const pages = files.filter(file => file !== MARKER).map(file => readFileSync(join(target, file), 'utf8'))
  return files.length === 3 && files.includes(MARKER) && new Set(pages).size === 1 ? pages[0] ?? 'half' : 'half'
}

const hidden = (which: string) => join(folder, `.site.pinfeather-${which}`)
/** What is on the disk before, and what is the best that a visitor could see of it. */
const BEFORE: readonly (readonly [string, string, () => void])[] = [
  ['nothing', 'none', () => undefined],
  ['an empty folder', 'empty', () => mkdirSync(target)],
  ['a site', 'old', () => site('old')],
  ['a site hidden between two renames', 'old', () => site('old', hidden('old'))],
  ['a site hidden, a whole new one beside it', 'old', () => {
    site('old', hidden('old'))
    site('lost', hidden('new'))
  }],
  ['a site hidden, an empty folder in its place', 'old', () => {
    site('old', hidden('old'))
    mkdirSync(target)
  }],
  ['a site, the one before it not yet removed', 'old', () => {
    site('old')
    site('older', hidden('old'))
  }],
  ['a site, the one before it removed in part', 'old', () => {
    site('old')
    mkdirSync(hidden('old'))
    writeFileSync(join(hidden('old'), 'index.html'), 'older')
  }],
]
const RUNS: readonly (readonly [string, () => void])[] = [['good records', good('newer')], ['faulty records', faultyRecords], ['a page that cannot be made', faultyMaking]]

describe.each(BEFORE)('publishing over %s', (_, best, lay) => {
  it.each(RUNS)('may be cut off anywhere, once or twice, before a run with %s', (name, next) => {
    for (const half of [null, 'first', 'last'] as const) {
      const cut = new Set<string>()
      let failed = true
      for (let first = 0; failed; first += 1) {
        let again = true
        for (let second = half === null ? 0 : Infinity; again; second += 1) { // half a removal, then a whole run
          safely(() => {
            for (const entry of readdirSync(folder)) rmSync(join(folder, entry), {recursive: true})
            lay()
          })
          failed = cutAfter(first, half, good('new'))
          if (second === 0 || half !== null) {
            if (failed && cut.has(laidOut())) break
            cut.add(laidOut())
          }
          again = cutAfter(second, half, next)
          safely(() => cutAfter(Infinity, null, next))
          const where = `cut after ${first} and ${second} changes, half: ${half}`
          if (name === 'good records') {
            expect(seen(), where).toBe('newer')
            expect(readdirSync(folder), where).toEqual(['site'])
          } else {
            expect(best === 'empty' ? ['empty', 'none', 'new'] : [best, 'new'], where).toContain(seen())
            if (!failed) expect(seen(), where).toBe('new')
          }
        }
      }
    }
  })
})

describe('a page that cannot be made', () => {
  it('with the old site hidden and an empty folder in its place leaves the old site in its place', () => {
    site('old', hidden('old'))
    mkdirSync(target)
    expect(() => replaceFolder(target, faulty(), {content: join(folder, 'content')})).toThrow('cannot be made')
    expect(seen()).toBe('old')
  })
})

describe('putBackOld(target)', () => {
  it('says whether it did', () => {
    expect(putBackOld(target)).toBe(false)
    site('old', hidden('old'))
    expect(putBackOld(target)).toBe(true)
    expect(putBackOld(target)).toBe(false)
    expect(seen()).toBe('old')
  })

  it.each(['first', 'last'] as const)('never takes what is left of a removal that was cut off for a site, not even when the new one was taken away by hand: %s', half => {
    for (let changes = 0, failed = true; failed; changes += 1) {
      safely(() => {
        for (const entry of readdirSync(folder)) rmSync(join(folder, entry), {recursive: true})
        site('old')
      })
      failed = cutAfter(changes, half, good('new'))
      safely(() => rmSync(target, {recursive: true, force: true}))
      putBackOld(target)
      expect(['none', 'old'], `cut after ${changes}`).toContain(seen())
    }
  })

  it('leaves a folder that holds anything, and remains that are not whole', () => {
    mkdirSync(hidden('old'))
    expect(putBackOld(target)).toBe(false)
    writeFileSync(join(hidden('old'), MARKER), '')
    mkdirSync(target)
    writeFileSync(join(target, 'letter.txt'), 'mine')
    expect(putBackOld(target)).toBe(false)
    expect(readdirSync(target)).toEqual(['letter.txt'])
  })
})
