/** Names for the committee stand beside the book, and only where a dossier for the committee is asked for. */
import {describe, expect, it} from 'vitest'
import {link} from '../../src/logbook/link.ts'
import {folderInMemory} from '../../src/records/folder.ts'
import {readRecords} from '../../src/records/read.ts'
import {filesBelow, importsOf} from '../architecture/source-files.ts'
import {around, type Files} from './around.ts'

const REQUIREMENTS = (audience: string) => `---\n${audience}requirements: []\n---\n`
const FILES: Files = {
  'requirements.md': REQUIREMENTS('audience: committee\n'),
  'keepers/ternhouse.md': '---\nname: The keeper at Ternhouse\nconsent-committee: 2024-01-15\nregion: the north shore\n---\n',
  'keepers/wadderness.md': '---\nname: The keeper at Wadderness\nconsent: no\nconsent-committee: no\nregion: the south shore\n---\n',
}
const show = (on: string, judges: string) => `---\nname: Autumn show\non: ${on}\njudges: ${judges}\n---\n`

function linked(files: Files, asOf?: number) {
  const {book, confidential, slips} = link(readRecords(folderInMemory(around({...FILES, ...files}))), {asOf})
  if (!book) throw new Error('no book')
  return {book, slips, named: confidential && {keepers: [...confidential.keepers].map(([keeper, {name, region}]) => [book.keepers.includes(keeper), keeper.name, name, region]), judges: [...confidential.judges]}}
}

describe('confidentialOf(records)', () => {
  it('names who agreed to the committee alone, with the region, by the keeper of the book', () => {
    expect(linked({}).named).toEqual({keepers: [[true, 'keeper A', 'The keeper at Ternhouse', 'the north shore']], judges: []})
  })

  it('is of the same keepers in a view of an earlier day', () => {
    expect(linked({}, 19_000).named?.keepers).toEqual([[true, 'keeper A', 'The keeper at Ternhouse', 'the north shore']])
  })

  it.each([['', 'nothing'], ['audience: public\n', 'the public']])('is nothing with %j, a dossier for %s', audience => {
    expect(linked({'requirements.md': REQUIREMENTS(audience)}).named).toBeNull()
  })

  it('is nothing without requirements', () => {
    const rest = Object.fromEntries(Object.entries(around(FILES)).filter(([file]) => file !== 'requirements.md'))
    expect(link(readRecords(folderInMemory(rest))).confidential).toBeNull()
  })

  it('leaves the book as it is without it, to the letter', () => {
    const words = (consents: string) => JSON.stringify({...linked({'keepers/ternhouse.md': `---\nname: The keeper at Ternhouse\n${consents}---\n`}).book.keepers})
    expect(words('consent-committee: yes\n')).toBe(words(''))
    expect(words('consent-committee: yes\n')).not.toContain('Ternhouse')
  })
})

describe('a judge', () => {
  const judges = (...lists: string[]) => linked(Object.fromEntries(lists.map((list, index) => [`shows/202${index}-11-02.md`, show(`202${index}-11-02`, list)]))).named?.judges

  it('is named to the committee by what the public calls them', () => {
    expect(judges('{j1: {name: A judge, consent-committee: yes}, j2: {name: Another, consent: yes}, j3: A third}')).toEqual([['judge 1', 'A judge']])
  })

  it('is named to it where every show that has them agrees, to all or to the committee', () => {
    expect(judges('{j1: {name: A judge, consent: yes}}', '{j: {name: A judge, consent-committee: yes}}')).toEqual([['judge 1', 'A judge']])
    expect(judges('{j1: {name: A judge, consent: yes}}', '{j: A judge}')).toEqual([])
    expect(judges('{j1: {name: A judge, consent-committee: yes}}', '{j: {name: A judge, consent-committee: no}}')).toEqual([])
  })

  it('is never called by a number by which somebody else is named', () => {
    expect(judges('{j1: {name: Judge 1, consent: yes}, j2: {name: A judge, consent-committee: yes}}')).toEqual([['judge 2', 'A judge']])
  })
})

describe('who may lean on it', () => {
  it('is linking, the committee’s dossier and the command that writes it; no finding, no chart, no other page', () => {
    const leaning = filesBelow('src').filter(file => file.endsWith('.ts') && importsOf(file).some(path => path.endsWith('/confidential.ts')))
    expect(leaning.filter(file => !MAY.some(may => may.test(file)))).toEqual([])
  })
  const MAY = [/^src\/logbook\/(?:keepers|judges|linked|link)\.ts$/, /^src\/pages\/(?:dossier[\w-]*|named)\.ts$/, /^src\/commands\/(?:open-book|publish|publish-for-committee)\.ts$/]
})
