/**
 * An empty page in an installed Chromium that runs unseen, and the questions it is asked over a pipe, one answer each, in its own
 * debugging language (Chrome DevTools Protocol: a JSON text each way, ended by a zero byte, on the file handles 3 and 4).
 * It has a profile folder of its own, which goes with it, and asks no network for anything.
 */
import {spawn, type ChildProcess} from 'node:child_process'
import {mkdtempSync, rmSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import type {Readable, Writable} from 'node:stream'

/** Asks the page; the answer is whatever Chromium says. */
export type Ask = (method: string, words?: object) => Promise<unknown>

/** Chromium did not start, stopped, took too long or would not do what it was asked. */
export class ChromiumFault extends Error {}

const WORDS = [
  '--headless', '--remote-debugging-pipe', '--no-first-run', '--no-default-browser-check', '--disable-extensions', '--disable-background-networking',
  '--disable-component-update', '--disable-sync', '--disable-gpu', '--hide-scrollbars', '--mute-audio', '--font-render-hinting=none', '--host-resolver-rules=MAP * ~NOTFOUND',
]

/** A text deep in an answer, such as `frameTree`, `frame`, `id`. */
export function textIn(answer: unknown, ...way: readonly string[]): string {
  let at: unknown = answer
  for (const name of way) at = at !== null && typeof at === 'object' ? new Map<string, unknown>(Object.entries(at)).get(name) : undefined
  if (typeof at !== 'string') throw new ChromiumFault(`it answered without ${way.join('.')}`)
  return at
}

interface Waiting {
  readonly method: string
  readonly done: (answer: unknown) => void
  readonly fail: (fault: ChromiumFault) => void
}

interface Answer {
  readonly id?: number
  readonly result?: unknown
  readonly error?: {readonly message?: string}
}

function answerIn(text: string): Answer | null {
  try {
    return JSON.parse(text) as Answer
  } catch {
    return null
  }
}

/** Questions out, answers in, by number. */
class Pipe {
  readonly #waiting = new Map<number, Waiting>()
  readonly #out: Writable
  #asked = 0
  /** what has come of an answer that has not ended, piece by piece: a PDF comes in thousands */
  #begun: string[] = []
  #over: ChromiumFault | null = null

  constructor(out: Writable, back: Readable) {
    this.#out = out
    // a pipe breaks when Chromium stops, which is heard of with the reason
    out.on('error', () => {})
    back.on('error', () => {})
    back.setEncoding('utf8').on('data', (text: string) => { this.#hear(text) })
  }

  ask(method: string, params: object, sessionId?: string): Promise<unknown> {
    return new Promise((done, fail) => {
      if (this.#over) return fail(this.#over)
      this.#waiting.set(++this.#asked, {method, done, fail})
      this.#out.write(`${JSON.stringify({id: this.#asked, method, params, sessionId})}\0`)
    })
  }

  /** What is still asked, and whatever will be, has no answer. */
  fail(fault: ChromiumFault): void {
    this.#over ??= fault
    for (const {fail} of this.#waiting.values()) fail(this.#over)
    this.#waiting.clear()
  }

  #hear(text: string): void {
    const [rest = '', ...more] = text.split('\0')
    this.#begun.push(rest)
    for (const next of more) {
      this.#take(answerIn(this.#begun.join('')))
      this.#begun = [next]
    }
  }

  #take(answer: Answer | null): void {
    if (answer === null) return this.fail(new ChromiumFault('it answered with what is no JSON'))
    const {id = 0, result, error} = answer, waiting = this.#waiting.get(id)
    this.#waiting.delete(id)
    if (error) waiting?.fail(new ChromiumFault(`it would not do ${waiting.method}: ${error.message ?? 'no reason given'}`))
    else waiting?.done(result)
  }
}

/** What it said of why it stopped, among much that it says anyway. */
const lastWords = (said: string): string => said.split('\n').find(line => /FATAL|No usable sandbox|error while loading|cannot open/i.test(line))?.trim() ?? ''

/** It and all it started, which may outlive it; on Windows those see that it is gone. */
function end(child: ChildProcess): void {
  if (child.pid === undefined) return
  try {
    if (process.platform === 'win32') child.kill('SIGKILL')
    else process.kill(-child.pid, 'SIGKILL')
  } catch {
    child.kill('SIGKILL')
  }
}

/** Milliseconds that are left to what stops: to be heard out, to close. */
const PARTING = 500, CLOSING = 10_000

/** When it comes to that, or after so many milliseconds. */
function within(milliseconds: number, come: Promise<void>): Promise<void> {
  return new Promise(resolve => {
    const timer = setTimeout(resolve, milliseconds)
    void come.then(() => {
      clearTimeout(timer)
      resolve()
    })
  })
}

function discard(profile: string): void {
  try {
    rmSync(profile, {recursive: true, force: true, maxRetries: 5})
  } catch {
    // a folder of the system's temporary ones, which it empties
  }
}

const STOPS = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const

/** What is to be done should this process stop before its time; gives what calls that off. A signal then does what it would have done. */
function onLeaving(leave: () => void): () => void {
  const stop = (signal: NodeJS.Signals) => {
    leave()
    callOff()
    process.kill(process.pid, signal)
  }
  const callOff = () => {
    process.off('exit', leave)
    for (const signal of STOPS) process.off(signal, stop)
  }
  process.on('exit', leave)
  for (const signal of STOPS) process.on(signal, stop)
  return callOff
}

/**
 * @param patience  milliseconds after which it is ended
 * @throws ChromiumFault
 */
export async function withPage<T>(chromium: string, work: (ask: Ask) => Promise<T>, patience: number): Promise<T> {
  const profile = mkdtempSync(join(tmpdir(), `pinfeather-chromium-${process.pid}-`))
  // root has no right to a sandbox, as in a container
  const words = [...WORDS, `--user-data-dir=${profile}`, ...(process.getuid?.() === 0 ? ['--no-sandbox'] : [])]
  const child = spawn(chromium, words, {stdio: ['ignore', 'ignore', 'pipe', 'pipe', 'pipe'], detached: process.platform !== 'win32', windowsHide: true})
  const [, , , out, back] = child.stdio, pipe = new Pipe(out as Writable, back as Readable)
  let said = ''
  child.stderr?.setEncoding('utf8').on('data', (text: string) => { said = (said + text).slice(-20_000) })
  // closed: what it started is gone too, and all is heard that was said
  const closed = new Promise<void>(resolve => { child.on('close', () => { resolve() }).on('error', () => { resolve() }) })
  child.on('error', fault => { pipe.fail(new ChromiumFault(fault.message)) })
  child.on('exit', code => {
    void within(PARTING, closed).then(() => {
      pipe.fail(new ChromiumFault(`it stopped${code === null ? '' : ` with code ${code}`}${lastWords(said) === '' ? '' : `, saying: ${lastWords(said)}`}`))
    })
  })
  const stay = onLeaving(() => {
    end(child)
    discard(profile)
  })
  const timer = setTimeout(() => { pipe.fail(new ChromiumFault(`it gave no answer within ${patience / 1000} s`)) }, patience)
  try {
    const targetId = textIn(await pipe.ask('Target.createTarget', {url: 'about:blank'}), 'targetId')
    const session = textIn(await pipe.ask('Target.attachToTarget', {targetId, flatten: true}), 'sessionId')
    const done = await work((method, params = {}) => pipe.ask(method, params, session))
    await pipe.ask('Browser.close', {})
    await within(CLOSING, closed)
    return done
  } finally {
    clearTimeout(timer)
    end(child)
    await within(CLOSING, closed)
    stay()
    discard(profile)
  }
}
