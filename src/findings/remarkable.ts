/** What is as rare as this by chance alone, P corrected for the number of tests, is taken to be no chance; customary. */
export const REMARKABLE = 0.05
