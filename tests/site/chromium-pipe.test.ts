/** A browser that was started for PDFs leaves nothing behind when the process that asked is stopped. */
import {spawn} from 'node:child_process'
import {readdirSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {fileURLToPath} from 'node:url'
import {describe, expect, it} from 'vitest'
import {findChromium} from '../../src/site/find-chromium.ts'

const found = findChromium({env: process.env, platform: process.platform})
const profilesOf = (pid: number | undefined): string[] => readdirSync(tmpdir()).filter(name => name.startsWith(`pinfeather-chromium-${pid}-`))

describe.skipIf(found.kind !== 'found')('withPage(chromium, work) of a process that is stopped', () => {
  it('ends the browser, takes its profile away, and stops as it was told', async () => {
    const module = fileURLToPath(new URL('../../src/site/chromium-pipe.ts', import.meta.url))
    const script = `import {withPage} from ${JSON.stringify(module)}; await withPage(${JSON.stringify(found.kind === 'found' ? found.path : '')}, async () => { console.log('there'); await new Promise(resolve => setTimeout(resolve, 60_000)) }, 60_000)`
    const child = spawn(process.execPath, ['--import', 'tsx', '--input-type=module', '-e', script], {stdio: ['ignore', 'pipe', 'inherit']})
    await new Promise(resolve => child.stdout.once('data', resolve))
    expect(profilesOf(child.pid)).toHaveLength(1)
    const ended = new Promise(resolve => child.once('exit', (_, signal) => { resolve(signal) }))
    child.kill('SIGTERM')
    expect(await ended).toBe('SIGTERM')
    expect(profilesOf(child.pid)).toEqual([])
  })
})
