import {chmodSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync} from 'node:fs'
import {homedir, tmpdir} from 'node:os'
import {dirname, join} from 'node:path'
import {afterEach, beforeEach, describe, expect, it} from 'vitest'
import {liesApart, MARKER, refusalOf, refusalWords, replaceFolder} from '../../src/site/write.ts'

let folder = '', content = '', target = ''
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'write-'))
  content = join(folder, 'content')
  target = join(folder, 'site')
  mkdirSync(content)
})
afterEach(() => rmSync(folder, {recursive: true, force: true}))

const write = (files: Readonly<Record<string, string>>, to = target) => replaceFolder(to, new Map(Object.entries(files)), {content})
const read = (path: string): string => readFileSync(join(target, path), 'utf8')

describe('liesApart(one, other)', () => {
  it('is so of neighbours, also of one whose name the other begins with, and of what is not there yet', () => {
    expect(liesApart(target, `${target}-for-committee`)).toBe(true)
    expect(liesApart(target, content)).toBe(true)
  })

  it('is not so of a folder and itself, nor of one in the other, wherever links lead', () => {
    symlinkSync('content', join(folder, 'link'))
    for (const inner of [content, join(content, 'a', 'b'), join(folder, 'link'), join(folder, 'link', 'a')]) {
      expect([liesApart(content, inner), liesApart(inner, content)]).toEqual([false, false])
    }
  })
})

describe('replaceFolder(target, files)', () => {
  it('writes a first site with its marker', () => {
    expect(write({'index.html': 'a', 'birds/24-031.html': 'bé'})).toEqual({kind: 'written', target, files: 2, bytes: 4, kept: 0})
    expect(read('birds/24-031.html')).toBe('bé')
    expect(existsSync(join(target, MARKER))).toBe(true)
  })

  it('replaces the old site whole and leaves nothing beside it', () => {
    write({'index.html': 'old', 'gone.html': 'old'})
    write({'index.html': 'new'})
    expect(read('index.html')).toBe('new')
    expect(existsSync(join(target, 'gone.html'))).toBe(false)
    expect(readdirSync(folder).sort()).toEqual(['content', 'site'])
  })

  it('carries over what somebody put beside the pages, and nothing of the old pages', () => {
    write({'index.html': 'old', 'gone.html': 'old', 'birds/1.html': 'old'})
    writeFileSync(join(target, 'CNAME'), 'fowl.invalid')
    mkdirSync(join(target, '.git', 'refs'), {recursive: true})
    writeFileSync(join(target, '.git', 'refs', 'head'), 'x')
    writeFileSync(join(target, 'birds', 'mine.jpg'), 'picture')
    symlinkSync('CNAME', join(target, 'link'))
    for (const words of ['new', 'newer']) {
      expect(write({'index.html': words})).toMatchObject({kind: 'written', files: 1, kept: 4})
      expect([read('index.html'), read('CNAME'), read('.git/refs/head'), read('birds/mine.jpg'), read('link')]).toEqual([words, 'fowl.invalid', 'x', 'picture', 'fowl.invalid'])
      expect(existsSync(join(target, 'gone.html')) || existsSync(join(target, 'birds', '1.html'))).toBe(false)
    }
  })

  it('is refused where a file of somebody\'s own stands where a page is to go', () => {
    write({'index.html': 'old'})
    writeFileSync(join(target, 'notes.html'), 'mine')
    const refusal = write({'index.html': 'new', 'notes.html': 'page'})
    expect(refusal).toEqual({kind: 'own-file-in-the-way', target, path: 'notes.html'})
    expect([read('index.html'), read('notes.html')]).toEqual(['old', 'mine'])
    expect(readdirSync(folder).sort()).toEqual(['content', 'site'])
  })

  it('makes the folders above the target', () => {
    expect(write({'index.html': 'a'}, join(folder, 'a', 'b', 'site')).kind).toBe('written')
  })

  it('takes an empty folder', () => {
    mkdirSync(target)
    expect(write({'index.html': 'a'}).kind).toBe('written')
  })

  it('leaves the old site as it was when a file cannot be written', () => {
    write({'index.html': 'old'})
    expect(() => write({'index.html': 'new', '../outside.html': 'x'})).toThrow(/no path inside a site/)
    expect(() => write({'index.html': 'new', 'index.html/x.html': 'x'})).toThrow()
    expect(read('index.html')).toBe('old')
    expect(readdirSync(folder).sort()).toEqual(['content', 'site'])
  })

  it('leaves the old site as it was when a page cannot be made, with others written already', () => {
    write({'index.html': 'old'})
    function* pages(): Generator<readonly [string, string]> {
      yield ['index.html', 'new']
      throw new Error('no such word')
    }
    expect(() => replaceFolder(target, pages(), {content})).toThrow('no such word')
    expect(read('index.html')).toBe('old')
    expect(readdirSync(folder).sort()).toEqual(['content', 'site'])
  })

  it.skipIf(process.getuid?.() === 0)('leaves the old site as it was when the folder above may not be written', () => {
    write({'index.html': 'old'})
    chmodSync(folder, 0o500)
    expect(() => write({'index.html': 'new'})).toThrow()
    chmodSync(folder, 0o700)
    expect(read('index.html')).toBe('old')
  })

  it('clears what a run that was cut off left behind', () => {
    write({'index.html': 'old'})
    mkdirSync(join(folder, '.site.pinfeather-new'))
    writeFileSync(join(folder, '.site.pinfeather-new', 'half.html'), 'half')
    write({'index.html': 'new'})
    expect(readdirSync(folder).sort()).toEqual(['content', 'site'])
    expect(readdirSync(target).sort()).toEqual([MARKER, 'index.html'])
  })

  it('puts the old site back when a run was cut off between its two renames and the next one fails', () => {
    mkdirSync(join(folder, '.site.pinfeather-old'))
    writeFileSync(join(folder, '.site.pinfeather-old', MARKER), '')
    writeFileSync(join(folder, '.site.pinfeather-old', 'index.html'), 'old')
    expect(() => write({'../x': ''})).toThrow()
    expect(read('index.html')).toBe('old')
  })

  it('follows a link to the folder it stands for', () => {
    mkdirSync(join(folder, 'elsewhere'))
    symlinkSync(join(folder, 'elsewhere'), target)
    expect(write({'index.html': 'a'}).kind).toBe('written')
    expect(readFileSync(join(folder, 'elsewhere', 'index.html'), 'utf8')).toBe('a')
  })

  it.each(['', '/a', 'a//b', 'a/../b', './a', 'a\\b', 'C:a', 'a\0'])('refuses the path %j', path => {
    expect(() => write({[path]: 'x'})).toThrow(/no path inside a site/)
  })
})

