/** What publishing says and leaves behind when something stands in its way. */
import {once} from 'node:events'
import {chmodSync, existsSync, mkdirSync, readFileSync, symlinkSync, writeFileSync} from 'node:fs'
import {createServer} from 'node:net'
import {dirname, join} from 'node:path'
import {describe, expect, it, vi} from 'vitest'
import {inspect} from '../../src/commands/inspect.ts'
import {publish} from '../../src/commands/publish.ts'
import {MARKER} from '../../src/site/write.ts'
import {listeningWorld} from '../folders/listening-world.ts'
import {temporaryFolder} from '../folders/temporary-folder.ts'

const PROJECT = '---\nname: Skerry Fowl\naim: A fowl that stands wind and wet.\n---\n'
const root = temporaryFolder('publish')
let made = 0

function folderWith(files: Readonly<Record<string, string>>): string {
  const folder = join(root, String(++made))
  for (const [file, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, file)), {recursive: true})
    writeFileSync(join(folder, file), text)
  }
  return folder
}

async function published(folder: string) {
  const world = listeningWorld()
  const code = await publish({folder: join(folder, 'content'), to: join(folder, 'site'), asOf: undefined, quiet: true}, world)
  return {code, err: world.said.err.replaceAll(folder, 'R')}
}

const CUT_OFF = {[`.site.pinfeather-old/${MARKER}`]: '', '.site.pinfeather-old/index.html': 'old'}

describe('publishing after a run that was cut off between its renames', () => {
  it.each([
    ['records at fault', {'content/project.md': `${PROJECT}\n![A hen](photos/none.jpg)\n`}, 1],
    ['a folder without records', {'content/notes.txt': ''}, 2],
    ['no folder of records', {}, 2],
  ])('puts the old site back even with %s, and says so', async (_, files, wanted) => {
    const folder = folderWith({...CUT_OFF, ...files})
    const {code, err} = await published(folder)
    expect(code).toBe(wanted)
    expect(err).toContain('A run that was cut off had left the site of R/site hidden; it is back in its place.')
    if (wanted === 1) expect(err).toContain('Nothing was published; R/site is as it was.')
    expect(readFileSync(join(folder, 'site', 'index.html'), 'utf8')).toBe('old')
    expect(existsSync(join(folder, '.site.pinfeather-old'))).toBe(false)
  })
})

describe('a folder of records that cannot be read whole', () => {
  const ringOf = (folder: string, name: string) => {
    symlinkSync(join(folder, name), join(folder, `${name}-again`))
    symlinkSync(join(folder, `${name}-again`), join(folder, name))
  }

  it('is refused where a folder in it cannot be opened', async () => {
    const folder = folderWith({'content/project.md': PROJECT})
    ringOf(join(folder, 'content'), 'birds')
    const {code, err} = await published(folder)
    expect(code).toBe(2)
    expect(err).toMatch(/^R\/content\/birds(?:-again)? cannot be opened \(a link that leads round in a ring\); mend that, or take it out of the records\.\n$/)
    const world = listeningWorld()
    expect(inspect({folder: join(folder, 'content'), format: 'json', asOf: undefined, quiet: true}, world)).toBe(2)
    expect(world.said.out).toBe('')
  })

  it('is refused where it cannot be opened itself', async () => {
    const folder = folderWith({'a.txt': ''})
    ringOf(folder, 'content')
    const {code, err} = await published(folder)
    expect(code).toBe(2)
    expect(err).toContain('R/content cannot be opened')
  })

  it('is refused where a link leads nowhere', async () => {
    const folder = folderWith({'content/project.md': `${PROJECT}\n![A hen](photos/a.jpg)\n`, 'content/photos/b.jpg': ''})
    symlinkSync(join(folder, 'gone.jpg'), join(folder, 'content', 'photos', 'a.jpg'))
    const {code, err} = await published(folder)
    expect(code).toBe(2)
    expect(err).toContain('R/content/photos/a.jpg cannot be opened (a link that leads nowhere)')
  })

  it('is at fault where a picture cannot be opened', async () => {
    const folder = folderWith({'content/project.md': `${PROJECT}\n![A hen](photos/a.jpg)\n`, 'content/photos/b.jpg': ''})
    const socket = createServer().listen(join(folder, 'content', 'photos', 'a.jpg')) // there, but no file that can be read
    await once(socket, 'listening')
    const {code, err} = await published(folder)
    socket.close()
    expect(code).toBe(1)
    expect(err).toBe('photos/a.jpg cannot be opened; look whether you may read it. Nothing was published; R/site was not made.\n')
  })

  it.skipIf(process.getuid?.() === 0)('is refused where a folder may not be read', async () => {
    const folder = folderWith({'content/project.md': PROJECT, 'content/birds/1.md': ''})
    chmodSync(join(folder, 'content', 'birds'), 0)
    const {code, err} = await published(folder)
    chmodSync(join(folder, 'content', 'birds'), 0o700)
    expect(code).toBe(2)
    expect(err).toBe('R/content/birds cannot be opened (you may not read it); mend that, or take it out of the records.\n')
  })
})

describe('publishing with PDFs where no Chromium is', () => {
  it('says so, and publishes everything else', async () => {
    const folder = folderWith({'content/project.md': PROJECT, 'content/standard/1.md': '---\ndraft: 1\non: 2025-01-14\n---\n## Male\n\n**Comb.** Pea.\n'})
    vi.stubEnv('CHROMIUM', join(folder, 'none'))
    const world = listeningWorld()
    const code = await publish({folder: join(folder, 'content'), to: join(folder, 'site'), asOf: undefined, pdf: true, quiet: true}, world)
    vi.unstubAllEnvs()
    expect(code).toBe(0)
    expect(world.said.err.replaceAll(folder, 'R')).toContain('No PDF was made: CHROMIUM names R/none, and there is no such file. Everything else is published.\n')
    expect(existsSync(join(folder, 'site', MARKER))).toBe(true)
    expect(existsSync(join(folder, 'site', 'standard.pdf'))).toBe(false)
    for (const page of ['standard.html', 'dossier.html']) expect(readFileSync(join(folder, 'site', page), 'utf8')).not.toContain('.pdf')
  })
})
