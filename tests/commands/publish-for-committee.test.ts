/** The committee's dossier is written beside the site, never in it, and only after the site stood. */
import {existsSync, mkdirSync, readdirSync, readFileSync, realpathSync, symlinkSync, writeFileSync} from 'node:fs'
import {join} from 'node:path'
import {describe, expect, it} from 'vitest'
import {committeeFolder} from '../../src/commands/publish-for-committee.ts'
import {publish} from '../../src/commands/publish.ts'
import {MARKER} from '../../src/site/write.ts'
import {layDown} from '../bench/draw-book.ts'
import {filesOf} from '../folders/files-of.ts'
import {listeningWorld} from '../folders/listening-world.ts'
import {temporaryFolder} from '../folders/temporary-folder.ts'
import {around, type Files} from '../logbook/around.ts'

const root = realpathSync(temporaryFolder('for-committee'))
const TOLD = '---\nname: The keeper at Noustead\nconsent-committee: 2024-01-15\n---\n'
const requirements = (audience: string) => `---\n${audience}requirements: []\n---\n`
const COMMITTEE: Files = {'keepers/ternhouse.md': TOLD, 'requirements.md': requirements('audience: committee\n')}
let made = 0

function laidDown(files: Files): string {
  const folder = join(root, String(++made))
  layDown(join(folder, 'content'), new Map(Object.entries(around(files))))
  return folder
}

async function published(folder: string, {to = 'site', quiet = false, content = 'content'} = {}) {
  const world = listeningWorld()
  const code = await publish({folder: join(folder, content), to: join(folder, to), asOf: undefined, quiet}, world)
  return {code, out: world.said.out.replaceAll(folder, 'R'), err: world.said.err.replaceAll(folder, 'R')}
}

describe('committeeFolder(site)', () => {
  it.each([['site', 'site-for-committee'], ['a/b/site/', 'a/b/site-for-committee'], ['/srv/site', '/srv/site-for-committee'], ['../site', '../site-for-committee']])('%s: %s', (site, place) => {
    expect(committeeFolder(site)).toBe(place)
  })

  it.each(['.', './', 'a/..', 'site/.'])('%s leads beside a folder, never into it', site => {
    expect(committeeFolder(site)).not.toMatch(/(?:^|\/)\.{1,2}-for/)
  })
})

