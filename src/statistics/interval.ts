/** Lower and upper limit of what the records leave open, in the unit of the figure they belong to. */
export interface Interval {
  readonly low: number
  readonly high: number
}
