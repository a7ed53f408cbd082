/** Bands written short: those that follow one another without a gap as one stretch. */

/** This many in a row are written as a stretch. */
const FEWEST_IN_A_ROW = 3

/**
 * `24-001 to 24-007, 24-009, H21-04`. Every band is in it and no other: a stretch stands for bands that are all there, alike before their last figures, which rise by one.
 */
export function bandRuns(bands: readonly string[]): string {
  const sorted = [...new Set(bands)].sort((a, b) => (a < b ? -1 : 1)), runs: string[][] = []
  for (const band of sorted) {
    const run = runs.at(-1), last = run?.at(-1)
    if (run && last !== undefined && follows(last, band)) run.push(band)
    else runs.push([band])
  }
  return runs.flatMap(run => (run.length < FEWEST_IN_A_ROW ? run : [`${run[0] ?? ''} to ${run.at(-1) ?? ''}`])).join(', ')
}

function follows(last: string, next: string): boolean {
  const [before, after] = [parts(last), parts(next)]
  return before !== null && after !== null && last.length === next.length && before.head === after.head && after.figures === before.figures + 1
}

function parts(band: string): {readonly head: string; readonly figures: number} | null {
  const match = /^(.*?)(\d{1,9})$/.exec(band)
  return match ? {head: match[1] ?? '', figures: Number(match[2])} : null
}
