/** The first words of a keeper's text, for lists and the feed: plain sentences only, since half a link or half an emphasis is neither. */

const MOST = 260

/** The opening sentences of the first paragraph; empty when it begins with a heading, list, table or picture, or is full of marks. */
export function excerpt(markdown: string): string {
  const paragraph = (markdown.trim().split(/\n\s*\n/)[0] ?? '').replace(/\s+/g, ' ').trim()
  if (paragraph === '' || /^(#|[-*+] |\d+[.)] |\||!\[|>|```)/.test(paragraph)) return ''
  const sentences = paragraph.match(/[^.!?]+[.!?]+(?=\s|$)|[^.!?]+$/g) ?? []
  let kept = ''
  for (const sentence of sentences) {
    if (/[[\]*_`<>|\\^]/.test(sentence) || kept.length + sentence.length > MOST) break
    kept += sentence
  }
  return kept.trim()
}