describe('a folder that is not replaced', () => {
  it('has files of somebody else in it', () => {
    mkdirSync(target)
    writeFileSync(join(target, 'letter.txt'), 'mine')
    const refusal = write({'index.html': 'a'})
    expect(refusal).toEqual({kind: 'foreign-folder', target})
    expect(readdirSync(target)).toEqual(['letter.txt'])
  })

  it('is a file', () => {
    writeFileSync(target, 'mine')
    expect(write({'index.html': 'a'}).kind).toBe('not-a-folder')
    expect(readFileSync(target, 'utf8')).toBe('mine')
  })

  it('holds the records, is the records, or lies inside them', () => {
    expect(write({'index.html': 'a'}, content).kind).toBe('holds-records')
    expect(write({'index.html': 'a'}, folder).kind).toBe('holds-records')
    expect(write({'index.html': 'a'}, join(content, 'site')).kind).toBe('holds-records')
    symlinkSync(content, join(folder, 'way-round'))
    expect(write({'index.html': 'a'}, join(folder, 'way-round')).kind).toBe('holds-records')
  })

  it('is the root, the home folder or one above it', () => {
    for (const place of ['/', homedir(), dirname(homedir())]) expect(refusalOf(place, content)?.kind).toBe('home-or-root')
  })

  it('is named in words that say what to do', () => {
    expect(refusalWords({kind: 'foreign-folder', target: 'site'})).toBe('site has files in it that pinfeather did not make, and was left as it is; name another folder, or an empty one')
  })
})
