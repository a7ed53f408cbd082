import {describe, expect, it} from 'vitest'
import {workedOnce} from '../../src/findings/worked-once.ts'

interface Flock {
  readonly birds: readonly string[]
  readonly count: number
  readonly never: number
}

describe('workedOnce(work)', () => {
  const asked: string[] = []
  const flock: Flock = workedOnce<Flock>({
    birds: () => { asked.push('birds'); return ['24-901', '24-902'] },
    count: () => { asked.push('count'); return flock.birds.length },
    never: () => { throw new Error('nobody asked for this') },
  })

  it('works what is asked for, with what that needs, each once', () => {
    expect(asked).toEqual([])
    expect([flock.count, flock.count, flock.birds.length]).toEqual([2, 2, 2])
    expect(asked).toEqual(['count', 'birds'])
  })

  it('shows every name, and throws what the working throws', () => {
    expect(Object.keys(flock)).toEqual(['birds', 'count', 'never'])
    expect(() => flock.never).toThrow('nobody asked')
  })
})
