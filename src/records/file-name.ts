/** The name that a thing's page has as a file: safe on every disk, the same in every build. */

/** As much of a name as is kept, in bytes (so in letters, where they are plain ones): endings and dates are still to come behind it. */
const LONGEST = 80

/** Names that mean something to a web server or to Windows, with or without an ending behind them. */
const TAKEN = /^(?:index$|(?:con|prn|aux|nul|(?:com|lpt)[\d¹²³])(?:\.|$))/i

/**
 * Letters, digits, `-`, `_` and `.`: `BC1 to holm-white` → `BC1-to-holm-white`. Never empty, hidden, `index` or the name of a device;
 * a long one is cut and ends in a mark of the whole, so that two long names with one beginning stay two.
 * Names that come out alike are told apart by the caller: birds by year and number, other records by the problem `same-name`.
 */
export function fileName(text: string): string {
  const whole = text.normalize('NFC')
  const safe = whole.replace(/[^\p{L}\p{M}\p{N}._-]+/gu, '-').replace(/^[.-]+|[.-]+$/g, '')
  if (safe === '') return `named-${markOf(whole)}`
  const named = TAKEN.test(safe) ? `named-${safe}` : safe
  const kept = beginningOf(named)
  return kept === named ? named : `${kept.replace(/[.-]+$/, '')}-${markOf(whole)}`
}

function beginningOf(name: string): string {
  let kept = '', bytes = 0
  for (const letter of name) {
    bytes += new TextEncoder().encode(letter).length
    if (bytes > LONGEST) break
    kept += letter
  }
  return kept
}

/** FNV-1a over the bytes of the text, 32 bits as 8 hexadecimal digits. */
function markOf(text: string): string {
  let hash = 0x811c9dc5
  for (const byte of new TextEncoder().encode(text)) hash = Math.imul(hash ^ byte, 0x01000193) >>> 0
  return hash.toString(16).padStart(8, '0')
}
