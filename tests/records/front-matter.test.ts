import {mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {dirname, join} from 'node:path'
import matter from 'gray-matter'
import {afterEach, describe, expect, it} from 'vitest'
import {folderOnDisk} from '../../src/records/folder.ts'
import {readRecords} from '../../src/records/read.ts'
import {front, problemsOf, readFiles, short} from './reading.ts'

const DIARY = 'diary/2025-10-14-rain.md'
const good = front('on: 2025-10-14\ntitle: Rain')

describe('front matter is data', () => {
  const watched = globalThis as {wasRun?: boolean}
  afterEach(() => delete watched.wasRun)

  it.each(['js', 'javascript', 'coffee', 'cson', 'json', 'JS', ' js', 'constructor', '__proto__', 'toml'])('---%s is a located problem and is never run', language => {
    const files = {[DIARY]: `---${language}\n{on: (globalThis.wasRun = true, '2025-10-14'), title: 'Rain'}\n---\nWords\n`}
    expect(problemsOf(files)).toEqual([`${DIARY} 1:1-1:${4 + language.length} unreadable-front-matter`])
    expect(readFiles(files).records.diary).toEqual([])
    expect(watched.wasRun).toBeUndefined()
  })

  it('the language of plain YAML may be said', () => {
    expect(problemsOf({[DIARY]: good.replace('---', '--- yaml')})).toEqual([])
  })

  it('gray-matter’s cache is neither filled nor believed', () => {
    const text = good
    ;(matter as unknown as {cache: Record<string, unknown>}).cache[text] = {data: {front: {on: '1999', title: 'Forged'}}, content: 'Forged'}
    const {records} = readFiles({[DIARY]: text, 'diary/2025-10-15-sun.md': `${text}Sun`})
    expect(records.diary.map(({data}) => data.title)).toEqual(['Rain', 'Rain'])
    expect(Object.keys((matter as unknown as {cache: object}).cache)).toEqual([text])
    ;(matter as unknown as {clearCache: () => void}).clearCache()
  })

  it('keys that every object has are keys like others', () => {
    for (const key of ['constructor', 'toString', '__proto__', 'hasOwnProperty']) {
      expect(problemsOf({[DIARY]: front(`on: 2025-10-14\ntitle: Rain\n${key}: x`)})).toEqual([`${DIARY} 4:1-4:${1 + key.length} unknown-key`])
    }
    expect(readFiles({'birds/1.md': front('band: 1\nconstructor: x')}).records.bird[0]?.data.others.map(({key}) => key)).toEqual(['constructor'])
  })

  it('a key of gray-matter’s own, such as an excerpt’s sign, steers nothing', () => {
    const {records, problems} = readFiles({'birds/1.md': `${front('band: 1\nexcerpt_separator: x')}a x b`})
    expect(problems).toEqual([])
    expect(records.bird[0]?.body).toBe('a x b')
  })
})

describe('the file is cut', () => {
  it('CRLF, CR and a byte-order mark change nothing but the checksum', () => {
    const text = `${front('band: 24-031\nsex: femal')}Words.\n\nMore.\n`
    const plain = readFiles({'birds/1.md': text})
    for (const other of [text.replaceAll('\n', '\r\n'), text.replaceAll('\n', '\r'), `\uFEFF${text}`, `\uFEFF${text.replaceAll('\n', '\r\n')}`]) {
      expect({...readFiles({'birds/1.md': other}), checksum: plain.checksum}).toEqual(plain)
    }
    expect(plain.problems.map(problem => problem.place.start)).toEqual([{line: 3, column: 6}])
    expect(plain.records.bird[0]?.body).toBe('Words.\n\nMore.\n')
  })

  it.each([
    ['', '1:1-1:1 no-front-matter'], ['Words\n', '1:1-1:6 no-front-matter'], ['\n---\non: 2025\n---\n', '1:1-1:1 no-front-matter'], ['----\non: 2025\n----\n', '1:1-1:5 no-front-matter'],
    ['---\non: 2025\n', '1:1-1:4 unreadable-front-matter'], ['---', '1:1-1:4 unreadable-front-matter'], ['---\non: 2025\ntitle: Rain\n---- x\n', '4:1-4:7 unreadable-front-matter'],
  ])('%j', (text, problem) => {
    expect(problemsOf({[DIARY]: text})).toEqual([`${DIARY} ${problem}`])
  })

  it('front matter that is empty, or only remarks, lacks its keys', () => {
    for (const text of ['---\n---\n', '---\n# nothing yet\n---\n', '---\n\n---\n']) {
      expect(readFiles({[DIARY]: text}).problems.map(problem => [short(problem), problem.reason])).toEqual([
        [`${DIARY} 1:1-1:4 missing-key`, 'a diary entry needs “on”'], [`${DIARY} 1:1-1:4 missing-key`, 'a diary entry needs “title”'],
      ])
    }
  })

  it('front matter that is no record is said to be none', () => {
    expect(problemsOf({[DIARY]: front('- on\n- title')})).toEqual([`${DIARY} 1:1-1:4 wrong-form`])
    expect(problemsOf({[DIARY]: front('just words')})).toEqual([`${DIARY} 1:1-1:4 wrong-form`])
  })
})

describe('YAML that cannot be read', () => {
  const line3 = (line: string) => readFiles({'birds/1.md': front(`band: 24-031\n${line}\nstrain: holm-white`)}).problems.map(({place: {start}, code, reason}) => [`${start.line}:${start.column}`, code, reason])
  it.each([
    ['left: 2024-06-30 culled: off type', '3:7', 'the text that begins here has a colon and a space in it, which start a new value'],
    ['\tsex: male', '3:1', 'the line is set in with a tab'],
    ['keeper: @kelpgarth', '3:9', 'no text may begin with @'],
    ['keeper: `kelpgarth`', '3:9', 'no text may begin with `'],
    ['mark', '3:1', 'this line is no key with a value'],
    ['photos: [{file: a.jpg view: left}]', '3:17', 'a comma is missing, or a text with a colon in it is not in quotes'],
    ['keeper: "kelpgarth" x', '3:21', '“x” is not expected here'],
    ['keeper: &kelpgarth', '3:9', '“&kelpgarth” would be taken for the name of another place'],
    ['keeper: *kelpgarth', '3:9', '“*kelpgarth” would be taken for the name of another place'],
    ['keeper: !kelpgarth x', '3:9', 'a word that begins with ! would be taken for an instruction'],
  ])('%s', (line, place, reason) => {
    expect(line3(line)[0]).toEqual([place, 'unreadable-front-matter', reason])
  })

  it('many references to one another do not grow without end', () => {
    const bomb = ['a: &a [x, x, x, x, x, x, x, x, x]', ...'bcdefghij'.split('').map((name, index) => `${name}: &${name} [${Array(9).fill(`*${'abcdefghi'[index]}`).join(', ')}]`)].join('\n')
    const {problems} = readFiles({'birds/1.md': front(`band: 1\nprivate:\n${bomb.replace(/^/gm, '  ')}`)})
    expect(new Set(problems.map(problem => problem.code))).toEqual(new Set(['unreadable-front-matter']))
  })

  it('nor do brackets in brackets without end', () => {
    expect(readFiles({'birds/1.md': front(`band: 1\nprivate: ${'['.repeat(100_000)}`)}).problems.map(problem => problem.code)).toEqual(['unreadable-front-matter'])
  })

  it('an ampersand in a text is no reference', () => {
    expect(problemsOf({'birds/1.md': front('band: 24-031\nnote: Thorn & Fell, 3 * 4, "&x"\nkeeper: "&kelpgarth"')})).toEqual([])
  })

  it('a key given twice is read on past, the other slips are told too', () => {
    expect(problemsOf({'birds/1.md': front('band: 24-031\nband: 24-032\nsex: femal')})).toEqual(['birds/1.md 3:1-3:5 repeated-key', 'birds/1.md 4:6-4:11 unreadable-value'])
  })
})

describe('comments are never handed on', () => {
  it.each([
    ['a <!-- canary --> b', 'a  b'], ['<!-- canary\n\ncanary -->\n\nb', '\n\nb'], ['a <!-- canary', 'a '], ['a <!--> canary --> b', 'a  b'], ['a <!-- x --> b <!-- canary --> c', 'a  b  c'],
    ['    <!-- canary -->', '    '], ['a --> b', 'a --> b'],
  ])('%j', (body, kept) => {
    const {records} = readFiles({[DIARY]: good + body})
    expect(records.diary[0]?.body).toBe(kept)
  })

  it('nor those in values and cells', () => {
    const {records, problems} = readFiles({
      'birds/1.md': front('band: 1\ncomb: pea <!-- canary -->\nphotos: [{file: a.jpg, alt: "Head <!-- canary -->"}]'),
      'scores/a.csv': 'band,on,comb\n1,2024-05-04,pea <!-- canary -->\n',
    })
    expect(problems).toEqual([])
    expect(JSON.stringify(records)).not.toContain('canary')
    expect(records.scorings[0]?.looks[0]?.value).toBe('pea')
  })

  it('nor what a comma or a colon in one would part from it', () => {
    const {records, problems} = readFiles({
      'birds/1.md': front(`band: 1
# canary, <!-- canary: b -->
<!-- canary: a, {b -->
observations:
  - {on: 2024-05-04, temperament: calm <!-- canary, owner: canary at Ness -->}
  - {on: 2024-05-05, temperament: "calm <!-- canary", owner: "canary --> and <!-- b --> bold"}
  - on: 2024-05-06
    temperament: calm <!-- canary: a
  canary: b --> still`),
      'scores/a.csv': 'band,on,by,comb,struck\nX-1,2022-09-01,inga,single <!-- canary, ask canary -->\nX-2,2022-09-01,inga,"pea <!-- ""canary"", b -->",late <!-- canary\n,,,canary -->\n',
      'measures/a.csv': 'band,on,weight <!-- canary, g -->\n1,2024-05-04,300\n',
    })
    expect(problems).toEqual([])
    expect(JSON.stringify(records)).not.toMatch(/canary|owner/)
    expect(records.bird[0]?.data.observations?.map(({others}) => others.map(({key, value}) => [key, value]))).toEqual([
      [['temperament', 'calm']], [['temperament', 'calm and bold']], [['temperament', 'calm still']],
    ])
    expect(records.scorings.map(({looks, struck}) => [looks[0]?.value, struck])).toEqual([['single', null], ['pea', 'late']])
  })

  it('and leave everything else in its place', () => {
    expect(problemsOf({
      'birds/1.md': front('band: 1 <!-- a\nb: c -->\nobservations: [{on: 2024-05-04 <!-- a, b -->, by: [x]}]'), 'scores/a.csv': 'band,on,comb\n<!-- a, b -->1,4 May,pea\n',
    })).toEqual(['birds/1.md 4:51-4:54 wrong-form', 'scores/a.csv 2:16-2:21 unreadable-value'])
  })

  it.each([
    ['birds/1.md', front('band: 1\nkept: 2022-10-01 for breeding <!-- best hen and more\ncomb: canary'), '3:31-3:35'],
    ['birds/1.md', `${front('band: 1\ncomb: pea <!-- canary')}canary --> canary`, '3:11-3:15'],
    ['scores/a.csv', 'band,on,comb\n1,2024-05-04,pea\n2,2024-05-04,pea <!-- canary\n3,2024-05-04,canary\n', '3:18-3:22'],
  ])('an open one in the data of %s is an error, and nothing after it is read: %j', (file, text, place) => {
    const {records, problems} = readFiles({[file]: text})
    expect(problems.map(short)).toEqual([`${file} ${place} unclosed-comment`])
    expect(problems[0]?.severity).toBe('error')
    expect(JSON.stringify({records, problems})).not.toContain('canary')
  })
})

describe('a folder', () => {
  it('is read in one order, whatever order its files are listed in', () => {
    const files = {'birds/2.md': front('band: 2\nsex: x'), 'birds/10.md': front('band: 10\nsex: x'), 'birds/B.md': front('band: B'), 'birds/a.md': front('band: a')}
    const reading = readFiles(files)
    expect(reading.records.bird.map(({id}) => id)).toEqual(['10', '2', 'B', 'a'])
    expect(readFiles(Object.fromEntries(Object.entries(files).reverse()))).toEqual(reading)
    expect([...reading.faulty.keys()]).toEqual(['birds/10.md', 'birds/2.md'])
  })

  it('opens every file once', () => {
    const opened: string[] = []
    readRecords({list: () => ['photos/a.jpg', 'birds/1.md', 'papers/vet.pdf', 'x.bin'], bytes: file => (opened.push(file), Buffer.from(front('band: 1')))})
    expect(opened).toEqual(['birds/1.md'])
  })

  it('on disk leaves dot files and templates alone and follows links, though not in a circle', () => {
    const root = mkdtempSync(join(tmpdir(), 'pinfeather-records-'))
    try {
      for (const file of ['birds/1.md', 'project.md', '.git/x', 'birds/.swap.md', 'templates/page.hbs', 'photos/2024/a.jpg', 'diary/templates/x.md']) {
        mkdirSync(join(root, dirname(file)), {recursive: true})
        writeFileSync(join(root, file), '')
      }
      symlinkSync(root, join(root, 'photos', 'again'))
      symlinkSync(join(root, 'project.md'), join(root, 'diary', 'linked.md'))
      expect(folderOnDisk(root).list().sort()).toEqual(['birds/1.md', 'diary/linked.md', 'diary/templates/x.md', 'photos/2024/a.jpg', 'project.md'])
    } finally {
      rmSync(root, {recursive: true})
    }
  })

  it.each([
    ['photo/a.jpg', 'move it to photos/a.jpg'], ['birds/a.JPG', 'move it to photos/a.JPG'], ['measure/a.csv', 'move it to measures/a.csv'],
    ['weights.csv', 'move it to measures/weights.csv (weigh days, eggs, feed) or scores/weights.csv (scoring days)'], ['vet.pdf', 'move it to papers/vet.pdf, or out of the records'],
    ['notes/x.xyz', 'records lie in strains, traits, loci, keepers, birds, pens, hatches, shows, standard, care, diary, steps, measures, scores, photos, papers; move it there, or out of the records'],
  ])('%s: %s', (file, remedy) => {
    expect(readFiles({[file]: good}).problems).toMatchObject([{code: 'unplaced-file', severity: 'warning', remedy}])
  })

  it.each([['notes/rain.md', 'move it to diary/rain.md'], ['diary/2025/rain.md', 'move it to diary/rain.md'], ['diary/rain.markdown', 'call it diary/rain.md'], ['bird/rain.md', 'move it to diary/rain.md']])('%s, a record: %s', (file, remedy) => {
    expect(readFiles({[file]: good}).problems).toMatchObject([{code: 'misplaced-record', severity: 'error', remedy}])
  })

  it('an unreadable file is one problem', () => {
    const {slips} = readRecords({list: () => ['birds/1.md'], bytes: () => {
      throw new Error('EACCES')
    }})
    expect(slips).toMatchObject([{code: 'unreadable-file', at: {file: 'birds/1.md'}}])
  })
})
