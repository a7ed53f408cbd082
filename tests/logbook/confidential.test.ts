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

function linked(files: Files, asOf?: number) {
  const {book, confidential, slips} = link(readRecords(folderInMemory(around({...FILES, ...files}))), {asOf})
  if (!book) throw new Error('no book')
  return {book, slips, named: confidential && {
    keepers: [...confidential.keepers].map(([keeper, {name, region}]) => [book.keepers.includes(keeper), keeper.name, name, region]), judges: [...confidential.judges],
  }}
}

describe('confidentialOf(records)', () => {
  it('names who agreed to the committee alone, with the region, by the keeper of the book', () => {
    expect(linked({}).named).toEqual({keepers: [[true, 'keeper A', 'The keeper at Ternhouse', 'the north shore']], judges: []})
  })

  it('has a judge by what the entries of the book call them', () => {
    const files = {'shows/2024-11-02-ness.md': '---\nname: Autumn show\non: 2024-11-02\njudges: {j1: A third, j2: {name: A judge, consent-committee: yes}}\nentries: [{bird: H-1, judge: j2}]\n---\n'}
    const {book, named} = linked(files)
    expect([book.shows[0]?.entries[0]?.judge, named?.judges]).toEqual(['judge 2', [['judge 2', 'A judge']]])
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

describe('who may lean on it', () => {
  it('is linking, the committee’s dossier and the command that writes it; no finding, no chart, no other page', () => {
    const leaning = filesBelow('src').filter(file => file.endsWith('.ts') && importsOf(file).some(path => path.endsWith('/confidential.ts')))
    expect(leaning.filter(file => !MAY.some(may => may.test(file)))).toEqual([])
  })
  const MAY = [/^src\/logbook\/(?:keepers|judges|linked|link)\.ts$/, /^src\/pages\/(?:dossier|naming)\.ts$/, /^src\/commands\/(?:open-book|publish|publish-for-committee)\.ts$/]
})
