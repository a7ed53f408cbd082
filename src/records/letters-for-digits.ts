/** A letter that was taken for a figure: the letter O for a nought, a small l or a capital I for a one. */

/** Words that hold some figure, and beside figures nothing but such letters and the signs of numbers, dates and bands. */
const MIXED = /(?<![\p{L}\d.,/-])[\dOolI.,/-]*\d[\dOolI.,/-]*(?![\p{L}\d])/gu

const withDigits = (text: string): string => text.replace(/[Oo]/g, '0').replace(/[lI]/g, '1')

/**
 * A text with figures in place of such letters; null where it has none of them.
 *
 * @example digitsMeant('198O g')  // '1980 g'
 * @example digitsMeant('23-0l2 sold')  // '23-012 sold'
 */
export function digitsMeant(text: string): string | null {
  const meant = text.replace(MIXED, withDigits)
  return meant === text ? null : meant
}

/** What is wrong with it, in words: `“198O” has the letter O for a nought`. */
export function lettersForDigits(text: string): string {
  const [letter = ''] = [...text.matchAll(MIXED)].flatMap(([word]) => /[OolI]/.exec(word) ?? [])
  return `“${text}” has the letter ${letter} for a ${/o/i.test(letter) ? 'nought' : 'one'}`
}
