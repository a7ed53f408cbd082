/** The world as the commands see it: where words go, whether somebody watches, and how long things take. Tests pass one that lives in memory. */

export interface World {
  /** what was asked for */
  out(text: string): void
  /** everything else: problems, progress */
  err(text: string): void
  /** somebody watches the error stream: progress may be redrawn there */
  readonly watched: boolean
  /** colours are wanted on the output stream, and on the error stream */
  readonly colour: {readonly out: boolean; readonly err: boolean}
  /** milliseconds from any beginning; for progress and timings only, never for a figure */
  clock(): number
}

/** 0 done, 1 records at fault, 2 wrong use. */
export type ExitCode = 0 | 1 | 2

type Streams = Pick<NodeJS.Process, 'env'> & {readonly [name in 'stdout' | 'stderr']: Pick<NodeJS.WriteStream, 'isTTY' | 'write' | 'on'>}

/** The real world of a process. NO_COLOR is respected (the NO_COLOR convention). Who has read enough may close the pipe: what is left goes nowhere. */
export function worldOfProcess(process: Streams): World {
  const plain = (process.env.NO_COLOR ?? '') !== ''
  return {
    out: sayingTo(process.stdout),
    err: sayingTo(process.stderr),
    watched: process.stderr.isTTY === true,
    colour: {out: !plain && process.stdout.isTTY === true, err: !plain && process.stderr.isTTY === true},
    clock: () => performance.now(),
  }
}

function sayingTo(stream: Streams['stdout']): (text: string) => void {
  let closed = false
  stream.on('error', (fault: NodeJS.ErrnoException) => {
    if (fault.code !== 'EPIPE') throw fault
    closed = true
  })
  return text => { if (!closed) stream.write(text) }
}
