/**
 * How a figure is worked, for readers: the same things its function's own comment says, in plainer words. The worked example is not typed
 * but made, by the very function that makes the figures of the pages; the tests hold its words against values from elsewhere.
 */
export interface Method {
  readonly id: string
  readonly title: string
  /** what a breeder asks */
  readonly question: string
  /** what the figure is; Markdown */
  readonly definition: string
  readonly formula: string | null
  /** what the letters of the formula mean, with unit and range */
  readonly letters: readonly (readonly [string, string])[]
  /** what happens where little or nothing is known; Markdown, a list */
  readonly edges: string
  /** `common practice, no source` where there is none */
  readonly source: string
  readonly example: {readonly given: string; readonly gives: () => string}
}