describe('publishing for the committee', () => {
  it('writes one file beside the site, and says last where, whom it names and that it is not public', async () => {
    const folder = laidDown(COMMITTEE), {code, out} = await published(folder)
    expect(code).toBe(0)
    expect(readdirSync(folder).sort()).toEqual(['content', 'site', 'site-for-committee'])
    expect(filesOf(join(folder, 'site-for-committee')).filter(path => path !== MARKER)).toEqual(['dossier.html'])
    expect(out.trimEnd().split('\n').at(-1)).toBe('For the committee only: R/site-for-committee/dossier.html. It is no part of the public site and names 1 keeper whom the site does not; send it, and publish it nowhere.')
    expect(readFileSync(join(folder, 'site-for-committee', 'dossier.html'), 'utf8')).toContain('The keeper at Noustead')
    expect(filesOf(join(folder, 'site')).filter(path => readFileSync(join(folder, 'site', path)).includes('Noustead'))).toEqual([])
  })

  it('needs no other file: no picture, style or script is asked for', async () => {
    const folder = laidDown(COMMITTEE)
    await published(folder)
    expect(readFileSync(join(folder, 'site-for-committee', 'dossier.html'), 'utf8')).not.toMatch(/<(?:link|script|img)\b[^>]*(?:href|src)=(?!"?data:)/)
  })

  it('gives the same bytes again, over what it made before', async () => {
    const folder = laidDown(COMMITTEE), file = join(folder, 'site-for-committee', 'dossier.html')
    await published(folder)
    const before = readFileSync(file)
    expect((await published(folder)).code).toBe(0)
    expect(readFileSync(file).equals(before)).toBe(true)
  })

  it('keeps what somebody laid beside it, and says nothing when quiet', async () => {
    const folder = laidDown(COMMITTEE)
    await published(folder)
    writeFileSync(join(folder, 'site-for-committee', 'letter.txt'), 'Dear committee')
    expect(await published(folder, {quiet: true})).toEqual({code: 0, out: '', err: ''})
    expect(readFileSync(join(folder, 'site-for-committee', 'letter.txt'), 'utf8')).toBe('Dear committee')
  })

  it('leaves a file of somebody’s own that stands in its place, and says that the site stands without it', async () => {
    const folder = laidDown(COMMITTEE), place = join(folder, 'site-for-committee')
    mkdirSync(place)
    writeFileSync(join(place, MARKER), 'ours\n\nother.html\n')
    writeFileSync(join(place, 'dossier.html'), 'mine')
    expect(await published(folder)).toMatchObject({code: 2, err: expect.stringContaining('The site is published, but not the dossier for the committee: R/site-for-committee holds dossier.html, which pinfeather did not make') as string})
    expect(readFileSync(join(place, 'dossier.html'), 'utf8')).toBe('mine')
    expect(existsSync(join(folder, 'site', 'index.html'))).toBe(true)
  })

  it.each([['nothing asked', ''], ['the public', 'audience: public\n']])('writes none with %s', async (_, audience) => {
    const folder = laidDown({...COMMITTEE, 'requirements.md': requirements(audience)})
    expect((await published(folder)).out).not.toContain('ommittee')
    expect(readdirSync(folder).sort()).toEqual(['content', 'site'])
  })

  it('says that one of an earlier run still lies there when none is asked for any more', async () => {
    const folder = laidDown(COMMITTEE)
    await published(folder)
    writeFileSync(join(folder, 'content', 'requirements.md'), requirements(''))
    expect(await published(folder)).toMatchObject({code: 0, err: 'R/site-for-committee still holds a dossier for the committee. The records ask for none now, so it was left as it was; take it away if it is not wanted.\n'})
  })

  it('says so of what a run that was cut off left of one', async () => {
    const folder = laidDown({...COMMITTEE, 'requirements.md': requirements('')})
    mkdirSync(join(folder, '.site-for-committee.pinfeather-new'))
    expect((await published(folder)).err).toContain('R/.site-for-committee.pinfeather-new still holds a dossier for the committee, or part of one.')
  })
})

describe('nothing is published where the committee’s dossier may not lie', () => {
  const refused = async (folder: string, options?: Parameters<typeof published>[1]) => {
    const {code, err} = await published(folder, options)
    expect(code).toBe(2)
    return err
  }

  it('in a folder of somebody else', async () => {
    const folder = laidDown(COMMITTEE)
    mkdirSync(join(folder, 'site-for-committee'))
    writeFileSync(join(folder, 'site-for-committee', 'mine.txt'), '')
    expect(await refused(folder)).toBe('The dossier for the committee goes beside the site, and cannot: R/site-for-committee has files in it that pinfeather did not make, and was left as it is; name another folder, or an empty one. Nothing was published; R/site was not made.\n')
    expect(existsSync(join(folder, 'site'))).toBe(false)
  })

  it('in the site, by a link', async () => {
    const folder = laidDown(COMMITTEE)
    mkdirSync(join(folder, 'site'))
    symlinkSync('site', join(folder, 'site-for-committee'))
    expect(await refused(folder)).toContain('R/site-for-committee is to hold the dossier for the committee, which is not to be published, and leads into the site in R/site, or the site into it')
    expect(readdirSync(join(folder, 'site'))).toEqual([])
  })

  it('in the site, where the name of the site is a link to a folder around it', async () => {
    const folder = laidDown(COMMITTEE)
    mkdirSync(join(folder, 'public'))
    symlinkSync('.', join(folder, 'public', 'site'))
    writeFileSync(join(folder, 'public', MARKER), '')
    expect(await refused(folder, {to: 'public/site'})).toContain('leads into the site in R/public/site')
    expect(readdirSync(join(folder, 'public')).sort()).toEqual([MARKER, 'site'])
  })

  it('in the records', async () => {
    const folder = laidDown(COMMITTEE)
    symlinkSync('content', join(folder, 'site-for-committee'))
    expect(await refused(folder)).toContain('may not lie one inside the other, or publishing would write over records')
  })
})
