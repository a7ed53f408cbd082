/** What others found inbreeding to cost, for the reader to hold his own figure against. Lines differ: none of these is a law. */
export interface PublishedRange {
  /** change with 10 % more F: a share in points for hatch, of the mean for weight, eggs for eggs */
  readonly low: number
  readonly high: number
  readonly source: string
}

const HATCH: PublishedRange = {
  low: -0.044, high: -0.026,
  source: 'hatchability −2.6 points, Nordskog and Hassan 1971 (as a later abstract quotes them), to −4.4 points, Shoffner 1948 (as Falconer tabulates it; from memory)',
}

/** By outcome; nothing was at hand for livability. */
export const PUBLISHED_DEPRESSION = {
  'hatch of fertile': HATCH,
  'hatch of set': HATCH,
  weight: {low: -0.008, high: -0.008, source: 'body weight −0.8 %, Shoffner 1948 (as Falconer tabulates it; from memory)'},
  // 9.3 eggs in a year of 365 days
  eggs: {low: (-9.3 * 100) / 365, high: (-9.3 * 100) / 365, source: '−9.3 eggs a year, Shoffner 1948 (as Falconer tabulates it; from memory); another native flock showed no clear loss'},
  livability: null,
} as const satisfies Readonly<Record<string, PublishedRange | null>>
