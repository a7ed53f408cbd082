/** A run of words of two texts: what both have, what only the older has (`out`), what only the newer has (`in`). */
export interface WordRun {
  readonly is: 'same' | 'out' | 'in'
  readonly text: string
}

/** Words with the space before them, and signs each by itself. */
const tokensOf = (text: string): readonly string[] => text.match(/\s*(?:[\p{L}\p{N}]+(?:[’'.,-][\p{L}\p{N}]+)*|[^\s\p{L}\p{N}])|\s+$/gu) ?? []

const isWord = (token: string): boolean => /[\p{L}\p{N}]/u.test(token)

/** So many words kept between two changes do not part them: single words left standing among many changed ones cannot be read. */
const ISLAND = 1

/** Beyond so many pairs of words the middle is told as changed whole. */
const MOST_PAIRS = 4_000_000

/**
 * Which words changed from one text to another? By the longest run of words that both have in the same order, so that as little as can be is marked; changes with a
 * word or less between them are told as one. Runs of `same` and `out` make the old text, of `same` and `in` the new one, letter by letter. What is taken out stands before
 * what is put in its place.
 */
export function wordChanges(before: string, after: string): readonly WordRun[] {
  const old = tokensOf(before), fresh = tokensOf(after)
  const start = alikeFrom(old, fresh, 1), end = alikeFrom(old.slice(start), fresh.slice(start), -1)
  const middle = kept(old.slice(start, old.length - end), fresh.slice(start, fresh.length - end))
  return runsOf([...old.slice(0, start).map(same), ...middle, ...old.slice(old.length - end).map(same)])
}

/** @param way 1 from the front, -1 from the back */
function alikeFrom(old: readonly string[], fresh: readonly string[], way: 1 | -1): number {
  let count = 0
  while (count < old.length && count < fresh.length && old.at(way === 1 ? count : -1 - count) === fresh.at(way === 1 ? count : -1 - count)) count += 1
  return count
}

interface Mark extends WordRun {
  readonly words: number
}

const mark = (is: WordRun['is']) => (text: string): Mark => ({is, text, words: isWord(text) ? 1 : 0})
const same = mark('same'), out = mark('out'), put = mark('in')

/** The two rows of words laid along their longest common run. */
function kept(old: readonly string[], fresh: readonly string[]): readonly Mark[] {
  if (old.length * fresh.length > MOST_PAIRS) return [...old.map(out), ...fresh.map(put)]
  const width = fresh.length + 1, longest = new Uint32Array((old.length + 1) * width)
  const at = (i: number, j: number): number => longest[i * width + j] ?? 0
  for (let i = old.length - 1; i >= 0; i--) {
    for (let j = fresh.length - 1; j >= 0; j--) longest[i * width + j] = old[i] === fresh[j] ? at(i + 1, j + 1) + 1 : Math.max(at(i + 1, j), at(i, j + 1))
  }
  const marks: Mark[] = []
  let i = 0, j = 0
  while (i < old.length || j < fresh.length) {
    const was = old[i], is = fresh[j]
    if (was !== undefined && was === is) {
      marks.push(same(was))
      i += 1
      j += 1
    } else if (was !== undefined && (is === undefined || at(i + 1, j) >= at(i, j + 1))) {
      marks.push(out(was))
      i += 1
    } else if (is !== undefined) {
      marks.push(put(is))
      j += 1
    }
  }
  return marks
}

/** Neighbours of one sort joined; islands between changes taken into both. */
function runsOf(marks: readonly Mark[]): readonly WordRun[] {
  const runs: WordRun[] = []
  let same = '', words = 0, gone = '', come = ''
  const flush = () => {
    if (gone !== '') runs.push({is: 'out', text: gone})
    if (come !== '') runs.push({is: 'in', text: come})
    gone = come = ''
  }
  for (const each of marks) {
    if (each.is === 'same') {
      same += each.text
      words += each.words
      continue
    }
    const changing = gone !== '' || come !== ''
    if (same !== '' && changing && words <= ISLAND) {
      gone += same
      come += same
    } else if (same !== '') {
      flush()
      runs.push({is: 'same', text: same})
    }
    same = ''
    words = 0
    if (each.is === 'out') gone += each.text
    else come += each.text
  }
  flush()
  if (same !== '') runs.push({is: 'same', text: same})
  return runs
}

/** Of the words of both, the share that stayed: 1 where nothing changed, 0 where nothing is left. */
export function shareKept(runs: readonly WordRun[]): number {
  const letters = (kind: WordRun['is']): number => runs.filter(({is}) => is === kind).reduce((sum, {text}) => sum + text.length, 0)
  const both = letters('same'), all = 2 * both + letters('out') + letters('in')
  return all === 0 ? 1 : 2 * both / all
}
