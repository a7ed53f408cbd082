/** Paths of a drawing in as few letters as they need: from their first point on in steps, of two decimals. Source: SVG 2, 9.3 "Path data". */

/** Numbers a command takes; the last two of most are a point. */
const TAKES: Readonly<Record<string, number>> = {m: 2, l: 2, h: 1, v: 1, c: 6, q: 4, s: 4, t: 2, a: 7, z: 0}

/** How far a path reaches, a little more rather than less. */
export interface Extent {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

interface Step {
  readonly command: string
  readonly numbers: readonly number[]
}

const rounded = (value: number): number => Math.round(value * 100) / 100

function stepsOf(path: string): readonly Step[] | null {
  const steps: Step[] = []
  for (const [, command = '', text = ''] of path.matchAll(/([a-zA-Z])([^a-zA-Z]*)/g)) {
    const takes = TAKES[command.toLowerCase()]
    const numbers = (text.match(/-?(?:\d+\.?\d*|\.\d+)/g) ?? []).map(Number)
    if (takes === undefined || (takes === 0 ? numbers.length > 0 : numbers.length === 0 || numbers.length % takes !== 0)) return null
    if (takes === 0) steps.push({command, numbers})
    for (let from = 0; from < numbers.length; from += takes) steps.push({command: from > 0 && /m/i.test(command) ? (command === 'm' ? 'l' : 'L') : command, numbers: numbers.slice(from, from + takes)})
  }
  return steps
}

/** Which numbers of a command are ways across, and which down: of an arc only its end. */
function isAcross(letter: string, place: number): boolean | null {
  if (letter === 'a') return place === 5 ? true : place === 6 ? false : null
  return letter === 'h' ? true : letter === 'v' ? false : place % 2 === 0
}

/**
 * The path moved and said in steps; a line along one axis as `h` or `v`.
 *
 * @returns null when it holds what is not read here
 */
export function movedPath(path: string, byX: number, byY: number): string | null {
  const steps = stepsOf(path)
  if (!steps) return null
  let x = 0, y = 0, startX = 0, startY = 0, out = '', before = ''
  for (const {command, numbers} of steps) {
    const letter = command.toLowerCase(), relative = command === letter
    if (letter === 'z') {
      out += 'z'
      before = 'z'
      ;[x, y] = [startX, startY]
      continue
    }
    const ways = numbers.map((value, place) => {
      const across = isAcross(letter, place)
      return across === null || relative ? value : rounded(value - (across ? x : y))
    })
    const endX = letter === 'v' ? 0 : letter === 'h' ? ways[0] ?? 0 : ways.at(-2) ?? 0, endY = letter === 'h' ? 0 : ways.at(-1) ?? 0
    ;[x, y] = [rounded(x + endX), rounded(y + endY)]
    if (letter === 'm') {
      ;[startX, startY] = [x, y]
      out += `M${together([rounded(x + byX), rounded(y + byY)])}`
      before = 'm'
    } else {
      const flat = letter === 'l' && endY === 0 ? 'h' : letter === 'l' && endX === 0 ? 'v' : letter
      const said = together(flat === letter ? ways : [flat === 'h' ? endX : endY])
      out += flat === before ? `${said.startsWith('-') ? '' : ','}${said}` : `${flat}${said}`
      before = flat
    }
  }
  return out
}

/** A minus parts as well as a comma. */
const together = (numbers: readonly number[]): string => numbers.map(number => String(number).replace(/^(-?)0\./, '$1.')).join(',').replaceAll(',-', '-')

/** Of a path as `movedPath` says it, with the stroke it is drawn with; null when that cannot be told. */
export function extentOf(path: string, stroke: number): Extent | null {
  const steps = stepsOf(path)
  if (!steps || steps.length === 0) return null
  let x = 0, y = 0, left = Infinity, right = -Infinity, top = Infinity, bottom = -Infinity
  const reach = (atX: number, atY: number): void => {
    left = Math.min(left, atX)
    right = Math.max(right, atX)
    top = Math.min(top, atY)
    bottom = Math.max(bottom, atY)
  }
  for (const {command, numbers} of steps) {
    if (command === 'z') continue
    const [across = 0, down = 0] = command === 'h' ? [numbers[0] ?? 0, 0] : command === 'v' ? [0, numbers[0] ?? 0] : [numbers.at(-2) ?? 0, numbers.at(-1) ?? 0]
    // half an ellipse reaches its radii from the middle of its ends, a curve no further than what leads it; another arc is not told
    if (command === 'a') {
      const [wide = 0, high = 0] = numbers
      if (Math.abs(Math.hypot(across / (2 * wide), down / (2 * high)) - 1) > 0.01) return null
      for (const side of [-1, 1]) reach(x + across / 2 + side * wide, y + down / 2 + side * high)
    } else if (command === 'c' || command === 'q' || command === 's' || command === 't') for (let place = 0; place < numbers.length; place += 2) reach(x + (numbers[place] ?? 0), y + (numbers[place + 1] ?? 0))
    ;[x, y] = command === 'M' ? [across, down] : [x + across, y + down]
    reach(x, y)
  }
  return {left: left - stroke / 2, right: right + stroke / 2, top: top - stroke / 2, bottom: bottom + stroke / 2}
}

/** Do two things touch nowhere? */
export const placesApart = (a: Extent, b: Extent): boolean => a.right < b.left || b.right < a.left || a.bottom < b.top || b.bottom < a.top
