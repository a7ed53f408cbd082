/** The command line as it is typed: what is wrong use, and what is said to it. */
import {spawnSync} from 'node:child_process'
import {readFileSync} from 'node:fs'
import {fileURLToPath} from 'node:url'
import {describe, expect, it} from 'vitest'

const CLI = fileURLToPath(new URL('../../src/cli.ts', import.meta.url))

function typed(...words: string[]) {
  const {status, stdout, stderr} = spawnSync(process.execPath, ['--import', 'tsx', CLI, ...words], {encoding: 'utf8', timeout: 60_000})
  return {status, stdout, stderr}
}

describe('wrong use of the command line', () => {
  it('a day that is none is refused with the reason', () => {
    const {status, stderr} = typed('inspect', 'content', '--as-of', '2026-02-30')
    expect(status).toBe(2)
    expect(stderr).toContain('“2026-02-30” is not in the calendar; write a date that exists')
  }, 60_000)

  it('the folder to write goes after --to', () => {
    const {status, stderr} = typed('publish', 'my-fowl', 'my-site')
    expect(status).toBe(2)
    expect(stderr).toContain('the folder to write goes after --to: pinfeather publish my-fowl --to my-site')
  }, 60_000)

  it('a share above one may have been meant in per cent', () => {
    const {status, stderr} = typed('figures', 'hatch-size', 'content', '--wanted', 'comb pea', '--at-least', '2', '--chance', '95')
    expect([status, stderr.split('\n')[0]]).toEqual([2, 'error: option \'--chance <share>\' argument \'95\' is invalid. Did you mean 95%?'])
  }, 60_000)
})

it('holds records against a checksum, in any day’s view the same', () => {
  const {status, stdout} = typed('checksum', 'content')
  const [short = ''] = stdout.split('\n')
  expect([status, /^(?:[\da-f]{4} ){3}[\da-f]{4}$/.test(short)]).toEqual([0, true])
  expect(typed('checksum', 'content', '--is', short).status).toBe(0)
  expect(typed('checksum', 'content', '--as-of', '2024-01-01').status).toBe(2)
}, 60_000)

it('says its version, that of package.json', () => {
  const {version} = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8')) as {version: string}
  expect(typed('--version')).toEqual({status: 0, stdout: `${version}\n`, stderr: ''})
}, 60_000)
