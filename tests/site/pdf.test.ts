/** What is said where a PDF cannot be made: no Chromium, one that is none, stops, hangs or answers with nonsense. */
import {chmodSync, readdirSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {describe, expect, it} from 'vitest'
import {noPdfWords, pdfsOf} from '../../src/site/pdf.ts'
import {temporaryFolder} from '../folders/temporary-folder.ts'

const root = temporaryFolder('no-pdf')
const PAGE = '<!DOCTYPE html><title>A page</title><p>x'

/** A script in the place of a Chromium. */
function standIn(name: string, script: string, mode = 0o755): string {
  const path = join(root, name)
  writeFileSync(path, script)
  chmodSync(path, mode)
  return path
}

async function wordsFor(chromium: string, patience = 20_000): Promise<string> {
  const made = await pdfsOf([PAGE], {on: 20_000, paper: 'a4', machine: {env: {CHROMIUM: chromium}, platform: 'linux'}, patience})
  if (made.kind === 'made') throw new Error('a PDF was made')
  return noPdfWords(made).replaceAll(root, 'R')
}

describe('noPdfWords(why)', () => {
  it('names what CHROMIUM names and is not there', async () => {
    expect(await wordsFor(join(root, 'none'))).toBe('No PDF was made: CHROMIUM names R/none, and there is no such file. Everything else is published.')
  })

  it('says where it was looked for, and what to do', () => {
    expect(noPdfWords({kind: 'none', commands: ['chromium', 'chrome'], places: ['/usr/bin/chromium']})).toBe(
      'No PDF was made: it takes an installed Chromium, and none was found. CHROMIUM is not set, none of chromium, chrome is on the PATH, and there is none at /usr/bin/chromium. '
      + 'Install Chromium, or name one that you have, CHROMIUM=/path/to/chromium. Everything else is published.')
  })
})

describe.skipIf(process.platform === 'win32')('a Chromium that makes no PDF', () => {
  it.each([
    ['stops at once', 'echo "a line" >&2; echo "FATAL: No usable sandbox!" >&2; exit 3', /^No PDF was made: R\/stops-at-once was to set it, but it stopped with code 3, saying: FATAL: No usable sandbox!\. /],
    ['stops in silence', 'exit 0', /but it stopped with code 0\. Everything else is published\.$/],
    ['stops and leaves what it started', 'sleep 60 & exit 4', /but it stopped with code 4\. /],
    ['refuses', 'printf \'{"id":1,"error":{"message":"not here"}}\\0\' >&4; sleep 60', /but it would not do Target\.createTarget: not here\. /],
    ['answers with nonsense', 'printf \'{"id":1,"result":{"target":7}}\\0\' >&4; sleep 60', /but it answered without targetId\. /],
    ['answers in no language', 'printf \'hello\\0\' >&4; sleep 60', /but it answered with what is no JSON\. /],
  ])('%s', async (name, script, wanted) => {
    expect(await wordsFor(standIn(name.replaceAll(' ', '-'), `#!/bin/sh\n${script}\n`))).toMatch(wanted)
  })

  it('hangs, and is ended with all it started', async () => {
    expect(await wordsFor(standIn('hangs', '#!/bin/sh\nsleep 60 &\nsleep 60\n'), 300)).toMatch(/but it gave no answer within 0\.3 s\. /)
  })

  it('cannot be run', async () => {
    expect(await wordsFor(standIn('cannot-be-run', 'x', 0o644))).toMatch(/^No PDF was made: R\/cannot-be-run was to set it, but .*EACCES\. /)
  })

  it('leaves no profile behind', () => {
    expect(readdirSync(tmpdir()).filter(name => name.startsWith(`pinfeather-chromium-${process.pid}-`))).toEqual([])
  })
})
