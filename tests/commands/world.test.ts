import {spawn} from 'node:child_process'
import {EventEmitter} from 'node:events'
import {fileURLToPath} from 'node:url'
import {describe, expect, it} from 'vitest'
import {worldOfProcess} from '../../src/commands/world.ts'

const ROOT = fileURLToPath(new URL('../..', import.meta.url))

function stream() {
  const written: string[] = []
  return Object.assign(new EventEmitter(), {isTTY: false, written, write: (text: string) => { written.push(text); return true }})
}
function madeUp(env: NodeJS.ProcessEnv = {}) {
  const [stdout, stderr] = [stream(), stream()]
  return {stdout, stderr, world: worldOfProcess({env, stdout: stdout as never, stderr: stderr as never})}
}

describe('worldOfProcess(process)', () => {
  it('says what was asked for on the one stream, and all else on the other', () => {
    const {world, stdout, stderr} = madeUp()
    world.out('an answer')
    world.err('a problem')
    expect([stdout.written, stderr.written]).toEqual([['an answer'], ['a problem']])
  })

  it('ends quietly when the reader has closed the pipe, and goes on speaking on the other', () => {
    const {world, stdout, stderr} = madeUp()
    world.out('first line')
    stdout.emit('error', Object.assign(new Error('write EPIPE'), {code: 'EPIPE'}))
    world.out('second line')
    world.err('a problem')
    expect([stdout.written, stderr.written]).toEqual([['first line'], ['a problem']])
  })

  it('hides no other fault', () => {
    const {stdout} = madeUp()
    expect(() => stdout.emit('error', Object.assign(new Error('no space left'), {code: 'ENOSPC'}))).toThrow('no space left')
  })

  it('leaves colours out where they are not wanted or nobody watches', () => {
    expect(madeUp().world.colour).toEqual({out: false, err: false})
    const {stdout, stderr} = {stdout: Object.assign(stream(), {isTTY: true}), stderr: Object.assign(stream(), {isTTY: true})}
    expect(worldOfProcess({env: {}, stdout: stdout as never, stderr: stderr as never}).colour).toEqual({out: true, err: true})
    expect(worldOfProcess({env: {NO_COLOR: '1'}, stdout: stdout as never, stderr: stderr as never}).colour).toEqual({out: false, err: false})
  })
})

describe('a real pipe that is closed at once', () => {
  it('lets figures end with code 0 and not a word', async () => {
    const child = spawn(process.execPath, ['--import', 'tsx', 'src/cli.ts', 'figures', 'birds', 'content', '--quiet'], {cwd: ROOT, stdio: ['ignore', 'pipe', 'pipe']})
    const words: Buffer[] = []
    child.stderr.on('data', (chunk: Buffer) => words.push(chunk))
    child.stdout.destroy()
    const code = await new Promise(resolve => { child.on('close', resolve) })
    expect(Buffer.concat(words).toString()).toBe('')
    expect(code).toBe(0)
  }, 60_000)
})
