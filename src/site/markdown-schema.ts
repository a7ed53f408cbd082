/**
 * What may come out of a keeper's Markdown: the elements Markdown itself can make, and nothing else. Raw HTML and comments never get this far;
 * this is the second lock.
 */
import type {Schema} from 'hast-util-sanitize'

export const markdownSchema: Schema = {
  tagNames: [
    'a', 'b', 'blockquote', 'br', 'code', 'del', 'em', 'h2', 'h3', 'h4', 'h5', 'h6', 'hr', 'img', 'li', 'ol', 'p', 'pre', 'section', 'small',
    'span', 'strong', 'sup', 'table', 'tbody', 'td', 'th', 'thead', 'tr', 'ul',
  ],
  attributes: {
    a: ['href', 'id', 'ariaLabel', 'ariaDescribedBy', 'dataFootnoteRef', 'dataFootnoteBackref', ['className', 'data-footnote-backref']],
    h2: ['id', ['className', 'sr-only']],
    img: ['src', 'alt', 'width', 'height'],
    li: ['id'],
    ol: ['start'],
    section: ['dataFootnotes', ['className', 'footnotes', 'scroll'], 'tabIndex', 'ariaLabel'],
    span: [['className', 'soft']],
    td: [['className', 'n']],
    th: [['className', 'n'], ['scope', 'col']],
  },
  ancestors: {tbody: ['table'], td: ['table'], th: ['table'], thead: ['table'], tr: ['table']},
  protocols: {href: ['http', 'https', 'mailto'], src: []},
  strip: ['script', 'style'],
  // ids are made by footnotes alone and get their prefix after sanitising
  clobber: [],
  clobberPrefix: '',
  allowComments: false,
  allowDoctypes: false,
}
