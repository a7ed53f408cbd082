/**
 * Whole folder in, whole folder out. Of the expected site every file's digest is kept, and some pages in full. On a difference the new
 * site is laid beside it as `<name>-changed`: look at it, and where it is right, accept it by hand:
 *
 *     rm -r tests/folders/small-yard/expected && mv tests/folders/small-yard-changed tests/folders/small-yard/expected
 */
import {createHash} from 'node:crypto'
import {existsSync, mkdirSync, readFileSync, rmSync, writeFileSync} from 'node:fs'
import {dirname, join} from 'node:path'
import {fileURLToPath} from 'node:url'
import {describe, expect, it} from 'vitest'
import {publish} from '../../src/commands/publish.ts'
import {filesOf} from './files-of.ts'
import {listeningWorld} from './listening-world.ts'
import {temporaryFolder} from './temporary-folder.ts'

const HERE = fileURLToPath(new URL('.', import.meta.url))
const LIST = 'files.txt'
/** Pages kept in full, so that a difference can be read. */
const IN_FULL = [/^index\.html$/, /^pens\/2023-a\.html$/i, /^birds\/23-007\.html$/, /^traits\/comb\.html$/, /\.csv$/]

/** One line a file: the first half of its SHA-256, and its path. */
const digests = (site: string) =>
  filesOf(site).map(path => `${createHash('sha256').update(readFileSync(join(site, path))).digest('hex').slice(0, 32)}  ${path}\n`).join('')

function layBeside(site: string, changed: string): void {
  rmSync(changed, {recursive: true, force: true})
  mkdirSync(changed, {recursive: true})
  writeFileSync(join(changed, LIST), digests(site))
  for (const path of filesOf(site).filter(file => IN_FULL.some(pattern => pattern.test(file)))) {
    mkdirSync(dirname(join(changed, path)), {recursive: true})
    writeFileSync(join(changed, path), readFileSync(join(site, path)))
  }
}

describe.each(['week-old', 'small-yard'])('the folder %s', name => {
  const site = join(temporaryFolder(name), 'site')

  it('gives the expected site', async () => {
    const world = listeningWorld()
    const code = await publish({folder: join(HERE, name, 'records'), to: site, asOf: undefined, quiet: true}, world)
    expect(world.said.err).toBe('')
    expect(code).toBe(0)
    const [expected, changed] = [join(HERE, name, 'expected'), join(HERE, `${name}-changed`)]
    const list = existsSync(join(expected, LIST)) ? readFileSync(join(expected, LIST), 'utf8') : ''
    if (list !== digests(site)) layBeside(site, changed)
    else rmSync(changed, {recursive: true, force: true})
    for (const path of existsSync(expected) ? filesOf(expected).filter(file => file !== LIST) : []) {
      expect(existsSync(join(site, path)) ? readFileSync(join(site, path), 'utf8') : '', path).toBe(readFileSync(join(expected, path), 'utf8'))
    }
    expect(digests(site)).toBe(list)
  })

  it('gives the same bytes a second time', async () => {
    const again = join(site, '..', 'again')
    await publish({folder: join(HERE, name, 'records'), to: again, asOf: undefined, quiet: true}, listeningWorld())
    expect(digests(again)).toBe(digests(site))
  })

  it('never says what only a program would say', () => {
    const pages = filesOf(site).filter(path => /\.(?:html|csv|json|svg|xml)$/.test(path))
    const slips = pages.flatMap(path => {
      const text = readFileSync(join(site, path), 'utf8').replace(/<(script|style)\b.*?<\/\1>/gs, '')
      return [...text.matchAll(/\bNaN\b|\bundefined\b|\bInfinity\b|\[object |>null<|"null"/g)].map(match => `${path}: ${text.slice(Math.max(0, match.index - 40), match.index + 20)}`)
    })
    expect(slips).toEqual([])
  })

  it('draws no empty chart and no table without rows', () => {
    const pages = filesOf(site).filter(path => path.endsWith('.html'))
    const empty = pages.flatMap(path => {
      const text = readFileSync(join(site, path), 'utf8')
      return [...text.matchAll(/<(tbody|figure|ul|ol|p|svg)(?:\s[^>]*)?>\s*<\/\1>/g)].map(match => `${path}: ${match[0]}`)
    })
    expect(empty).toEqual([])
  })

  it('links only to what is there', () => {
    const files = new Set(filesOf(site))
    const ids = new Map<string, Set<string>>()
    const idsOf = (path: string) => {
      const known = ids.get(path) ?? new Set([...readFileSync(join(site, path), 'utf8').matchAll(/\sid=(?:"([^"]*)"|([^\s>]+))/g)].map(match => match[1] ?? match[2] ?? ''))
      ids.set(path, known)
      return known
    }
    const lost = [...files].filter(path => path.endsWith('.html')).flatMap(path =>
      [...readFileSync(join(site, path), 'utf8').matchAll(/\s(?:href|src)=(?:"([^"]*)"|([^\s>]+))/g)].flatMap(([, quoted, bare]) => {
        const target = quoted ?? bare ?? ''
        if (/^(?:https?:|mailto:|data:)/.test(target)) return []
        const url = new URL(target, `file:///site/${path}`)
        const file = decodeURIComponent(url.pathname).replace('/site/', '')
        if (!files.has(file)) return [`${path} → ${target}`]
        const hash = decodeURIComponent(url.hash.slice(1))
        return hash === '' || idsOf(file).has(hash) ? [] : [`${path} → ${target}`]
      }))
    expect([...new Set(lost)]).toEqual([])
  })
})
