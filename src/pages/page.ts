/**
 * A page before it is HTML: which template, where it goes, and a view model of plain words, numbers already rounded, and links.
 * Nothing here computes a figure and nothing here is HTML; Markdown stays Markdown until the site room makes it safe HTML.
 */

export const SECTIONS = ['home', 'ladder', 'birds', 'pens', 'hatches', 'traits', 'shows', 'standard', 'dossier', 'diary', 'methods', 'records'] as const
export type Section = (typeof SECTIONS)[number]

export interface Page {
  /** where it goes in the site, `birds/24-031.html`; links in view models are such paths too, and templates turn them with `{{link path}}` */
  readonly path: string
  /** a file in `templates/pages/`, without `.hbs` */
  readonly template: string
  /** for `<title>`; the breed's name is added by the layout */
  readonly title: string
  readonly section: Section | null
  /** class of `<body>`: `standard`, `dossier`, `summary`, `score` or none */
  readonly look?: 'standard' | 'dossier' | 'summary' | 'score'
  /** one file with stylesheet, font and pictures inside */
  readonly selfContained?: boolean
  /** of a page that is one file and small enough to be mailed: no typeface in it, of the stylesheet what it uses, and these words at the head of every printed sheet */
  readonly sheet?: string
  /** the words at the head of its printed sheets, of a page that is made to be printed */
  readonly heads?: PageHeads
  /** where it stands as a PDF, when those are asked for: `standard.pdf` */
  readonly pdf?: string
  readonly view: object
  /** no figure stands in its view, which is made anew whenever it is asked for and not kept: of the pages of which there are most */
  readonly fleeting?: true
  /** what the search finds it by and says of it: `kind` stands beside the title, `step` or `BC3F2 hen, hatched 2024, sold`; pages without are not in the index */
  readonly search?: {readonly kind: string; readonly words: string}
}

/** At the head of every printed sheet but the first. */
export interface PageHeads {
  /** `Skerry Fowl` */
  readonly left: string
  /** `Proposed standard, draft 5` */
  readonly right: string
  /** on the right of the sheets of a part enclosed in the page */
  readonly enclosed?: string
}

/** A chart in a view model, put out by the template with `{{> figure shareByStep}}`. */
export interface Figure {
  readonly kind: 'figure'
  /** unique on its page; letters, digits, hyphens */
  readonly id: string
  /** run-in bold head of the caption: `Figure 1.` */
  readonly head: string
  /** the caption, plain text */
  readonly caption: string
  /** short name of the drawing, for `<title>` */
  readonly title: string
  /** the text alternative: what the drawing shows, in a sentence with its numbers */
  readonly description: string
  /** a Vega-Lite specification, complete but for the theme; also a download, `charts/<name>.vl.json` */
  readonly spec: object
  /** name of that download, unique in the site */
  readonly name: string
  readonly table: Table
}

export interface Table {
  readonly caption?: string
  readonly columns: readonly {readonly head: string; readonly number?: boolean}[]
  /** the first cell of a row is its head */
  readonly rows: readonly (readonly Cell[])[]
}

/** A text, one with a link, or several bands each with its own. */
export type Cell = string | {readonly text: string; readonly link?: string; readonly names?: readonly {readonly band: string; readonly link: string}[]}

/** A file that is not a page: CSV, JSON, Vega-Lite specification, feed. */
export interface Download {
  readonly path: string
  readonly text: string
}
