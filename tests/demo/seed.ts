/** The seed of the demo. Another seed tells another story, and all that is written by hand about this one would be wrong. */
export const SEED = 407277
