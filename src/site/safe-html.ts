/**
 * HTML that may stand in a page as it is. Everything else is escaped. Made in three places only, each of which vouches for it:
 * the Markdown room (sanitised), the chart drawings (our own SVG), and finished page templates on their way into the layout.
 */
export class SafeHtml {
  readonly html: string

  constructor(html: string) {
    this.html = html
  }

  /** Handlebars asks for this by name and then does not escape. */
  toHTML(): string {
    return this.html
  }

  toString(): string {
    return this.html
  }
}
