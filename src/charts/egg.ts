/** The egg that marks an estimate: blunt end down, 11.2 wide and 15 high, its middle at 0,0. */
export const eggShape = 'M0-7.5C3.6-7.5 5.6 0 5.6 2.2A5.6 5.3 0 0 1-5.6 2.2C-5.6 0-3.6-7.5 0-7.5Z'
