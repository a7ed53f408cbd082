/** The quick way for bodies that hold no Markdown: most birds' notes are a plain sentence or two, and a book has thousands. */

/** Anything that Markdown, GitHub tables and footnotes, or automatic links could read as more than words. */
const MAYBE_MARKDOWN = /[\\`*_[\]<>&|~@#\t\r]|:\/\/|www\.|\n[ ]|^[ ]|[ ]\n|(?:^|\n)\s*(?:[-+=:]|\d+[.)])/i

/** The HTML of a body without Markdown, the same as the full way gives; null when it may hold some. */
export function plainBody(text: string): string | null {
  const trimmed = text.replace(/\n+$/, '').replace(/^\n+/, '')
  if (MAYBE_MARKDOWN.test(trimmed)) return null
  if (trimmed.trim() === '') return ''
  return trimmed.split(/\n{2,}/).map(paragraph => `<p>${paragraph.replace(/ +$/, '')}</p>`).join('\n') + '\n'
}
